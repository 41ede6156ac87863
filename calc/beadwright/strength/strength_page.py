"""The Strength page's answer: leg needed, what is used of it, which link gives way first."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import floor
from typing import Any

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.joint.fillet_joints import skew_leg
from beadwright.joint.fillets import (
    gapped_leg,
    largest_edge_leg,
    least_length,
    least_segment,
    minimum_leg,
)
from beadwright.page_query import PageAnswered, read_page
from beadwright.results import Note
from beadwright.strength.intermittent import Intermittent, intermittent_for, widest_gap
from beadwright.strength.resistance_en import LEAST_THROAT_M
from beadwright.strength.strength_check import (
    LARGEST_LEG_M,
    SHOP_STEP_M,
    Link,
    Spread,
    counted_throat,
    leg_needed,
    plate_links,
    spread,
    weld_link,
)
from beadwright.strength.strength_notes import strength_notes
from beadwright.strength.strength_query import DEFAULTS, StrengthSchema
from beadwright.strength.strength_task import StrengthTask, strength_task
from beadwright.units import System

_HAIR = 1e-9


@dataclass(frozen=True, slots=True)
class LegSizes:
    """The legs that matter.

    Attributes:
        judged: The leg judged: as given, else what is needed and the code allows [m].
        given: True if it was given.
        needed: Smallest shop leg strength asks for, or None if no fillet holds [m].
        least: Least the code lets be welded [m].
        most: Most along the plate's edge, or None where no edge is welded [m].
        one_pass: Most in one pass in this position [m].
        to_weld: What to weld so that neither gap nor slant costs throat [m].
        throat: Throat of the leg judged [m].
        shortest: Shortest weld this leg counts fully in [m].
    """

    judged: float
    given: bool
    needed: float | None
    least: float
    most: float | None
    one_pass: float
    to_weld: float
    throat: float
    shortest: float


@dataclass(frozen=True, slots=True)
class StrengthAnswer(PageAnswered):
    """The Strength page's answer.

    Attributes:
        page: ``strength``.
        query: The query as read.
        task: What was asked.
        spread: How the load spreads along the weld.
        legs: The legs that matter.
        links: What can give way, the weakest first.
        segments: Intermittent welding that would carry it, or None.
        notes: What to mind, loudest first.
    """

    task: StrengthTask
    spread: Spread
    legs: LegSizes
    links: tuple[Link, ...]
    segments: Intermittent | None
    notes: tuple[Note, ...]

    @property
    def units(self) -> System:
        """How to show."""
        return self.task.job.units

    @property
    def holds(self) -> bool:
        """True if every link holds."""
        return self.links[0].use <= 1 + _HAIR

    @property
    def weld(self) -> Link:
        """The weld's own link."""
        return next(link for link in self.links if link.key == "weld")

    @property
    def load_times(self) -> float:
        """How many times the load, as it acts now, the weakest link holds [-]."""
        return 1 / self.links[0].use if self.links[0].use else float("inf")


def strength_answer(query: str, kept: Mapping[str, Any] | None = None) -> StrengthAnswer:
    """Return the Strength page's answer to a query string.

    Args:
        query: Keys of ``strength_query.DEFAULTS`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(query, kept, StrengthSchema, DEFAULTS)
    task = strength_task(read)
    found = spread(task)
    legs = _legs(task, found)
    try:
        weld = weld_link(task, found, legs.judged, _leg2(task))
    except OutOfRangeError as error:
        text = f"This weld is too short for the leg: {error}."
        raise FieldErrors({"leg": [text], "group_height": [text]}) from error
    links = tuple(sorted((weld, *plate_links(task, found)), key=lambda link: -link.use))
    segments = _segments(task, links[0], legs)
    notes = strength_notes(task, found, legs, links, segments)
    return StrengthAnswer(
        "strength", read, task, found, legs, links, segments, (*notes, *read.notes())
    )


def _legs(task: StrengthTask, found: Spread) -> LegSizes:
    job = task.job
    needed, least, most = leg_needed(task, found), _least(task), None
    if job.joint == "lap":
        most = largest_edge_leg(job.plate2_m)
    judged = job.leg_m
    if judged is None:
        judged = max(needed or LARGEST_LEG_M, least)
    gap, leg2 = job.gap_m or 0.0, _leg2(task)
    skew = job.edges.skew_deg if job.joint == "tee" else 90.0
    return LegSizes(
        judged, job.leg_m is not None, needed, least, most, job.position.single_pass_leg_m,
        skew_leg(gapped_leg(judged, gap), skew), counted_throat(judged, leg2),
        least_length(judged),
    )  # fmt: skip


def _leg2(task: StrengthTask) -> float | None:
    """The other leg, where both are given; a leg worked out here is of equal legs."""
    return task.job.edges.leg2_m if task.job.leg_m is not None else None


def _least(task: StrengthTask) -> float:
    if not task.european:
        return minimum_leg(task.job.thinner_m)
    step = SHOP_STEP_M[task.job.units]
    return step * -floor(-LEAST_THROAT_M * 2**0.5 / step + _HAIR)


def _segments(task: StrengthTask, weakest: Link, legs: LegSizes) -> Intermittent | None:
    """Segments of the judged leg that would carry what the seam is asked, where that can be said.

    Only for straight seams loaded evenly: elsewhere a gap may fall where the weld works hardest.
    What a gap leaves out, the segments and the plates beside them carry: the weakest link counts.
    """
    if task.european or task.group.way is None or not task.concentric or weakest.use > 1:
        return None
    segment = task.segment_m
    if segment is None:
        step = 4 * SHOP_STEP_M["us"] * 2 if task.job.units == "us" else 0.010
        segment = step * -floor(-least_segment(legs.judged) / step + _HAIR)
    try:
        found = intermittent_for(weakest.asked, weakest.holds, segment, legs.judged)
    except OutOfRangeError as error:
        raise FieldErrors({"segment": [f"Too short for this leg: {error}."]}) from error
    step = 2 * 4 * SHOP_STEP_M["us"] if task.job.units == "us" else 0.010
    widest = segment + widest_gap(task.job.thinner_m)
    pitch = step * floor(min(found.pitch_m, widest) / step + _HAIR)
    return Intermittent(segment, pitch) if pitch > segment + _HAIR else None
