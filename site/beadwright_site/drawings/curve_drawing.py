"""Pictures of money: two costs against parts a year, and the draws of the chance."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor, log10

from beadwright.money.chance import ChanceState
from beadwright.money.cost_page import Comparison

WIDTH, HEIGHT = 344.0, 232.0
LEFT, TOP, RIGHT, BOTTOM = 54.0, 42.0, 326.0, 198.0
APART = 17.0
"""Least distance of two texts, one above the other."""

CHANCE_HEIGHT = 112.0


@dataclass(frozen=True, slots=True)
class Tick:
    """A number on an axis."""

    at: float
    text: str


@dataclass(frozen=True, slots=True)
class Line:
    """One way's cost: its line, its band, where its letter stands."""

    line: str
    band: str
    y: float


@dataclass(frozen=True, slots=True)
class CurveDrawing:
    """Both costs against parts a year.

    Attributes:
        now: The way now.
        other: The other way.
        own: The shop's own volume, as a place on the axis.
        own_text: The same in words.
        own_anchor: Which end of the text stands there.
        own_left: Left end of what the volume may be off by.
        own_width: Width of that.
        own_points: The shop's own point on each line, as x, y.
        even: Where both cost the same, as x, y, or None.
        even_text: The same in words.
        even_anchor: Which end of the text stands there.
        parts_ticks: Along the axis below.
        money_ticks: Along the axis on the left.
    """

    now: Line
    other: Line
    own: float
    own_text: str
    own_anchor: str
    own_left: float
    own_width: float
    own_points: tuple[tuple[float, float], ...]
    even: tuple[float, float] | None
    even_text: str
    even_anchor: str
    parts_ticks: tuple[Tick, ...]
    money_ticks: tuple[Tick, ...]


def short_number(value: float) -> str:
    """Return a number short enough for an axis: 950, 12k, 3.5M."""
    for size, letter in ((1e9, "G"), (1e6, "M"), (1e4, "k")):
        if abs(value) >= size:
            return f"{value / (1e3 if letter == 'k' else size):.3g}{letter}"
    return f"{value:,.0f}" if value >= 10 or value == int(value) else f"{value:.2g}"


def _step(most: float, steps: int) -> float:
    """A round step that leaves about so many steps."""
    rough = most / steps
    ten = 10.0 ** floor(log10(rough))
    return next(ten * step for step in (1, 2, 2.5, 5, 10) if ten * step >= rough * (1 - 1e-9))


def draw_curve(found: Comparison, volume_share: float, sign: str) -> CurveDrawing:
    """Return the picture of a comparison.

    Args:
        found: The comparison.
        volume_share: How far the parts a year may be off [-].
        sign: Currency sign.
    """
    points, case = found.curve, found.case
    last = points[-1].parts
    most = max(max(p.now[2], p.other[2]) for p in points) or 1.0

    def x(parts: float) -> float:
        return round(LEFT + (RIGHT - LEFT) * parts / last, 1)

    def y(amount: float) -> float:
        return round(BOTTOM - (BOTTOM - TOP) * amount / most, 1)

    def line(which: Sequence[tuple[float, float, float]]) -> Line:
        places = [x(point.parts) for point in points]
        path = " ".join(f"{at},{y(ends[1])}" for at, ends in zip(places, which, strict=True))
        upper = [f"{at},{y(ends[2])}" for at, ends in zip(places, which, strict=True)]
        lower = [f"{at},{y(ends[0])}" for at, ends in zip(places, which, strict=True)]
        return Line(path, " ".join([*upper, *reversed(lower)]), y(which[-1][1]))

    now, other = line([p.now for p in points]), line([p.other for p in points])
    now, other = _part(now, other)
    own = x(case.parts)
    left, right = (x(min(last, case.parts * (1 + s * volume_share))) for s in (-1, 1))
    slope = points[-1]
    at_own = tuple(
        (own, y(start[1] + (end[1] - start[1]) * case.parts / last))
        for start, end in ((points[0].now, slope.now), (points[0].other, slope.other))
    )
    even = found.break_even.parts_a_year
    seen = even is not None and even <= last
    cost = points[0].now[1] + (slope.now[1] - points[0].now[1]) * (even or 0.0) / last
    meet = (x(even or 0.0), y(cost)) if seen else None
    money_step = _step(most, 4)
    return CurveDrawing(
        now,
        other,
        own,
        f"you: {case.parts:,.0f}",
        _anchor(own),
        left,
        round(right - left, 1),
        at_own,
        meet,
        f"even at {even:,.0f}" if even is not None and seen else "",
        _anchor(meet[0]) if meet else "middle",
        tuple(Tick(x(last * s), short_number(last * s)) for s in (0, 0.5, 1)),
        tuple(
            Tick(y(money_step * i), f"{sign}{short_number(money_step * i)}")
            for i in range(int(most / money_step) + 1)
        ),
    )


def _anchor(at: float) -> str:
    return "start" if at < LEFT + 50 else "end" if at > RIGHT - 50 else "middle"


def _part(one: Line, two: Line) -> tuple[Line, Line]:
    """Letters at the ends of the lines, never one on the other."""
    short = APART - abs(one.y - two.y)
    if short <= 0:
        return one, two
    up = -short / 2 if one.y <= two.y else short / 2
    return Line(one.line, one.band, one.y + up), Line(two.line, two.band, two.y - up)


@dataclass(frozen=True, slots=True)
class Column:
    """One column of the draws."""

    x: float
    y: float
    width: float
    height: float
    pays: bool


@dataclass(frozen=True, slots=True)
class ChanceDrawing:
    """The draws of the chance.

    Attributes:
        columns: The columns.
        zero: Where nothing is saved, or None if outside.
        least: Text at the left end.
        most: Text at the right end.
    """

    columns: tuple[Column, ...]
    zero: float | None
    least: str
    most: str


def draw_chance(state: ChanceState, sign: str) -> ChanceDrawing:
    """Return the picture of a run of draws.

    Args:
        state: Where the run stands.
        sign: Currency sign.
    """
    bars = state.bars
    least, most = bars[0][0], bars[-1][1]
    wide, tall = (most - least) or 1.0, max(count for _, _, count in bars)
    room, high = WIDTH - 8, CHANCE_HEIGHT - 26

    def x(value: float) -> float:
        return 4 + room * (value - least) / wide if most > least else WIDTH / 2

    columns = tuple(
        Column(
            round(x(left), 1),
            round(high - high * count / tall + 4, 1),
            round(max(x(right) - x(left) - 1, 2.0), 1),
            round(high * count / tall, 1),
            (left + right) / 2 > 0,
        )
        for left, right, count in bars
    )
    zero = round(x(0.0), 1) if least <= 0 <= most else None

    def text(value: float) -> str:
        return f"{'-' if value < 0 else ''}{sign}{short_number(abs(round(value)))}"

    return ChanceDrawing(columns, zero, text(least), text(most))
