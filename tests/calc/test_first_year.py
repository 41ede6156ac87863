"""The sums under the verdict, by hand, and rounded so that they add up."""

from dataclasses import replace

import pytest

from beadwright.money.break_even import break_even
from beadwright.money.capacity import Hours, capacity
from beadwright.money.chance import Chance
from beadwright.money.first_year import FirstYear, first_year, rounded_sums, week_of
from tests.calc.plain_way import FREE, PLAIN, ten_against_eight, wire_alone


def test_the_sums_of_ten_against_eight() -> None:
    """2 saved on 100 parts, 20 a year and 90 once: in 18 months 270 − 90; 180 a year after."""
    case = replace(
        ten_against_eight(), other=wire_alone("other", 8.0, once=90, yearly=20), months=18
    )
    found = first_year(case, Chance(case, [], 1, 1).run(1))
    assert (found.part, found.parts, found.gross) == (2, 100, 200)
    assert (found.yearly, found.year, found.once, found.months) == (20, 180, 90, 18)
    assert found.period == pytest.approx(270)
    assert found.first == pytest.approx(180)
    assert found.worst == pytest.approx(180)  # nothing is unsure


def sums(part: float, parts: float, once: float = 0.0, months: float = 12) -> FirstYear:
    """Return the sums of a saving a part, nothing paid by the year."""
    year = part * parts
    period = year * months / 12
    return FirstYear(part, parts, year, 0.0, year, months, period, once, period - once, 0.0)


@pytest.mark.parametrize(
    ("made", "part", "gross", "first", "fine", "places"),
    [
        (sums(3.689299, 480, 635), 3.69, 1771, 1136, 2, 0),  # 3.69 × 480 = 1771.2
        # 1.23 × 25 000 is 114 short; 1.235 is 11 over, 1.2346 one over: within 1.5 of 30 864.
        (sums(1.23456, 25_000), 1.2346, 30865, 30865, 4, 0),
        # 0.35 × 24 is 9 cents short; 0.3537 × 24 = 8.4888.
        (sums(0.3537, 24, 61.5), 0.3537, 8.49, -53.01, 4, 2),
        (sums(-2.25, 40, 400.4), -2.25, -90, -490, 2, 0),
        (sums(0.0, 40), 0.0, 0.0, 0.0, 2, 2),
        # Under a hundred to the cent, from a hundred to the dollar.
        (sums(1.99, 50), 1.99, 99.5, 99.5, 2, 2),
        (sums(2.0, 50), 2.0, 100, 100, 2, 0),
        (sums(2.04, 50), 2.04, 102, 102, 2, 0),
        # 1.25 × 2 is 0.0052 short, over half a cent; of 1.2524 it is 0.0048.
        (sums(1.2526, 2), 1.253, 2.51, 2.51, 3, 2),
        (sums(1.2524, 2), 1.25, 2.5, 2.5, 2, 2),
        # 1.00 × 128 is just half a dollar short: too far.
        (sums(1.00390625, 128), 1.004, 129, 129, 3, 0),
        # 39.00 × 1000 is 2.00 short; half of one in ten thousand is 1.95.
        (sums(39.002, 1000), 39.002, 39002, 39002, 3, 0),
    ],
)
def test_rounded_sums_add_up(
    made: FirstYear, part: float, gross: float, first: float, fine: int, places: int
) -> None:
    found, decimals, of_sums = rounded_sums(made)
    assert (found.part, found.gross, found.first) == (part, gross, first)
    assert (decimals, of_sums) == (fine, places)
    assert found.year == gross


def test_what_is_paid_by_the_year_is_taken_off_the_rounded_sum() -> None:
    """2.504 on 100 parts: 250, less 33 a year 217; in six months 108, less 20."""
    made = FirstYear(2.504, 100, 250.4, 33.4, 217.0, 6, 108.5, 20.2, 88.3, 0.0)
    found, _, places = rounded_sums(made)
    assert places == 0
    assert (found.gross, found.yearly, found.year) == (250, 33, 217)
    assert (found.period, found.once, found.first) == (108, 20, 88)


def test_a_week_of_work() -> None:
    """1587.5 s a part against half of it, 100 parts a year in 50 weeks: 1587.5 s a week freed."""
    hours = Hours(1, 15875.0, 5, 50)
    fast = replace(PLAIN, melted_kg_s=2e-3, grind_s=50.0)
    held = capacity(PLAIN, 100, hours), capacity(fast, 100, hours)
    case = replace(ten_against_eight(), rates=FREE, other=wire_alone("other", 8.0, once=50))
    found = week_of(held, break_even(case), 50)
    assert found.freed_s == pytest.approx(1587.5)
    assert (found.shift_now, found.shift_other) == pytest.approx((10, 20))
    assert found.even_week == pytest.approx(0.5)  # 50 once over 2 a part: 25 a year
    back = replace(case, now=case.other, other=case.now)
    assert week_of(held, break_even(back), 50).even_week is None
