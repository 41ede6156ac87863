"""What a form is filled with, and the entries made from it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from beadwright.reading.entries import Fields
from beadwright.reading.fields import QueryField
from beadwright.units import System, typed_unit
from beadwright_site.forms.entries import Choices, Entry, Option, options_of
from beadwright_site.forms.gas_options import gas_options

LENGTHS = frozenset({"length", "small_length", "leg", "tip_to_work"})
"""Kinds of quantity that shop fractions help in typing."""

_NO_FIELD = QueryField[Any]()
"""What stands for the field of an entry the core does not read."""


@dataclass(frozen=True, slots=True)
class Filling:
    """What a form is filled with.

    Attributes:
        typed: Entries as typed.
        held: The shop's own defaults.
        system: Units of bare numbers.
        errors: Messages by key.
        lent: True if the job is the example's.
    """

    typed: Mapping[str, str]
    held: Mapping[str, str]
    system: System
    errors: Mapping[str, Sequence[str]] = field(default_factory=dict[str, Sequence[str]])
    lent: bool = False


@dataclass(frozen=True, slots=True)
class Form:
    """What the entries of a page are made from.

    Attributes:
        filling: What they are filled with.
        fields: The page's fields by key: what each is called, what a blank means.
        invented: Keys whose figure is invented.
        kept_as: Name each key is kept under.
    """

    filling: Filling
    fields: Fields
    invented: frozenset[str] = frozenset()
    kept_as: Mapping[str, str] = field(default_factory=dict[str, str])

    def wanted(self, key: str) -> str:
        """Return what an entry is set to: typed, kept, or its default."""
        filling = self.filling
        return filling.typed.get(key) or filling.held.get(key) or self.default(key)

    def default(self, key: str) -> str:
        """Return what a blank means; empty where it is worked out, or the key is none of a page."""
        return self.fields[key].default if key in self.fields else ""

    def entry(
        self,
        key: str,
        label: str = "",
        *,
        blank: str = "",
        options: tuple[Option, ...] = (),
        words: bool = False,
        other: str | None = None,
    ) -> Entry:
        """Return an entry.

        Args:
            key: Query key.
            label: What it is, where its field does not say.
            blank: What a blank means here, where no figure stands in and its field does not say.
            options: Choices.
            words: True if it is a text, though its field is none.
            other: What stands in the line for a choice not offered, if there is one.
        """
        filling, field = self.filling, self.fields.get(key, _NO_FIELD)
        measure = field.measure
        value = filling.typed.get(key, "")
        tag = "kept" if key in filling.held else "invented" if key in self.invented else ""
        return Entry(
            key=key,
            label=label or field.label,
            value=value,
            blank=filling.held.get(key) or field.default or blank or field.blank,
            unit=typed_unit(measure, filling.system) if measure else "",
            words=words or field.is_text,
            fractions=measure in LENGTHS,
            options=options,
            errors=tuple(filling.errors.get(key, ())),
            keep=self.kept_as.get(key, ""),
            tag="" if value else tag,
            other=other,
        )

    def choice(
        self, key: str, choices: Choices, blank: str = "", label: str = "", *, chosen: str = ""
    ) -> Entry:
        """Return an entry with choices.

        Args:
            key: Query key.
            choices: Value, word and a word under it.
            blank: Word of the choice that leaves it blank; none if empty.
            label: What it is, where its field does not say.
            chosen: What is chosen where nothing says so; empty: its default.
        """
        wanted = self.wanted(key) or chosen
        return self.entry(key, label, options=options_of(choices, wanted, blank))

    def gas(self, key: str, label: str, blank: str = "") -> Entry:
        """Return the entry of a gas: the usual ones to tap, and a line for any other mix.

        Args:
            key: Query key.
            label: What it is.
            blank: Word of the choice that leaves it blank; none if empty.
        """
        wanted = self.wanted(key)
        options, other = gas_options(wanted)
        if blank:
            options = (Option("", blank, "", not wanted), *options)
        return self.entry(key, label, options=options, other=other)
