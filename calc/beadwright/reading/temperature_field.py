"""A temperature with its scale, held to a range; every page reads and refuses one alike."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Unpack

from marshmallow import ValidationError

from beadwright.reading.fields import FieldWords, QueryField
from beadwright.temperatures import degree_sign, read_temperature
from beadwright.typed_number import short
from beadwright.units import System

_SLACK_K = 1e-6
"""An end of the range is taken, however it is typed [K]."""


class Temperature(QueryField[float]):
    """A temperature, as ``70F`` or ``21C``; a bare number takes the page's scale [K].

    Args:
        low: Least allowed [K].
        high: Most allowed [K].
        allowed: The same as the shop writes it, by units.
        why: Why the range is what it is, a half sentence.
        **words: What is said of it.
    """

    def __init__(
        self,
        low: float,
        high: float,
        allowed: Mapping[System, str],
        why: str,
        **words: Unpack[FieldWords],
    ) -> None:
        self.low, self.high, self.allowed, self.why = low, high, allowed, why
        super().__init__(**words)

    def bare_unit(self, system: System) -> str:
        """Return the letter of the scale a bare number takes."""
        return degree_sign(system).removeprefix("°")

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        system = self.system_of(data)
        try:
            kelvin = read_temperature(str(value), system)
        except ValueError as error:
            raise ValidationError(str(error)) from error
        if not self.low - _SLACK_K <= kelvin <= self.high + _SLACK_K:
            raise ValidationError(
                f"{short(str(value))} is outside {self.allowed[system]}: {self.why}"
            )
        return kelvin
