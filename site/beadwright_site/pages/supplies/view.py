"""What the Supplies page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.supply.leftovers import SpoolLeft
from beadwright.supply.purchase import purchase_total
from beadwright.supply.supplies_page import A_LIFETIME, Supplies, SuppliesAnswer
from beadwright.units import System
from beadwright_site.parts.facts import Fact
from beadwright_site.written import cents, written

BY_WORDS = {"weight": "by weight", "size": "by size, wound as spools are",
            "full": "against a full spool"}  # fmt: skip


def headline_of(found: SuppliesAnswer) -> str:
    """Return what to buy, in a line."""
    need = found.supplies
    if need.count == 0:
        return "Nothing to buy"
    wire = _plural(need.packages.count, "package") + " of wire"
    if need.packages.count == 0:
        wire = "no wire"
    if need.cylinders is None:
        return f"Buy {wire}; gas from the bulk tank"
    return f"Buy {wire}, {_plural(need.cylinders, 'cylinder')}"


def _plural(count: int, noun: str) -> str:
    return f"{count:,} {noun}{'' if count == 1 else 's'}"


def need_facts(found: SuppliesAnswer) -> Iterator[Fact]:
    """Yield what the parts take."""
    need, system = found.supplies, found.units
    yield Fact(written(need.wire_kg, "mass", system), "wire")
    yield Fact(written(need.wire_m, "distance", system), "of wire off the spool")
    yield Fact(f"{need.packages.changes:,}", "change-overs")
    yield Fact(written(need.gas_m3, "gas_volume", system), "gas")
    if need.cylinder_m3 is None:
        yield Fact("bulk", "gas supply")
    else:
        yield _lasting(need, need.cylinder_weeks, "cylinder")
    if need.cylinder_s is None:
        yield Fact(written(need.packages.left_kg, "mass", system), "wire left over")
    else:
        yield Fact(written(need.cylinder_s, "hours", system), "of arc, a full one")
    yield Fact(written(need.arc_s, "hours", system), "arc time")
    yield _lasting(need, need.package_weeks, "package")
    yield Fact(f"{need.tips:,} + {need.nozzles:,}", "tips + nozzles")


def _lasting(need: Supplies, weeks: float | None, noun: str) -> Fact:
    """How long a package or a cylinder lasts; what goes in less than a week, how many a week."""
    if weeks is None:
        return Fact("–", f"a {noun} lasts")
    if weeks < 1:
        return Fact(_few(1 / weeks), f"{noun}s a working week")
    if weeks <= 2 * need.weeks:
        return Fact(_few(weeks), f"working weeks a {noun} lasts")
    years = weeks / need.weeks
    return Fact("a lifetime" if years > A_LIFETIME else f"{_few(years)} years", f"a {noun} lasts")


def _few(number: float) -> str:
    return f"{number:,.0f}" if number >= 100 else f"{number:,.1f}"


def buy_rows(found: SuppliesAnswer) -> Iterator[tuple[str, str, str, str, str, str]]:
    """Yield item, package, count, price of one, amount and note of each line."""
    sign = found.currency
    for row in found.purchases:
        price = "–" if row.price is None else cents(row.price, sign)
        amount = "–" if row.amount is None else cents(row.amount, sign)
        package = row.package.replace("ft3", " ft³").replace(".00 ", " ")
        yield row.item, package, f"{row.count:,}", price, amount, row.note


def total_of(found: SuppliesAnswer) -> str:
    """Return what all lines cost, or that a price is missing."""
    total = purchase_total(found.purchases)
    return "a price is missing" if total is None else cents(total, found.currency)


def spool_facts(left: SpoolLeft | None, system: System) -> Iterator[Fact]:
    """Yield what the begun spool still lays; nothing if it was neither weighed nor measured."""
    if left is None:
        return
    yield Fact(_span_of(left.weld_m, "distance", system), "of this weld")
    yield Fact(_span_of(left.wire_kg, "mass", system), f"wire, {BY_WORDS[left.by]}")
    yield Fact(f"{left.parts:,.1f}", "parts")
    yield Fact(written(left.wire_m, "distance", system), "of wire")
    yield Fact(written(left.arc_s, "time", system), "of arc")


def _span_of(three: tuple[float, float, float], measure: str, system: System) -> str:
    low, taken, high = (units.show(value, measure, system) for value in three)
    unit = units.symbol(measure, system)
    return f"{taken} {unit}" if low == high else f"{taken} {unit} ({low}–{high})"


def gas_facts(found: SuppliesAnswer) -> Iterator[Fact]:
    """Yield what the cylinder at hand still gives; nothing if nothing was written about it."""
    left = found.gas_left
    if left is None or left.gas_m3[1] <= 0:
        return
    yield Fact(written(left.lasts_s, "time", found.units), "with the gas on")
    yield Fact(f"{left.parts:,.1f}", "parts")
    drawn = _span_of(left.gas_m3, "gas_volume", found.units)
    yield Fact(drawn, "gas that can be drawn")
