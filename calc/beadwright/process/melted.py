"""How much of the plates the arc melts: penetration and dilution, with bands, as shown."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from beadwright.phrases import Phrase, say
from beadwright.process.dilution import dilution, melted_by_fillet
from beadwright.process.penetration import (
    band_of,
    bead_penetration,
    outside_measured,
    refused,
    root_penetration,
)
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.results import Quantity

NEVER_SIZE_BY_IT = "An estimate: never lay a smaller leg for it. Cut and etch a coupon to know."

_DEPTH_SOURCES = ("jackson-form", "bead-runs")


@dataclass(frozen=True, slots=True)
class Melted:
    """What the arc melts of the plates; values None, with the reason, where none can be given.

    Attributes:
        penetration: Past the root of a fillet, or below the surface for a butt.
        dilution: Share of base metal in the bead.
    """

    penetration: Quantity
    dilution: Quantity


def melted(
    kind: Kind,
    transfer: Transfer,
    current_a: float,
    volts: float,
    travel_m_s: float,
    thinner_m: float,
    bead_m2: float,
    leg_m: float | None,
    co2: float = 0.0,
) -> Melted:
    """Return penetration and dilution of one bead.

    The bands of the bead's depth and of the root's share are independent: together they are the
    root of the sum of their squares.

    Source: ``penetration``, ``dilution``.

    Args:
        kind: Kind of wire [-].
        transfer: Mode at the set point [-].
        current_a: Mean current [A].
        volts: Volts at the arc [V].
        travel_m_s: Travel [m/s].
        thinner_m: Thinner plate [m].
        bead_m2: Section of the bead [m²].
        leg_m: Leg of the bead, or None for a butt [m].
        co2: Share of CO2 in the gas [-].
    """
    reason = refused(kind, transfer, current_a, volts, travel_m_s)
    if reason is not None:
        return _none(reason, leg_m)
    typical = bead_penetration(current_a, volts, travel_m_s, co2)
    below, above = band_of(current_a, volts, travel_m_s)
    if typical * below >= thinner_m:
        return _none(say("process.no-estimate-thin-plate"), leg_m)
    outside = outside_measured(current_a, volts, travel_m_s)
    mark = None if outside is None else say("process.band-widened", outside=outside)
    if leg_m is None:
        depth = _estimate("Penetration, bead on plate", typical * below, typical, typical * above,
                          mark, _DEPTH_SOURCES)  # fmt: skip
        return Melted(depth, _blank("Dilution", "share", say("process.no-estimate-butt")))
    shallow, middle, deep = root_penetration(typical)
    low = middle * (1 - hypot(1 - below, 1 - shallow / middle))
    high = middle * (1 + hypot(above - 1, deep / middle - 1))
    shares = [dilution(melted_by_fillet(leg_m, root), bead_m2) for root in (low, middle, high)]
    return Melted(
        _estimate("Penetration past the root", low, middle, high, mark, _DEPTH_SOURCES),
        Quantity(
            name="Dilution",
            measure="share",
            value=shares[1],
            low=shares[0],
            high=shares[2],
            meaning="band",
            sources=("dilution-sections", *_DEPTH_SOURCES),
            low_by=mark,
        ),
    )


def _estimate(
    name: str,
    low: float,
    value: float,
    high: float,
    mark: Phrase | None,
    sources: tuple[str, ...],
) -> Quantity:
    return Quantity(
        name=name,
        measure="length",
        value=value,
        low=low,
        high=high,
        meaning="band",
        sources=sources,
        low_by=mark,
    )


def _blank(name: str, measure: str, reason: Phrase) -> Quantity:
    return Quantity(name, measure, None, meaning="band", low_by=reason)


def _none(reason: Phrase, leg_m: float | None) -> Melted:
    name = "Penetration, bead on plate" if leg_m is None else "Penetration past the root"
    return Melted(_blank(name, "length", reason), _blank("Dilution", "share", reason))
