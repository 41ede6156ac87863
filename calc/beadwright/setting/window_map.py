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


def _currents(answer: DialIn, low: float, high: float) -> list[float]:
    """Currents in even steps from the one at a feed to the one at another [A].

    The edges are straight in current, and feed follows from current in closed form; so the plane is
    drawn along the current.
    """
    job, tip, mode = answer.job, answer.plan.tip_to_work_m, _mode(answer)
    shift = set_volts_shift(job, mode)
    first, last = (
        at_feed(job.wire, job.gas, mode, feed, tip, None, shift).current_a for feed in (low, high)
    )
    return [first + (last - first) * step / STEPS for step in range(STEPS + 1)]


def _feed(answer: DialIn, current: float) -> float:
    job = answer.job
    mode, tip = _mode(answer), answer.plan.tip_to_work_m
    shift = set_volts_shift(job, mode)
    return feed_at_current(job.wire, job.gas, mode, current, tip, None, shift)


def _rows(answer: DialIn, low: float, high: float) -> list[tuple[float, float, float, float]]:
    """Feed, top of short circuit, low and top of the open arc, from one feed to another."""
    job = answer.job
    rows: list[tuple[float, float, float, float]] = []
    for current in _currents(answer, low, high):
        at = edges(current, job.wire, job.gas)
        rows.append((_feed(answer, current), at.short_top, at.open_low, at.open_top))
    return rows


def _axis(answer: DialIn) -> tuple[float, float]:
    feeds = answer.plan.feeds
    ends = [feeds.low, feeds.high]
    if answer.point is not None:
        ends.append(answer.point.feed_m_s)
    job = answer.job
    if not spray_refused(job.wire, job.gas):
        ends.append(_transition_feed(answer))
    return 0.75 * min(ends), 1.15 * max(ends)


def _transition_feed(answer: DialIn) -> float:
    return _feed(answer, transition_current(answer.job.wire, answer.job.gas))


def _regions(answer: DialIn, low: float, high: float) -> tuple[Region, ...]:
    rows = _rows(answer, low, high)
    short = (*((f, top) for f, top, _, _ in rows), (high, LEAST_V), (low, LEAST_V))
    globular = (
        *((f, max(top, long)) for f, top, _, long in rows),
        *((f, top) for f, top, _, _ in reversed(rows)),
    )
    regions = [Region("short", short), Region("globular", globular)]
    if not spray_refused(answer.job.wire, answer.job.gas):
        inner = _rows(answer, max(low, min(_transition_feed(answer), high)), high)
        spray = (
            *((f, long) for f, _, _, long in inner),
            *((f, base) for f, _, base, _ in reversed(inner)),
        )
        regions.append(Region("spray", spray))
    return tuple(regions)


def _soft(answer: DialIn, low: float, high: float) -> tuple[SoftEdge, ...]:
    """The bands about the edges, as far as they lie on the axis."""
    job = answer.job
    sprays = not spray_refused(job.wire, job.gas)
    start = min(max(_transition_feed(answer), low), high) if sprays else high
    found: list[SoftEdge] = []
    if job.wire.traits.shorts and start > low:
        rows = [(feed, top) for feed, top, _, _ in _rows(answer, low, start)]
        found.append(SoftEdge("short-top", _about(rows)))
    if not sprays:
        return tuple(found)
    if start < high:
        rows = [(feed, foot) for feed, _, foot, _ in _rows(answer, start, high)]
        found.append(SoftEdge("spray-foot", _about(rows)))
    least = transition_current(job.wire, job.gas)
    one, other = (
        min(max(_feed(answer, least * share), low), high)
        for share in (1 - TRANSITION_BAND, 1 + TRANSITION_BAND)
    )
    if one < other:
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
    low, high = _axis(answer)
    point = None
    if answer.point is not None and answer.settings.volts.value is not None:
        point = (answer.point.feed_m_s, answer.point.volts)
    regions = _regions(answer, low, high)
    window = _window(answer)
    soft = _soft(answer, low, high)
    heights = [v for region in regions for _, v in region.outline] + [v for _, v in window]
    heights += [v for edge in soft for _, v in edge.outline]
    if point is not None:
        heights.append(point[1])
    return WindowMap(
        feeds=(low, high),
        volts=(min(LEAST_V, *heights), max(heights) + 1.0),
        regions=regions,
        window=window,
        point=point,
        soft=soft,
        refused=spray_refused(job.wire, job.gas, job.position),
        pulsed=answer.plan.transfer == "pulse",
    )
