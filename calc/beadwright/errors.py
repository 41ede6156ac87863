"""The errors the core raises.

BeadwrightError
├── FieldErrors        what was typed, message by message, each beside its field
├── OutOfRangeError    a value outside the range a method is valid for
└── UnknownEntryError  a wire, gas, position or source that is not in our tables
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import inf


class BeadwrightError(Exception):
    """The base of every error the core raises on purpose."""


class FieldErrors(BeadwrightError):
    """Messages keyed by the field they belong to.

    Attributes:
        messages: Field name to the list of what is wrong, what is allowed and why.
    """

    def __init__(self, messages: Mapping[str, Sequence[str]]) -> None:
        self.messages: dict[str, list[str]] = {key: list(value) for key, value in messages.items()}
        super().__init__("; ".join(f"{k}: {' '.join(v)}" for k, v in self.messages.items()))


class OutOfRangeError(BeadwrightError, ValueError):
    """A value outside the range a method holds for; the text gives name, value and limit."""


class UnknownEntryError(BeadwrightError, LookupError):
    """A name that is not in our tables; the text lists the names that are."""


def require_positive(**values: float) -> None:
    """Raise unless every value is above zero and finite.

    ``not value > 0`` also refuses NaN.

    Args:
        **values: The arguments of the calling function, by name [any unit].

    Raises:
        OutOfRangeError: If a value is zero, negative, infinite or not a number.
    """
    for name, value in values.items():
        if not 0 < value < inf:
            raise OutOfRangeError(f"{name} = {value} must be above zero and finite")
