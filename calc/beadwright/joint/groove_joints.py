"""Butts to scale: square, single and double V, single and double bevel; a closed corner."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, inf, radians, tan

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.back_gouge import BackGouge, Wall, back_wall, widest_wall
from beadwright.joint.joints import (
    BUTTS,
    XY,
    Angle,
    Dimension,
    JointKind,
    JointShape,
    Polygon,
    WeldRegion,
    box,
    corners,
    region,
)
from beadwright.measures import INCH_M

GROOVE_TOE_M = 0.0015
"""Overlap of a cap on each edge of its groove [m]. Common practice."""

BACKING_M = 1 / 4 * INCH_M
"""Thickness a backing is drawn with [m]. Common practice."""

_TAPER = 2.5
"""Length over height of the slope from a thicker plate to the thinner one [-].

Source: AWS D1.1, transition of thickness, from memory.
"""

_MOST_DEG = 150.0


@dataclass(frozen=True, slots=True)
class Groove:
    """The edges of a groove.

    Attributes:
        kind: The joint.
        angle_deg: Groove angle, between the faces; zero for a square one [°].
        gap_m: Root opening [m].
        depth_m: Depth prepared on the side welded first [m].
        depth2_m: Depth prepared on the second side; zero if there is none [m].
        complete: True if the weld goes through; the root face is then melted.
        backed: True if a backing lies under the root.
        gouge: Back gouge cut before the second side is welded, or None.
    """

    kind: JointKind
    angle_deg: float
    gap_m: float
    depth_m: float
    depth2_m: float = 0.0
    complete: bool = True
    backed: bool = False
    gouge: BackGouge | None = None

    @property
    def two_sided(self) -> bool:
        """True if metal is laid from the second side."""
        return self.depth2_m > 0 or self.gouge is not None

    @property
    def behind_m(self) -> float:
        """Depth laid from the second side, at the root [m]."""
        return self.depth2_m + (self.gouge.depth_m if self.gouge is not None else 0.0)

    @property
    def slopes(self) -> tuple[float, float]:
        """Tangents of the left and the right bevel angle."""
        if self.kind in ("v", "double-v"):
            half = tan(radians(self.angle_deg / 2))
            return half, half
        return (tan(radians(self.angle_deg)) if self.angle_deg else 0.0), 0.0


def square_face_width(plate_m: float, gap_m: float) -> float:
    """Return the face width of a square butt: the gap and a toe of the plate's thickness each side.

    Source: common practice; toes no wider than 3 mm.

    Args:
        plate_m: Thickness, above zero [m].
        gap_m: Gap, zero or more [m].
    """
    return gap_m + 2 * min(plate_m, 0.003)


def groove_joint(
    groove: Groove,
    plate_m: float,
    plate2_m: float,
    crown_m: float,
    throat_m: float | None = None,
) -> JointShape:
    """Return a butt drawn to scale, welded through the thinner plate or to the depth prepared.

    Source: geometry: groove and gap, plus a parabola over each face.

    Args:
        groove: The edges [-].
        plate_m: Thickness on the left, above zero [m].
        plate2_m: Thickness on the right, above zero [m].
        crown_m: Crown above the plate on each welded side, zero or more [m].
        throat_m: Effective throat, above zero; None: the thinner plate [m].

    Raises:
        OutOfRangeError: If a length or angle is out of range, the depths are over the plate, or
            there is nothing to fill.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m, depth_m=groove.depth_m)
    thin = min(plate_m, plate2_m)
    _require(groove, thin, crown_m)
    depth, depth2 = groove.depth_m, groove.depth2_m
    root_face = max(0.0, thin - depth - depth2)
    # How deep the first side's metal goes: into the gap between the root faces, if there is one;
    # between square edges that are gouged, as deep as it is taken to be sound.
    square = groove.kind == "square" and groove.gouge is not None
    through = groove.complete and groove.gap_m > 0 and not square
    bottom = thin - depth2 if through else depth
    regions = [_top(groove, thin, bottom, crown_m)]
    if groove.two_sided:
        regions.append(_bottom(groove, thin, crown_m))
    section = sum(r.section_m2 for r in regions)
    if section <= 0:
        raise OutOfRangeError(
            f"gap_m = {groove.gap_m} and crown_m = {crown_m} must be 0 or more, not both 0"
        )
    reach = 1.2 * max(plate_m, plate2_m) + max(r.face_m for r in regions)
    if groove.backed or groove.two_sided:
        slope = _TAPER * abs(plate_m - plate2_m)
        reach = max(reach, _flat(groove, thin) + slope + 0.3 * max(plate_m, plate2_m))
    return JointShape(
        kind=groove.kind,
        plates=_plates(groove, plate_m, plate2_m, thin, reach),
        regions=tuple(regions),
        section_m2=section,
        leg_m=0.0,
        throat_m=thin if throat_m is None else throat_m,
        face_m=regions[0].face_m,
        dimensions=_dimensions(groove, plate_m, plate2_m, thin, reach, regions[0]),
        root_face_m=0.0 if groove.kind == "square" and groove.complete else root_face,
        gap_m=groove.gap_m,
        complete=groove.complete,
        gouge=groove.gouge,
        backing=_backing(groove, thin) if groove.backed else (),
        angles=tuple(_angles(groove, thin, crown_m)),
    )


