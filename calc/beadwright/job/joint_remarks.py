"""Notes of the codes on a job's joint: size, profile, preparation."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import cos, radians
from types import MappingProxyType

from beadwright.job.groove_remarks import preparation_remarks
from beadwright.job.job import Job
from beadwright.job.job_joint import fill_m, hole_limits, hole_m, told_leg, wanted_leg
from beadwright.joint.fillet_joints import gauge_leg
from beadwright.joint.fillets import (
    convexity_source,
    largest_convexity,
    largest_edge_leg,
    least_lap,
    least_length,
    least_segment,
    minimum_leg,
)
from beadwright.joint.groove_rules import least_fill, reinforcement_allowed
from beadwright.joint.joint_entries import entries_of
from beadwright.joint.joints import TEE_GROOVES, JointShape
from beadwright.measures import INCH_M
from beadwright.phrases import Amount, Parameter, Phrase, say
from beadwright.results import Note
from beadwright.tolerance import REL_TOL

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


_ENTRIES: Mapping[str, Phrase] = MappingProxyType(
    {
        "corner": say("job.corner"),
        "skew": say("job.skew"),
        "leg": say("job.leg"),
        "leg2": say("job.leg2"),
        "gap": say("job.gap"),
        "angle": say("job.angle"),
        "root_face": say("job.root-face"),
        "depth": say("job.depth"),
        "depth2": say("job.depth2"),
        "backing": say("job.backing"),
        "back": say("job.back"),
        "gouge_depth": say("job.gouge-depth"),
        "hole": say("job.hole"),
        "slot_length": say("job.slot-length"),
        "reinforcement": say("job.reinforcement"),
        "pitch": say("job.pitch"),
    }
)
"""What each entry of a joint is called."""


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
        "back": edges.back is not None,
        "gouge_depth": edges.gouge_m is not None,
        "hole": edges.hole_m is not None,
        "slot_length": edges.slot_m is not None,
        "reinforcement": job.reinforcement_m is not None,
        "pitch": edges.pitch_m is not None,
    }
    asked = entries_of(job.joint, edges.corner)
    if not job.back_gouged:
        asked -= {"gouge_depth"}
    left = [key for key, typed in given.items() if typed and key not in asked]
    if left:
        keys = tuple(_ENTRIES[key] for key in left)
        yield Note("note", say("job.not-asked", entries=keys), "", "joint")


def _leg_of(value_m: float) -> Amount:
    return Amount(value_m, "leg")


def _leg(job: Job, shape: JointShape, passes: int) -> Iterator[Note]:
    wanted, least = wanted_leg(job), minimum_leg(job.thinner_m)
    smaller = min(wanted, job.edges.leg2_m or wanted)
    if job.leg_m is None:
        # A corner's edge may hold less than the code's minimum: the drawing rules, not a default.
        key = "job.usual-leg" if smaller >= least - REL_TOL else "job.usual-leg-of-edge"
        told = say(key, leg=_leg_of(told_leg(job)), least=_leg_of(least))
        yield Note("note", told, "aisc-j2.4", "leg")
    elif smaller < least - REL_TOL:
        yield Note(
            "stop",
            say("job.leg-under-minimum", leg=_leg_of(smaller), least=_leg_of(least)),
            "aisc-j2.4",
            "leg" if smaller == wanted else "leg2",
        )
    if job.joint == "lap":
        along, most = job.edges.leg2_m or wanted, largest_edge_leg(job.plate2_m)
        if along > most + REL_TOL and job.leg_m is None and job.edges.leg2_m is None:
            flush = say("job.edge-melts-fill-flush", sheet=_leg_of(job.plate2_m))
            yield Note("note", flush, "practice", "leg")
        elif along > most + REL_TOL:
            yield Note(
                "stop",
                say("job.leg-over-edge", leg=_leg_of(along), most=_leg_of(most)),
                "aisc-j2.2b",
                "leg2" if job.edges.leg2_m else "leg",
            )
        yield Note(
            "note",
            say("job.least-lap", lap=_leg_of(least_lap(job.thinner_m))),
            "aisc-j2.2b",
            "plate",
        )
    one_pass = job.position.single_pass_leg_m
    if wanted > one_pass + REL_TOL:
        yield Note(
            "note",
            say(
                "job.not-in-one-pass",
                leg=_leg_of(one_pass),
                orientation=job.position.phrase,
                passes=passes,
            ),
            job.position.single_pass_source,
            "leg",
        )
    elif passes > 1:
        yield Note(
            "note",
            say(
                "job.planned-passes",
                passes=passes,
                orientation=job.position.phrase,
                leg=_leg_of(job.position.practical_leg_m),
            ),
            "aisc-one-pass",
            "leg",
        )
    if (job.gap_m or 0.0) > 1 / 16 * INCH_M + REL_TOL:
        yield Note(
            "note",
            say("job.gap-takes-throat", leg=_leg_of(shape.leg_m)),
            "aws-d1.1-gap",
            "gap",
        )


def _skew(job: Job, shape: JointShape) -> Iterator[Note]:
    skew = job.skew_deg
    if abs(skew - 90) < _DEGREES:
        return
    sizes: dict[str, Parameter] = {
        "skew": Amount(skew, "angle"),
        "leg": _leg_of(shape.leg_m),
        "gauge": _leg_of(gauge_leg(shape.leg_m, skew)),
        "face": _leg_of(shape.face_m),
    }
    if shape.leg2_m == shape.leg_m:
        told = say("job.skewed-tee", **sizes)
    else:
        told = say("job.skewed-tee-unequal", **sizes, leg2=_leg_of(shape.leg2_m))
    yield Note("note", told, "skewed-tees", "skew")
    if 80 <= skew <= 100:
        yield Note("note", say("job.skew-as-square"), "aws-d1.1-skew", "skew")
    if skew > 90:
        open_by = job.plate2_m * _cosine(skew)
        yield Note(
            "caution",
            say("job.square-edge-open", gap=_leg_of(open_by)),
            "geometry",
            "skew",
        )
    elif skew < 80:
        yield Note("caution", say("job.sharp-side"), "aws-d1.1-skew", "skew")


def _cosine(skew_deg: float) -> float:
    return -cos(radians(skew_deg))


def _length_of(job: Job) -> Iterator[Note]:
    leg, pitch = wanted_leg(job), job.edges.pitch_m
    if pitch is not None and pitch > job.weld_length_m + REL_TOL:
        least = least_segment(leg)
        if job.weld_length_m < least - REL_TOL:
            yield Note(
                "stop",
                say(
                    "job.piece-too-short",
                    length=_leg_of(job.weld_length_m),
                    least=_leg_of(least),
                ),
                "aisc-j2.2b",
                "weld_length",
            )
    elif job.weld_length_m < least_length(leg) - REL_TOL:
        yield Note(
            "out",
            say(
                "job.shorter-than-four-legs",
                least=_leg_of(least_length(leg)),
                counted=_leg_of(job.weld_length_m / 4),
            ),
            "aisc-j2.2b",
            "weld_length",
        )


def _crown(job: Job, shape: JointShape) -> Iterator[Note]:
    filleted = job.is_fillet or job.joint in TEE_GROOVES
    most = largest_convexity(shape.face_m) if filleted else reinforcement_allowed(job.thinner_m)
    crown = max(r.crown_m for r in shape.regions)
    if job.reinforcement_m is None or crown <= most + REL_TOL:
        return
    if filleted:
        told = say("job.crown-over-code", crown=_leg_of(crown), most=_leg_of(most))
        source = convexity_source(shape.face_m)
    else:
        told, source = say("job.reinforcement-over-code", most=_leg_of(most)), "aws-d1.1-7.9"
    yield Note("out", told, source, "reinforcement")


def _hole(job: Job) -> Iterator[Note]:
    hole, (least, most) = hole_m(job), hole_limits(job)
    plug = job.joint == "plug"
    if hole < least - REL_TOL:
        yield Note(
            "stop",
            say(
                "job.hole-too-small" if plug else "job.slot-too-narrow",
                hole=_leg_of(hole),
                least=_leg_of(least),
            ),
            "aisc-j2.3b",
            "hole",
        )
    elif hole > most + REL_TOL:
        yield Note(
            "out",
            say(
                "job.hole-too-large" if plug else "job.slot-too-wide",
                hole=_leg_of(hole),
                most=_leg_of(most),
            ),
            "aisc-j2.3b",
            "hole",
        )
    fill = least_fill(job.plate2_m)
    if fill_m(job) < fill - REL_TOL:
        yield Note("stop", say("job.least-fill", fill=_leg_of(fill)), "aisc-j2.3b", "depth")
    pitch = job.edges.pitch_m
    if pitch is not None and pitch < 4 * hole - REL_TOL:
        yield Note(
            "stop",
            say(
                "job.holes-too-close" if plug else "job.slots-too-close",
                pitch=_leg_of(pitch),
                least=_leg_of(4 * hole),
            ),
            "aisc-j2.3b",
            "pitch",
        )
    yield Note(
        "note",
        say("job.keep-holes-apart" if plug else "job.keep-slots-apart", apart=_leg_of(4 * hole)),
        "aisc-j2.3b",
        "hole",
    )
