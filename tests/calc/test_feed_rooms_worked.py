"""The room for the feed: each end stands on the line that names it, worked by hand."""

from dataclasses import replace
from math import inf

import pytest

from beadwright.phrases import Phrase
from beadwright.process.arc import arc_length_m
from beadwright.process.burnoff import feed_from_current
from beadwright.process.transfer import Transfer
from beadwright.setting.current_limits import current_limits
from beadwright.setting.feed_limits import FEEDER_M_S, feed_room
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from tests.calc.test_rooms_worked import ANY, IN_MIN, SOLID, between, run_of

WIDE = (1e-3, 1e-7)


def test_the_feed_of_the_current_s_limits() -> None:
    """Spray in 90/10 from 225 + 15 × 2/7 A to 380 A, volts on the line."""
    run = run_of("spray")
    room = feed_room(replace(run, section_m2=40e-6), WIDE)
    assert room.kept
    assert room.heat_fight is None
    window = room.window
    assert window.low_limit.key == "transition"
    assert run.point(window.low).current_a == pytest.approx(225 + 15 * 2 / 7, rel=1e-6)
    assert window.high_limit.key == "wire-top"
    assert run.point(window.high).current_a == pytest.approx(380, rel=1e-6)


def test_the_feeder_holds_50_to_800() -> None:
    assert tuple(feed / IN_MIN for feed in FEEDER_M_S) == pytest.approx((50, 800))


@pytest.mark.parametrize(("section", "end", "travel"), [(8e-6, "high", 40.0), (500e-6, "low", 6.0)])
def test_a_hand_binds_the_feed(section: float, end: str, travel: float) -> None:
    """Horizontal, 6 to 40 in/min: travel × section × 7850 is feed × mass × 0.97."""
    run = replace(run_of("spray"), section_m2=section)
    window = feed_room(run, WIDE).window
    feed, limit = (
        (window.high, window.high_limit) if end == "high" else (window.low, window.low_limit)
    )
    assert limit.key == f"travel-{end}"
    laid = feed * run.job.wire.linear_mass_kg_m * 0.97
    assert laid == pytest.approx(travel * IN_MIN * section * 7850)


def test_a_travel_set_by_hand_binds_the_feed_by_size() -> None:
    """At 10 in/min the feed lays from the smallest section to the largest."""
    run = run_of("spray", query="&travel=10in/min")
    room = feed_room(run, (46e-6, 44e-6))
    assert room.kept
    for feed, limit, key, section in (
        (room.window.low, room.window.low_limit, "undersize", 44e-6),
        (room.window.high, room.window.high_limit, "oversize", 46e-6),
    ):
        assert limit.key == key
        laid = feed * run.job.wire.linear_mass_kg_m * 0.97
        assert laid == pytest.approx(10 * IN_MIN * section * 7850)


def test_a_feed_set_by_hand_is_kept_inside_the_room() -> None:
    for feed, kept in ((400, True), (50, False), (790, False)):
        run = replace(run_of("spray", query=f"&wfs={feed}in/min"), section_m2=60e-6)
        assert feed_room(run, WIDE).kept is kept


def test_the_heat_binds_the_feed() -> None:
    """Less heat than the line puts in at most: volts × amps over the travel that fills."""
    run = replace(run_of("spray"), section_m2=60e-6)
    free = feed_room(run, WIDE).window
    here = run.point(free.place(0.5))
    travel = here.feed_m_s * run.job.wire.linear_mass_kg_m * 0.97 / (7850 * 60e-6)
    heat = here.volts * here.current_a / travel
    ends = [run.heat(run.point(feed)) for feed in (free.low, free.high)]
    assert run.heat(here) == pytest.approx(heat)
    # Two hundredths are left for the steps of a hand.
    held = replace(
        run,
        heats=tightest_window([Limit("heat-max", Phrase("too much"), low=0.0, high=heat / 0.98)]),
    )
    room = feed_room(held, WIDE)
    assert room.kept
    bound = room.window.high if ends[1] > ends[0] else room.window.low
    assert bound == pytest.approx(here.feed_m_s, rel=1e-6)
    # Hotter than any: the limit is named, and nothing is kept.
    fight = replace(
        run, heats=tightest_window([Limit("heat-max", Phrase("too much"), low=0.0, high=heat / 50)])
    )
    fought = feed_room(fight, WIDE)
    assert not fought.kept
    assert fought.heat_fight is not None
    assert fought.heat_fight.key == "heat-max"


