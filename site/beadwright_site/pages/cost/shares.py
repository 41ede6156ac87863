"""Rounding that keeps sums: what is shown of the pieces adds up to what is shown of the whole."""

from __future__ import annotations

from collections.abc import Sequence
from math import floor


def rounded(amounts: Sequence[float], places: int) -> tuple[tuple[float, ...], float]:
    """Return amounts rounded so that they add up to their rounded sum, and that sum.

    Each is rounded down, and what is missing goes to those that lost most.

    Args:
        amounts: The pieces, zero or more.
        places: Decimals to keep.
    """
    unit = 10**places
    whole = round(sum(amounts) * unit)
    down = [floor(amount * unit + 1e-9) for amount in amounts]
    lost = sorted(range(len(amounts)), key=lambda i: down[i] - amounts[i] * unit)
    for index in lost[: max(0, whole - sum(down))]:
        down[index] += 1
    return tuple(value / unit for value in down), whole / unit
