"""Dial in: the page of the machine's four settings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from markupsafe import Markup

from beadwright.api import Answer, answer
from beadwright.errors import FieldErrors
from beadwright.results import Note
from beadwright.schemas import DEFAULTS
from beadwright.sources import SOURCES, Source
from beadwright.units import System
from beadwright_site.links import query_of
from beadwright_site.map_drawing import draw_map
from beadwright_site.pages.bands import band_of
from beadwright_site.pages.facts import laid_facts, main_facts, origins, torch_facts
from beadwright_site.pages.job_card import job_card
from beadwright_site.pages.job_form import job_form
from beadwright_site.pages.shown import Shown
from beadwright_site.pages.typed import read_typed, with_units
from beadwright_site.rendering import render

PARTS = ("units-switch", "state", "joint", "job-form", "settings", "notes", "facts", "map", "how")
"""Element ids of the page's parts, in the page's order; each has a template of its own."""

NAME = "dial-in"


@dataclass(frozen=True, slots=True)
class Said:
    """A note with its source at hand."""

    level: str
    word: str
    text: str
    source: Source | None


_LEVEL_WORDS = {"stop": "Stop", "out": "Out of the window", "caution": "Mind", "note": "Note"}


def _said(note: Note) -> Said:
    return Said(note.level, _LEVEL_WORDS[note.level], note.text, SOURCES.get(note.source))


def _render(part: str, **values: Any) -> str:
    return render(f"dial_in/{part}.html", "dial_in", part=part, **values)


def _other_units(typed: Mapping[str, str], system: System) -> dict[str, str]:
    return {**typed, "units": "us" if system == "si" else "si"}


def show_dial_in(query: str, kept: Mapping[str, Any] | None = None) -> Shown:
    """Return the page's parts for a query.

    Args:
        query: The query string.
        kept: The shop's own defaults.
    """
    try:
        found = answer(NAME, query, kept)
    except FieldErrors as error:
        return _refused(query, error)
    return _answered(found)


def _refused(query: str, error: FieldErrors) -> Shown:
    typed = read_typed(query)
    system: System = "si" if typed.get("units", "").strip().lower() == "si" else "us"
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
            refused=True,
        ),
    }
    return Shown(False, query_of(typed), "Not taken", html, error.messages)


def _answered(found: Answer) -> Shown:
    dialled, job = found.dial_in, found.query.job
    typed = with_units(found.query.typed, job.units)
    query = query_of(typed)
    settings = dialled.settings.all()
    bands = tuple(band_of(setting, job.units) for setting in settings)
    said = tuple(_said(note) for note in found.notes)
    ways_out = tuple((way.text, query_of({**typed, **way.changes})) for way in found.ways_out)
    let_go = {band.key: query_of({**typed, band.key: ""}) for band in bands}
    card = job_card(dialled)
    html = {
        "units-switch": _render(
            "units-switch", system=job.units, query=query_of(_other_units(typed, job.units))
        ),
        "state": _render("state", kind="example" if not typed else "yours", count=0),
        "joint": _render("joint", card=card, query=query),
        "job-form": _render(
            "job-form", groups=job_form(typed, job.units, dialled), general=(), refused=False
        ),
        "settings": _render(
            "settings",
            bands=bands,
            let_go=let_go,
            open=dialled.open,
            shut_notes=[note for note in said if note.level == "stop"],
            ways_out=ways_out,
        ),
        "notes": _render("notes", notes=[note for note in said if note.level != "stop"]),
        "facts": _render(
            "facts",
            main=main_facts(dialled),
            torch=torch_facts(dialled),
            laid=laid_facts(dialled),
        ),
        "map": _render("map", map=draw_map(found.window_map, job.units)),
        "how": _render("how", origins=tuple(origins(dialled)), bands=bands),
    }
    feed, volts = bands[0], bands[1]
    title = f"{feed.number} {feed.unit}, {volts.number} {volts.unit}" if dialled.open else "Shut"
    return Shown(True, query, f"{title} · {card.line}", html)


def dial_in_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_dial_in(query)
    parts = {part: Markup(shown.html.get(part, f'<div id="{part}"></div>')) for part in PARTS}
    return render("dial_in/page.html", "dial_in", shown=shown, parts=parts)
