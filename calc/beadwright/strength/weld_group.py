"""Weld groups: lines of weld as seen looking square at the joint, in meters.

x runs right, y up; the origin is the lower left corner of the group (for one's own polyline, its
own). A line of weld has a length and no width: width comes in with the throat.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import cos, hypot, pi, sin
from types import MappingProxyType

from beadwright.errors import OutOfRangeError, require_positive

XY = tuple[float, float]

_GAUSS = (
    (-0.9602898564975363, 0.1012285362903763),
    (-0.7966664774136267, 0.2223810344533745),
    (-0.5255324099163290, 0.3137066458778873),
    (-0.1834346424956498, 0.3626837833783620),
    (0.1834346424956498, 0.3626837833783620),
    (0.5255324099163290, 0.3137066458778873),
    (0.7966664774136267, 0.2223810344533745),
    (0.9602898564975363, 0.1012285362903763),
)
"""Nodes and weights of the eight-point Gauss-Legendre rule on -1 to 1."""

PANELS, MOST_PANELS = 6, 24
"""Panels of eight points along a straight stretch, and about how many along a whole group."""

ROUND = 72
"""Points round a circle: equal spacing is exact for the squares that line properties take."""


@dataclass(frozen=True, slots=True)
class Place:
    """A point of the weld, with the way the weld runs there.

    Attributes:
        x: Right of the origin [m].
        y: Above the origin [m].
        along_x: Unit vector along the weld.
        along_y: The same.
        length_m: Length of weld it stands for; 0 at an end [m].
    """

    x: float
    y: float
    along_x: float
    along_y: float
    length_m: float


@dataclass(frozen=True)
class WeldGroup:
    """A group of welds of one leg.

    Attributes:
        name: Its shape, a key of ``SHAPES``, or ``polyline``.
        stretches: Straight stretches, each from one point to another [m].
        radius_m: Radius of a weld all round a circle about (radius, radius), or 0 [m].
    """

    name: str
    stretches: tuple[tuple[XY, XY], ...]
    radius_m: float = 0.0

    @cached_property
    def samples(self) -> tuple[Place, ...]:
        """Points that stand for the whole length, for sums along it."""
        if self.radius_m:
            share = 2 * pi * self.radius_m / ROUND
            return tuple(self._round(2 * pi * i / ROUND, share) for i in range(ROUND))
        panels = min(PANELS, max(1, MOST_PANELS // len(self.stretches)))
        return tuple(place for stretch in self.stretches for place in _along(*stretch, panels))

    @cached_property
    def ends(self) -> tuple[Place, ...]:
        """Where force per length can be greatest: ends of the stretches, or all round."""
        if self.radius_m:
            return tuple(self._round(2 * pi * i / ROUND, 0.0) for i in range(ROUND))
        return tuple(end for stretch in self.stretches for end in _ends(*stretch))

    @cached_property
    def outline(self) -> tuple[float, float, float, float]:
        """Left, bottom, right, top [m]."""
        if self.radius_m:
            return 0.0, 0.0, 2 * self.radius_m, 2 * self.radius_m
        xs = [x for stretch in self.stretches for x, _ in stretch]
        ys = [y for stretch in self.stretches for _, y in stretch]
        return min(xs), min(ys), max(xs), max(ys)

    @cached_property
    def length_m(self) -> float:
        """Length of weld [m]."""
        if self.radius_m:
            return 2 * pi * self.radius_m
        return sum(hypot(x1 - x0, y1 - y0) for (x0, y0), (x1, y1) in self.stretches)

    @cached_property
    def shortest_m(self) -> float:
        """Length of the shortest weld in one piece; stretches that meet are one [m]."""
        apart = self.name in ("lines", "flats")
        return self.length_m / len(self.stretches) if apart else self.length_m

    @cached_property
    def free_tips(self) -> tuple[tuple[bool, bool], ...]:
        """For each stretch, whether its bead starts and stops with no other to meet."""
        return tuple(
            (self._is_free(start, at), self._is_free(end, at))
            for at, (start, end) in enumerate(self.stretches)
        )

    def _is_free(self, tip: XY, at: int) -> bool:
        return not any(_lies_on(tip, other) for j, other in enumerate(self.stretches) if j != at)

    @property
    def free_ends(self) -> int:
        """Ends where a bead starts or stops with no other to meet."""
        return sum(map(sum, self.free_tips))

    @cached_property
    def way(self) -> XY | None:
        """Unit vector all its lines run along, or None if they do not run one way."""
        if self.radius_m:
            return None
        ways = [_ends(*stretch)[0] for stretch in self.stretches]
        first = ways[0]
        crossed = max(
            abs(way.along_x * first.along_y - way.along_y * first.along_x) for way in ways
        )
        return (first.along_x, first.along_y) if crossed < 1e-9 else None

    def _round(self, angle: float, share: float) -> Place:
        r, c, s = self.radius_m, cos(angle), sin(angle)
        return Place(r + r * c, r + r * s, -s, c, share)


def _lies_on(point: XY, stretch: tuple[XY, XY]) -> bool:
    (x0, y0), (x1, y1) = stretch
    whole = hypot(x1 - x0, y1 - y0)
    way_round = hypot(point[0] - x0, point[1] - y0) + hypot(point[0] - x1, point[1] - y1)
    return way_round < whole * (1 + 1e-9) + 1e-9


def _ends(start: XY, end: XY) -> tuple[Place, Place]:
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy)
    return (
        Place(start[0], start[1], dx / length, dy / length, 0.0),
        Place(end[0], end[1], dx / length, dy / length, 0.0),
    )


def _along(start: XY, end: XY, panels: int) -> list[Place]:
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy)
    found: list[Place] = []
    for panel in range(panels):
        for node, weight in _GAUSS:
            at = (panel + (1 + node) / 2) / panels
            share = weight / 2 / panels * length
            found.append(
                Place(start[0] + at * dx, start[1] + at * dy, dx / length, dy / length, share)
            )
    return found


def _box(width: float, depth: float) -> tuple[XY, XY, XY, XY]:
    return (0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth)


def _line(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    return (((0.0, 0.0), (0.0, depth)),)


def _lines(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    a, b, c, d = _box(width, depth)
    return (a, d), (b, c)


def _flats(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    a, b, c, d = _box(width, depth)
    return (a, b), (d, c)


def _rectangle(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    a, b, c, d = _box(width, depth)
    return (a, b), (b, c), (c, d), (d, a)


def _c(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    a, b, c, d = _box(width, depth)
    return (b, a), (a, d), (d, c)


def _l(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    a, b, _, d = _box(width, depth)
    return (b, a), (a, d)


def _t(width: float, depth: float) -> tuple[tuple[XY, XY], ...]:
    return ((0.0, depth), (width, depth)), ((width / 2, 0.0), (width / 2, depth))


SHAPES: Mapping[str, Callable[[float, float], tuple[tuple[XY, XY], ...]]] = MappingProxyType(
    {
        "line": _line,
        "lines": _lines,
        "flats": _flats,
        "rectangle": _rectangle,
        "c": _c,
        "l": _l,
        "t": _t,
    }
)
"""Shapes of straight welds by name; ``circle`` and ``polyline`` come on top."""

_CHORDS = 12
"""Chords along each half circle of a slot as drawn."""


def slot_group(width_m: float, length_m: float) -> WeldGroup:
    """Return the edge of an upright slot with half circles at its ends.

    Args:
        width_m: Above zero [m].
        length_m: End to end, over the width [m].

    Raises:
        OutOfRangeError: If the slot is not longer than wide, or a size not above zero.
    """
    require_positive(width_m=width_m, length_m=length_m)
    if not length_m > width_m:
        raise OutOfRangeError(f"length_m = {length_m} must be over width_m = {width_m}")
    r = width_m / 2
    turns = [pi * step / _CHORDS for step in range(_CHORDS + 1)]
    top = [(r + r * cos(turn), length_m - r + r * sin(turn)) for turn in turns]
    bottom = [(r - r * cos(turn), r - r * sin(turn)) for turn in turns]
    points = [*top, *bottom, top[0]]
    return WeldGroup("slot", tuple(pairwise(points)))


MOST_POINTS = 24
"""Points one's own polyline may have."""


