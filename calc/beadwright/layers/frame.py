"""Weld metal seen along its face, the rounded face sheared flat.

x runs from the first toe to the second, y from the root out. The shear keeps areas, and layers cut
straight in it lie parallel to the face in the joint.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, hypot

from beadwright.joint.joints import XY, WeldRegion
from beadwright.layers.sweep import Sweep, sweep

_FACE_PARTS = 24


@dataclass(frozen=True, slots=True)
class Frame:
    """A region seen along its face.

    Attributes:
        origin: Middle of the face, in the joint [m].
        along: From the first toe to the second, of length 1.
        out: Square to the face, away from the root, of length 1.
        bow: How the face is bent: height over the square of x [1/m].
        outline: The region, sheared [m].
        levels: How much of it lies below a level of y.
        face_m: Width of the face [m].
    """

    origin: XY
    along: XY
    out: XY
    bow: float
    outline: tuple[XY, ...]
    levels: Sweep
    face_m: float

    @property
    def bottom(self) -> float:
        """Lowest level with metal to lay; a closed root face below it has none [m]."""
        least = 1e-9 * self.levels.area
        at = next(i for i, area in enumerate(self.levels.areas) if area > least)
        return self.levels.levels[at - 1]

    def back(self, point: XY) -> XY:
        """Return a point of the sheared region where it lies in the joint [m]."""
        x, y = point[0], point[1] - self.bow * point[0] ** 2
        return (
            self.origin[0] + x * self.along[0] + y * self.out[0],
            self.origin[1] + x * self.along[1] + y * self.out[1],
        )


def frame_of(region: WeldRegion) -> Frame:
    """Return a region seen along its face.

    Source: geometry.

    Args:
        region: Weld metal of one side [-].
    """
    (x0, y0), (x1, y1) = region.face
    width = hypot(x1 - x0, y1 - y0)
    origin = ((x0 + x1) / 2, (y0 + y1) / 2)
    along = ((x1 - x0) / width, (y1 - y0) / width)
    out = (along[1], -along[0])  # a face runs from right to left, seen from the welder
    bow = 4 * region.crown_m / width**2
    flat: list[XY] = []
    for x, y in region.outline:
        dx, dy = x - origin[0], y - origin[1]
        flat.append((dx * along[0] + dy * along[1], dx * out[0] + dy * out[1]))
    points = tuple((x, y + bow * x * x) for x, y in dense(flat, width))
    return Frame(
        origin=origin,
        along=along,
        out=out,
        bow=bow,
        outline=points,
        levels=sweep(points, 1),
        face_m=width,
    )


def dense(points: Sequence[XY], width: float) -> list[XY]:
    """Return an outline with its edges cut into short pieces, so that they can be bent [m].

    Args:
        points: Corners in order [m].
        width: Width of the face [m].
    """
    found: list[XY] = []
    for (x0, y0), (x1, y1) in zip(points, _turned(points), strict=True):
        cuts = max(1, ceil(_FACE_PARTS * abs(x1 - x0) / width))
        found += [(x0 + (x1 - x0) * i / cuts, y0 + (y1 - y0) * i / cuts) for i in range(cuts)]
    return found


def _turned(points: Sequence[XY]) -> list[XY]:
    return [*points[1:], points[0]]
