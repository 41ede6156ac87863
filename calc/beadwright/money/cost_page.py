"""The Cost page's answer: what each way costs, whether to switch, and what that depends on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.errors import UnknownEntryError
from beadwright.money.break_even import BreakEven, Case, break_even
from beadwright.money.capacity import Capacity, Hours, capacity
from beadwright.money.chance import Chance, ChanceState
from beadwright.money.cost import Cost, cost_of
from beadwright.money.cost_query import CostSchema, defaults_for
from beadwright.money.cost_ways import PlannedWay, planned_ways, rates_of
from beadwright.money.curves import CurvePoint, curve
from beadwright.money.demo_prices import INVENTED, INVENTED_IN_USE
from beadwright.money.levers import levers_of, swing_shares
from beadwright.money.swings import Lever, Swing, net_band, swings
from beadwright.money.verdict import Verdict, break_even_sentences, verdict
from beadwright.phrases import Phrase, say
from beadwright.reading.page_query import PageAnswered, PageQuery, read_page
from beadwright.reading.queries import split_query
from beadwright.results import Note
from beadwright.units import System


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
        parts: Parts a year.
        batch: Parts in a batch.
        notes: Notes, the most severe first.
    """

    ways: tuple[PlannedWay, ...]
    costs: tuple[Cost, ...]
    capacities: tuple[Capacity, ...]
    comparisons: tuple[Comparison, ...]
    parts: int
    batch: int

    @property
    def units(self) -> System:
        """How to show."""
        return self.ways[0].dialled.job.units

    @property
    def currency(self) -> str:
        """The sign before money."""
        return str(self.query.values.get("currency", ""))


def cost_answer(query: str, kept: Mapping[str, Any] | None = None) -> CostAnswer:
    """Return the Cost page's answer to a query string.

    Args:
        query: Keys of ``cost_query.DEFAULTS`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    other_wire = split_query(query).get("b_wire") or str((kept or {}).get("b_wire") or "")
    read = read_page(query, kept, CostSchema, defaults_for(other_wire))
    ways = planned_ways(read)
    rates, values = rates_of(read.values), read.values
    costs = tuple(cost_of(planned.way, rates) for planned in ways)
    parts = int(values["parts"])
    hours = Hours(values["welders"], values["shift"], values["shifts"], values["weeks"])
    return CostAnswer(
        "cost",
        read,
        ways,
        costs,
        tuple(capacity(planned.way, parts, hours) for planned in ways),
        tuple(_compare(read, ways, costs, index) for index in range(1, len(ways))),
        parts,
        int(values["batch"]),
        notes=(*_notes(read, ways), *read.notes()),
    )


def _compare(
    read: PageQuery, ways: tuple[PlannedWay, ...], costs: tuple[Cost, ...], index: int
) -> Comparison:
    values, now, other = read.values, ways[0], ways[index]
    case = Case(rates_of(values), now.way, other.way, values["parts"], values["months"])
    levers = levers_of(case, now, other, swing_shares(values))
    found, sign = break_even(case), str(values.get("currency", ""))
    order = swings(case, levers)
    band = net_band(case, order)
    chance = None
    if "draws" in read.typed:
        chance = Chance(case, levers, values["seed"], values["draws"]).run(values["draws"])
    return Comparison(
        case,
        found,
        break_even_sentences(case, found, sign),
        levers,
        order,
        band,
        verdict(case, (costs[0], costs[index]), band, order, sign),
        curve(case, order, found.parts_a_year),
        chance,
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
    comparison, values = answer.comparisons[way - 1], answer.query.values
    return Chance(comparison.case, comparison.levers, values["seed"], values["draws"])


def _notes(read: PageQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
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
    if not read.values.get("labour") and not read.values.get("overhead"):
        yield Note("note", say("money.time-free"), "practice", "labour")
    if not read.values.get("parts"):
        yield Note("note", say("money.no-parts-no-payback"), field="parts")
    names = invented_in_use(read)
    if names:
        yield Note("caution", say(INVENTED_IN_USE, keys=names), "invented")


def invented_in_use(read: PageQuery) -> tuple[str, ...]:
    """Return the keys whose invented figures that are still the invented ones.

    Args:
        read: A page's query [-].
    """
    return tuple(
        key for key in INVENTED if key in read.filled and key in read.values and key not in read.own
    )