# With the wire's own limits on the current, and volts, travel or heat set.

CORED = "wire=E70C-6M&dia=1/16in&plate=3/8in"


def real_run(transfer: Transfer, query: str = "", wire: str = SOLID, tip: float = 0.016) -> Run:
    run = replace(run_of(transfer, query=query, wire=wire, tip=tip), section_m2=40e-6)
    return replace(run, currents=tightest_window(current_limits(run.job, transfer)))


def feed_at(run: Run, amps: float, volts: float) -> float:
    """The feed that draws a current on volts, the arc's length off the tip-to-work."""
    return feed_from_current(run.job.wire, amps, run.tip_to_work_m - arc_length_m(volts))


@pytest.mark.parametrize(
    ("volts", "end", "key", "amps"),
    [
        # The low end, 18.2 + 0.025 I, comes up to 26 V at 312 A; the high one, 22.9 + 0.025 I, to
        # 30 V at 284 A.
        (26.0, "high", "arc-short", 312.0),
        (30.0, "low", "arc-long", 284.0),
        # Where neither binds: the transition on 27 V, and the wire's top on 28.5 V.
        (27.0, "low", "transition", 225 + 15 * 2 / 7),
        (28.5, "high", "wire-top", 380.0),
    ],
)
def test_volts_set_by_hand_bind_the_feed(volts: float, end: str, key: str, amps: float) -> None:
    run = real_run("spray", f"&volts={volts}V")
    room = feed_room(run, WIDE)
    assert room.kept
    limit = room.window.low_limit if end == "low" else room.window.high_limit
    assert limit.key == key
    found = room.window.low if end == "low" else room.window.high
    assert found == pytest.approx(feed_at(run, amps, volts), rel=1e-6)


@pytest.mark.parametrize("volts", [15.0, 50.0])
def test_volts_no_feed_suits_leave_the_room_as_it_was(volts: float) -> None:
    """15 V stub and 50 V are too long at every current: the room stands as without them."""
    held, free = real_run("spray", f"&volts={volts}V"), real_run("spray")
    window, without = feed_room(held, WIDE).window, feed_room(free, WIDE).window
    assert (window.low, window.high) == pytest.approx((without.low, without.high))
    assert window.open


def test_pulse_leaves_volts_to_the_machine() -> None:
    held, free = real_run("pulse", "&volts=20V"), real_run("pulse")
    window, without = feed_room(held, WIDE).window, feed_room(free, WIDE).window
    assert (window.low, window.high) == pytest.approx((without.low, without.high))


@pytest.mark.parametrize("currents", [ANY, between(300.0, 200.0)])
def test_without_room_for_the_current_volts_bind_no_feed(currents: Window) -> None:
    run = replace(real_run("spray", "&volts=26V"), currents=currents)
    window = feed_room(run, WIDE).window
    assert window.high_limit.key == "wire-top"


@pytest.mark.parametrize(
    ("volts", "feed_amps", "low", "high"),
    [
        # Metal-cored 1/16 in, 90/10. It sprays from 235 A, on 15.4 + 0.025 I V and up; short
        # circuit ends at 15.9 + 0.034 I V. On 22.5 V: shorts too long under 194.1 A.
        (22.5, None, ("arc-long", 6.6 / 0.034), ("spray-begins", 235.0)),
        # On 21.5 V the spray line is past again at 244 A, and short circuit runs on to 260 A.
        (21.5, None, ("arc-long", 5.6 / 0.034), ("spray-begins", 235.0)),
        (21.5, 200.0, ("arc-long", 5.6 / 0.034), ("spray-begins", 235.0)),
        (21.5, 250.0, ("spray-begins", 244.0), ("short-top", 260.0)),
        # Under 21.275 V it never sprays where it may short.
        (21.2, None, ("arc-long", 5.3 / 0.034), ("short-top", 260.0)),
    ],
)
def test_short_circuit_beside_spray(
    volts: float, feed_amps: float | None, low: tuple[str, float], high: tuple[str, float]
) -> None:
    run = replace(real_run("short", f"&volts={volts}V", wire=CORED), section_m2=15e-6)
    if feed_amps is not None:
        hand = replace(run.job.by_hand, wire_feed_m_s=feed_at(run, feed_amps, volts))
        run = replace(run, job=replace(run.job, by_hand=hand))
    window = feed_room(run, WIDE).window
    assert (window.low_limit.key, window.high_limit.key) == (low[0], high[0])
    assert window.low == pytest.approx(feed_at(run, low[1], volts), rel=1e-6)
    assert window.high == pytest.approx(feed_at(run, high[1], volts), rel=1e-6)


