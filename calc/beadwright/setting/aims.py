"""The aims of a set point: least time, least heat, the easiest run, or a balance."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from math import inf, sqrt
from types import MappingProxyType

from beadwright.job.job import Aim
from beadwright.job.job_joint import joint_shape
from beadwright.phrases import Phrase, say
from beadwright.process.deposition import deposition_efficiency, feed_for_travel
from beadwright.process.operating import Operating
from beadwright.process.positions import COMFORTABLE_TRAVEL_M_S
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.wire_kinds import KINDS
from beadwright.process.wires import wire_of
from beadwright.setting.limits import Window
from beadwright.setting.plan import Plan
from beadwright.setting.run import Run
from beadwright.setting.size_limits import bead_room
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.usual_current import usual_current
from beadwright.setting.volts_limits import START_V, mode_volts, volts_room

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
_HALF = 0.5
"""The middle of a window, as a share of its width."""
TIE = 0.01
"""Weight of the mean distance from all edges beside the distance from the nearest [-]."""
CLOSE = 0.02
"""How much nearer to an edge than the best place the easiest may be, as a share of a window [-].
A test compares it with a grid over the window."""
_SLACK = 0.004
"""Gain over the best so far that a feed must promise to be worked out [-]."""
TAKEN_BY_TRAVEL = 0.35
"""Part of what lies beyond a comfortable travel that the travel takes, as a power [-]: the current
takes the rest. Common practice; it keeps the set point from turning a corner."""
EDGE = 0.05
"""Share of the room kept free at either end by a balanced start [-]. Common practice."""
_GOLDEN = (sqrt(5) - 1) / 2
"""Golden section [-]."""


def aimed_feed(plan: Plan, aim: Aim) -> float:
    """Return the wire feed inside the plan's room that an aim asks for [m/s].

    Least time: the most metal laid, so the most feed. Least heat: ``coolest_feed``. Easiest: the
    feed farthest from every end of every window, each counted as a share of its width. Balanced:
    ``balanced_feed``.

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
        return coolest_feed(plan)
    if aim == "easiest":
        return _most(lambda feed, beat: _ease_at(plan, feed, beat), window)
    return balanced_feed(plan)


def coolest_feed(plan: Plan) -> float:
    """Return the least feed at which the volts may come down to the mode's own low end [m/s].

    The current falls with the volts. Where the least current ends the window, the lowest volts need
    a little more feed than the mode's own volts do; volts set by hand and pulse's stay.

    Args:
        plan: An open plan [-].
    """
    run, window = plan.run, plan.feeds
    if run.transfer == "pulse" or run.job.by_hand.volts is not None:
        return window.low
    if volts_room(run, run.point(window.low, START_V)).low_limit.key != "current-low":
        return window.low
    least = run.currents.low
    return window.hold(run.feed_at(least, mode_volts(run, least)[0]))


def aimed_point(plan: Plan, feed_m_s: float, aim: Aim) -> Operating:
    """Return the operating point at a feed, its volts as an aim asks.

    Least heat takes the lowest volts that hold; the others follow the mode's own line. Volts set by
    hand are kept, and pulse leaves the volts to the machine.

    Args:
        plan: The plan [-].
        feed_m_s: Wire feed, above zero [m/s].
        aim: What for [-].
    """
    run = plan.run
    volts = run.job.by_hand.volts
    if volts is None and run.transfer != "pulse" and aim == "least-heat":
        room = volts_room(run, run.point(feed_m_s, START_V))
        if room.open:
            return run.point(feed_m_s, room.low)
    return run.point(feed_m_s, volts)


def _ease_at(plan: Plan, feed: float, beat: float) -> float:
    """The ease of a feed on the mode's own volts; if it beats no value given, an upper bound."""
    run = plan.run
    cap = _ease([_share(plan.feeds, feed), _HALF, _HALF, _HALF])
    if cap <= beat + _SLACK:
        return min(cap, beat)
    point = run.point(feed, run.job.by_hand.volts)
    room = None if run.transfer == "pulse" else volts_room(run, point)
    return ease(plan, point, room)


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
    return _ease(_shares(plan, point, volts))


def _ease(shares: list[float]) -> float:
    return min(shares) + TIE * sum(shares) / len(shares)


def _shares(plan: Plan, point: Operating, volts: Window | None) -> list[float]:
    """Room to the nearest end of each window as a share of its width, the feed's first."""
    run = plan.run
    travel = run.travel(point.feed_m_s)
    travels = travel_room(run, point, bead_room(run.job, plan.shape, plan.passes))
    tips, (least, _, most) = tip_room(run, point, travel), tip_to_work(run.job.wire, run.transfer)
    shares = [
        _share(plan.feeds, point.feed_m_s),
        _share(travels, travel),
        _share(tips, run.tip_to_work_m, most - least),
    ]
    if volts is not None:
        shares.append(_share(volts, point.volts))
    return shares


def _share(window: Window, value: float, width: float | None = None) -> float:
    """Room to the nearest end as a share of the window's width, or of another."""
    width = window.high - window.low if width is None else width
    return min(value - window.low, window.high - value) / width if width > 0 else 0.0


def balanced_feed(plan: Plan) -> float:
    """Return the feed to start from inside the plan's room [m/s].

    The feed of ``balanced_current``; a part of the room is kept free at either end.

    Source: ``EDGE``.

    Args:
        plan: An open plan [-].
    """
    window = plan.feeds
    feed = plan.run.feed_at(balanced_current(plan))
    return min(max(feed, window.place(EDGE)), window.place(1 - EDGE))


def balanced_current(plan: Plan) -> float:
    """Return the current of a balanced start, limits aside [A].

    The current a hand sets for this plate, wire and position, as long as the travel it takes is
    comfortable; beyond that the hand moves on a little faster (or slower) and takes the rest off
    the current. Metal-cored wire is given the current
    solid wire of its size would be, and travels as much faster as it lays more.

    Source: ``usual_current.usual_current``, ``positions.COMFORTABLE_TRAVEL_M_S``,
    ``TAKEN_BY_TRAVEL``.

    Args:
        plan: The plan [-].
    """
    twin = solid_twin(plan)
    job = twin.job
    usual = usual_current(job, twin.transfer)
    slow, fast = COMFORTABLE_TRAVEL_M_S[job.travel_by, job.position.orientation]
    travel = twin.filling(twin.feed_at(usual))
    own = plan.run.job.wire.own
    if own is not None and own.travel is not None and job.travel_by == "hand":
        travel *= own.travel  # the same leg at the hand's own pace takes feed in proportion
        usual = twin.point(twin.feed_at(usual) * own.travel).current_a
    if slow <= travel <= fast:
        return usual
    end = slow if travel < slow else fast
    taken = end * float((travel / end) ** TAKEN_BY_TRAVEL)
    feed = feed_for_travel(job.wire, taken, twin.section_m2, twin.efficiency)
    return twin.point(feed).current_a


def solid_twin(plan: Plan) -> Run:
    """Return a plan's run as the wire whose current it is given would lay it; most as they are.

    Args:
        plan: The plan [-].
    """
    run = plan.run
    job = run.job
    kind = job.wire.traits.given_current_of
    if kind == job.wire.kind:
        return run
    wire = wire_of(KINDS[kind].representative, job.wire.size)
    twin = replace(job, wire=wire)
    more = joint_shape(twin)[0].section_m2 / plan.shape.section_m2
    return replace(
        run,
        job=twin,
        tip_to_work_m=tip_to_work(wire, run.transfer)[1],
        section_m2=run.section_m2 * more,
        efficiency=deposition_efficiency(wire, job.gas, run.transfer)[1],
    )


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
