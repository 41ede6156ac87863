"""Jobs kept by name: a tap keeps the one shown; opened, named, removed and put back."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.dialled import START_MS
from tests.browser.keeping import kept_rows
from tests.browser.phone import Phone

QUERY = "plate=1/2in&leg=3/8in"


@pytest.fixture
def heat(tab: Phone) -> Page:
    tab.open(f"heat/?{QUERY}")
    expect(tab.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    return tab.page


def test_a_tap_keeps_the_job_and_it_is_found_on_every_page(heat: Page, tab: Phone) -> None:
    heat.locator("[data-keep-job]").click()
    expect(heat.locator("#jobs summary")).to_have_text("Kept jobs (1)")
    name = heat.locator("#jobs input")
    assert "3/8" in name.input_value()  # from the job's own line
    heat.locator("[data-keep-job]").click()  # once is enough
    expect(heat.locator("#jobs input")).to_have_count(1)
    name.fill("Frame 12")
    name.blur()
    expect(heat.locator("#jobs summary")).to_have_text("Name kept")
    [job] = kept_rows(heat, "job:").values()
    assert (job["page"], job["name"]) == ("heat", "Frame 12")

    tab.open("cost/")
    page = tab.page
    page.locator(".bar summary").click()
    page.locator("[data-open-jobs]").click()
    expect(page.locator("#jobs input")).to_have_value("Frame 12")
    page.locator("#jobs a").click()
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    assert "/heat/?" in page.url
    assert "leg=3/8in" in page.url


def test_a_job_is_removed_and_put_back(heat: Page) -> None:
    heat.locator("[data-keep-job]").click()
    before = kept_rows(heat, "job:")
    assert len(before) == 1
    heat.locator("[data-drop-job]").click()
    expect(heat.locator("#jobs summary")).to_have_text("Kept jobs (0)")
    assert kept_rows(heat, "job:") == {}
    heat.locator("[data-back-job]").click()
    expect(heat.locator("#jobs summary")).to_have_text("Kept jobs (1)")
    assert kept_rows(heat, "job:") == before
