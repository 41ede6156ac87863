"""Entries of a form: what was typed, what a blank means, what was wrong, whether it is kept."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, cast

from marshmallow import Schema

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.reading.fields import Measured
from beadwright.reading.queries import split_query
from beadwright.units import System
from beadwright_site.forms.job_form import LENGTHS, Field
from beadwright_site.forms.option import Option
from beadwright_site.forms.typed import LONGEST_ECHO, MEASURED, unit_text

_BARE = re.compile(r"^(?:[$€£¥₹]|[A-Z]{3}\b)?\s*([\d\s.,/-]*\d)$", re.ASCII)
_PLAIN = re.compile(r"[^\w-]", re.ASCII)


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry.

    Attributes:
        key: Name it is sent under.
        label: What it is.
        value: As typed.
        blank: What a blank means.
        unit: Unit a bare number takes.
        words: True if it is a text, not a number.
        fractions: True if shop fractions help in typing it.
        options: Choices; empty for a text entry.
        errors: What was wrong.
        keep: Name the phone keeps it under, or empty.
        tag: Whose figure a blank is: ``invented``, ``kept``, or empty.
        other: What stands in the line for a choice not offered; None where there is no such line.
    """

    key: str
    label: str
    value: str
    blank: str
    unit: str
    words: bool
    fractions: bool
    options: tuple[Option, ...]
    errors: tuple[str, ...]
    keep: str
    tag: str
    other: str | None = None

    @property
    def id(self) -> str:
        """Id of its element."""
        return _PLAIN.sub("-", self.key)


@dataclass(frozen=True, slots=True)
class EntryGroup:
    """Entries that belong together.

    Attributes:
        key: Its id.
        title: What they are about.
        entries: The entries.
        open: True if the group stands open.
        links: Links under it: word and query.
        words: A line under the title, or empty.
    """

    key: str
    title: str
    entries: tuple[Entry, ...]
    open: bool = False
    links: tuple[tuple[str, str], ...] = ()
    words: str = ""


def entry_group(
    key: str,
    title: str,
    entries: Sequence[Entry],
    words: str = "",
    *,
    links: tuple[tuple[str, str], ...] = (),
    is_open: bool = False,
) -> EntryGroup:
    """Return entries as a group, open if asked or if one of them is wrong.

    Args:
        key: Its id.
        title: What they are about.
        entries: The entries.
        words: A line under the title, or empty.
        links: Links under it: word and query.
        is_open: True if it stands open.
    """
    wrong = any(entry.errors for entry in entries)
    return EntryGroup(key, title, tuple(entries), is_open or wrong, links, words)


@dataclass(frozen=True, slots=True)
class Form:
    """What a page's form is filled from.

    Attributes:
        typed: Entries as typed.
        kept: The shop's defaults by key.
        defaults: What a blank means, by key; a blank there is worked out.
        measures: Kind of quantity by key.
        errors: Messages by key.
        invented: Keys whose figure is invented.
        system: Units of bare numbers.
        kept_as: Name each key is kept under.
    """

    typed: Mapping[str, str]
    kept: Mapping[str, str]
    defaults: Mapping[str, str]
    measures: Mapping[str, str]
    errors: Mapping[str, Sequence[str]]
    invented: frozenset[str]
    system: System
    kept_as: Mapping[str, str]

    def entry(
        self,
        key: str,
        label: str,
        *,
        blank: str = "",
        options: tuple[Option, ...] = (),
        words: bool = False,
        other: str | None = None,
    ) -> Entry:
        """Return an entry.

        Args:
            key: Query key.
            label: What it is.
            blank: What a blank means where no figure stands in.
            options: Choices.
            words: True if it is a text.
            other: What stands in the line for a choice not offered, if there is one.
        """
        value, measure = self.typed.get(key, ""), self.measures.get(key, "")
        stands = self.kept.get(key) or self.defaults.get(key) or blank
        tag = "kept" if key in self.kept else "invented" if key in self.invented else ""
        return Entry(
            key,
            label,
            value,
            stands,
            unit_text(measure, self.system) if measure else "",
            words,
            measure in LENGTHS,
            options,
            tuple(self.errors.get(key, ())),
            self.kept_as.get(key, ""),
            "" if value else tag,
            other,
        )

    def choice(
        self, key: str, label: str, choices: Sequence[tuple[str, str, str]], blank: str = ""
    ) -> Entry:
        """Return an entry with choices.

        Args:
            key: Query key.
            label: What it is.
            choices: Value, word and a word under it.
            blank: Word of the choice that leaves it blank; none if empty.
        """
        wanted = self.typed.get(key) or self.kept.get(key) or self.defaults.get(key, "")
        options = [
            Option(value, word, under, value.lower() == wanted.lower())
            for value, word, under in choices
        ]
        if blank:
            options.insert(0, Option("", blank, "", not wanted))
        if not any(option.chosen for option in options):
            # What cannot be taken stays in the form until it is changed.
            options.append(Option(wanted, units.short(wanted), "not known", True))
        return self.entry(key, label, options=tuple(options))


def of_field(field: Field, keep: str = "") -> Entry:
    """Return an entry of the job's own form."""
    return Entry(field.key, field.label, field.value, field.blank, field.unit, False,
                 field.fractions, field.options, field.errors, keep, "", field.other)  # fmt: skip


@cache
def measures_of(schema: type[Schema]) -> Mapping[str, str]:
    """Return the kind of quantity of each key of a schema and of the job."""
    fields = cast("dict[str, Any]", schema().fields)
    return {**MEASURED, **{k: f.measure for k, f in fields.items() if isinstance(f, Measured)}}


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


def with_units(
    typed: Mapping[str, str], measures: Mapping[str, str], system: System
) -> dict[str, str]:
    """Return entries with the unit they were meant in after bare numbers.

    Args:
        typed: Entries as typed.
        measures: Kind of quantity by key.
        system: The units a bare number was meant in.
    """
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


def hidden(typed: Mapping[str, str], groups: Sequence[EntryGroup]) -> Iterator[tuple[str, str]]:
    """Yield what was typed and has no entry in a form, so that sending it loses nothing.

    Args:
        typed: Entries as typed.
        groups: The form.
    """
    shown = {entry.key for group in groups for entry in group.entries}
    for key, text in typed.items():
        if key not in shown:
            yield key, text
