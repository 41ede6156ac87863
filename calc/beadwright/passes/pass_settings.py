"""Settings of the beads of one part: one feed where one suits them all."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from beadwright.job.job import Job
from beadwright.passes.pass_beads import Fight, Laid
from beadwright.passes.pass_process import Process
from beadwright.process.deposition import feed_for_travel
from beadwright.process.heat import heat_input_en
from beadwright.process.operating import Operating
from beadwright.setting.aims import aimed_feed
from beadwright.setting.limits import Window
from beadwright.setting.plan import Plan
from beadwright.setting.set_point import set_point, stepped


def laid_beads(
    job: Job, plan: Plan, process: Process, sections: Sequence[float]
) -> list[Laid | Fight]:
    """Return the settings of a part's beads, or for a bead without settings the limits in conflict.

    One feed and one voltage for all where that suits the smallest and the largest, else each bead
    its own.

    Args:
        job: The job [-].
        plan: Its plan [-].
        process: The part's process [-].
        sections: Section of each bead, one at least [m²].
    """
    window = _shared_room(process, min(sections), max(sections))
    mean = sum(sections) / len(sections)
    if window is not None:
        feed = _feed(plan, process, window, mean)
        point = _point(plan, process, feed, window, mean)
        return [_one(job, process, point, section) for section in sections]
    # The beads of a layer are of one section: what one takes, the others take.
    found = {size: _alone(job, plan, process, size) for size in {_grain(each) for each in sections}}
    return [found[_grain(each)] for each in sections]


def _grain(section: float) -> float:
    """A section without what rounding left in its last places [m²]."""
    return float(f"{section:.6e}")


def _alone(job: Job, plan: Plan, process: Process, section: float) -> Laid | Fight:
    """The settings of one bead, or the limits that leave it none."""
    window = _shared_room(process, section, section)
    if window is None:
        return _fight(process, section)
    feed = _feed(plan, process, window, section)
    return _one(job, process, _point(plan, process, feed, window, section), section)


def _fight(process: Process, section: float) -> Fight:
    room = process.room(section)
    if room.heat_fight is not None:
        return room.heat_fight, room.window.low_limit
    return room.window.low_limit, room.window.high_limit


def _shared_room(process: Process, least: float, most: float) -> Window | None:
    """Room for one feed that suits the smallest and the largest bead; None if there is none."""
    if process.by_hand.wire_feed_m_s is not None:
        return process.room(most).window  # it is fixed; a note tells what is out
    rooms = [process.room(section) for section in ({least, most})]
    if any(not room.window.open or room.heat_fight is not None for room in rooms):
        return None
    low = max((room.window for room in rooms), key=lambda window: window.low)
    high = min((room.window for room in rooms), key=lambda window: window.high)
    both = Window(low.low, high.high, low.low_limit, high.high_limit)
    return both if both.open else None


def _for_aims(plan: Plan, process: Process, window: Window, section: float) -> Plan:
    """The plan of a job's dial-in, turned to a part's process and room."""
    return replace(
        plan,
        transfer=process.transfer,
        refused=None,
        tip_to_work_m=process.tip_to_work_m,
        efficiency=process.efficiency,
        passes=max(1, round(plan.shape.section_m2 / section)),
        currents=process.currents,
        feeds=window,
        run=process.run(section),
        heat_fight=None,
    )


def _feed(plan: Plan, process: Process, window: Window, section: float) -> float:
    fixed = process.by_hand.wire_feed_m_s
    if fixed is not None:
        return fixed
    if process.travel_m_s is not None:
        wanted = feed_for_travel(
            process.job.wire, process.travel_m_s, section, process.efficiency[1]
        )
        return window.hold(wanted)
    feed = aimed_feed(_for_aims(plan, process, window, section), process.job.aim)
    return stepped(feed, "wire_feed", process.job.units, window)


def _point(plan: Plan, process: Process, feed: float, window: Window, section: float) -> Operating:
    return set_point(_for_aims(plan, process, window, section), feed)


def _one(job: Job, process: Process, point: Operating, section: float) -> Laid:
    run = process.run(section)
    travel = run.filling(point.feed_m_s)
    time = job.weld_length_m / travel
    wire = point.feed_m_s * time
    return Laid(
        transfer=process.transfer,
        point=point,
        tip_to_work_m=process.tip_to_work_m,
        travel_m_s=travel,
        heat_j_m=run.heat(point, travel),
        heat_en_j_m=heat_input_en(point.volts, point.current_a, travel),
        arc_time_s=time,
        wire_m=wire,
        wire_kg=wire * job.wire.linear_mass_kg_m,
    )
