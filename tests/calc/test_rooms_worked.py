"""The rooms for volts, tip-to-work and feed: each end stands on the line that names it.

A limit on current or heat is set at what a spot inside the room draws or puts in; the end must come
back to that spot. An end of a mode must lie on that mode's line, worked by hand from its numbers.
"""

from dataclasses import replace
from math import inf

import pytest

from beadwright.job.job_query import read_query
from beadwright.phrases import Phrase, say
from beadwright.process.arc import arc_length_m
from beadwright.process.burnoff import feed_from_current
from beadwright.process.operating import Operating
from beadwright.process.transfer import Transfer
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.volts_limits import mode_volts, volts_room

ANY = tightest_window([Limit("any", Phrase("any"), low=0.0)])
IN_MIN = 0.0254 / 60
SOLID = "wire=ER70S-6&dia=0.045in&plate=3/8in"


def run_of(
    transfer: Transfer, gas: str = "90/10", tip: float = 0.016, query: str = "", wire: str = SOLID
) -> Run:
    job = read_query(f"{wire}&gas={gas}{query}").job
    return Run(job, transfer, tip, 30e-6, 0.97, ANY, ANY)


def between(low: float, high: float) -> Window:
    return tightest_window(
        [Limit("least", Phrase("the least"), low=low), Limit("most", Phrase("the most"), high=high)]
    )


@pytest.mark.parametrize(
    ("transfer", "gas", "amps", "volts"),
    [
        # 12.9 + 0.5 + 0.034 × 200 V, 2.5 V either way.
        ("short", "90/10", 200, (17.7, 22.7)),
        # At 240 A spray begins at 24.2 V, over short circuit's 24.06; at 300 A at 25.7, under 26.1.
        ("short", "90/10", 240, (19.06, 24.06)),
        ("short", "90/10", 300, (21.1, 25.7)),
        # CO2 does not spray: 12.9 + 1.25 + 1.5 + 10.2 V, 2.5 V either way.
        ("short", "CO2", 300, (23.35, 28.35)),
        # 19.5 + 0.9 + 7.5 V, 2.2 V under and 2.5 over.
        ("spray", "90/10", 300, (25.7, 30.4)),
        # 11.6 + 16.125 V; short circuit ends at 15.65 + 8.5 + 2.5 V, over 25.525.
        ("globular", "CO2", 250, (26.65, 30.225)),
        # 11.6 + 22.575 − 2.2 V, over where short circuit ends, 30.05.
        ("globular", "CO2", 350, (31.975, 36.675)),
    ],
)
def test_volts_of_a_mode_and_not_its_neighbor(
    transfer: Transfer, gas: str, amps: float, volts: tuple[float, float]
) -> None:
    assert mode_volts(run_of(transfer, gas), amps) == pytest.approx(volts)


@pytest.mark.parametrize(
    ("transfer", "gas", "feed", "low", "high"),
    [
        # Foot and slope of the line each end stands on, and its name.
        ("spray", "90/10", 400, (18.2, 0.025, "arc-short"), (22.9, 0.025, "arc-long")),
        ("short", "90/10", 200, (10.9, 0.034, "arc-short"), (15.9, 0.034, "arc-long")),
        ("short", "90/10", 500, (10.9, 0.034, "arc-short"), (18.2, 0.025, "spray-begins")),
        ("short", "CO2", 500, (13.15, 0.034, "arc-short"), (18.15, 0.034, "arc-long")),
        ("globular", "CO2", 300, (18.15, 0.034, "short-ends"), (14.1, 0.0645, "arc-long")),
        ("globular", "CO2", 650, (9.4, 0.0645, "arc-short"), (14.1, 0.0645, "arc-long")),
    ],
)
@pytest.mark.parametrize("start", [None, 18.0, 34.0])
def test_ends_of_the_volts_stand_on_their_lines(
    transfer: Transfer,
    gas: str,
    feed: float,
    low: tuple[float, float, str],
    high: tuple[float, float, str],
    start: float | None,
) -> None:
    run = run_of(transfer, gas)
    room = volts_room(run, run.point(feed * IN_MIN, start))
    for volts, limit, (foot, slope, key) in (
        (room.low, room.low_limit, low),
        (room.high, room.high_limit, high),
    ):
        current = run.point(feed * IN_MIN, volts).current_a
        assert limit.key == key
        assert volts == pytest.approx(foot + slope * current, rel=1e-6)


