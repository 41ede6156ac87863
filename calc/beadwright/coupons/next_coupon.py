"""The coupon to weld next: the one that takes most doubt away, at a setting that is safe."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.coupons.learned_numbers import LearnedKey, LearnedNumber
from beadwright.coupons.learning import Pair
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.burnoff import constants_of
from beadwright.process.operating import Operating
from beadwright.process.wires import Wire
from beadwright.setting.dial_in import DialIn

STEPS = 8
"""Steps the wire feed's window is looked at in [-]."""

KEEP_OFF = 0.05
"""Share of the window kept free at either end: a coupon at the very edge may fall out of it [-].
Common practice."""

WHAT_TO_MEASURE: Mapping[LearnedKey, Phrase] = MappingProxyType(
    {
        "melting": say("coupons.read-amps"),
        "efficiency": say("coupons.weigh"),
        "crown": say("coupons.gauge-face"),
        "travel": say("coupons.time-it"),
        "meter": say("coupons.meter-arc"),
    }
)
"""What to measure for each number."""


@dataclass(frozen=True, slots=True)
class NextCoupon:
    """The coupon to weld next.

    Attributes:
        number: The number it is for.
        measure: What to measure.
        feed_m_s: Wire feed to set, inside the window [m/s].
        moved: True if that is another feed than the job's.
        takes_away: Part of the doubt it takes away, by what is known now [-].
    """

    number: LearnedKey
    measure: Phrase
    feed_m_s: float
    moved: bool
    takes_away: float

    @property
    def phrase(self) -> Phrase:
        """What to do, in a sentence."""
        key = "coupons.next-moved" if self.moved else "coupons.next-same"
        return say(key, feed=Amount(self.feed_m_s, "wire_feed"), measure=self.measure)


def heat_mix(point: Operating, wire: Wire) -> Pair:
    """Return the parts of the heat at the wire tip: from the arc, from the extension [-].

    Source: the power balance of ``burnoff``, constants as published.

    Args:
        point: The operating point [-].
        wire: The wire, as published [-].
    """
    fit = constants_of(wire)
    arc = point.current_a * fit.phi_v
    resistance = point.current_a**2 * fit.r_ohm_m * point.extension_m / wire.conducting_area_m2
    return arc / (arc + resistance), resistance / (arc + resistance)


def next_coupon(
    dialled: DialIn, plain: Wire, numbers: Sequence[LearnedNumber]
) -> NextCoupon | None:
    """Return the coupon that takes most doubt away; None if the job has no open window.

    The number least decided yet is asked for. Where that is the burn-off, the feed is the one at
    which a coupon narrows the band most, averaged over the window.

    Args:
        dialled: The job's settings [-].
        plain: Its wire, as published [-].
        numbers: What is known of each number [-].
    """
    feed = dialled.settings.wire_feed
    if not dialled.open or feed.value is None or feed.low is None or feed.high is None:
        return None
    wanted = min(numbers, key=lambda number: number.decided)
    if wanted.key != "melting":
        gain = wanted.found.narrowed(wanted.at, (1.0, 0.0))
        return NextCoupon(wanted.key, WHAT_TO_MEASURE[wanted.key], feed.value, False, gain)
    feeds = _feeds(feed.low, feed.high)
    mixes = {each: heat_mix(dialled.plan.run.point(each), plain) for each in (*feeds, feed.value)}

    def gain_at(tried: float) -> float:
        found = wanted.found
        return sum(found.narrowed(mixes[each], mixes[tried]) for each in feeds) / len(feeds)

    here = gain_at(feed.value)
    best = max(feeds, key=gain_at)
    if gain_at(best) <= here:
        return NextCoupon("melting", WHAT_TO_MEASURE["melting"], feed.value, False, here)
    return NextCoupon("melting", WHAT_TO_MEASURE["melting"], best, True, gain_at(best))


def _feeds(low: float, high: float) -> list[float]:
    """Feeds over the window, its ends left free."""
    first, last = low + KEEP_OFF * (high - low), high - KEEP_OFF * (high - low)
    return [first + (last - first) * step / STEPS for step in range(STEPS + 1)]
