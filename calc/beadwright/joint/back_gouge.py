"""A back gouge to scale: the root cut out from the other side, down to sound metal.

A wall is a line of points (level, out): how far out of the middle of the gap the metal is cut at a
level above the bottom of the gouge. Levels rise; the same level twice is a step.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import acos, cos, inf, radians, sin, tan

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M

GOUGE_RADIUS_M = 1 / 4 * INCH_M
"""Radius of the bottom of a back gouge [m].

Source: that of the prequalified U groove, AWS D1.1 B-U6-GF, from memory; a carbon rod of 3/8 in
leaves about this (common practice).
"""

GOUGE_ANGLE_DEG = 20.0
"""Angle between the walls of a back gouge [°]. Source: AWS D1.1 B-U6-GF, from memory."""

PAST_FACE_M = 1 / 8 * INCH_M
"""How far past the root face a gouge is taken to go before the metal is sound [m]. Common practice,
1/16 to 1/8 in; no code gives it, the eye and the dye do."""

_ARC_CHORDS = 16
"""Chords in each half of the round bottom; its area is then within 0.2 % of the circle's."""

_SPECK_M = 1e-9
"""Levels closer than this are one [m]."""

Wall = tuple[tuple[float, float], ...]
"""Points (level, out) of a wall, levels rising [m]."""


@dataclass(frozen=True, slots=True)
class BackGouge:
    """A groove with a round bottom and straight walls.

    Attributes:
        depth_m: Depth from the back of the root: from the plate's surface, or from the root of the
            groove on the second side [m].
        radius_m: Radius of its bottom [m].
        angle_deg: Angle between its walls [°].
    """

    depth_m: float
    radius_m: float = GOUGE_RADIUS_M
    angle_deg: float = GOUGE_ANGLE_DEG

    @property
    def round_m(self) -> float:
        """Height of the round bottom, to where the straight walls begin [m]."""
        return self.radius_m * (1 - sin(radians(self.angle_deg / 2)))


def sound_depth(root_face_m: float, first_m: float) -> float:
    """Return how deep a back gouge is taken to go where no depth is given [m].

    Source: ``PAST_FACE_M``; through the root face and into the first side's metal, of a shallow
    groove no more than half of it (common practice).

    Args:
        root_face_m: Edge left square, zero or more [m].
        first_m: Depth of the groove on the side welded first, above zero [m].

    Raises:
        OutOfRangeError: If a length is out of range.
    """
    require_positive(first_m=first_m)
    if not 0 <= root_face_m < inf:
        raise OutOfRangeError(f"root_face_m = {root_face_m} must be 0 or more and finite")
    return root_face_m + min(PAST_FACE_M, first_m / 2)


def back_wall(gouge: BackGouge | None, gap_m: float, behind_m: float, slope: float) -> Wall:
    """Return a wall of the metal laid from the second side, from its bottom to the surface [m].

    A flat back is gouged in both edges. A groove on the second side is gouged where it is beveled,
    to the farther out of gouge and groove; a square edge is left as it is, as in the prequalified J
    grooves.

    Source: geometry.

    Args:
        gouge: The gouge, in the middle of the gap, or None [-].
        gap_m: Root opening, zero or more [m].
        behind_m: Depth of the groove on the second side; zero for a flat back [m].
        slope: Tangent of that groove's bevel angle on this edge; zero for a square one [-].

    Raises:
        OutOfRangeError: If a size of the gouge is out of range.
    """
    half = gap_m / 2
    if gouge is None:
        return (0.0, half), (behind_m, half + behind_m * slope)
    _require(gouge)
    root, top = gouge.depth_m, gouge.depth_m + behind_m
    if not behind_m:
        return _round_wall(gouge, top)
    if not slope:
        return (0.0, half), (top, half)
    return widest_wall(_round_wall(gouge, top), ((root, half), (top, half + behind_m * slope)))


def widest_wall(one: Wall, other: Wall) -> Wall:
    """Return the farther out of two walls at each level.

    Source: geometry: straight lines, compared between neighboring levels of either.

    Args:
        one: A wall; where it has no level, the other rules [m].
        other: Another, that meets or overlaps it [m].
    """
    levels = sorted(level for level, _ in (*one, *other))
    points: list[tuple[float, float]] = []
    for low, high in pairwise(levels):
        if high - low < _SPECK_M:
            continue  # one level, but for rounding
        (a0, a1), (b0, b1) = _between(one, low, high), _between(other, low, high)
        points.append((low, max(a0, b0)))
        if (a0 - b0) * (a1 - b1) < 0 and -inf not in (a0, b0):
            share = (a0 - b0) / ((a0 - b0) - (a1 - b1))
            points.append((low + share * (high - low), a0 + share * (a1 - a0)))
        points.append((high, max(a1, b1)))
    return tuple(dict.fromkeys(points))


def _between(wall: Wall, low: float, high: float) -> tuple[float, float]:
    """How far out a wall is just above one level and just below the next."""
    near = _SPECK_M / 8
    for (y0, x0), (y1, x1) in pairwise(wall):
        if y0 <= low + near and high <= y1 + near:
            slope = (x1 - x0) / (y1 - y0)
            return x0 + slope * (low - y0), x0 + slope * (high - y0)
    return -inf, -inf


def _round_wall(gouge: BackGouge, tall: float) -> Wall:
    """One wall of the gouge alone, from its bottom up."""
    radius, lean = gouge.radius_m, radians(gouge.angle_deg / 2)
    top = min(tall, gouge.round_m)
    most = acos(1 - top / radius)
    turns = (most * step / _ARC_CHORDS for step in range(_ARC_CHORDS + 1))
    points = [(radius * (1 - cos(turn)), radius * sin(turn)) for turn in turns]
    return (*points, (tall, points[-1][1] + (tall - top) * tan(lean)))


def _require(gouge: BackGouge) -> None:
    require_positive(depth_m=gouge.depth_m, radius_m=gouge.radius_m)
    if not 0 <= gouge.angle_deg < 180:
        raise OutOfRangeError(f"angle_deg = {gouge.angle_deg} must be 0 to under 180")
