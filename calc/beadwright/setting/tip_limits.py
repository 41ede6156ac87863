"""Every limit on the tip-to-work at a set point."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.phrases import say
from beadwright.process.arc import arc_length_m
from beadwright.process.burnoff import current_from_feed, extension_from_feed
from beadwright.process.operating import Operating, extension
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import MODE_PHRASES, transition_current
from beadwright.root import crossing
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from beadwright.setting.volts_limits import mode_volts

_TOL = 1e-6
"""Share by which an end may be passed and still count as held [-]."""


def tip_room(run: Run, point: Operating, travel_m_s: float) -> Window:
    """Return the room for the tip-to-work while feed, volts and travel stand [m].

    Farther out the same feed draws less current, so the limits on current and heat bind it.

    Args:
        run: The run [-].
        point: The operating point [-].
        travel_m_s: Travel, above zero [m/s].
    """
    job = run.job
    low, _, high = tip_to_work(job.wire, run.transfer)
    usual = say("setting.usual-tip-range", mode=MODE_PHRASES[run.transfer])
    limits = [Limit("tip-range", usual, low, high)]
    if run.transfer != "pulse":
        limits.extend(_of_arc(run, point, low, high))
    arc = arc_length_m(point.volts)
    # Heat is volts times current over travel: at this point a limit on one is one on the other.
    per_amp = point.volts / travel_m_s
    for lowest, highest, limit_low, limit_high, out, closer in (
        (run.currents.low, run.currents.high, run.currents.low_limit, run.currents.high_limit,
         "setting.farther-out", "setting.closer-in"),
        (run.heats.low / per_amp, run.heats.high / per_amp, run.heats.low_limit,
         run.heats.high_limit, "setting.farther-out-puts-in", "setting.closer-in-puts-in"),
    ):  # fmt: skip
        if not lowest <= point.current_a <= highest:
            continue
        if lowest > 0:
            longest = extension_from_feed(job.wire, point.feed_m_s, lowest) + arc
            why = say(out, why=limit_low.why)
            limits.append(Limit("current-low", why, high=longest, source=limit_low.source))
        if highest < inf:
            closest = extension_from_feed(job.wire, point.feed_m_s, highest) + arc
            why = say(closer, why=limit_high.why)
            limits.append(Limit("current-high", why, low=closest, source=limit_high.source))
    return tightest_window(limits)


def _of_arc(run: Run, point: Operating, low: float, high: float) -> Iterator[Limit]:
    """Closer in the current asks more volts, farther out fewer, than stand."""
    job, volts = run.job, point.volts
    mode = MODE_PHRASES[run.transfer]

    def over(tip: float, end: int) -> float:
        """Volts of an end of the mode's room over those set."""
        reach = extension(tip, volts)
        current = current_from_feed(job.wire, point.feed_m_s, reach)
        return mode_volts(run, current)[end] - volts

    if not over(run.tip_to_work_m, 0) <= 0 <= over(run.tip_to_work_m, 1):
        return
    if over(low, 0) > 0:
        closest = crossing(lambda tip: over(tip, 0), low, run.tip_to_work_m, 0.0)
        yield Limit("arc-short", say("setting.stubs-closer-in", mode=mode), low=closest)
    # Where the current falls below spray, the room for short circuit opens at once.
    least = transition_current(job.wire, job.gas) if run.transfer == "short" else 0.0
    reach = extension_from_feed(job.wire, point.feed_m_s, least) if least > 0 else inf
    for far in (high, reach * (1 - _TOL) + arc_length_m(volts)):
        if run.tip_to_work_m < far <= high and over(far, 1) < 0:
            farthest = crossing(lambda tip: over(tip, 1), run.tip_to_work_m, far, 0.0)
            why = say("setting.gives-way-farther-out", mode=mode)
            yield Limit("arc-long", why, high=farthest)
