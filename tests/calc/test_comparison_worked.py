"""Hours, curves and swings, worked by hand on ways whose part costs the price of its wire."""

from dataclasses import replace
from math import sqrt

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.break_even import (
    Case,
    break_even,
    highest_price,
    months_to_pay,
    parts_to_break_even,
)
from beadwright.money.capacity import Hours, capacity
from beadwright.money.chance import Chance, ChanceState
from beadwright.money.cost import cost_of
from beadwright.money.cost_page import cost_answer
from beadwright.money.curves import curve
from beadwright.money.levers import levers_of
from beadwright.money.swing_shares import SwingShares
from beadwright.money.swings import Lever, Part, moved_costs, swings
from beadwright.phrases import Phrase
from tests.calc.plain_way import FREE, PLAIN, ten_against_eight, wire_alone
from tests.told import in_words


def lever(part: Part, field: str, low: float, high: float, key: str = "x") -> Lever:
    targets: tuple[tuple[Part, str], ...] = ((part, field),)
    name = Phrase("x")
    return Lever(key, name, targets, low, high, "count", 1.0, False, name)


NOW = lever("now", "wire_kg", 0.9, 1.1)
OTHER = lever("other", "wire_kg", 0.95, 1.05)
UPWARD = lever("now", "wire_kg", 1.0, 1.5)


def sure(parts: float = 100.0) -> ChanceState:
    """The draws of ten against eight with nothing unsure."""
    return Chance(ten_against_eight(parts), [], 1, 1).run(1)


def test_cost_of_a_metre() -> None:
    # 1.953125 kg of wire at 10, in 2 m.
    found = cost_of(PLAIN, FREE)
    assert found.part == pytest.approx(19.53125, rel=1e-12)
    assert found.metre == pytest.approx(9.765625, rel=1e-12)


# A part takes 1250 s, and a quarter of them 1250 + 100 s again: 1587.5 s.
def hours(parts: float) -> Hours:
    """Hours for just so many parts a year."""
    return Hours(1, 1587.5, parts, 1.0)


@pytest.mark.parametrize(
    ("parts", "said"),
    [(0, "Nothing to weld"), (85, "Delivers: takes 85.0%"), (86, "Just delivers: 86%"),
     (100, "Just delivers: 100%"), (101, "Cannot deliver: hours for 100 parts")],
)  # fmt: skip
def test_hours_for_a_hundred_parts(parts: float, said: str) -> None:
    found = capacity(PLAIN, parts, hours(100))
    assert in_words(found.phrase).startswith(said)
    assert found.delivers == (parts <= 100)
    assert found.arc_s == pytest.approx(parts * 1.25 * 1250, rel=1e-12)
    assert found.used == pytest.approx(parts / 100, rel=1e-12)
    assert found.parts_a_shift == pytest.approx(1.0, rel=1e-12)


@pytest.mark.parametrize(
    ("parts", "last"),
    [(0, 1.5), (20 / 3, 10), (100, 150), (101, 200), (120, 200), (150, 300), (220, 400),
     (300, 500), (360, 600), (480, 800), (600, 1000), (1000, 1500)],
)  # fmt: skip
def test_a_curve_ends_at_a_round_number_past_half_as_much_again(parts: float, last: float) -> None:
    points = curve(ten_against_eight(parts), sure(parts), None)
    assert points[-1].parts == pytest.approx(last, rel=1e-12)
    assert len(points) == 25
    assert points[12].parts == pytest.approx(last / 2, rel=1e-12)
    assert points[0].parts == 0


@pytest.mark.parametrize(
    ("crossing", "last"), [(None, 150), (50, 150), (800, 1500), (801, 150), (820, 150)]
)
def test_a_crossing_is_drawn_up_to_eight_times_the_volume(
    crossing: float | None, last: float
) -> None:
    points = curve(ten_against_eight(), sure(), crossing)
    assert points[-1].parts == pytest.approx(last, rel=1e-12)


def test_a_curve_has_the_band_of_the_draws() -> None:
    case = replace(ten_against_eight(), other=wire_alone("other", 8.0, once=600, yearly=30))
    state = Chance(case, [NOW, lever("case", "parts", 0.5, 2.0, "parts")], 1, 40_000).run(40_000)
    end = curve(case, state, None)[-1]
    # A tenth of a triangle from 9 to 11 lies under 9 + √0.2 and a tenth over 11 − √0.2.
    most = sqrt(0.2)
    assert end.now == pytest.approx((150 * (9 + most), 1500, 150 * (11 - most)), rel=2e-3)
    # 150 parts at 8, and 630 a year with what is paid once in twelve months.
    assert end.other == pytest.approx((1830, 1830, 1830), rel=1e-12)


