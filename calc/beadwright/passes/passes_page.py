"""The Passes page's answer: every bead drawn in its place, with its settings."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any
from urllib.parse import urlencode

from beadwright.errors import FieldErrors
from beadwright.job.job_query import read_job
from beadwright.passes.pass_beads import Bead, PassPlan
from beadwright.passes.pass_choices import Choice, choices, nearest
from beadwright.passes.pass_plan import pass_plan
from beadwright.passes.pass_remarks import pass_remarks
from beadwright.passes.passes_query import DEFAULTS, PassesSchema, asked_of
from beadwright.reading.page_query import PageAnswered, read_page
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.ways_out import WayOut, ways_out
from beadwright.units import System

_SETTINGS = ("wfs", "volts", "ctwd", "travel")
_ORDER = {"stop": 0, "out": 1, "caution": 2, "note": 3}


@dataclass(frozen=True, slots=True)
class PassesAnswer(PageAnswered):
    """The Passes page's answer.

    Attributes:
        page: ``passes``.
        query: The query as read.
        dialled: The job as Dial in answers it.
        found: The plan.
        nearest: Where the plan does not hold, the nearest that does, or None.
        ways_out: What else would open it.
        notes: Notes, the most severe first.
        at: Number of the bead looked at, from 1 [-].
    """

    dialled: DialIn
    found: PassPlan
    nearest: Choice | None
    ways_out: tuple[WayOut, ...]
    at: int

    @property
    def bead(self) -> Bead:
        """The bead looked at."""
        return self.found.beads[self.at - 1]

    @property
    def units(self) -> System:
        """How to show."""
        return self.found.job.units

    def choices(self) -> tuple[Choice, ...]:
        """Return other plans and what each costs; worked out when asked."""
        return choices(self.found)


@dataclass(frozen=True, slots=True)
class _Worked:
    """The part of an answer that is the same for every bead."""

    dialled: DialIn
    found: PassPlan
    nearest: Choice | None
    ways_out: tuple[WayOut, ...]
    notes: tuple[Note, ...]


@lru_cache(maxsize=2)
def _worked(filled: tuple[tuple[str, str], ...]) -> _Worked:
    """Work out a plan; the last ones are kept, because they are read bead by bead."""
    query = read_page(urlencode(filled), None, PassesSchema, DEFAULTS)
    job = read_job(query.filled).job
    dialled = dial_in(job)
    found = pass_plan(job, asked_of(query.values))
    holds = found.open and not found.over
    near = None if holds else nearest(found)
    out = () if found.open else ways_out(job)
    return _Worked(dialled, found, near, out, (*pass_remarks(found), *_of_joint(dialled)))


def passes_answer(text: str, kept: Mapping[str, Any] | None = None) -> PassesAnswer:
    """Return the Passes page's answer to a query string.

    Args:
        text: The query string [-].
        kept: The shop's own defaults by key [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    query = read_page(text, kept, PassesSchema, DEFAULTS)
    worked = _worked(tuple((key, text) for key, text in query.filled.items() if key != "at"))
    beads = len(worked.found.beads)
    at = query.values.get("at") or beads
    if at > beads:
        last = f"1 to {beads}" if beads > 1 else "1"
        there = f"{beads} beads" if beads > 1 else "1 bead"
        raise FieldErrors({"at": [f"There is no bead {at}: this plan has {there}. Use {last}, "
                                  "or leave it blank for the last."]})  # fmt: skip
    notes = [*worked.notes, *query.notes()]
    return PassesAnswer(
        "passes", query, worked.dialled, worked.found, worked.nearest, worked.ways_out, at,
        notes=tuple(sorted(notes, key=lambda note: _ORDER[note.level])),
    )  # fmt: skip


def _of_joint(dialled: DialIn) -> Iterator[Note]:
    """Dial in's notes on the joint, the code and the dangers; settings have notes of their own."""
    for note in dialled.notes:
        if note.level in ("stop", "out", "caution") and note.field not in _SETTINGS:
            yield note
