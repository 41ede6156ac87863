"""A wall sheet: three wires, each in its size and gas, by thickness and position on one page."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import Any
from urllib.parse import urlencode

from beadwright.errors import FieldErrors
from beadwright.job.page_query import read_page
from beadwright.reading.queries import split_query
from beadwright.setting.dial_in_query import DialInQuery
from beadwright.sheets.settings_sheet import Made
from beadwright.units import System

WIRE_KEYS = ("wire", "dia", "gas")
"""What is asked of each wire."""

DEFAULTS: Mapping[str, Mapping[str, str]] = MappingProxyType(
    {
        prefix: MappingProxyType(dict(zip(WIRE_KEYS, texts, strict=True)))
        for prefix, texts in (
            ("", ("ER70S-6", "0.045in", "90/10")),
            ("b_", ("ER70S-6", "0.035in", "75/25")),
            ("c_", ("E70C-6M", "0.045in", "90/10")),
        )
    }
)
"""The three wires by what stands before their keys, and what a blank means. Common practice: a wire
for spray, a thin one for sheet, a metal-cored one for the flat."""

WALL_PLATES: Mapping[System, tuple[str, ...]] = MappingProxyType(
    {
        "us": ("18ga", "14ga", "12ga", "1/8in", "3/16in", "1/4in", "5/16in", "3/8in", "1/2in",
               "3/4in"),
        "si": ("1.2mm", "2mm", "3mm", "4mm", "5mm", "6mm", "8mm", "10mm", "12mm", "20mm"),
    }
)  # fmt: skip
"""Rows of a wall sheet by its units: ten, so that three wires stand on one page."""


def wall_entries(query: str, kept: Mapping[str, Any] | None = None) -> dict[str, str]:
    """Return what is asked for, as typed: ``units``, ``own`` and the keys of the three wires.

    Args:
        query: The query string; the wires' keys as ``wire``, ``b_wire``, ``c_wire`` [-].
        kept: The shop's own defaults by key; its usual wire is the first, its own numbers count
            [-].

    Raises:
        FieldErrors: If there are too many keys.
    """
    given = split_query(query)
    asked = {"units": "us", "own": ""}
    for prefix, defaults in DEFAULTS.items():
        asked |= {prefix + key: text for key, text in defaults.items()}
    shop = {key: str(text) for key, text in (kept or {}).items() if key in asked and text}
    return asked | shop | {key: given[key] for key in asked if given.get(key)}


def wall_wires(asked: Mapping[str, str]) -> tuple[Made, ...]:
    """Return the three wires as they are understood.

    Args:
        asked: As ``wall_entries`` returns it [-].

    Raises:
        FieldErrors: With the messages of every wire, each under its own key.
    """
    read, wrong = list[Made](), dict[str, list[str]]()
    for prefix in DEFAULTS:
        typed = {key: asked[prefix + key] for key in WIRE_KEYS}
        shop = {"units": asked["units"], "own": asked["own"]}
        try:
            job = read_page(DialInQuery, urlencode(typed), shop).job
        except FieldErrors as error:
            wrong |= dict(_named(error, prefix))
            continue
        wire = job.wire
        read.append(Made(job.units, wire.type.name, wire.size, job.gas.name, asked["own"]))
    if wrong:
        raise FieldErrors(wrong)
    return tuple(read)


def _named(error: FieldErrors, prefix: str) -> Iterator[tuple[str, list[str]]]:
    for key, messages in error.messages.items():
        yield (prefix + key if key in WIRE_KEYS else key), messages
