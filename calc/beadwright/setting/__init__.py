"""Dial in, from limits and the room they leave to the set point and what follows."""
