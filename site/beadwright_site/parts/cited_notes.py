"""Notes as a page shows them: the word, the text, where it comes from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from beadwright.results import Note
from beadwright.sources import SOURCES

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


def cite(note: Note) -> CitedNote:
    """Return a note with its source named."""
    source = SOURCES.get(note.source)
    cited = ""
    if source is not None and note.source != "invented":
        practice = source.how == "common practice"
        cited = source.how if practice else f"{source.document}, {source.how}"
    return CitedNote(note.level, LEVEL_WORDS[note.level], note.text, note.source, cited)


def with_invented_counted(notes: Iterable[Note], count: int) -> tuple[Note, ...]:
    """Return notes with the one on invented figures in a sentence: the form marks which they are.

    Args:
        notes: An answer's notes.
        count: Invented figures in use.
    """
    some = "One figure here is" if count == 1 else f"{count} figures here are"
    text = f"{some} invented, marked in the form. Put in your own once."
    return tuple(
        Note(note.level, text, note.source, note.field) if note.source == "invented" else note
        for note in notes
    )


def state_line(name: str, invented: int) -> str:
    """Return the line over an answer: whose job it is, and how much of it is invented.

    Args:
        name: Whose job.
        invented: Invented figures in use.
    """
    return f"{name}. {invented} figures invented" if invented else name


def cited_notes(notes: Iterable[Note]) -> tuple[CitedNote, ...]:
    """Return notes with their sources named, loudest first, each once."""
    once = dict.fromkeys(notes)
    return tuple(map(cite, sorted(once, key=lambda note: ORDER.index(note.level))))
