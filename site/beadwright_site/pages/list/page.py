"""Weld list: each weld of a part, what they come to, an order to weld in, a quote."""

from __future__ import annotations

from typing import Final
from urllib.parse import quote

from beadwright.money.demo_prices import invented_in_use
from beadwright.weld_list.list_page import ListAnswer
from beadwright.weld_list.list_rows import called
from beadwright_site.forms.asked import Asked, Kept, read_asked
from beadwright_site.forms.typed import read_entries
from beadwright_site.pages.list.codes import code_queries
from beadwright_site.pages.list.form import list_form
from beadwright_site.pages.list.view import (
    check_rows,
    headline_of,
    missing_of,
    order_words,
    package_rows,
    piece_rows,
    pull_rows,
    quote_rows,
    shown_row,
    total_facts,
    waiting_of,
    way_rows,
    worst_line,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes, state_line
from beadwright_site.parts.invented_notes import with_invented_counted


def _read(name: str, query: str, kept: Kept) -> Asked:
    """The list kept on the phone stands where the query brings none."""
    lines = str((kept or {}).get("lines", ""))
    if lines and not read_entries(query, {"lines": ""}):
        query = "&".join(
            part for part in (query.removeprefix("?"), f"lines={quote(lines)}") if part
        )
    return read_asked(name, query, kept)


def _view(answered: Answered[ListAnswer]) -> PageView:
    found = answered.found
    invented = len(invented_in_use(found.query))
    headline = headline_of(found)
    system = answered.asked.system
    return PageView(
        f"{headline} · Weld list",
        state_line(answered.whose, invented),
        {
            "total": lambda: {
                "headline": headline,
                "missing": missing_of(found),
                "waiting": waiting_of(found),
                "facts": tuple(total_facts(found)),
                "worst": worst_line(found),
                "ways": tuple(way_rows(found)),
            },
            "rows": lambda: {
                "rows": tuple(map(shown_row, found.rows)),
                "header": found.read.header,
            },
            "order": lambda: {
                "names": tuple(map(called, found.in_order)),
                "text": order_words(found),
            },
            "carry": lambda: {
                "packages": tuple(package_rows(found)),
                "batch": found.query.batch,
                "checks": tuple(check_rows(found)),
                "pulls": tuple(pull_rows(found)),
            },
            "quote": lambda: {
                "rows": tuple(quote_rows(found)),
                "pieces": tuple(piece_rows(found)),
                "missing": missing_of(found),
            },
            "notes": lambda: {
                "notes": cited_notes(with_invented_counted(found.notes, invented), system)
            },
            "codes": lambda: {
                "codes": code_queries(found.read, answered.typed, answered.asked.kept)
            },
            "take": lambda: {},
        },
    )


PAGE: Final = AnswerPage(
    name="list",
    parts=(
        "units-switch", "state", "total", "rows", "job-form", "order", "carry", "quote", "notes",
        "codes", "take",
    ),
    form=list_form,
    view=_view,
    topics=("listed", "costs", "supplies"),
    lists={"later": ("codes",)},
    read=_read,
)  # fmt: skip
"""The page."""
