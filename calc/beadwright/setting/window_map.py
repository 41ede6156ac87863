"""The plane of wire feed and volts: transfer regions, the window and the working point."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.phrases import Phrase
from beadwright.process.operating import at_feed, feed_at_current
from beadwright.process.transfer import TRANSITION_BAND, Transfer, spray_refused, transition_current
from beadwright.process.transfer_regions import edges
from beadwright.setting.dial_in import DialIn
from beadwright.setting.set_volts import set_volts_shift
from beadwright.setting.volts_limits import START_V, volts_room

STEPS = 8
EDGE_BAND_V = 1.0
"""Half-width of the edges between modes [V]: condition tables scatter about their line with a
standard deviation of 0.9 V (``arc.open_arc_volts``)."""
LEAST_V = 12.0
"""Low end of the volts axis: no wire arc burns below it [V]."""

FeedVolts = tuple[float, float]

Row = tuple[float, float, float, float]
"""Feed [m/s]; top of short circuit, low and top of the open arc [V]."""


@dataclass(frozen=True, slots=True)
class Region:
    """The region of one transfer mode.

    Attributes:
        transfer: The mode.
        outline: Corners in order [m/s, V].
    """

    transfer: Transfer
    outline: tuple[FeedVolts, ...]


@dataclass(frozen=True, slots=True)
class SoftEdge:
    """The band in which one mode gives way to another.

    Attributes:
        key: transition, short-top or spray-foot.
        outline: Corners in order [m/s, V].
    """

    key: str
    outline: tuple[FeedVolts, ...]


@dataclass(frozen=True, slots=True)
class WindowMap:
    """The drawing in the core's units.

    Attributes:
        feeds: Ends of the feed axis [m/s].
        volts: Ends of the volts axis [V].
        regions: Short circuit, globular, spray; a later one lies on top.
        window: Outline of the set points that hold every limit; empty if none does.
        point: The set point, or None.
        soft: Bands about the edges between modes.
        refused: Why spray cannot be held here, or None.
        pulsed: True if the machine pulses: mean current only, its own volts.
    """

    feeds: tuple[float, float]
    volts: tuple[float, float]
    regions: tuple[Region, ...]
    window: tuple[FeedVolts, ...]
    point: FeedVolts | None
    soft: tuple[SoftEdge, ...] = ()
    refused: Phrase | None = None
    pulsed: bool = False


def _mode(answer: DialIn) -> Transfer:
    """The mode whose volts set the arc length; pulse is drawn with spray's."""
    return "spray" if answer.plan.transfer == "pulse" else answer.plan.transfer


@dataclass(frozen=True, slots=True)
class _Axis:
    """The feed axis, as the currents drawn along it.

    Attributes:
        feeds: Its ends [m/s].
        first: Current at its low end [A].
        last: Current at its high end [A].
        least: Least current of spray, which lies between them, or None where spray is refused [A].
    """

    feeds: tuple[float, float]
    first: float
    last: float
    least: float | None


def _feed(answer: DialIn, current: float) -> float:
    job, tip, mode = answer.job, answer.plan.tip_to_work_m, _mode(answer)
    shift = set_volts_shift(job, mode)
    return feed_at_current(job.wire, job.gas, mode, current, tip, None, shift)


def _current(answer: DialIn, feed: float) -> float:
    job, tip, mode = answer.job, answer.plan.tip_to_work_m, _mode(answer)
    shift = set_volts_shift(job, mode)
    return at_feed(job.wire, job.gas, mode, feed, tip, None, shift).current_a


def _rows(answer: DialIn, first: float, last: float) -> list[Row]:
    """Rows in even steps from one current to another [A].

    The edges are straight in current, and feed follows from current in closed form; so the plane is
    drawn along the current.
    """
    job = answer.job
    rows: list[Row] = []
    for step in range(STEPS + 1):
        current = first + (last - first) * step / STEPS
        at = edges(current, job.wire, job.gas)
        rows.append((_feed(answer, current), at.short_top, at.open_low, at.open_top))
    return rows


def _axis(answer: DialIn) -> _Axis:
    job, feeds = answer.job, answer.plan.feeds
    ends = [feeds.low, feeds.high]
    if answer.point is not None:
        ends.append(answer.point.feed_m_s)
    least = None
    if not spray_refused(job.wire, job.gas):
        least = transition_current(job.wire, job.gas)
        ends.append(_feed(answer, least))
    low, high = 0.75 * min(ends), 1.15 * max(ends)
    return _Axis((low, high), _current(answer, low), _current(answer, high), least)


