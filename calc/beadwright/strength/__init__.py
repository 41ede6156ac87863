"""Whether the weld carries its load."""
