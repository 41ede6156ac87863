"""From the first visit to a bench without signal: the numbers are those of the terminal."""

import json
import re
import subprocess
import sys
from collections.abc import Callable
from fractions import Fraction
from typing import Any
from urllib.parse import urlsplit

from playwright.sync_api import BrowserContext, expect

from tests.browser.conftest import MakePhone
from tests.browser.host import Fault, Host
from tests.browser.phone import READY_MS, Phone, go_to, new_phone

BOOKMARK = "?plate=1/2in&leg=3/8in&wire=E70C-6M&dia=0.045in&gas=90/10&units=us"
SETTINGS = {"wfs": "wire_feed", "volts": "volts", "travel": "travel", "ctwd": "tip_to_work"}
FACTS = ("current", "heat", "laid", "gas_flow")


def terminal(query: str) -> dict[str, Any]:
    """Return what ``python -m beadwright`` prints for a query."""
    ran = subprocess.run(
        [sys.executable, "-m", "beadwright", "dial-in", query],
        capture_output=True,
        text=True,
        check=True,
    )
    answer: dict[str, Any] = json.loads(ran.stdout)
    return answer


def query_of(phone: Phone) -> str:
    return urlsplit(phone.page.url).query


def read_number(text: str) -> tuple[float, float]:
    """Return a number as a welder reads it, and half of its last place.

    A length in sixteenths may come as ``5/8`` or ``1 1/4``.
    """
    found = re.search(r"(?:(\d+) )?(\d+)/(\d+)|(\d+(?:\.(\d+))?)", text)
    assert found, f"no number in {text!r}"
    whole, over, under, decimal, places = found.groups()
    if over:
        return float(int(whole or 0) + Fraction(int(over), int(under))), 1 / 32
    return float(decimal), 0.5 * 10.0 ** -len(places or "")


def expect_terminals_numbers(phone: Phone, query: str) -> None:
    """Compare everything big on the page with the terminal's answer to the same query."""
    answer = terminal(query)["answer"]
    shown = {
        measure: phone.page.locator(f"#set-{key} .number").inner_text()
        for key, measure in SETTINGS.items()
    }
    for measure in FACTS:
        shown[measure] = phone.page.locator(f'#facts a[href="#how-{measure}"] b').inner_text()
    for measure, text in shown.items():
        number, half_a_place = read_number(text)
        assert abs(number - answer[measure]["value"]) <= half_a_place * 1.001, (measure, text)
    assert phone.ask("json", {"page": "dial-in", "query": query}) == terminal(query)


def set_job(phone: Phone, **fields: str) -> None:
    """Type into the form as a welder would, and wait until the page has followed."""
    form = phone.page.locator("#change")
    if form.get_attribute("open") is None:
        form.locator("summary").first.click()
    for name, text in fields.items():
        field = phone.page.locator(f'#job-form input[name="{name}"]')
        field.fill(text)
        field.press("Tab")
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    for name, text in fields.items():
        field = phone.page.locator(f'#job-form input[name="{name}"]')
        expect(field).to_have_value(re.compile(f"^{re.escape(text)}"), timeout=READY_MS)
        expect(phone.page).to_have_url(re.compile(f"{name}={re.escape(text)}"), timeout=READY_MS)
    expect(phone.page.locator("bead-answer")).not_to_have_class(re.compile("working"))


def test_first_visit_then_no_signal_then_another_job(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    phone.page.reload()
    phone.expect_ready()
    before = phone.page.locator("#set-travel .number").inner_text()
    set_job(phone, plate="5/8in", leg="5/16in")
    assert phone.page.locator("#set-travel .number").inner_text() != before
    assert "plate=5/8in" in query_of(phone)
    expect_terminals_numbers(phone, query_of(phone))
    assert phone.complaints == []


def test_with_the_radio_off_it_is_the_same(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.page.context.set_offline(True)
    phone.page.reload()
    phone.expect_ready()
    set_job(phone, plate="1/4in", leg="1/4in")
    expect_terminals_numbers(phone, query_of(phone))


def test_a_bookmark_opens_on_another_phone(phone: Phone) -> None:
    phone.open(BOOKMARK)
    phone.expect_ready()
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    expect_terminals_numbers(phone, BOOKMARK[1:])
    assert phone.complaints == []


def test_a_bookmark_opens_in_a_new_tab_without_signal(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.page.close()
    host.kill()
    tab = new_phone(phone.page.context, host.url)
    tab.open(BOOKMARK)
    tab.expect_ready()
    expect(tab.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    expect_terminals_numbers(tab, BOOKMARK[1:])


def test_the_page_as_it_came_holds_the_terminals_numbers(
    host: Host, make_context: Callable[..., BrowserContext]
) -> None:
    page = make_context(java_script_enabled=False).new_page()
    page.goto(host.url)
    answer = terminal("")["answer"]
    for key, measure in SETTINGS.items():
        number, half = read_number(page.locator(f"#set-{key} .number").inner_text())
        assert abs(number - answer[measure]["value"]) <= half * 1.001, measure


def test_everything_comes_from_the_one_host_and_the_runtime_comes_once(
    host: Host, make_phone: MakePhone
) -> None:
    phone = make_phone(host.url)
    phone.open(BOOKMARK)
    phone.expect_ready()
    phone.open("method/index.html")
    phone.expect_ready()
    strangers = {url for url in phone.requested if not url.startswith((host.url, "blob:", "data:"))}
    assert strangers == set()
    twice = {name: n for name, n in host.requests.items() if name.startswith("runtime/") and n > 1}
    assert twice == {}


def test_links_between_pages_keep_the_engine(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    go_to(phone.page, "Method")
    expect(phone.page).to_have_url(re.compile("method/"))
    phone.expect_ready()
    workers = phone.page.workers
    assert len(workers) == 1
    phone.page.go_back()
    expect(phone.page.locator("#job-form")).to_be_attached()
    phone.expect_ready()
    assert phone.page.workers == workers
    assert phone.complaints == []


def test_a_bookmarked_job_never_shows_the_example_s_numbers_as_its_own(
    host: Host, phone: Phone
) -> None:
    """From the first paint on, before any script of the page has come."""
    host.faults["static/js/main.js"] = Fault(keep=0, stall=True)
    seen = "getComputedStyle(document.querySelector('#set-wfs .number button')).opacity"
    for query, opacity in ((BOOKMARK, "0.4"), ("", "1")):
        phone.page.goto(phone.url + query, wait_until="commit")
        phone.page.wait_for_selector("#set-wfs .number button")
        assert phone.page.evaluate(seen) == opacity


def test_the_licenses_of_all_that_ships_open_with_no_signal(phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.part("word").click()
    link = phone.part("panel").get_by_role("link", name="Licenses of all that ships")
    phone.page.context.set_offline(True)
    link.click()
    text = phone.page.locator("body")
    for part in ("Beadwright", "@hotwired/turbo", "idb-keyval", "lean-qr", "pyodide", "jinja2"):
        expect(text).to_contain_text(part, timeout=READY_MS)
