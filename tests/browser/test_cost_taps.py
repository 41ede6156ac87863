"""How many taps a hobbyist is from the opened Cost page to a verdict on his own figures."""

from playwright.sync_api import expect

from beadwright.api import answer
from beadwright.pages import PAGES
from tests.browser.phone import READY_MS, RunningPhone
from tests.told import in_words

FIGURES = {"wire_price": "4", "b_wire_price": "6", "shop_rate": "0", "parts": "24",
           "b_change_over": "60"}  # fmt: skip
"""What he pays for a pound of each wire, his free time, two brackets a month, 60 for the change."""

COUNT_TAPS = """
globalThis.taps = 0;
document.addEventListener("pointerdown", () => { taps += 1; }, true);
"""


def test_a_hobbyist_is_answered_in_five_taps(running: RunningPhone) -> None:
    """A tap into each entry, and his thumb types: nothing is unfolded, nothing else is tapped."""
    page = running.page
    page.set_viewport_size({"width": 390, "height": 844})
    running.open("cost/")
    running.expect_ready()
    page.evaluate(COUNT_TAPS)
    for key, text in FIGURES.items():
        field = page.locator(f"input[name='{key}']")
        assert field.is_visible(), key
        field.click()
        page.keyboard.press("Control+A")
        page.keyboard.type(text)
    page.keyboard.press("Enter")
    query = "&".join(f"{key}={text}" for key, text in FIGURES.items())
    found = answer("cost", f"{PAGES['cost'].example}&{query}").comparisons[0]
    assert found.verdict.word == "does not pay"  # free time pays no dearer wire back
    verdict = page.locator("#verdict")
    expect(verdict).to_contain_text(in_words(found.verdict.headline), timeout=READY_MS)
    expect(verdict).to_contain_text("× 24 parts a year")
    expect(verdict).to_contain_text("−$60.00")
    assert page.evaluate("taps") == 5
    assert not running.complaints
