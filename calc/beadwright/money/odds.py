"""The odds in a word, and whether one more figure known could change it.

A word follows the share of the draws in which switching pays. The odds with one figure known come
from the mean and the spread of the same draws: what that figure does to the mean is put in, what it
adds to the spread is taken out.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import erf, sqrt
from typing import Literal

from beadwright.money.chance import ONE_IN_TEN, ChanceState
from beadwright.money.swings import Lever, Swing
from beadwright.phrases import Phrase, say

OddsWord = Literal[
    "pays", "probably pays", "even", "probably does not pay", "does not pay"
]  # fmt: skip
"""What the odds come to."""

SURE, LIKELY = 0.9, 2 / 3
"""Share of the draws from which it pays, and from which it probably does [-]. Common practice of
reports on risk: very likely, likely."""

EVEN = 0.5
"""Share of the draws from which it rather pays than not [-]."""

_HEADLINES: dict[OddsWord, str] = {
    "pays": "money.pays",
    "probably pays": "money.probably-pays",
    "even": "money.even",
    "probably does not pay": "money.probably-does-not-pay",
    "does not pay": "money.does-not-pay",
}


def word_of(pays: float) -> OddsWord:
    """Return the word for a share of the draws, taken to the whole chances of a hundred it says.

    Args:
        pays: Share of the draws in which switching pays, 0 to 1 [-].
    """
    won = round(pays, 2)
    lost = 1 - won
    if won >= LIKELY:
        return "pays" if won >= SURE else "probably pays"
    if lost >= LIKELY:
        return "does not pay" if lost >= SURE else "probably does not pay"
    return "even"


def odds_phrase(pays: float) -> Phrase:
    """Return the odds in a sentence: the word, and how many chances of a hundred.

    Args:
        pays: Share of the draws in which switching pays, 0 to 1 [-].
    """
    key, chances = _HEADLINES[word_of(pays)], round(100 * pays)
    if chances > 99:
        return say("money.pays-nearly-always")
    if chances < 1:
        return say("money.pays-hardly-ever")
    return say(key, chances=chances)


def odds_if_known(state: ChanceState, swing: Swing) -> tuple[float, float]:
    """Return the odds with one figure known, at the ends it passes one time in ten [-].

    Source: normal distribution; the figure's own share of mean and spread by a straight line, as
    net saving is nearly one in every figure.

    Args:
        state: The draws [-].
        swing: The figure's swing [-].
    """
    lever = swing.lever
    low, high = _factors(lever)
    mean, variance = (lever.low + 1 + lever.high) / 3, _variance(lever)
    slope = (swing.at_high - swing.at_low) / (lever.high - lever.low)
    left = sqrt(max(state.spread**2 - slope**2 * variance, 0.0))
    ends = (state.mean + slope * (factor - mean) for factor in (low, high))
    worse, better = sorted(_above_zero(end, left) for end in ends)
    return worse, better


def _factors(lever: Lever) -> tuple[float, float]:
    """The factors of a lever's triangle that one draw in ten passes, at either end."""
    low, high = lever.low, lever.high
    wide = high - low
    rising, falling = (1 - low) * wide, (high - 1) * wide
    least = low + sqrt(ONE_IN_TEN * rising)
    most = high - sqrt(ONE_IN_TEN * falling)
    if (1 - low) / wide < ONE_IN_TEN:
        least = high - sqrt((1 - ONE_IN_TEN) * falling)
    if (high - 1) / wide < ONE_IN_TEN:
        most = low + sqrt((1 - ONE_IN_TEN) * rising)
    return least, most


def _variance(lever: Lever) -> float:
    """Variance of a lever's factor, a triangle's with its peak at one."""
    low, high = lever.low, lever.high
    return (low**2 + 1 + high**2 - low - low * high - high) / 18


def _above_zero(mean: float, spread: float) -> float:
    if spread == 0:
        return 1.0 if mean > 0 else 0.0
    return (1 + erf(mean / spread / sqrt(2))) / 2


def settles(state: ChanceState, swing: Swing) -> bool:
    """Return True if one figure, once known, could change the verdict.

    It could if the odds then lie on the other side of even, or an open verdict becomes a sure one.

    Args:
        state: The draws [-].
        swing: The figure's swing [-].
    """
    worse, better = odds_if_known(state, swing)
    if worse < EVEN <= better:
        return True
    still_open = word_of(state.pays) not in ("pays", "does not pay")
    return still_open and (better >= SURE or 1 - worse >= SURE)


def settling(state: ChanceState, found: Sequence[Swing]) -> Swing | None:
    """Return the figure to find out first: the one that matters most, if it alone can settle it.

    Args:
        state: The draws [-].
        found: Every swing, longest first [-].
    """
    return next((swing for swing in found if swing.width > 0 and settles(state, swing)), None)
