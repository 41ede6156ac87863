"""The shop settings card: all the next hand needs to repeat a weld, on one printed page."""
