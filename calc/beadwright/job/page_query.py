"""A page's query: its text taken apart and read once, then a frozen dataclass."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, cast
from urllib.parse import urlencode

from marshmallow import EXCLUDE, Schema, ValidationError

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.job.job_entries import JobEntries
from beadwright.job.job_reading import job_of
from beadwright.phrases import say
from beadwright.process.wires import Wire
from beadwright.reading.entries import Fields, defaults_of, fields_of, made
from beadwright.reading.queries import messages_of, split_query
from beadwright.results import Note
from beadwright.units import System


@dataclass(frozen=True, slots=True, kw_only=True)
class PageQuery:
    """A page's query as read; a page adds keys of its own as attributes.

    Attributes:
        typed: Keys given with a value, as typed, in the form's order.
        own: Keys the shop gave or the query typed; the rest are defaults.
        stood_in: Keys for which a default stands that is not blank.
        asked: The job's entries.
        job: The job.
    """

    typed: Mapping[str, str]
    own: frozenset[str]
    stood_in: frozenset[str]
    asked: JobEntries
    job: Job

    @classmethod
    def fields_for(cls, own: Mapping[str, str]) -> Fields:
        """Return the page's fields, with the defaults that hold beside what is written.

        Args:
            own: Keys the shop gave or the query typed, to text [-].
        """
        del own
        return page_fields(cls)

    @property
    def outranked(self) -> frozenset[str]:
        """Keys that another key stands in for: their figures count for nothing."""
        return frozenset()

    @property
    def canonical(self) -> str:
        """The query with known keys only, in the form's order, as typed."""
        return urlencode(self.typed, safe="/\"' ")

    def wires(self) -> tuple[Wire, ...]:
        """Return every wire whose numbers the answer counts with; a page may count with none."""
        return (self.job.wire,)

    def own_notes(self) -> Iterator[Note]:
        """Yield what of the answer is the shop's own."""
        owns = {wire.own for wire in self.wires() if wire.own is not None}
        if owns:
            count = sum(own.coupons for own in owns)
            whose = "; ".join(sorted({own.whose for own in owns if own.whose}))
            told = say("job.own-numbers", count=count)
            if whose:
                told = say("job.own-numbers-of", count=count, whose=whose)
            yield Note("note", told, "own-coupons", "own")
        elif self.wires() and self.asked.own == ():
            yield Note("note", say("job.own-numbers-off"), "", "own")


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
        return self.query.job.units


def page_fields(query: type[PageQuery]) -> Fields:
    """Return every field of a page, by key, in the form's order: the job's, then its own.

    Args:
        query: The page's query [-].
    """
    return _reader(query).fields


def page_defaults(query: type[PageQuery]) -> Mapping[str, str]:
    """Return what a blank or missing key of a page means, by key, in the form's order.

    Args:
        query: The page's query [-].
    """
    return MappingProxyType(defaults_of(page_fields(query)))


@dataclass(frozen=True, slots=True)
class _Reader:
    """How a page's query is read. One for all queries: making a schema copies every field."""

    fields: Fields
    schema: Schema


_readers: dict[type[PageQuery], _Reader] = {}


def _reader(query: type[PageQuery]) -> _Reader:
    if query not in _readers:
        fields = {**JOB_FIELDS, **fields_of(query)}
        schema = Schema.from_dict(cast("dict[str, Any]", fields), name=query.__name__)
        _readers[query] = _Reader(MappingProxyType(fields), schema(unknown=EXCLUDE))
    return _readers[query]


def _standing(fields: Fields) -> dict[str, str]:
    """The defaults that are not blank."""
    return {key: field.default for key, field in fields.items() if field.default}


def read_page[Q: PageQuery](query: type[Q], text: str, kept: Mapping[str, Any] | None) -> Q:
    """Return a page's query, read once.

    Args:
        query: What it is read into: the page's query [-].
        text: The query string [-].
        kept: The shop's own defaults by key; unknown keys are left aside [-].

    Raises:
        FieldErrors: With every field's messages, if anything cannot be taken.
    """
    fields, given = page_fields(query), split_query(text)
    typed = {key: given[key] for key in fields if given.get(key)}
    shop = {key: str(value) for key, value in (kept or {}).items() if key in fields and value}
    own = {**shop, **typed}
    filled = {**_standing(query.fields_for(own)), **own}
    try:
        values = cast("dict[str, Any]", _reader(query).schema.load(filled))
    except ValidationError as error:
        raise FieldErrors(messages_of(error)) from error
    asked = made(JobEntries, values)
    return made(
        query,
        values,
        typed=typed,
        own=frozenset(own),
        stood_in=frozenset(filled.keys() - own.keys()),
        asked=asked,
        job=job_of(asked),
    )
