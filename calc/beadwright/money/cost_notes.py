"""What the Cost page says beside its sums: what a figure holds, what counts for nothing."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.money.cost_query import ONCE_KEYS, CostQuery
from beadwright.money.cost_ways import PlannedWay, rates_of
from beadwright.money.demo_prices import INVENTED_IN_USE, invented_in_use
from beadwright.money.uncounted import uncounted, untimed
from beadwright.phrases import Amount, say
from beadwright.results import Note


def cost_notes(read: CostQuery, parts: float, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    """Yield the notes of a comparison.

    Args:
        read: The query [-].
        parts: Parts a year [1/year].
        ways: Its ways, the first as the shop welds now [-].
    """
    for planned in ways:
        wrong = (note for note in planned.dialled.notes if note.level in ("stop", "out"))
        for note in (*wrong, *uncounted(planned.dialled), *untimed(planned.dialled)):
            told = say("money.of-way", way=planned.way.name, told=note.phrase)
            yield Note(note.level, told, note.source, planned.prefix + note.field)
    for planned in ways:
        if planned.inherited_price:
            yield Note(
                "caution",
                say("money.price-stands-in", way=planned.way.name),
                field=f"{planned.prefix}wire_price",
            )
    yield from _spatter_stands_in(read, ways)
    for planned in ways[1:]:
        if planned.dialled.plan.transfer == "pulse" != ways[0].dialled.plan.transfer:
            told = say("money.needs-pulse", way=planned.way.name)
            yield Note("caution", told, "practice", f"{planned.prefix}transfer")
    yield from _factors(read, ways)
    yield from _instead(read, ways)
    rates = rates_of(read)
    if not rates.labor_s and not rates.overhead_s:
        yield Note("note", say("money.time-free"), "practice", "labour")
    if not parts:
        yield Note("note", say("money.no-parts-no-payback"), field="parts")
    yield from _half_invented(read, ways)
    names = invented_in_use(read)
    if names:
        yield Note("caution", say(INVENTED_IN_USE, keys=names), "invented")


def _spatter_stands_in(read: CostQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    """Another kind of wire leaves other spatter: the first one's minutes only stand in."""
    taken = read.way.spatter
    for planned in ways[1:]:
        own = read.later()[planned.prefix].way
        other = planned.dialled.job.wire.kind != ways[0].dialled.job.wire.kind
        if other and taken and own.spatter is None and own.factor is None:
            told = say("money.spatter-stands-in", way=planned.way.name, time=Amount(taken, "time"))
            yield Note("note", told, "practice", f"{planned.prefix}spatter")


HALF_INVENTED = "money.half-invented"
"""Id of what is said where a shop's own figure stands against an invented one."""

_PAIRS = (
    ("wire_price", "b_wire_price", say("money.price-of-its-wire")),
    ("spatter", "b_spatter", say("money.its-spatter")),
)
"""Figures of the first two ways that the demonstration gives each its own, and their names."""


def _half_invented(read: CostQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    """A shop's own figure for one wire against an invented one for the other proves nothing."""
    invented = invented_in_use(read)
    for first, second, what in _PAIRS:
        for key, own, at in ((first, second, 0), (second, first, 1)):
            if key in invented and own in read.own:
                told = say(HALF_INVENTED, way=ways[at].way.name, what=what)
                yield Note("caution", told, "invented", key)


def _factors(read: CostQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    """What an operating factor holds, and what a way without one has from the first."""
    first, later = ways[0].way, read.later()
    for planned in ways:
        way, own = planned.way, planned.prefix in later and later[planned.prefix].way
        factor = (own or read.way).factor
        if factor is not None:
            holds = say(
                "money.factor-holds",
                way=way.name,
                factor=factor,
                off=Amount(way.off_s, "time"),
                spatter=Amount(way.spatter_s, "time"),
            )
            yield Note("note", holds, "operating-factor", f"{planned.prefix}factor")
        elif read.way.factor is not None:
            lent = say(
                "money.factor-lent",
                way=way.name,
                off=Amount(way.off_s, "time"),
                first=Amount(first.off_s, "time"),
                spatter=Amount(way.spatter_s, "time"),
                against=Amount(first.spatter_s, "time"),
            )
            yield Note("note", lent, "practice", f"{planned.prefix}factor")


def _instead(read: CostQuery, ways: tuple[PlannedWay, ...]) -> Iterator[Note]:
    """What is written and counts for nothing."""
    if read.shop_rate is not None and {"labour", "overhead"} & {*read.typed}:
        yield Note("note", say("money.shop-rate-holds"), field="shop_rate")
    for planned in ways[1:]:
        prefix = planned.prefix
        if f"{prefix}change_over" in read.own:
            pieces = {f"{prefix}{key}" for key in ONCE_KEYS} - {f"{prefix}change_over"}
            if pieces & {*read.typed}:
                told = say("money.change-over-holds", way=planned.way.name)
                yield Note("note", told, field=f"{prefix}change_over")
    if read.way.cylinder_price is not None and read.way.cylinder_gas is None:
        yield Note("caution", say("money.cylinder-uncounted"), field="cylinder_gas")
