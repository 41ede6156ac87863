"""Every limit on the volts at a wire feed, and the operating point at their ends."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, say
from beadwright.process.operating import Operating, volts_window
from beadwright.process.transfer import MODE_PHRASES, Transfer, spray_refused, transition_current
from beadwright.root import crossing
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run

START_V = 25.0
"""Volts from which the search for an end begins; any start finds it [V]."""

_ROUNDS = 8
"""Most steps to an end of the volts; three are usual [-]."""

_SETTLED = 1e-8
"""Difference at which the steps end [V]."""

_TOL = 1e-8
"""Share by which a limit may be passed and still count as held [-]."""


def volts_room(run: Run, point: Operating) -> Window:
    """Return the room for the volts while the wire feed stands [V].

    A longer arc shortens the extension, so the current goes up a little with the volts: the limits
    on current and heat bind the volts too.

    Args:
        run: The run; not pulsed, where the machine sets its own volts [-].
        point: The operating point; its feed is held [-].
    """
    job, feed = run.job, point.feed_m_s
    mode = MODE_PHRASES[run.transfer]
    low = edge_point(run, point, run.transfer, 0)
    high = edge_point(run, point, run.transfer, 2)
    limits = [
        Limit("arc-short", say("setting.stubs-below", mode=mode), low=low.volts),
        Limit("arc-long", say("setting.too-long-above", mode=mode), high=high.volts),
    ]
    limits.extend(_of_mode(run, point))
    if job.machine_volts_v is not None:
        why = say("setting.machine-stops-at-volts", most=Amount(job.machine_volts_v, "volts"))
        limits.append(Limit("machine", why, high=job.machine_volts_v, source="yours"))

    def current(volts: float) -> float:
        return run.point(feed, volts).current_a

    def heat(volts: float) -> float:
        return run.heat(run.point(feed, volts))

    currents, heats = run.currents, run.heats
    # Within the tolerance: under the shortest arc the current no longer changes with the volts.
    least, most = currents.low * (1 - _TOL), currents.high * (1 + _TOL)
    if low.current_a < least <= high.current_a:
        at = crossing(current, low.volts, high.volts, least)
        limit = currents.low_limit
        why = say("setting.lower-volts", why=limit.why)
        limits.append(Limit("current-low", why, low=at, source=limit.source))
    if low.current_a <= most < high.current_a:
        at = crossing(current, low.volts, high.volts, most)
        limit = currents.high_limit
        why = say("setting.higher-volts", why=limit.why)
        limits.append(Limit("current-high", why, high=at, source=limit.source))
    coolest, hottest = run.heat(low), run.heat(high)
    if coolest < heats.low <= hottest:
        at = crossing(heat, low.volts, high.volts, heats.low)
        why = say("setting.lower-volts-put-in", heat=heats.low_limit.why)
        limits.append(Limit("heat-low", why, low=at, source=heats.low_limit.source))
    if coolest <= heats.high < hottest:
        at = crossing(heat, low.volts, high.volts, heats.high)
        why = say("setting.higher-volts-put-in", heat=heats.high_limit.why)
        limits.append(Limit("heat-high", why, high=at, source=heats.high_limit.source))
    return tightest_window(limits)


def mode_volts(run: Run, current_a: float) -> tuple[float, float]:
    """Return the lowest and highest volts at which a mode is itself and not its neighbor [V].

    Args:
        run: The run; not pulsed [-].
        current_a: Mean current [A].
    """
    wire, gas = run.job.wire, run.job.gas
    low, _, high = volts_window(current_a, wire, gas, run.transfer)
    if run.transfer == "globular":
        return max(low, volts_window(current_a, wire, gas, "short")[2]), high
    sprays = run.transfer == "short" and not spray_refused(wire, gas)
    if sprays and current_a >= transition_current(wire, gas):
        return low, min(high, volts_window(current_a, wire, gas, "spray")[0])
    return low, high


def _of_mode(run: Run, point: Operating) -> Iterator[Limit]:
    """Where the neighboring mode begins inside the volts a mode is given."""
    wire, gas = run.job.wire, run.job.gas
    if run.transfer == "short" and not spray_refused(wire, gas):
        spray = edge_point(run, point, "spray", 0)
        if spray.current_a >= transition_current(wire, gas):
            yield Limit("spray-begins", say("setting.sprays-above"), high=spray.volts)
    elif run.transfer == "globular":
        shorts = edge_point(run, point, "short", 2)
        yield Limit("short-ends", say("setting.shorts-below"), low=shorts.volts)


def edge_point(run: Run, point: Operating, transfer: Transfer, end: int) -> Operating:
    """Return the operating point on an end of a mode's volts, the feed held.

    Args:
        run: The run [-].
        point: Where to start; its feed is held [-].
        transfer: The mode whose volts are meant [-].
        end: 0 for the low end, 2 for the high one, as of ``operating.volts_window`` [-].
    """
    job, here = run.job, point
    over = asked = 0.0  # by how much the end is over the volts, and the volts at which that was
    for turn in range(_ROUNDS):
        gap = volts_window(here.current_a, job.wire, job.gas, transfer)[end] - here.volts
        if abs(gap) <= _SETTLED * here.volts:
            break
        # The end changes with the volts almost on a straight line: step to where they meet.
        slope = (gap - over) / (here.volts - asked) if turn else -1.0
        over, asked = gap, here.volts
        here = run.point(point.feed_m_s, asked - gap / slope)
    return here