def test_a_feed_on_the_very_end_is_kept() -> None:
    run = real_run("spray")
    window = feed_room(run, WIDE).window
    for feed in (window.low, window.high):
        hand = replace(run.job.by_hand, wire_feed_m_s=feed)
        assert feed_room(replace(run, job=replace(run.job, by_hand=hand)), WIDE).kept


TRAVEL = 10 * IN_MIN


@pytest.mark.parametrize(
    ("transfer", "query", "most", "least"),
    [
        # At 10 in/min the volts may follow: the most feed that keeps a most runs on the low end,
        # 26.45 V at 330 A; the least that keeps a least on the high one, 29.4 V at 260 A.
        ("spray", "&travel=10in/min", (330.0, 26.45), (260.0, 29.4)),
        # Pulse keeps the middle, 20.4 + 0.025 I V.
        ("pulse", "&travel=10in/min", (300.0, 27.9), (200.0, 25.4)),
        # Volts set too.
        ("spray", "&travel=10in/min&volts=28V", (330.0, 28.0), (260.0, 28.0)),
    ],
)
def test_the_heat_at_a_travel_set_by_hand_binds_the_feed(
    transfer: Transfer, query: str, most: tuple[float, float], least: tuple[float, float]
) -> None:
    run = real_run(transfer, query)
    (top_a, top_v), (low_a, low_v) = most, least
    for low, high in (
        (0.0, top_a * top_v / TRAVEL),
        (low_a * low_v / TRAVEL, inf),
        (low_a * low_v / TRAVEL, top_a * top_v / TRAVEL),
    ):
        heats = tightest_window(
            [
                Limit("heat-max", Phrase("over"), high=high),
                Limit("heat-min", Phrase("under"), low=low),
            ]
        )
        room = feed_room(replace(run, heats=heats), WIDE)
        assert room.kept
        if high < inf:
            assert room.window.high_limit.key == "heat-max"
            assert room.window.high == pytest.approx(feed_at(run, top_a, top_v), rel=1e-5)
            assert room.window.high < feed_at(run, top_a, top_v)
        if low > 0:
            assert room.window.low_limit.key == "heat-min"
            assert room.window.low == pytest.approx(feed_at(run, low_a, low_v), rel=1e-5)
            assert room.window.low > feed_at(run, low_a, low_v)


@pytest.mark.parametrize("share", [0.02, 0.5, 0.98])
def test_a_heat_kept_at_an_end_of_the_room_only(share: float) -> None:
    """Two hundredths are left for a hand's steps; what is asked keeps to one side of a spot."""
    run = real_run("spray")
    free = feed_room(run, WIDE).window
    spot = free.place(share)
    heat = run.heat(run.point(spot))
    rises = run.heat(run.point(free.high)) > run.heat(run.point(free.low))
    most = tightest_window([Limit("heat-max", Phrase("over"), low=0.0, high=heat / 0.98)])
    least = tightest_window([Limit("heat-min", Phrase("under"), low=heat * 0.98)])
    for heats, key, under in ((most, "heat-max", rises), (least, "heat-min", not rises)):
        room = feed_room(replace(run, heats=heats), WIDE)
        assert room.kept
        end, limit = (
            (room.window.high, room.window.high_limit)
            if under
            else (room.window.low, room.window.low_limit)
        )
        assert limit.key == key
        assert end == pytest.approx(spot, rel=1e-6)


def test_a_heat_just_past_the_end_is_kept_by_none() -> None:
    run = real_run("spray")
    free = feed_room(run, WIDE).window
    heats = [run.heat(run.point(feed)) for feed in (free.low, free.high)]
    for least in (False, True):
        limit = (
            Limit("heat-min", Phrase("under"), low=1.001 * max(heats) * 0.98)
            if least
            else Limit("heat-max", Phrase("over"), high=0.999 * min(heats) / 0.98)
        )
        held = replace(run, heats=tightest_window([Limit("any", Phrase("any"), low=0.0), limit]))
        room = feed_room(held, WIDE)
        assert not room.kept
        assert room.heat_fight is not None
        assert room.heat_fight.key == limit.key
