"""What was typed, kept as typed: read leniently, written back, never converted."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, cast

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.job.job_query import DEFAULTS, JobSchema
from beadwright.reading.fields import Measured
from beadwright.reading.queries import split_query
from beadwright.units import System

LONGEST_ECHO = 200
"""Characters of an entry given back in its field."""

_FIELDS: Mapping[str, Measured] = {
    key: field
    # marshmallow leaves open what its fields hold.
    for key, field in cast("dict[str, Any]", JobSchema().fields).items()
    if isinstance(field, Measured)
}

MEASURED: Mapping[str, str] = {key: field.measure for key, field in _FIELDS.items()}
"""Entries that carry a unit, and their kind of quantity."""

ALLOWED: Mapping[str, tuple[float, float]] = {
    key: (field.low, field.high) for key, field in _FIELDS.items()
}
"""Least and most an entry may be [SI]."""


def system_named(text: str) -> System:
    """Return the system of units a query names, even one whose other entries cannot be taken."""
    return "si" if text.strip().lower() == "si" else "us"


def read_typed(query: str) -> dict[str, str]:
    """Return the known entries of a query, whether or not they can be taken."""
    try:
        given = split_query(query)
    except FieldErrors:
        return {}
    return {key: given[key][:LONGEST_ECHO] for key in DEFAULTS if given.get(key)}


def unit_text(measure: str, system: System) -> str:
    """Return a unit as it is typed behind a number, such as ``in/min``."""
    return units.symbol(measure, system).replace("³", "3")


def with_units(typed: Mapping[str, str], system: System) -> dict[str, str]:
    """Return the entries in the form's order, with the unit they were meant in after bare numbers.

    A link then means the same whatever units its reader looks at.

    Args:
        typed: Entries as typed.
        system: The units a bare number was meant in.
    """
    return {key: _with_unit(key, typed[key], system) for key in DEFAULTS if typed.get(key)}


def _with_unit(key: str, text: str, system: System) -> str:
    if key not in MEASURED or len(text) > units.LONGEST_TEXT or not text[-1].isdecimal():
        return text
    try:
        units.read_number(text)
    except ValueError:
        return text
    return text + unit_text(MEASURED[key], system)
