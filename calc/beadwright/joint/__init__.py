"""Joints to scale, what a code asks of their size, and their symbols."""
