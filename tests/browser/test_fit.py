"""Fit for a gloved hand and for the home screen; and nothing in an address breaks the page."""

import re
from typing import Any, cast

import pytest
from playwright.sync_api import Dialog, expect

from tests.browser.phone import READY_MS, Phone, RunningPhone

LEAST_PX = 48
SMALL_TARGETS = """
([within, least]) => [...document.querySelectorAll(within)].flatMap((root) =>
  [...root.querySelectorAll("button, summary, input, [role=slider], nav a")])
  .filter((e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
  .map((e) => [e.outerHTML.slice(0, 90), e.getBoundingClientRect()])
  .filter(([, box]) => box.width > 1 && (box.width < least || box.height < least))
  .map(([html, box]) => `${Math.round(box.width)} x ${Math.round(box.height)}: ${html}`)
"""
MORE = pytest.mark.long(reason="a load each; tests/site sends these and more to every page")
HOSTILE = [
    'plate=<script>window.hacked=1</script>&leg="><img src=x onerror=window.hacked=1>',
    "plate=%3Cscript%3Ewindow.hacked=1%3C/script%3E&wire=%3Csvg/onload=window.hacked=1%3E",
    "joint='-window.hacked=1-'&gas=javascript:window.hacked=1&<b>=1&\"onclick=window.hacked=1",
    "plate={{7*7}}&leg={%25 for x in ().__class__ %25}&wire=${7*7}&__proto__=1&constructor=1",
    "plate=nan&leg=inf&dia=1e999in&gap=-1in&wfs=0x10&volts=1_0&ctwd=%D9%A3in&travel=1/0in",
    "%&%%&=&==&plate=%00&leg=%FF%FE&units=si&units=us&wire=../../../../etc/passwd",
    "plate=" + "9" * 3000 + "in&leg=" + "(" * 3000,
]


@pytest.mark.parametrize("width", [360, 390, 1280])
def test_what_is_tapped_is_big_enough_for_a_glove(running: RunningPhone, width: int) -> None:
    running.page.set_viewport_size({"width": width, "height": 800})
    running.open()
    running.expect_ready()
    running.part("word").click()
    expect(running.part("panel")).to_be_visible()
    assert running.page.evaluate(SMALL_TARGETS, ["bead-offline", LEAST_PX]) == []
    running.tap("close")
    expect(running.part("panel")).to_be_hidden()
    wider = running.page.evaluate("document.documentElement.scrollWidth - innerWidth")
    assert wider <= 0


def test_the_panel_opens_shuts_and_gives_the_focus_back(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    running.part("word").focus()
    running.page.keyboard.press("Enter")
    expect(running.part("panel")).to_be_visible()
    running.page.keyboard.press("Escape")
    expect(running.part("panel")).to_be_hidden()
    expect(running.part("word")).to_be_focused()


def test_it_can_be_put_on_the_home_screen(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    session = running.page.context.new_cdp_session(running.page)
    manifest = cast("dict[str, Any]", session.send("Page.getAppManifest"))
    assert manifest["errors"] == []
    assert manifest["url"] == f"{running.url}manifest.webmanifest"
    found = cast("dict[str, Any]", session.send("Page.getInstallabilityErrors"))
    # A profile of a test is a private one, which is the one thing that may stand in the way.
    assert {error["errorId"] for error in found["installabilityErrors"]} <= {"in-incognito"}


def test_the_icons_are_there_in_the_sizes_the_manifest_says(running: RunningPhone) -> None:
    running.open()
    sizes = running.page.evaluate(
        """
        async () => {
          const link = document.querySelector("link[rel=manifest]").href;
          const { icons } = await (await fetch(link)).json();
          const found = icons.map(async ({ src, sizes, purpose }) => {
            const picture = new Image();
            picture.src = new URL(src, link).href;
            await picture.decode();
            return [purpose, sizes, `${picture.naturalWidth}x${picture.naturalHeight}`];
          });
          return Promise.all(found);
        }
        """
    )
    drawn = {(purpose, size) for purpose, size, real in sizes if size in (real, "any")}
    assert len(drawn) == len(sizes)
    assert {("any", "192x192"), ("any", "512x512"), ("maskable", "512x512")} <= drawn


@pytest.mark.parametrize(
    "query", [*HOSTILE[:2], *(pytest.param(q, marks=MORE) for q in HOSTILE[2:])]
)
def test_a_hostile_address_is_only_text(tab: Phone, query: str) -> None:
    dialogs: list[str] = []

    def note(dialog: Dialog) -> None:
        dialogs.append(dialog.message)
        dialog.dismiss()

    tab.page.on("dialog", note)
    tab.open(f"?{query}")
    tab.expect_ready()
    expect(tab.page.locator("bead-answer.working")).to_have_count(0, timeout=READY_MS)
    assert tab.page.evaluate("window.hacked ?? null") is None
    assert tab.page.locator("main img, main script, main [onerror], main [onclick]").count() == 0
    assert "49" not in (tab.page.locator('input[name="plate"]').input_value())
    assert dialogs == []
    assert tab.complaints == []
    # And the page goes on working.
    if tab.page.locator("#change").get_attribute("open") is None:
        tab.page.locator("#change summary").first.click()
    tab.page.locator('a[data-query=""], .mark').first.click()
    expect(tab.page.locator("#state")).to_have_text("Example job", timeout=READY_MS)
    expect(tab.page.locator("#set-wfs .number")).to_contain_text(re.compile(r"\d+"))
