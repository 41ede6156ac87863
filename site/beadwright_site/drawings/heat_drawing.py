"""Temperature against time behind the weld, on paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor, log10

from beadwright.heating.cooling import COOL_C, HOT_C
from beadwright.heating.cooling_curve import FROM_K, Curve
from beadwright.heating.temperatures import from_celsius, show_temperature
from beadwright.measures import System

WIDTH, HEIGHT = 344.0, 236.0
LEFT, RIGHT, TOP, BOTTOM = 10.0, 336.0, 10.0, 206.0
"""The paper, and the field the curves stand in [px]."""

COLDEST_K = from_celsius(0)
STEPS = (1, 2, 5)


@dataclass(frozen=True, slots=True)
class Tick:
    """A mark on an axis: where [px], and the text beside it."""

    at: float
    text: str


@dataclass(frozen=True, slots=True)
class CurveLine:
    """A curve as SVG points, with its class: rules, other or cold."""

    kind: str
    points: str


@dataclass(frozen=True, slots=True)
class HeatDrawing:
    """The curves on paper.

    Attributes:
        lines: The curves, the ruling one last so that it lies on top.
        levels: The two temperatures of the cooling time.
        start: Where the plate starts from.
        left: Where the ruling curve meets the higher level [px].
        right: Where it meets the lower one [px].
        ticks: Along the axis of time.
        spoken: The picture in words.
    """

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
    high, low = (from_celsius(c) for c in (HOT_C, COOL_C))

    def x(time: float) -> float:
        return round(LEFT + (RIGHT - LEFT) * time / last, 1)

    def y(kelvin: float) -> float:
        return round(BOTTOM - (BOTTOM - TOP) * (kelvin - COLDEST_K) / (FROM_K - COLDEST_K), 1)

    def line(curve: Curve) -> CurveLine:
        kind = "rules" if curve.rules else "cold" if curve.regime == ruling.regime else "other"
        return CurveLine(kind, " ".join(f"{x(time)},{y(kelvin)}" for time, kelvin in curve.points))

    start = Tick(y(ruling.start_k), show_temperature(ruling.start_k, system))
    hot, cool = time_at(ruling, high), time_at(ruling, low)
    written = [show_temperature(kelvin, system) for kelvin in (high, low)]
    return HeatDrawing(
        tuple(map(line, sorted(curves, key=lambda curve: curve.rules))),
        (Tick(y(high), written[0]), Tick(y(low), written[1])),
        start,
        x(hot),
        x(cool),
        tuple(Tick(x(at), f"{at:g}") for at in _ticks(last)),
        f"Temperature on the middle of the weld against time: {written[0]} after {hot:.1f} s, "
        f"{written[1]} after {cool:.1f} s, from a plate at {start.text}",
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


def _ticks(last: float) -> tuple[float, ...]:
    rough = last / 5
    ten = 10.0 ** floor(log10(rough))
    step = next((ten * s for s in STEPS if ten * s >= rough * (1 - 1e-9)), ten * 10)
    return tuple(round(step * i, 10) for i in range(int(last / step) + 1))
