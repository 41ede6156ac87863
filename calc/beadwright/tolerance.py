"""How close two numbers may be and still count as equal."""

REL_TOL = 1e-9
"""Differences below this are float noise: a billionth of a value near one, a nanometer of a length
in meters [-]."""

SAME_PLATE = 1.001
"""A plate thicker than a limit by no more than this share counts as at it: a thickness may be
written in another unit or as a gauge [-]."""
