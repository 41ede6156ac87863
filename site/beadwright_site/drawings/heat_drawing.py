"""Temperature against time behind the weld, on paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.heating.cooling import COOL_C, HOT_C
from beadwright.heating.cooling_curve import FROM_K, Curve
from beadwright.measures import System
from beadwright.temperatures import from_celsius, show_temperature
from beadwright_site.drawings.axes import Scale, Tick, nice_step, round_values
from beadwright_site.drawings.paper import Field, points_text, px

WIDTH, HEIGHT = 344, 236
FIELD = Field(10, 10, 336, 206)
"""The paper, and the field the curves stand in [px]."""

COLDEST_K = from_celsius(0)
STEPS = 5
"""The most parts the axis of time is cut in."""


@dataclass(frozen=True, slots=True)
class CurveLine:
    """A curve as SVG points, with its class: rules, other or cold."""

    kind: str
    points: str


@dataclass(frozen=True, slots=True)
class HeatDrawing:
    """The curves on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        field: Where the curves stand.
        lines: The curves, the ruling one last so that it lies on top.
        levels: The two temperatures of the cooling time.
        start: Where the plate starts from.
        left: Where the ruling curve meets the higher level [px].
        right: Where it meets the lower one [px].
        ticks: Along the axis of time.
        spoken: The picture in words.
    """

    width: float
    height: float
    field: Field
    lines: tuple[CurveLine, ...]
    levels: tuple[Tick, Tick]
    start: Tick
    left: float
    right: float
    ticks: tuple[Tick, ...]
    spoken: str


def draw_heat(curves: Sequence[Curve], system: System) -> HeatDrawing:
    """Return the picture of the curves.

    Args:
        curves: The curves; one of them rules.
        system: Whose degrees to write.
    """
    ruling = next(curve for curve in curves if curve.rules)
    last = ruling.points[-1][0]
    across = Scale(0.0, last, FIELD.left, FIELD.right)
    up = Scale(COLDEST_K, FROM_K, FIELD.bottom, FIELD.top)

    def line(curve: Curve) -> CurveLine:
        kind = "rules" if curve.rules else "cold" if curve.regime == ruling.regime else "other"
        places = ((across(time), up(kelvin)) for time, kelvin in curve.points)
        return CurveLine(kind, points_text(places))

    def level(kelvin: float) -> Tick:
        return Tick(px(up(kelvin)), show_temperature(kelvin, system))

    high, low = (from_celsius(c) for c in (HOT_C, COOL_C))
    upper, lower, start = level(high), level(low), level(ruling.start_k)
    hot, cool = time_at(ruling, high), time_at(ruling, low)
    return HeatDrawing(
        WIDTH,
        HEIGHT,
        FIELD,
        tuple(map(line, sorted(curves, key=lambda curve: curve.rules))),
        (upper, lower),
        start,
        px(across(hot)),
        px(across(cool)),
        tuple(
            Tick(px(across(at)), f"{at:g}")
            for at in round_values(0.0, last, nice_step(last, STEPS))
        ),
        f"Temperature on the middle of the weld against time: {upper.text} after {hot:.1f} s, "
        f"{lower.text} after {cool:.1f} s, from a plate at {start.text}",
    )


def time_at(curve: Curve, kelvin: float) -> float:
    """Return the time at which a falling curve meets a temperature [s].

    Args:
        curve: The curve; it passes the temperature.
        kelvin: The temperature [K].
    """
    before = curve.points[0]
    for point in curve.points:
        if point[1] <= kelvin:
            fall = before[1] - point[1]
            share = (before[1] - kelvin) / fall if fall else 0.0
            return before[0] + share * (point[0] - before[0])
        before = point
    return before[0]
