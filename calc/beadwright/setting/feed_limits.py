"""Every limit on the wire feed, and the window they leave."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import partial
from math import inf

from beadwright.measures import INCH_M
from beadwright.phrases import Amount, say
from beadwright.process.deposition import feed_for_travel
from beadwright.process.operating import feed_at_current, volts_window
from beadwright.process.positions import MOVER_PHRASES, TRAVEL_RANGE_M_S
from beadwright.process.transfer import MODE_PHRASES, spray_refused, transition_current
from beadwright.root import crossing
from beadwright.setting.current_limits import current_limits
from beadwright.setting.heat_limits import STEP_ROOM
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from beadwright.setting.volts_limits import volts_room

FEEDER_M_S = (50 * INCH_M / 60, 800 * INCH_M / 60)
"""Feeds a usual feeder holds steadily [m/s]. Common practice."""

_ROUNDING_ROOM = 1 - 1e-6
"""Share of a heat limit used where no step of a hand follows: the rest is for rounding [-]."""
_LOOKED_AT = (0.0, 1.0, 0.5, 0.25, 0.1, 0.05, 0.15, 0.2, 0.3, 0.4, 0.6, 0.7, 0.8, 0.9)
"""Shares of the window at which a feed within the heat limits is looked for, ends first."""
_ANY_HEAT = tightest_window([Limit("heat", say("setting.any-heat"), low=0.0)])


@dataclass(frozen=True, slots=True)
class FeedRoom:
    """The room for the wire feed.

    Attributes:
        window: What the limits leave [m/s].
        heat_fight: The heat limit that no feed in the window keeps, or None.
        kept: True if what is fixed by hand can be kept with every other limit.
    """

    window: Window
    heat_fight: Limit | None
    kept: bool


def feed_room(run: Run, section_room_m2: tuple[float, float]) -> FeedRoom:
    """Return the room for the wire feed; volts and travel follow it unless set by hand.

    What is fixed by hand narrows the room only if some room is left; otherwise the room is as
    without it, and the setting fixed by hand is out.

    Args:
        run: The run [-].
        section_room_m2: Largest and smallest section of one bead that is still the joint [m²].
    """
    hand = run.job.by_hand
    found = FeedRoom(tightest_window(_of_feeder()), None, False)
    for volts, travel in _tied(run):
        limits = [*_of_current(run, hand.volts if volts else None), *_of_feeder()]
        limits += _of_size(run, section_room_m2) if travel else _of_travel(run)
        limits += _of_arc(run, hand.volts) if volts and hand.volts is not None else ()
        found = _with_heat(run, limits, volts=volts, travel=travel)
        if found.kept:
            kept = travel == (hand.travel_m_s is not None) and _feed_kept(run, found.window)
            return replace(found, kept=kept)
    return found


def _tied(run: Run) -> list[tuple[bool, bool]]:
    """Choices of volts and travel fixed by hand to keep, those with the most kept first."""
    volts = run.job.by_hand.volts is not None and run.transfer != "pulse"
    travel = run.job.by_hand.travel_m_s is not None
    ways = ((True, True), (False, True), (True, False), (False, False))
    return [(v, t) for v, t in ways if (volts or not v) and (travel or not t)]


def _with_heat(run: Run, limits: list[Limit], *, volts: bool, travel: bool) -> FeedRoom:
    """The room under some limits and the heat, with volts and travel fixed or following."""
    window = tightest_window(limits)
    if not window.open:
        return FeedRoom(window, None, False)
    hand = run.job.by_hand
    held = replace(hand, travel_m_s=hand.travel_m_s if travel else None)
    tied = replace(run, job=replace(run.job, by_hand=held))
    heat, fight = _of_heat(tied, window, hand.volts if volts else None, any_volts=travel)
    window = tightest_window([*limits, *heat])
    return FeedRoom(window, fight, fight is None and window.open)


def _feed_kept(run: Run, window: Window) -> bool:
    feed = run.job.by_hand.wire_feed_m_s
    return feed is None or window.low <= feed <= window.high


def _of_current(run: Run, volts: float | None) -> Iterator[Limit]:
    job, tip = run.job, run.tip_to_work_m

    def feed(current: float) -> float:
        if current in (inf, -inf):
            return current
        if volts is None:
            return run.feed_at(current)
        return feed_at_current(job.wire, job.gas, run.transfer, current, tip, volts)

    for limit in current_limits(job, run.transfer):
        yield replace(limit, low=feed(limit.low), high=feed(limit.high))


def _of_feeder() -> Iterator[Limit]:
    yield Limit("feeder", say("setting.feeder-holds"), *FEEDER_M_S)


def _of_travel(run: Run) -> Iterator[Limit]:
    job = run.job
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    mover, position = MOVER_PHRASES[job.travel_by], job.position.phrase
    yield Limit(
        "travel-low",
        say(
            "setting.mover-not-steady",
            travel=Amount(slow, "travel"),
            mover=mover,
            orientation=position,
        ),
        low=feed_for_travel(job.wire, slow, run.section_m2, run.efficiency),
    )
    yield Limit(
        "travel-high",
        say("setting.mover-loses-joint", travel=Amount(fast, "travel"), mover=mover),
        high=feed_for_travel(job.wire, fast, run.section_m2, run.efficiency),
    )


def _of_size(run: Run, section_room_m2: tuple[float, float]) -> Iterator[Limit]:
    """At a travel fixed by hand the feed sets the size."""
    travel = run.job.by_hand.travel_m_s
    assert travel is not None  # asked only then
    most, least = (
        feed_for_travel(run.job.wire, travel, section, run.efficiency)
        for section in section_room_m2
    )
    yield Limit("undersize", say("setting.less-feed-short"), low=least, source="mass-balance")
    yield Limit("oversize", say("setting.more-feed-overwelds"), high=most, source="mass-balance")


def _of_arc(run: Run, volts: float) -> Iterator[Limit]:
    """At volts fixed by hand the current must suit them."""
    job, currents = run.job, run.currents
    mode, shown = MODE_PHRASES[run.transfer], Amount(volts, "volts")

    def edge(end: int) -> tuple[float, float]:
        ends = (currents.low, currents.high)
        one, other = (volts_window(amps, job.wire, job.gas, run.transfer)[end] for amps in ends)
        return one, other

    def current(end: int) -> float:
        return crossing(
            lambda amps: volts_window(amps, job.wire, job.gas, run.transfer)[end],
            max(currents.low, 1.0),
            min(currents.high, 2000.0),
            volts,
        )

    def feed(amps: float) -> float:
        return feed_at_current(job.wire, job.gas, run.transfer, amps, run.tip_to_work_m, volts)

    if not currents.open or currents.high == inf:
        return
    if run.transfer == "short" and not spray_refused(job.wire, job.gas):
        least = transition_current(job.wire, job.gas)
        if volts >= volts_window(least, job.wire, job.gas, "spray")[0]:
            yield _beside_spray(run, volts, least)
    at_low, at_high = edge(0)
    if at_low > volts:  # stubs at every current in the room
        yield Limit("arc-short", say("setting.volts-stub", volts=shown), high=0.0)
    elif at_high > volts:
        why = say("setting.more-feed-stubs", volts=shown, mode=mode)
        yield Limit("arc-short", why, high=feed(current(0)))
    at_low, at_high = edge(2)
    if at_high < volts:
        yield Limit("arc-long", say("setting.volts-too-long", volts=shown), low=inf)
    elif at_low < volts:
        why = say("setting.less-feed-too-long", volts=shown, mode=mode)
        yield Limit("arc-long", why, low=feed(current(2)))


def _beside_spray(run: Run, volts: float, least: float) -> Limit:
    """Short circuit lies below the currents at which these volts spray, and above them again."""
    job, hand = run.job, run.job.by_hand.wire_feed_m_s

    def feed(amps: float) -> float:
        return feed_at_current(job.wire, job.gas, run.transfer, amps, run.tip_to_work_m, volts)

    def foot(amps: float) -> float:
        return volts_window(amps, job.wire, job.gas, "spray")[0]

    why = say(
        "setting.sprays-on-volts", current=Amount(least, "current"), volts=Amount(volts, "volts")
    )
    top = run.currents.high
    if hand is not None and least < top and foot(top) > volts:
        over = feed(crossing(foot, least, top, volts))
        if hand >= over:
            return Limit("spray-begins", why, low=over)
    return Limit("spray-begins", why, high=feed(least * (1 - 1e-9)))


def _of_heat(
    run: Run, window: Window, volts: float | None, *, any_volts: bool
) -> tuple[list[Limit], Limit | None]:
    """Limits of the heat on the feed, or the one that none in the window keeps.

    The heat is counted on the mode's line, or at the given volts, or, if any volts are allowed, at
    the mode's volts that suit the limit best.
    """
    heats = run.heats
    if heats.low <= 0 and heats.high == inf:
        return [], None

    cold = replace(run, heats=_ANY_HEAT)

    def heat(feed: float, over: bool) -> float:
        point = run.point(feed, volts)
        if any_volts and volts is None and run.transfer != "pulse":
            room = volts_room(cold, point)
            point = run.point(feed, room.low if over else room.high)
        return run.heat(point)

    found: list[Limit] = []
    room = _ROUNDING_ROOM if any_volts or volts is not None else STEP_ROOM
    for level, limit, over in (
        (heats.high * room, heats.high_limit, True),
        (heats.low / room, heats.low_limit, False),
    ):
        if level in (0.0, inf):
            continue
        line = partial(heat, over=over)

        def out(feed: float, level: float = level, over: bool = over) -> bool:
            return heat(feed, over) > level if over else heat(feed, over) < level

        held = next((place for place in map(window.place, _LOOKED_AT) if not out(place)), None)
        if held is None:
            return [], limit
        if held > window.low and out(window.low):
            why = say("setting.less-feed-puts-in", heat=limit.why)
            at = crossing(line, window.low, held, level)
            found.append(Limit(limit.key, why, low=at, source=limit.source))
        if held < window.high and out(window.high):
            why = say("setting.more-feed-puts-in", heat=limit.why)
            at = crossing(line, held, window.high, level)
            found.append(Limit(limit.key, why, high=at, source=limit.source))
    room_left = Limit("heat", say("setting.any-heat"), window.low, window.high)
    if tightest_window([room_left, *found]).open:
        return found, None
    return [], heats.high_limit
