"""The wall sheet: which three wires it is for, and their cells, for the page and for the phone."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.process.gases import GASES
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.process.wires import METRIC_NAMES
from beadwright.sheets.settings_sheet import POSITIONS, Made, sheet_rows
from beadwright.sheets.wall_sheet import DEFAULTS, WALL_PLATES, wall_entries, wall_wires
from beadwright.units import System, system_named
from beadwright.words.wording import worded
from beadwright_site.links import query_of
from beadwright_site.pages.sheets.cells import plate_words, shown_cell, size_words
from beadwright_site.rendering import render

_NAMES = ("First", "Second", "Third")


def wall_page(query: str) -> str:
    """Return the whole page.

    Args:
        query: The query string.
    """
    _, drawn = _drawn(query, None)
    return render("sheets/wall.html", "sheets", asks=True, drawn=drawn)


def wall_part(query: str, kept: Mapping[str, Any]) -> dict[str, Any]:
    """Return what the page shows for a query: ``ok`` and its HTML.

    Args:
        query: The query string.
        kept: What the phone keeps, by name.
    """
    from beadwright_site.forms.kept import kept_for

    ok, drawn = _drawn(query, kept_for(query, kept))
    return {"ok": ok, "html": render("sheets/wall-part.html", "sheets", drawn=drawn)}


def _drawn(query: str, kept: Mapping[str, str] | None) -> tuple[bool, dict[str, Any]]:
    try:
        asked = wall_entries(query, kept)
    except FieldErrors as error:
        asked, wrong = wall_entries(""), error.messages
    else:
        wrong = dict[str, list[str]]()
    wires = tuple[Made, ...]()
    try:
        wires = () if wrong else wall_wires(asked)
    except FieldErrors as error:
        wrong = error.messages
    system = system_named(asked["units"])
    return not wrong, {
        "system": system,
        "form": _form(asked, wrong, system),
        "others": [text for key, texts in wrong.items() if key not in asked for text in texts],
        "positions": POSITIONS,
        "feed": units.symbol("wire_feed", system),
        "travel": units.symbol("travel", system),
        "length": "in" if system == "us" else "mm",
        "wires": [_block(made) for made in wires],
        "own": asked["own"],
        "switch": _own_switch(asked, wires),
    }


def _own_switch(asked: Mapping[str, str], wires: Sequence[Made]) -> dict[str, str] | None:
    """What the switch of the shop's own numbers shows; None where they count for nothing."""
    if not any(True for made in wires for _ in made.own_told()):
        return None
    rest = {key: text for key, text in asked.items() if key != "own"}
    if asked["own"] == "off":
        return {"query": query_of(rest), "words": "Count your own numbers"}
    return {"query": query_of({**rest, "own": "off"}), "words": "Show this as published"}


def _form(
    asked: Mapping[str, str], wrong: Mapping[str, list[str]], system: System
) -> list[dict[str, Any]]:
    sizes = {inch: metric if system == "si" else inch for inch, metric in METRIC_NAMES.items()}

    def field(prefix: str, key: str, choices: Mapping[str, str]) -> dict[str, Any]:
        name = prefix + key
        typed = asked[name]
        known = next((one for one in choices if one.lower() == typed.lower()), typed)
        return {
            "name": name,
            "typed": known,
            "choices": choices if known in choices else {**choices, typed: typed},
            "wrong": " ".join(wrong.get(name, ())),
        }

    return [
        {
            "title": title,
            "wire": field(prefix, "wire", {name: name for name in WIRE_TYPES}),
            "dia": field(prefix, "dia", sizes),
            "gas": field(prefix, "gas", {name: name for name in GASES}),
        }
        for title, prefix in zip(_NAMES, DEFAULTS, strict=True)
    ]


def _block(made: Made) -> dict[str, Any]:
    return {
        "own": " ".join(worded(told, made.units) for told in made.own_told()),
        "title": f"{made.wire} {size_words(made)}, {made.gas}",
        "polarity": WIRE_TYPES[made.wire].polarity,
        "rows": [
            (plate_words(plate), [shown_cell(cell, made.units) for cell in cells])
            for plate, cells in sheet_rows(made, WALL_PLATES[made.units])
        ],
    }
