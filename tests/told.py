"""Notes in words, as tests read them."""

from __future__ import annotations

from beadwright.measures import System
from beadwright.phrases import Phrase
from beadwright.results import Note
from beadwright.words.wording import reason, worded


def told(note: Note, system: System = "us") -> str:
    """Return what a note says."""
    return worded(note.phrase, system)


def in_words(phrase: Phrase | None, system: System = "us") -> str:
    """Return what a reason says; empty where there is none."""
    return reason(phrase, system)
