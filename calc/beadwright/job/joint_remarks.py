"""Notes of the codes on a job's joint: size, profile, preparation."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, radians

from beadwright import units
from beadwright.job.groove_remarks import preparation_remarks
from beadwright.job.job import Job
from beadwright.job.job_joint import fill_m, hole_limits, hole_m, wanted_leg
from beadwright.joint.fillet_joints import gauge_leg
from beadwright.joint.fillets import (
    largest_convexity,
    largest_edge_leg,
    least_lap,
    least_length,
    least_segment,
    minimum_leg,
)
from beadwright.joint.groove_rules import least_fill
from beadwright.joint.joint_entries import entries_of
from beadwright.joint.joints import TEE_GROOVES, JointShape
from beadwright.results import Note
from beadwright.tolerance import REL_TOL

_IN = 0.0254
_DEGREES = 1e-6
"""Angles closer than this are equal [°]."""


def joint_remarks(job: Job, shape: JointShape, passes: int) -> Iterator[Note]:
    """Yield the notes on a joint's size and preparation.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        passes: Passes planned [-].
    """
    yield from _unused(job)
    if job.is_round:
        yield from _hole(job)
        return
    if job.is_fillet:
        yield from _leg(job, shape, passes)
        yield from _skew(job, shape)
        yield from _length_of(job)
    else:
        yield from preparation_remarks(job, shape)
    yield from _crown(job, shape)


def _unused(job: Job) -> Iterator[Note]:
    edges = job.edges
    given = {
        "corner": edges.corner != "open" and job.joint != "corner",
        "skew": edges.skew_deg != 90,
        "leg": job.leg_m is not None,
        "leg2": edges.leg2_m is not None,
        "gap": job.gap_m is not None,
        "angle": edges.angle_deg is not None,
        "root_face": edges.root_face_m is not None,
        "depth": edges.depth_m is not None,
        "depth2": edges.depth2_m is not None,
        "backing": job.backed,
        "hole": edges.hole_m is not None,
        "slot_length": edges.slot_m is not None,
        "reinforcement": job.reinforcement_m is not None,
        "pitch": edges.pitch_m is not None,
    }
    asked = entries_of(job.joint, edges.corner)
    left = [key for key, typed in given.items() if typed and key not in asked]
    if left:
        words = ", ".join(key.replace("_", " ") for key in left)
        yield Note("note", f"This joint does not ask for {words}: left aside.", "", "joint")


def _w(value: float, job: Job) -> str:
    return f"{units.show(value, 'leg', job.units)} {units.symbol('leg', job.units)}"


def _leg(job: Job, shape: JointShape, passes: int) -> Iterator[Note]:
    wanted, least = wanted_leg(job), minimum_leg(job.thinner_m)
    smaller = min(wanted, job.edges.leg2_m or wanted)
    if job.leg_m is None and smaller >= least - REL_TOL:
        yield Note(
            "note",
            f"Leg {_w(wanted, job)} is the code's minimum for this plate. Your drawing rules.",
            "aisc-j2.4",
            "leg",
        )
    elif smaller < least - REL_TOL:
        yield Note(
            "stop",
            f"Leg {_w(smaller, job)} is under the code's minimum of {_w(least, job)} for this "
            "plate: the bead chills and may crack.",
            "aisc-j2.4",
            "leg" if smaller == wanted else "leg2",
        )
    if job.joint == "lap":
        along, most = job.edges.leg2_m or wanted, largest_edge_leg(job.plate2_m)
        if along > most + REL_TOL and job.leg_m is None and job.edges.leg2_m is None:
            text = f"Sheet of {_w(job.plate2_m, job)} melts at its edge: fill it flush, no more."
            yield Note("note", text, "practice", "leg")
        elif along > most + REL_TOL:
            yield Note(
                "stop",
                f"Leg {_w(along, job)} is over {_w(most, job)}, the most along this edge: the edge "
                "melts away and hides the size.",
                "aisc-j2.2b",
                "leg2" if job.edges.leg2_m else "leg",
            )
        yield Note(
            "note",
            f"Lap the plates at least {_w(least_lap(job.thinner_m), job)}.",
            "aisc-j2.2b",
            "plate",
        )
    one_pass = job.position.single_pass_leg_m
    if wanted > one_pass + REL_TOL:
        yield Note(
            "note",
            f"Over {_w(one_pass, job)} in one pass is not prequalified {job.position.orientation}: "
            f"run {passes}.",
            job.position.single_pass_source,
            "leg",
        )
    elif passes > 1:
        yield Note(
            "note",
            f"{passes} passes: one pass {job.position.orientation} is planned to "
            f"{_w(job.position.practical_leg_m, job)}.",
            "aisc-one-pass",
            "leg",
        )
    if (job.gap_m or 0.0) > 1 / 16 * _IN + REL_TOL:
        yield Note(
            "note",
            f"Gap over 1/16 in: weld {_w(shape.leg_m, job)} so the throat is still there.",
            "aws-d1.1-gap",
            "gap",
        )


def _skew(job: Job, shape: JointShape) -> Iterator[Note]:
    skew = job.skew_deg
    if abs(skew - 90) < _DEGREES:
        return
    yield Note(
        "note",
        f"At {skew:g}° weld {_w(shape.leg_m, job)} along each plate"
        f"{'' if shape.leg2_m == shape.leg_m else ' (' + _w(shape.leg2_m, job) + ' up)'}; a leg "
        f"gauge reads {_w(gauge_leg(shape.leg_m, skew), job)}. Check the face: "
        f"{_w(shape.face_m, job)} toe to toe.",
        "skewed-tees",
        "skew",
    )
    if 80 <= skew <= 100:
        text = "From 80° to 100° the code sizes it like a square tee; this keeps the full throat."
        yield Note("note", text, "aws-d1.1-skew", "skew")
    if skew > 90:
        open_by = job.plate2_m * _cosine(skew)
        yield Note(
            "caution",
            f"An edge cut square stands {_w(open_by, job)} open on this side: bevel it to fit, or "
            "add the gap to the leg.",
            "geometry",
            "skew",
        )
    elif skew < 80:
        yield Note(
            "caution",
            "Sharp side: steer the arc into the root. Under 60° the root is lost and the "
            "code takes it off the throat.",
            "aws-d1.1-skew",
            "skew",
        )


def _cosine(skew_deg: float) -> float:
    return -cos(radians(skew_deg))


def _length_of(job: Job) -> Iterator[Note]:
    leg, pitch = wanted_leg(job), job.edges.pitch_m
    if pitch is not None and pitch > job.weld_length_m + REL_TOL:
        least = least_segment(leg)
        if job.weld_length_m < least - REL_TOL:
            yield Note(
                "stop",
                f"Pieces {_w(job.weld_length_m, job)} long are under {_w(least, job)}, the least "
                "for intermittent fillets this size.",
                "aisc-j2.2b",
                "weld_length",
            )
    elif job.weld_length_m < least_length(leg) - REL_TOL:
        yield Note(
            "out",
            f"Shorter than four legs, {_w(least_length(leg), job)}: only a quarter of the length "
            f"counts as leg, {_w(job.weld_length_m / 4, job)}.",
            "aisc-j2.2b",
            "weld_length",
        )


def _crown(job: Job, shape: JointShape) -> Iterator[Note]:
    filleted = job.is_fillet or job.joint in TEE_GROOVES
    most = largest_convexity(shape.face_m) if filleted else 1 / 8 * _IN
    crown = max(r.crown_m for r in shape.regions)
    if job.reinforcement_m is None or crown <= most + REL_TOL:
        return
    if filleted:
        text = f"Crown {_w(crown, job)} is over the {_w(most, job)} the code accepts on this face."
    else:
        text = "Reinforcement over 1/8 in is more than the code accepts."
    yield Note("out", text, "aws-d1.1-convexity", "reinforcement")


def _hole(job: Job) -> Iterator[Note]:
    hole, (least, most) = hole_m(job), hole_limits(job)
    what = "Hole" if job.joint == "plug" else "Slot"
    if hole < least - REL_TOL:
        yield Note(
            "stop",
            f"{what} {_w(hole, job)} is under {_w(least, job)} for this plate: the wire cannot "
            "reach the root all round.",
            "aisc-j2.3b",
            "hole",
        )
    elif hole > most + REL_TOL:
        yield Note(
            "out",
            f"{what} {_w(hole, job)} is over {_w(most, job)}: weld a fillet round it instead.",
            "aisc-j2.3b",
            "hole",
        )
    fill = least_fill(job.plate2_m)
    if fill_m(job) < fill - REL_TOL:
        yield Note(
            "stop",
            f"Fill it at least {_w(fill, job)} deep.",
            "aisc-j2.3b",
            "depth",
        )
    pitch = job.edges.pitch_m
    if pitch is not None and pitch < 4 * hole - REL_TOL:
        yield Note(
            "stop",
            f"Centres {_w(pitch, job)} apart are under four times the {what.lower()}, "
            f"{_w(4 * hole, job)}.",
            "aisc-j2.3b",
            "pitch",
        )
    yield Note(
        "note",
        f"Keep {'holes' if job.joint == 'plug' else 'slots side by side'} {_w(4 * hole, job)} "
        "apart, centre to centre. Run round the foot first, then fill.",
        "aisc-j2.3b",
        "hole",
    )
