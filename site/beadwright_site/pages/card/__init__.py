"""Passes: every bead of the joint in its place."""
