"""Marshmallow fields for what the shop writes; each error says what is allowed and why."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from marshmallow import ValidationError, fields

from beadwright import units
from beadwright.errors import BeadwrightError


class Measured(fields.Field[float]):
    """A quantity with a unit, held to a range; a blank is the default.

    Args:
        measure: Kind of quantity, key of ``units.MEASURES``.
        low: Least allowed, as the shop writes it.
        high: Most allowed, as the shop writes it.
        why: Why the range is what it is, a half sentence.
    """

    def __init__(self, measure: str, low: str, high: str, why: str) -> None:
        self.measure = measure
        self.low_text, self.high_text, self.why = low, high, why
        self.low = units.read(low, measure)
        self.high = units.read(high, measure)
        super().__init__()

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        system: units.System = "si" if (self.context_units(data)) == "si" else "us"
        try:
            number = units.read(str(value), self.measure, system)
        except ValueError as error:
            raise ValidationError(str(error)) from error
        slack = 1e-12
        if not self.low * (1 - slack) <= number <= self.high * (1 + slack):
            allowed = f"{self._end(self.low_text, self.low, system)} to " + self._end(
                self.high_text, self.high, system
            )
            raise ValidationError(f"{units.short(str(value))} is outside {allowed}: {self.why}")
        return number

    def _end(self, text: str, value: float, system: units.System) -> str:
        """Return an end of the range as the asker's units have it."""
        if system == "us":
            return text
        return f"{units.show(value, self.measure, 'si')} {units.symbol(self.measure, 'si')}"

    @staticmethod
    def context_units(data: Mapping[str, Any] | None) -> str:
        """Return the units the query asks for."""
        return str((data or {}).get("units", "us")).strip().lower()


class Choice(fields.Field[str]):
    """One of a list of words, whatever their case.

    Args:
        choices: What may be chosen.
    """

    def __init__(self, choices: tuple[str, ...]) -> None:
        self.choices = choices
        super().__init__()

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> str:
        wanted = " ".join(str(value).split()).lower()
        for choice in self.choices:
            if choice.lower() == wanted:
                return choice
        raise ValidationError(f"{units.quoted(str(value))} is not one of {', '.join(self.choices)}")


class Entry(fields.Field[Any]):
    """A name looked up in one of our tables.

    Args:
        look_up: Returns the entry or raises ``BeadwrightError``.
        choices: Names to offer.
    """

    def __init__(
        self, look_up: Callable[[str], Any], choices: tuple[str, ...], **kwargs: Any
    ) -> None:
        self.look_up = look_up
        self.choices = choices
        super().__init__()

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Any:
        text = " ".join(str(value).split())
        if len(text) > units.LONGEST_TEXT:
            known = ", ".join(self.choices)
            raise ValidationError(f"{units.quoted(text)} is too long; use {known}")
        try:
            return self.look_up(text)
        except BeadwrightError as error:
            raise ValidationError(str(error)) from error


class WholeNumber(fields.Field[int]):
    """A count within limits.

    Args:
        low: Least allowed.
        high: Most allowed.
    """

    def __init__(self, low: int, high: int) -> None:
        self.low, self.high = low, high
        super().__init__()

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> int:
        text = str(value).strip()
        if not text.isascii() or not text.isdigit() or len(text) > len(str(self.high)) + 2:
            raise ValidationError(
                f"{units.quoted(text)} is not a count; use a whole number {self.low} to {self.high}"
            )
        if not self.low <= int(text) <= self.high:
            raise ValidationError(f"{int(text)} is outside {self.low} to {self.high}")
        return int(text)
