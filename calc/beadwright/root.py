"""Where a line crosses a level: the core's way to solve an equation without a closed form."""

from __future__ import annotations

from collections.abc import Callable

_ROUNDS = 60
"""Rounds after which the search stops; a smooth line takes about 8, halving to a double's last
digit would take 53 [-]."""

_NEAR = 1e-10
"""Share of the level that counts as on it, and of the place that counts as no step [-]."""


def crossing(of: Callable[[float], float], low: float, high: float, level: float) -> float:
    """Return where a rising or falling line crosses a level, by false position.

    Source: the Illinois form of false position. It needs about 8 steps where halving needs 45.

    Args:
        of: The line; it crosses the level once between low and high [-].
        low: One end [-].
        high: The other end [-].
        level: What it crosses [-].
    """
    one, other = of(low) - level, of(high) - level
    middle, moved = low, ""
    for _ in range(_ROUNDS):
        if one == other:
            break
        before, middle = middle, low - one * (high - low) / (other - one)
        here = of(middle) - level
        if abs(here) <= _NEAR * abs(level) or abs(middle - before) <= _NEAR * abs(middle):
            break
        # An end that stays for two rounds is counted half, so that it moves too.
        if (here < 0) == (one < 0):
            low, one = middle, here
            other /= 2 if moved == "low" else 1
            moved = "low"
        else:
            high, other = middle, here
            one /= 2 if moved == "high" else 1
            moved = "high"
    return middle
