"""Notes as a page shows them: the word, the text, where it comes from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from beadwright.measures import System
from beadwright.results import Note
from beadwright.sources import SOURCES
from beadwright.words.wording import worded

LEVEL_WORDS = {"stop": "Stop", "out": "Out of the window", "caution": "Caution", "note": "Note"}
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
    known = note.source in SOURCES and note.source != "invented"
    text = worded(note.phrase, system)
    named = named_source(note.source) if known else ""
    return CitedNote(note.level, LEVEL_WORDS[note.level], text, note.source, named)


def named_source(key: str) -> str:
    """Return a source's document with its edition, and how its value was had.

    Args:
        key: Source id.
    """
    source = SOURCES[key]
    practice = source.how == "common practice"
    return source.told if practice else f"{source.document}, {source.told}"


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
