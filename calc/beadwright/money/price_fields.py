"""Fields for prices, with or without a currency sign, and for short texts."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any, Unpack

from marshmallow import ValidationError

from beadwright import units
from beadwright.reading.fields import FieldWords, Measured, QueryField
from beadwright.typed_number import quoted, without_currency

_THOUSANDS = re.compile(r"^\d{1,3}(?:,\d{3})+(?:\.\d+)?$", re.ASCII)


_FORMULA = ("=", "+", "-", "@")
"""Beginnings of a text that a spreadsheet would run as a formula; these texts go into CSV files."""


class Price(Measured):
    """Money or money per unit, zero or more; ``$1.85/lb``, ``4.10/kg``, ``1,250``.

    Args:
        measure: Kind of quantity: ``money``, ``rate`` or one of the prices.
        high: Most allowed, as the shop writes it.
        why: Why there is a most, half a sentence.
        **words: What is said of it.
    """

    def __init__(self, measure: str, high: str, why: str, **words: Unpack[FieldWords]) -> None:
        zero = f"0{units.MEASURES[measure].us.text}"
        super().__init__(measure, zero, high, why, **words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        text = without_currency(str(value))
        if text.startswith("-"):
            raise ValidationError(f"{quoted(str(value))} is below zero; write 0 or more")
        if self.measure == "money" and _THOUSANDS.match(text):
            text = text.replace(",", "")
        return super()._deserialize(text, attr, data, **kwargs)


class Words(QueryField[str]):
    """A short text, one line.

    Args:
        longest: Characters it may have.
        **words: What is said of it.
    """

    is_text = True

    def __init__(self, longest: int, **words: Unpack[FieldWords]) -> None:
        self.longest = longest
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> str:
        text = " ".join(str(value).split())
        if len(text) > self.longest or not text.isprintable() or text[:1] in _FORMULA:
            raise ValidationError(
                f"{quoted(text)} is too long or not plain; write up to "
                f"{self.longest} characters and begin with a letter, a figure or a currency sign"
            )
        return text
