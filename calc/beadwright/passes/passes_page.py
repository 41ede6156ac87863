"""The Passes page's answer: every bead drawn in its place, with its settings."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.passes.pass_beads import Asked, Bead, PassPlan
from beadwright.passes.pass_choices import Choice, choices, nearest
from beadwright.passes.pass_plan import Grounds
from beadwright.passes.pass_ranges import range_remarks
from beadwright.passes.pass_remarks import pass_remarks
from beadwright.passes.passes_query import PassesQuery
from beadwright.results import Note, severest_first
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.ways_out import WayOut, ways_out


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


_last: deque[tuple[Job, Asked, _Worked]] = deque(maxlen=2)
"""The plans worked out last: they are read bead by bead."""


def _worked(job: Job, asked: Asked) -> _Worked:
    """Work out a plan, or return it if it is one of the last."""
    for job_then, asked_then, worked in _last:
        if (job_then, asked_then) == (job, asked):
            return worked
    dialled = dial_in(job)
    grounds = Grounds(job, asked)
    found = grounds.with_beads(asked.count)
    holds = found.open and not found.over
    refused = any(process.refused is not None for process in found.processes.values())
    near = None if holds or refused else nearest(found, grounds)  # no count helps what is refused
    # What opens Dial in's window opens no part that the plan refuses: its note says what does.
    out = () if found.open or (refused and dialled.plan.open) else ways_out(job)
    notes = (*pass_remarks(found), *_of_joint(dialled, found), *range_remarks(found))
    worked = _Worked(dialled, found, near, out, notes)
    _last.append((job, asked, worked))
    return worked


def passes_answer(text: str, kept: Mapping[str, Any] | None = None) -> PassesAnswer:
    """Return the Passes page's answer to a query string.

    Args:
        text: The query string [-].
        kept: The shop's own defaults by key [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    return passes_of(read_page(PassesQuery, text, kept))


def passes_of(query: PassesQuery) -> PassesAnswer:
    """Return the Passes page's answer to a query as read.

    Args:
        query: The query [SI].

    Raises:
        FieldErrors: With each field's messages.
    """
    worked = _worked(query.job, query.plan)
    beads = len(worked.found.beads)
    at = query.at or beads
    if at > beads:
        last = f"1 to {beads}" if beads > 1 else "1"
        there = f"{beads} beads" if beads > 1 else "1 bead"
        raise FieldErrors({"at": [f"There is no bead {at}: this plan has {there}. Use {last}, "
                                  "or leave it blank for the last."]})  # fmt: skip
    return PassesAnswer(
        page="passes",
        query=query,
        dialled=worked.dialled,
        found=worked.found,
        nearest=worked.nearest,
        ways_out=worked.ways_out,
        at=at,
        notes=severest_first(worked.notes),
    )


def _of_joint(dialled: DialIn, found: PassPlan) -> Iterator[Note]:
    """Dial in's notes on the joint, the code, the dangers, and what is set by hand for every bead.

    Feed, volts and travel are each bead's own here, and the back of a root is welded as the plan
    says: they have notes of their own. Where no bead has settings, what is typed is held as Dial in
    holds it.
    """
    hand = dialled.job.by_hand
    typed = {
        field
        for field, value in (
            ("wfs", hand.wire_feed_m_s),
            ("volts", hand.volts),
            ("travel", hand.travel_m_s),
            ("ctwd", hand.tip_to_work_m),
        )
        if value is not None
    }
    own = {"wfs", "volts", "travel", "ctwd", "back"} - (typed & {"ctwd"})
    if typed and all(bead.laid is None for bead in found.beads):
        own -= typed | {"volts"}  # the mode of a feed or tip set by hand is told of the volts
    for note in dialled.notes:
        if note.level in ("stop", "out", "caution") and note.field not in own:
            yield note
