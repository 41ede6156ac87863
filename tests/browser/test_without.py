"""Phones that lack something: the answer that came with the page stays, and the lack is said."""

from playwright.sync_api import expect

from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.host import Fault, Host
from tests.browser.phone import READY_MS


def test_without_scripts_the_page_is_readable(host: Host, make_phone: MakePhone) -> None:
    phone = make_phone(host.url, java_script_enabled=False)
    phone.open()
    expect(phone.page.get_by_text("Scripts are off")).to_be_visible(timeout=READY_MS)
    expect(phone.part("word")).to_be_hidden()
    expect(phone.part("panel")).to_be_hidden()
    expect(phone.page.locator("main")).to_be_visible()


def test_scripts_lost_on_the_way_are_told(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={"static/js/offline/fault_words.js": Fault(status=404)})
    phone = make_phone(host.url)
    phone.open()
    expect(phone.page.get_by_text("Scripts are off")).to_be_visible(timeout=READY_MS)


def test_without_webassembly_the_answer_stays_and_the_lack_is_said(
    host: Host, make_phone: MakePhone
) -> None:
    phone = make_phone(host.url)
    phone.page.add_init_script("delete globalThis.WebAssembly")
    phone.open()
    phone.expect_word("^stopped: no WebAssembly$")
    expect(phone.part("notice")).to_contain_text("will not follow your changes")
    expect(phone.page.locator("main")).to_be_visible()


def test_without_a_store_the_numbers_still_follow(host: Host, make_phone: MakePhone) -> None:
    phone = make_phone(host.url)
    phone.page.add_init_script("delete Navigator.prototype.serviceWorker")
    phone.open()
    phone.expect_running()
    phone.expect_word("^no offline: old browser$")
    phone.part("word").click()
    expect(phone.part("story")).to_contain_text("Bring the browser up to date")
    expect(phone.page.locator('[data-tap="repair"]')).to_be_hidden()


def test_over_plain_http_the_reason_is_told(host: Host, make_phone: MakePhone) -> None:
    phone = make_phone(host.url)
    phone.page.add_init_script(
        "Object.defineProperty(globalThis, 'isSecureContext', { value: false })"
    )
    phone.open()
    phone.expect_running()
    phone.expect_word("^no offline: plain http$")