def _regions(rows: list[Row], spray: list[Row], feeds: tuple[float, float]) -> tuple[Region, ...]:
    """The regions, from the rows of the whole axis and those of spray, if it can be held."""
    low, high = feeds
    short = (*((f, top) for f, top, _, _ in rows), (high, LEAST_V), (low, LEAST_V))
    globular = (
        *((f, max(top, long)) for f, top, _, long in rows),
        *((f, top) for f, top, _, _ in reversed(rows)),
    )
    regions = [Region("short", short), Region("globular", globular)]
    if spray:
        outline = (
            *((f, long) for f, _, _, long in spray),
            *((f, base) for f, _, base, _ in reversed(spray)),
        )
        regions.append(Region("spray", outline))
    return tuple(regions)


def _soft(answer: DialIn, axis: _Axis, spray: list[Row]) -> tuple[SoftEdge, ...]:
    """The bands about the edges, as far as they lie on the axis."""
    found: list[SoftEdge] = []
    if answer.job.wire.traits.shorts:
        rows = _rows(answer, axis.first, axis.last if axis.least is None else axis.least)
        found.append(SoftEdge("short-top", _about([(feed, top) for feed, top, _, _ in rows])))
    if axis.least is None:
        return tuple(found)
    found.append(SoftEdge("spray-foot", _about([(feed, foot) for feed, _, foot, _ in spray])))
    one = max(axis.least * (1 - TRANSITION_BAND), axis.first)
    other = min(axis.least * (1 + TRANSITION_BAND), axis.last)
    band = _rows(answer, one, other)
    top = [(feed, long) for feed, _, _, long in band]
    foot = [(feed, base) for feed, _, base, _ in reversed(band)]
    found.append(SoftEdge("transition", (*top, *foot)))
    return tuple(found)


def _about(line: list[FeedVolts]) -> tuple[FeedVolts, ...]:
    over = [(feed, volts + EDGE_BAND_V) for feed, volts in line]
    under = [(feed, volts - EDGE_BAND_V) for feed, volts in reversed(line)]
    return (*over, *under)


def _window(answer: DialIn) -> tuple[FeedVolts, ...]:
    """Outline of every feed with the volts that hold at it."""
    plan = answer.plan
    if not plan.open or plan.transfer == "pulse":
        return ()
    top: list[FeedVolts] = []
    bottom: list[FeedVolts] = []
    for step in range(STEPS + 1):
        feed = plan.feeds.place(step / STEPS)
        room = volts_room(plan.run, plan.run.point(feed, START_V))
        if room.open:
            top.append((feed, room.high))
            bottom.append((feed, room.low))
    return (*top, *reversed(bottom))


def window_map(answer: DialIn) -> WindowMap:
    """Return the feed and volts plane for an answer.

    Source: ``transfer_regions.edges``, ``feed_limits``, ``volts_limits``; the window is the planned
    mode's, its volts those that hold every limit at each feed. Bands: ``transfer.TRANSITION_BAND``,
    ``EDGE_BAND_V``.

    Args:
        answer: A dial-in [-].
    """
    job = answer.job
    axis = _axis(answer)
    whole = _rows(answer, axis.first, axis.last)
    spray = [] if axis.least is None else _rows(answer, axis.least, axis.last)
    point = None
    if answer.point is not None and answer.settings.volts.value is not None:
        point = (answer.point.feed_m_s, answer.point.volts)
    regions = _regions(whole, spray, axis.feeds)
    window = _window(answer)
    soft = _soft(answer, axis, spray)
    heights = [v for region in regions for _, v in region.outline] + [v for _, v in window]
    heights += [v for edge in soft for _, v in edge.outline]
    if point is not None:
        heights.append(point[1])
    return WindowMap(
        feeds=axis.feeds,
        volts=(min(LEAST_V, *heights), max(heights) + 1.0),
        regions=regions,
        window=window,
        point=point,
        soft=soft,
        refused=spray_refused(job.wire, job.gas, job.position),
        pulsed=answer.plan.transfer == "pulse",
    )