def _require(groove: Groove, thin: float, crown: float) -> None:
    if groove.kind not in BUTTS:
        raise OutOfRangeError(f"kind = {groove.kind} must be one of {', '.join(BUTTS)}")
    if not (0 <= groove.gap_m < inf and 0 <= crown < inf):
        raise OutOfRangeError(
            f"gap_m = {groove.gap_m} and crown_m = {crown} must be 0 or more, not both 0"
        )
    most = 85.0 if groove.kind in ("bevel", "double-bevel") else _MOST_DEG
    if groove.kind != "square" and not 0 < groove.angle_deg <= most:
        raise OutOfRangeError(f"angle_deg = {groove.angle_deg} must be above 0 to {most:g}")
    if not (groove.depth2_m >= 0 and groove.depth_m + groove.depth2_m <= thin * (1 + 1e-9)):
        raise OutOfRangeError(
            f"depth_m = {groove.depth_m} and depth2_m = {groove.depth2_m} must fit in {thin}"
        )


def _toe(groove: Groove, thin: float) -> float:
    return min(thin, 0.003 if groove.kind == "square" else GROOVE_TOE_M)


def _top(groove: Groove, thin: float, bottom: float, crown: float) -> WeldRegion:
    half, depth, (left, right) = groove.gap_m / 2, groove.depth_m, groove.slopes
    edges = corners(
        (
            (-half - depth * left, 0.0),
            (-half, -depth),
            (-half, -bottom),
            (half, -bottom),
            (half, -depth),
            (half + depth * right, 0.0),
        )
    )
    filled: Polygon = edges if half > 0 or left > 0 else ()
    toe = _toe(groove, thin) if crown > 0 else 0.0
    toes = (half + depth * right + toe, 0.0), (-half - depth * left - toe, 0.0)
    return region("first", filled, *toes, (0.0, -bottom), crown)


def _bottom(groove: Groove, thin: float, crown: float) -> WeldRegion:
    left, right = (_back(groove, slope) for slope in groove.slopes)
    top = groove.behind_m - thin
    edges = corners(
        (
            *((out, top - level) for level, out in reversed(right)),
            *((-out, top - level) for level, out in left),
        )
    )
    toe = min(thin, GROOVE_TOE_M) if crown > 0 else 0.0
    toes = (-left[-1][1] - toe, -thin), (right[-1][1] + toe, -thin)
    return region("second", edges, *toes, (0.0, top), crown)


def _back(groove: Groove, slope: float) -> Wall:
    """A wall of the metal laid from the second side, from its root out."""
    return back_wall(groove.gouge, groove.gap_m, groove.depth2_m, slope)


