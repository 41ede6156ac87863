"""What the Cost page shows of its answer, in numbers already written."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from beadwright import units
from beadwright.money.cost_page import Comparison, CostAnswer
from beadwright.money.cycle import what_rules
from beadwright.money.even_sentences import FAR_MONTHS, MUST_LAY, PAYS_NO_FASTER
from beadwright.money.swings import Swing
from beadwright.units import System
from beadwright.words.money_text import money_text
from beadwright.words.wording import worded
from beadwright_site.pages.cost.shares import rounded
from beadwright_site.written import cents, counted, written

SHOWN_SWINGS = 8
LEAST_SWING = 0.02
"""Swings under this share of the longest are counted, not drawn."""


@dataclass(frozen=True, slots=True)
class Card:
    """One way as a card.

    Attributes:
        letter: A to D.
        name: What it is called.
        part: Cost of a part.
        minutes: Time of a part.
        arc: Arc time of it.
        length: Cost of a foot or metre of weld.
        batch: Cost of a batch.
        year: Cost of a year.
        laid: Laid metal an hour of arc.
        cheapest: True if no way costs less a part.
        measured: True if its arc time or laid metal was measured.
        delivers: True if the shop has the hours.
        hours: Whether the shop can deliver, in a sentence.
        rules: What rules the time of a part, in a sentence.
        facts: Its hours: name and number.
    """

    letter: str
    name: str
    part: str
    minutes: str
    arc: str
    length: str
    batch: str
    year: str
    laid: str
    cheapest: bool
    measured: bool
    delivers: bool
    hours: str
    rules: str
    facts: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Table:
    """Pieces by way, with their sum.

    Attributes:
        title: What the pieces are of.
        heads: Letter of each way.
        rows: Name of the piece, a number for each way.
        total: Name of the sum, a number for each way.
    """

    title: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    total: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Even:
    """One break-even: what it is, the number, the sentence."""

    name: str
    number: str
    text: str


@dataclass(frozen=True, slots=True)
class Bar:
    """One swing as drawn; lengths in percent of the width.

    Attributes:
        name: What it is.
        ends: Its low and high, written.
        left: Left end [%].
        width: Length [%].
        zero: Where nothing is saved [%], or None if not in the picture.
        at_low: Net saving with it low.
        at_high: With it high.
        low_left: True if the low end saves less.
        turns: True if it alone turns the answer.
        settle: What to do to know it.
    """

    name: str
    ends: str
    left: float
    width: float
    zero: float | None
    at_low: str
    at_high: str
    low_left: bool
    turns: bool
    settle: str


def _length(amount: float, sign: str, system: System) -> str:
    return f"{_a_length(amount, sign, system)}{units.symbol('cost_per_length', system)}"


def _a_length(amount: float, sign: str, system: System) -> str:
    """Cost of a foot or metre of weld, without the unit."""
    return cents(units.convert(amount, "cost_per_length", system), sign)


def cards(found: CostAnswer) -> tuple[Card, ...]:
    """Return each way as a card."""
    sign, system = found.currency, found.units
    least = min(round(cost.part, 2) for cost in found.costs)
    made: list[Card] = []
    for planned, cost, held in zip(found.ways, found.costs, found.capacities, strict=True):
        facts = (
            ("Arc hours a year", written(held.arc_s, "hours", system)),
            ("Shift hours a year", written(held.shift_s, "hours", system)),
            ("Parts a shift", f"{held.parts_a_shift:,.1f}"),
            ("Operating factor", f"{planned.way.factor:.0%}"),
        )
        made.append(
            Card(
                planned.prefix[:1].upper() or "A",
                planned.way.name,
                cents(cost.part, sign),
                f"{cost.time_s / 60:.1f} min",
                f"{planned.way.arc_s / 60:.1f} min",
                _length(cost.metre, sign, system),
                money_text(cost.batch(found.batch), sign),
                money_text(cost.year(found.parts), sign),
                written(planned.way.laid_kg_s, "deposition", system),
                round(cost.part, 2) == least,
                planned.measured,
                held.delivers,
                worded(held.phrase, found.units),
                worded(what_rules(planned.way), found.units),
                facts,
            )
        )
    return tuple(made)


def pieces_table(found: CostAnswer) -> Table:
    """Return the pieces of a part's cost, which add up as shown."""
    sign = found.currency
    columns = [rounded([piece.amount for piece in cost.pieces], 2) for cost in found.costs]
    names = [piece.name for piece in found.costs[0].pieces]
    rows = tuple(
        (name, *(cents(column[0][index], sign) for column in columns))
        for index, name in enumerate(names)
    )
    total = ("A part", *(cents(column[1], sign) for column in columns))
    return Table("What a part costs", letters_of(found), rows, total)


def times_table(found: CostAnswer) -> Table:
    """Return the minutes of a part, which add up as shown; what no way takes is left out."""
    columns = [rounded([t.amount / 60 for t in cost.times], 2) for cost in found.costs]
    names = [t.name for t in found.costs[0].times]
    rows = tuple(
        (name, *(f"{column[0][index]:.2f}" for column in columns))
        for index, name in enumerate(names)
        if any(column[0][index] for column in columns)
    )
    total = ("A part", *(f"{column[1]:.2f}" for column in columns))
    return Table("Where the minutes go", letters_of(found), rows, total)


