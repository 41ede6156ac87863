"""The plane of wire feed and volts on paper: regions, window, set point, ticks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil, floor, log10

from beadwright import units
from beadwright.setting.window_map import FeedVolts, WindowMap
from beadwright.units import System

WIDTH, HEIGHT = 360.0, 200.0
LEFT, RIGHT, TOP, BOTTOM = 34.0, 10.0, 10.0, 24.0
"""The paper and its margins [px]."""

LEAST_LABEL, CHARACTER, COLUMNS = 16.0, 6.5, 12
"""A region lower than this, or narrower than its name, gets none; columns tried [px, px, -]."""

XY = tuple[float, float]

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
    soft: tuple[str, ...] = ()
    caption: tuple[str, ...] = ()


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


def _span(outline: Sequence[XY], x: float) -> tuple[float, float] | None:
    """Top and bottom of an outline on an upright line, or None if the line misses it."""
    crossed: list[float] = []
    for (x0, y0), (x1, y1) in zip(outline, (*outline[1:], outline[0]), strict=True):
        if min(x0, x1) <= x <= max(x0, x1) and x0 != x1:
            crossed.append(y0 + (y1 - y0) * (x - x0) / (x1 - x0))
    return (min(crossed), max(crossed)) if len(crossed) > 1 else None


def _place(name: str, outline: Sequence[XY], above: Sequence[Sequence[XY]]) -> XY | None:
    """Where a region's name has room that no region lying on top takes; None if nowhere."""
    columns = [LEFT + (WIDTH - LEFT - RIGHT) * step / COLUMNS for step in range(1, COLUMNS)]
    free: list[tuple[float, float]] = []
    for x in columns:
        span = _span(outline, x)
        covered = any(_span(other, x) for other in above)
        if span is not None and not covered and span[1] - span[0] >= LEAST_LABEL:
            free.append((x, (span[0] + span[1]) / 2))
    if not free or free[-1][0] - free[0][0] < CHARACTER * len(name):
        return None
    return free[len(free) // 2]


def _caption(drawn: WindowMap) -> Iterator[str]:
    if drawn.window:
        yield "Outlined: every limit holds there."
    if drawn.point is not None:
        yield "Dot: your set point."
    if drawn.soft:
        yield "Hatched: one mode gives way to the next, good to 1 V."
    if any(edge.key == "transition" for edge in drawn.soft):
        yield "Where spray starts is good to 20%."
    if drawn.refused:
        yield f"No spray here: {drawn.refused}."
    if drawn.pulsed:
        yield "Pulsed: the feed sets the mean current only; the machine makes its own volts."


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

    outlines = [tuple(map(at, region.outline)) for region in drawn.regions]
    regions: list[RegionDrawing] = []
    for layer, region in enumerate(drawn.regions):
        name = NAMES[region.transfer]
        # Short circuit lies under nothing; spray lies on globular.
        above = outlines[layer + 1 :] if region.transfer == "globular" else ()
        place = _place(name, outlines[layer], above)
        x, y = place or (0.0, 0.0)
        regions.append(
            RegionDrawing(region.transfer, points(region.outline), name if place else "", x, y + 5)
        )
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
        tuple(points(edge.outline) for edge in drawn.soft),
        tuple(_caption(drawn)),
    )
