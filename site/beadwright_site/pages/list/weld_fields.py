"""One weld of the list as a form: its entries, each with what is wrong beside it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.job.job_entries import FIELDS
from beadwright.reading.queries import split_query
from beadwright.units import system_named
from beadwright.weld_list.line_edit import edited_list
from beadwright.weld_list.list_rows import ListRow, called
from beadwright.weld_list.listed_weld import Keys, ListedWeld, held_keys, listed_weld, shared_keys
from beadwright.weld_list.weld_lines import NAME, WeldLine, read_lines
from beadwright_site.forms.entries import Entry, EntryGroup, entry_group
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import JOINT, job_entries
from beadwright_site.pages.list.view import shown_row
from beadwright_site.rendering import render

PREFIX = "weld."
"""Before each entry's key, so that it is none of the list's own form."""

_FIRST = ("joint", "plate", "plate2", "leg", "weld_length", "welds", "position")
_WIRE = ("wire", "dia", "gas", "travel_by")
_JOINT = (*(key for key in JOINT if key not in _FIRST), "reinforcement", "pitch")
_SETTINGS = ("wfs", "volts", "travel", "ctwd", "transfer")

Kept = Mapping[str, Any]


def weld_fields(
    query: str, kept: Kept, number: int, key: str = "", value: str = ""
) -> dict[str, Any]:
    """Return one weld of a list as a form, one of its entries set anew where a key says so.

    Args:
        query: The list's query, its ``lines`` in it.
        kept: The shop's own defaults by key.
        number: The weld's place in the list, 1 for the first.
        key: Entry to set, or empty.
        value: What it says from now on.
    """
    asked = split_query(query)
    text, refused = asked.get("lines", ""), dict[str, list[str]]()
    if key:
        try:
            text = edited_list(text, number, key, value)
        except FieldErrors as error:
            refused = {name: [*texts] for name, texts in error.messages.items()}
    line = next((each for each in read_lines(text).lines if each.number == number), None)
    if line is None:
        return {"ok": False, "lines": text, "html": ""}
    shared = shared_keys({name: said for name, said in asked.items() if said})
    drawn = _form(line, shared, kept, refused, {key: value} if refused else {})
    return {
        "ok": not refused,
        "lines": text,
        "html": render("list/weld-fields.html", "list", **drawn),
    }


def _form(
    line: WeldLine,
    shared: Keys,
    kept: Kept,
    refused: Mapping[str, list[str]],
    typed_now: Mapping[str, str],
) -> dict[str, Any]:
    weld, errors = _answered(line, shared, kept)
    errors = {**errors, **refused}
    typed = {**dict(shared), **line.entries, **typed_now}
    held = {name: str(text) for name, text in kept.items()}
    system = system_named(typed.get("units") or held.get("units", ""))
    filling = Filling(typed, held, system, errors)
    entries = job_entries(filling, weld.first.dialled if weld is not None else None)
    wrong = "" if line.missing else line.wrong
    row = ListRow(line, weld, wrong or " ".join(_beside_none(errors)))
    return {
        "number": line.number,
        "name": called(row),
        "said": shown_row(row).said if weld is not None else "",
        "wrong": row.wrong,
        "whole": line.cells is None,
        "first": [_name(line, refused, typed_now), *_own(entries, _FIRST)],
        "groups": tuple(_groups(entries)),
    }


def _answered(
    line: WeldLine, shared: Keys, kept: Kept
) -> tuple[ListedWeld | None, dict[str, list[str]]]:
    if line.wrong:
        return None, {line.missing: [line.wrong]} if line.missing else {}
    try:
        return listed_weld(line, shared, held_keys(kept)), {}
    except FieldErrors as error:
        return None, {key: [*texts] for key, texts in error.messages.items()}


def _beside_none(errors: Mapping[str, list[str]]) -> Iterator[str]:
    """Messages on what has no entry of a weld."""
    for key, texts in errors.items():
        if key not in FIELDS and key != NAME:
            yield from texts


def _name(line: WeldLine, refused: Mapping[str, list[str]], typed_now: Mapping[str, str]) -> Entry:
    return Entry(
        key=PREFIX + NAME,
        label="Name of the weld",
        value=typed_now.get(NAME, line.name),
        blank=f"line {line.number}",
        unit="",
        fractions=False,
        options=(),
        errors=tuple(refused.get(NAME, ())),
        words=True,
    )


def _own(entries: Mapping[str, Entry], keys: tuple[str, ...]) -> Iterator[Entry]:
    for key in keys:
        if not entries[key].hidden:
            yield replace(entries[key], key=PREFIX + key, lent=False)


def _groups(entries: Mapping[str, Entry]) -> Iterator[EntryGroup]:
    for key, title, keys in (
        ("weld-wire", "Wire, gas, travel by", _WIRE),
        ("weld-joint", "More of the joint", _JOINT),
        ("weld-settings", "Settings by hand", _SETTINGS),
    ):
        yield entry_group(key, title, tuple(_own(entries, keys)))
