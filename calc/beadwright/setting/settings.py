"""The four settings of a plan, each with its room and the limits at its ends."""

from __future__ import annotations

from math import inf

from beadwright.job.job import Job
from beadwright.phrases import say
from beadwright.process.operating import Operating
from beadwright.results import Quantity
from beadwright.setting.limits import Window
from beadwright.setting.outcome import Settings
from beadwright.setting.plan import Plan
from beadwright.setting.set_point import set_feed, set_point
from beadwright.setting.size_limits import bead_room
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.volts_limits import volts_room


def settings_of(job: Job, plan: Plan) -> tuple[Settings, Operating | None, float | None]:
    """Return the four settings, the operating point, and the travel [m/s].

    Each window is what its own limits leave while the other three stand. Without a set point
    only the feed's window is known, and the rest is None.

    Args:
        job: The job [-].
        plan: Its plan [-].
    """
    feed = set_feed(plan)
    wire_feed = _wire_feed(job, plan, feed)
    if feed is None:
        return _blank(job, plan, wire_feed), None, None
    run = plan.run
    point = set_point(plan, feed)
    travel = run.travel(feed)
    travel_window = travel_room(run, point, bead_room(job, plan.shape, plan.passes))
    settings = Settings(
        wire_feed,
        _volts(job, plan, point),
        _tip_to_work(job, plan, tip_room(run, point, travel)),
        _travel(job, travel, travel_window),
    )
    return settings, point, travel


def _wire_feed(job: Job, plan: Plan, feed: float | None) -> Quantity:
    window = plan.feeds
    sources = ("power-balance", window.low_limit.source, window.high_limit.source)
    by_hand = job.by_hand.wire_feed_m_s is not None
    return windowed("Wire feed", "wire_feed", feed, window, by_hand, sources)


def _blank(job: Job, plan: Plan, wire_feed: Quantity) -> Settings:
    hand, tip = job.by_hand, plan.tip_to_work_m
    return Settings(
        wire_feed,
        Quantity("Volts at the arc", "volts", hand.volts, meaning="window",
                 by_hand=hand.volts is not None),
        Quantity("Stickout (tip to work)", "tip_to_work", tip, meaning="window",
                 by_hand=hand.tip_to_work_m is not None),
        Quantity("Travel speed", "travel", None, meaning="window"),
    )  # fmt: skip


def _volts(job: Job, plan: Plan, point: Operating) -> Quantity:
    if plan.transfer == "pulse":
        return Quantity(
            "Volts at the arc",
            "volts",
            None,
            meaning="window",
            sources=("practice",),
            low_by=say("setting.pulse-sets-volts"),
        )
    sources = job.wire.traits.volts_sources
    by_hand = job.by_hand.volts is not None
    window = volts_room(plan.run, point)
    return windowed("Volts at the arc", "volts", point.volts, window, by_hand, sources)


def _tip_to_work(job: Job, plan: Plan, window: Window) -> Quantity:
    sources = ("power-source-conditions", "practice")
    by_hand = job.by_hand.tip_to_work_m is not None
    return windowed(
        "Stickout (tip to work)", "tip_to_work", plan.tip_to_work_m, window, by_hand, sources
    )


def _travel(job: Job, travel: float, window: Window) -> Quantity:
    sources = ("mass-balance", "fillet-reinforced")
    by_hand = job.by_hand.travel_m_s is not None
    return windowed("Travel speed", "travel", travel, window, by_hand, sources)


def windowed(
    name: str,
    measure: str,
    value: float | None,
    window: Window,
    by_hand: bool,
    sources: tuple[str, ...] = (),
) -> Quantity:
    """Return a setting with its window and what binds either end.

    Args:
        name: The trade's name for it [-].
        measure: Its measure [-].
        value: As set, or None without a set point [SI].
        window: Its window [SI].
        by_hand: True if it is fixed by hand [-].
        sources: Source ids [-].
    """
    return Quantity(
        name=name,
        measure=measure,
        value=value,
        low=window.low if window.low > -inf else None,
        high=window.high if window.high < inf else None,
        meaning="window",
        sources=sources,
        low_by=window.low_limit.why,
        high_by=window.high_limit.why,
        by_hand=by_hand,
    )
