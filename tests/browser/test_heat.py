"""Heat on a phone: a change is followed, a wrong entry is told, the certificate counts."""

import re

from playwright.sync_api import Page, expect

from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site.pages.heat.view import headline_of
from tests.browser.phone import READY_MS, Phone, RunningPhone
from tests.browser.test_cost import ready, write

EXAMPLE = PAGES["heat"].example

PATH = f"heat/?{EXAMPLE}&plate=1in"
QUERY = f"{EXAMPLE}&plate=1in"


def verdict(query: str) -> str:
    """What the core says first."""
    return headline_of(answer("heat", query))


def choose(page: Page, name: str, value: str) -> None:
    """Tap a choice, its folds opened."""
    field = page.locator(f'input[name="{name}"][value="{value}"]')
    page.evaluate(
        "(e) => { for (let at = e; at; at = at.parentElement)"
        " if (at.tagName === 'DETAILS') at.open = true; }",
        field.element_handle(),
    )
    field.check(force=True)


def test_a_change_of_steel_is_followed_and_stands_in_the_address(running: RunningPhone) -> None:
    page = ready(running, PATH)
    headline = page.locator("#start h1")
    expect(headline).to_have_text(verdict(QUERY))
    choose(page, "steel", "A572-60")
    after = verdict(f"{QUERY}&steel=A572-60")
    assert after != verdict(QUERY)
    expect(headline).to_have_text(after, timeout=READY_MS)
    assert "steel=A572-60" in page.url
    assert not running.complaints


def test_a_certificate_typed_in_two_steps_is_first_refused_then_counted(
    running: RunningPhone,
) -> None:
    page = ready(running, PATH)
    write(page, "c", "0.22")
    expect(page.locator("#wrong-mn")).to_contain_text("Write C and Mn both", timeout=READY_MS)
    expect(page.locator("#state")).to_contain_text("last good answer")
    write(page, "mn", "1.5")
    expect(page.locator("#wrong-mn")).to_have_count(0, timeout=READY_MS)
    after = verdict(f"{QUERY}&c=0.22&mn=1.5")
    assert after.startswith("Preheat to")  # Mn 1.5 % at 1 in is past A36: method B rules
    assert after == verdict(f"{QUERY}&steel=A36&c=0.22&mn=1.5")  # the form sends the grade
    expect(page.locator("#start h1")).to_have_text(after, timeout=READY_MS)


def test_what_is_typed_before_the_first_answer_goes_on_top_of_the_address(tab: Phone) -> None:
    """The page stands with its example until the engine has read the address."""
    tab.open(PATH)
    choose(tab.page, "steel", "A572-60")
    after = verdict(f"{QUERY}&steel=A572-60")
    expect(tab.page.locator("#start h1")).to_have_text(after, timeout=READY_MS)
    expect(tab.page).to_have_url(re.compile(r"plate=1in.*steel=A572-60|steel=A572-60.*plate=1in"))


def test_everything_fits_and_can_be_hit_at_360(running: RunningPhone) -> None:
    running.page.set_viewport_size({"width": 360, "height": 740})
    page = ready(running, PATH)
    page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    page.set_viewport_size({"width": 320, "height": 640})
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    page.set_viewport_size({"width": 360, "height": 740})
    small = page.evaluate(
        "() => [...document.querySelectorAll('nav a, button, summary, input, .choice span')]"
        ".filter((e) => e.checkVisibility({visibilityProperty: true}))"
        ".map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()])"
        ".filter(([, r]) => r.height > 0 && (r.height < 47.5 || r.width < 47.5))"
        ".map(([html]) => html)"
    )
    assert small == []
