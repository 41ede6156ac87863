"""Notes in words, as tests read them."""

from __future__ import annotations

from beadwright.measures import System
from beadwright.results import Note
from beadwright.words.wording import worded


def told(note: Note, system: System = "us") -> str:
    """Return what a note says."""
    return worded(note.phrase, system)
