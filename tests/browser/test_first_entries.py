"""The entries Dial in asks first: a tap for the usual, a pad for the rest, no phone keyboard."""

import re

import pytest
from playwright.sync_api import Page, expect

from beadwright import units
from beadwright.api import answer
from tests.browser.dialled import START_MS, asked, number
from tests.browser.host import Host
from tests.browser.phone import visit


@pytest.fixture
def page(dialled: Page) -> Page:
    return dialled


def test_a_key_takes_the_place_of_what_stood_there(page: Page) -> None:
    page.click("#change > summary")
    page.focus("#leg")
    expect(page.locator("#leg")).to_have_attribute("inputmode", "none")  # the pad is enough
    page.click(".keys button:text-is('11/16')")
    expect(page.locator("#leg")).to_have_value("11/16")
    page.click(".keys button:text-is('7/16')")
    expect(page.locator("#leg")).to_have_value("7/16")
    page.press("#leg", "Tab")
    expect(page.locator("#joint")).to_contain_text("7/16 in")
    assert asked(page)["leg"] == "7/16in"


def test_gauge_and_millimeters_are_written_by_the_pad(page: Page) -> None:
    page.click("#change > summary")
    page.focus("#plate")
    for key in ("1", "0", "ga"):
        page.click(f".keys button:text-is('{key}')")
    expect(page.locator("#plate")).to_have_value("10ga")
    page.click(".keys button[aria-label='One step more']")
    expect(page.locator("#plate")).to_have_value("9ga")  # a lower gauge is thicker
    page.click(".keys button:text-is('mm')")
    expect(page.locator("#plate")).to_have_value("9mm")
    page.click(".keys button[aria-label='One step less']")
    expect(page).to_have_url(re.compile("plate=8mm"))
    expect(page.locator("#state")).to_have_text("Your job")
    page.click(".keys button[aria-label=Keyboard]")
    expect(page.locator("#plate")).to_have_attribute("inputmode", "text")
    expect(page.locator("#plate")).to_be_focused()


@pytest.mark.parametrize(
    ("held", "step", "then"),
    [
        ("3/8in", "more", "7/16in"),
        ("1in", "less", "15/16in"),
        ("1-1/16in", "less", "1in"),
        ("0.3in", "more", "5/16in"),
        ("15/16in", "more", "1in"),
        ("1/16in", "less", "1/16in"),
        ("8mm", "more", "9mm"),
        ("abc", "more", "abc"),
    ],
)
def test_a_step_of_the_pad(page: Page, held: str, step: str, then: str) -> None:
    page.click("#change > summary")
    page.fill("#leg", held)
    page.click(f".keys button[aria-label='One step {step}']")
    expect(page.locator("#leg")).to_have_value(then)


def test_three_taps_from_opening_to_another_joint(page: Page, steady_host: Host) -> None:
    visit(page, steady_host.url)
    taps = (
        "#change > summary",
        "#field-joint label:has([value=lap])",
        ".sizes button[value='1/4in'][data-size=plate]",
    )
    for tap in taps:
        page.click(tap)
    expect(page).to_have_url(re.compile("joint=lap&plate=1/4in"), timeout=START_MS)
    expect(page.locator("#state")).to_have_text("Your job")
    feed = answer("dial-in", "joint=lap&plate=1/4in").dialled.settings.wire_feed.value
    assert feed is not None
    assert number(page, "wfs") == units.show(feed, "wire_feed", "us")


def test_a_usual_size_is_one_tap_and_is_marked(page: Page) -> None:
    page.click("#change > summary")
    half = page.locator("[data-size=plate][value='1/2in']")
    expect(half).to_have_attribute("aria-pressed", "false")
    half.click()
    expect(half).to_have_attribute("aria-pressed", "true")
    expect(page.locator("[data-size=plate][aria-pressed=true]")).to_have_count(1)
    page.click("[data-size=leg][value='']")
    expect(page.locator("#leg")).to_have_value("")
    expect(page).not_to_have_url(re.compile("leg="))
    assert asked(page)["plate"] == "1/2in"


def test_what_is_folded_says_what_it_holds(page: Page) -> None:
    page.click("#change > summary")
    said = page.locator("#group-torch .holds")
    expect(said).to_contain_text("Hand")
    page.click("#group-torch > summary")
    page.fill("#machine_amps", "250")
    page.press("#machine_amps", "Tab")
    expect(said).to_contain_text("250A")


def test_what_follows_a_change_says_what_it_was(page: Page) -> None:
    was = number(page, "travel")
    marks = page.locator(".was")
    expect(marks).to_have_count(0)  # a job just opened is no change
    page.click("#change > summary")
    page.click("[data-size=leg][value='1/4in']")
    expect(page.locator("#set-travel .was")).to_have_text(f"was {was}")
    assert number(page, "travel") != was
    page.click("#set-travel [data-type]")
    page.keyboard.type("12")
    page.keyboard.press("Enter")
    expect(page.locator("#set-travel .word")).to_have_text("by hand")
    page.click("#group-show > summary")
    page.click("#field-units label >> nth=1")
    expect(page.locator("#set-wfs .number")).to_contain_text("m/min")
    expect(page.locator("#set-wfs .was")).to_have_count(0)  # other units are no other setting
