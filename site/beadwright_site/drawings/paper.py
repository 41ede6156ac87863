"""The paper of a picture: the room on it, and one scale both ways.

What is drawn counts y upward, paper counts it downward.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

XY = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Box:
    """An upright rectangle around what is drawn, in its own lengths."""

    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """From left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From bottom to top."""
        return self.top - self.bottom

    @property
    def middle(self) -> XY:
        """Its middle."""
        return (self.left + self.right) / 2, (self.bottom + self.top) / 2


@dataclass(frozen=True, slots=True)
class Field:
    """A rectangle on the paper that something is fitted into [px]."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def middle(self) -> XY:
        """Its middle [px]."""
        return (self.left + self.right) / 2, (self.top + self.bottom) / 2

    def largest_scale(self, box: Box) -> float:
        """Return the scale at which a box just fits in.

        Args:
            box: What is to fit; neither width nor height is zero.
        """
        return min((self.right - self.left) / box.width, (self.bottom - self.top) / box.height)


@dataclass(frozen=True, slots=True)
class Paper:
    """Where a point of what is drawn lies on the paper.

    Attributes:
        scale: Pixels a length [px per length].
        x0: Where the drawn thing's origin lies [px].
        y0: The same, downward [px].
        turns: Quarter turns clockwise it is drawn with.
    """

    scale: float
    x0: float
    y0: float
    turns: int = 0

    def at(self, point: XY) -> XY:
        """Return the place of a point [px]."""
        x, y = turned(point, self.turns)
        return self.x0 + x * self.scale, self.y0 - y * self.scale

    def points(self, polygon: Iterable[XY], places: int = 1) -> str:
        """Return a polygon as SVG points, with so many decimal places."""
        return points_text(map(self.at, polygon), places)


def turned(point: XY, turns: int) -> XY:
    """Return a point turned about the origin by quarter turns clockwise."""
    x, y = point
    for _ in range(turns):
        x, y = y, -x
    return x, y


def box_of(points: Iterable[XY]) -> Box:
    """Return the box around points."""
    xs, ys = zip(*points, strict=True)
    return Box(min(xs), min(ys), max(xs), max(ys))


def fit(middle: XY, field: Field, scale: float, turns: int = 0) -> Paper:
    """Return the paper that puts a point in the middle of a field.

    Args:
        middle: The point, as already turned.
        field: The field [px].
        scale: Pixels a length.
        turns: Quarter turns clockwise.
    """
    x, y = field.middle
    return Paper(scale, x - scale * middle[0], y + scale * middle[1], turns)


def points_text(places: Iterable[XY], digits: int = 1) -> str:
    """Return places on the paper as SVG points.

    Args:
        places: The places [px].
        digits: Decimal places.
    """
    return " ".join(f"{x:.{digits}f},{y:.{digits}f}" for x, y in places)


def px(value: float) -> float:
    """Return a place on the paper as exact as it is written: a tenth of a pixel [px]."""
    return round(value, 1)
