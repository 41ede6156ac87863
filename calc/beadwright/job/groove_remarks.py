"""Notes of the codes on a groove: its preparation, its root, its effective throat."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.job import Job
from beadwright.job.preparations import (
    SQUARE_BACKED_TO_M,
    SQUARE_MOST_GAP_M,
    SQUARE_ONE_SIDE_TO_M,
    detail_of,
    groove_of,
    prepared_m,
)
from beadwright.joint.back_gouge import BackGouge
from beadwright.joint.groove_rules import minimum_throat
from beadwright.joint.joints import TEE_GROOVES, JointShape
from beadwright.phrases import Amount, Phrase, say
from beadwright.results import Note
from beadwright.tolerance import REL_TOL

_DEGREES = 1e-6
"""Angles closer than this are equal [°]."""


def preparation_remarks(job: Job, shape: JointShape) -> Iterator[Note]:
    """Yield the notes on a groove's preparation.

    Args:
        job: A job whose joint is a groove [-].
        shape: Its joint to scale [-].
    """
    if job.joint in ("square", "corner"):
        yield from _square(job, shape)
    elif not job.is_sheet:  # the details are those of AWS D1.1
        yield from _detail(job, shape)
    if not shape.complete:
        yield from _part(job, shape)
    elif shape.gouge is not None:
        yield _gouge(shape.gouge)
    elif not job.backed and job.joint not in ("square", "corner"):
        yield from _open_back(job, shape)
    if (
        shape.complete
        and abs(job.plate_m - job.plate2_m) > REL_TOL
        and job.joint not in TEE_GROOVES
    ):
        yield Note(
            "note",
            say("job.slope-thicker"),
            "aws-d1.1-transition",
            "plate2",
        )


def _gouge(gouge: BackGouge) -> Note:
    told = say(
        "job.gouge-root",
        depth=Amount(gouge.depth_m, "leg"),
        radius=Amount(gouge.radius_m, "leg"),
        angle=Amount(gouge.angle_deg, "angle"),
    )
    return Note("note", told, "back-gouge", "gouge_depth")


def _square(job: Job, shape: JointShape) -> Iterator[Note]:
    if not shape.complete:
        return
    if shape.gouge is not None:
        yield from _square_gouged(job, shape, shape.gouge)
        return
    if job.thinner_m > SQUARE_ONE_SIDE_TO_M + REL_TOL:
        yield from _thick_square(job)
    if not (job.backed or job.is_sheet):
        yield Note("caution", say("job.through-from-one-side"), "aws-d1.1-through", "backing")


def _square_gouged(job: Job, shape: JointShape, gouge: BackGouge) -> Iterator[Note]:
    """What the detail asks that is welded from both sides, B-L1b-GF."""
    reach = Amount(job.thinner_m - gouge.depth_m, "leg")
    yield Note("caution", say("job.square-gouged", reach=reach), "practice", "gouge_depth")
    if job.thinner_m > SQUARE_BACKED_TO_M + REL_TOL:
        yield from _thick_square(job)
    elif not job.is_sheet:
        detail, source = "B-L1b-GF", "aisc-square-details"
        if shape.gap_m > SQUARE_MOST_GAP_M + REL_TOL:
            off = (_length_off("job.gap-over", shape.gap_m, SQUARE_MOST_GAP_M),)
            yield Note("caution", say("job.not-as-detail", detail=detail, off=off), source, "gap")
        else:
            yield Note("note", say("job.as-detail", detail=detail), source, "gap")


def _thick_square(job: Job) -> Iterator[Note]:
    if job.joint == "corner":
        yield Note("caution", say("job.closed-corner-thick"), "iso-9692-1", "plate")
    elif job.thinner_m > SQUARE_BACKED_TO_M + REL_TOL:
        told = say("job.square-butt-thick", most=Amount(SQUARE_BACKED_TO_M, "leg"))
        yield Note("stop", told, "aisc-square-details", "plate")
    elif not job.backed:
        yield one_sided_butt(job)


def one_sided_butt(job: Job) -> Note:
    """Return the note on a square butt planned from one side that has to be welded from both.

    Args:
        job: The job [-].
    """
    told = say("job.square-butt-one-side", half=Amount(job.thinner_m / 2, "leg"))
    return Note("caution", told, "aisc-square-details", "plate")


def _open_back(job: Job, shape: JointShape) -> Iterator[Note]:
    if shape.gap_m > REL_TOL:
        if job.wire.traits.shorts:  # another wire's root is refused
            yield Note("caution", say("job.open-root"), "practice", "gap")
    else:
        yield Note("stop", say("job.no-gap-no-backing"), "aws-d1.1-details", "gap")


def _detail(job: Job, shape: JointShape) -> Iterator[Note]:
    detail, groove = detail_of(job), groove_of(job)
    if detail is None:
        return
    off: list[Phrase] = []
    field = "angle"
    if groove.angle_deg < detail.angle_deg - _DEGREES:
        off.append(_angle_off("job.angle-under", groove.angle_deg, detail.angle_deg))
    elif groove.angle_deg > detail.angle_deg + 10 + _DEGREES:
        off.append(_angle_off("job.angle-over", groove.angle_deg, detail.angle_deg + 10))
    if groove.gap_m > detail.most_gap_m + REL_TOL:
        off.append(_length_off("job.gap-over", groove.gap_m, detail.most_gap_m))
        field = "gap" if len(off) == 1 else field
    if job.backed and groove.gap_m < detail.gap_m - REL_TOL and groove.angle_deg <= 45:
        off.append(_length_off("job.gap-under", groove.gap_m, detail.gap_m))
        field = "gap" if len(off) == 1 else field
    if shape.complete and shape.root_face_m > detail.most_face_m + REL_TOL:
        off.append(_length_off("job.root-face-over", shape.root_face_m, detail.most_face_m))
        field = "root_face" if len(off) == 1 else field
    if not shape.complete and shape.root_face_m < detail.root_face_m - REL_TOL:
        off.append(_length_off("job.root-face-under", shape.root_face_m, detail.root_face_m))
        field = "root_face" if len(off) == 1 else field
    ungouged = shape.complete and not (job.backed or shape.gouged)
    if off:
        yield Note(
            "caution",
            say("job.not-as-detail", detail=detail.name, off=tuple(off)),
            detail.source,
            field,
        )
        if ungouged:
            yield Note("caution", say("job.through-from-one-side"), "aws-d1.1-through", "backing")
    elif ungouged:
        told = say("job.detail-is-gouged", detail=detail.name)
        yield Note("caution", told, "aws-d1.1-through", "backing")
    else:
        yield Note(
            "note",
            say("job.as-detail", detail=detail.name),
            detail.source,
            "angle",
        )


def _angle_off(key: str, here: float, edge: float) -> Phrase:
    return say(key, angle=Amount(here, "angle"), edge=Amount(edge, "angle"))


def _length_off(key: str, here_m: float, edge_m: float) -> Phrase:
    return say(key, length=Amount(here_m, "leg"), edge=Amount(edge_m, "leg"))


def _part(job: Job, shape: JointShape) -> Iterator[Note]:
    deep = groove_of(job)
    depth = deep.depth_m + deep.depth2_m
    yield Note(
        "note",
        say("job.cut-part-way", throat=Amount(shape.throat_m, "leg"), depth=Amount(depth, "leg")),
        "aisc-j2.1",
        "depth",
    )
    least = minimum_throat(min(job.thinner_m, prepared_m(job)))
    if shape.throat_m < least - REL_TOL:
        yield Note(
            "stop",
            say(
                "job.throat-under-code",
                throat=Amount(shape.throat_m, "leg"),
                least=Amount(least, "leg"),
            ),
            "aisc-j2.3",
            "depth",
        )
