"""Every limit on the travel at a set point."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.phrases import say
from beadwright.process.deposition import travel_for_section
from beadwright.process.operating import Operating
from beadwright.process.positions import MOVER_PHRASES, TRAVEL_RANGE_M_S
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run


def travel_room(run: Run, point: Operating, section_room_m2: tuple[float, float]) -> Window:
    """Return the room for the travel while feed and volts stand [m/s].

    Args:
        run: The run [-].
        point: The operating point [-].
        section_room_m2: Largest and smallest section of one bead that is still the joint [m²].
    """
    return tightest_window(_limits(run, point, section_room_m2))


def _limits(run: Run, point: Operating, room_m2: tuple[float, float]) -> Iterator[Limit]:
    job, laid = run.job, run.laid(point.feed_m_s)
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    held = say(
        "setting.mover-holds",
        mover=MOVER_PHRASES[job.travel_by],
        orientation=job.position.phrase,
    )
    yield Limit("mover", held, slow, fast)
    over, under = room_m2
    yield Limit(
        "oversize",
        say("setting.slower-overwelds-leg" if job.is_fillet else "setting.slower-heaps-crown"),
        low=travel_for_section(laid, over, job.wire.material),
        source="mass-balance",
    )
    yield Limit(
        "undersize",
        say("setting.faster-leg-short" if job.is_fillet else "setting.faster-half-crown"),
        high=travel_for_section(laid, under, job.wire.material),
        source="mass-balance",
    )
    heats, power = run.heats, point.volts * point.current_a
    if heats.high < inf:
        limit = heats.high_limit
        why = say("setting.slower-puts-in", heat=limit.why)
        yield Limit("heat", why, low=power / heats.high, source=limit.source)
    if heats.low > 0:
        limit = heats.low_limit
        why = say("setting.faster-puts-in", heat=limit.why)
        yield Limit("heat-low", why, high=power / heats.low, source=limit.source)
