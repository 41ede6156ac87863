"""Wire feed against amps: print, the shop's own curve, and each coupon where it stands."""

from __future__ import annotations

from itertools import pairwise

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord, records_text
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright_site.drawings.coupon_drawing import draw_fit
from beadwright_site.drawings.points_drawing import PATHS, Plot

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10&machine=one&welder=Ann"


def page(*seen: tuple[float, float]) -> CouponsAnswer:
    """The page with a kept coupon for each pair of amps and share melted over print."""
    records = [
        CouponRecord(
            f"k{number}", "2026-11-01", "", "ER70S-6", "0.045in", "90/10", "one", "Ann",
            CouponFacts(melting=melting, anode_share=0.7, current_a=amps),
        )
        for number, (amps, melting) in enumerate(seen)
    ]  # fmt: skip
    return answer("coupons", JOB, {"coupons": records_text(records)})


def fit(*seen: tuple[float, float]) -> Plot:
    found = draw_fit(page(*seen))
    assert found is not None
    return found


def places(text: str) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in (pair.split(",") for pair in text.split())]


def height(line: list[tuple[float, float]], x: float) -> float:
    """Where a line of straight pieces stands above a place."""
    for (x0, y0), (x1, y1) in pairwise(line):
        if x0 <= x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    raise AssertionError(x)


def test_without_coupons_nothing_is_drawn() -> None:
    assert draw_fit(page()) is None


def test_a_coupon_as_printed_stands_on_the_printed_curve() -> None:
    plot = fit((300.0, 1.0), (330.0, 1.0))
    printed = places(plot.lines[0].path)
    for mark in plot.marks:
        assert mark.y == pytest.approx(height(printed, mark.x), abs=0.7)


def test_the_own_curve_lies_between_print_and_coupons_that_agree() -> None:
    plot = fit(*((280.0 + 6 * number, 1.12) for number in range(10)))
    printed, own = (places(line.path) for line in plot.lines)
    for mark in plot.marks:  # paper counts downward
        assert mark.y < height(own, mark.x) < height(printed, mark.x)
    assert "10 points" in plot.spoken


def test_ten_coupons_narrow_the_band() -> None:
    plot = fit(*((280.0 + 6 * number, 1.05) for number in range(10)))
    wide, narrow = (
        max(y for _, y in places(line.band)) - min(y for _, y in places(line.band))
        for line in plot.lines
    )
    assert narrow < wide


def test_an_odd_coupon_is_an_open_cross() -> None:
    plot = fit(*((280.0 + 6 * number, 1.05) for number in range(9)), (330.0, 2.2))
    assert [mark.path == PATHS["cross"] for mark in plot.marks] == [False] * 9 + [True]
    assert "1 set aside as odd" in plot.words
