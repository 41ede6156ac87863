"""Tees with the upright beveled, one side or both, and a fillet on each groove."""

from __future__ import annotations

from math import hypot, inf, radians, tan
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.back_gouge import Wall, back_wall, widest_wall
from beadwright.joint.groove_joints import BACKING_M, Groove
from beadwright.joint.joints import (
    TEE_GROOVES,
    XY,
    Angle,
    Dimension,
    JointShape,
    Polygon,
    WeldRegion,
    box,
    corners,
    region,
)


def distance_to_face(root: XY, right: XY, left: XY) -> float:
    """Return the shortest distance from the root to a straight face [m].

    Source: geometry, point to segment.

    Args:
        root: The root [m].
        right: One toe [m].
        left: The other toe, not the same point [m].
    """
    along = (left[0] - right[0], left[1] - right[1])
    to_root = (root[0] - right[0], root[1] - right[1])
    share = (along[0] * to_root[0] + along[1] * to_root[1]) / (along[0] ** 2 + along[1] ** 2)
    held = min(1.0, max(0.0, share))
    return hypot(to_root[0] - held * along[0], to_root[1] - held * along[1])


def tee_groove_joint(
    groove: Groove,
    plate_m: float,
    plate2_m: float,
    leg_m: float,
    crown_m: float,
    lost_m: float = 0.0,
) -> JointShape:
    """Return a beveled tee drawn to scale; its fillet covers the groove.

    Source: geometry. The face runs straight from the fillet's toe on the plate to its toe on the
    upright, which is not below the groove's edge. Effective throat of a
    partial-penetration groove: the shortest distance from its root to the face, less what a narrow
    groove loses (AWS D1.1, from memory), both sides together.

    Args:
        groove: The edges [-].
        plate_m: Thickness of the horizontal plate, above zero [m].
        plate2_m: Thickness of the upright, above zero [m].
        leg_m: Leg of the fillet on the groove, zero for none [m].
        crown_m: Crown of the face, zero or more [m].
        lost_m: Depth of each groove that does not count as throat, zero or more [m].

    Raises:
        OutOfRangeError: If a length or the angle is out of range, or the depths over the plate.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m, depth_m=groove.depth_m)
    if groove.kind not in TEE_GROOVES:
        raise OutOfRangeError(f"kind = {groove.kind} must be one of {', '.join(TEE_GROOVES)}")
    for name, value in (("gap_m", groove.gap_m), ("leg_m", leg_m), ("crown_m", crown_m)):
        if not 0 <= value < inf:
            raise OutOfRangeError(f"{name} = {value} must be 0 or more and finite")
    if not 0 < groove.angle_deg <= 85:
        raise OutOfRangeError(f"angle_deg = {groove.angle_deg} must be above 0 to 85")
    if not groove.depth_m + groove.depth2_m <= plate2_m * (1 + 1e-9):
        raise OutOfRangeError(
            f"depth_m = {groove.depth_m} and depth2_m = {groove.depth2_m} must fit in {plate2_m}"
        )
    root_face = max(0.0, plate2_m - groove.depth_m - groove.depth2_m)
    rise = tan(radians(groove.angle_deg))
    under = root_face if groove.complete and groove.gap_m > 0 else 0.0
    first = _side("first", _wall(groove, rise), under, leg_m, crown_m)
    regions = [first]
    if groove.two_sided:
        second = _side("second", _back(groove, rise), 0.0, leg_m, crown_m)
        regions.append(_mirrored(second, plate2_m))
    top = max(1e-9, leg_m, *(toe[1] for each in regions for toe in each.face))
    reach = 0.8 * max(plate_m, plate2_m, top)
    return JointShape(
        kind=groove.kind,
        plates=_plates(groove, plate_m, plate2_m, top + reach, rise, leg_m + reach),
        regions=tuple(regions),
        section_m2=sum(r.section_m2 for r in regions),
        leg_m=leg_m,
        throat_m=plate2_m if groove.complete else _throat(groove, leg_m, lost_m, rise),
        face_m=first.face_m,
        dimensions=_dimensions(groove, plate_m, plate2_m, leg_m, top + reach, leg_m + reach),
        leg2_m=first.face[1][1] if leg_m > 0 else 0.0,
        root_face_m=root_face,
        gap_m=groove.gap_m,
        complete=groove.complete,
        gouge=groove.gouge,
        backing=_backing(groove, plate2_m) if groove.backed else (),
        angles=(
            Angle(
                "angle",
                (-groove.depth_m, groove.gap_m),
                0.0,
                groove.angle_deg,
                groove.depth_m + 1.25 * max(leg_m, groove.depth_m * rise, 2 * crown_m),
            ),
        ),
    )


def _wall(groove: Groove, rise: float) -> Wall:
    """The beveled edge of the first side, from its root out: level from the root, height."""
    return (0.0, groove.gap_m), (groove.depth_m, groove.gap_m + groove.depth_m * rise)


def _back(groove: Groove, rise: float) -> Wall:
    """The edge on the second side, from its root out.

    A gouge cuts into the upright only: the plate it stands on is left as it is, as in the
    prequalified J grooves.
    """
    half = groove.gap_m / 2
    cut = back_wall(groove.gouge, groove.gap_m, groove.depth2_m, rise)
    return tuple((level, half + out) for level, out in cut)


def _side(
    side: Literal["first", "second"], wall: Wall, under: float, leg: float, crown: float
) -> WeldRegion:
    """Weld metal on the right of the upright: groove, what is melted of the root, fillet."""
    depth, edge = wall[-1]
    foot, top = (leg, 0.0), (0.0, max(leg, edge))
    far = -depth - under
    along = [(level - depth, height) for level, height in reversed(wall)]
    points = corners((top, *along, (far, wall[0][1]), (far, 0.0), foot))
    return region(side, points, foot, top, (far, 0.0), crown)


def _mirrored(right: WeldRegion, plate2: float) -> WeldRegion:
    def over(point: XY) -> XY:
        return -plate2 - point[0], point[1]

    return WeldRegion(
        side=right.side,
        outline=tuple(over(p) for p in reversed(right.outline)),
        filled=tuple(over(p) for p in reversed(right.filled)),
        root=over(right.root),
        face=(over(right.face[1]), over(right.face[0])),
        crown_m=right.crown_m,
        section_m2=right.section_m2,
    )


def _throat(groove: Groove, leg: float, lost: float, rise: float) -> float:
    found = 0.0
    for depth in (groove.depth_m, groove.depth2_m):
        if depth > 0:
            face = (leg, 0.0), (0.0, max(leg, groove.gap_m + depth * rise))
            found += max(0.0, distance_to_face((-depth, 0.0), *face) - lost)
    return found


def _plates(
    groove: Groove, plate: float, plate2: float, tall: float, rise: float, reach: float
) -> tuple[Polygon, Polygon]:
    gap, depth, depth2 = groove.gap_m, groove.depth_m, groove.depth2_m
    under: Wall = ((-depth, gap), (0.0, gap + depth * rise))
    if groove.gouge is not None:
        near = groove.behind_m - plate2
        cut = tuple((near - level, y) for level, y in reversed(_back(groove, rise)))
        under = widest_wall(((-plate2, gap), *under), cut)
    elif depth2:
        under = (-plate2, gap + depth2 * rise), (-plate2 + depth2, gap), *under
    else:
        under = (-plate2, gap), *under
    upright: list[XY] = [(0.0, tall), (-plate2, tall), *under]
    return box(-plate2 - reach, -plate, reach, 0.0), corners(upright)


def _backing(groove: Groove, plate2: float) -> Polygon:
    # The root lies in the far corner, behind the gap.
    return box(-plate2 - BACKING_M, 0.0, -plate2, groove.gap_m + 3 * BACKING_M)


def _dimensions(
    groove: Groove, plate: float, plate2: float, leg: float, tall: float, reach: float
) -> tuple[Dimension, ...]:
    found = [
        Dimension("plate", (reach, -plate), (reach, 0.0), plate),
        Dimension("plate2", (-plate2, tall), (0.0, tall), plate2),
    ]
    if leg > 0:
        found.append(Dimension("leg", (leg, 0.0), (leg, leg), leg))
    return tuple(found)
