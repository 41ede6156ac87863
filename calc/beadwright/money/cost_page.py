"""The Cost page's answer: what each way costs, whether to switch, and what that depends on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.errors import UnknownEntryError
from beadwright.job.page_query import PageAnswered, PageQuery, read_page
from beadwright.money.break_even import BreakEven, Case, break_even
from beadwright.money.capacity import Capacity, Hours, capacity
from beadwright.money.chance import Chance, ChanceState
from beadwright.money.cost import Cost, cost_of
from beadwright.money.cost_query import CostQuery
from beadwright.money.cost_ways import PlannedWay, planned_ways, rates_of
from beadwright.money.curves import CurvePoint, curve
from beadwright.money.demo_prices import INVENTED, INVENTED_IN_USE
from beadwright.money.levers import levers_of
from beadwright.money.swings import Lever, Swing, net_band, swings
from beadwright.money.verdict import Verdict, break_even_sentences, verdict
from beadwright.phrases import Phrase, say
from beadwright.results import Note


@dataclass(frozen=True, slots=True)
class Comparison:
    """The first way compared with another.

    Attributes:
        case: The two ways, rates, volume, months.
        break_even: Where they meet.
        sentences: A sentence for each break-even: parts_a_year, months, price, laid.
        levers: What is not known for sure.
        swings: What it depends on, longest first.
        band: Low and high of the net saving [money/year].
        verdict: Switch, stay or too close.
        curve: Both costs against parts a year.
        chance: Chance that switching pays, where draws were asked for in the query.
    """

    case: Case
    break_even: BreakEven
    sentences: Mapping[str, Phrase]
    levers: tuple[Lever, ...]
    swings: tuple[Swing, ...]
    band: tuple[float, float]
    verdict: Verdict
    curve: tuple[CurvePoint, ...]
    chance: ChanceState | None


@dataclass(frozen=True, slots=True)
class CostAnswer(PageAnswered):
    """The Cost page's answer.

    Attributes:
        page: ``cost``.
        query: The query as read.
        ways: Each way as planned, the first as the shop welds now.
        costs: What each costs, in the same order.
        capacities: What each asks of the shop's hours.
        comparisons: The first way against each other one.
        notes: Notes, the most severe first.
    """

    query: CostQuery
    ways: tuple[PlannedWay, ...]
    costs: tuple[Cost, ...]
    capacities: tuple[Capacity, ...]
    comparisons: tuple[Comparison, ...]

    @property
    def currency(self) -> str:
        """The sign before money."""
        return self.query.currency

    @property
    def parts(self) -> int:
        """Parts a year."""
        return self.query.parts

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
    hours = Hours(read.welders, read.shift, read.shifts, read.weeks)
    return CostAnswer(
        page="cost",
        query=read,
        ways=ways,
        costs=costs,
        capacities=tuple(capacity(planned.way, read.parts, hours) for planned in ways),
        comparisons=tuple(_compare(read, ways, costs, index) for index in range(1, len(ways))),
        notes=tuple(_notes(read, ways)),
    )


def _compare(
    read: CostQuery, ways: tuple[PlannedWay, ...], costs: tuple[Cost, ...], index: int
) -> Comparison:
    now, other, sign = ways[0], ways[index], read.currency
    case = Case(rates_of(read), now.way, other.way, read.parts, read.months)
    levers = levers_of(case, now, other, read.swings)
    found = break_even(case)
    order = swings(case, levers)
    band = net_band(case, order)
    chance = None
    if "draws" in read.typed:
        chance = Chance(case, levers, read.seed, read.draws).run(read.draws)
    return Comparison(
        case=case,
        break_even=found,
        sentences=break_even_sentences(case, found, sign),
        levers=levers,
        swings=order,
        band=band,
        verdict=verdict(case, (costs[0], costs[index]), band, order, sign),
        curve=curve(case, order, found.parts_a_year),
        chance=chance,
    )


def start_chance(answer: CostAnswer, way: int = 1) -> Chance:
    """Return a run of draws for a comparison, to be taken chunk by chunk.

    Args:
        answer: The answer [-].
        way: Which way the first is compared with, 1 for the second [-].

    Raises:
        UnknownEntryError: If there is no such way.
    """
    if not 1 <= way <= len(answer.comparisons):
        raise UnknownEntryError(f"no way {way}; there are 1 to {len(answer.comparisons)}")
    comparison, query = answer.comparisons[way - 1], answer.query
    return Chance(comparison.case, comparison.levers, query.seed, query.draws)


def _notes(read: CostQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    for planned in ways:
        for note in planned.dialled.notes:
            if note.level in ("stop", "out"):
                told = say("money.of-way", way=planned.way.name, told=note.phrase)
                yield Note(note.level, told, note.source, planned.prefix + note.field)
    for planned in ways:
        if planned.inherited_price:
            yield Note(
                "caution",
                say("money.price-stands-in", way=planned.way.name),
                field=f"{planned.prefix}wire_price",
            )
    if not read.labour and not read.overhead:
        yield Note("note", say("money.time-free"), "practice", "labour")
    if not read.parts:
        yield Note("note", say("money.no-parts-no-payback"), field="parts")
    names = invented_in_use(read)
    if names:
        yield Note("caution", say(INVENTED_IN_USE, keys=names), "invented")


def invented_in_use(read: PageQuery) -> tuple[str, ...]:
    """Return the keys whose invented figures that are still the invented ones.

    Args:
        read: A page's query [-].
    """
    return tuple(key for key in INVENTED if key in read.stood_in)
