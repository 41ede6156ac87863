"""What pictures are marked with: labels, arrows, rings, crosses, lines of dimensions."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import atan2, cos, pi, sin
from typing import Literal

from beadwright_site.drawings.paper import XY, points_text, px

TICK = 3.0
"""Half a tick at the end of a dimension line [px]."""

ARROW_HALF = 0.42
"""Half the opening of an arrow's head [rad]."""


@dataclass(frozen=True, slots=True)
class Label:
    """A text on the paper: where it is anchored [px], by which end, what it says."""

    x: float
    y: float
    anchor: str
    text: str


@dataclass(frozen=True, slots=True)
class Arrow:
    """An arrow: its line as SVG path data, its head as SVG points."""

    line: str
    head: str


@dataclass(frozen=True, slots=True)
class Ring:
    """An arrow seen along itself: out of the paper, or into it.

    Attributes:
        x: Middle [px].
        y: Middle [px].
        r: Radius [px].
        pulls: True if it comes out of the paper.
        cross: The cross of one that goes into it, as SVG path data.
    """

    x: float
    y: float
    r: float
    pulls: bool
    cross: str


def label(x: float, y: float, anchor: str, text: str) -> Label:
    """Return a label, placed as exactly as it is written."""
    return Label(px(x), px(y), anchor, text)


def arrow(tail: XY, point: XY, head: float) -> Arrow:
    """Return an arrow.

    Args:
        tail: Where it comes from [px].
        point: Where it points [px].
        head: How long its head is [px].
    """
    (x0, y0), (x1, y1) = tail, point
    angle = atan2(y1 - y0, x1 - x0)
    back = 0.8 * head  # the line ends inside the head
    end = x1 - back * cos(angle), y1 - back * sin(angle)
    return Arrow(
        f"M{x0:.1f} {y0:.1f}L{end[0]:.1f} {end[1]:.1f}",
        wedge(point, head, (angle + pi + ARROW_HALF, angle + pi - ARROW_HALF)),
    )


def wedge(point: XY, long: float, ways: Iterable[float]) -> str:
    """Return a slim head as SVG points.

    Args:
        point: Its point [px].
        long: Length of its edges [px].
        ways: The way of each edge from the point, counted clockwise from the right [rad].
    """
    x, y = point
    return points_text([point, *((x + long * cos(way), y + long * sin(way)) for way in ways)])


def cross(x: float, y: float, r: float) -> str:
    """Return a lying cross about a point, as SVG path data [px]."""
    wide = f"{2 * r:.1f}"
    return f"M{x - r:.1f} {y - r:.1f}l{wide} {wide}M{x - r:.1f} {y + r:.1f}l{wide} -{wide}"


def ring(place: XY, r: float, *, pulls: bool) -> Ring:
    """Return a ring about a place [px]."""
    return Ring(px(place[0]), px(place[1]), px(r), pulls, cross(*place, 0.7 * r))


def dimension_line(start: XY, end: XY, ticks: Literal["slanted", "square"] = "slanted") -> str:
    """Return a dimension line with its ticks, as SVG path data.

    Args:
        start: One end [px].
        end: The other, straight above, below or beside it [px].
        ticks: Slanted as on a shop print, or square to the line.
    """
    (x0, y0), (x1, y1) = start, end
    upright = x0 == x1
    line = f"M{x0:.1f} {y0:.1f}{f'V{y1:.1f}' if upright else f'H{x1:.1f}'}"
    if ticks == "slanted":
        slant = f"l{2 * TICK:.1f} {-2 * TICK:.1f}"
        return line + "".join(f"M{x - TICK:.1f} {y + TICK:.1f}{slant}" for x, y in (start, end))
    if upright:
        return line + "".join(f"M{x0 - TICK:.1f} {y:.1f}h{2 * TICK:g}" for y in (y0, y1))
    return line + "".join(f"M{x:.1f} {y0 - TICK:.1f}v{2 * TICK:g}" for x in (x0, x1))
