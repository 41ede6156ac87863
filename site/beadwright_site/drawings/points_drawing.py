"""Published points drawn against the lines that stand for them: a scatter to scale, with its band.

Kinds of points differ by shape, inside and outside the band by fill, so that neither needs colour.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from beadwright_site.drawings.curve_drawing import Tick
from beadwright_site.drawings.map_drawing import nice_step

WIDTH, HEIGHT = 344.0, 250.0
LEFT, TOP, RIGHT, BOTTOM = 44.0, 26.0, 332.0, 212.0

Shape = Literal["circle", "square", "triangle", "cross"]

PATHS: dict[Shape, str] = {
    "circle": "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z",
    "square": "M-4-4H4V4H-4z",
    "triangle": "M0-5L5 4H-5z",
    "cross": "M-4-4L4 4M4-4L-4 4",
}
"""Each shape about its middle, as an SVG path."""

Place = tuple[float, float]

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

    line: Sequence[Place]
    low: Sequence[Place] = ()
    high: Sequence[Place] = ()
    dashed: bool = False
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
    dashed: bool
    name: str
    x: float
    y: float


@dataclass(frozen=True, slots=True)
class Plot:
    """A drawn plot.

    Attributes:
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


def _ticks(axis: Axis) -> tuple[float, float, tuple[float, ...]]:
    """Ends of an axis on round numbers, and the round numbers between."""
    step = nice_step(axis.most - axis.least, 5)
    first = int(axis.least / step)
    last = -int(-axis.most / step // 1)
    values = tuple(step * at for at in range(first, last + 1))
    return values[0], values[-1], values


def _scale(least: float, most: float, start: float, end: float) -> Callable[[float], float]:
    return lambda value: round(start + (end - start) * (value - least) / (most - least), 1)


def _path(places: Iterable[Place]) -> str:
    return " ".join(f"{x},{y}" for x, y in places)


def legend_of(entries: Sequence[tuple[Shape, bool, str]]) -> tuple[Entry, ...]:
    """Return legend lines: shape, filled, what it is."""
    return tuple(Entry(PATHS[shape], filled, text) for shape, filled, text in entries)


def _apart(lines: Sequence[DrawnLine]) -> tuple[DrawnLine, ...]:
    """Names at the ends of lines, moved down until none lies on the one above."""
    above = TOP - APART
    moved: dict[int, DrawnLine] = {}
    for at, found in sorted(enumerate(lines), key=lambda pair: pair[1].y):
        y = max(found.y, above + APART) if found.name else found.y
        above = y if found.name else above
        moved[at] = replace(found, y=round(y, 1))
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
    x_least, x_most, x_values = _ticks(x)
    y_least, y_most, y_values = _ticks(y)
    across = _scale(x_least, x_most, LEFT, RIGHT)
    up = _scale(y_least, y_most, BOTTOM, TOP)

    def placed(places: Iterable[Place]) -> list[Place]:
        return [(across(a), up(b)) for a, b in places]

    def line(band: Band) -> DrawnLine:
        path = placed(band.line)
        outline = [*placed(band.high), *reversed(placed(band.low))]
        return DrawnLine(_path(path), _path(outline), band.dashed, band.name, *path[-1])

    return Plot(
        key,
        title,
        f"{title}: {y.name} against {x.name}, {len(points)} points. {words}",
        x.name,
        y.name,
        tuple(Tick(across(value), f"{value:g}") for value in x_values),
        tuple(Tick(up(value), f"{value:g}") for value in y_values),
        _apart([line(band) for band in bands]),
        tuple(DrawnMark(across(p.x), up(p.y), PATHS[p.shape], p.inside) for p in points),
        legend_of(legend),
        words,
        sources,
    )
