"""A page's query: its keys with their defaults, read through its schema."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache
from typing import Any, cast
from urllib.parse import urlencode

from marshmallow import EXCLUDE, Schema, ValidationError

from beadwright.errors import FieldErrors
from beadwright.measures import System
from beadwright.phrases import say
from beadwright.reading.queries import messages_of, split_query
from beadwright.results import Note


@dataclass(frozen=True, slots=True)
class PageQuery:
    """A page's query as read.

    Attributes:
        values: What each key means, by key; a blank one is missing.
        filled: The same as text: typed, else the shop's own, else the default.
        typed: Keys given with a value, as typed, in the form's order.
        own: Keys the shop gave or the query typed; the rest are defaults.
        unknown: Keys this page does not know.
    """

    values: Mapping[str, Any]
    filled: Mapping[str, str]
    typed: Mapping[str, str]
    own: frozenset[str]
    unknown: tuple[str, ...]

    @property
    def canonical(self) -> str:
        """The query with known keys only, in the form's order, as typed."""
        return urlencode(self.typed, safe="/\"' ")

    def notes(self) -> tuple[Note, ...]:
        """A note for each key not known."""
        return tuple(
            Note("note", say("reading.no-entry", key=key[:40])) for key in self.unknown[:3]
        )


@dataclass(frozen=True, slots=True)
class PageAnswered:
    """What every page's answer begins with.

    Attributes:
        page: The page.
        query: The query as read.
        notes: Notes, the most severe first.
    """

    page: str
    query: PageQuery
    notes: tuple[Note, ...] = field(kw_only=True)

    @property
    def canonical(self) -> str:
        """The query with known keys only, in the form's order, as typed."""
        return self.query.canonical

    @property
    def units(self) -> System:
        """How to show."""
        raise NotImplementedError  # each page's answer knows its job


def read_page(
    query: str,
    kept: Mapping[str, Any] | None,
    schema: type[Schema],
    defaults: Mapping[str, str],
) -> PageQuery:
    """Return a page's query, read through its schema.

    Args:
        query: The query string [-].
        kept: The shop's own defaults by key; unknown keys are left aside [-].
        schema: The page's schema; keys of ``defaults`` it does not hold belong to the job [-].
        defaults: Every key of the page, with what a blank one means [-].

    Raises:
        FieldErrors: With every field's messages, if anything cannot be taken.
    """
    given = split_query(query)
    typed = {key: given[key] for key in defaults if given.get(key)}
    kept_own = {key: str(value) for key, value in (kept or {}).items() if key in defaults and value}
    filled = {k: v for k, v in {**defaults, **kept_own, **typed}.items() if v}
    try:
        values = cast("dict[str, Any]", _reader(schema).load(filled))
    except ValidationError as error:
        raise FieldErrors(messages_of(error)) from error
    unknown = tuple(key for key in given if key not in defaults)
    return PageQuery(values, filled, typed, frozenset({*kept_own, *typed}), unknown)


@cache
def _reader(schema: type[Schema]) -> Schema:
    """One instance for all queries: making one copies every field of the page."""
    return schema(unknown=EXCLUDE)
