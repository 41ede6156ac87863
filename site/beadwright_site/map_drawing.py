"""The plane of wire feed and volts on paper: regions, window, set point, ticks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil, floor, log10

from beadwright import units
from beadwright.units import System
from beadwright.window_map import FeedVolts, WindowMap

WIDTH, HEIGHT = 360.0, 200.0
LEFT, RIGHT, TOP, BOTTOM = 34.0, 10.0, 10.0, 24.0
"""The paper and its margins [px]."""

LEAST_LABEL = 16.0
"""A region lower than this gets no name in it [px]."""

NAMES = {"short": "short circuit", "globular": "globular", "spray": "spray", "pulse": "pulse"}


@dataclass(frozen=True, slots=True)
class Tick:
    """A mark on an axis: where [px], and the number beside it."""

    at: float
    text: str


@dataclass(frozen=True, slots=True)
class RegionDrawing:
    """A transfer region: outline as SVG points, and its name where there is room for one."""

    transfer: str
    points: str
    name: str
    x: float
    y: float


@dataclass(frozen=True, slots=True)
class MapDrawing:
    """The plane on paper [px]."""

    width: float
    height: float
    frame: tuple[float, float, float, float]
    regions: tuple[RegionDrawing, ...]
    window: str
    point: tuple[float, float] | None
    feed_ticks: tuple[Tick, ...]
    volts_ticks: tuple[Tick, ...]
    feed_unit: str


def nice_step(span: float, about: int) -> float:
    """Return a step of 1, 2 or 5 times a power of ten that cuts a span in about so many parts."""
    rough = span / about
    power = 10.0 ** floor(log10(rough))
    return next(power * step for step in (1, 2, 5, 10) if power * step >= rough)


def ticks(low: float, high: float, about: int) -> Iterator[float]:
    """Yield round numbers from low to high."""
    step = nice_step(high - low, about)
    for count in range(ceil(low / step), floor(high / step) + 1):
        yield count * step


def _middle(points: Sequence[tuple[float, float]]) -> tuple[float, float, float]:
    """Where the region is tallest, away from the sides: x, middle y, height."""
    found = (0.0, 0.0, 0.0)
    xs = sorted({round(x, 3) for x, _ in points})
    for x in xs[len(xs) // 4 : len(xs) - len(xs) // 4]:
        ys = [y for px, y in points if abs(px - x) < 0.01]
        if max(ys) - min(ys) > found[2] + 0.5:
            found = (x, (max(ys) + min(ys)) / 2, max(ys) - min(ys))
    return found


def draw_map(drawn: WindowMap, system: System) -> MapDrawing:
    """Return the plane fitted to the paper.

    Args:
        drawn: The plane in the core's units.
        system: Whose units the ticks are in.
    """
    (feed0, feed1), (volts0, volts1) = drawn.feeds, drawn.volts
    across = (WIDTH - LEFT - RIGHT) / (feed1 - feed0)
    up = (HEIGHT - TOP - BOTTOM) / (volts1 - volts0)

    def at(point: FeedVolts) -> tuple[float, float]:
        return LEFT + (point[0] - feed0) * across, HEIGHT - BOTTOM - (point[1] - volts0) * up

    def points(outline: Sequence[FeedVolts]) -> str:
        return " ".join(f"{x:.1f},{y:.1f}" for x, y in map(at, outline))

    regions: list[RegionDrawing] = []
    for region in drawn.regions:
        x, y, height = _middle([at(point) for point in region.outline])
        name = NAMES[region.transfer] if height >= LEAST_LABEL else ""
        regions.append(RegionDrawing(region.transfer, points(region.outline), name, x, y + 5))
    factor = units.convert(1.0, "wire_feed", system)
    places = 0 if feed1 * factor > 30 else 1
    return MapDrawing(
        WIDTH,
        HEIGHT,
        (LEFT, TOP, WIDTH - RIGHT, HEIGHT - BOTTOM),
        tuple(regions),
        points(drawn.window),
        at(drawn.point) if drawn.point is not None else None,
        tuple(
            Tick(at((feed / factor, volts0))[0], f"{feed:.{places}f}")
            for feed in ticks(feed0 * factor, feed1 * factor, 5)
        ),
        tuple(Tick(at((feed0, volts))[1], f"{volts:.0f}") for volts in ticks(volts0, volts1, 5)),
        units.symbol("wire_feed", system),
    )
