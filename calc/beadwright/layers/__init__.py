"""Weld metal cut into layers: the fewest beads that hold the limits."""
