"""The weld list on the phone: a tap adds a weld, kept before the screen says so; lines edited."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from tests.browser.dialled import START_MS
from tests.browser.keeping import kept_rows, lay
from tests.browser.phone import Phone

THREE = "lines=a,tee,3/8in,5/16in,6in%0Ab,tee,1/4in,1/4in,4in%0Ac,lap,10ga,,5in"


@pytest.fixture
def three(tab: Phone) -> Page:
    """A list from a link, on a phone that keeps no list of its own."""
    tab.open("list/")
    lay(tab.page, {"shop": {}})
    tab.open(f"list/?{THREE}")
    expect(tab.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)
    return tab.page


def names(page: Page) -> list[str]:
    return page.locator("#rows summary b").all_inner_texts()


def test_a_tap_puts_the_job_at_hand_on_the_list_and_it_is_there_after_a_reload(tab: Phone) -> None:
    tab.open("list/")
    lay(tab.page, {"shop": {}})
    tab.open("?plate=1/2in&leg=3/8in&weld_length=9in&welds=2")
    expect(tab.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    button = tab.page.locator("[data-add-weld]")
    button.click()
    expect(button).to_have_text("On the list: 1")
    tab.open("list/")
    rows = tab.page.locator("#rows li")
    expect(rows).to_have_count(1, timeout=START_MS)
    expect(rows).to_contain_text("plate 1/2 in, leg 3/8 in")
    expect(tab.page.locator("#total h1")).to_contain_text("2 welds")


def test_a_weld_is_moved_copied_taken_away_and_put_back(three: Page) -> None:
    three.locator("#weld-1 summary").click()
    three.locator("#weld-1 [data-weld=down]").click()
    expect(three.locator("#rows summary b").first).to_have_text("b")
    assert names(three) == ["b", "a", "c"]
    three.locator("#weld-3 summary").click()
    three.locator("#weld-3 [data-weld=copy]").click()
    expect(three.locator("#rows li")).to_have_count(4)
    assert names(three) == ["b", "a", "c", "c"]
    three.locator("#weld-3 [data-weld=drop]").click()
    expect(three.locator("#rows li")).to_have_count(3)
    three.click("[data-weld-back]")
    expect(three.locator("#rows li")).to_have_count(4)


def test_a_line_edited_in_place_counts_and_stays_on_the_phone(three: Page, tab: Phone) -> None:
    three.locator("#weld-2 summary").click()
    line = three.locator("#weld-2 input")
    line.fill("b,tee,nothing,1/4in,4in")
    line.press("Enter")
    expect(three.locator("#total")).to_contain_text("1 line not counted")
    expect(three.locator("#weld-2 input")).to_have_value("b,tee,nothing,1/4in,4in")
    expect(three.locator("#weld-2 .why")).to_contain_text("nothing")
    tab.open("list/")
    expect(three.locator("#rows li")).to_have_count(3, timeout=START_MS)
    expect(three.locator("#weld-2 .why")).to_contain_text("nothing")


def test_a_weld_is_edited_by_named_entries_and_the_list_follows(three: Page, tab: Phone) -> None:
    three.locator("#weld-2 summary").click()
    three.locator("#weld-2 [data-weld=edit]").click()
    plate = three.locator("#weld-plate")
    expect(plate).to_have_value("1/4in")
    plate.fill("nothing")
    plate.press("Enter")
    expect(three.locator("#wrong-weld-plate")).to_contain_text("nothing")
    expect(plate).to_have_value("nothing")
    plate.fill("1/2")
    plate.press("Tab")
    expect(plate).to_have_value("1/2in")
    expect(three.locator("#weld-plate2")).to_be_focused()
    three.locator('#field-weld-joint input[value="lap"]').check()
    expect(three.locator("#weld-2")).to_contain_text("Lap")
    three.locator("#weld-dialog [data-close]").click()
    expect(three.locator("#weld-dialog")).to_be_hidden()
    expect(three.locator("#weld-2 input")).to_have_value("b,lap,1/2in,1/4in,4in")
    assert names(three) == ["a", "b", "c"]
    tab.open("list/")
    expect(three.locator("#weld-2 input")).to_have_value("b,lap,1/2in,1/4in,4in", timeout=START_MS)
    assert not tab.complaints


def test_a_list_from_a_link_leaves_the_reader_s_own_until_told(tab: Phone) -> None:
    own = ["own 1,tee,3/8in,,6in", "own 2,tee,3/8in,,6in"]
    tab.open("list/")
    tab.page.wait_for_selector("#rows")
    lay(tab.page, {"shop": {"lines": "\n".join(own)}})
    tab.open(f"list/?{THREE}")
    page = tab.page
    expect(page.locator("#rows li")).to_have_count(3, timeout=START_MS)
    expect(page.locator("#lent-list")).to_contain_text("list of 2 lines stays", timeout=START_MS)
    page.locator("#weld-1 summary").click()
    page.locator("#weld-1 [data-weld=copy]").click()
    expect(page.locator("#rows li")).to_have_count(4)
    assert kept_rows(page)["shop"]["lines"].splitlines() == own
    page.click("[data-own-list]")
    expect(page.locator("#lent-list")).to_have_count(0)
    expect(page.locator("[data-weld-back]")).to_have_text("Put my own list back")
    assert len(kept_rows(page)["shop"]["lines"].splitlines()) == 4
    page.click("[data-weld-back]")
    expect(page.locator("#rows li")).to_have_count(2)
    assert kept_rows(page)["shop"]["lines"].splitlines() == own


def test_the_customer_s_sheet_has_prices_and_no_cost_and_the_shop_s_has_all(three: Page) -> None:
    hidden = ("#total", "#carry", "#notes", "#order", "#state", ".set", ".shop-only")
    three.emulate_media(media="print")
    for part in hidden:
        expect(three.locator(part).first).to_be_hidden()
    expect(three.locator(".customer")).to_be_visible()
    expect(three.locator("#rows summary").first).to_be_visible()
    three.emulate_media(media="screen")
    three.locator(".shop-only summary").click()
    three.emulate_media(media="print")
    for part in hidden:
        expect(three.locator(part).first).to_be_visible()
    three.emulate_media(media="screen")