def _plates(
    groove: Groove, plate: float, plate2: float, thin: float, reach: float
) -> tuple[Polygon, Polygon]:
    left = _edge(groove, groove.slopes[0], plate, thin, reach)
    right = _edge(groove, groove.slopes[1], plate2, thin, reach)
    return tuple((-x, y) for x, y in reversed(left)), right


def _edge(groove: Groove, slope: float, plate: float, thin: float, reach: float) -> Polygon:
    """The plate on the right, from its top edge counter-clockwise."""
    half = groove.gap_m / 2
    rising = _prepared(groove, slope, thin)
    points: list[XY] = [(reach, 0.0), *((out, level) for level, out in reversed(rising))]
    if plate > thin * (1 + 1e-9):
        # With a second side, or a backing, the thicker plate must taper down to the thinner.
        if groove.two_sided or groove.backed:
            flat = _flat(groove, thin)
            points += [(flat, -thin), (flat + _TAPER * (plate - thin), -plate)]
        else:
            points.append((half, -plate))
    points.append((reach, -plate))
    return corners(points)


def _prepared(groove: Groove, slope: float, thin: float) -> Wall:
    """A plate's edge, from the back up to its top."""
    half, depth, depth2 = groove.gap_m / 2, groove.depth_m, groove.depth2_m
    top = ((-depth, half), (0.0, half + depth * slope)) if slope else ((0.0, half),)
    if groove.gouge is not None:
        cut = tuple((groove.behind_m - thin - y, x) for y, x in reversed(_back(groove, slope)))
        return widest_wall(((-thin, half), *top), cut)
    if depth2 and slope:
        return (-thin, half + depth2 * slope), (depth2 - thin, half), *top
    return (-thin, half), *top


def _flat(groove: Groove, thin: float) -> float:
    """Distance from the middle to which the underside stays level: past backing or second cap."""
    if groove.backed:
        return groove.gap_m / 2 + min(0.0125, max(0.006, thin))
    return max(_back(groove, slope)[-1][1] for slope in groove.slopes) + 2 * GROOVE_TOE_M


def _backing(groove: Groove, thin: float) -> Polygon:
    wide = _flat(groove, thin)
    return box(-wide, -thin - BACKING_M, wide, -thin)


def _dimensions(
    groove: Groove, plate: float, plate2: float, thin: float, reach: float, top: WeldRegion
) -> tuple[Dimension, ...]:
    half = groove.gap_m / 2
    found = [
        Dimension("plate", (-reach, -plate), (-reach, 0.0), plate),
        Dimension("plate2", (reach, -plate2), (reach, 0.0), plate2),
    ]
    if groove.gap_m > 0:
        found.append(Dimension("gap", (-half, -thin), (half, -thin), groove.gap_m))
    if groove.depth2_m == 0 and not groove.complete:
        edge = half + groove.depth_m * groove.slopes[1]
        found.append(Dimension("depth", (edge, -groove.depth_m), (edge, 0.0), groove.depth_m))
    if top.crown_m > 0 and groove.kind == "square" and groove.complete:
        right = top.face[0]
        found.append(Dimension("reinforcement", right, (right[0], top.crown_m), top.crown_m))
    return tuple(found)


def _angles(groove: Groove, thin: float, crown: float) -> Iterator[Angle]:
    if not groove.angle_deg:
        return
    half, depth, wide = groove.gap_m / 2, groove.depth_m, groove.angle_deg
    above = max(2 * crown, 0.2 * thin)
    if groove.kind in ("v", "double-v"):
        turn = wide / 2
        below = depth + half / tan(radians(turn))
        vertex, low, high = (0.0, -below), 90 - turn, 90 + turn
    else:
        turn, below = wide, depth
        vertex, low, high = (-half, -depth), 90.0, 90 + wide
    radius = min((below + above) / cos(radians(turn)), 1.5 * (below + above))
    yield Angle("angle", vertex, low, high, radius)
