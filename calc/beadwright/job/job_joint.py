"""The joint of a job, to scale: the meaning of a blank entry, and the shape."""

from __future__ import annotations

from math import radians, sin

from beadwright.job.job import Job
from beadwright.job.preparations import SQUARE_REINFORCEMENT_M, groove_of, prepared_m, square_gap
from beadwright.job.usual_leg import usual_leg
from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.fillet_joints import fillet_face, fillet_joint, skew_leg
from beadwright.joint.fillets import (
    REINFORCED_OVER_FLAT,
    gapped_leg,
    largest_convexity,
    usual_crown,
)
from beadwright.joint.groove_joints import groove_joint
from beadwright.joint.groove_rules import (
    fillet_on_groove,
    largest_hole,
    least_fill,
    least_hole,
    longest_slot,
    lost_depth,
)
from beadwright.joint.joints import BUTTS, JointShape
from beadwright.joint.plug_slot import plug_joint, turn_length
from beadwright.joint.tee_grooves import tee_groove_joint
from beadwright.measures import INCH_M

ROUNDED_CORNER = 0.4
"""Crown over the face of an outside corner filled round where no leg is asked for [-]: near a half
circle, what a wire lays on the edge of sheet. Common practice."""

_SLOT_OVER_WIDTH = 3
"""A slot's length over its width where none is given [-]. Common practice."""

OUT_OF_POSITION = ("3-up", "3-down", "4")
"""Positions where a narrow bevel loses depth. Source: AISC 360 Table J2.1."""


def joint_shape(job: Job) -> tuple[JointShape, float]:
    """Return the joint to scale and the leg asked for (zero without a fillet) [m].

    Args:
        job: The job [-].
    """
    if job.closed_corner:
        closed = closed_corner_joint(job.plate_m, job.plate2_m, square_gap(job), _butt_crown(job))
        return closed, 0.0
    if job.joint in BUTTS:
        groove = groove_of(job)
        throat = None if groove.complete else effective_depth(job)
        shape = groove_joint(groove, job.plate_m, job.plate2_m, _butt_crown(job), throat)
        return shape, 0.0
    if job.is_round:
        hole, fill = hole_m(job), fill_m(job)
        return plug_joint(job.joint, job.plate_m, job.plate2_m, hole, fill), 0.0
    if job.is_fillet:
        return _fillet(job)
    leg = wanted_leg(job)
    crown = job.reinforcement_m
    if crown is None:
        crown = min(SQUARE_REINFORCEMENT_M, largest_convexity(leg))
    groove = groove_of(job)
    lost = lost_depth(groove.angle_deg, job.position.number in OUT_OF_POSITION)
    return tee_groove_joint(groove, job.plate_m, job.plate2_m, leg, crown, lost), leg


def _fillet(job: Job) -> tuple[JointShape, float]:
    wanted, skew = wanted_leg(job), job.skew_deg
    wanted2 = job.edges.leg2_m or wanted
    gap = job.gap_m or 0.0
    along = [_along(z, skew) for z in (wanted, wanted2)]
    # The gap adds to the square tee's leg, so that a skewed tee loses no more throat than a square
    # one.
    legs = [_along(gapped_leg(z, gap), skew) for z in (wanted, wanted2)]
    crown = job.reinforcement_m
    if crown is None:
        flat = legs[0] * legs[1] * sin(radians(skew)) / 2
        face = fillet_face(legs[0], legs[1], skew)
        over_flat = job.wire.traits.over_flat if job.position.sprays else REINFORCED_OVER_FLAT
        own = job.wire.own
        if own is not None and own.crown is not None:
            over_flat = max(1.0, over_flat * own.crown)
        crown = usual_crown(flat, face, over_flat)
        if job.joint == "corner" and job.leg_m is None:
            crown = max(crown, min(ROUNDED_CORNER * face, largest_convexity(face)))
    shape = fillet_joint(
        job.joint, job.plate_m, job.plate2_m, legs[0], along[0], crown, gap,
        leg2_m=legs[1], wanted_leg2_m=along[1], skew_deg=skew, corner=job.edges.corner,
    )  # fmt: skip
    return shape, wanted


def _along(leg_m: float, skew_deg: float) -> float:
    return skew_leg(leg_m, skew_deg) if skew_deg != 90 else leg_m


