"""Published points drawn against the lines that stand for them: a scatter to scale, with its band.

Kinds of points differ by shape, inside and outside the band by fill, so that neither needs color.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import ceil, floor
from typing import Literal

from beadwright_site.drawings.axes import Scale, Tick, nice_step, round_values
from beadwright_site.drawings.paper import XY, Field, points_text, px

WIDTH, HEIGHT = 344, 250
FIELD = Field(44, 26, 332, 212)
"""The paper, and the field the points stand in [px]."""

STEPS = 5
"""The most parts an axis is cut in, before its ends go out to round numbers."""

Shape = Literal["circle", "square", "triangle", "cross"]

PATHS: dict[Shape, str] = {
    "circle": "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z",
    "square": "M-4-4H4V4H-4z",
    "triangle": "M0-5L5 4H-5z",
    "cross": "M-4-4L4 4M4-4L-4 4",
}
"""Each shape about its middle, as an SVG path."""

APART = 14.0
"""Least distance of two names of lines, one above the other."""


@dataclass(frozen=True, slots=True)
class Point:
    """A point to draw: where it stands, its shape, whether it is inside the band."""

    x: float
    y: float
    shape: Shape
    inside: bool = True


@dataclass(frozen=True, slots=True)
class Band:
    """A line with its band, from left to right: places of the line, its low and its high side."""

    line: Sequence[XY]
    low: Sequence[XY] = ()
    high: Sequence[XY] = ()
    name: str = ""


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the legend: a shape as path, filled or not, and what it is."""

    path: str
    filled: bool
    text: str


@dataclass(frozen=True, slots=True)
class DrawnMark:
    """A point on the paper."""

    x: float
    y: float
    path: str
    inside: bool


@dataclass(frozen=True, slots=True)
class DrawnLine:
    """A line on the paper: its path, the outline of its band, its name at the right end."""

    path: str
    band: str
    name: str
    x: float
    y: float


@dataclass(frozen=True, slots=True)
class Plot:
    """A drawn plot.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        field: Where the points stand.
        key: Id on the page.
        title: What is drawn.
        spoken: The picture in words.
        x_name: Name and unit below.
        y_name: Name and unit on top of the left axis.
        x_ticks: Numbers below.
        y_ticks: Numbers on the left.
        lines: The lines with their bands.
        marks: The points.
        legend: What the shapes mean.
        words: How many points stand inside, and what else to know.
        sources: Source ids.
    """

    width: float
    height: float
    field: Field
    key: str
    title: str
    spoken: str
    x_name: str
    y_name: str
    x_ticks: tuple[Tick, ...]
    y_ticks: tuple[Tick, ...]
    lines: tuple[DrawnLine, ...]
    marks: tuple[DrawnMark, ...]
    legend: tuple[Entry, ...]
    words: str
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Axis:
    """An axis: its name and unit, and the ends that must be on it."""

    name: str
    least: float
    most: float


def _scale(axis: Axis, start: float, end: float) -> tuple[Scale, tuple[float, ...]]:
    """An axis with its ends on round numbers, and all round numbers on it."""
    step = nice_step(axis.most - axis.least, STEPS)
    least, most = step * floor(axis.least / step), step * ceil(axis.most / step)
    return Scale(least, most, start, end), round_values(least, most, step)


def _apart(lines: Sequence[DrawnLine]) -> tuple[DrawnLine, ...]:
    """Names at the ends of lines, moved down until none lies on the one above."""
    above = FIELD.top - APART
    moved: dict[int, DrawnLine] = {}
    for at, found in sorted(enumerate(lines), key=lambda pair: pair[1].y):
        y = max(found.y, above + APART) if found.name else found.y
        above = y if found.name else above
        moved[at] = replace(found, y=px(y))
    return tuple(moved[at] for at in range(len(lines)))


def draw_points(
    key: str,
    title: str,
    x: Axis,
    y: Axis,
    points: Sequence[Point],
    bands: Sequence[Band],
    legend: Sequence[tuple[Shape, bool, str]],
    words: str,
    sources: tuple[str, ...],
) -> Plot:
    """Return a plot to scale.

    Args:
        key: Id on the page.
        title: What is drawn.
        x: The axis below.
        y: The axis on the left.
        points: The points.
        bands: The lines and bands they are held against.
        legend: Shape, filled, meaning.
        words: What to know.
        sources: Source ids.
    """
    across, x_values = _scale(x, FIELD.left, FIELD.right)
    up, y_values = _scale(y, FIELD.bottom, FIELD.top)

    def placed(places: Sequence[XY]) -> list[XY]:
        return [(across(a), up(b)) for a, b in places]

    def line(band: Band) -> DrawnLine:
        path = placed(band.line)
        outline = [*placed(band.high), *reversed(placed(band.low))]
        end = (px(value) for value in path[-1])
        return DrawnLine(points_text(path), points_text(outline), band.name, *end)

    return Plot(
        WIDTH,
        HEIGHT,
        FIELD,
        key,
        title,
        f"{title}: {y.name} against {x.name}, {len(points)} points. {words}",
        x.name,
        y.name,
        tuple(Tick(px(across(value)), f"{value:g}") for value in x_values),
        tuple(Tick(px(up(value)), f"{value:g}") for value in y_values),
        _apart([line(band) for band in bands]),
        tuple(DrawnMark(px(across(p.x)), px(up(p.y)), PATHS[p.shape], p.inside) for p in points),
        tuple(Entry(PATHS[shape], filled, text) for shape, filled, text in legend),
        words,
        sources,
    )
