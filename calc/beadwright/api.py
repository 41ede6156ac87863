"""The door: pages by name, a query string in, an answer or its JSON out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any
from urllib.parse import urlencode

from beadwright import reports
from beadwright.dial_in import DialIn, dial_in
from beadwright.errors import FieldErrors
from beadwright.results import Note
from beadwright.schemas import DEFAULTS, Query, read_query
from beadwright.ways_out import WayOut, ways_out
from beadwright.window_map import WindowMap, window_map


@dataclass(frozen=True, slots=True)
class Answer:
    """A page's answer.

    Attributes:
        page: The page.
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


def _dial_in(query: Query) -> Answer:
    answer = dial_in(query.job)
    out = () if answer.open else ways_out(query.job)
    ignored = tuple(
        Note("note", f"“{key[:40]}” in the address is no entry of this page; left aside.")
        for key in query.unknown[:3]
    )
    return Answer("dial-in", query, answer, window_map(answer), out, (*answer.notes, *ignored))


PAGES: Mapping[str, Callable[[Query], Answer]] = MappingProxyType({"dial-in": _dial_in})
"""Pages that compute, by name."""


def answer(page: str, query: str, kept: Mapping[str, Any] | None = None) -> Answer:
    """Return a page's answer to a query string.

    Args:
        page: A key of ``PAGES`` [-].
        query: The query string [-].
        kept: The shop's own defaults, keys of ``schemas.DEFAULTS`` to text; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    if page not in PAGES:
        raise FieldErrors({"page": [f"There is no page {page[:40]}; there is {', '.join(PAGES)}."]})
    return PAGES[page](read_query(query, kept))


def answer_json(page: str, query: str, kept: Mapping[str, Any] | None = None) -> dict[str, Any]:
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
        "answer": reports.dial_in_report(found.dial_in),
        "window_map": reports.map_report(found.window_map, found.query.job.units),
        "ways_out": [{"text": w.text, "changes": dict(w.changes)} for w in found.ways_out],
        "notes": [reports.note_report(note) for note in found.notes],
    }
