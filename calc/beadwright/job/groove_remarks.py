"""Notes of the codes on a groove: its preparation, its root, its effective throat."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.job.job import Job
from beadwright.job.preparations import detail_of, groove_of, prepared_m
from beadwright.joint.groove_rules import minimum_throat
from beadwright.joint.joints import TEE_GROOVES, JointShape
from beadwright.results import Note
from beadwright.tolerance import REL_TOL

_DEGREES = 1e-6
"""Angles closer than this are equal [°]."""


def _w(value: float, job: Job) -> str:
    return f"{units.show(value, 'leg', job.units)} {units.symbol('leg', job.units)}"


def preparation_remarks(job: Job, shape: JointShape) -> Iterator[Note]:
    """Yield the notes on a groove's preparation.

    Args:
        job: A job whose joint is a groove [-].
        shape: Its joint to scale [-].
    """
    if job.joint in ("square", "corner"):
        yield from _square(job, shape)
    else:
        yield from _detail(job, shape)
    if not shape.complete:
        yield from _part(job, shape)
    elif shape.gouged:
        yield Note(
            "note",
            "Gouge the root to sound metal from the second side before you weld it.",
            "aws-d1.1-details",
            "root_face",
        )
    elif not job.backed and job.joint not in ("square", "corner"):
        yield from _one_side(shape)
    if (
        shape.complete
        and abs(job.plate_m - job.plate2_m) > REL_TOL
        and job.joint not in TEE_GROOVES
    ):
        yield Note(
            "note",
            "Slope the thicker plate, or the weld, 1 in 2.5 down to the thinner.",
            "aws-d1.1-transition",
            "plate2",
        )


def _square(job: Job, shape: JointShape) -> Iterator[Note]:
    if not shape.complete or job.backed:
        return
    if job.thinner_m > 4e-3:
        yield Note(
            "caution",
            "Over about 5/32 in, a square butt from one side does not melt "
            "through for sure: back it, weld both sides, or bevel it.",
            "iso-9692-1",
            "plate",
        )


def _one_side(shape: JointShape) -> Iterator[Note]:
    if shape.gap_m > REL_TOL:
        text = (
            "Open root: run the root pass short circuit or pulse, or spray falls through. "
            "Spray fills and caps."
        )
        yield Note("caution", text, "practice", "gap")
    else:
        text = "No gap and no backing: it is not through until the back is gouged and welded."
        yield Note("stop", text, "aws-d1.1-details", "gap")


def _detail(job: Job, shape: JointShape) -> Iterator[Note]:
    detail, groove = detail_of(job), groove_of(job)
    if detail is None:
        return
    off: list[str] = []
    field = "angle"
    if groove.angle_deg < detail.angle_deg - _DEGREES:
        off.append(f"groove angle {groove.angle_deg:g}° is under {detail.angle_deg:g}°")
    elif groove.angle_deg > detail.angle_deg + 10 + _DEGREES:
        off.append(f"groove angle {groove.angle_deg:g}° is over {detail.angle_deg + 10:g}°")
    if groove.gap_m > detail.most_gap_m + REL_TOL:
        off.append(f"gap {_w(groove.gap_m, job)} is over {_w(detail.most_gap_m, job)}")
        field = "gap" if len(off) == 1 else field
    if job.backed and groove.gap_m < detail.gap_m - REL_TOL and groove.angle_deg <= 45:
        off.append(f"gap {_w(groove.gap_m, job)} is under {_w(detail.gap_m, job)}")
        field = "gap" if len(off) == 1 else field
    if shape.complete and shape.root_face_m > detail.most_face_m + REL_TOL:
        off.append(f"root face {_w(shape.root_face_m, job)} is over {_w(detail.most_face_m, job)}")
        field = "root_face" if len(off) == 1 else field
    if not shape.complete and shape.root_face_m < detail.root_face_m - REL_TOL:
        off.append(f"root face {_w(shape.root_face_m, job)} is under {_w(detail.root_face_m, job)}")
        field = "root_face" if len(off) == 1 else field
    if off:
        yield Note(
            "caution",
            f"Not as prequalified detail {detail.name}: {'; '.join(off)}. Qualify it by test.",
            detail.source,
            field,
        )
    else:
        yield Note(
            "note",
            f"Prepared as prequalified detail {detail.name}, but not for short circuit.",
            detail.source,
            "angle",
        )


def _part(job: Job, shape: JointShape) -> Iterator[Note]:
    deep = groove_of(job)
    depth = deep.depth_m + deep.depth2_m
    yield Note(
        "note",
        f"Cut part way: effective throat {_w(shape.throat_m, job)} of {_w(depth, job)} groove.",
        "aisc-j2.1",
        "depth",
    )
    least = minimum_throat(min(job.thinner_m, prepared_m(job)))
    if shape.throat_m < least - REL_TOL:
        yield Note(
            "stop",
            f"Throat {_w(shape.throat_m, job)} is under the code's least of {_w(least, job)} for "
            "this plate: cut deeper.",
            "aisc-j2.3",
            "depth",
        )