def test_a_machine_s_volts_end_the_room() -> None:
    run = run_of("spray", query="&machine_volts=27V")
    room = volts_room(run, run.point(400 * IN_MIN))
    assert (room.high, room.high_limit.key) == (27.0, "machine")


def shares(run: Run, feed: float) -> tuple[Window, float, float]:
    """The free room of a feed, and the volts a third and two thirds of the way up it."""
    free = volts_room(run, run.point(feed))
    return free, free.place(1 / 3), free.place(2 / 3)


def test_current_and_heat_bind_the_volts() -> None:
    run, feed = run_of("spray"), 400 * IN_MIN
    _, under, over = shares(run, feed)
    one, other = run.point(feed, under), run.point(feed, over)
    for held, keys in (
        (replace(run, currents=between(one.current_a, other.current_a)),
         ("current-low", "current-high")),
        (replace(run, heats=between(run.heat(one), run.heat(other))), ("heat-low", "heat-high")),
    ):  # fmt: skip
        room = volts_room(held, held.point(feed))
        assert (room.low, room.high) == pytest.approx((under, over), abs=1e-4)
        assert (room.low_limit.key, room.high_limit.key) == keys


def test_limits_outside_the_volts_bind_nothing() -> None:
    run, feed = run_of("spray"), 400 * IN_MIN
    free = volts_room(run, run.point(feed))
    low, high = run.point(feed, free.low), run.point(feed, free.high)
    for currents in (
        between(0.9 * low.current_a, 1.1 * high.current_a),
        between(0.0, 0.9 * low.current_a),
        between(1.1 * high.current_a, 2000.0),
    ):
        held = volts_room(replace(run, currents=currents), low)
        assert (held.low, held.high) == pytest.approx((free.low, free.high))
        assert (held.low_limit.key, held.high_limit.key) == ("arc-short", "arc-long")
    coolest, hottest = run.heat(low), run.heat(high)
    for heats in (
        between(0.9 * coolest, 1.1 * hottest),
        between(0.0, 0.9 * coolest),
        between(1.1 * hottest, 1e9),
    ):
        held = volts_room(replace(run, heats=heats), low)
        assert (held.low_limit.key, held.high_limit.key) == ("arc-short", "arc-long")


def tip_of(run: Run, point: Operating, travel: float) -> Window:
    return tip_room(run, point, travel)


def test_the_tip_keeps_to_its_usual_range() -> None:
    """Pulse has no volts to keep: 1/2 to 1 in for 0.045 in solid wire in an open arc."""
    run = run_of("pulse")
    room = tip_of(run, run.point(400 * IN_MIN, 28.0), 0.006)
    assert (room.low, room.high) == pytest.approx((0.0127, 0.0254))
    assert (room.low_limit.key, room.high_limit.key) == ("tip-range", "tip-range")


def test_current_and_heat_bind_the_tip() -> None:
    """Held at 15 and at 18 mm, the feed draws what the limits are set at."""
    run, feed, volts, travel = run_of("pulse"), 400 * IN_MIN, 28.0, 0.006
    here = run.point(feed, volts)
    most, least = (
        replace(run, tip_to_work_m=tip).point(feed, volts).current_a for tip in (0.015, 0.018)
    )
    assert least < here.current_a < most
    room = tip_of(replace(run, currents=between(least, most)), here, travel)
    assert (room.low, room.high) == pytest.approx((0.015, 0.018))
    assert (room.low_limit.key, room.high_limit.key) == ("current-high", "current-low")
    assert room.low_limit.why == say("setting.closer-in", why=Phrase("the most"))
    per_amp = volts / travel
    room = tip_of(replace(run, heats=between(least * per_amp, most * per_amp)), here, travel)
    assert (room.low, room.high) == pytest.approx((0.015, 0.018))
    assert room.high_limit.why == say("setting.farther-out-puts-in", why=Phrase("the least"))
    # A point on a limit is held to it.
    room = tip_of(replace(run, currents=between(here.current_a, 2000.0)), here, travel)
    assert room.high == pytest.approx(run.tip_to_work_m)
    room = tip_of(replace(run, currents=between(0.0, here.current_a)), here, travel)
    assert room.low == pytest.approx(run.tip_to_work_m)
    # A point already out of a limit is not held to it.
    room = tip_of(replace(run, currents=between(most, 2000.0)), here, travel)
    assert (room.low, room.high) == pytest.approx((0.0127, 0.0254))
    room = tip_of(replace(run, currents=between(0.0, inf)), here, travel)
    assert (room.low, room.high) == pytest.approx((0.0127, 0.0254))


