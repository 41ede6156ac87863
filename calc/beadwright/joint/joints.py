"""Joints as polygons to scale: what every joint is drawn and counted with.

Coordinates [m]: x to the right, y up. The root of a fillet lies at (0, 0); a butt's top surfaces at
y = 0 with x = 0 in the middle of its gap; a groove in a tee is filled from the right, the base
plate's top at y = 0 and the upright's right face at x = 0. A rounded face is a parabola over the
straight face, in short chords. The shapes themselves: ``fillet_joints``, ``groove_joints``,
``tee_grooves``, ``plug_slot``; which one a job wants: ``job_joint``.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import hypot
from typing import Literal

from beadwright.errors import OutOfRangeError
from beadwright.joint.back_gouge import BackGouge
from beadwright.joint.fillets import face_section

JointKind = Literal[
    "tee", "lap", "corner", "square", "v", "double-v", "bevel", "double-bevel", "tee-bevel",
    "tee-double-bevel", "plug", "slot",
]  # fmt: skip
JOINTS: tuple[JointKind, ...] = (
    "tee", "lap", "corner", "square", "v", "double-v", "bevel", "double-bevel", "tee-bevel",
    "tee-double-bevel", "plug", "slot",
)  # fmt: skip
FILLETS: tuple[JointKind, ...] = ("tee", "lap", "corner")
BUTTS: tuple[JointKind, ...] = ("square", "v", "double-v", "bevel", "double-bevel")
TEE_GROOVES: tuple[JointKind, ...] = ("tee-bevel", "tee-double-bevel")
HOLES: tuple[JointKind, ...] = ("plug", "slot")
GOUGED: tuple[JointKind, ...] = (
    "square", "v", "double-v", "bevel", "double-bevel", "tee-bevel", "tee-double-bevel",
)  # fmt: skip
"""Joints whose root may be gouged from the back."""
DOUBLES: tuple[JointKind, ...] = ("double-v", "double-bevel", "tee-double-bevel")

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
class Angle:
    """One angle of a shop print.

    Attributes:
        name: What it is: angle (of the groove) or skew.
        vertex: Where its legs meet [m].
        from_deg: Direction of one leg, counter-clockwise from x [°].
        to_deg: Direction of the other [°].
        radius_m: Where the arc is drawn, outside the weld [m].
    """

    name: str
    vertex: XY
    from_deg: float
    to_deg: float
    radius_m: float

    @property
    def value_deg(self) -> float:
        """The angle written on it [°]."""
        return self.to_deg - self.from_deg


@dataclass(frozen=True, slots=True)
class WeldRegion:
    """Weld metal laid from one side of a joint.

    Attributes:
        side: first or second, in the order welded.
        outline: With the rounded face, as drawn.
        filled: To the straight face, without the crown and its overlap on the plate edges.
        root: Where the first bead goes.
        face: The toes: ends of the straight face.
        crown_m: Height of the rounded face over the straight one [m].
        section_m2: Section, crown counted as a parabola [m²].
    """

    side: Literal["first", "second"]
    outline: Polygon
    filled: Polygon
    root: XY
    face: tuple[XY, XY]
    crown_m: float
    section_m2: float

    @property
    def face_m(self) -> float:
        """Width of the face, toe to toe [m]."""
        (x0, y0), (x1, y1) = self.face
        return hypot(x1 - x0, y1 - y0)

    def crown_room_m2(self, most_m: float) -> float:
        """Return the section that brings the crown to the most allowed [m²].

        Args:
            most_m: Highest crown, zero or more [m].
        """
        return face_section(self.face_m, max(0.0, most_m - self.crown_m))


@dataclass(frozen=True, slots=True)
class JointShape:
    """A joint drawn to scale.

    Attributes:
        kind: The joint.
        plates: Outlines of the parts.
        regions: Weld metal by side, in the order welded.
        section_m2: Section of weld metal laid along the weld [m²]. The regions' sum; half of it
            in a plug or slot, which is laid around its axis.
        leg_m: Leg as welded (gap and skew allowed for), zero without a fillet [m].
        throat_m: Throat of the leg asked for; of a groove, its effective throat [m].
        face_m: Width of the first side's face [m].
        dimensions: What is dimensioned.
        leg2_m: The other leg as welded, up the other plate [m].
        root_face_m: Edge left square between gap and bevels; zero without one [m].
        gap_m: Root opening [m].
        complete: True if the groove is welded through the plate.
        gouge: Back gouge cut through the root before the second side is welded, or None. What it
            cuts out of the first side's metal is laid twice: there the two regions overlap.
        backing: Outline of a backing, or empty.
        angles: What angles are dimensioned.
    """

    kind: JointKind
    plates: tuple[Polygon, ...]
    regions: tuple[WeldRegion, ...]
    section_m2: float
    leg_m: float
    throat_m: float
    face_m: float
    dimensions: tuple[Dimension, ...]
    leg2_m: float = 0.0
    root_face_m: float = 0.0
    gap_m: float = 0.0
    complete: bool = False
    gouge: BackGouge | None = None
    backing: Polygon = ()
    angles: tuple[Angle, ...] = ()

    @property
    def gouged(self) -> bool:
        """True if the root is gouged from the second side before that is welded."""
        return self.gouge is not None

    @property
    def weld(self) -> Polygon:
        """Outline of the weld metal of the first side."""
        return self.regions[0].outline

    @property
    def round(self) -> bool:
        """True of a plug or slot: each bead runs around and shows twice in the section."""
        return self.kind in HOLES

    @property
    def crown_m2(self) -> float:
        """Section of all crowns, as it is laid along the weld [m²]."""
        crowns = sum(face_section(r.face_m, r.crown_m) for r in self.regions)
        return crowns / 2 if self.round else crowns

    def crown_room_m2(self, most_m: float) -> float:
        """Return the section that brings every crown to the most allowed [m²].

        Args:
            most_m: Highest crown, zero or more [m].
        """
        room = sum(region.crown_room_m2(most_m) for region in self.regions)
        return room / 2 if self.round else room


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
    """Return the points between start and end of a parabola that bulges to the right [m].

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


