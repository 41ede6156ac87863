"""The cost a year of two ways against parts a year, and where they cost the same."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from beadwright.money.cost_page import Comparison
from beadwright_site.drawings.axes import Scale, Tick, nice_step, round_values, short_number
from beadwright_site.drawings.paper import XY, Field, points_text, px

WIDTH, HEIGHT = 344, 232
FIELD = Field(54, 42, 326, 198)
"""The paper, and the field the lines stand in [px]."""

APART, NEAR_EDGE = 17.0, 50.0
"""Least distance of two letters, one above the other; a text whose place is nearer to the field's
edge runs inward from it [px]."""

MONEY_STEPS = (1, 2, 2.5, 5)
"""Round steps of an axis of money: quarters are round too."""


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
        width: Of the paper [px].
        height: Of the paper [px].
        field: Where the lines stand.
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

    width: float
    height: float
    field: Field
    now: Line
    other: Line
    own: float
    own_text: str
    own_anchor: str
    own_left: float
    own_width: float
    own_points: tuple[XY, ...]
    even: XY | None
    even_text: str
    even_anchor: str
    parts_ticks: tuple[Tick, ...]
    money_ticks: tuple[Tick, ...]


def draw_curve(found: Comparison, volume_share: float, sign: str) -> CurveDrawing:
    """Return the picture of a comparison.

    Args:
        found: The comparison.
        volume_share: How far the parts a year may be off [-].
        sign: Currency sign.
    """
    points, parts = found.curve, found.case.parts
    first, end = points[0], points[-1]
    most = max(max(p.now[2], p.other[2]) for p in points) or 1.0
    across = Scale(0.0, end.parts, FIELD.left, FIELD.right)
    up = Scale(0.0, most, FIELD.bottom, FIELD.top)

    def line(costs: Sequence[tuple[float, float, float]]) -> Line:
        xs = [across(point.parts) for point in points]
        low, middle, high = (
            [(x, up(cost[i])) for x, cost in zip(xs, costs, strict=True)] for i in range(3)
        )
        return Line(points_text(middle), points_text([*high, *reversed(low)]), px(middle[-1][1]))

    def between(start: float, last: float, share: float) -> float:
        return px(up(start + (last - start) * share))

    now, other = _apart(line([p.now for p in points]), line([p.other for p in points]))
    own = px(across(parts))
    left, right = (px(across(min(end.parts, parts * (1 + s * volume_share)))) for s in (-1, 1))
    meet, meet_text = None, ""
    even = found.break_even.parts_a_year
    if even is not None and even <= end.parts:
        meet = px(across(even)), between(first.now[1], end.now[1], even / end.parts)
        meet_text = f"even at {even:,.0f}"
    return CurveDrawing(
        WIDTH,
        HEIGHT,
        FIELD,
        now,
        other,
        own,
        f"you: {parts:,.0f}",
        _anchor(own),
        left,
        px(right - left),
        tuple(
            (own, between(start[1], last[1], parts / end.parts))
            for start, last in ((first.now, end.now), (first.other, end.other))
        ),
        meet,
        meet_text,
        _anchor(meet[0]) if meet else "middle",
        tuple(
            Tick(px(across(value)), short_number(value))
            for value in (0.0, end.parts / 2, end.parts)
        ),
        tuple(
            Tick(px(up(value)), f"{sign}{short_number(value)}")
            for value in round_values(0.0, most, nice_step(most, 4, MONEY_STEPS))
        ),
    )


def _anchor(at: float) -> str:
    if at < FIELD.left + NEAR_EDGE:
        return "start"
    return "end" if at > FIELD.right - NEAR_EDGE else "middle"


def _apart(one: Line, two: Line) -> tuple[Line, Line]:
    """Letters at the ends of the lines, never one on the other."""
    short = APART - abs(one.y - two.y)
    if short <= 0:
        return one, two
    up = -short / 2 if one.y <= two.y else short / 2
    return replace(one, y=one.y + up), replace(two, y=two.y - up)
