"""The inputs of a comparison that are not known for sure, and how to find out each.

What is unsure in both ways alike (rates, parts, gas, flow, minutes off the arc, rework, size of the
welds) is one lever that moves both; what is one wire's (price, laid metal, spatter) is its own,
unless both ways have it alike.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from math import hypot

from beadwright.money.break_even import Case
from beadwright.money.cost_ways import PlannedWay
from beadwright.money.swing_shares import SwingShares
from beadwright.money.swings import Lever, Part
from beadwright.money.way import Way
from beadwright.phrases import Phrase, say

MEASURED_SHARE = 0.02
"""Error of a rate weighed on the bench, as a share [-]. Common practice."""

FLOW_SHARE = 0.15
"""Error of a ball flowmeter with its gun, as a share [-]. Common practice."""

_BOTH: tuple[Part, Part] = ("now", "other")
_OFF = ("load_s", "fit_up_s", "reposition_s", "clean_s", "other_s")


def levers_of(
    case: Case, now: PlannedWay, other: PlannedWay, shares: SwingShares
) -> tuple[Lever, ...]:
    """Return the levers of a comparison that change its result.

    Args:
        case: The comparison [-].
        now: The way the shop welds now [-].
        other: The way it wonders about [-].
        shares: How far each kind may be off [-].
    """
    found = [
        *_shop(case, shares),
        *_own_rates(case, shares),
        *_of_wires(now, other, shares),
    ]
    return tuple(lever for lever in found if lever.value and lever.low != lever.high)


def _lever(
    key: str,
    name: Phrase,
    targets: tuple[tuple[Part, str], ...],
    share: float | tuple[float, float],
    measure: str,
    value: float,
    settle: Phrase,
    *,
    bench: bool = False,
) -> Lever:
    low, high = share if isinstance(share, tuple) else (1 - share, 1 + share)
    return Lever(
        key=key,
        name=name,
        targets=targets,
        low=low,
        high=high,
        measure=measure,
        value=value,
        bench=bench,
        settle=settle,
    )


def _each(*fields: str) -> tuple[tuple[Part, str], ...]:
    return tuple((part, field) for part in _BOTH for field in fields)


def _off(way: Way) -> float:
    return way.fit_up_s + way.reposition_s + way.clean_s + way.other_s


def _shop(case: Case, shares: SwingShares) -> list[Lever]:
    rates, now, other = case.rates, case.now, case.other
    off = _off(now) or _off(other)
    return [
        _lever(
            "labour",
            say("money.labour"),
            (("rates", "labor_s"),),
            shares.rates,
            "rate",
            rates.labor_s,
            say("money.settle-labour"),
        ),
        _lever(
            "overhead",
            say("money.overhead"),
            (("rates", "overhead_s"),),
            shares.rates,
            "rate",
            rates.overhead_s,
            say("money.settle-overhead"),
        ),
        _lever(
            "parts",
            say("money.parts"),
            (("case", "parts"),),
            shares.volume,
            "count",
            case.parts,
            say("money.settle-parts"),
        ),
        _lever(
            "gas",
            say("money.gas-price"),
            _each("gas_m3"),
            shares.prices,
            "price_per_volume",
            now.gas_m3 or other.gas_m3,
            say("money.settle-gas-price"),
        ),
        _lever(
            "flow",
            say("money.gas-flow"),
            _each("gas_flow_m3_s"),
            FLOW_SHARE,
            "gas_flow",
            now.gas_flow_m3_s,
            say("money.settle-gas-flow"),
            bench=True,
        ),
        _lever(
            "off",
            say("money.minutes-off"),
            _each(*_OFF),
            shares.minutes,
            "time",
            off,
            say("money.settle-minutes-off"),
            bench=True,
        ),
        _lever(
            "rework",
            say("money.welded-twice"),
            _each("rework"),
            (0.0, 2.0),
            "share",
            now.rework or other.rework,
            say("money.settle-rework"),
        ),
        _lever(
            "size",
            say("money.weld-size"),
            _each("metal_kg"),
            (1.0, 1 + shares.size),
            "mass",
            now.metal_kg,
            say("money.settle-weld-size"),
            bench=True,
        ),
        _lever(
            "once",
            say("money.paid-once"),
            (("other", "once"),),
            shares.once,
            "money",
            other.once,
            say("money.settle-paid-once"),
        ),
    ]


def _own_rates(case: Case, shares: SwingShares) -> list[Lever]:
    """The rate of a cell; two ways in one cell move together."""
    held: tuple[tuple[Part, float | None], ...] = (
        ("now", case.now.rate_s),
        ("other", case.other.rate_s),
    )
    rated: tuple[Part, ...] = tuple(part for part, rate in held if rate is not None)
    if not rated:
        return []
    return [
        _lever(
            "own_rate",
            say("money.own-rate"),
            tuple((part, "rate_s") for part in rated),
            shares.rates,
            "rate",
            dict(held)[rated[-1]] or 0.0,
            say("money.settle-own-rate"),
        )
    ]


_BOTH_WAYS: Mapping[str, Phrase] = {
    "price": say("money.wire-price-both"),
    "laid": say("money.laid-an-hour-both"),
    "efficiency": say("money.laid-over-used-both"),
    "spatter": say("money.spatter-minutes-both"),
}
"""Names of what is one wire's own, where both ways have it alike."""


