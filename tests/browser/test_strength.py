"""Strength on a phone: the verdict follows the load, a wrong entry leaves the last good answer."""

import pytest
from playwright.sync_api import expect

from beadwright.api import answer
from beadwright_site.pages.strength.view import verdict_of
from tests.browser.phone import READY_MS, RunningPhone
from tests.browser.test_cost import ready, write


def headline(query: str) -> str:
    """What the core says first."""
    return verdict_of(answer("strength", query))[0]


def test_the_verdict_and_the_picture_follow_the_load(running: RunningPhone) -> None:
    page = ready(running, "strength/?leg=5/16in&py=-10kip")
    first = headline("leg=5/16in&py=-10kip")
    expect(page.locator("#verdict h1")).to_have_text(first, timeout=READY_MS)
    before = page.locator("#picture svg").inner_html()
    write(page, "load_z", "2")
    expect(page.locator("#verdict h1")).to_have_text(
        headline("leg=5/16in&py=-10kip&load_z=2in"), timeout=READY_MS
    )
    assert page.locator("#picture svg").inner_html() != before
    assert "load_z=2" in page.url
    assert not running.complaints


def test_a_wrong_entry_leaves_the_last_good_answer(running: RunningPhone) -> None:
    page = ready(running, "strength/?leg=5/16in&py=-10kip")
    good = headline("leg=5/16in&py=-10kip")
    expect(page.locator("#verdict h1")).to_have_text(good, timeout=READY_MS)
    write(page, "py", "lots")
    expect(page.locator("#wrong-py")).to_contain_text("lots", timeout=READY_MS)
    expect(page.locator("#verdict h1")).to_have_text(good)
    write(page, "py", "-4")
    expect(page.locator("#wrong-py")).to_have_count(0, timeout=READY_MS)
    expect(page.locator("#verdict h1")).to_have_text(headline("leg=5/16in&py=-4kip"))


@pytest.mark.parametrize("query", ["", "group=c&analysis=ic&py=-9kip&load_x=9in&weld_sides=1"])
def test_nothing_runs_off_the_screen(running: RunningPhone, query: str) -> None:
    page = ready(running, f"strength/?{query}")
    wide, view = page.evaluate(
        "[document.documentElement.scrollWidth, document.documentElement.clientWidth]"
    )
    assert wide <= view
    box = page.locator("#picture svg").bounding_box()
    assert box is not None
    assert box["x"] >= 0
    assert box["x"] + box["width"] <= view
