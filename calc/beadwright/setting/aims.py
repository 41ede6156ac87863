"""The aims of a set point: least time, least heat, the easiest run, or a balance."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from math import inf, sqrt
from types import MappingProxyType

from beadwright.job.job import Aim
from beadwright.layers.bead_limits import COLD_LAP_M
from beadwright.phrases import Phrase, say
from beadwright.process.deposition import feed_for_travel
from beadwright.process.heat import thickness_current
from beadwright.process.operating import Operating, feed_at_current
from beadwright.process.positions import COMFORTABLE_TRAVEL_M_S
from beadwright.process.tip_to_work import tip_to_work
from beadwright.setting.limits import Limit, Window
from beadwright.setting.plan import Plan
from beadwright.setting.size_limits import bead_room
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.volts_limits import START_V, volts_room

AIMS: Mapping[Aim, Phrase] = MappingProxyType(
    {
        "balanced": say("setting.balanced"),
        "least-time": say("setting.least-time"),
        "least-heat": say("setting.least-heat"),
        "easiest": say("setting.easiest"),
    }
)
"""Each aim and its name."""

COLUMNS, ROUNDS = 6, 5
"""Even steps tried first, then rounds of golden section: to a thirtieth of the window."""
_HALF, _PROBE, STEP = 0.5, 0.25, 0.05
"""Shares of the volts' room: its middle, one probe away from it, steps of the last search."""
_VOLTS_EASE: Mapping[str, int] = MappingProxyType(
    {"arc-short": 1, "current-low": 1, "heat-low": 1, "arc-long": -1, "current-high": -1,
     "heat": -1}
)  # fmt: skip
"""Direction in which volts move an end of travel or tip-to-work away; they move no other end."""
TIE = 0.01
"""Weight of the mean distance from all edges beside the distance from the nearest [-]."""
CLOSE = 0.02
"""How much nearer to an edge than the best place the easiest may be, as a share of a window [-].
A test compares it with a grid over the window."""
_SLACK = 0.004
"""Gain over the best so far that a feed must promise to be worked out [-]."""
_GOLDEN = (sqrt(5) - 1) / 2
"""Golden section [-]."""


def aimed_feed(plan: Plan, aim: Aim) -> float:
    """Return the wire feed inside the plan's room that an aim asks for [m/s].

    Least time: the most metal laid, so the most feed. Least heat: the feed whose lowest volts put
    the least heat in a length of weld. Easiest: the feed farthest from every end of every window,
    each counted as a share of its width. Balanced: ``balanced_feed``.

    Args:
        plan: An open plan [-].
        aim: What for [-].
    """
    run, window = plan.run, plan.feeds
    hand = run.job.by_hand
    if hand.travel_m_s is not None:  # the joint wants this feed at that travel
        wanted = feed_for_travel(run.job.wire, hand.travel_m_s, run.section_m2, run.efficiency)
        return window.hold(wanted)
    if aim == "least-time":
        return window.high
    if aim == "least-heat":
        return _most(lambda feed, _: -run.heat(aimed_point(plan, feed, aim)), window)
    if aim == "easiest":
        return _most(lambda feed, beat: _ease_at(plan, feed, beat), window)
    return balanced_feed(plan)


def aimed_point(plan: Plan, feed_m_s: float, aim: Aim) -> Operating:
    """Return the operating point at a feed, its volts as an aim asks.

    Least heat takes the lowest volts that hold, the easiest run those farthest from every edge,
    as a rule the middle of their room; the others follow the mode's own line. Volts set by
    hand are kept, and pulse leaves the volts to the machine.

    Args:
        plan: The plan [-].
        feed_m_s: Wire feed, above zero [m/s].
        aim: What for [-].
    """
    run = plan.run
    volts = run.job.by_hand.volts
    if volts is None and run.transfer != "pulse" and aim in ("least-heat", "easiest"):
        room = volts_room(run, run.point(feed_m_s, START_V))
        if room.open and aim == "least-heat":
            return run.point(feed_m_s, room.low)
        if room.open:
            return run.point(feed_m_s, _easiest_volts(plan, feed_m_s, room))
    return run.point(feed_m_s, volts)


def _ease_at(plan: Plan, feed: float, beat: float) -> float:
    """The most ease at a feed; if even the best volts cannot beat a value, an upper bound of it."""
    run = plan.run
    cap = _ease([_share(plan.feeds, feed), _HALF, _HALF, _HALF])
    if cap <= beat + _SLACK:
        return min(cap, beat)
    if run.transfer == "pulse":
        return ease(plan, run.point(feed), None)
    start = run.point(feed, run.job.by_hand.volts or START_V)
    room = volts_room(run, start)
    if run.job.by_hand.volts is not None or not room.open:
        return ease(plan, start, room)
    middle, way = _shares(plan, run.point(feed, room.place(_HALF)), room)
    if way == 0:
        return _ease(middle)
    probe, _ = _shares(plan, run.point(feed, room.place(_HALF + way * _PROBE)), room)
    # Travel and tip-to-work gain what the volts lose: the best place is where the lines meet.
    held = min(middle[1:3])
    gain = (min(probe[1:3]) - held) / _PROBE
    meet = (held + gain * _HALF) / (1 + gain) if gain > 0 else 0.0
    between = _ease([middle[0], meet, meet, meet]) if meet >= _HALF - _PROBE else 0.0
    return max(_ease(middle), _ease(probe), between)


