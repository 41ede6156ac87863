"""Fillets to scale: tee (square or skewed), lap, outside corner (open or half open)."""

from __future__ import annotations

from math import cos, inf, radians, sin, sqrt, tan
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.joints import (
    FILLETS,
    XY,
    Angle,
    Dimension,
    JointKind,
    JointShape,
    Polygon,
    box,
    region,
)

Corner = Literal["closed", "half", "open"]

SKEW_LEAST_DEG, SKEW_MOST_DEG = 60.0, 135.0
"""Between these a fillet reaches the root and keeps its throat [°].

Source: Miller, skewed T-joints: fillets from 60 to 135 degrees; sharper loses root (AWS D1.1).
"""


def skew_leg(leg_m: float, skew_deg: float) -> float:
    """Return the leg along the plates that gives the throat of a square tee's leg [m].

    Source: Miller, skewed T-joints: b = t / cos(ψ/2), with t = z/√2 (geometry).

    Args:
        leg_m: Leg of the same fillet at 90°, above zero [m].
        skew_deg: Dihedral angle on the weld's side, 60 to 135 [°].

    Raises:
        OutOfRangeError: If the leg is not above zero or the angle outside 60 to 135.
    """
    require_positive(leg_m=leg_m)
    _require_skew(skew_deg)
    return leg_m / sqrt(2) / cos(radians(skew_deg / 2))


def gauge_leg(leg_m: float, skew_deg: float) -> float:
    """Return the distance of a toe from the other plate, as a leg gauge reads it [m].

    Source: Miller, skewed T-joints: ω = 2 t sin(ψ/2), which is b·sin ψ (geometry).

    Args:
        leg_m: Leg along the plate, above zero [m].
        skew_deg: Dihedral angle on the weld's side, 60 to 135 [°].

    Raises:
        OutOfRangeError: If the leg is not above zero or the angle outside 60 to 135.
    """
    require_positive(leg_m=leg_m)
    _require_skew(skew_deg)
    return leg_m * sin(radians(skew_deg))


def fillet_face(leg_m: float, leg2_m: float, skew_deg: float = 90.0) -> float:
    """Return the width of a flat face, toe to toe [m].

    Source: geometry, the law of cosines.

    Args:
        leg_m: Leg along the horizontal plate, above zero [m].
        leg2_m: Leg along the other, above zero [m].
        skew_deg: Angle between them, 60 to 135 [°].

    Raises:
        OutOfRangeError: If a leg is not above zero or the angle outside 60 to 135.
    """
    require_positive(leg_m=leg_m, leg2_m=leg2_m)
    _require_skew(skew_deg)
    along = cos(radians(skew_deg))
    return sqrt(leg_m**2 + leg2_m**2 - 2 * leg_m * leg2_m * along)


def fillet_throat(leg_m: float, leg2_m: float, skew_deg: float = 90.0) -> float:
    """Return the throat: the shortest distance from the root to a flat face [m].

    Source: geometry; AWS A3.0, theoretical throat. With very unequal legs at a sharp angle the
    shortest distance is the short leg itself.

    Args:
        leg_m: Leg along the horizontal plate, above zero [m].
        leg2_m: Leg along the other, above zero [m].
        skew_deg: Angle between them, 60 to 135 [°].

    Raises:
        OutOfRangeError: If a leg is not above zero or the angle outside 60 to 135.
    """
    face = fillet_face(leg_m, leg2_m, skew_deg)
    height = leg_m * leg2_m * sin(radians(skew_deg)) / face
    short, long = sorted((leg_m, leg2_m))
    return short if long * cos(radians(skew_deg)) > short else height


def _require_skew(skew_deg: float) -> None:
    if not SKEW_LEAST_DEG <= skew_deg <= SKEW_MOST_DEG:
        raise OutOfRangeError(
            f"skew_deg = {skew_deg} must be {SKEW_LEAST_DEG:g} to {SKEW_MOST_DEG:g}"
        )


