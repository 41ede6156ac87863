"""The least and most weld metal of the joint asked for."""

from __future__ import annotations

from beadwright.job.job import Job
from beadwright.joint.joints import JointShape
from beadwright.measures import INCH_M

OVERWELD_M = 1 / 16 * INCH_M
"""Leg over the one asked for that counts as overwelding [m]. Common practice."""

MOST_BUTT_CROWN_M = 1 / 8 * INCH_M
"""Most reinforcement of a butt [m]. Source: AWS D1.1, from memory."""


def section_room(job: Job, shape: JointShape) -> tuple[float, float]:
    """Return the largest and smallest section that is still the joint asked for [m²].

    A fillet may be 1/16 in over its leg, and may lack only its crown; the crown of a butt may be
    from half of it to 1/8 in.

    Args:
        job: The job [-].
        shape: The joint to scale [-].
    """
    if job.is_fillet:
        swell = ((shape.leg_m + OVERWELD_M) / shape.leg_m) ** 2
        return shape.section_m2 * swell, shape.section_m2 - shape.crown_m2
    more = shape.crown_room_m2(MOST_BUTT_CROWN_M)
    return shape.section_m2 + more, shape.section_m2 - shape.crown_m2 / 2


def side_most_m2(job: Job, shape: JointShape, side: int) -> float:
    """Return the largest section of one side that is still the joint asked for [m²].

    Source: as ``section_room``.

    Args:
        job: The job [-].
        shape: The joint to scale [-].
        side: 1, or 2 of a joint welded from both sides [-].
    """
    region = shape.regions[side - 1]
    if job.is_fillet:
        return section_room(job, shape)[0] * region.section_m2 / shape.section_m2
    whole = region.section_m2 + region.crown_room_m2(MOST_BUTT_CROWN_M)
    return whole / 2 if shape.round else whole


def bead_room(job: Job, shape: JointShape, passes: int) -> tuple[float, float]:
    """Return the largest and smallest section of one of several even beads [m²].

    Args:
        job: The job [-].
        shape: The joint to scale [-].
        passes: Passes, one or more [-].
    """
    most, least = section_room(job, shape)
    return most / passes, least / passes