def sums_table(found: CostAnswer) -> Table:
    """Return the cost by length, batch and year."""
    made, sign = cards(found), found.currency
    unit = "A foot of weld" if found.units == "us" else "A meter of weld"
    rows = (
        (unit, *(_a_length(cost.metre, sign, found.units) for cost in found.costs)),
        (f"Batch of {found.batch:,}", *(card.batch for card in made)),
    )
    total = (f"Year of {found.parts:,.0f}", *(card.year for card in made))
    return Table("In all", letters_of(found), rows, total)


def letters_of(found: CostAnswer) -> tuple[str, ...]:
    """Return the letter of each way: A to D."""
    return tuple(planned.prefix[:1].upper() or "A" for planned in found.ways)


def evens(found: Comparison, sign: str, system: System) -> Iterator[Even]:
    """Yield where the two ways meet, each with its sentence."""
    met, case = found.break_even, found.case
    text = {key: worded(told, system) for key, told in found.sentences.items()}
    if case.alike:
        yield Even("Break-even", "–", text["parts_a_year"])
        return
    parts = "–" if met.parts_a_year is None else f"{met.parts_a_year:,.0f}"
    yield Even("Parts a year to break even", parts, text["parts_a_year"])
    far = met.months is None or met.months > FAR_MONTHS
    months = "–" if far or met.months is None else f"{met.months:.1f}"
    yield Even("Payback, months", months, text["months"])
    yield Even("Most you could pay for this wire",
               _price(met.price, case.now.wire_kg, sign, system),
               text["price"])  # fmt: skip
    if met.price_paid_back is not None and case.to_carry > 0:
        price = _price(met.price_paid_back, case.now.wire_kg, sign, system)
        back = (
            f"At {counted(case.parts, 'part')} a year, payback in {counted(case.months, 'month')}."
        )
        yield Even("Most, with the change-over paid back", price, back)
    says = found.sentences["laid"].key in (MUST_LAY, PAYS_NO_FASTER)
    laid = written(met.laid, "deposition", system) if says else "–"
    yield Even("Deposition rate it needs", laid, text["laid"])


def _price(price: float | None, now: float, sign: str, system: System) -> str:
    if price is None:
        return "–"
    shown = units.convert(price, "price_per_mass", system)
    text = f"{sign}{shown:,.2f}{units.symbol('price_per_mass', system)}"
    return f"{text} ({price / now - 1:+.0%})" if now > 0 else text


def bars(found: Comparison, sign: str, system: System) -> tuple[tuple[Bar, ...], int]:
    """Return the longest swings as drawn, and how many shorter ones there are."""
    swings = found.swings
    longest = swings[0].width if swings else 0.0
    drawn = [s for s in swings if s.width > LEAST_SWING * longest][:SHOWN_SWINGS]
    if not drawn or longest <= 0:
        return (), len(swings)
    ends = [end for s in drawn for end in (s.at_low, s.at_high)]
    least, most = _room(ends)
    made = tuple(_bar(swing, least, most, sign, system) for swing in drawn)
    return made, len(swings) - len(drawn)


def _room(ends: Sequence[float]) -> tuple[float, float]:
    """Ends of the picture; zero is in it where it is near."""
    least, most = min(ends), max(ends)
    wide = most - least
    if 0 < least < wide:
        least = 0.0
    if -wide < most < 0:
        most = 0.0
    return least - 0.04 * wide, most + 0.04 * wide


def _bar(swing: Swing, least: float, most: float, sign: str, system: System) -> Bar:
    lever, wide = swing.lever, most - least

    def at(value: float) -> float:
        return round(100 * (value - least) / wide, 2)

    low, high = min(swing.at_low, swing.at_high), max(swing.at_low, swing.at_high)
    return Bar(
        worded(lever.name, system),
        ends_text(swing, sign, system),
        at(low),
        round(max(at(high) - at(low), 0.6), 2),
        at(0.0) if least <= 0 <= most else None,
        money_text(swing.at_low, sign),
        money_text(swing.at_high, sign),
        swing.at_low <= swing.at_high,
        swing.turns,
        worded(lever.settle, system),
    )


def ends_text(swing: Swing, sign: str, system: System) -> str:
    """Return the ends between which an unsure figure lies, written with their unit."""
    lever = swing.lever
    low, high = (lever.value * factor for factor in (lever.low, lever.high))
    if lever.measure == "money":
        return f"{money_text(low, sign)} to {money_text(high, sign)}"
    if lever.measure == "count":
        return f"{low:,.0f} to {high:,.0f}"
    unit = units.symbol(lever.measure, system)
    before = sign if unit.startswith("/") else ""
    if unit.startswith("/"):
        numbers = [f"{units.convert(v, lever.measure, system):,.2f}" for v in (low, high)]
        return f"{before}{numbers[0]} to {before}{numbers[1]}{unit}"
    numbers = [units.show(v, lever.measure, system) for v in (low, high)]
    return f"{numbers[0]} to {numbers[1]} {unit}"
