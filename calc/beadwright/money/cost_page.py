"""The Cost page's answer: what each way costs, whether to switch, and what that depends on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from beadwright.errors import UnknownEntryError
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.money.break_even import BreakEven, Case, break_even
from beadwright.money.capacity import Capacity, Hours, capacity
from beadwright.money.chance import Chance, ChanceState
from beadwright.money.common_practice import beside_practice
from beadwright.money.cost import Cost, cost_of
from beadwright.money.cost_notes import cost_notes
from beadwright.money.cost_query import CostQuery
from beadwright.money.cost_ways import PlannedWay, planned_ways, rates_of
from beadwright.money.curves import CurvePoint, curve
from beadwright.money.even_sentences import break_even_sentences
from beadwright.money.first_year import FirstYear, Work, first_year, week_of
from beadwright.money.levers import levers_of
from beadwright.money.swings import Lever, Swing, swings
from beadwright.money.verdict import Verdict, verdict
from beadwright.money.volume_entries import parts_a_year
from beadwright.phrases import Phrase


@dataclass(frozen=True, slots=True)
class Comparison:
    """The first way compared with another.

    Attributes:
        case: The two ways, rates, volume, months.
        costs: What each costs.
        held: What each asks of the shop's hours.
        break_even: Where they meet.
        sentences: A sentence for each break-even: parts_a_year, months, price, laid.
        levers: What is not known for sure.
        swings: What it depends on, longest first.
        work: What switching does to the shop's week.
        alike: What is held equal between the two ways.
        practice: How far they stand from what the trade says of such wires, and why.
        chance: The draws: verdict, worst case, bands and picture come from them.
        verdict: Whether the other way pays.
        sums: What switching brings in the months allowed and after.
        curve: Both costs against parts a year.
    """

    case: Case
    costs: tuple[Cost, Cost]
    held: tuple[Capacity, Capacity]
    break_even: BreakEven
    sentences: Mapping[str, Phrase]
    levers: tuple[Lever, ...]
    swings: tuple[Swing, ...]
    work: Work
    alike: Phrase
    practice: tuple[Phrase, ...]
    chance: ChanceState
    verdict: Verdict
    sums: FirstYear
    curve: tuple[CurvePoint, ...]


@dataclass(frozen=True, slots=True)
class CostAnswer(PageAnswered):
    """The Cost page's answer.

    Attributes:
        page: ``cost``.
        query: The query as read.
        parts: Parts a year, in whatever way they were counted [1/year].
        ways: Each way as planned, the first as the shop welds now.
        costs: What each costs, in the same order.
        capacities: What each asks of the shop's hours.
        comparisons: The first way against each other one.
        notes: Notes, the most severe first.
    """

    query: CostQuery
    parts: int
    ways: tuple[PlannedWay, ...]
    costs: tuple[Cost, ...]
    capacities: tuple[Capacity, ...]
    comparisons: tuple[Comparison, ...]

    @property
    def currency(self) -> str:
        """The sign before money."""
        return self.query.currency

    @property
    def batch(self) -> int:
        """Parts in a batch."""
        return self.query.batch


def cost_answer(query: str, kept: Mapping[str, Any] | None = None) -> CostAnswer:
    """Return the Cost page's answer to a query string.

    Args:
        query: Keys of ``cost_query.CostQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(CostQuery, query, kept)
    ways = planned_ways(read)
    rates = rates_of(read)
    costs = tuple(cost_of(planned.way, rates) for planned in ways)
    parts = parts_a_year(read.volume, read.own, read.weeks, ways[0].way)
    hours = Hours(read.welders, read.shift, read.shifts, read.weeks)
    held = tuple(capacity(planned.way, parts, hours) for planned in ways)
    return CostAnswer(
        page="cost",
        query=read,
        parts=parts,
        ways=ways,
        costs=costs,
        capacities=held,
        comparisons=tuple(
            _compare(read, parts, ways, costs, held, index) for index in range(1, len(ways))
        ),
        notes=tuple(cost_notes(read, parts, ways)),
    )


def _compare(
    read: CostQuery,
    parts: float,
    ways: tuple[PlannedWay, ...],
    costs: tuple[Cost, ...],
    held: tuple[Capacity, ...],
    index: int,
) -> Comparison:
    now, other, sign = ways[0], ways[index], read.currency
    assert other.alike is not None  # every later way has one
    case = Case(rates_of(read), now.way, other.way, parts, read.months)
    levers = levers_of(case, now, other, read.swings)
    found = break_even(case)
    order = swings(case, levers)
    both, hours = (costs[0], costs[index]), (held[0], held[index])
    state = Chance(case, levers, read.seed, read.draws).run(read.draws)
    return Comparison(
        case=case,
        costs=both,
        held=hours,
        break_even=found,
        sentences=break_even_sentences(case, found, sign),
        levers=levers,
        swings=order,
        work=week_of(hours, found, read.weeks),
        alike=other.alike.phrase,
        practice=beside_practice(now, other),
        chance=state,
        verdict=verdict(case, both, hours, state, order, sign),
        sums=first_year(case, state),
        curve=curve(case, state, found.parts_a_year),
    )


def drawn_on(found: Comparison, state: ChanceState, sign: str) -> Comparison:
    """Return a comparison with all that comes from the draws taken from others.

    Args:
        found: The comparison [-].
        state: The draws [-].
        sign: Currency sign [-].
    """
    case = found.case
    return replace(
        found,
        chance=state,
        verdict=verdict(case, found.costs, found.held, state, found.swings, sign),
        sums=first_year(case, state),
        curve=curve(case, state, found.break_even.parts_a_year),
    )


def start_chance(answer: CostAnswer, way: int = 1, draws: int = 0) -> Chance:
    """Return a run of draws for a comparison, to be taken chunk by chunk.

    Args:
        answer: The answer [-].
        way: Which way the first is compared with, 1 for the second [-].
        draws: How many, or 0 for as many as the query asks [-].

    Raises:
        UnknownEntryError: If there is no such way.
    """
    if not 1 <= way <= len(answer.comparisons):
        raise UnknownEntryError(f"no way {way}; there are 1 to {len(answer.comparisons)}")
    comparison, query = answer.comparisons[way - 1], answer.query
    return Chance(comparison.case, comparison.levers, query.seed, draws or query.draws)