def test_a_band_on_one_side_begins_at_the_cost() -> None:
    case = ten_against_eight()
    state = Chance(case, [UPWARD], 1, 1000).run(1000)
    end = curve(case, state, None)[-1]
    assert end.now[0] == end.now[1] == 1500
    assert end.now[2] > 1500


def test_swings_of_the_saving() -> None:
    # 200 saved a year; wire now 10 % less or more: 100 or 300; the other's 5 %: 240 or 160.
    case = ten_against_eight()
    first, second = swings(case, [OTHER, NOW])
    assert (first.at_low, first.at_high) == pytest.approx((100, 300))
    assert (second.at_low, second.at_high) == pytest.approx((240, 160))
    assert (first.width, second.width) == pytest.approx((200, 80))


@pytest.mark.parametrize(
    ("one", "turns"),
    [
        (lever("now", "wire_kg", 0.7, 1.3), True),  # −100 to 500
        (NOW, False),  # 100 to 300
        (lever("now", "wire_kg", 0.8, 1.2), False),  # 0 to 400
        (lever("other", "wire_kg", 1.25, 1.5), True),  # 0 to −200: it breaks even, and loses
        (lever("other", "wire_kg", 1.5, 1.75), False),  # −200 to −400
        (lever("other", "wire_kg", 1.2, 0.9), False),  # 40 to 280, the low end last
    ],
)
def test_a_swing_turns_the_answer_where_one_end_saves_and_the_other_loses(
    one: Lever, turns: bool
) -> None:
    [found] = swings(ten_against_eight(), [one])
    assert found.turns == turns


@pytest.mark.parametrize(
    ("field", "factor", "held"),
    [("efficiency", 1.1, 0.88), ("efficiency", 1.3, 1.0), ("efficiency", 1.29, 1.0),
     ("rework", 3.0, 0.75), ("rework", 4.1, 1.0), ("rework", 5.0, 1.0)],
)  # fmt: skip
def test_a_lever_is_held_to_what_can_be(field: str, factor: float, held: float) -> None:
    """1 kg laid at 0.8 from wire of which a fifth is lost, at 10; a quarter welded again."""
    case = Case(FREE, PLAIN, PLAIN, 100, 12)
    found = moved_costs(case, [lever("now", field, 0.5, 5.0)], [[1.0, factor]], 2)
    as_taken = {"efficiency": 0.8, "rework": 0.25}
    for cost, figures in zip(found.now, (as_taken, as_taken | {field: held}), strict=True):
        bought = 1 / figures["efficiency"] / 0.8 * (1 + figures["rework"])
        assert cost == pytest.approx(10 * bought, rel=1e-12)
    assert found.other == pytest.approx([19.53125, 19.53125], rel=1e-12)


def test_moves_of_parts_and_of_what_is_paid_once() -> None:
    """2 saved on 100 parts, 60 once in six months, 20 a year: 200 − 120 − 20."""
    other = wire_alone("other", 8.0, once=60, yearly=20)
    case = replace(ten_against_eight(), other=other, months=6)
    levers = [lever("case", "parts", 0.5, 2.0), lever("other", "once", 0.5, 2.0)]
    found = moved_costs(case, levers, [[1.0, 2.0, 1.0], [1.0, 1.0, 0.5]], 3)
    assert found.net == pytest.approx([60, 260, 120])
    assert (found.now, found.other) == ([10, 10, 10], [8, 8, 8])


def test_a_way_s_own_rate_moves_in_place_of_the_shop_s() -> None:
    """A part takes 1250 s and a quarter of them 1350 s more: 1587.5 s; its wire costs 19.53125."""
    case = Case(replace(FREE, labor_s=0.01, overhead_s=0.005), PLAIN, replace(PLAIN, rate_s=0.03),
                100, 12)  # fmt: skip
    levers = [lever("rates", "labor_s", 0.9, 1.1), lever("other", "rate_s", 0.9, 1.1),
              lever("rates", "overhead_s", 0.9, 1.1)]  # fmt: skip
    found = moved_costs(case, levers, [[1.1, 1.0], [1.0, 1.2], [1.0, 1.4]], 2)
    assert found.now == pytest.approx([19.53125 + 1587.5 * 0.016, 19.53125 + 1587.5 * 0.017])
    assert found.other == pytest.approx([19.53125 + 1587.5 * 0.03, 19.53125 + 1587.5 * 0.036])


def test_nothing_unsure_is_every_draw_alike() -> None:
    assert Chance(ten_against_eight(), [], 1, 3).run(3).bars == ((200.0, 200.0, 3),)
    assert swings(ten_against_eight(), []) == ()


def test_draws_are_as_many_as_an_answer_waits_for() -> None:
    """Ten thousand: three comparisons of them are there in a third of a second."""
    assert answer("cost", "draws=10000").comparisons[0].chance.done == 10_000
    [text] = answer_json("cost", "draws=10001")["errors"]["draws"]
    assert text.startswith("10001 is outside 100 to 10000: more do not help")


