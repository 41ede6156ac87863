"""One choice of an entry."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Option:
    """One choice: the value sent, the word, a word under it."""

    value: str
    word: str
    under: str
    chosen: bool
