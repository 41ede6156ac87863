"""The terminal's help on a page: its keys in groups, what each takes, what a blank means."""

from __future__ import annotations

from collections.abc import Iterator
from textwrap import wrap
from typing import Any

from beadwright.key_groups import KeyGroup, key_groups
from beadwright.pages import Page
from beadwright.reading.fields import Choice, Entry, Measured, QueryField, WholeNumber
from beadwright.reading.temperature_field import Temperature

_WIDTH = 96
_LATER = {"b_": "b_", "c_": "b_", "d_": "b_"}
"""Ways after the first, and the one whose keys are told for all of them."""


def key_help(page: Page) -> str:
    """Return the help on a page's keys, a group a paragraph.

    Args:
        page: The page [-].
    """
    groups = ("\n".join([group.title, *_of_group(page, group)]) for group in key_groups(page))
    later = any(key.startswith("b_") for key in page.fields)
    return "\n\n".join([*(each for each in groups if "\n" in each), *([_OF_WAYS] if later else [])])


_OF_WAYS = (
    "Other ways\n"
    "  A key of way A with b_, c_ or d_ before it says the same of way B, C or D: b_wire, c_gas.\n"
    "  Blank goes as way A, but for B's wire, its price, spatter and change-over, which differ in\n"
    "  the demonstration."
)


def _of_group(page: Page, group: KeyGroup) -> Iterator[str]:
    for key in group.keys:
        field = page.fields[key]
        told = key[2:] in page.fields or key[:2] != "b_"
        if key[:2] in _LATER and told and not field.default:
            continue  # told once, under the first way or under B
        yield f"  {key:<20} {field.help}"
        for line in wrap("; ".join(takes(field)), _WIDTH - 23):
            yield f"  {'':<20} {line}"


def takes(field: QueryField[Any]) -> Iterator[str]:
    """Yield what a field takes, the unit of a bare number, what a blank means.

    Args:
        field: The field [-].
    """
    allowed = allowed_of(field)
    if allowed and not field.help.startswith(allowed):
        yield allowed
    us, si = field.bare_unit("us"), field.bare_unit("si")
    if us and us == si:
        yield f"a bare number is {us}"
    elif us:
        yield f"a bare number is {us}, with units=si {si}"
    if field.default:
        yield f"blank: {field.default}"
    elif field.blank and "blank" not in field.help:
        yield f"blank: {field.blank}"


def allowed_of(field: QueryField[Any]) -> str:
    """Return what a field takes, as it is written; empty for words of one's own.

    Args:
        field: The field [-].
    """
    if isinstance(field, Measured):
        return f"{field.low_text} to {field.high_text}"
    if isinstance(field, Choice | Entry):
        return ", ".join(field.choices)
    if isinstance(field, WholeNumber):
        return f"{field.low} to {field.high}"
    return field.allowed["us"] if isinstance(field, Temperature) else ""
