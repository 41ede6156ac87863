"""The Strength page's answer: leg needed, what is used of it, which link gives way first."""

from __future__ import annotations

from collections.abc import Mapping
from math import floor
from typing import Any

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.page_query import read_page
from beadwright.joint.fillet_joints import skew_leg
from beadwright.joint.fillets import (
    gapped_leg,
    largest_edge_leg,
    least_length,
    least_segment,
    minimum_leg,
)
from beadwright.strength.intermittent import Intermittent, intermittent_for, widest_gap
from beadwright.strength.lap_members import check_widths, lap_members
from beadwright.strength.plate_links import plate_links
from beadwright.strength.resistance_en import LEAST_THROAT_M
from beadwright.strength.strength_answer import LegSizes, StrengthAnswer
from beadwright.strength.strength_check import (
    LARGEST_LEG_M,
    SHOP_STEP_M,
    Link,
    Spread,
    counted_throat,
    leg_needed,
    spread,
    weld_link,
)
from beadwright.strength.strength_notes import strength_notes
from beadwright.strength.strength_query import StrengthQuery
from beadwright.strength.strength_task import StrengthTask, strength_task
from beadwright.tolerance import REL_TOL


def strength_answer(query: str, kept: Mapping[str, Any] | None = None) -> StrengthAnswer:
    """Return the Strength page's answer to a query string.

    Args:
        query: Keys of ``strength_query.StrengthQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(StrengthQuery, query, kept)
    task = strength_task(read)
    check_widths(task)
    found = spread(task)
    legs = _legs(task, found)
    try:
        weld = weld_link(task, found, legs.judged, _leg2(task))
    except OutOfRangeError as error:
        text = f"This weld is too short for the leg: {error}."
        raise FieldErrors({"leg": [text], "group_height": [text]}) from error
    given = (weld, *plate_links(task, found), *lap_members(task))
    links = tuple(sorted(given, key=lambda link: -link.use))
    segments = _segments(task, links, legs)
    notes = strength_notes(task, found, legs, links, segments)
    return StrengthAnswer(
        page="strength",
        query=read,
        task=task,
        spread=found,
        legs=legs,
        links=links,
        segments=segments,
        notes=notes,
    )


def _legs(task: StrengthTask, found: Spread) -> LegSizes:
    job = task.job
    needed, least, most = leg_needed(task, found), _least(task), None
    if job.joint == "lap":
        most = largest_edge_leg(job.plate2_m)
    judged = job.leg_m
    if judged is None:
        judged = max(needed or LARGEST_LEG_M, least)
    # A root opening belongs to its groove: only a fillet's gap takes from its throat.
    gap = job.gap_m if job.is_fillet and job.gap_m is not None else 0.0
    leg2 = _leg2(task)
    skew = job.edges.skew_deg if job.joint == "tee" else 90.0
    return LegSizes(
        judged=judged,
        given=job.leg_m is not None,
        needed=needed,
        least=least,
        most=most,
        one_pass=job.position.single_pass_leg_m,
        to_weld=skew_leg(gapped_leg(judged, gap), skew),
        throat=counted_throat(judged, leg2),
        shortest=least_length(judged),
    )


def _leg2(task: StrengthTask) -> float | None:
    """The other leg, where both are given; a leg worked out here is of equal legs."""
    return task.job.edges.leg2_m if task.job.leg_m is not None else None


def _least(task: StrengthTask) -> float:
    if not task.european:
        return minimum_leg(task.job.thinner_m)
    step = SHOP_STEP_M[task.job.units]
    return step * -floor(-LEAST_THROAT_M * 2**0.5 / step + REL_TOL)


def _segments(task: StrengthTask, links: tuple[Link, ...], legs: LegSizes) -> Intermittent | None:
    """Segments of the judged leg that would carry what the seam is asked, where that can be said.

    Only for straight seams loaded evenly: elsewhere a gap may fall where the weld works hardest.
    What a gap leaves out, the segments and the plates beside them carry: the weakest link counts
    of those the seam strains point by point.
    """
    straight = task.group.way is not None and task.concentric
    if task.european or not straight or links[0].use > 1:
        return None
    weakest = next(link for link in links if link.measure == "force_per_length")
    segment = task.segment_m
    if segment is None:
        step = 4 * SHOP_STEP_M["us"] * 2 if task.job.units == "us" else 0.010
        segment = step * -floor(-least_segment(legs.judged) / step + REL_TOL)
    try:
        found = intermittent_for(weakest.asked, weakest.holds, segment, legs.judged)
    except OutOfRangeError as error:
        raise FieldErrors({"segment": [f"Too short for this leg: {error}."]}) from error
    step = 2 * 4 * SHOP_STEP_M["us"] if task.job.units == "us" else 0.010
    widest = segment + widest_gap(task.job.thinner_m)
    pitch = step * floor(min(found.pitch_m, widest) / step + REL_TOL)
    return Intermittent(segment, pitch) if pitch > segment + REL_TOL else None
