"""Fit for a gloved hand and for the home screen; and nothing in an address breaks the page."""

import re
from typing import Any, cast

import pytest
from playwright.sync_api import Dialog, expect

from tests.browser.conftest import MakePhone
from tests.browser.host import Host
from tests.browser.phone import READY_MS, Phone

LEAST_PX = 48
SMALL_TARGETS = """
([within, least]) => [...document.querySelectorAll(within)].flatMap((root) =>
  [...root.querySelectorAll("button, summary, input, [role=slider], nav a")])
  .filter((e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
  .map((e) => [e.outerHTML.slice(0, 90), e.getBoundingClientRect()])
  .filter(([, box]) => box.width > 1 && (box.width < least || box.height < least))
  .map(([html, box]) => `${Math.round(box.width)} x ${Math.round(box.height)}: ${html}`)
"""
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
def test_what_is_tapped_is_big_enough_for_a_glove(
    host: Host, make_phone: MakePhone, width: int
) -> None:
    phone = make_phone(host.url)
    phone.page.set_viewport_size({"width": width, "height": 800})
    phone.open()
    phone.expect_ready()
    phone.part("word").click()
    expect(phone.part("panel")).to_be_visible()
    assert phone.page.evaluate(SMALL_TARGETS, ["bead-offline", LEAST_PX]) == []
    phone.tap("close")
    expect(phone.part("panel")).to_be_hidden()
    wider = phone.page.evaluate("document.documentElement.scrollWidth - innerWidth")
    assert wider <= 0


def test_the_panel_opens_shuts_and_gives_the_focus_back(phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.part("word").focus()
    phone.page.keyboard.press("Enter")
    expect(phone.part("panel")).to_be_visible()
    phone.page.keyboard.press("Escape")
    expect(phone.part("panel")).to_be_hidden()
    expect(phone.part("word")).to_be_focused()


def test_it_can_be_put_on_the_home_screen(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    session = phone.page.context.new_cdp_session(phone.page)
    manifest = cast("dict[str, Any]", session.send("Page.getAppManifest"))
    assert manifest["errors"] == []
    assert manifest["url"] == f"{host.url}manifest.webmanifest"
    found = cast("dict[str, Any]", session.send("Page.getInstallabilityErrors"))
    # A profile of a test is a private one, which is the one thing that may stand in the way.
    assert {error["errorId"] for error in found["installabilityErrors"]} <= {"in-incognito"}


def test_the_icons_are_there_in_the_sizes_the_manifest_says(host: Host, phone: Phone) -> None:
    phone.open()
    sizes = phone.page.evaluate(
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


@pytest.mark.parametrize("query", HOSTILE, ids=range(len(HOSTILE)))
def test_a_hostile_address_is_only_text(phone: Phone, query: str) -> None:
    dialogs: list[str] = []

    def note(dialog: Dialog) -> None:
        dialogs.append(dialog.message)
        dialog.dismiss()

    phone.page.on("dialog", note)
    phone.open(f"?{query}")
    phone.expect_ready()
    expect(phone.page.locator("bead-dial-in.working")).to_have_count(0, timeout=READY_MS)
    assert phone.page.evaluate("window.hacked ?? null") is None
    assert phone.page.locator("main img, main script, main [onerror], main [onclick]").count() == 0
    assert "49" not in (phone.page.locator('input[name="plate"]').input_value())
    assert dialogs == []
    assert phone.complaints == []
    # And the page goes on working.
    if phone.page.locator("#change").get_attribute("open") is None:
        phone.page.locator("#change summary").first.click()
    phone.page.locator('a[data-query=""], .mark').first.click()
    expect(phone.page.locator("#state")).to_have_text("Example job", timeout=READY_MS)
    expect(phone.page.locator("#set-wfs .number")).to_contain_text(re.compile(r"\d+"))
