"""What a page says of invented figures whose form marks which they are."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from beadwright.money.demo_prices import INVENTED_IN_USE
from beadwright.phrases import say
from beadwright.results import Note


def with_invented_counted(notes: Iterable[Note], count: int) -> tuple[Note, ...]:
    """Return notes with the one on invented figures in a sentence: the form marks which they are.

    Args:
        notes: An answer's notes.
        count: Invented figures in use.
    """
    marked = say("money.invented-marked", count=count)
    return tuple(
        replace(note, phrase=marked) if note.key == INVENTED_IN_USE else note for note in notes
    )
