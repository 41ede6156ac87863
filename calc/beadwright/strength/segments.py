"""The intermittent weld that would carry what a seam is asked, by the code chosen."""

from __future__ import annotations

from math import floor

from beadwright.errors import FieldErrors
from beadwright.joint.fillets import least_segment
from beadwright.measures import INCH_M
from beadwright.strength.effective_weld import effective_weld
from beadwright.strength.intermittent import (
    Intermittent,
    pitch_for,
    widest_gap_en,
    widest_pitch_aisc,
)
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.one_sided import opens_at_root, root_load
from beadwright.strength.resistance_en import least_length_en
from beadwright.strength.strength_check import Link, spread
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL
from beadwright.units import written

_STEP_M = {"us": INCH_M / 2, "si": 0.010}
"""Segments and pitches go by half an inch or by 10 mm: marks on a rule."""


def segments_for(
    task: StrengthTask, links: tuple[Link, ...], legs: LegSizes
) -> Intermittent | None:
    """Return segments of the judged leg that would carry the seam, where that can be said.

    Only for straight seams loaded evenly: elsewhere a gap may fall where the weld works hardest.
    None for a weld from one side whose root the load opens, for a lap so long that less of it
    holds more, and for one whose plates are held by the length of weld all along.
    What a gap leaves out, the segments and the plates beside them carry: every link is held that
    the seam strains point by point.

    Args:
        task: What is asked [-].
        links: What can give way, on the weld all along [-].
        legs: The legs that matter [-].

    Raises:
        FieldErrors: If a segment asked for is shorter than the code allows.
    """
    if task.group.way is None or not task.concentric or any(link.use > 1 for link in links):
        return None
    if task.longer_holds_less(legs.throat) or _opens(task):
        return None
    if any(link.by_length for link in links):
        return None
    strained = [link for link in links if link.measure == "force_per_length"]
    step, least, lost = _STEP_M[task.job.units], _least(task, legs), _lost(task, legs)
    segment = task.segment_m
    if segment is None:
        segment = step * -floor(-least / step + REL_TOL)
    elif segment < least - REL_TOL:
        raise FieldErrors({"segment": [_too_short(task, segment, least)]})
    # Of the weld itself the ends of each segment count as the code says; the plate beside it whole.
    pitches = [
        pitch_for(
            _asked(task, link, legs), link.holds, segment - (lost if link.key == "weld" else 0.0)
        )
        for link in strained
    ]
    pitch = step * floor(min(*pitches, _widest(task, segment)) / step + REL_TOL)
    return Intermittent(segment, pitch) if pitch > segment + REL_TOL else None


def _opens(task: StrengthTask) -> bool:
    """Whether the load opens the root of a weld from one side."""
    if task.held or not opens_at_root(task):
        return False
    return root_load(task, spread(task).forces) is not None


def _asked(task: StrengthTask, link: Link, legs: LegSizes) -> float:
    """What a link is asked per length of the whole seam, of which no end is taken off."""
    if link.key != "weld" or not task.ends_lost:
        return link.asked
    counted = effective_weld(task.group, legs.throat).length_m
    return link.asked * counted / task.group.length_m


def _least(task: StrengthTask, legs: LegSizes) -> float:
    if task.european:
        return least_length_en(legs.throat) + _lost(task, legs)
    return least_segment(legs.judged)


def _lost(task: StrengthTask, legs: LegSizes) -> float:
    """What the two ends of a segment lose."""
    return 2 * legs.throat if task.european and not task.ends_full else 0.0


def _widest(task: StrengthTask, segment_m: float) -> float:
    thinner = task.job.thinner_m
    if task.european:
        return segment_m + widest_gap_en(thinner)
    return widest_pitch_aisc(thinner)


def _too_short(task: StrengthTask, segment_m: float, least_m: float) -> str:
    system = task.job.units
    rule = (
        "EN 1993-1-8, 4.5.1: 30 mm or six throats must be left full size"
        if task.european
        else "AISC 360 J2.2b: four legs, and 1-1/2 in"
    )
    return (
        f"A segment of {written(segment_m, 'length', system)} is too short for this leg: "
        f"{written(least_m, 'length', system)} or more ({rule})."
    )
