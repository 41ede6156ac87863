"""How close two numbers may be and still count as equal."""

from __future__ import annotations

from collections.abc import Iterable

REL_TOL = 1e-9
"""Differences below this are float noise: a billionth of a value near one, a nanometer of a length
in meters [-]."""

SAME_PLATE = 1.001
"""A plate thicker than a limit by no more than this share counts as at it: a thickness may be
written in another unit or as a gauge [-]."""


def figure_up_to(steps: Iterable[tuple[float, float]], value: float) -> float:
    """Return the figure of a table's first step that reaches a value.

    Valid for: values up to the last limit, which is usually endless.

    Args:
        steps: Upper limit of each step and its figure, limits rising [any unit].
        value: The value looked up [unit of the limits].

    Raises:
        StopIteration: If the value is over the last limit.
    """
    return next(figure for limit, figure in steps if value <= limit + REL_TOL)
