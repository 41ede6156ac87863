"""The gas entry under a thumb: one tap for a usual gas, a line for any other mix."""

import re

from playwright.sync_api import Locator, Page, expect

from tests.browser.phone import READY_MS, RunningPhone


def taken(page: Page) -> Locator:
    """The gas that is tapped."""
    return page.locator('#field-gas input[type="radio"]:checked')


def test_a_mix_is_written_then_a_usual_gas_is_tapped(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    page = running.page
    page.locator("#change > summary").tap()
    line = page.locator("#other-gas")
    line.fill("82/18")
    line.blur()
    expect(taken(page)).to_have_value("82/18", timeout=READY_MS)
    expect(page.locator("#field-gas")).to_contain_text("M21")
    expect(line).to_have_value("")
    assert "gas=82/18" in page.url

    line.fill("65/8/0.5 O2/26.5 He")
    line.press("Tab")
    expect(taken(page)).to_have_value("65/8/0.5 O2/26.5 He", timeout=READY_MS)
    expect(page.locator("#setup")).to_contain_text("Helium needs more volts")

    page.locator('#field-gas label:has(input[value="75/25"])').tap()
    expect(page).to_have_url(re.compile("gas=75/25"), timeout=READY_MS)
    expect(taken(page)).to_have_value("75/25")
    assert not running.complaints


def test_a_wrong_mix_is_said_beside_its_line_and_a_tap_puts_it_right(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    page = running.page
    page.locator("#change > summary").tap()
    line = page.locator("#other-gas")
    line.fill("90/11")
    line.blur()
    expect(page.locator("#wrong-gas")).to_contain_text("must add to 100", timeout=READY_MS)
    expect(line).to_have_value("90/11")
    page.locator('#field-gas label:has(input[value="CO2"])').tap()
    expect(page.locator("#wrong-gas")).to_have_count(0, timeout=READY_MS)
    expect(taken(page)).to_have_value("CO2")
    expect(line).to_have_value("")
    assert not running.complaints
