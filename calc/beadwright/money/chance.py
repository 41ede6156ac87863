"""The chance that switching pays: seeded draws, in chunks, so that a page can show and stop them.

The same seed gives the same run, whatever the chunks.
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

from beadwright.errors import OutOfRangeError
from beadwright.money.break_even import Case
from beadwright.money.swings import Lever, Part, moved

BINS = 24
"""Bars of the picture of the draws [-]."""

MOST_DRAWS = 100_000
"""Most draws of a run; more change the chance by less than half a percent [-]."""


@dataclass(frozen=True, slots=True)
class ChanceState:
    """The state of a run.

    Attributes:
        done: Draws made.
        draws: Draws asked for.
        pays: Share of the draws in which switching pays [-].
        low: One draw in ten saves less [money/year].
        middle: Half of the draws save less [money/year].
        high: One draw in ten saves more [money/year].
        bars: Left edge, right edge and count of each bar of the picture [money/year].
    """

    done: int
    draws: int
    pays: float
    low: float
    middle: float
    high: float
    bars: tuple[tuple[float, float, int], ...]

    @property
    def finished(self) -> bool:
        """True if every draw is made."""
        return self.done >= self.draws


class Chance:
    """A run of draws that can be taken a chunk at a time.

    Each lever is drawn from a triangle: its low and high are the ends, the value in use is the
    peak.

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
        self._case, self._levers, self._draws = case, tuple(levers), draws
        self._random = Random(seed)
        self._savings: list[float] = []

    def run(self, chunk: int) -> ChanceState:
        """Make up to a number of draws more and return where the run stands.

        Args:
            chunk: Draws to make now, 1 or more [-].
        """
        for _ in range(min(max(chunk, 1), self._draws - len(self._savings))):
            insort(self._savings, self._draw())
        return self._state()

    def _draw(self) -> float:
        factors: dict[tuple[Part, str], float] = {}
        for lever in self._levers:
            factor = self._random.triangular(lever.low, lever.high, 1.0)
            for target in lever.targets:
                factors[target] = factors.get(target, 1.0) * factor
        return moved(self._case, factors).net_saving

    def _state(self) -> ChanceState:
        savings = self._savings
        pays = sum(saving > 0 for saving in savings) / len(savings)
        low, middle, high = (_quantile(savings, share) for share in (0.1, 0.5, 0.9))
        return ChanceState(
            done=len(savings),
            draws=self._draws,
            pays=pays,
            low=low,
            middle=middle,
            high=high,
            bars=_bars(savings),
        )


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
