"""Dial in: the machine's four settings for a joint."""
