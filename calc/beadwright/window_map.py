"""The plane of wire feed and volts: transfer regions, the window and the working point."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.dial_in import DialIn
from beadwright.operating import at_feed, feed_at_current, volts_window
from beadwright.transfer import Transfer, edges, spray_refused, transition_current

STEPS = 16

FeedVolts = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Region:
    """Where one transfer mode lives.

    Attributes:
        transfer: The mode.
        outline: Corners in order [m/s, V].
    """

    transfer: Transfer
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
    """

    feeds: tuple[float, float]
    volts: tuple[float, float]
    regions: tuple[Region, ...]
    window: tuple[FeedVolts, ...]
    point: FeedVolts | None


def _steps(low: float, high: float) -> list[float]:
    return [low + (high - low) * step / STEPS for step in range(STEPS + 1)]


def _edges(answer: DialIn, feed: float) -> tuple[float, float, float]:
    job, plan = answer.job, answer.plan
    mode: Transfer = "spray" if plan.transfer == "pulse" else plan.transfer
    current = at_feed(job.wire, job.gas, mode, feed, plan.tip_to_work_m).current_a
    at = edges(current, job.wire, job.gas)
    return at.short_top, at.open_low, at.open_top


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
    job = answer.job
    current = transition_current(job.wire, job.gas)
    return feed_at_current(job.wire, job.gas, "spray", current, answer.plan.tip_to_work_m)


def _regions(answer: DialIn, low: float, high: float) -> tuple[Region, ...]:
    feeds = _steps(low, high)
    rows = [(feed, *_edges(answer, feed)) for feed in feeds]
    floor = 10.0
    short = (*((f, top) for f, top, _, _ in rows), (high, floor), (low, floor))
    globular = (
        *((f, max(top, long)) for f, top, _, long in rows),
        *((f, top) for f, top, _, _ in reversed(rows)),
    )
    regions = [Region("short", short), Region("globular", globular)]
    if not spray_refused(answer.job.wire, answer.job.gas):
        start = max(low, min(_transition_feed(answer), high))
        inner = [(feed, *_edges(answer, feed)) for feed in _steps(start, high)]
        spray = (
            *((f, long) for f, _, _, long in inner),
            *((f, base) for f, _, base, _ in reversed(inner)),
        )
        regions.append(Region("spray", spray))
    return tuple(regions)


def _window(answer: DialIn) -> tuple[FeedVolts, ...]:
    job, plan = answer.job, answer.plan
    if not plan.open or plan.transfer == "pulse":
        return ()
    top: list[FeedVolts] = []
    bottom: list[FeedVolts] = []
    for feed in _steps(plan.feeds.low, plan.feeds.high):
        current = at_feed(job.wire, job.gas, plan.transfer, feed, plan.tip_to_work_m).current_a
        low, _, high = volts_window(current, job.wire, job.gas, plan.transfer)
        if job.machine_volts_v is not None:
            high = min(high, job.machine_volts_v)
        if low <= high:
            top.append((feed, high))
            bottom.append((feed, low))
    return (*top, *reversed(bottom))


def window_map(answer: DialIn) -> WindowMap:
    """Return the feed and volts plane for an answer.

    Source: ``transfer.edges``, ``plan.feed_limits``; the window is the planned mode's.

    Args:
        answer: A dial-in [-].
    """
    low, high = _axis(answer)
    point = None
    if answer.point is not None and answer.settings.volts.value is not None:
        point = (answer.point.feed_m_s, answer.point.volts)
    regions = _regions(answer, low, high)
    window = _window(answer)
    heights = [v for region in regions for _, v in region.outline] + [v for _, v in window]
    if point is not None:
        heights.append(point[1])
    return WindowMap((low, high), (10.0, max(heights) + 1.0), regions, window, point)
