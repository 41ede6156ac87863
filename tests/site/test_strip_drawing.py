"""Bands before the coupons and after, drawn on one scale with a mark for each coupon."""

from __future__ import annotations

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord, records_text
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright_site.drawings.points_drawing import PATHS
from beadwright_site.drawings.strip_drawing import TEXT_WIDE, WIDTH, Band, draw_strip
from beadwright_site.page_table import SITE_PAGES
from beadwright_site.pages.coupons.view import number_rows, setting_rows, setting_strips

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10&machine=one&welder=Ann"


def kept(*facts: CouponFacts) -> dict[str, str]:
    records = [
        CouponRecord(f"k{n}", f"2026-11-{n + 1:02d}", "", "ER70S-6", "0.045in", "90/10", "one",
                     "Ann", each)
        for n, each in enumerate(facts)
    ]  # fmt: skip
    return {"coupons": records_text(records)}


def page(*facts: CouponFacts) -> CouponsAnswer:
    return answer("coupons", JOB, kept(*facts))


def test_both_bands_stand_on_one_scale() -> None:
    """From -1 at 8 px to +1 at 336 px, 164 px a unit."""
    drawn = draw_strip(Band(-1, 1, 0), Band(0, 0.5, 0.25), [(0.5, True), (-0.5, False)],
                       ("-1", "+1"), "")  # fmt: skip
    assert (drawn.before.x, drawn.before.width, drawn.before.value) == (8.0, 328.0, 172.0)
    assert (drawn.after.x, drawn.after.width, drawn.after.value) == (172.0, 82.0, 213.0)
    assert [(mark.x, mark.path, mark.inside) for mark in drawn.marks] == [
        (254.0, PATHS["circle"], True),
        (90.0, PATHS["cross"], False),
    ]


@pytest.mark.parametrize("far", [-9.0, 9.0])
def test_a_coupon_far_off_is_on_the_paper_and_the_numbers_stand_apart(far: float) -> None:
    drawn = draw_strip(Band(-1, 1, 0), Band(-0.2, 0.2, 0), [(far, False)], ("-33 %", "+33 %"), "")
    assert 0 <= drawn.marks[0].x <= WIDTH
    (low, first), (high, last) = drawn.ends
    assert high - low >= TEXT_WIDE * (len(first) + len(last)) / 2
    assert low >= TEXT_WIDE * len(first) / 2
    assert high <= WIDTH - TEXT_WIDE * len(last) / 2


def test_a_band_of_no_width_is_drawn_too() -> None:
    drawn = draw_strip(Band(2, 2, 2), Band(2, 2, 2), [], ("2", "2"), "")
    assert drawn.before.value == drawn.after.value == 172.0


def test_each_number_with_coupons_is_drawn_with_both_its_bands() -> None:
    found = page(*(CouponFacts(travel=0.8 + 0.01 * n, meter_v=0.9) for n in range(5)))
    rows = {row.name: row for row in number_rows(found)}
    assert [name for name, row in rows.items() if row.strip] == [
        "Hand's travel speed", "Machine's volt meter",
    ]  # fmt: skip
    travel = next(each for each in found.numbers if each.key == "travel")
    strip = rows["Hand's travel speed"].strip
    assert strip is not None
    narrower = travel.half_band / travel.half_before
    assert strip.after.width / strip.before.width == pytest.approx(narrower, abs=0.01)
    assert strip.after.value < strip.before.value  # a hand slower than planned
    assert len(strip.marks) == 5
    # 1.645 × 20 %; of the meter 1.645 × 1.2 V.
    assert [text for _, text in strip.ends] == ["-33 %", "+33 %"]
    meter = rows["Machine's volt meter"].strip
    assert meter is not None
    assert [text for _, text in meter.ends] == ["-2.0 V", "+2.0 V"]


def test_what_moved_of_today_s_settings_is_drawn_in_both_windows() -> None:
    found = page(*[CouponFacts(travel=0.8)] * 4)
    moved = {name for name, *_, differs in setting_rows(found) if differs}
    strips = {name: strip for name, _, _, strip in setting_strips(found)}
    assert moved
    assert strips.keys() <= moved
    travel = found.published.settings.travel, found.dialled.settings.travel
    published, own = (each.value for each in travel)
    assert published is not None
    assert own is not None
    strip = strips["Travel speed"]
    assert (strip.after.value < strip.before.value) is (own < published)
    assert not list(setting_strips(page()))


def test_the_page_draws_them() -> None:
    def part(names: dict[str, str]) -> str:
        return str(SITE_PAGES["coupons"].load().show(JOB, names).html["numbers"])

    html = part(kept(*[CouponFacts(travel=0.8)] * 4))
    assert html.count('class="points strip"') >= 2
    assert "What your coupons change in these settings" in html
    assert "strip" not in part({})