def fillet_joint(
    kind: JointKind,
    plate_m: float,
    plate2_m: float,
    leg_m: float,
    wanted_leg_m: float,
    convexity_m: float,
    gap_m: float = 0.0,
    *,
    leg2_m: float | None = None,
    wanted_leg2_m: float | None = None,
    skew_deg: float = 90.0,
    corner: Corner = "open",
) -> JointShape:
    """Return a tee, lap or outside-corner fillet drawn to scale.

    Source: geometry; section ½·z₁·z₂·sin ψ plus the crown as a parabola.

    Args:
        kind: tee, lap or corner [-].
        plate_m: Thickness of the horizontal plate, above zero [m].
        plate2_m: Thickness of the other, above zero [m].
        leg_m: Leg as welded along the horizontal plate, gap allowed for, above zero [m].
        wanted_leg_m: Leg asked for, along the plate; the throat follows from it; above zero [m].
        convexity_m: Crown of the face, zero or more [m].
        gap_m: Root gap, zero or more [m].
        leg2_m: Leg as welded along the other plate, above zero; None: the same [m].
        wanted_leg2_m: Leg asked for along the other plate, above zero; None: the same [m].
        skew_deg: Angle between the plates on the weld's side, 60 to 135; a tee's alone [°].
        corner: How far the corner's edges stand apart: open or half [-].

    Raises:
        OutOfRangeError: If a length or the angle is out of range, or the kind is no fillet.
    """
    leg2 = leg_m if leg2_m is None else leg2_m
    wanted2 = wanted_leg_m if wanted_leg2_m is None else wanted_leg2_m
    require_positive(
        plate_m=plate_m, plate2_m=plate2_m, leg_m=leg_m, wanted_leg_m=wanted_leg_m,
        leg2_m=leg2, wanted_leg2_m=wanted2,
    )  # fmt: skip
    if kind not in FILLETS or (kind == "corner" and corner == "closed"):
        raise OutOfRangeError(f"kind = {kind} must be one of {', '.join(FILLETS)}, not closed")
    if kind != "tee" and skew_deg != 90:
        raise OutOfRangeError(f"skew_deg = {skew_deg} must be 90 but for a tee")
    if not (0 <= convexity_m < inf and 0 <= gap_m < inf):
        raise OutOfRangeError(
            f"convexity_m = {convexity_m} and gap_m = {gap_m} must be 0 or more and finite"
        )
    face = fillet_face(leg_m, leg2, skew_deg)
    turn = radians(skew_deg)
    up = (cos(turn), sin(turn)) if skew_deg != 90 else (0.0, 1.0)
    foot, top = (leg_m, 0.0), (up[0] * leg2, up[1] * leg2)
    weld = region("first", (top, (0.0, 0.0), foot), foot, top, (0.0, 0.0), convexity_m)
    reach = 1.6 * max(leg_m, leg2, plate_m, plate2_m)
    plates, sizes = _PARTS[kind](plate_m, plate2_m, (leg_m, leg2), gap_m, reach, skew_deg, corner)
    legs = [Dimension("leg", foot, (leg_m, leg2), leg2) if skew_deg == 90 else
            Dimension("leg", (0.0, 0.0), foot, leg_m)]  # fmt: skip
    if skew_deg == 90:
        legs.append(Dimension("leg2", top, (leg_m, leg2), leg_m))
    return JointShape(
        kind=kind,
        plates=plates,
        regions=(weld,),
        section_m2=weld.section_m2,
        leg_m=leg_m,
        throat_m=fillet_throat(wanted_leg_m, wanted2, skew_deg),
        face_m=face,
        dimensions=(*legs, *sizes),
        leg2_m=leg2,
        gap_m=gap_m,
        angles=(
            ()
            if skew_deg == 90
            else (Angle("skew", (0.0, 0.0), 0.0, skew_deg, 1.3 * max(leg_m, leg2)),)
        ),
    )


_Parts = tuple[tuple[Polygon, ...], tuple[Dimension, ...]]


def _tee(
    plate: float,
    plate2: float,
    legs: XY,
    gap: float,
    reach: float,
    skew: float,
    corner: Corner,
) -> _Parts:
    right = legs[0] + reach
    if skew == 90:
        tall = legs[1] + reach
        return (
            (box(-plate2 - reach, -plate, right, 0.0), box(-plate2, gap, 0.0, tall)),
            (
                Dimension("plate", (right, -plate), (right, 0.0), plate),
                Dimension("plate2", (-plate2, tall), (0.0, tall), plate2),
            ),
        )
    turn = radians(skew)
    up, out = (cos(turn), sin(turn)), (-sin(turn), cos(turn))
    long = legs[1] + reach
    shift, wide = gap / tan(turn), plate2 / sin(turn)
    far = (up[0] * long + out[0] * plate2, up[1] * long + out[1] * plate2)
    near = (up[0] * long, up[1] * long)
    left = min(far[0], shift - wide) - reach / 2
    right = max(near[0], legs[0]) + reach / 2
    upright = ((shift - wide, gap), (shift, gap), near, far)
    return (
        (box(left, -plate, right, 0.0), upright),
        (Dimension("plate", (right, -plate), (right, 0.0), plate),),
    )


def _lap(
    plate: float,
    plate2: float,
    legs: XY,
    gap: float,
    reach: float,
    skew: float,
    corner: Corner,
) -> _Parts:
    right, left = legs[0] + reach, -2.2 * reach
    return (
        (box(-1.4 * reach, -plate, right, 0.0), box(left, gap, 0.0, gap + plate2)),
        (
            Dimension("plate", (right, -plate), (right, 0.0), plate),
            Dimension("plate2", (left, gap), (left, gap + plate2), plate2),
        ),
    )


def _corner(
    plate: float,
    plate2: float,
    legs: XY,
    gap: float,
    reach: float,
    skew: float,
    corner: Corner,
) -> _Parts:
    # Open: edge to edge. Half open: the horizontal plate covers half the other's thickness.
    left = -plate2 / 2 if corner == "half" else 0.0
    right = left + plate2
    return (
        (box(-2 * reach, 0.0, 0.0, plate), box(left, -2 * reach, right, -gap)),
        (
            Dimension("plate", (-2 * reach, 0.0), (-2 * reach, plate), plate),
            Dimension("plate2", (left, -2 * reach), (right, -2 * reach), plate2),
        ),
    )


_PARTS = {"tee": _tee, "lap": _lap, "corner": _corner}