def wanted_leg(job: Job) -> float:
    """Return the leg a job asks for, as on a square tee; zero for a joint without a fillet [m].

    Blank means the leg that the plate's usual mode lays well, no more than a corner's edge holds;
    on a beveled tee the leg that covers the groove.

    Args:
        job: The job [-].
    """
    if job.joint in ("tee-bevel", "tee-double-bevel"):
        return fillet_on_groove(job.plate2_m) if job.leg_m is None else job.leg_m
    if not job.is_fillet:
        return 0.0
    if job.leg_m is not None:
        return job.leg_m
    return min(usual_leg(job), corner_room(job))


def told_leg(job: Job, leg_m: float | None = None) -> float:
    """Return the leg a job asks for as a hand is told it; a blank one on the marks of a rule [m].

    Source: fillets are named in fractions of an inch or half millimeters; ours goes to 1/32 in, for
    sheet.

    Args:
        job: The job [-].
        leg_m: A leg as it comes out, for ``wanted_leg`` [m].
    """
    leg = wanted_leg(job) if leg_m is None else leg_m
    typed = job.leg_m is not None or job.edges.leg2_m is not None
    if typed or job.joint in ("tee-bevel", "tee-double-bevel"):
        return leg
    mark = INCH_M / 32 if job.units == "us" else 0.0005
    return round(leg / mark) * mark


def corner_room(job: Job) -> float:
    """Return the largest leg along the horizontal plate that a corner's edge holds [m].

    Source: geometry: open, the whole edge; half open, half the other plate. No limit elsewhere.

    Args:
        job: The job [-].
    """
    if job.joint != "corner":
        return float("inf")
    return min(job.plate_m, job.plate2_m / 2 if job.edges.corner == "half" else job.plate2_m)


def effective_depth(job: Job) -> float:
    """Return the effective throat of a partial-penetration butt, both sides together [m].

    Source: AISC 360 Table J2.1: the depth, less what a narrow bevel loses; a square groove cut
    part way: its depth (from memory: to be proven by test).

    Args:
        job: A job whose joint is a groove [-].
    """
    groove = groove_of(job)
    out = job.position.number in OUT_OF_POSITION
    lost = lost_depth(groove.angle_deg, out) if groove.angle_deg else 0.0
    depths = (d for d in (groove.depth_m, groove.depth2_m) if d > 0)
    return max(sum(max(0.0, depth - lost) for depth in depths), prepared_m(job) * 1e-6)


def hole_m(job: Job) -> float:
    """Return the diameter of a plug's hole, or the width of a slot [m].

    Source: AISC 360 J2.3b: the least, where none is given.

    Args:
        job: A plug or slot [-].
    """
    return least_hole(job.plate2_m) if job.edges.hole_m is None else job.edges.hole_m


def slot_m(job: Job) -> float | None:
    """Return the length of a slot, None for a plug [m].

    Args:
        job: A plug or slot [-].
    """
    if job.joint == "plug":
        return None
    if job.edges.slot_m is not None:
        return job.edges.slot_m
    return max(hole_m(job), min(_SLOT_OVER_WIDTH * hole_m(job), longest_slot(fill_m(job))))


def fill_m(job: Job) -> float:
    """Return how deep a hole is filled [m].

    Source: AISC 360 J2.3b: the least, where none is given.

    Args:
        job: A plug or slot [-].
    """
    return least_fill(job.plate2_m) if job.edges.depth_m is None else job.edges.depth_m


def hole_limits(job: Job) -> tuple[float, float]:
    """Return the least and the largest hole for a plug or slot [m].

    Args:
        job: A plug or slot [-].
    """
    return least_hole(job.plate2_m), largest_hole(job.plate2_m, fill_m(job))


def weld_way(job: Job) -> float:
    """Return the length of the torch's path along one weld in one pass [m].

    Once around a plug or slot; elsewhere the length asked for.

    Args:
        job: The job [-].
    """
    return turn_length(hole_m(job), slot_m(job)) if job.is_round else job.weld_length_m


def _butt_crown(job: Job) -> float:
    return SQUARE_REINFORCEMENT_M if job.reinforcement_m is None else job.reinforcement_m
