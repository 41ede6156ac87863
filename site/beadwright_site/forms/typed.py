"""What was typed, kept as typed: read leniently, written back, never converted."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Any, cast

from marshmallow import Schema

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.job.job_query import JobSchema
from beadwright.reading.fields import Measured
from beadwright.reading.queries import split_query
from beadwright.units import System

LONGEST_ECHO = 200
"""Characters of an entry given back in its field."""

_BARE = re.compile(r"^(?:[$€£¥₹]|[A-Z]{3}\b)?\s*([\d\s.,/-]*\d)$", re.ASCII)


@cache
def measured_fields(schema: type[Schema]) -> Mapping[str, Measured]:
    """Return the fields of a schema and of the job that carry a unit, by key."""
    # marshmallow leaves open what its fields hold.
    every = {
        **cast("dict[str, Any]", JobSchema().fields),
        **cast("dict[str, Any]", schema().fields),
    }
    return {key: field for key, field in every.items() if isinstance(field, Measured)}


@cache
def measures_of(schema: type[Schema]) -> Mapping[str, str]:
    """Return the kind of quantity of each key of a schema and of the job."""
    return {key: field.measure for key, field in measured_fields(schema).items()}


def system_named(text: str) -> System:
    """Return the system of units a query names, even one whose other entries cannot be taken."""
    return "si" if text.strip().lower() == "si" else "us"


def read_entries(query: str, defaults: Mapping[str, str]) -> dict[str, str]:
    """Return the known entries of a query, whether or not they can be taken.

    Args:
        query: The query string.
        defaults: The page's keys.
    """
    try:
        given = split_query(query)
    except FieldErrors:
        return {}
    return {key: given[key][:LONGEST_ECHO] for key in defaults if given.get(key)}


def unit_text(measure: str, system: System) -> str:
    """Return a unit as it is typed behind a number, such as ``in/min``."""
    return units.symbol(measure, system).replace("³", "3")


def with_units(typed: Mapping[str, str], schema: type[Schema], system: System) -> dict[str, str]:
    """Return entries with the unit they were meant in after bare numbers.

    A link then means the same whatever units its reader looks at.

    Args:
        typed: Entries as typed.
        schema: Schema of the page's query.
        system: The units a bare number was meant in.
    """
    measures = measures_of(schema)
    return {key: _with_unit(text, measures.get(key, ""), system) for key, text in typed.items()}


def _with_unit(text: str, measure: str, system: System) -> str:
    bare = _BARE.match(text) if measure and len(text) <= units.LONGEST_TEXT else None
    if bare is None:
        return text
    try:
        units.read_number(bare[1])
    except ValueError:
        return text
    return text + unit_text(measure, system)
