"""What the set point is chosen for: least time, least heat, the easiest run, or a balance."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from math import sqrt
from types import MappingProxyType

from beadwright.bead_limits import COLD_LAP_M
from beadwright.deposition import feed_for_travel
from beadwright.heat import thickness_current
from beadwright.job import Aim
from beadwright.limits import Window
from beadwright.operating import Operating, feed_at_current
from beadwright.plan import Plan
from beadwright.positions import COMFORTABLE_TRAVEL_M_S
from beadwright.size_limits import bead_room
from beadwright.tip_limits import tip_room
from beadwright.travel_limits import travel_room
from beadwright.volts_limits import volts_room

AIMS: Mapping[Aim, str] = MappingProxyType(
    {
        "balanced": "Balanced",
        "least-time": "Least time",
        "least-heat": "Least heat",
        "easiest": "Easiest to run",
    }
)
"""Each aim and its name."""

_COLUMNS, _ROUNDS = 6, 7
"""Even steps tried first, then rounds of golden section: to about a hundredth of the window."""
_SHARES = (0.5, 0.35, 0.2)
_FINE_SHARES = (0.5, 0.45, 0.4, 0.35, 0.3, 0.25, 0.2, 0.55, 0.6, 0.7)
"""Shares of the volts' room tried for the easiest run, while the feed is sought and after."""
_TIE = 0.01
_START_V = 25.0
"""Where the search for a volts edge starts; it settles from anywhere [V]."""
_GOLDEN = (sqrt(5) - 1) / 2


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
        return _most(lambda feed: -run.heat(aimed_point(plan, feed, aim)), window)
    if aim == "easiest":
        return _most(lambda feed: _ease_at(plan, feed), window)
    return balanced_feed(plan)


def aimed_point(plan: Plan, feed_m_s: float, aim: Aim) -> Operating:
    """Return where the arc stands at a feed, its volts as an aim asks.

    Least heat takes the lowest volts that hold, the easiest run those farthest from every edge,
    as a rule the middle of their room; the others follow the mode's own line. Volts set by
    hand stand, and pulse leaves volts to the machine.

    Args:
        plan: The plan [-].
        feed_m_s: Wire feed, above zero [m/s].
        aim: What for [-].
    """
    run = plan.run
    volts = run.job.by_hand.volts
    if volts is None and run.transfer != "pulse" and aim in ("least-heat", "easiest"):
        room = volts_room(run, run.point(feed_m_s, _START_V))
        if room.open and aim == "least-heat":
            return run.point(feed_m_s, room.low)
        if room.open:
            return max(
                (run.point(feed_m_s, room.place(share)) for share in _FINE_SHARES),
                key=lambda point: ease(plan, point, room),
            )
    return run.point(feed_m_s, volts)


def _ease_at(plan: Plan, feed: float) -> float:
    run = plan.run
    if run.transfer == "pulse":
        return ease(plan, run.point(feed), None)
    start = run.point(feed, run.job.by_hand.volts or _START_V)
    room = volts_room(run, start)
    if run.job.by_hand.volts is not None or not room.open:
        return ease(plan, start, room)
    return max(ease(plan, run.point(feed, room.place(share)), room) for share in _SHARES)


def ease(plan: Plan, point: Operating, volts: Window | None) -> float:
    """Return how far a point stands from the nearest end of any window, as a share of its width.

    Half is the middle of them all; at or below zero the point is out. Between points as near, the
    one farther on the whole counts a hundredth more.

    Args:
        plan: The plan [-].
        point: Where the arc stands [-].
        volts: Room for the volts at its feed, or None where the machine sets them [V].
    """
    run = plan.run
    travel = run.travel(point.feed_m_s)
    shares = [
        _share(plan.feeds, point.feed_m_s),
        _share(travel_room(run, point, bead_room(run.job, plan.shape, plan.passes)), travel),
        _share(tip_room(run, point, travel), run.tip_to_work_m),
    ]
    if volts is not None:
        shares.append(_share(volts, point.volts))
    return min(shares) + _TIE * sum(shares) / len(shares)


def _share(window: Window, value: float) -> float:
    width = window.high - window.low
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


def _most(worth: Callable[[float], float], window: Window) -> float:
    """Where a worth is most: even steps first, then golden section about the best of them."""
    if window.high <= window.low:
        return window.low
    places = [window.place(step / _COLUMNS) for step in range(_COLUMNS + 1)]
    worths = [worth(place) for place in places]
    best = max(range(len(places)), key=worths.__getitem__)
    low, high = places[max(best - 1, 0)], places[min(best + 1, _COLUMNS)]
    found, found_at = worths[best], places[best]
    left, right = high - _GOLDEN * (high - low), low + _GOLDEN * (high - low)
    at_left, at_right = worth(left), worth(right)
    for _ in range(_ROUNDS):
        for value, at in ((at_left, left), (at_right, right)):
            if value > found:
                found, found_at = value, at
        if at_left >= at_right:
            high, right, at_right = right, left, at_left
            left = high - _GOLDEN * (high - low)
            at_left = worth(left)
        else:
            low, left, at_left = left, right, at_right
            right = low + _GOLDEN * (high - low)
            at_right = worth(right)
    return found_at
