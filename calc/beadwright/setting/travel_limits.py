"""Every limit on the travel at a set point."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.process.deposition import travel_for_section
from beadwright.process.operating import Operating
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run


def travel_room(run: Run, point: Operating, section_room_m2: tuple[float, float]) -> Window:
    """Return the room for the travel while feed and volts stand [m/s].

    Args:
        run: The run [-].
        point: Where the arc stands [-].
        section_room_m2: Largest and smallest section of one bead that is still the joint [m²].
    """
    return tightest_window(_limits(run, point, section_room_m2))


def _limits(run: Run, point: Operating, room_m2: tuple[float, float]) -> Iterator[Limit]:
    job, laid = run.job, run.laid(point.feed_m_s)
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    yield Limit("mover", f"what a {job.travel_by} holds {job.position.orientation}", slow, fast)
    over, under = room_m2
    yield Limit(
        "oversize",
        "slower lays over 1/16 in more leg than asked"
        if job.is_fillet
        else "slower heaps the crown over 1/8 in",
        low=travel_for_section(laid, over, job.wire.material),
        source="mass-balance",
    )
    yield Limit(
        "undersize",
        "faster leaves the leg short even if the face is flat"
        if job.is_fillet
        else "faster leaves less than half the crown",
        high=travel_for_section(laid, under, job.wire.material),
        source="mass-balance",
    )
    heats, power = run.heats, point.volts * point.current_a
    if heats.high < inf:
        limit = heats.high_limit
        text = f"slower puts in {limit.text}"
        yield Limit("heat", text, low=power / heats.high, source=limit.source)
    if heats.low > 0:
        limit = heats.low_limit
        text = f"faster puts in {limit.text}"
        yield Limit("heat-low", text, high=power / heats.low, source=limit.source)
