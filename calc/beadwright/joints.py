"""Joints as polygons to scale: tee, lap, outside corner and square butt.

Coordinates [m]: x to the right, y up, the root of the weld at (0, 0). A rounded face is drawn as
a parabola over the straight face, in short chords.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf, sqrt
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.fillets import face_section, flat_section, throat

JointKind = Literal["tee", "lap", "corner", "square"]
JOINTS: tuple[JointKind, ...] = ("tee", "lap", "corner", "square")
FILLETS: tuple[JointKind, ...] = ("tee", "lap", "corner")

XY = tuple[float, float]
Polygon = tuple[XY, ...]

FACE_CHORDS = 24
"""Chords in a rounded face; the polygon's area is then within 0.2 % of the parabola's."""


@dataclass(frozen=True, slots=True)
class Dimension:
    """One dimension of a shop print.

    Attributes:
        name: What it is: leg, throat, plate, plate2, gap, reinforcement.
        start: One end [m].
        end: Other end [m].
        value_m: The length written on it [m].
    """

    name: str
    start: XY
    end: XY
    value_m: float


@dataclass(frozen=True, slots=True)
class JointShape:
    """A joint drawn to scale.

    Attributes:
        kind: The joint.
        plates: Outlines of the parts.
        weld: Outline of the weld metal.
        section_m2: Section of weld metal the joint needs [m²].
        leg_m: Leg as welded (gap allowed for), zero for a groove [m].
        throat_m: Throat of the leg asked for, or plate thickness of a full groove [m].
        face_m: Width of the face [m].
        dimensions: What is dimensioned.
    """

    kind: JointKind
    plates: tuple[Polygon, ...]
    weld: Polygon
    section_m2: float
    leg_m: float
    throat_m: float
    face_m: float
    dimensions: tuple[Dimension, ...]


def polygon_area(points: Sequence[XY]) -> float:
    """Return the area of a simple polygon [m²].

    Source: the shoelace formula (Gauss).

    Args:
        points: Corners in order, three or more [m].

    Raises:
        OutOfRangeError: If there are fewer than three corners.
    """
    if len(points) < 3:
        raise OutOfRangeError(f"points = {len(points)} must be three or more corners")
    turned = (*points[1:], points[0])
    twice = sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(points, turned, strict=True))
    return abs(twice) / 2


def rounded_face(start: XY, end: XY, height_m: float) -> tuple[XY, ...]:
    """Return the points between start and end of a parabola bulging to the right of the way [m].

    Args:
        start: Where the face begins [m].
        end: Where it ends [m].
        height_m: Crown above the straight face; below zero is hollow [m].
    """
    if height_m == 0:
        return ()
    (x0, y0), (x1, y1) = start, end
    length = hypot(x1 - x0, y1 - y0)
    normal = ((y1 - y0) / length, -(x1 - x0) / length)
    points: list[XY] = []
    for step in range(1, FACE_CHORDS):
        along = step / FACE_CHORDS
        out = 4 * along * (1 - along) * height_m
        points.append(
            (x0 + (x1 - x0) * along + normal[0] * out, y0 + (y1 - y0) * along + normal[1] * out)
        )
    return tuple(points)


def box(left: float, bottom: float, right: float, top: float) -> Polygon:
    """Return a rectangle [m]."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def fillet_joint(
    kind: JointKind,
    plate_m: float,
    plate2_m: float,
    leg_m: float,
    wanted_leg_m: float,
    convexity_m: float,
    gap_m: float = 0.0,
) -> JointShape:
    """Return a tee, lap or outside-corner fillet drawn to scale.

    Source: geometry; section ½·z² plus the crown as a parabola.

    Args:
        kind: tee, lap or corner [-].
        plate_m: Thickness of the plate lying down, above zero [m].
        plate2_m: Thickness of the other, above zero [m].
        leg_m: Leg as welded, gap allowed for, above zero [m].
        wanted_leg_m: Leg asked for; the throat is its, above zero [m].
        convexity_m: Crown of the face, zero or more [m].
        gap_m: Root gap, zero or more [m].

    Raises:
        OutOfRangeError: If a length is out of range, or the kind is no fillet.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m, leg_m=leg_m, wanted_leg_m=wanted_leg_m)
    if kind not in FILLETS:
        raise OutOfRangeError(f"kind = {kind} must be one of {', '.join(FILLETS)}")
    if not (0 <= convexity_m < inf and 0 <= gap_m < inf):
        raise OutOfRangeError(
            f"convexity_m = {convexity_m} and gap_m = {gap_m} must be 0 or more and finite"
        )
    foot, top = (leg_m, 0.0), (0.0, leg_m)
    weld = ((0.0, 0.0), foot, *rounded_face(foot, top, convexity_m), top)
    face = leg_m * sqrt(2)
    return JointShape(
        kind,
        _fillet_plates(kind, plate_m, plate2_m, leg_m, gap_m),
        weld,
        flat_section(leg_m) + face_section(face, convexity_m),
        leg_m,
        throat(wanted_leg_m),
        face,
        _fillet_dimensions(kind, plate_m, plate2_m, leg_m, gap_m),
    )


def _fillet_plates(
    kind: JointKind, plate: float, plate2: float, leg: float, gap: float
) -> tuple[Polygon, ...]:
    reach = 1.6 * max(leg, plate, plate2)
    if kind == "tee":
        return (
            box(-plate2 - reach, -plate, leg + reach, 0.0),
            box(-plate2, gap, 0.0, leg + reach),
        )
    if kind == "lap":
        return (
            box(-1.4 * reach, -plate, leg + reach, 0.0),
            box(-2.2 * reach, gap, 0.0, gap + plate2),
        )
    return (box(-2 * reach, 0.0, 0.0, plate), box(0.0, -2 * reach, plate2, -gap))


def _fillet_dimensions(
    kind: JointKind, plate: float, plate2: float, leg: float, gap: float
) -> tuple[Dimension, ...]:
    reach = 1.6 * max(leg, plate, plate2)
    legs = (
        Dimension("leg", (leg, 0.0), (leg, leg), leg),
        Dimension("leg2", (0.0, leg), (leg, leg), leg),
    )
    if kind == "tee":
        right = leg + reach
        sizes = (
            Dimension("plate", (right, -plate), (right, 0.0), plate),
            Dimension("plate2", (-plate2, leg + reach), (0.0, leg + reach), plate2),
        )
    elif kind == "lap":
        right = leg + reach
        sizes = (
            Dimension("plate", (right, -plate), (right, 0.0), plate),
            Dimension("plate2", (-2.2 * reach, gap), (-2.2 * reach, gap + plate2), plate2),
        )
    else:
        sizes = (
            Dimension("plate", (-2 * reach, 0.0), (-2 * reach, plate), plate),
            Dimension("plate2", (0.0, -2 * reach), (plate2, -2 * reach), plate2),
        )
    return (*legs, *sizes)


def square_face_width(plate_m: float, gap_m: float) -> float:
    """Return the face width of a square butt: the gap and a toe of the plate's thickness each side.

    Source: common practice; toes no wider than 3 mm.

    Args:
        plate_m: Thickness, above zero [m].
        gap_m: Gap, zero or more [m].
    """
    return gap_m + 2 * min(plate_m, 0.003)


def square_joint(
    plate_m: float, plate2_m: float, gap_m: float, reinforcement_m: float
) -> JointShape:
    """Return a square butt drawn to scale, welded from one side through the thinner plate.

    Source: geometry: gap × thickness plus the crown as a parabola over the face.

    Args:
        plate_m: Thickness on the left, above zero [m].
        plate2_m: Thickness on the right, above zero [m].
        gap_m: Root gap, zero or more [m].
        reinforcement_m: Crown above the plate, zero or more; not both zero [m].

    Raises:
        OutOfRangeError: If a length is out of range or there is nothing to fill.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m)
    if not (gap_m >= 0 and reinforcement_m >= 0 and 0 < gap_m + reinforcement_m < inf):
        raise OutOfRangeError(
            f"gap_m = {gap_m} and reinforcement_m = {reinforcement_m} must be 0 or more, not both 0"
        )
    thinner = min(plate_m, plate2_m)
    half, face = gap_m / 2, square_face_width(thinner, gap_m)
    left, right = (-face / 2, 0.0), (face / 2, 0.0)
    crown = rounded_face(right, left, reinforcement_m)
    groove: Polygon = ((-half, 0.0), (-half, -thinner), (half, -thinner), (half, 0.0))
    weld = (*(groove if gap_m > 0 else ()), right, *crown, left)
    reach = 3 * max(plate_m, plate2_m) + face
    dimensions = [
        Dimension("plate", (-reach, -plate_m), (-reach, 0.0), plate_m),
        Dimension("plate2", (reach, -plate2_m), (reach, 0.0), plate2_m),
    ]
    if gap_m > 0:
        dimensions.append(Dimension("gap", (-half, -thinner), (half, -thinner), gap_m))
    if reinforcement_m > 0:
        crown_top = (face / 2, reinforcement_m)
        dimensions.append(Dimension("reinforcement", right, crown_top, reinforcement_m))
    return JointShape(
        "square",
        (box(-reach, -plate_m, -half, 0.0), box(half, -plate2_m, reach, 0.0)),
        weld,
        gap_m * thinner + face_section(face, reinforcement_m),
        0.0,
        thinner,
        face,
        tuple(dimensions),
    )
