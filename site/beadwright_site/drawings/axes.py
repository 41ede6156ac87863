"""The axes of a chart: round numbers along them, and where a value stands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, floor, log10

HAIR = 1e-9
"""Share of a step by which a sum of steps may miss a round number [-]."""


@dataclass(frozen=True, slots=True)
class Tick:
    """A mark on an axis: where [px], and the text beside it."""

    at: float
    text: str


@dataclass(frozen=True, slots=True)
class Scale:
    """Where a value stands along an axis.

    Attributes:
        least: The value at the axis's start.
        most: The value at its end.
        start: Where it starts [px].
        end: Where it ends [px].
    """

    least: float
    most: float
    start: float
    end: float

    def __call__(self, value: float) -> float:
        """Return the place of a value [px]."""
        return self.start + (self.end - self.start) * (value - self.least) / (
            self.most - self.least
        )


def nice_step(span: float, about: int, steps: Sequence[float] = (1, 2, 5)) -> float:
    """Return a round step that cuts a span in about so many parts, or a few less.

    Args:
        span: What to cut; above zero.
        about: The most parts.
        steps: The steps counted as round, each times any power of ten.
    """
    rough = span / about
    power = 10.0 ** floor(log10(rough))
    return next(power * step for step in (*steps, 10) if power * step >= rough * (1 - HAIR))


def round_values(low: float, high: float, step: float) -> tuple[float, ...]:
    """Return the multiples of a step from low to high, ends among them if they are round."""
    first, last = ceil(low / step - HAIR), floor(high / step + HAIR)
    return tuple(step * count for count in range(first, last + 1))


def short_number(value: float) -> str:
    """Return a number short enough for an axis: 950, 12k, 3.5M."""
    for size, letter in ((1e9, "G"), (1e6, "M"), (1e4, "k")):
        if abs(value) >= size:
            return f"{value / (1e3 if letter == 'k' else size):.3g}{letter}"
    return f"{value:,.0f}" if value >= 10 or value == int(value) else f"{value:.2g}"
