"""Two wires side by side: the ratios come out of the model, and say what they can and cannot."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.process.burnoff import current_from_feed
from beadwright.process.comparison import (
    Comparison,
    Way,
    at_equal_current,
    at_equal_feed,
    at_equal_heat,
    laid_at_current,
    laid_at_feed,
    more_laid,
    usual_way,
)
from beadwright.process.gases import gas_of
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.wires import wire_of
from tests.told import in_words

INCH = 0.0254
IN_MIN = INCH / 60
MIX = gas_of("90/10")
SOLID = usual_way(wire_of("ER70S-6", "0.045in"), MIX)
CORED = usual_way(wire_of("E70C-6M", "0.045in"), MIX)

ways = st.sampled_from(
    [
        usual_way(wire_of(name, size), MIX)
        for name in ("ER70S-6", "E70C-6M")
        for size in ("0.035in", "0.040in", "0.045in", "0.052in", "1/16in")
    ]
)
currents = st.floats(150, 350)


def test_a_wire_is_held_at_its_usual_reach() -> None:
    assert usual_way(CORED.wire, MIX).tip_to_work_m == tip_to_work(CORED.wire, "spray")[1]
    assert usual_way(CORED.wire, MIX, "short").transfer == "short"
    assert CORED.efficiency[1] == pytest.approx(0.91)  # most spray rows of the E70C-6M sheet


@given(ways, currents)
def test_current_and_feed_describe_one_point(way: Way, current: float) -> None:
    laid = laid_at_current(way, current)
    again = laid_at_feed(way, laid.feed_m_s)
    assert again.current_a == pytest.approx(current, rel=1e-9)
    assert again.laid_kg_s == pytest.approx(laid.laid_kg_s, rel=1e-12)
    assert laid.heat_j_kg == pytest.approx(laid.volts * laid.current_a / laid.laid_kg_s)


@given(ways, currents)
def test_a_wire_against_itself_is_one(way: Way, current: float) -> None:
    feed = laid_at_current(way, current).feed_m_s
    for found in (
        at_equal_current(way, way, current),
        at_equal_feed(way, way, feed),
        at_equal_heat(way, way, current),
    ):
        assert found.ratio == pytest.approx(1, rel=1e-9)
        assert found.low < 1 < found.high


@given(ways, ways, currents)
def test_what_is_said_to_be_equal_is_equal(first: Way, second: Way, current: float) -> None:
    by_current = at_equal_current(first, second, current)
    assert by_current.first.current_a == pytest.approx(current)
    assert by_current.second.current_a == pytest.approx(current)
    feed = by_current.first.feed_m_s
    by_feed = at_equal_feed(first, second, feed)
    assert by_feed.first.feed_m_s == by_feed.second.feed_m_s == feed
    by_heat = at_equal_heat(first, second, current)
    powers = [end.volts * end.current_a for end in (by_heat.first, by_heat.second)]
    assert powers[1] == pytest.approx(powers[0], rel=1e-9)
    # At one power the second lays the first's bead faster by the ratio, and as much cooler.
    cooler = by_heat.second.heat_j_kg / by_heat.first.heat_j_kg
    assert cooler == pytest.approx(1 / by_heat.ratio, rel=1e-9)
    assert [c.basis for c in (by_current, by_feed, by_heat)] == [
        "equal current", "equal feed", "equal heat",
    ]  # fmt: skip


@given(ways, ways, currents)
def test_the_other_way_round_is_one_over(first: Way, second: Way, current: float) -> None:
    there = at_equal_current(first, second, current)
    back = at_equal_current(second, first, current)
    assert there.ratio * back.ratio == pytest.approx(1, rel=1e-9)


def test_at_equal_feed_only_mass_and_efficiency_count() -> None:
    """0.420 lb/1000 in (sheet) over 0.2836 × π/4 × 0.045² × 1000 = 0.451, times 0.91 / 0.97."""
    found = at_equal_feed(SOLID, CORED, 300 * IN_MIN)
    assert found.ratio == pytest.approx(0.420 / 0.451 * 0.91 / 0.97, rel=2e-3)
    assert found.second.current_a < found.first.current_a


@pytest.mark.parametrize("current", [250.0, 275.0, 300.0, 340.0])
def test_a_third_more_is_within_the_band_at_equal_current(current: float) -> None:
    """Common practice: metal-cored lays about 30 % more. Printed against printed: 13 to 24 %.

    So 30 % is neither proved nor refuted by the printed points; it stands at the top of the band.
    """
    found = at_equal_current(SOLID, CORED, current)
    assert 1.13 <= found.ratio <= 1.24
    assert found.low < 1.30 <= found.high + 0.005


@pytest.mark.parametrize("current", [325.0, 400.0, 450.0])
def test_a_sixteenth_lays_more_too(current: float) -> None:
    """Printed against printed, both wires at 1/16 in: 4 to 21 % more."""
    solid, cored = (usual_way(wire_of(name, "1/16in"), MIX) for name in ("ER70S-6", "E70C-6M"))
    assert 1.04 <= at_equal_current(solid, cored, current).ratio <= 1.21


def test_a_third_more_is_within_the_band_at_equal_heat_on_the_shop_s_own_volts() -> None:
    """Common practice: 290 in/min at 23.6 V in 90/10, about 30 % more than solid in like work.

    Low volts bring the model nearer to it, with the middle still under it.
    """
    shop = Way(CORED.wire, MIX, "spray", CORED.tip_to_work_m, 23.6)
    there = laid_at_feed(shop, 290 * IN_MIN)
    power = there.volts * there.current_a
    # The solid wire of the same power: its current is found by stepping, not by the core's search.
    amps = min(
        range(150, 350),
        key=lambda a: abs(laid_at_current(SOLID, a).volts * a - power),
    )
    found = at_equal_heat(SOLID, shop, float(amps))
    on_its_line = at_equal_heat(SOLID, CORED, float(amps))
    assert on_its_line.ratio < found.ratio < 1.30 < found.high


def test_more_current_favors_the_cored_wire() -> None:
    """Resistance heats the sheath with the square of the current."""
    ratios = [at_equal_current(SOLID, CORED, amps).ratio for amps in (200, 250, 300, 350)]
    assert ratios == sorted(ratios)


def test_the_band_is_that_of_both_wires() -> None:
    """Half-bands: feed 0.19 and 0.12, efficiencies 0.015/0.97 and 0.035/0.91, by their squares."""
    found = at_equal_current(SOLID, CORED, 250)
    assert found.high / found.ratio - 1 == pytest.approx(0.228514, abs=2e-6)
    assert found.low / found.ratio == pytest.approx(1 - 0.228514, abs=2e-6)


@pytest.mark.parametrize(
    ("ratios", "words"),
    [
        ((1.10, 0.85, 1.36), "10% more (by the band 15% less to 36% more)"),
        ((0.87, 0.84, 0.91), "13% less (by the band 16% less to 9% less)"),
        ((1.0, 0.9, 1.1), "0% more (by the band 10% less to 10% more)"),
    ],
)
def test_a_comparison_in_words(ratios: tuple[float, float, float], words: str) -> None:
    end = laid_at_current(SOLID, 250)
    assert in_words(more_laid(Comparison("equal current", end, end, *ratios))) == words


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan")])
def test_what_is_not_above_zero_is_refused(bad: float) -> None:
    for ask in (laid_at_feed, laid_at_current):
        with pytest.raises(OutOfRangeError):
            ask(SOLID, bad)


def test_farther_out_the_same_wire_lays_more_for_the_same_current() -> None:
    far = Way(CORED.wire, MIX, "spray", 1.0 * INCH)
    assert laid_at_current(far, 250).laid_kg_s > laid_at_current(CORED, 250).laid_kg_s
    near = laid_at_feed(CORED, 290 * IN_MIN)
    assert near.current_a > laid_at_feed(far, 290 * IN_MIN).current_a
    assert near.current_a == pytest.approx(
        current_from_feed(
            CORED.wire, 290 * IN_MIN, 0.875 * INCH - 0.004 - 0.00025 * (near.volts - 26)
        ),
        rel=1e-6,
    )
