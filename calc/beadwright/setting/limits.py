"""Limits on one quantity, and the window they leave."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import inf

from beadwright.phrases import Phrase


@dataclass(frozen=True, slots=True)
class Limit:
    """One reason a quantity may not go lower, or higher.

    Attributes:
        key: Short id: transition, short-top, machine, burn-through, travel-low, …
        why: Why, as a phrase that can follow “because”.
        low: Not below this [SI].
        high: Not above this [SI].
        source: Source id.
    """

    key: str
    why: Phrase
    low: float = -inf
    high: float = inf
    source: str = "practice"


@dataclass(frozen=True, slots=True)
class Window:
    """What all limits leave of one quantity.

    Attributes:
        low: Highest of the lows [SI].
        high: Lowest of the highs [SI].
        low_limit: The limit that binds below.
        high_limit: The limit that binds above.
    """

    low: float
    high: float
    low_limit: Limit
    high_limit: Limit

    @property
    def open(self) -> bool:
        """True if any value is left."""
        return self.low <= self.high

    def place(self, share: float) -> float:
        """Return the value a share of the way from low to high [SI]."""
        return self.low + (self.high - self.low) * share

    def hold(self, value: float) -> float:
        """Return the value, moved to the nearer end if outside [SI]."""
        return min(max(value, self.low), self.high)


def tightest_window(limits: Iterable[Limit]) -> Window:
    """Return the window a set of limits leaves on one quantity.

    Args:
        limits: At least one with a low and one with a high [-].
    """
    held = tuple(limits)
    low = max(held, key=lambda limit: limit.low)
    high = min(held, key=lambda limit: limit.high)
    return Window(low.low, high.high, low, high)
