"""What the Weld list shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright.weld_list.list_page import ListAnswer
from beadwright.weld_list.list_rows import (
    ListRow,
    called,
    heaviest,
    hottest,
    most_pulled,
    worst_checks,
)
from beadwright.weld_list.list_totals import Package
from beadwright.words.wording import worded
from beadwright_site.parts.distortion_facts import distortion_fact
from beadwright_site.parts.facts import Fact
from beadwright_site.parts.job_card import weld_line
from beadwright_site.written import cents, counted, written, written_quantity


@dataclass(frozen=True, slots=True)
class ShownRow:
    """A line as shown.

    Attributes:
        number: Its place in the list.
        name: What it is called.
        typed: The line as typed, on one line.
        said: What is set for it, in a line; empty where it cannot be read.
        job: The job in a line.
        wrong: Why it cannot be read, or empty.
        query: The job as a query.
    """

    number: int
    name: str
    typed: str
    said: str
    job: str
    wrong: str
    query: str


def headline_of(found: ListAnswer) -> str:
    """Return what a part costs, in a line."""
    if not found.totals:
        return "No weld to count yet"
    cost = cents(found.totals[0].part, found.currency)
    welds = sum(row.weld.first.dialled.job.welds for row in found.counted)
    return f"{cost} a part, {counted(welds, 'weld')}"


def missing_of(found: ListAnswer) -> str:
    """Return what is missing from the totals; empty where nothing is."""
    count = found.missing
    if not count:
        return ""
    return f"{counted(count, 'line')} not counted: cannot be read"


def waiting_of(found: ListAnswer) -> str:
    """Return how many lines are still to be counted; empty once all are."""
    if not found.waiting:
        return ""
    return f"{counted(found.waiting, 'line')} of {len(found.rows):,} still to be counted"


def total_facts(found: ListAnswer) -> Iterator[Fact]:
    """Yield what a part takes the first way."""
    if not found.totals:
        return
    total, system = found.totals[0], found.units
    yield Fact(written(total.arc_s, "time", system), "arc time")
    yield Fact(written(total.off_s, "time", system), "non-arc time")
    yield Fact(written(total.time_s, "time", system), "all time, rework in it")
    yield Fact(written(total.metal_kg, "mass", system), "weld metal")
    yield Fact(written(total.wire_kg, "mass", system), "wire bought")
    yield Fact(written(total.gas_m3, "gas_volume", system), "gas")


def worst_line(found: ListAnswer) -> str:
    """Return which weld is the heaviest and which the hottest, in a line; empty for no weld."""
    heavy, hot = heaviest(found.counted), hottest(found.counted)
    if heavy is None or hot is None:
        return ""
    return f"Heaviest: {called(heavy)}. Hottest: {called(hot)}."


def way_rows(found: ListAnswer) -> Iterator[tuple[str, str, str]]:
    """Yield each way, its cost a part and its time a part."""
    for total in found.totals:
        time = written(total.time_s, "time", found.units)
        yield total.name, cents(total.part, found.currency), time


def package_rows(found: ListAnswer) -> Iterator[tuple[str, str]]:
    """Yield spools and cylinders for a batch."""
    for each in found.packages:
        yield each.name, _package(each, found)


def _package(each: Package, found: ListAnswer) -> str:
    measure = "mass" if each.kind == "wire" else "gas_volume"
    amount = written(each.amount, measure, found.units)
    if each.count is None or each.holds is None:
        return f"{amount}, bulk"
    word = "spool" if each.kind == "wire" else "cylinder"
    holds = written(each.holds, measure, found.units)
    return f"{counted(each.count, word)} of {holds} ({amount})"


def check_rows(found: ListAnswer) -> Iterator[tuple[str, str, str]]:
    """Yield how each check of machine and circuit stands at the weld that asks most, and why."""
    for row, check in worst_checks(found.counted):
        yield check.held, called(row), worded(check.phrase, found.units)


def pull_rows(found: ListAnswer) -> Iterator[tuple[Fact, str]]:
    """Yield each distortion at the weld that does most of it, and which weld that is."""
    for name, row, pull in most_pulled(found.counted):
        yield distortion_fact(name, pull, found.units), called(row)


def shown_row(row: ListRow) -> ShownRow:
    """Return a line as shown."""
    line, weld = row.line, row.weld
    typed = " ".join(line.typed.splitlines())
    if weld is None:
        said = "" if row.wrong else "still to be counted"
        return ShownRow(line.number, called(row), typed, said, "", row.wrong, "")
    dialled = weld.first.dialled
    settings, system = dialled.settings, dialled.job.units
    said = " · ".join(
        written_quantity(q, system)
        for q in (settings.wire_feed, settings.volts, settings.travel)
        if q.value is not None
    )
    count, passes = dialled.job.welds, dialled.plan.passes
    more = [f"{count} ×" if count > 1 else "", weld_line(dialled),
            written(dialled.job.weld_length_m, "length", system),
            f"{passes} passes" if passes > 1 else ""]  # fmt: skip
    job = ", ".join(text for text in more if text).replace("×,", "×")
    return ShownRow(line.number, called(row), typed, said, job, "", weld.query)


def order_words(found: ListAnswer) -> str:
    """Return how many changes the order saves."""
    order = found.order
    now, given = order.changes, order.given
    told = (
        f"{now.wires} of wire or gas, {counted(now.turns, 'turn')} of the part, "
        f"{now.dials} of the dial"
    )
    if now == given:
        return f"Changes: {told}; the same as in your order."
    return (
        f"Changes: {told}. Your order: {given.wires}, {given.turns}, {given.dials}. "
        f"Saved: {order.saved}."
    )


def quote_rows(found: ListAnswer) -> Iterator[tuple[str, str, str, str, str]]:
    """Yield parts in the batch, cost of a part, set-up in it, price of a part, of the batch."""
    if not found.quotes:
        return
    for each in found.quotes[0]:
        sign = found.currency
        yield (f"{each.parts:,}", cents(each.cost, sign), cents(each.set_up, sign),
               cents(each.price, sign), cents(each.batch, sign))  # fmt: skip


def piece_rows(found: ListAnswer) -> Iterator[tuple[str, str]]:
    """Yield the pieces of a part's cost, for the shop's own sheet."""
    if found.totals:
        for piece in found.totals[0].pieces:
            yield piece.name, cents(piece.amount, found.currency)