@pytest.mark.parametrize(
    ("transfer", "tip", "foot", "slope", "over"),
    [
        # On its middle volts a mode has room either way: the line of each end, and volts over it.
        ("spray", 0.016, 18.2, 0.025, 0.1),
        ("short", 0.0127, 10.9, 0.034, 0.2),
    ],
)
def test_the_arc_binds_the_tip_close_in(
    transfer: Transfer, tip: float, foot: float, slope: float, over: float
) -> None:
    """Volts a little over the mode's low end: closer in, the current rises to that end."""
    run, feed = run_of(transfer, tip=tip), 250 * IN_MIN
    line = volts_room(run, run.point(feed))
    here = run.point(feed, line.low + over)
    room = tip_of(run, here, 0.006)
    assert room.low_limit.key == "arc-short"
    at_end = replace(run, tip_to_work_m=room.low).point(feed, here.volts)
    assert here.volts == pytest.approx(foot + slope * at_end.current_a, rel=1e-6)
    assert room.low < tip


@pytest.mark.parametrize(
    ("transfer", "tip", "foot", "slope"),
    [("spray", 0.016, 22.9, 0.025), ("short", 0.0127, 15.9, 0.034)],
)
def test_the_arc_binds_the_tip_far_out(
    transfer: Transfer, tip: float, foot: float, slope: float
) -> None:
    """Volts a little under the mode's high end: farther out, the current falls to that end."""
    run, feed = run_of(transfer, tip=tip), 250 * IN_MIN
    line = volts_room(run, run.point(feed))
    here = run.point(feed, line.high - 0.1)
    room = tip_of(run, here, 0.006)
    assert room.high_limit.key == "arc-long"
    at_end = replace(run, tip_to_work_m=room.high).point(feed, here.volts)
    assert here.volts == pytest.approx(foot + slope * at_end.current_a, rel=1e-6)
    assert room.high > tip
    # On volts so high nothing stubs close in.
    assert room.low_limit.key == "tip-range"


def test_volts_that_hold_to_the_far_end_leave_the_tip_its_range() -> None:
    """1.2 V under the high end: the far end draws some 30 A less, 0.75 V of that line."""
    run, feed = run_of("spray"), 250 * IN_MIN
    here = run.point(feed, volts_room(run, run.point(feed)).high - 1.2)
    far = replace(run, tip_to_work_m=0.0254).point(feed, here.volts)
    assert 0 < 22.9 + 0.025 * far.current_a - here.volts < 1
    room = tip_of(run, here, 0.006)
    assert room.high_limit.key == "tip-range"
    assert room.high == pytest.approx(0.0254)


def test_short_circuit_gives_way_before_the_current_leaves_spray() -> None:
    """1/16 in, 90/10, 300 A: spray begins at 16.2 + 0.025 I V, from 290 + 5 × 2/7 A on.

    Short circuit on 23.6 V gives way where that line falls to 23.6 V, at 296 A; still farther out,
    under 291 A, these volts would short again.
    """
    tip, volts = 0.0127, 23.6
    run = run_of("short", tip=tip, wire="wire=ER70S-6&dia=1/16in&plate=3/8in")
    feed = feed_from_current(run.job.wire, 300.0, tip - arc_length_m(volts))
    here = run.point(feed, volts)
    assert here.current_a == pytest.approx(300)
    room = tip_of(run, here, 0.006)
    assert room.high_limit.key == "arc-long"
    at_end = replace(run, tip_to_work_m=room.high).point(feed, volts)
    assert at_end.current_a == pytest.approx(296, rel=1e-6)


def test_the_arc_takes_its_length_off_the_tip() -> None:
    """28 V: 4 mm and 0.25 mm for each volt over 26."""
    assert arc_length_m(28.0) == pytest.approx(0.0045)
