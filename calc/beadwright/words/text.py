"""What an entry of a catalog may be: one text, one by number, or one for each system."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Plural:
    """Two texts, one of which fits a phrase by its parameter ``count``.

    Attributes:
        one: The text for one.
        other: The text for any other number.
    """

    one: str
    other: str


@dataclass(frozen=True, slots=True)
class Rounded:
    """Two texts with round numbers of their own, where a standard gives both: 3 in, 75 mm.

    Attributes:
        us: The text in shop units of the United States.
        si: The text in metric units.
    """

    us: str
    si: str


type Text = str | Plural | Rounded
"""An entry of a catalog."""
