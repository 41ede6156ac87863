"""A query's keys as the attributes of a frozen dataclass: each declared once, with its field.

``count: int = required(WholeNumber(...))`` is a key ``count``, how it is read and what is said of
it, and the attribute the page's own code reads. A dataclass may hold another as a ``part``, whose
keys then stand with a prefix, or none.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, cast

from beadwright.reading.fields import QueryField

Fields = Mapping[str, QueryField[Any]]
"""Fields of a query, by key."""

Change = Callable[[str, QueryField[Any]], QueryField[Any]]
"""From a key without its prefix and its field to the field as it stands in a part."""


@dataclass(frozen=True, slots=True)
class _Part:
    """A dataclass of keys within another.

    Attributes:
        kind: The dataclass.
        prefix: What stands before its keys.
        only: Its keys that are asked, or None for all.
        change: How its fields differ here, or None.
    """

    kind: type[Any]
    prefix: str
    only: tuple[str, ...] | None
    change: Change | None

    def fields(self) -> dict[str, QueryField[Any]]:
        """Its fields, by key."""
        own = fields_of(self.kind)
        keys = own if self.only is None else self.only
        change = self.change
        return {
            self.prefix + key: own[key] if change is None else change(key, own[key]) for key in keys
        }


def required[T](field: QueryField[T]) -> T:
    """Return an attribute for a key that always has a value, for its field has a default.

    Args:
        field: How it is read [-].
    """
    return cast("T", dataclasses.field(metadata={"field": field}))


def optional[T](field: QueryField[T]) -> T | None:
    """Return an attribute for a key that may be left blank; None then.

    Args:
        field: How it is read [-].
    """
    return cast("T", dataclasses.field(default=None, metadata={"field": field}))


def part[T](
    kind: type[T],
    prefix: str = "",
    *,
    only: tuple[str, ...] | None = None,
    change: Change | None = None,
) -> T:
    """Return an attribute that holds another dataclass of keys.

    Args:
        kind: The dataclass [-].
        prefix: What stands before its keys [-].
        only: Those of its keys that are asked, or None for all [-].
        change: From a key without its prefix and its field to the field as it stands here [-].
    """
    return cast("T", dataclasses.field(metadata={"part": _Part(kind, prefix, only, change)}))


def fields_of(kind: type[Any]) -> dict[str, QueryField[Any]]:
    """Return the fields of a dataclass of keys and of its parts, by key, in their order.

    Args:
        kind: The dataclass [-].
    """
    found: dict[str, QueryField[Any]] = {}
    for each in dataclasses.fields(kind):
        if "field" in each.metadata:
            found[each.name] = each.metadata["field"]
        elif "part" in each.metadata:
            found |= each.metadata["part"].fields()
    return found


def made[T](kind: type[T], values: Mapping[str, Any], prefix: str = "", **given: Any) -> T:
    """Return a dataclass of keys made from what the fields read.

    Args:
        kind: The dataclass [-].
        values: What the fields read, by key; a blank one is missing [SI].
        prefix: What stands before its keys [-].
        **given: Its attributes that are no keys [-].
    """
    for name, held in _attributes(cast(Any, kind)):
        if held is not None:
            given[name] = made(held.kind, values, prefix + held.prefix)
        elif prefix + name in values:
            given[name] = values[prefix + name]
    return kind(**given)


@cache
def _attributes(kind: Any) -> tuple[tuple[str, _Part | None], ...]:
    """The attributes of a dataclass that are keys or parts, looked up once."""
    found = ((each.name, each.metadata) for each in dataclasses.fields(kind))
    return tuple((name, told.get("part")) for name, told in found if told)


def defaults_of(fields: Fields) -> dict[str, str]:
    """Return what a blank or missing key means, by key; empty where it is worked out.

    Args:
        fields: Fields by key [-].
    """
    return {key: field.default for key, field in fields.items()}
