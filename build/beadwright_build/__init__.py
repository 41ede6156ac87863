"""Turns the core and the pages into one static folder that works with no signal."""
