"""The plane of wire feed and volts on paper: regions, window, set point, ticks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from beadwright import units
from beadwright.phrases import say
from beadwright.setting.window_map import FeedVolts, WindowMap
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.drawings.axes import Scale, Tick, nice_step, round_values
from beadwright_site.drawings.paper import XY, Field, points_text

WIDTH, HEIGHT = 360.0, 200.0
FIELD = Field(34.0, 10.0, 350.0, 176.0)
"""The paper, and the field the regions stand in [px]."""

STEPS = 5
"""The most parts an axis is cut in."""

LEAST_LABEL, CHARACTER, COLUMNS = 16.0, 6.5, 12
"""A region lower than this, or narrower than its name, gets none; columns tried [px, px, -]."""

NAMES = {"short": "short circuit", "globular": "globular", "spray": "spray", "pulse": "pulse"}


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
    """The plane on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        field: Where the plane stands.
        regions: Transfer regions, one that lies on another after it.
        window: Where every limit holds, as SVG points, or empty.
        point: The set point [px], or None.
        feed_ticks: Along the axis below.
        volts_ticks: Along the axis on the left.
        feed_unit: Unit of the axis below.
        soft: Where one mode gives way to the next, as SVG points.
        caption: What the picture shows, a sentence each.
    """

    width: float
    height: float
    field: Field
    regions: tuple[RegionDrawing, ...]
    window: str
    point: XY | None
    feed_ticks: tuple[Tick, ...]
    volts_ticks: tuple[Tick, ...]
    feed_unit: str
    soft: tuple[str, ...]
    caption: tuple[str, ...]


def draw_map(drawn: WindowMap, system: System) -> MapDrawing:
    """Return the plane fitted to the paper.

    Args:
        drawn: The plane in the core's units.
        system: Whose units the ticks are in.
    """
    across = Scale(*drawn.feeds, FIELD.left, FIELD.right)
    up = Scale(*drawn.volts, FIELD.bottom, FIELD.top)

    def at(point: FeedVolts) -> XY:
        return across(point[0]), up(point[1])

    def points(outline: Sequence[FeedVolts]) -> str:
        return points_text(map(at, outline))

    outlines = [tuple(map(at, region.outline)) for region in drawn.regions]
    regions: list[RegionDrawing] = []
    for layer, region in enumerate(drawn.regions):
        name = NAMES[region.transfer]
        # Short circuit lies under nothing; spray lies on globular.
        above = outlines[layer + 1 :] if region.transfer == "globular" else ()
        place = _place(name, outlines[layer], above)
        x, y = place or (0.0, 0.0)
        text = name if place else ""
        regions.append(RegionDrawing(region.transfer, points(region.outline), text, x, y + 5))
    return MapDrawing(
        WIDTH,
        HEIGHT,
        FIELD,
        tuple(regions),
        points(drawn.window),
        at(drawn.point) if drawn.point is not None else None,
        _feed_ticks(across, system),
        tuple(
            Tick(up(volts), f"{volts:.0f}")
            for volts in round_values(up.least, up.most, nice_step(up.most - up.least, STEPS))
        ),
        units.symbol("wire_feed", system),
        tuple(points(edge.outline) for edge in drawn.soft),
        tuple(_caption(drawn, system)),
    )


def _feed_ticks(across: Scale, system: System) -> tuple[Tick, ...]:
    factor = units.convert(1.0, "wire_feed", system)
    low, high = across.least * factor, across.most * factor
    places = 0 if high > 30 else 1
    return tuple(
        Tick(across(feed / factor), f"{feed:.{places}f}")
        for feed in round_values(low, high, nice_step(high - low, STEPS))
    )


def _span(outline: Sequence[XY], x: float) -> XY | None:
    """Top and bottom of an outline on an upright line, or None if the line misses it."""
    crossed: list[float] = []
    for (x0, y0), (x1, y1) in zip(outline, (*outline[1:], outline[0]), strict=True):
        if min(x0, x1) <= x <= max(x0, x1) and x0 != x1:
            crossed.append(y0 + (y1 - y0) * (x - x0) / (x1 - x0))
    return (min(crossed), max(crossed)) if len(crossed) > 1 else None


def _place(name: str, outline: Sequence[XY], above: Sequence[Sequence[XY]]) -> XY | None:
    """Where a region's name has room that no region lying on top takes; None if nowhere."""
    column = (FIELD.right - FIELD.left) / COLUMNS
    free: list[XY] = []
    for x in (FIELD.left + column * step for step in range(1, COLUMNS)):
        span = _span(outline, x)
        covered = any(_span(other, x) for other in above)
        if span is not None and not covered and span[1] - span[0] >= LEAST_LABEL:
            free.append((x, (span[0] + span[1]) / 2))
    if not free or free[-1][0] - free[0][0] < CHARACTER * len(name):
        return None
    return free[len(free) // 2]


def _caption(drawn: WindowMap, system: System) -> Iterator[str]:
    if drawn.window:
        yield "Outlined: inside every limit."
    if drawn.point is not None:
        yield "Dot: your setting."
    if drawn.soft:
        yield "Hatched: one mode gives way to the next, good to 1 V."
    if any(edge.key == "transition" for edge in drawn.soft):
        yield "Where spray starts is good to 20%."
    if drawn.refused is not None:
        yield worded(say("setting.no-spray-here", why=drawn.refused), system)
    if drawn.pulsed:
        yield "Pulsed: the feed sets the average current only; the machine sets its own volts."