def _easiest_volts(plan: Plan, feed: float, room: Window) -> float:
    """The easiest volts at a feed: from the middle of the room, as long as each step is easier."""
    found = _HALF
    shares, way = _shares(plan, plan.run.point(feed, room.place(found)), room)
    best = _ease(shares)
    while way and 0 < (share := found + way * STEP) < 1:
        shares, _ = _shares(plan, plan.run.point(feed, room.place(share)), room)
        if _ease(shares) <= best:
            break
        best, found = _ease(shares), share
    return room.place(found)


def ease(plan: Plan, point: Operating, volts: Window | None) -> float:
    """Return the distance of a point from the nearest end of any window, as a share of its width.

    A half is the middle of all windows; at or below zero the point is out. Tip-to-work counts by
    its usual range, so that a limit that moves in at the far end does not count as ease. Of points
    equally near, the one farther from the other ends counts a hundredth more.

    Args:
        plan: The plan [-].
        point: The operating point [-].
        volts: Room for the volts at its feed, or None where the machine sets them [V].
    """
    return _ease(_shares(plan, point, volts)[0])


def _ease(shares: list[float]) -> float:
    return min(shares) + TIE * sum(shares) / len(shares)


def _shares(plan: Plan, point: Operating, volts: Window | None) -> tuple[list[float], int]:
    """Room to the nearest end of each window as a share of its width, the feed's first.

    Then the direction in which volts would ease the tightest: 1, -1, or 0 if they do not.
    """
    run = plan.run
    by_feed, travel = _share(plan.feeds, point.feed_m_s), run.travel(point.feed_m_s)
    travels = travel_room(run, point, bead_room(run.job, plan.shape, plan.passes))
    tips, (least, _, most) = tip_room(run, point, travel), tip_to_work(run.job.wire, run.transfer)
    by_travel, by_tip = _share(travels, travel), _share(tips, run.tip_to_work_m, most - least)
    tight = _nearer(travels, travel) if by_travel < by_tip else _nearer(tips, run.tip_to_work_m)
    way = 0 if by_feed < min(by_travel, by_tip) else _VOLTS_EASE.get(tight.key, 0)
    shares = [by_feed, by_travel, by_tip]
    if volts is not None:
        shares.append(_share(volts, point.volts))
    return shares, way


def _nearer(window: Window, value: float) -> Limit:
    below = value - window.low < window.high - value
    return window.low_limit if below else window.high_limit


def _share(window: Window, value: float, width: float | None = None) -> float:
    """Room to the nearest end as a share of the window's width, or of another."""
    width = window.high - window.low if width is None else width
    return min(value - window.low, window.high - value) / width if width > 0 else 0.0


def balanced_feed(plan: Plan) -> float:
    """Return the feed to start from inside the plan's room [m/s].

    Short circuit on thin plate starts from the thumb-rule current; else from the travel that is
    comfortable. Either is held between a fifth and three fifths of the way up the window.

    Source: ``heat.thickness_current``, ``positions.COMFORTABLE_TRAVEL_M_S``.

    Args:
        plan: An open plan [-].
    """
    run, window = plan.run, plan.feeds
    job = run.job
    if run.transfer == "short":
        current = thickness_current(min(job.thinner_m, COLD_LAP_M))
        target = feed_at_current(job.wire, job.gas, "short", current, run.tip_to_work_m)
    else:
        travel = COMFORTABLE_TRAVEL_M_S[job.travel_by]
        target = feed_for_travel(job.wire, travel, run.section_m2, run.efficiency)
    return min(max(target, window.place(0.2)), window.place(0.6))


def _most(gain: Callable[[float, float], float], window: Window) -> float:
    """Where the gain is highest: even steps from the middle out, then golden section at the best.

    The function gets the highest found so far: what cannot beat it need not be worked out.
    """
    if window.high <= window.low:
        return window.low
    places = [window.place(step / COLUMNS) for step in range(COLUMNS + 1)]
    best, found = COLUMNS // 2, -inf
    for step in sorted(range(COLUMNS + 1), key=lambda step: abs(step - COLUMNS / 2)):
        here = gain(places[step], found)
        if here > found:
            best, found = step, here
    low, high = places[max(best - 1, 0)], places[min(best + 1, COLUMNS)]
    found_at = places[best]
    left, right = high - _GOLDEN * (high - low), low + _GOLDEN * (high - low)
    at_left = gain(left, found)
    at_right = gain(right, max(found, at_left))
    for _ in range(ROUNDS):
        for value, at in ((at_left, left), (at_right, right)):
            if value > found:
                found, found_at = value, at
        if at_left >= at_right:
            high, right, at_right = right, left, at_left
            left = high - _GOLDEN * (high - low)
            at_left = gain(left, found)
        else:
            low, left, at_left = left, right, at_right
            right = low + _GOLDEN * (high - low)
            at_right = gain(right, found)
    return found_at
