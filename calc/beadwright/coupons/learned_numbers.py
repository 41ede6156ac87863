"""What the coupons of one wire, gas, machine and welder say, number by number."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import sqrt
from types import MappingProxyType
from typing import Literal

from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.learning import Learned, Pair, Prior, Shown, learn, quadratic
from beadwright.job.job import Job
from beadwright.process.burnoff import constants_of
from beadwright.process.gases import Gas
from beadwright.process.own_numbers import RANGES, OwnNumbers
from beadwright.process.wires import Wire

LearnedKey = Literal["melting", "efficiency", "crown", "travel", "meter"]

BAND_SIGMAS = 1.645
"""Half-width of a band that holds nine in ten, in standard deviations [-]. Source: the normal
distribution."""

APART = 0.5
"""How far arc and extension stand off print each by itself, over what they share [-]. Our choice:
most of a shop's difference is its meter and its feeder, which move both alike."""

EFFICIENCY_SHOPS = 0.03
CROWN_SHOPS = 0.10
TRAVEL_SHOPS = 0.20
METER_SHOPS_V = 1.2
"""How far shops stand from print, one standard deviation: deposition efficiency, section of a
fillet as welded, the hand's travel [-], a machine's meter against the arc [V].

Source: the first is the spread of the printed ranges (3 to 4 % either way); the others are common
practice: no source was found.
"""

LearnedOf = Callable[[CouponFacts], tuple[float, Pair] | None]


@dataclass(frozen=True, slots=True)
class LearnedNumber:
    """One number of a shop.

    Attributes:
        key: Which.
        prior: What is believed without coupons.
        found: Print and coupons together.
        at: Mix of coefficients the job stands at [-].
        shown: What each coupon shows.
    """

    key: LearnedKey
    prior: Prior
    found: Learned
    at: Pair
    shown: tuple[Shown, ...]

    @property
    def count(self) -> int:
        """Coupons counted."""
        return len(self.found.counted)

    @property
    def share(self) -> float:
        """How far it stands over print where the job stands: a share; of the meter, volts."""
        return self.found.share(self.at)

    @property
    def half_band(self) -> float:
        """How far that may be off; never further than the published number alone."""
        return min(self.found.half_band(self.at), self.half_before)

    @property
    def half_before(self) -> float:
        """How far the published number alone may be off."""
        spread = quadratic(self.prior.spread(), self.at)
        return BAND_SIGMAS * self.prior.scatter * sqrt(spread)

    @property
    def decided(self) -> float:
        """Part of the doubt about the published number that the coupons have taken away [-]."""
        return max(0.0, 1 - self.half_band / self.half_before)


def _melting(facts: CouponFacts) -> tuple[float, Pair] | None:
    if facts.melting is None or facts.anode_share is None:
        return None
    return facts.melting - 1, (facts.anode_share, 1 - facts.anode_share)


def _share_of(name: str) -> LearnedOf:
    def found(facts: CouponFacts) -> tuple[float, Pair] | None:
        value: float | None = getattr(facts, name)
        return None if value is None else (value - 1, (1.0, 0.0))

    return found


def _meter(facts: CouponFacts) -> tuple[float, Pair] | None:
    return None if facts.meter_v is None else (facts.meter_v, (1.0, 0.0))


OF: Mapping[LearnedKey, LearnedOf] = MappingProxyType(
    {
        "melting": _melting,
        "efficiency": _share_of("efficiency"),
        "crown": _share_of("crown"),
        "travel": _share_of("travel"),
        "meter": _meter,
    }
)
"""What a coupon shows of each number: how far it stands over print, and of which mix."""

OF_HAND: frozenset[LearnedKey] = frozenset({"crown", "travel"})
"""Numbers of the hand: learned from the welder's own coupons. The others are the machine's."""


def prior_of(key: LearnedKey, wire: Wire) -> Prior:
    """Return what is believed of a number before any coupon.

    Source: the published fit's band; ``EFFICIENCY_SHOPS`` and those beside it.

    Args:
        key: Which number [-].
        wire: The wire [-].
    """
    if key == "melting":
        level = constants_of(wire).band / BAND_SIGMAS
        return Prior(level, APART * level)
    levels = {
        "efficiency": EFFICIENCY_SHOPS, "crown": CROWN_SHOPS, "travel": TRAVEL_SHOPS,
        "meter": METER_SHOPS_V,
    }  # fmt: skip
    return Prior(levels[key])


def same_way(
    records: Iterable[CouponRecord], job: Job, machine: str, welder: str, key: LearnedKey
) -> tuple[CouponRecord, ...]:
    """Return the coupons that speak of a number for a job's wire and gas.

    Args:
        records: All kept coupons [-].
        job: The job [-].
        machine: The machine's name, may be empty [-].
        welder: The welder's name, may be empty; counts for what is the hand's [-].
        key: Which number [-].
    """
    wire = job.wire.type.name, job.wire.size, job.gas.name, machine
    return tuple(
        record
        for record in records
        if (record.wire, record.dia, record.gas, record.machine) == wire
        and (key not in OF_HAND or record.welder == welder)
    )


def learned_number(
    key: LearnedKey, records: Sequence[CouponRecord], wire: Wire, at: Pair
) -> LearnedNumber:
    """Return a number as its coupons and print together have it.

    Args:
        key: Which [-].
        records: The coupons that speak of it [-].
        wire: The wire, as published [-].
        at: Mix of coefficients the job stands at [-].
    """
    prior = prior_of(key, wire)
    shown: list[Shown] = []
    for record in records:
        found = OF[key](record.facts)
        if found is not None:
            shown.append(Shown(record.key, found[0], found[1], record.count_odd))
    return LearnedNumber(key, prior, learn(shown, prior), at, tuple(shown))


def own_numbers_of(
    numbers: Sequence[LearnedNumber], wire: Wire, gas: Gas, spread: float
) -> OwnNumbers | None:
    """Return the shop's own numbers, or None while no coupon counts.

    A number no coupon speaks of stays as published. No band is wider than the published one.

    Args:
        numbers: What was learned [-].
        wire: The wire, as published [-].
        gas: The gas [-].
        spread: Half-band of the published deposition efficiency, as a share [-].
    """
    by_key = {number.key: number for number in numbers if number.count}
    if not by_key:
        return None

    def over_print(key: LearnedKey, name: str) -> float | None:
        return _held(name, 1 + by_key[key].share) if key in by_key else None

    melting, laid = by_key.get("melting"), by_key.get("efficiency")
    phi = r = band = own_spread = None
    if melting is not None:
        phi = _held("phi", 1 + melting.found.mean[0])
        r = _held("r", 1 + melting.found.mean[1])
        band = _held("band", min(constants_of(wire).band, melting.half_band / (1 + melting.share)))
    if laid is not None:
        own_spread = _held("spread", min(spread, laid.half_band / (1 + laid.share)))
    meter = by_key.get("meter")
    return OwnNumbers(
        wire=wire.type.name,
        dia=wire.size,
        gas=gas.name,
        coupons=len({key for number in by_key.values() for key in number.found.counted}),
        phi=phi,
        r=r,
        band=band,
        efficiency=over_print("efficiency", "eff"),
        spread=own_spread,
        crown=over_print("crown", "crown"),
        travel=over_print("travel", "travel"),
        volts_v=None if meter is None else _held("volts", meter.share),
    )


def _held(name: str, value: float) -> float:
    low, high = RANGES[name]
    return float(f"{min(high, max(low, value)):.4g}")