def same(one: XY, other: XY) -> bool:
    """Return whether two points are the same apart from rounding: within a nanometer.

    Args:
        one: A point [m].
        other: Another [m].
    """
    return abs(one[0] - other[0]) < 1e-9 and abs(one[1] - other[1]) < 1e-9


def corners(points: Iterable[XY]) -> Polygon:
    """Return the points as a polygon, each corner once.

    Args:
        points: Corners in order; neighbors may be the same point [m].
    """
    found: list[XY] = []
    for point in points:
        if not found or not same(point, found[-1]):
            found.append(point)
    if len(found) > 1 and same(found[0], found[-1]):
        found.pop()
    return tuple(found)


def region(
    side: Literal["first", "second"],
    filled: Polygon,
    right: XY,
    left: XY,
    root: XY,
    crown_m: float,
) -> WeldRegion:
    """Return a region with its face from the right toe to the left, seen from the welder.

    Source: geometry: the filled polygon plus the crown as a parabola over toe to toe.

    Args:
        side: In the order welded [-].
        filled: Counter-clockwise from the left end of the face to its right end [m].
        right: Right toe [m].
        left: Left toe [m].
        root: Where the first bead goes [m].
        crown_m: Height of the crown, zero or more [m].
    """
    outline = corners((*filled, right, *rounded_face(right, left, crown_m), left))
    width = hypot(right[0] - left[0], right[1] - left[1])
    section = face_section(width, crown_m) + (polygon_area(filled) if len(filled) > 2 else 0.0)
    return WeldRegion(
        side=side,
        outline=outline,
        filled=filled,
        root=root,
        face=(right, left),
        crown_m=crown_m,
        section_m2=section,
    )
