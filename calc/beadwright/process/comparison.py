"""Two wires side by side: what each lays at equal current, equal feed, equal heat.

Nothing here is a fixed number of the trade: each ratio compares two answers of the burn-off, with
their bands. "Metal-cored lays a third more" is true of some of these comparisons and not of others;
each says what is held equal.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt
from typing import Literal

from beadwright.errors import require_positive
from beadwright.phrases import Phrase, say
from beadwright.process.burnoff import constants_of
from beadwright.process.deposition import deposition_efficiency, laid_rate
from beadwright.process.gases import Gas
from beadwright.process.operating import at_feed, feed_at_current
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer
from beadwright.process.wires import Wire
from beadwright.root import crossing

Basis = Literal["equal current", "equal feed", "equal heat"]

_LEAST_VOLTS, _MOST_VOLTS = 8.0, 60.0
"""Least and most volts of any wire arc: they limit the search for the current of an arc power
[V]."""


@dataclass(frozen=True, slots=True)
class Way:
    """A wire as it is run.

    Attributes:
        wire: The wire.
        gas: Its gas.
        transfer: Its mode.
        tip_to_work_m: Contact tip to work [m].
        volts: Volts at the arc, or None for the mode's own [V].
    """

    wire: Wire
    gas: Gas
    transfer: Transfer
    tip_to_work_m: float
    volts: float | None = None

    @property
    def efficiency(self) -> tuple[float, float, float]:
        """Deposition efficiency: low, typical, high [-]."""
        return deposition_efficiency(self.wire, self.gas, self.transfer)


@dataclass(frozen=True, slots=True)
class Laid:
    """What a wire lays at the point where it is compared.

    Attributes:
        current_a: Mean current [A].
        feed_m_s: Wire feed [m/s].
        volts: Volts at the arc [V].
        laid_kg_s: Deposition rate [kg/s].
        heat_j_kg: Arc energy for each kilogram laid [J/kg].
    """

    current_a: float
    feed_m_s: float
    volts: float
    laid_kg_s: float
    heat_j_kg: float


@dataclass(frozen=True, slots=True)
class Comparison:
    """The second wire over the first.

    Attributes:
        basis: What is held equal.
        first: What the first wire lays.
        second: What the second lays.
        ratio: Laid by the second over laid by the first [-].
        low: Low end of the ratio's band [-].
        high: High end [-].
    """

    basis: Basis
    first: Laid
    second: Laid
    ratio: float
    low: float
    high: float


def usual_way(wire: Wire, gas: Gas, transfer: Transfer = "spray") -> Way:
    """Return a wire held at its usual tip-to-work, on its mode's own volts.

    Args:
        wire: The wire [-].
        gas: Its gas [-].
        transfer: Its mode [-].
    """
    return Way(wire, gas, transfer, tip_to_work(wire, transfer)[1])


def laid_at_feed(way: Way, feed_m_s: float) -> Laid:
    """Return what a wire lays at a feed.

    Source: ``burnoff``, ``arc``, ``deposition``.

    Args:
        way: The wire as it is run [-].
        feed_m_s: Wire feed, above zero [m/s].

    Raises:
        OutOfRangeError: If the feed is not above zero.
    """
    require_positive(feed_m_s=feed_m_s)
    point = at_feed(way.wire, way.gas, way.transfer, feed_m_s, way.tip_to_work_m, way.volts)
    laid = laid_rate(way.wire, feed_m_s, way.efficiency[1])
    return Laid(point.current_a, feed_m_s, point.volts, laid, point.volts * point.current_a / laid)


def laid_at_current(way: Way, current_a: float) -> Laid:
    """Return what a wire lays at a current.

    Source: ``burnoff``, ``arc``, ``deposition``.

    Args:
        way: The wire as it is run [-].
        current_a: Mean current, above zero [A].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    require_positive(current_a=current_a)
    wire, gas, mode = way.wire, way.gas, way.transfer
    return laid_at_feed(
        way, feed_at_current(wire, gas, mode, current_a, way.tip_to_work_m, way.volts)
    )


def at_equal_current(first: Way, second: Way, current_a: float) -> Comparison:
    """Compare two wires at one current.

    Source: ``laid_at_current``. Band: the feed's bands at a current, and the efficiencies'.

    Args:
        first: The wire compared with [-].
        second: The wire compared [-].
        current_a: Mean current of both, above zero [A].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    ends = laid_at_current(first, current_a), laid_at_current(second, current_a)
    return _compared("equal current", first, second, ends, melts=True)


def at_equal_feed(first: Way, second: Way, feed_m_s: float) -> Comparison:
    """Compare two wires at one wire feed: linear mass and efficiency alone.

    Source: ``laid_at_feed``. Band: the efficiencies'; feed and mass are measured, not modeled.

    Args:
        first: The wire compared with [-].
        second: The wire compared [-].
        feed_m_s: Wire feed of both, above zero [m/s].

    Raises:
        OutOfRangeError: If the feed is not above zero.
    """
    ends = laid_at_feed(first, feed_m_s), laid_at_feed(second, feed_m_s)
    return _compared("equal feed", first, second, ends, melts=False)


def at_equal_heat(first: Way, second: Way, current_a: float) -> Comparison:
    """Compare two wires at one arc power, so at the same heat for each second of welding.

    The ratio of laid metal is then the ratio of travel at which the second lays the bead of the
    first, and the heat for each meter of that bead is one over it. Volts stay as given, or follow
    each wire's own line.

    Source: ``laid_at_current``. (At one heat for each meter of the same bead there would be no
    clear answer: the heat for a kilogram hardly changes with current.)

    Args:
        first: The wire compared with [-].
        second: The wire compared [-].
        current_a: Mean current of the first, above zero [A].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    here = laid_at_current(first, current_a)
    power = here.volts * here.current_a
    current = crossing(
        lambda amps: amps * laid_at_current(second, amps).volts,
        power / _MOST_VOLTS,
        power / _LEAST_VOLTS,
        power,
    )
    ends = here, laid_at_current(second, current)
    return _compared("equal heat", first, second, ends, melts=True)


def _compared(
    basis: Basis, first: Way, second: Way, ends: tuple[Laid, Laid], *, melts: bool
) -> Comparison:
    """The ratio with its band: independent shares added by their squares."""
    ratio = ends[1].laid_kg_s / ends[0].laid_kg_s
    shares = [
        (way.efficiency[2] - way.efficiency[0]) / 2 / way.efficiency[1] for way in (first, second)
    ]
    if melts:
        shares += [constants_of(way.wire).band for way in (first, second)]
    band = sqrt(sum(share**2 for share in shares))
    return Comparison(basis, *ends, ratio, ratio * (1 - band), ratio * (1 + band))


def more_laid(found: Comparison) -> Phrase:
    """Return how much more or less is laid, and between what.

    Args:
        found: The comparison [-].
    """

    def share(ratio: float) -> Phrase:
        percent = round(100 * (ratio - 1))
        if percent >= 0:
            return say("process.percent-more", percent=percent)
        return say("process.percent-less", percent=-percent)

    ends = share(found.low), share(found.high)
    return say("process.more-laid", share=share(found.ratio), low=ends[0], high=ends[1])
