"""What was typed, kept as typed: read leniently, written back, never converted."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright.errors import FieldErrors
from beadwright.reading.entries import Fields
from beadwright.reading.queries import split_query
from beadwright.units import System
from beadwright.weld_list.weld_lines import LONGEST_LIST

LONGEST_ECHO = 200
"""Characters of an entry given back in its field."""

LONGER: Mapping[str, int] = {"lines": 2 * LONGEST_LIST}
"""The same for entries that may be longer, by key."""


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
    return {key: given[key][: LONGER.get(key, LONGEST_ECHO)] for key in defaults if given.get(key)}


def with_units(typed: Mapping[str, str], fields: Fields, system: System) -> dict[str, str]:
    """Return entries with the unit they were meant in after bare numbers.

    A link then means the same whatever units its reader looks at.

    Args:
        typed: Entries as typed.
        fields: The page's fields by key.
        system: The units a bare number was meant in.
    """
    return {
        key: fields[key].with_unit(text, system) if key in fields else text
        for key, text in typed.items()
    }
