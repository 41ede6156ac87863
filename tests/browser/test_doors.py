"""The doors that are shut: text never becomes HTML or a script but by the app's one policy."""

import pytest
from playwright.sync_api import Page

from beadwright_site.page_table import SITE_PAGES
from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.doors import Doors
from tests.browser.host import Host
from tests.browser.phone import Phone, RunningPhone

OUTCOME = """
async ([code, trusted]) => {
  const made = await import(trusted);
  try {
    ({
      html: () => { document.createElement("p").innerHTML = "<b>new</b>"; },
      parsed: () => { new DOMParser().parseFromString("<p>new</p>", "text/html"); },
      worker: () => { new Worker("static/js/engine/worker.js"); },
      src: () => { document.createElement("script").src = "static/js/main.js"; },
      words: () => { document.createElement("script").text = "1"; },
      ours: () => { document.createElement("p").innerHTML = made.partHtml("<b>new</b>"); },
      scripted: () => { made.partHtml("<p><SCRIPT src=x></SCRIPT></p>"); },
      elsewhere: () => { made.scriptUrl("https://example.com/a.js"); },
      above: () => { made.scriptUrl("/other/a.js"); },
      second: () => { trustedTypes.createPolicy("another", {}); },
      twice: () => { trustedTypes.createPolicy("beadwright", {}); },
      standing_in: () => { trustedTypes.createPolicy("default", {}); },
    })[code]();
    return "done";
  } catch (error) {
    return error.name;
  }
}
"""


def outcome(page: Page, url: str, code: str) -> str:
    answer = page.evaluate(OUTCOME, [code, f"{url}static/js/offline/trusted.js"])
    return str(answer)


BROKEN = ("html", "parsed", "worker", "src", "words", "second", "twice", "standing_in")
"""What the browser itself refuses, and tells as a violation."""


@pytest.mark.parametrize("code", BROKEN)
def test_text_from_anywhere_else_is_refused(running: RunningPhone, doors: Doors, code: str) -> None:
    assert outcome(running.page, running.url, code) == "TypeError"
    running.page.wait_for_timeout(50)
    assert doors.broken  # heard by the ear that every browser test has
    doors.broken.clear()


def test_the_ear_hears_another_origin(running: RunningPhone, doors: Doors) -> None:
    running.page.evaluate("fetch('http://example.invalid/').catch(() => {})")
    running.page.wait_for_timeout(50)
    assert any("example.invalid" in told for told in doors.broken)
    doors.broken.clear()


def test_the_one_policy_takes_parts_without_scripts_and_scripts_from_here(
    make_phone: MakePhone, make_host: MakeHost
) -> None:
    served = make_host(prefix="/shop/")
    phone = make_phone(served.url)
    phone.open()
    phone.expect_running()
    assert outcome(phone.page, phone.url, "ours") == "done"
    for code in ("scripted", "elsewhere", "above"):
        assert outcome(phone.page, phone.url, code) == "TypeError"


def test_every_page_stands_by_link_and_by_load(running: RunningPhone, tab: Phone) -> None:
    for page in SITE_PAGES.values():
        if not page.title:
            continue  # no such page: it has no script
        running.open(page.path)
        running.page.wait_for_timeout(200)
        tab.open(page.path)
        tab.expect_running()
    errors = [told for told in running.complaints if not told.startswith("warning: ")]
    assert errors + tab.complaints == []


def test_a_browser_without_trusted_types_goes_on(host: Host, make_phone: MakePhone) -> None:
    phone = make_phone(host.url, bypass_csp=True)
    phone.page.add_init_script("delete globalThis.trustedTypes")
    phone.open("?plate=1/2in")
    phone.expect_ready()
    assert phone.page.evaluate("typeof trustedTypes") == "undefined"
    assert outcome(phone.page, phone.url, "ours") == "done"
    assert outcome(phone.page, phone.url, "elsewhere") == "TypeError"
