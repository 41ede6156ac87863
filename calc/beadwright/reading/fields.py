"""Marshmallow fields for what the shop writes; each error says what is allowed and why.

A field also says what it is called, what it means, what a blank stands for: once, for the forms of
the pages, the terminal's help and the defaults.
"""

from __future__ import annotations

import copy
from collections.abc import Callable, Mapping
from typing import Any, Self, TypedDict, Unpack

from marshmallow import ValidationError, fields

from beadwright import units
from beadwright.errors import BeadwrightError
from beadwright.typed_number import LONGEST_TEXT, is_bare_number, quoted, short
from beadwright.units import System


class FieldWords(TypedDict, total=False):
    """What is said of a field.

    Attributes:
        label: What it is called beside its entry in a form.
        help: What it means, for the terminal.
        default: What a blank or missing one means, as it would be typed; empty where that is
            worked out, or means there is none.
        blank: What a form says a blank means, where no default does and it is always the same.
    """

    label: str
    help: str
    default: str
    blank: str


class QueryField[T](fields.Field[T]):
    """A field of a query.

    Args:
        **words: What is said of it.
    """

    measure = ""
    """Kind of quantity, key of ``units.MEASURES``; empty for what has no unit."""

    is_text = False
    """True for words of one's own."""

    def __init__(self, **words: Unpack[FieldWords]) -> None:
        super().__init__()
        self.label = words.get("label", "")
        self.help = words.get("help", "")
        self.default = words.get("default", "")
        self.blank = words.get("blank", "")

    def but(self, **words: Unpack[FieldWords]) -> Self:
        """Return the same field with other words.

        Args:
            **words: What is said otherwise.
        """
        other = copy.copy(self)
        for name, text in words.items():
            setattr(other, name, text)
        return other

    def with_unit(self, text: str, system: System) -> str:
        """Return what was typed, with the unit it was meant in where it is a bare number.

        Args:
            text: What was typed [-].
            system: The units a bare number was meant in [-].
        """
        unit = self.bare_unit(system)
        return text + unit if unit and is_bare_number(text) else text

    def bare_unit(self, system: System) -> str:
        """Return the unit a bare number takes, as it is typed; empty where it takes none.

        Args:
            system: Units of bare numbers [-].
        """
        return units.typed_unit(self.measure, system) if self.measure else ""

    @staticmethod
    def system_of(data: Mapping[str, Any] | None) -> System:
        """Return the units the query asks for.

        Args:
            data: The query's keys to text [-].
        """
        return units.system_named(str((data or {}).get("units", "")))


class Measured(QueryField[float]):
    """A quantity with a unit, held to a range.

    Args:
        measure: Kind of quantity, key of ``units.MEASURES``.
        low: Least allowed, as the shop writes it.
        high: Most allowed, as the shop writes it.
        why: Why the range is what it is, a half sentence.
        **words: What is said of it.
    """

    def __init__(
        self, measure: str, low: str, high: str, why: str, **words: Unpack[FieldWords]
    ) -> None:
        self.measure = measure
        self.low_text, self.high_text, self.why = low, high, why
        self.low = units.read(low, measure)
        self.high = units.read(high, measure)
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        system = self.system_of(data)
        try:
            number = units.read(str(value), self.measure, system)
        except ValueError as error:
            raise ValidationError(str(error)) from error
        slack = 1e-12
        if not self.low * (1 - slack) <= number <= self.high * (1 + slack):
            allowed = f"{self._end(self.low_text, self.low, system)} to " + self._end(
                self.high_text, self.high, system
            )
            raise ValidationError(f"{short(str(value))} is outside {allowed}: {self.why}")
        return number

    def _end(self, text: str, value: float, system: System) -> str:
        """Return an end of the range as the asker's units have it."""
        if system == "us":
            return text
        return units.written(value, self.measure, "si")


class Choice[T: str](QueryField[T]):
    """One of a list of words, whatever their case.

    Args:
        choices: What may be chosen.
        **words: What is said of it.
    """

    def __init__(self, choices: tuple[T, ...], **words: Unpack[FieldWords]) -> None:
        self.choices = choices
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> T:
        wanted = " ".join(str(value).split()).lower()
        for choice in self.choices:
            if choice.lower() == wanted:
                return choice
        raise ValidationError(f"{quoted(str(value))} is not one of {', '.join(self.choices)}")


class Entry[T](QueryField[T]):
    """A name looked up in one of our tables.

    Args:
        look_up: Returns the entry or raises ``BeadwrightError``.
        choices: Names to offer.
        **words: What is said of it.
    """

    def __init__(
        self, look_up: Callable[[str], T], choices: tuple[str, ...], **words: Unpack[FieldWords]
    ) -> None:
        self.look_up = look_up
        self.choices = choices
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> T:
        text = " ".join(str(value).split())
        if len(text) > LONGEST_TEXT:
            known = ", ".join(self.choices)
            raise ValidationError(f"{quoted(text)} is too long; use {known}")
        try:
            return self.look_up(text)
        except BeadwrightError as error:
            raise ValidationError(str(error)) from error


class WholeNumber(QueryField[int]):
    """A count within limits.

    Args:
        low: Least allowed.
        high: Most allowed.
        why: Why the range is what it is, a half sentence, where that is not plain.
        **words: What is said of it.
    """

    def __init__(self, low: int, high: int, why: str = "", **words: Unpack[FieldWords]) -> None:
        self.low, self.high = low, high
        self._why = f": {why}" if why else ""
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> int:
        text = str(value).strip()
        if not text.isascii() or not text.isdigit() or len(text) > len(str(self.high)) + 2:
            raise ValidationError(
                f"{quoted(text)} is not a count; use a whole number {self.low} to {self.high}"
                f"{self._why}"
            )
        if not self.low <= int(text) <= self.high:
            raise ValidationError(f"{int(text)} is outside {self.low} to {self.high}{self._why}")
        return int(text)
