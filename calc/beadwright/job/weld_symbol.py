"""The weld symbol of a job, before it is drawn to one standard or the other."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.job.job import Job
from beadwright.job.job_joint import OUT_OF_POSITION, fill_m, hole_m, slot_m, told_leg
from beadwright.job.preparations import groove_of
from beadwright.joint.groove_rules import lost_depth
from beadwright.joint.joints import TEE_GROOVES, JointShape
from beadwright.tolerance import REL_TOL

Sign = Literal["fillet", "square", "v", "bevel", "plug", "slot", "back"]
Side = Literal["arrow", "other"]
Contour = Literal["", "flush", "convex"]


@dataclass(frozen=True, slots=True)
class Mark:
    """One elementary sign on the reference line with what stands beside it.

    Attributes:
        sign: Which sign.
        side: Side of the reference line.
        size_m: Leg of a fillet, depth of a partial-penetration groove, hole of a plug, width
            of a slot;
            None for a groove welded through [m].
        size2_m: Other leg where it differs, or length of a slot [m].
        throat_m: Throat of a fillet; effective throat of a partial-penetration groove [m].
        gap_m: Root opening, None where the sign carries none [m].
        angle_deg: Groove angle, None where the sign carries none [°].
        fill_m: Depth of fill of a hole not filled level [m].
        length_m: Length of a weld, None where it runs the whole joint [m].
        pitch_m: Center to center of intermittent welds [m].
        count: How many of them; 0 if not written.
        contour: Face asked for, or empty.
    """

    sign: Sign
    side: Side
    size_m: float | None = None
    size2_m: float | None = None
    throat_m: float | None = None
    gap_m: float | None = None
    angle_deg: float | None = None
    fill_m: float | None = None
    length_m: float | None = None
    pitch_m: float | None = None
    count: int = 0
    contour: Contour = ""


@dataclass(frozen=True, slots=True)
class WeldSymbol:
    """A weld symbol.

    Attributes:
        marks: From the reference line outward, the arrow side's first.
        backing: none, kept or removed.
        points_at_bevel: True if the arrow breaks towards the one plate beveled.
        complete: True if a groove must go through.
        gouged: True if the root is gouged from the other side.
    """

    marks: tuple[Mark, ...]
    backing: Literal["none", "kept", "removed"]
    points_at_bevel: bool
    complete: bool
    gouged: bool


def weld_symbol(job: Job, shape: JointShape) -> WeldSymbol:
    """Return the symbol of a job's joint; the side welded first is the arrow's.

    Source: AWS A2.4 and ISO 2553, from memory.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
    """
    backing: Literal["none", "kept", "removed"] = "none"
    if job.backed:
        backing = "kept" if job.edges.backing == "steel" else "removed"
    return WeldSymbol(
        _marks(job, shape),
        backing,
        job.joint in ("bevel", "double-bevel", *TEE_GROOVES),
        shape.complete,
        shape.gouged,
    )


def _contour(job: Job) -> Contour:
    if job.reinforcement_m is None:
        return ""
    return "convex" if job.reinforcement_m > 0 else "flush"


def _marks(job: Job, shape: JointShape) -> tuple[Mark, ...]:
    contour = _contour(job)
    if job.is_round:
        return (_hole(job),)
    if job.is_fillet:
        pitch = job.edges.pitch_m
        apart = pitch is not None and pitch > job.weld_length_m + REL_TOL
        wanted, wanted2 = told_leg(job), job.edges.leg2_m
        return (
            Mark(
                "fillet",
                "arrow",
                size_m=wanted,
                size2_m=wanted2 if wanted2 not in (None, wanted) else None,
                throat_m=shape.throat_m,
                length_m=job.weld_length_m,
                pitch_m=pitch if apart else None,
                count=job.welds if apart else 0,
                contour=contour,
            ),
        )
    if job.joint in ("square", "corner"):
        depth = None if shape.complete else groove_of(job).depth_m
        edge = Mark(
            "square",
            "arrow",
            size_m=depth,
            throat_m=None if shape.complete else shape.throat_m,
            gap_m=shape.gap_m,
            contour=contour,
        )
        return (edge, Mark("back", "other", contour=contour)) if shape.gouged else (edge,)
    return tuple(_grooves(job, shape, contour))


def _hole(job: Job) -> Mark:
    fill = fill_m(job)
    return Mark(
        "plug" if job.joint == "plug" else "slot",
        "arrow",
        size_m=hole_m(job),
        size2_m=slot_m(job),
        fill_m=fill if fill < job.plate2_m - REL_TOL else None,
        pitch_m=job.edges.pitch_m,
        count=job.welds if job.edges.pitch_m is not None else 0,
    )


def _grooves(job: Job, shape: JointShape, contour: Contour) -> list[Mark]:
    groove = groove_of(job)
    sign: Sign = "v" if job.joint in ("v", "double-v") else "bevel"
    filleted = job.joint in TEE_GROOVES
    found: list[Mark] = []
    sides: tuple[tuple[Side, float], ...] = (("arrow", groove.depth_m),)
    if job.is_double:
        sides = (*sides, ("other", groove.depth2_m))
    out = job.position.number in OUT_OF_POSITION
    lost = lost_depth(groove.angle_deg, out)
    for side, depth in sides:
        # On both sides the depths are written even if they meet: they need not be equal.
        part = not shape.complete
        found.append(
            Mark(
                sign,
                side,
                size_m=depth if part or job.is_double else None,
                throat_m=max(0.0, depth - lost) if part else None,
                gap_m=groove.gap_m,
                angle_deg=groove.angle_deg,
                contour="" if filleted else contour,
            )
        )
        if filleted:
            found.append(Mark("fillet", side, size_m=told_leg(job), contour=contour))
    if shape.gouged and not job.is_double:
        found.append(Mark("back", "other", contour="" if filleted else contour))
    return found
