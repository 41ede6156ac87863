"""The chance that switching pays: seeded draws of all that is unsure, in chunks.

A page shows the first draws with its answer, goes on from there and can stop. The same seed gives
the same draws, whatever the chunks. What is unsure in both ways alike is drawn once for both.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, sqrt
from random import Random

from beadwright.errors import OutOfRangeError
from beadwright.money.break_even import Case
from beadwright.money.swings import Lever, moved_costs

BINS = 24
"""Bars of the picture of the draws [-]."""

MOST_DRAWS = 100_000
"""Most draws of a run, which is taken by chunks and can stop; more change no percent [-]."""

AT_ONCE = 500
"""Draws worked in one go: few enough for their figures to stay in the processor's cache [-]."""

ONE_IN_TEN = 0.1
"""Share of the draws beyond which an end is called the worst or the best case [-]."""


@dataclass(frozen=True, slots=True)
class ChanceState:
    """The state of a run.

    Attributes:
        done: Draws made.
        draws: Draws asked for.
        pays: Share of the draws in which switching pays [-].
        mean: Mean of the net saving [money/year].
        spread: Standard deviation of the net saving [money/year].
        low: One draw in ten saves less [money/year].
        middle: Half of the draws save less [money/year].
        high: One draw in ten saves more [money/year].
        bars: Left edge, right edge and count of each bar of the picture [money/year].
        now: Cost of a part as now: one draw in ten under it, one in ten over it [money].
        other: The same for the other way [money].
    """

    done: int
    draws: int
    pays: float
    mean: float
    spread: float
    low: float
    middle: float
    high: float
    bars: tuple[tuple[float, float, int], ...]
    now: tuple[float, float]
    other: tuple[float, float]

    @property
    def finished(self) -> bool:
        """True if every draw is made."""
        return self.done >= self.draws


class Chance:
    """A run of draws that can be taken a chunk at a time.

    Each lever is drawn from a triangle: its low and high are the ends, the value in use is the
    peak. A lever that moves figures of both ways is drawn once for both.

    Args:
        case: The two ways.
        levers: The inputs that are not known for sure.
        seed: Same seed, same draws.
        draws: How many, 1 to ``MOST_DRAWS``.

    Raises:
        OutOfRangeError: If the number of draws is out of range.
    """

    def __init__(self, case: Case, levers: Sequence[Lever], seed: int, draws: int) -> None:
        if not 1 <= draws <= MOST_DRAWS:
            raise OutOfRangeError(f"draws = {draws} must be 1 to {MOST_DRAWS}")
        self._draws = draws
        self._random = Random(seed).random
        self._case, self._levers = case, levers
        self._triangles = [_triangle(lever) for lever in levers]
        self._savings: list[float] = []
        self._now: list[float] = []
        self._other: list[float] = []

    def run(self, chunk: int) -> ChanceState:
        """Make up to a number of draws more and return where the run stands.

        Args:
            chunk: Draws to make now, 1 or more [-].
        """
        wanted = min(len(self._savings) + max(chunk, 1), self._draws)
        while len(self._savings) < wanted:
            self._draw(min(AT_ONCE, wanted - len(self._savings)))
        return self._state()

    def _draw(self, chunk: int) -> None:
        """Draw by draw, lever by lever, so that chunks change nothing."""
        draw, levers = self._random, len(self._levers)
        shares = [draw() for _ in range(chunk * levers)]
        factors = [
            [
                low + sqrt(share * rising) if share < peak else high - sqrt((1 - share) * falling)
                for share in shares[index::levers]
            ]
            for index, (peak, low, rising, high, falling) in enumerate(self._triangles)
        ]
        moved = moved_costs(self._case, self._levers, factors, chunk)
        self._savings += moved.net
        self._now += moved.now
        self._other += moved.other

    def _state(self) -> ChanceState:
        savings = sorted(self._savings)
        count = len(savings)
        mean = fsum(savings) / count
        low, middle, high = (_quantile(savings, s) for s in (ONE_IN_TEN, 0.5, 1 - ONE_IN_TEN))
        return ChanceState(
            done=count,
            draws=self._draws,
            pays=sum(saving > 0 for saving in savings) / count,
            mean=mean,
            spread=sqrt(fsum((saving - mean) ** 2 for saving in savings) / count),
            low=low,
            middle=middle,
            high=high,
            bars=_bars(savings),
            now=_ends(self._now),
            other=_ends(self._other),
        )


def _triangle(lever: Lever) -> tuple[float, float, float, float, float]:
    """Share of the draws below the peak at one; low end, high end, and what their sides need."""
    low, high = lever.low, lever.high
    wide = high - low
    return (1 - low) / wide, low, wide * (1 - low), high, wide * (high - 1)


def _ends(figures: Sequence[float]) -> tuple[float, float]:
    ordered = sorted(figures)
    return _quantile(ordered, ONE_IN_TEN), _quantile(ordered, 1 - ONE_IN_TEN)


def _quantile(ordered: Sequence[float], share: float) -> float:
    """Straight line between the two draws around a share."""
    place = share * (len(ordered) - 1)
    below = int(place)
    above = min(below + 1, len(ordered) - 1)
    return ordered[below] + (place - below) * (ordered[above] - ordered[below])


def _bars(ordered: Sequence[float]) -> tuple[tuple[float, float, int], ...]:
    left, right = ordered[0], ordered[-1]
    if left == right:
        return ((left, right, len(ordered)),)
    wide = (right - left) / BINS
    counts = [0] * BINS
    for saving in ordered:
        counts[min(int((saving - left) / wide), BINS - 1)] += 1
    return tuple((left + i * wide, left + (i + 1) * wide, n) for i, n in enumerate(counts))
