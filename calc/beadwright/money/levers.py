"""The inputs of a comparison that are not known for sure, and how to find out each."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from beadwright.money.break_even import Case
from beadwright.money.cost_ways import PlannedWay
from beadwright.money.swings import Lever, Part

MEASURED_SHARE = 0.02
"""Error of a rate weighed on the bench, as a share [-]. Common practice."""

FLOW_SHARE = 0.15
"""Error of a ball flowmeter with its gun, as a share [-]. Common practice."""

_BOTH: tuple[Part, Part] = ("now", "other")
_OFF = ("fit_up_s", "reposition_s", "clean_s", "other_s")


@dataclass(frozen=True, slots=True)
class SwingShares:
    """Error of each kind of input, as a share up or down.

    Attributes:
        rates: Labor and overhead [-].
        prices: Wire and gas [-].
        feed: Laid metal per hour, where it was not measured [-].
        minutes: Minutes off the arc [-].
        volume: Parts a year [-].
        once: Paid once [-].
        size: Welds heavier than drawn; only upward [-].
    """

    rates: float
    prices: float
    feed: float
    minutes: float
    volume: float
    once: float
    size: float


def swing_shares(values: Mapping[str, float]) -> SwingShares:
    """Return the shares of a query.

    Args:
        values: A query's values by key [-].
    """
    names = ("rates", "prices", "feed", "minutes", "volume", "once", "size")
    return SwingShares(*(values[f"swing_{name}"] for name in names))


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
    found = [*_shop(case, shares), *_way(now, "now", shares), *_way(other, "other", shares)]
    return tuple(lever for lever in found if lever.value and lever.low != lever.high)


def _lever(
    key: str,
    name: str,
    targets: tuple[tuple[Part, str], ...],
    share: float | tuple[float, float],
    measure: str,
    value: float,
    settle: str,
    *,
    bench: bool = False,
) -> Lever:
    low, high = share if isinstance(share, tuple) else (1 - share, 1 + share)
    return Lever(key, name, targets, low, high, measure, value, bench, settle)


def _each(*fields: str) -> tuple[tuple[Part, str], ...]:
    return tuple((part, field) for part in _BOTH for field in fields)


def _shop(case: Case, shares: SwingShares) -> list[Lever]:
    rates, now, other = case.rates, case.now, case.other
    off = sum(getattr(now, field) for field in _OFF)
    return [
        _lever("labour", "Labour", (("rates", "labor_s"),), shares.rates, "rate", rates.labor_s,
               "Take labour from last year's payroll, not from the wage alone."),
        _lever("overhead", "Overhead", (("rates", "overhead_s"),), shares.rates, "rate",
               rates.overhead_s, "Divide last year's bills by last year's hours."),
        _lever("parts", "Parts a year", (("case", "parts"),), shares.volume, "count", case.parts,
               "Count last year's parts in the order book."),
        _lever("gas", "Price of gas", _each("gas_m3"), shares.prices, "price_per_volume",
               now.gas_m3, "Read the last gas bill, rent and delivery with it."),
        _lever("flow", "Gas flow", _each("gas_flow_m3_s"), FLOW_SHARE, "gas_flow",
               now.gas_flow_m3_s, "Put a flow gauge on the nozzle.", bench=True),
        _lever("off", "Minutes off the arc", _each(*_OFF), shares.minutes, "time", off,
               "Time ten parts from start to start with a stopwatch, both ways.", bench=True),
        _lever("size", "Size of the welds", _each("metal_kg"), (1.0, 1 + shares.size), "mass",
               now.metal_kg, "Gauge twenty legs: a leg 1/32 in over costs a fifth more.",
               bench=True),
        _lever("once", "Paid once", (("other", "once"),), shares.once, "money", other.once,
               "Get the change quoted in writing."),
    ]  # fmt: skip


def _way(planned: PlannedWay, part: Part, shares: SwingShares) -> list[Lever]:
    way, name = planned.way, planned.way.name
    low, typical, high = planned.efficiency
    feed = MEASURED_SHARE if planned.measured else shares.feed
    return [
        _lever(f"{part}_price", f"Price of wire, {name}", ((part, "wire_kg"),), shares.prices,
               "price_per_mass", way.wire_kg, "Get the price of a year's wire in writing."),
        _lever(f"{part}_laid", f"Laid an hour, {name}", ((part, "melted_kg_s"),), feed,
               "deposition", way.laid_kg_s,
               f"Run {name} at the settings you will use: weigh the plate, weld one minute by "
               "the clock, weigh it again.", bench=True),
        _lever(f"{part}_efficiency", f"Laid over wire used, {name}", ((part, "efficiency"),),
               (low / typical, high / typical), "share", way.efficiency,
               f"Run one coupon with {name}: weigh the spool and the plate before and after.",
               bench=True),
        _lever(f"{part}_spatter", f"Spatter minutes, {name}", ((part, "spatter_s"),),
               2 * shares.minutes if 2 * shares.minutes < 1 else 1.0, "time", way.spatter_s,
               f"Weld one part with {name} and time the chipping and grinding.", bench=True),
        _lever(f"{part}_rework", f"Welded twice, {name}", ((part, "rework"),), (0.0, 2.0),
               "share", way.rework, f"Count what is sent back of forty parts with {name}.",
               bench=True),
    ]  # fmt: skip
