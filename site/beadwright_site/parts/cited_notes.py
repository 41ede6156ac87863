"""Notes as a page shows them: the word, the text, where it comes from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from beadwright.measures import System
from beadwright.results import Note
from beadwright.sources import SOURCES
from beadwright.words.wording import worded

LEVEL_WORDS = {"stop": "Stop", "out": "Out of the window", "caution": "Mind", "note": "Note"}
ORDER = ("stop", "out", "caution", "note")


@dataclass(frozen=True, slots=True)
class CitedNote:
    """A note with its source at hand.

    Attributes:
        level: stop, out, caution or note.
        word: The word before it.
        text: What it says.
        source: Source id, or empty.
        cited: How the source is named, or empty.
    """

    level: str
    word: str
    text: str
    source: str
    cited: str


def cite(note: Note, system: System) -> CitedNote:
    """Return a note in words, with its source named."""
    source = SOURCES.get(note.source)
    cited = ""
    if source is not None and note.source != "invented":
        practice = source.how == "common practice"
        cited = source.how if practice else f"{source.document}, {source.how}"
    text = worded(note.phrase, system)
    return CitedNote(note.level, LEVEL_WORDS[note.level], text, note.source, cited)


def state_line(name: str, invented: int) -> str:
    """Return the line over an answer: whose job it is, and how much of it is invented.

    Args:
        name: Whose job.
        invented: Invented figures in use.
    """
    return f"{name}. {invented} figures invented" if invented else name


def cited_notes(notes: Iterable[Note], system: System) -> tuple[CitedNote, ...]:
    """Return notes in words with their sources named, loudest first, each once."""
    once = sorted(dict.fromkeys(notes), key=lambda note: ORDER.index(note.level))
    return tuple(cite(note, system) for note in once)
