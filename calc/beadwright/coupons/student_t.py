"""Student's t: how far a mean of few coupons may be off."""

from __future__ import annotations

from functools import cache
from math import atan, cos, pi, sin, sqrt, tan

from beadwright.errors import OutOfRangeError
from beadwright.root import crossing

LARGE = 400
"""Degrees of freedom beyond which the quantile no longer moves in its third figure [-]."""


def t_within(t: float, freedom: int) -> float:
    """Return the chance that a Student's t stands between -t and t [-].

    Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from
    memory): a finite series for whole degrees of freedom.

    Args:
        t: Zero or more [-].
        freedom: Degrees of freedom, 1 or more [-].

    Raises:
        OutOfRangeError: If ``t`` is below zero or there is no degree of freedom.
    """
    if t < 0 or freedom < 1:
        raise OutOfRangeError(f"t = {t} must be 0 or more, freedom = {freedom} 1 or more")
    return _within(atan(t / sqrt(freedom)), freedom)


@cache
def t_quantile(chance: float, freedom: int) -> float:
    """Return the t that a Student's t stays within, on both sides, with a chance [-].

    Source: ``t_within``, solved.

    Args:
        chance: 0.01 to 0.9999 [-].
        freedom: Degrees of freedom, 1 or more; above ``LARGE`` it is taken as ``LARGE`` [-].

    Raises:
        OutOfRangeError: If the chance is outside its range.
    """
    if not 0.01 <= chance <= 0.9999:
        raise OutOfRangeError(f"chance = {chance} must be 0.01 to 0.9999")
    held = min(freedom, LARGE)
    return sqrt(held) * tan(crossing(lambda angle: _within(angle, held), 0.0, pi / 2, chance))


def _within(angle: float, freedom: int) -> float:
    """The chance by the angle whose tangent is t over the root of the degrees of freedom."""
    squared, odd = cos(angle) ** 2, freedom % 2 == 1
    term = cos(angle) if odd else 1.0
    total = 0.0 if freedom == 1 else term
    for k in range(3 if odd else 2, freedom - 1, 2):
        term *= (k - 1) / k * squared
        total += term
    if odd:
        return 2 / pi * (angle + sin(angle) * total)
    return sin(angle) * total
