"""A second way to weld a job, run as the first is run: at its amps, at its travel, or as usual."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from beadwright.job.job import Job
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.plan import Plan, make_plan
from beadwright.setting.set_point import set_feed, stepped
from beadwright.tolerance import REL_TOL

HeldEqual = Literal["equal-amps", "equal-travel", "as-run"]
"""What is held equal; ``as-run``: nothing, each is run as it usually is."""


STEP = 0.015
"""Amps that differ by no more are equal: a hand's step of feed is as large [-]."""


@dataclass(frozen=True, slots=True)
class FirstRun:
    """How the first way is run.

    Attributes:
        dialled: Its dial-in.
        feed_m_s: Wire feed, set or as the metal it lays says [m/s].
        travel_m_s: Travel, set or as its arc time says [m/s].
    """

    dialled: DialIn
    feed_m_s: float
    travel_m_s: float

    @property
    def current_a(self) -> float:
        """Its current [A]."""
        return self.dialled.plan.run.point(self.feed_m_s).current_a


@dataclass(frozen=True, slots=True)
class RunAlike:
    """A way run as the first is.

    Attributes:
        alike: What is held equal.
        dialled: Its dial-in.
        reached: False where it cannot: amps then at the end of its own room, travel and amps of
            another mode as it is usually run.
    """

    alike: HeldEqual
    dialled: DialIn
    reached: bool


def usual_alike(job: Job, first: Job) -> HeldEqual:
    """Return how two jobs are compared unless the shop says otherwise.

    Wires of one size in one mover's hands and one position are held at equal amps; what differs
    more than that is run as it usually is.

    Source: common practice: wires are compared at the amps the joint is welded with.

    Args:
        job: The job as the later way welds it [-].
        first: The job as the first way welds it [-].
    """

    def kept(of: Job) -> tuple[object, ...]:
        return of.wire.size, of.travel_by, of.position, of.transfer

    return "equal-amps" if kept(job) == kept(first) else "as-run"


def run_alike(job: Job, first: FirstRun, alike: HeldEqual) -> RunAlike:
    """Return a way dialled in as the first is run.

    Source: ``burnoff`` for the feed of an amperage, ``deposition`` for the feed of a travel.

    Args:
        job: The job as this way welds it, no feed and no travel set by hand [-].
        first: How the first way is run [-].
        alike: What is held equal [-].
    """
    plan = make_plan(job)
    if alike == "as-run" or not plan.open:
        return RunAlike(alike, dial_in(job), alike == "as-run")
    if alike == "equal-amps":
        return _at_amps(job, plan, first)
    hand = replace(job.by_hand, travel_m_s=first.travel_m_s)
    there = dial_in(replace(job, by_hand=hand))
    if there.plan.passes == first.dialled.plan.passes and not _is_out(there):
        return RunAlike(alike, there, reached=True)
    return RunAlike(alike, dial_in(job), reached=False)


def _at_amps(job: Job, plan: Plan, first: FirstRun) -> RunAlike:
    """The plan alone says the feed: to dial in as usual first would take as long again."""
    if plan.transfer != first.dialled.plan.transfer:
        return _as_usual(job, first)
    room, wanted = plan.feeds, plan.run.feed_at(first.current_a)
    held = room.hold(wanted)
    feed = stepped(held, "wire_feed", job.units, room)
    reached = abs(held - wanted) <= REL_TOL * wanted
    if feed == set_feed(plan):
        return RunAlike("equal-amps", dial_in(job), reached)
    there = dial_in(replace(job, by_hand=replace(job.by_hand, wire_feed_m_s=feed)))
    if _is_out(there):
        return _as_usual(job, first)
    return RunAlike("equal-amps", there, reached)


def _as_usual(job: Job, first: FirstRun) -> RunAlike:
    """A wire as it is usually run, which may be at the first way's amps all the same."""
    usual = dial_in(job)
    point = usual.point
    near = point is not None and abs(point.current_a / first.current_a - 1) <= STEP
    return RunAlike("equal-amps", usual, near)


def _is_out(there: DialIn) -> bool:
    """True if the run is refused, or leaves its mode or one of its rooms."""
    return not there.open or any(note.level in ("stop", "out") for note in there.notes)
