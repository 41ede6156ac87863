"""Inspect on a phone: the verdict follows a reading, a tapped trouble brings its causes."""

import re
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import expect

from beadwright.api import answer
from tests.browser.phone import READY_MS, RunningPhone
from tests.browser.test_cost import ready, write
from tests.told import in_words


def test_the_verdict_follows_what_is_measured(running: RunningPhone) -> None:
    page = ready(running, "inspect/?leg=5/16in&leg_found=5/16in&leg2_found=5/16in")
    expect(page.locator("#verdict h1")).to_have_text("IN", timeout=READY_MS)
    write(page, "leg2_found", "1/4")
    expect(page.locator("#verdict h1")).to_have_text("OUT", timeout=READY_MS)
    expect(page.locator("#verdict")).to_contain_text("Leg on the vertical plate 1/16 in short.")
    expect(page.locator("#mend li").first).to_contain_text("Travel from")
    assert "leg2_found=1%2F4in" in page.url or "leg2_found=1/4in" in page.url
    assert not running.complaints


def test_a_tapped_trouble_brings_its_causes_in_the_core_s_order(running: RunningPhone) -> None:
    page = ready(running, "inspect/?leg=5/16in&flow=15ft3/h")
    page.locator("#seen label", has_text="Porosity").click()
    expect(page.locator("#trouble h2")).to_contain_text("Porosity", timeout=READY_MS)
    query = urlsplit(page.url).query
    assert "trouble=porosity" in query
    [(_, causes)] = answer("inspect", query).troubles
    shown = page.locator("#trouble li b:first-child")
    first = in_words(causes[0].cause.phrase)
    expect(shown.first).to_have_text(first)
    expect(page.locator("#trouble li")).to_have_count(len(causes))


def test_a_wrong_reading_leaves_the_last_good_verdict(running: RunningPhone) -> None:
    page = ready(running, "inspect/?leg=5/16in&leg_found=1/4in")
    expect(page.locator("#verdict h1")).to_have_text("OUT", timeout=READY_MS)
    write(page, "leg_found", "lots")
    expect(page.locator("#wrong-leg_found")).to_contain_text("lots", timeout=READY_MS)
    expect(page.locator("#verdict h1")).to_have_text("OUT")
    write(page, "leg_found", "5/16")
    expect(page.locator("#wrong-leg_found")).to_have_count(0, timeout=READY_MS)
    expect(page.locator("#verdict h1")).to_have_text("IN", timeout=READY_MS)


@pytest.mark.parametrize("query", ["", "leg=5/16in&cracks=yes&trouble=undercut&skew=120"])
def test_nothing_runs_off_the_screen(running: RunningPhone, query: str) -> None:
    page = ready(running, f"inspect/?{query}")
    expect(page.locator("#verdict h1")).to_have_text(re.compile("OUT"), timeout=READY_MS)
    wide, view = page.evaluate(
        "[document.documentElement.scrollWidth, document.documentElement.clientWidth]"
    )
    assert wide <= view
    verdict = page.locator("#verdict h1").bounding_box()
    assert verdict is not None
    assert verdict["y"] + verdict["height"] <= 400  # in the upper half of the screen
