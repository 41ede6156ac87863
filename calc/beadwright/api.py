"""The door: pages by name, a query string in, an answer or its JSON out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from importlib import import_module
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Literal, Protocol, overload
from urllib.parse import urlencode

from beadwright import reports
from beadwright.errors import FieldErrors
from beadwright.job.job_query import DEFAULTS, Query, read_query
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.dial_in_report import dial_in_report, map_report
from beadwright.setting.ways_out import WayOut, ways_out
from beadwright.setting.window_map import WindowMap, window_map

if TYPE_CHECKING:
    from beadwright.heating.heat_answer import HeatAnswer
    from beadwright.machine.shop_page import ShopAnswer
    from beadwright.money.cost_page import CostAnswer
    from beadwright.passes.pass_page import PassAnswer
    from beadwright.strength.strength_answer import StrengthAnswer
    from beadwright.supply.supplies_page import SuppliesAnswer

Kept = Mapping[str, Any] | None
"""The shop's own defaults, a page's keys to text."""


class PageAnswer(Protocol):
    """What every page's answer has."""

    @property
    def page(self) -> str:
        """The page."""
        ...

    @property
    def canonical(self) -> str:
        """The query with known keys only, in the form's order, as typed."""
        ...

    @property
    def notes(self) -> tuple[Note, ...]:
        """What to mind, loudest first."""
        ...


@dataclass(frozen=True, slots=True)
class Answer:
    """The Dial-in page's answer.

    Attributes:
        page: ``dial-in``.
        query: The query as read.
        dial_in: The settings and what follows.
        window_map: Feed and volts plane.
        ways_out: What would open a shut window.
        notes: The answer's notes, and one for keys not known.
    """

    page: str
    query: Query
    dial_in: DialIn
    window_map: WindowMap
    ways_out: tuple[WayOut, ...]
    notes: tuple[Note, ...]

    @property
    def canonical(self) -> str:
        """The query with known keys only, in the form's order, as typed."""
        typed = self.query.typed
        return urlencode({key: typed[key] for key in DEFAULTS if key in typed}, safe="/\"' ")


def _dial_in(text: str, kept: Kept) -> Answer:
    query = read_query(text, kept)
    answer = dial_in(query.job)
    out = () if answer.open else ways_out(query.job)
    ignored = tuple(
        Note("note", f"“{key[:40]}” in the address is no entry of this page; left aside.")
        for key in query.unknown[:3]
    )
    return Answer("dial-in", query, answer, window_map(answer), out, (*answer.notes, *ignored))


def _dial_in_report(found: Answer) -> dict[str, Any]:
    return {
        "answer": dial_in_report(found.dial_in),
        "window_map": map_report(found.window_map, found.query.job.units),
        "ways_out": [{"text": w.text, "changes": dict(w.changes)} for w in found.ways_out],
    }


@dataclass(frozen=True, slots=True)
class Page:
    """How a page is answered.

    Attributes:
        answer: From a query and the shop's defaults to the answer.
        report: The answer as plain data, by part.
        csv: The answer as CSV, or None where the page has no table.
    """

    answer: Callable[[str, Kept], PageAnswer]
    report: Callable[[Any], dict[str, Any]]
    csv: Callable[[Any], str] | None = None


def _later(module: str, name: str) -> Callable[..., Any]:
    """Return a function imported when first called: a phone dials in before it asks a price."""

    def call(*given: Any) -> Any:
        return getattr(import_module(f"beadwright.{module}"), name)(*given)

    return call


def _page(room: str, stem: str, *, csv: bool = False) -> Page:
    """Return a page of the modules ``<stem>_page`` and ``<stem>_report`` of a room."""
    report = _later(f"{room}.{stem}_report", f"{stem}_report")
    return Page(
        _later(f"{room}.{stem}_page", f"{stem}_answer"),
        lambda found: {"answer": report(found)},
        _later(f"{room}.{stem}_report", f"{stem}_csv") if csv else None,
    )


PAGES: Mapping[str, Page] = MappingProxyType(
    {
        "dial-in": Page(_dial_in, _dial_in_report),
        "passes": _page("passes", "pass", csv=True),
        "heat": _page("heating", "heat"),
        "strength": _page("strength", "strength"),
        "cost": _page("money", "cost", csv=True),
        "supplies": _page("supply", "supplies", csv=True),
        "shop": _page("machine", "shop"),
    }
)
"""Pages that compute, by name."""


@overload
def answer(page: Literal["dial-in"], query: str, kept: Kept = None) -> Answer: ...
@overload
def answer(page: Literal["passes"], query: str, kept: Kept = None) -> PassAnswer: ...
@overload
def answer(page: Literal["cost"], query: str, kept: Kept = None) -> CostAnswer: ...
@overload
def answer(page: Literal["supplies"], query: str, kept: Kept = None) -> SuppliesAnswer: ...
@overload
def answer(page: Literal["shop"], query: str, kept: Kept = None) -> ShopAnswer: ...
@overload
def answer(page: Literal["heat"], query: str, kept: Kept = None) -> HeatAnswer: ...
@overload
def answer(page: Literal["strength"], query: str, kept: Kept = None) -> StrengthAnswer: ...
@overload
def answer(page: str, query: str, kept: Kept = None) -> PageAnswer: ...
def answer(page: str, query: str, kept: Kept = None) -> PageAnswer:
    """Return a page's answer to a query string.

    Args:
        page: A key of ``PAGES`` [-].
        query: The query string [-].
        kept: The shop's own defaults, the page's keys to text; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    if page not in PAGES:
        raise FieldErrors({"page": [f"There is no page {page[:40]}; there is {', '.join(PAGES)}."]})
    return PAGES[page].answer(query, kept)


def answer_json(page: str, query: str, kept: Kept = None) -> dict[str, Any]:
    """Return a page's answer as plain data, or ``{"errors": {field: [messages]}}``.

    Args:
        page: A key of ``PAGES`` [-].
        query: The query string [-].
        kept: As of ``answer`` [-].
    """
    try:
        found = answer(page, query, kept)
    except FieldErrors as error:
        return {"errors": error.messages}
    return {
        "page": page,
        "query": found.canonical,
        **PAGES[page].report(found),
        "notes": [reports.note_report(note) for note in found.notes],
    }


def answer_csv(page: str, query: str, kept: Kept = None) -> str:
    """Return a page's answer as CSV.

    Args:
        page: A key of ``PAGES`` whose page has a table [-].
        query: The query string [-].
        kept: As of ``answer`` [-].

    Raises:
        FieldErrors: With each field's messages, or if the page has no table.
    """
    found = answer(page, query, kept)
    write = PAGES[page].csv
    if write is None:
        raise FieldErrors({"page": [f"The page {page} has no table to write."]})
    return write(found)
