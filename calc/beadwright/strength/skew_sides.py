"""A skewed tee welded on both sides: each side's angle, throat and leg."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sqrt

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.job.job import Job
from beadwright.job.job_joint import OUT_OF_POSITION
from beadwright.measures import INCH_M
from beadwright.process.wires import Wire

Z_LOSS_FROM_DEG, Z_LOSS_TO_DEG = 45.0, 60.0
"""Angles between plates in which part of a fillet's root is not sure [°].

Source: AWS D1.1:2020 Table 4.2, from memory; sharper angles are not asked here.
"""

CORED_LOSS_M = 1 / 8 * INCH_M
"""Throat a flux-cored wire loses there, vertical or overhead [m].

Source: AWS D1.1:2020 Table 4.2, from memory.
"""

MOST_EN_DEG = 120.0
"""Widest angle of a fillet. Source: EN 1993-1-8, 4.3.2.1, from memory: wider ones by test [°]."""


@dataclass(frozen=True, slots=True)
class SkewSide:
    """One side of a skewed tee.

    Attributes:
        angle_deg: Between the plates on this side [°].
        laid_m: Leg along the plates [m].
        throat_m: Throat that counts [m].
        lost_m: What the root loses of it, or None where the code has no figure [m].
    """

    angle_deg: float
    laid_m: float
    throat_m: float
    lost_m: float | None


def throat_of_laid(laid_m: float, angle_deg: float) -> float:
    """Return the throat of equal legs laid along two plates [m].

    Source: geometry; Miller, skewed T-joints: t = b cos(ψ/2).

    Args:
        laid_m: Leg along each plate, above zero [m].
        angle_deg: Between the plates, above 0 to under 180 [°].

    Raises:
        OutOfRangeError: If the leg is not above zero or the angle out of range.
    """
    require_positive(laid_m=laid_m)
    if not 0 < angle_deg < 180:
        raise OutOfRangeError(f"angle_deg = {angle_deg} must be above 0 and under 180")
    return laid_m * cos(radians(angle_deg / 2))


def root_loss(angle_deg: float, wire: Wire, *, out_of_position: bool) -> float | None:
    """Return what a sharp angle takes from the throat; None where the code has no figure [m].

    Source: AWS D1.1:2020 Table 4.2, Z loss, from memory: from 45° to under 60° gas metal arc loses
    nothing flat and horizontal and has no figure vertical and overhead; gas-shielded flux-cored
    nothing, and 1/8 in. From 60° nothing.

    Args:
        angle_deg: Between the plates, 45 or more [°].
        wire: The wire [-].
        out_of_position: True for vertical and overhead [-].

    Raises:
        OutOfRangeError: If the angle is under 45.
    """
    if angle_deg < Z_LOSS_FROM_DEG - 1e-9:
        raise OutOfRangeError(f"angle_deg = {angle_deg} must be {Z_LOSS_FROM_DEG:g} or more")
    if angle_deg >= Z_LOSS_TO_DEG - 1e-9 or not out_of_position:
        return 0.0
    return CORED_LOSS_M if wire.type.kind == "flux-cored" else None


def skew_sides(job: Job, leg_m: float, far_leg_m: float | None) -> tuple[SkewSide, SkewSide]:
    """Return both sides of a tee: the one whose angle is given, then the other.

    Legs are given as on a square tee: each is laid along the plates so that it keeps the throat it
    has there. A far leg left blank is laid as long as the first where that was given, and counts no
    more throat than the first; where neither is given it keeps the first side's throat.

    Source: geometry: the angles make 180°.

    Args:
        job: The job, a tee [-].
        leg_m: Leg on the side of the angle given, as on a square tee, above zero [m].
        far_leg_m: Leg on the other side, as on a square tee, or None [m].
    """
    out = job.position.number in OUT_OF_POSITION
    near_deg, far_deg = job.skew_deg, 180 - job.skew_deg
    wanted = leg_m / sqrt(2)
    near_laid = wanted / cos(radians(near_deg / 2))
    if far_leg_m is not None:
        far = far_leg_m / sqrt(2)
    elif job.leg_m is None:
        far = wanted
    else:
        far = min(wanted, throat_of_laid(near_laid, far_deg))
    blank = far_leg_m is None and job.leg_m is not None
    far_laid = near_laid if blank else far / cos(radians(far_deg / 2))
    sides: list[SkewSide] = []
    for angle, laid, throat in ((near_deg, near_laid, wanted), (far_deg, far_laid, far)):
        lost = root_loss(angle, job.wire, out_of_position=out)
        sides.append(SkewSide(angle, laid, max(throat - (lost or 0.0), throat * 1e-6), lost))
    return sides[0], sides[1]
