"""Dial in: the page of the machine's four settings."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, Final

from markupsafe import Markup

from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.job.job_query import DEFAULTS
from beadwright.pages import PAGES
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright.setting.dial_in_page import DialInAnswer
from beadwright_site.drawings.map_drawing import draw_map
from beadwright_site.forms.job_form import job_form
from beadwright_site.forms.typed import read_typed, system_named, with_units
from beadwright_site.links import query_of
from beadwright_site.pages.dial_in.aims import aim_buttons
from beadwright_site.pages.dial_in.bands import band_of
from beadwright_site.pages.dial_in.facts import (
    laid_facts,
    main_facts,
    melted_facts,
    origins,
    torch_facts,
)
from beadwright_site.pages.dial_in.gas_facts import gas_lines
from beadwright_site.parts.cited_notes import cite
from beadwright_site.parts.job_card import job_card, weld_symbols
from beadwright_site.parts.page_parts import PageParts
from beadwright_site.rendering import render

PARTS = (
    "units-switch", "state", "joint", "job-form", "settings", "aims", "facts", "notes", "setup",
    "map", "how",
)  # fmt: skip
"""Element ids of the page's parts, in the page's order; each has a template of its own."""

NAME: Final = "dial-in"


def _render(part: str, **values: Any) -> str:
    return render(f"dial_in/{part}.html", "dial_in", part=part, **values)


def show_dial_in(
    query: str, kept: Mapping[str, Any] | None = None, parts: Sequence[str] | None = None
) -> PageParts:
    """Return the page's parts for a query.

    Args:
        query: The query string.
        kept: The shop's own defaults.
        parts: Which of ``PARTS`` to draw; None for all. A refusal always comes whole.
    """
    try:
        found = answer(NAME, query, kept)
    except FieldErrors as error:
        return _refused(query, error)
    # What the shop keeps and this job uses goes into the address: a link means the same elsewhere.
    own = {key: str(kept[key]) for key in DEFAULTS if kept and kept.get(key)}
    return _answered(found, own, PARTS if parts is None else parts)


def _refused(query: str, error: FieldErrors) -> PageParts:
    typed = read_typed(query)
    system = system_named(typed.get("units", ""))
    general = [
        text for key in error.messages if key not in DEFAULTS for text in error.messages[key]
    ]
    count = sum(key in DEFAULTS for key in error.messages) or len(general)
    html = {
        "state": _render("state", kind="refused", count=count),
        "job-form": _render(
            "job-form",
            groups=job_form(typed, system, errors=error.messages),
            general=general,
        ),
    }
    return PageParts(False, query_of(typed), "Not taken", html, error.messages)


def _answered(found: DialInAnswer, own: Mapping[str, str], parts: Sequence[str]) -> PageParts:
    dialled, system = found.dialled, found.units
    typed = with_units({**own, **found.query.typed}, system)
    bands = tuple(band_of(setting, system) for setting in dialled.settings.all())
    said = tuple(cite(note, system) for note in found.notes)
    card = job_card(dialled)
    other = "us" if system == "si" else "si"
    views: dict[str, Callable[[], dict[str, Any]]] = {
        "units-switch": lambda: {
            "system": system,
            "query": query_of({**typed, "units": other}),
        },
        "state": lambda: {"kind": "yours" if found.query.typed else "example", "count": 0},
        "joint": lambda: {"card": card},
        "job-form": lambda: {"groups": job_form(typed, system, dialled), "general": ()},
        "settings": lambda: {
            "bands": bands,
            "let_go": {band.key: query_of({**typed, band.key: ""}) for band in bands},
            "open": dialled.open,
            "shut_notes": [note for note in said if note.level == "stop"],
            "ways_out": [(w.text, query_of({**typed, **w.changes})) for w in found.ways_out],
        },
        "aims": lambda: {"aims": aim_buttons(dialled, typed), "fixed": dialled.open},
        "notes": lambda: {"notes": [note for note in said if note.level != "stop"]},
        "facts": lambda: {
            "main": main_facts(dialled),
            "query": query_of(typed) or PAGES[NAME].example,
        },
        "setup": lambda: {
            "symbols": weld_symbols(dialled),
            "gas": dialled.job.gas,
            "gas_lines": gas_lines(dialled.job.gas),
            "torch": torch_facts(dialled),
            "laid": laid_facts(dialled),
            "melted": melted_facts(dialled),
            "never_size_by_it": NEVER_SIZE_BY_IT,
        },
        "map": lambda: {"map": draw_map(found.window_map, system)},
        "how": lambda: {
            "origins": tuple(origins(dialled)),
            "bands": bands,
            "symbols": weld_symbols(dialled, both=True),
        },
    }
    html = {part: _render(part, **views[part]()) for part in parts if part in views}
    feed, volts = bands[0], bands[1]
    set_to = f"{feed.number} {feed.unit}, {volts.number} {volts.unit}" if dialled.open else "Shut"
    return PageParts(True, query_of(typed), f"{set_to} · {card.line}", html)


def dial_in_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_dial_in(query)
    parts = {part: Markup(shown.html.get(part, f'<div id="{part}"></div>')) for part in PARTS}
    return render("dial_in/page.html", "dial_in", shown=shown, parts=parts)
