"""The pass plan: layers, beads in their places, each with its settings."""
