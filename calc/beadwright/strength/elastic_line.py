"""The elastic line method: force per length along a weld group under forces and moments."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, sqrt

from beadwright.errors import OutOfRangeError
from beadwright.strength.weld_group import Place, WeldGroup
from beadwright.strength.weld_line import LineProperties, line_properties

_FLAT = 1e-9
"""Share of the polar second moment under which a second moment is zero: the weld is a line."""


@dataclass(frozen=True, slots=True)
class GroupLoad:
    """What a weld group carries, at its centroid.

    z comes out of the joint towards the viewer: px and py shear, pz pulls; mz turns in the
    plane, mx and my bend out of it. Right-handed.

    Attributes:
        px: Force to the right [N].
        py: Force up [N].
        pz: Force out of the plane, pulling [N].
        mx: Moment about the level axis [N·m].
        my: Moment about the upright axis [N·m].
        mz: Moment in the plane, counter-clockwise [N·m].
    """

    px: float = 0.0
    py: float = 0.0
    pz: float = 0.0
    mx: float = 0.0
    my: float = 0.0
    mz: float = 0.0

    @property
    def in_plane(self) -> bool:
        """True if nothing bends or pulls out of the plane."""
        return not (self.pz or self.mx or self.my)


@dataclass(frozen=True, slots=True)
class LineForce:
    """Force per length at a point of the weld: what the weld is asked to carry.

    Attributes:
        place: The point.
        fx: To the right [N/m].
        fy: Up [N/m].
        fz: Out of the plane [N/m].
    """

    place: Place
    fx: float
    fy: float
    fz: float

    @property
    def total(self) -> float:
        """Vector sum [N/m]."""
        return sqrt(self.fx**2 + self.fy**2 + self.fz**2)

    @property
    def along(self) -> float:
        """Part along the weld [N/m]."""
        return self.fx * self.place.along_x + self.fy * self.place.along_y

    @property
    def across(self) -> float:
        """Part across the weld in the plane [N/m]."""
        return self.fy * self.place.along_x - self.fx * self.place.along_y


def load_at_centroid(
    properties: LineProperties, load: GroupLoad, at: tuple[float, float, float]
) -> GroupLoad:
    """Return a load acting at a point as forces and moments at the centroid.

    Source: statics, M = r × P.

    Args:
        properties: The group's [-].
        load: Forces at the point; moments act wherever they are [N, N·m].
        at: Where the force acts: right of and above the group's origin, out of its plane [m].
    """
    rx, ry, rz = at[0] - properties.x, at[1] - properties.y, at[2]
    return GroupLoad(
        load.px,
        load.py,
        load.pz,
        load.mx + ry * load.pz - rz * load.py,
        load.my + rz * load.px - rx * load.pz,
        load.mz + rx * load.py - ry * load.px,
    )


def line_forces(
    group: WeldGroup, load: GroupLoad, properties: LineProperties | None = None
) -> tuple[LineForce, ...]:
    """Return the force per length at each end of a group's stretches.

    Direct forces share out evenly; the moment in the plane by distance from the centroid over J;
    bending out of the plane by Ix, Iy and Ixy.

    Source: elastic (vector) method, AISC Manual part 8; textbook tables of welds as lines.

    Args:
        group: The weld group [-].
        load: What it carries at its centroid [N, N·m].
        properties: The group's, if at hand [-].

    Raises:
        OutOfRangeError: If a moment bends a weld that is a straight line about itself.
    """
    p = properties or line_properties(group)
    fx0, fy0, fz0 = load.px / p.length_m, load.py / p.length_m, load.pz / p.length_m
    turn = load.mz / p.j
    by_y, by_x = _bending(p, load)
    found: list[LineForce] = []
    for place in group.ends:
        dx, dy = place.x - p.x, place.y - p.y
        found.append(
            LineForce(place, fx0 - turn * dy, fy0 + turn * dx, fz0 + by_y * dy + by_x * dx)
        )
    return tuple(found)


def _bending(p: LineProperties, load: GroupLoad) -> tuple[float, float]:
    """Slopes of the out-of-plane force with y and with x [N/m²]."""
    if not load.mx and not load.my:
        return 0.0, 0.0
    scale = p.j**2
    determinant = p.ix * p.iy - p.ixy**2
    if determinant > _FLAT * scale:
        return (
            (load.mx * p.iy + load.my * p.ixy) / determinant,
            -(load.my * p.ix + load.mx * p.ixy) / determinant,
        )
    # A straight line of weld takes moment about the axis across it only.
    along = _way_of_line(p)
    lengthwise = load.mx * along[1] - load.my * along[0]
    if abs(load.mx * along[0] + load.my * along[1]) > 1e-6 * hypot(load.mx, load.my):
        raise OutOfRangeError("load bends a single line of weld about itself: it has no width")
    slope = lengthwise / p.j
    return slope * along[1], slope * along[0]


def _way_of_line(p: LineProperties) -> tuple[float, float]:
    """Unit vector along a group that is one straight line."""
    x, y = sqrt(p.iy / p.j), sqrt(p.ix / p.j)
    return (x, y) if p.ixy >= 0 else (-x, y)


def worst(forces: tuple[LineForce, ...]) -> int:
    """Return the index of the greatest force per length.

    Args:
        forces: Forces along the weld, one at least [N/m].
    """
    return max(range(len(forces)), key=lambda i: forces[i].total)
