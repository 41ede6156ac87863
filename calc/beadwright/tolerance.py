"""How close two numbers may be and still count as equal."""

REL_TOL = 1e-9
"""Differences below this are float noise: a billionth of a value near one, a nanometer of a length
in meters [-]."""