def _of_wires(now: PlannedWay, other: PlannedWay, shares: SwingShares) -> list[Lever]:
    """What is one wire's own; where both ways have it alike, one lever moves both."""
    found: list[Lever] = []
    jobs = now.dialled.job, other.dialled.job
    one_wire = jobs[0].wire.type == jobs[1].wire.type and jobs[0].wire.size == jobs[1].wire.size
    pairs = zip(_way(now, "now", shares), _way(other, "other", shares), strict=True)
    for here, there in pairs:
        key = here.key.removeprefix("now_")
        alike = here.value == there.value
        if key in ("laid", "efficiency"):  # worked out for one wire, they err alike
            weighed = now.measured or other.measured
            alike = one_wire and (here.low, here.high) == (there.low, there.high) and (
                alike or not weighed
            )  # fmt: skip
        if alike:
            targets = (*here.targets, *there.targets)
            found.append(replace(here, key=key, name=_BOTH_WAYS[key], targets=targets))
        else:
            found += here, there
    return found


def _way(planned: PlannedWay, part: Part, shares: SwingShares) -> list[Lever]:
    way, name = planned.way, planned.way.name
    low, typical, high = planned.efficiency
    feed = MEASURED_SHARE if planned.measured else shares.feed
    if feed and planned.alike is not None:  # sure is sure
        feed = hypot(feed, planned.alike.band)
    return [
        _lever(
            f"{part}_price",
            say("money.wire-price", way=name),
            ((part, "wire_kg"),),
            shares.prices,
            "price_per_mass",
            way.wire_kg,
            say("money.settle-wire-price"),
        ),
        _lever(
            f"{part}_laid",
            say("money.laid-an-hour", way=name),
            ((part, "melted_kg_s"),),
            feed,
            "deposition",
            way.laid_kg_s,
            say("money.settle-laid", way=name),
            bench=True,
        ),
        _lever(
            f"{part}_efficiency",
            say("money.laid-over-used", way=name),
            ((part, "efficiency"),),
            (low / typical, high / typical),
            "share",
            way.efficiency,
            say("money.settle-laid-over-used", way=name),
            bench=True,
        ),
        _lever(
            f"{part}_spatter",
            say("money.spatter-minutes", way=name),
            ((part, "spatter_s"),),
            2 * shares.minutes if 2 * shares.minutes < 1 else 1.0,
            "time",
            way.spatter_s,
            say("money.settle-spatter", way=name),
            bench=True,
        ),
    ]