def test_what_is_paid_once_and_by_the_year() -> None:
    # The way now has costs of its own to drop: 100 once, 20 a year.
    now = wire_alone("now", 10.0, once=100, yearly=20)
    other = wire_alone("other", 8.0, once=700, yearly=50)
    case = Case(FREE, now, other, 100, 6)
    assert (case.once, case.yearly) == (600, 30)
    assert case.to_carry == pytest.approx(30 + 600 * 12 / 6)
    assert case.year_saving == pytest.approx(200 - 30)
    assert case.net_saving == pytest.approx(200 - 1230)


SHARES = SwingShares(
    rates=0.10, prices=0.05, feed=0.08, minutes=0.20, volume=0.30, once=0.25, size=0.15
)


def factors(shares: SwingShares = SHARES, measured: bool = False) -> dict[str, tuple[float, float]]:
    ways = cost_answer("plate=3/8in&leg=5/16in").ways
    busy = replace(PLAIN, fit_up_s=60.0, spatter_s=30.0, gas_m3=5.0, once=100.0)
    plan = replace(ways[0], way=busy, efficiency=(0.76, 0.8, 0.88), measured=measured)
    dear = replace(busy, wire_kg=11.0, spatter_s=40.0)
    case = Case(replace(FREE, labor_s=0.01, overhead_s=0.005), busy, dear, 100, 12)
    other = replace(plan, dialled=ways[1].dialled, way=dear)
    return {each.key: (each.low, each.high) for each in levers_of(case, plan, other, shares)}


def test_how_far_each_lever_goes() -> None:
    found = factors()
    expected = {
        "labour": (0.9, 1.1), "overhead": (0.9, 1.1), "parts": (0.7, 1.3), "gas": (0.95, 1.05),
        "flow": (0.85, 1.15), "off": (0.8, 1.2), "size": (1.0, 1.15), "once": (0.75, 1.25),
        "now_price": (0.95, 1.05), "now_laid": (0.92, 1.08), "now_efficiency": (0.95, 1.1),
        "now_spatter": (0.6, 1.4), "rework": (0.0, 2.0),
    }  # fmt: skip
    for key, ends in expected.items():
        assert found[key] == pytest.approx(ends, rel=1e-12), key
    assert found["other_laid"] == found["now_laid"]


def test_what_was_weighed_is_known_to_a_fiftieth() -> None:
    assert factors(measured=True)["now_laid"] == pytest.approx((0.98, 1.02), rel=1e-12)


@pytest.mark.parametrize(("minutes", "most"), [(0.49, 0.98), (0.5, 1.0), (0.51, 1.0), (0.6, 1.0)])
def test_spatter_is_off_by_twice_the_minutes_and_never_below_none(
    minutes: float, most: float
) -> None:
    low, high = factors(replace(SHARES, minutes=minutes))["now_spatter"]
    assert (low, high) == pytest.approx((1 - most, 1 + most), abs=1e-12)


def test_what_each_of_few_parts_has_to_carry() -> None:
    # 1 paid once in a year, half a part a year: it must save 2, and 8 a kilogram does just that.
    case = replace(ten_against_eight(0.5), other=wire_alone("other", 8.0, once=1))
    assert break_even(case).price_paid_back == pytest.approx(8.0, rel=1e-12)
    assert break_even(replace(case, parts=0.0)).price_paid_back is None


def test_price_and_rate_at_which_running_costs_meet() -> None:
    case = ten_against_eight()
    # Wire for 8 may cost 10.
    assert break_even(case).price == pytest.approx(10.0, rel=1e-12)
    # At 0.001 a second the 2 saved are 2000 s: 1 kg in 3000 s will do, two thirds less than now.
    busy = replace(case, rates=replace(FREE, labor_s=0.001))
    for parts in (100.0, 0.0):
        found = break_even(replace(busy, parts=parts))
        assert found.laid == pytest.approx(1 / 3000, rel=1e-9)
        assert found.gain == pytest.approx(-2 / 3, rel=1e-9)


def test_small_savings_and_small_burdens_count() -> None:
    assert parts_to_break_even(0.5, 0.25) == ("above", 0.5)
    assert months_to_pay(0.0, 0.0) == 0.0
    assert months_to_pay(0.0, -1.0) is None


@pytest.mark.parametrize(("saving", "price"), [(9.5, 0.5), (10.0, 0.0), (10.5, None)])
def test_wire_for_nothing_is_the_end(saving: float, price: float | None) -> None:
    # 10 for a part now: wire may cost what is left of it.
    assert highest_price(ten_against_eight(), saving) == price
