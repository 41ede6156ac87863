"""The legs that matter to a weld: by strength, by the code chosen, by gap and slant."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import cos, floor, radians, sqrt

from beadwright.joint.fillet_joints import skew_leg
from beadwright.joint.fillets import (
    gapped_leg,
    largest_edge_leg,
    least_length,
    minimum_leg,
    printed_size,
)
from beadwright.strength import resistance_en
from beadwright.strength.bracket_center import turns_as_bracket
from beadwright.strength.leg_search import SHOP_STEP_M, largest_counted, leg_needed
from beadwright.strength.strength_check import Spread, both_sides, spread, weld_throat
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


@dataclass(frozen=True, slots=True)
class LegSizes:
    """The legs that matter.

    Attributes:
        judged: The leg judged: as given, else what is needed and the code allows [m].
        given: True if it was given.
        needed: Smallest shop leg strength asks for, or None if no fillet holds [m].
        by_center: What the instantaneous center asks of a bracket judged elastically, or None [m].
        least: Least the code lets be welded [m].
        most: Most along the plate's edge, or None where no edge is welded or the code has none [m].
        one_pass: Most in one pass in this position, or None where the code has none [m].
        to_weld: What to weld so that neither gap nor slant costs throat [m].
        to_weld_far: The same on a tee's other side, where the two differ, or None [m].
        throat: Throat of the leg judged [m].
        shortest: Shortest weld this leg counts fully in [m].
    """

    judged: float
    given: bool
    needed: float | None
    by_center: float | None
    least: float
    most: float | None
    one_pass: float | None
    to_weld: float
    to_weld_far: float | None
    throat: float
    shortest: float


def leg_sizes(task: StrengthTask, found: Spread) -> LegSizes:
    """Return the legs that matter.

    Args:
        task: What is asked [-].
        found: How the load spreads, no end taken off [-].
    """
    job = task.job
    needed, least = leg_needed(task, found), least_leg(task)
    judged = job.leg_m
    if judged is None:
        judged = max(needed or largest_counted(task, found) or least, least)
    throat = weld_throat(task, judged, judged_leg2(task))
    skew = job.edges.skew_deg if job.joint == "tee" else 90.0
    # A root opening belongs to its groove: only a fillet's gap takes from its throat.
    gap = job.gap_m if job.is_fillet and job.gap_m is not None else 0.0
    gapped = judged + gap if task.european else gapped_leg(judged, gap)
    return LegSizes(
        judged=judged,
        given=job.leg_m is not None,
        needed=needed,
        by_center=_by_center(task),
        least=least,
        most=_most(task),
        one_pass=_one_pass(task),
        to_weld=skew_leg(gapped, skew),
        to_weld_far=_far(task, judged, gap),
        throat=throat,
        shortest=_shortest(task, judged, throat),
    )


def _far(task: StrengthTask, judged: float, gap: float) -> float | None:
    """Leg to lay on the other side of a tee, the gap made up for."""
    sides = both_sides(task, judged)
    if sides is None:
        return None
    far, half = sides[1], cos(radians(sides[1].angle_deg / 2))
    square = far.laid_m * half * sqrt(2)
    return (square + gap if task.european else gapped_leg(square, gap)) / sqrt(2) / half


def judged_leg2(task: StrengthTask) -> float | None:
    """Return the other leg, where both are given; a leg worked out here is of equal legs [m].

    Args:
        task: What is asked [-].
    """
    return task.job.edges.leg2_m if task.job.leg_m is not None else None


def least_leg(task: StrengthTask) -> float:
    """Return the least leg the code lets be welded [m].

    Source: AISC 360-16 Table J2.4; EN 1993-1-8:2005, 4.5.2(2), a throat of 3 mm.

    Args:
        task: What is asked [-].
    """
    if not task.european:
        return minimum_leg(task.job.thinner_m, metric=task.job.units == "si")
    step = SHOP_STEP_M[task.job.units]
    return step * -floor(-resistance_en.LEAST_THROAT_M * 2**0.5 / step + REL_TOL)


def _most(task: StrengthTask) -> float | None:
    if task.european or task.job.joint != "lap":
        return None
    return largest_edge_leg(task.job.plate2_m, metric=task.job.units == "si")


def _one_pass(task: StrengthTask) -> float | None:
    if task.european:
        return None
    return printed_size(task.job.position.single_pass_leg_m, metric=task.job.units == "si")


def _by_center(task: StrengthTask) -> float | None:
    """Leg asked where the elastic method is taken of a bracket the Manual's special case covers."""
    elastic = task.analysis == "elastic" and not task.european and task.per_length_n_m is None
    if not elastic or task.concentric or task.load.in_plane:
        return None
    if not turns_as_bracket(task.group, task.load, task.lines):
        return None
    turned = replace(task, analysis="ic")
    return leg_needed(turned, spread(turned))


def _shortest(task: StrengthTask, leg: float, throat: float) -> float:
    if not task.european:
        return least_length(leg)
    lost = 2 * throat if task.ends_lost else 0.0
    return resistance_en.least_length_en(throat) + lost
