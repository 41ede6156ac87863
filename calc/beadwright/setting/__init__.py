"""Dial in: limits, the room they leave, the set point and what follows from it."""
