"""What a source is, and how a value was obtained."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

How = Literal["found", "found second-hand", "from memory", "derived", "common practice"]

Row = tuple[str, str, str, How]
"""A source as its table writes it: id, document, place, how."""


@dataclass(frozen=True, slots=True)
class Source:
    """A document or a body of practice.

    Attributes:
        key: Id used beside numbers.
        document: Document and edition.
        place: Table, clause or page.
        how: How the value was obtained.
    """

    key: str
    document: str
    place: str
    how: How

    @property
    def told(self) -> str:
        """How the value was obtained, as a reader is told it."""
        return "not checked against the book" if self.how == "from memory" else self.how
