"""The set point: feed and volts on steps a hand can set, inside their room."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from beadwright import units
from beadwright.job.job import Job
from beadwright.measures import MEASURES
from beadwright.process.operating import Operating
from beadwright.process.transfer_regions import transfer_at
from beadwright.setting.aims import aimed_feed, aimed_point
from beadwright.setting.limits import Window
from beadwright.setting.plan import Plan
from beadwright.setting.volts_limits import volts_room


def set_feed(plan: Plan) -> float | None:
    """Return the wire feed to set: by hand, or as the job's aim asks; None if shut [m/s].

    Args:
        plan: The plan [-].
    """
    job = plan.run.job
    hand = job.by_hand
    if hand.wire_feed_m_s is not None:
        return hand.wire_feed_m_s
    if plan.open:
        feed = aimed_feed(plan, job.aim)
        if hand.travel_m_s is not None:
            return feed
        # Under the coolest feed the volts could not come down: its step is the next one up.
        room = replace(plan.feeds, low=feed) if job.aim == "least-heat" else plan.feeds
        return stepped(feed, "wire_feed", job.units, room)
    if hand.travel_m_s is not None:
        return aimed_feed(plan, job.aim)
    return None


def set_point(plan: Plan, feed_m_s: float) -> Operating:
    """Return the operating point at a feed, volts on a tenth where they are ours.

    Args:
        plan: The plan [-].
        feed_m_s: The feed set, above zero [m/s].
    """
    run = plan.run
    job = run.job
    point = aimed_point(plan, feed_m_s, job.aim)
    if job.by_hand.volts is not None or run.transfer == "pulse":
        return point
    room = volts_room(run, point)
    if not room.open:
        return _on_a_tenth(job, plan, point)
    volts = stepped(room.hold(point.volts), "volts", job.units, room)
    if volts == point.volts:
        return point
    there = run.point(feed_m_s, volts)
    if transfer_at(there.current_a, volts, job.wire, job.gas) == run.transfer:
        return there
    return point


def _on_a_tenth(job: Job, plan: Plan, point: Operating) -> Operating:
    """A feed that no volts suit: the mode's own line still gives a start."""
    volts = units.settable(point.volts, "volts", job.units)
    if job.machine_volts_v is not None:
        volts = min(volts, job.machine_volts_v)
    return plan.run.point(point.feed_m_s, volts)


def stepped(value: float, measure: str, system: units.System, window: Window) -> float:
    """Return the nearest step a hand can set that lies in a window, else the value itself [SI].

    Args:
        value: The quantity, inside the window [SI].
        measure: Its kind, one with a step [-].
        system: Whose steps [-].
        window: The room [SI].
    """
    nearest = units.settable(value, measure, system)
    step = units.STEPS[measure, system] * MEASURES[measure].unit(system).factor
    beside = float(Fraction(nearest) + (step if value > nearest else -step))
    for candidate in (nearest, units.settable(beside, measure, system)):
        if window.low <= candidate <= window.high:
            return candidate
    return value
