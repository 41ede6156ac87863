"""Fields for prices, with or without a currency sign, and for short texts."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
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


@dataclass(frozen=True, slots=True)
class Priced:
    """A price as the shop is billed.

    Attributes:
        amount: By weight or volume [money/kg] or [money/m³]; for a full package [money].
        package: True if it is for a full spool, box, drum or cylinder.
    """

    amount: float
    package: bool = False


_PACKAGES = ("spool", "box", "drum", "pail", "coil", "reel", "roll", "package",
             "cylinder", "cyl", "bottle", "tank", "pack")  # fmt: skip
_BY_PACKAGE = re.compile(rf"^(?P<number>.+?)\s*/\s*(?:{'|'.join(_PACKAGES)})s?$", re.IGNORECASE)
_BY_CONTENT = re.compile(r"^(?P<number>.+?)\s*/\s*(?P<content>\d[\d.,]*\s*[a-z³][a-z0-9³]*)$", re.I)


class PackagePrice(QueryField[Priced]):
    """Money by weight or volume, or for a full package; ``1.85/lb``, ``$62/spool``, ``62/33lb``.

    Args:
        measure: Kind of price a bare number has: ``price_per_mass`` or ``price_per_volume``.
        content: Kind of quantity a package holds: ``mass`` or ``gas_volume``.
        high: Most allowed, as the shop writes it.
        why: Why there is a most, half a sentence.
        **words: What is said of it.
    """

    def __init__(
        self, measure: str, content: str, high: str, why: str, **words: Unpack[FieldWords]
    ) -> None:
        self.measure, self._content = measure, content
        self._by_amount = Price(measure, high, why)
        self._by_package = Price("money", "1000000000", why)
        super().__init__(**words)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> Priced:
        text = without_currency(str(value))
        packed = _BY_PACKAGE.match(text)
        if packed is not None:
            return Priced(self._by_package.deserialize(packed["number"], attr, data), package=True)
        held = _BY_CONTENT.match(text)
        if held is None:
            return Priced(self._by_amount.deserialize(text, attr, data))
        try:
            content = units.read(held["content"], self._content, self.system_of(data))
        except ValueError as error:
            raise ValidationError(str(error)) from error
        if not content > 0:
            raise ValidationError(f"{quoted(str(value))}: an empty package has no price")
        return Priced(self._by_package.deserialize(held["number"], attr, data) / content)


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
