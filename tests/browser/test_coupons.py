"""Coupons on the phone: kept before the screen says so, taken away and back, put to use."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.dialled import START_MS, number
from tests.browser.keeping import kept_rows
from tests.browser.phone import Phone

JOB = "plate=1/4in&leg=1/4in"
READ = f"{JOB}&marked=8in&arc_time=40s&meter_amps=330A&welder=Ann&machine=one"


@pytest.fixture
def coupons(tab: Phone) -> Page:
    tab.open(f"coupons/?{READ}")
    expect(tab.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    return tab.page


def test_a_coupon_is_kept_and_found_again(coupons: Page, tab: Phone) -> None:
    coupons.click("[data-keep-coupon]")
    expect(coupons.locator("#log li")).to_have_count(1)
    expect(coupons.locator("#arc_time")).to_have_value("")  # ready for the next one
    expect(coupons.locator("#learned h1")).to_contain_text("1 coupon")
    tab.open(f"coupons/?{JOB}")
    expect(coupons.locator("#log li")).to_have_count(1, timeout=START_MS)
    expect(coupons.locator("#log")).to_contain_text("Ann, one")


def test_a_coupon_is_taken_away_and_put_back(coupons: Page) -> None:
    coupons.click("[data-keep-coupon]")
    expect(coupons.locator("#log li")).to_have_count(1)
    coupons.click("[data-drop-coupon]")
    expect(coupons.locator("#log li")).to_have_count(0)
    coupons.click("[data-back-coupon]")
    expect(coupons.locator("#log li")).to_have_count(1)


def test_a_coupon_set_aside_as_odd_is_counted_by_a_tap(coupons: Page) -> None:
    for count, seconds in enumerate(("39s", "40s", "41s", "40s", "12s"), 1):
        coupons.fill("#marked", "8in")
        coupons.fill("#arc_time", seconds)
        coupons.fill("#meter_amps", "330A")
        coupons.locator("#meter_amps").blur()
        expect(coupons.locator("#measured")).to_contain_text("in/min")
        coupons.click("[data-keep-coupon]")
        expect(coupons.locator("#log li")).to_have_count(count)
        expect(coupons.locator("#state")).to_have_text("Kept on this phone")
        expect(coupons.locator("#state")).to_have_text("Your job")
    odd = coupons.locator("#log li.odd")
    expect(odd).to_contain_text("Set aside: odd in hand's travel")
    before = kept_rows(coupons, "coupon:")
    odd.locator("[data-count-coupon]").click()
    expect(coupons.locator("#state")).to_have_text("It counts now")
    expect(odd).to_have_count(0)
    expect(coupons.locator("#log li")).to_have_count(5)
    after = kept_rows(coupons, "coupon:")
    [(key, counted)] = [(key, row) for key, row in after.items() if row != before[key]]
    assert (before[key]["count_odd"], counted["count_odd"]) == (False, True)
    assert counted == {**before[key], "count_odd": True, "query": counted["query"]}


def test_own_numbers_count_on_every_page_until_switched_back(coupons: Page, tab: Phone) -> None:
    coupons.click("[data-keep-coupon]")
    use = coupons.locator("[data-use-own]")
    use.click()
    expect(use).to_have_text("Go back to print on every page")
    tab.open(f"?{JOB}")
    expect(coupons.locator("#notes")).to_contain_text("Your own numbers count", timeout=START_MS)
    own = number(coupons, "travel")
    tab.open(f"coupons/?{JOB}")
    expect(use).to_have_text("Go back to print on every page", timeout=START_MS)
    use.click()
    expect(use).to_have_text("Use your numbers on every page")
    tab.open(f"?{JOB}")
    expect(coupons.locator("#state")).to_have_text("Your job", timeout=START_MS)
    expect(coupons.locator("#notes")).not_to_contain_text("Your own numbers count")
    assert number(coupons, "travel") != own


def test_one_hand_s_numbers_are_not_taken_over_by_another_s(coupons: Page, tab: Phone) -> None:
    coupons.click("[data-keep-coupon]")
    use = coupons.locator("[data-use-own]")
    use.click()
    expect(use).to_have_text("Go back to print on every page")
    tab.open(f"coupons/?{READ.replace('Ann', 'Ben').replace('40s', '25s')}")
    expect(coupons.locator("#state")).to_have_text("Your job", timeout=START_MS)
    coupons.click("[data-keep-coupon]")
    expect(coupons.locator("#log li")).to_have_count(2)
    expect(use).to_have_text("Use your numbers on every page")  # Ann's count, not Ben's
    tab.open(f"?{JOB}")
    expect(coupons.locator("#notes")).to_contain_text("1 coupon of Ann, one", timeout=START_MS)
    coupons.click("#notes a:text('Show this as published')")
    expect(coupons.locator("#notes")).to_contain_text("switched off")
    coupons.click("#notes a:text('Count your own numbers')")
    expect(coupons.locator("#notes")).to_contain_text("1 coupon of Ann, one")


def test_cost_counts_coupons_as_measured_by_a_tap(tab: Phone) -> None:
    weld = "plate=3/8in&leg=5/16in&position=2F&dia=0.045in&gas=90/10"
    seen = "&marked=10in&arc_time=60s&weight_before=4lb&welder=Ann&machine=one&wfs=425in/min"
    page = tab.page
    for wire, after in (("ER70S-6", "4.185lb"), ("E70C-6M", "4.160lb")):
        tab.open(f"coupons/?{weld}&wire={wire}{seen}&weight_after={after}")
        expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
        page.click("[data-keep-coupon]")
        expect(page.locator("#arc_time")).to_have_value("")
    tab.open(f"cost/?{weld}&wire=ER70S-6&b_wire=E70C-6M")
    expect(page.locator("#coupons")).to_contain_text("11.1 lb/h laid", timeout=START_MS)
    page.click("#coupons a:text('Count them as measured')")
    expect(page.locator("#coupons")).to_contain_text("They count above", timeout=START_MS)
    expect(page.locator("#b_laid")).to_have_value("9.6lb/h")


def test_a_coupon_with_nothing_measured_says_what_to_do(tab: Phone) -> None:
    tab.open(f"coupons/?{JOB}")
    page = tab.page
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    page.click("[data-keep-coupon]")
    expect(page.locator("#state")).to_contain_text("Nothing to learn from yet")
    expect(page.locator("#log li")).to_have_count(0)


def sheets(page: Page) -> int:
    return len(re.findall(rb"/Type /Page\b", page.pdf(format="Letter")))


def test_the_stack_prints_on_one_letter_sheet_with_boxes(coupons: Page) -> None:
    assert sheets(coupons) == 1
    coupons.emulate_media(media="print")
    coupons.set_viewport_size({"width": round((215.9 - 2 * 14) / 25.4 * 96), "height": 950})
    boxes = coupons.locator("#stack td.box")
    assert boxes.count() >= 5 * 3
    for at in range(boxes.count()):
        box = boxes.nth(at).bounding_box()
        assert box is not None
        assert box["height"] >= 8 / 25.4 * 96  # a pencil's line
        assert box["width"] >= 16 / 25.4 * 96
    expect(coupons.locator("#timer")).to_be_hidden()
    expect(coupons.locator("#learned")).to_contain_text("ER70S-6")
    coupons.emulate_media(media="screen")


def test_a_coupon_of_the_stack_keeps_its_three_beads(coupons: Page) -> None:
    coupons.click("#stack a:text('three light beads')")
    expect(coupons.locator("#passes")).to_have_value("3", timeout=START_MS)
    expect(coupons.locator("#learned svg.stack g.laid")).to_have_count(3)
    expect(coupons.locator("#learned .set")).to_contain_text("280 in/min")


def test_kept_jobs_are_a_stack_on_one_sheet(coupons: Page, tab: Phone) -> None:
    expect(coupons.locator("#stack")).not_to_contain_text("From your kept jobs")
    jobs = [f"plate=3/8in&leg={leg}in&joint={joint}" for leg in ("1/4", "5/16", "3/8", "1/2")
            for joint in ("tee", "lap")]  # fmt: skip
    for query in jobs:
        tab.open(f"?{query}")
        expect(coupons.locator("#state")).to_have_text("Your job", timeout=START_MS)
        coupons.click("[data-keep-job]")
        expect(coupons.locator("[data-keep-job]")).to_have_text("Kept on this phone")
    tab.open(f"coupons/?{JOB}")
    expect(coupons.locator("#stack")).to_contain_text("From your kept jobs (8)", timeout=START_MS)
    coupons.click("#stack a:text('From your kept jobs')")
    expect(coupons.locator("#stack h2")).to_have_text("A stack of your kept jobs")
    expect(coupons.locator("#stack .coupon")).to_have_count(8)
    assert sheets(coupons) == 1
    coupons.click("#stack a:text('Five joints for a new wire')")
    expect(coupons.locator("#stack .coupon")).to_have_count(5)