def shaped_group(name: str, width_m: float, depth_m: float) -> WeldGroup:
    """Return a weld group of a shape.

    ``line`` stands upright; ``lines`` are two uprights, ``flats`` two level ones; ``c`` opens to
    the right; ``l`` is its left and bottom; ``t`` hangs from its top.

    Args:
        name: A key of ``SHAPES``, or ``circle``, whose diameter is the depth [-].
        width_m: Left to right, above zero; a line has none [m].
        depth_m: Bottom to top, above zero [m].

    Raises:
        OutOfRangeError: If a size is not above zero or the name is none of them.
    """
    require_positive(width_m=width_m, depth_m=depth_m)
    if name == "circle":
        return WeldGroup(name, (), depth_m / 2)
    if name not in SHAPES:
        raise OutOfRangeError(f"name = {name} must be circle or one of {', '.join(SHAPES)}")
    return WeldGroup(name, SHAPES[name](width_m, depth_m))


def polyline_group(points_m: tuple[XY, ...]) -> WeldGroup:
    """Return a weld that runs from point to point.

    Args:
        points_m: Two to ``MOST_POINTS`` points, no two in a row the same [m].

    Raises:
        OutOfRangeError: If there are too few or too many points, or one is given twice in a row.
    """
    if not 2 <= len(points_m) <= MOST_POINTS:
        raise OutOfRangeError(f"points_m has {len(points_m)} points; it must have 2 to 24")
    if any(hypot(b[0] - a[0], b[1] - a[1]) < 1e-6 for a, b in pairwise(points_m)):
        raise OutOfRangeError("points_m gives a point twice in a row")
    return WeldGroup("polyline", tuple(pairwise(points_m)))
