"""The field of a shop's own numbers, as Coupons learns them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from marshmallow import ValidationError

from beadwright.process.own_numbers import OwnBook, OwnNumbersError, own_book
from beadwright.reading.fields import QueryField

LONGEST = 4000
"""Characters of the text: a wire and gas take about a hundred [-]."""


class OwnField(QueryField[OwnBook]):
    """A shop's own numbers in one text; none for ``off``."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> OwnBook:
        text = str(value)
        if len(text) > LONGEST:
            raise ValidationError(f"{len(text)} characters are too many: own numbers take less")
        try:
            return own_book(text)
        except OwnNumbersError as error:
            raise ValidationError(str(error)) from error
