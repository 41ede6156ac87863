"""The Weld list's answer: each line, what all come to, the order to weld in, the quote."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.money.demo_prices import INVENTED_IN_USE, invented_in_use
from beadwright.money.uncounted import uncounted, untimed
from beadwright.phrases import Amount, say
from beadwright.reading.fields import QueryField
from beadwright.reading.queries import split_query
from beadwright.results import Note, severest_first
from beadwright.typed_number import short
from beadwright.weld_list.list_query import ListQuery
from beadwright.weld_list.list_rows import CountedRow, ListRow, called, counted_rows
from beadwright.weld_list.list_totals import Package, WayTotal, asked_packages, way_totals
from beadwright.weld_list.listed_weld import Keys, ListedWeld, held_keys, listed_weld, shared_keys
from beadwright.weld_list.quote import BATCHES, Quoted, quoted_batch
from beadwright.weld_list.weld_lines import MOST_LINES, WeldLine, WeldLines, read_lines
from beadwright.weld_list.weld_order import Changes, Setup, changes, weld_order

FEED_STEP_M_S, VOLTS_STEP_V = 0.0021, 0.5
"""Steps a dial is turned by: 5 in/min of feed, half a volt (common practice). Two welds whose
settings round to one step are welded at one setting."""


@dataclass(frozen=True, slots=True)
class ListOrder:
    """The order to weld in.

    Attributes:
        places: Places in the answered rows, in the order to weld them [-].
        changes: Changes of wire, position and dial in it.
        given: The same in the order of the list.
    """

    places: tuple[int, ...]
    changes: Changes
    given: Changes

    @property
    def saved(self) -> int:
        """Changes saved against the order of the list; a dear one may cost two cheap ones [-]."""
        return self.given.total - self.changes.total


@dataclass(frozen=True, slots=True)
class ListAnswer(PageAnswered):
    """The Weld list's answer.

    Attributes:
        page: ``list``.
        query: The query as read.
        read: The list taken apart.
        rows: Its lines in their order, each with its answer or the reason there is none.
        totals: What a part takes by each way; empty for an empty list.
        packages: Spools and cylinders for a batch, the first way.
        order: The order to weld in.
        quotes: The price of a part by each way in batches of 1, 10, 100.
        notes: Notes, the most severe first.
    """

    query: ListQuery
    read: WeldLines
    rows: tuple[ListRow, ...]
    totals: tuple[WayTotal, ...]
    packages: tuple[Package, ...]
    order: ListOrder
    quotes: tuple[tuple[Quoted, ...], ...]

    @property
    def currency(self) -> str:
        """The sign before money."""
        return self.query.currency

    @property
    def counted(self) -> tuple[CountedRow, ...]:
        """The lines that could be read, in their order."""
        return counted_rows(self.rows)

    @property
    def missing(self) -> int:
        """Lines that could not be read [-]."""
        return sum(bool(row.wrong) for row in self.rows)

    @property
    def waiting(self) -> int:
        """Lines left for later, see ``listed_weld.at_most_new`` [-]."""
        return len(self.rows) - len(self.counted) - self.missing

    @property
    def in_order(self) -> tuple[CountedRow, ...]:
        """The lines that could be read, in the order to weld them."""
        counted = self.counted
        return tuple(counted[place] for place in self.order.places)


def list_answer(query: str, kept: Mapping[str, Any] | None = None) -> ListAnswer:
    """Return the Weld list's answer to a query string.

    Args:
        query: Keys of ``list_query.ListQuery``; keys of Shop and Heat count for every weld [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    query_read = read_page(ListQuery, query, kept)
    shared = shared_keys({key: text for key, text in split_query(query).items() if text})
    held = held_keys(kept or {})
    found = read_lines(query_read.lines or "")
    rows = tuple(_row(line, shared, held) for line in found.lines)
    welds = [row.weld for row in counted_rows(rows)]
    totals = way_totals(welds)
    return ListAnswer(
        page="list",
        query=query_read,
        read=found,
        rows=rows,
        totals=totals,
        packages=asked_packages(welds, query_read.batch),
        order=_order(welds),
        quotes=tuple(_quotes(total, query_read) for total in totals),
        notes=severest_first(_notes(query_read, found, rows)),
    )


def _row(line: WeldLine, shared: Keys, held: Keys) -> ListRow:
    if line.wrong:
        return ListRow(line, None, line.wrong)
    if line.number > MOST_LINES:
        return ListRow(line, None, f"A list counts up to {MOST_LINES} lines; begin a second one.")
    try:
        weld = listed_weld(line, shared, held)
    except FieldErrors as error:
        return ListRow(line, None, _reason(error.messages))
    return ListRow(line, None) if weld is None else CountedRow(line, weld)


def _reason(messages: Mapping[str, Sequence[str]]) -> str:
    """Each message after the name of what it is about."""
    fields: Mapping[str, QueryField[Any]] = ListQuery.fields_for({})
    said = (
        f"{fields[key].label if key in fields else key}: {' '.join(texts)}"
        for key, texts in messages.items()
    )
    return " ".join(text if text.endswith(".") else f"{text}." for text in said)


def _order(welds: Sequence[ListedWeld]) -> ListOrder:
    setups = [_setup(weld) for weld in welds]
    places = weld_order(setups)
    return ListOrder(places, changes([setups[place] for place in places]), changes(setups))


def _setup(weld: ListedWeld) -> Setup:
    dialled = weld.first.dialled
    job, settings = dialled.job, dialled.settings
    return Setup(
        wire=(job.wire.type.name, job.wire.size, job.gas.name),
        position=job.position_name,
        dial=(
            round((settings.wire_feed.value or 0.0) / FEED_STEP_M_S),
            round((settings.volts.value or 0.0) / VOLTS_STEP_V),
        ),
    )


def _quotes(total: WayTotal, query: ListQuery) -> tuple[Quoted, ...]:
    set_up = query.set_up * total.hour_s
    return tuple(quoted_batch(total.part, set_up, query.margin, parts) for parts in BATCHES)


def _notes(query: ListQuery, found: WeldLines, rows: Sequence[ListRow]) -> Iterator[Note]:
    counted = counted_rows(rows)
    missing = sum(bool(row.wrong) for row in rows)
    if missing:
        yield Note("out", say("weld_list.missing", count=missing), field="lines")
    if query.part is not None and query.part.missing:
        lost = tuple(map(str, query.part.missing))
        told = say("weld_list.parts-missing", parts=lost, count=query.part.count)
        yield Note("out", told, field="lines")
    if not rows:
        yield Note("note", say("weld_list.empty"), field="lines")
    if found.passed_over:
        names = tuple(short(name) for name in found.passed_over)
        yield Note("note", say("weld_list.columns-passed-over", names=names), field="lines")
    yield from _of_welds(counted)
    if not query.margin:
        yield Note("note", say("weld_list.no-margin"), field="margin")
    yield Note("note", say("weld_list.order-rule"), "practice")
    yield Note("caution", say("weld_list.defer"))
    names = invented_in_use(query)
    if names:
        yield Note("caution", say(INVENTED_IN_USE, keys=names), "invented")


def _of_welds(counted: Sequence[CountedRow]) -> Iterator[Note]:
    warm: dict[float, list[str]] = {}
    unknown: list[str] = []
    for row in counted:
        kelvin = row.weld.preheat_k
        if kelvin is not None:
            warm.setdefault(kelvin, []).append(called(row))
        if row.weld.heat is None or row.weld.heat.needed.kelvin is None:
            unknown.append(called(row))
    for kelvin, names in warm.items():
        preheat = Amount(kelvin, "temperature")
        told = say("weld_list.preheat", preheat=preheat, names=tuple(names))
        yield Note("caution", told, "", "preheat")
    if unknown:
        yield Note("caution", say("weld_list.preheat-not-known", names=tuple(unknown)))
    long = tuple(called(row) for row in counted if row.weld.too_long)
    if long:
        yield Note("out", say("weld_list.longer-than-part", names=long), field="part_length")
    said: dict[Note, list[str]] = {}
    for row in counted:
        heat = row.weld.heat
        pulled = heat.distortion.notes if heat is not None else ()
        for note in dict.fromkeys((*row.weld.first.dialled.notes, *pulled)):
            if note.level in ("stop", "out") or (note in pulled and note.level == "caution"):
                said.setdefault(note, []).append(called(row))
        dialled = row.weld.first.dialled
        for note in (*uncounted(dialled), *untimed(dialled)):
            said.setdefault(note, []).append(called(row))
    for note, names in said.items():
        told = say("weld_list.of-welds", names=tuple(names), said=note.phrase)
        yield Note(note.level, told, note.source)
