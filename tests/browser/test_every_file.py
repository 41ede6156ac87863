"""Files of the first visit, spoilt on the way: told, and mended once they are sound.

Of the pages and their files one of each kind stands for its like; of the runtime every file is
tried. Three pairs of file and way, and three stored files, stand for all; the fault table tries
each.
"""

import os
import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.host import Fault, Host
from tests.browser.phone import READY_MS, Phone, go_to
from tests.browser.test_repair import SPOIL, hash_of

RUNTIME = (
    "runtime/app.zip", "runtime/libs.zip", "runtime/manifest.json", "runtime/pyodide.asm.js",
    "runtime/pyodide.asm.wasm", "runtime/pyodide.mjs", "runtime/stdlib.zip",
)  # fmt: skip
SHELL = (
    "heat/", "manifest.webmanifest", "static/css/answer.css", "static/icons/icon-512.png",
    "static/js/kept/kept.js", "static/js/engine/worker.js", "static/vendor/idb-keyval.js",
)  # fmt: skip
WAYS = {
    "cut": Fault(keep=300, cut=True),
    "short": Fault(keep=300),
    "one byte wrong": Fault(flip=True),
    "sign-in page": Fault(html=True),
    "gone": Fault(status=404),
    "server error": Fault(status=500),
}
SCRIPTS_OF_ALL = ("static/js/kept/kept.js", "static/vendor/idb-keyval.js")
"""Without these no script runs, and the page says so itself: ``test_without.py``."""

PAIRS = (
    [(file, way) for file in (*RUNTIME, *SHELL) if file not in SCRIPTS_OF_ALL for way in WAYS]
    if "BEADWRIGHT_ALL_FAULTS" in os.environ
    else [("runtime/app.zip", "cut"), ("runtime/pyodide.mjs", "server error"), ("heat/", "short")]
)
SPOILT = (
    (*RUNTIME, *SHELL)
    if "BEADWRIGHT_ALL_FAULTS" in os.environ
    else ("runtime/app.zip", "runtime/pyodide.asm.wasm", "heat/")
)
OPEN_NEW = "heat/?plate=1/2in"


def work_without_signal(host: Host, phone: Phone) -> None:
    """The app is whole: it opens and works out a job with the host gone."""
    host.kill()
    phone.open(OPEN_NEW)
    phone.expect_ready()
    expect(phone.page.locator("#state")).to_contain_text("Your job", timeout=READY_MS)


def repair(host: Host, phone: Phone, file: str) -> None:
    """Tap Repair and wait until all is stored, this file fetched anew among it."""
    host.requests.clear()
    phone.tap("repair")
    for _ in range(READY_MS // 50):  # until then the panel tells how it was before
        if host.asked(file):
            break
        phone.page.wait_for_timeout(50)
    assert host.asked(file)
    expect(phone.part("story")).to_contain_text("stored and checked", timeout=READY_MS)


@pytest.mark.long(reason="a first visit for each file")
@pytest.mark.parametrize(("file", "way"), PAIRS)
def test_a_first_visit_that_loses_a_file_is_told_and_goes_on(
    make_host: MakeHost, make_phone: MakePhone, file: str, way: str
) -> None:
    host = make_host(faults={file: WAYS[way]})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("^(stopped|no offline): ")
    host.faults.clear()
    phone.page.reload()  # a script that came wrong has to come anew with its page
    phone.expect_ready()
    work_without_signal(host, phone)


@pytest.mark.long(reason="a first visit for each file")
@pytest.mark.parametrize("gone", [False, True], ids=["spoilt", "cleared"])
@pytest.mark.parametrize("file", SPOILT)
def test_a_stored_file_that_is_spoilt_or_cleared_is_mended(
    host: Host, phone: Phone, file: str, gone: bool
) -> None:
    phone.open()
    phone.expect_ready()
    listed = f"{file}index.html" if file.endswith("/") else file
    assert phone.page.evaluate(SPOIL, [hash_of(host.site, listed), gone])
    repair(host, phone, file)
    work_without_signal(host, phone)


CLEAR = "caches.keys().then((all) => Promise.all(all.map((name) => caches.delete(name))))"
CHANGE = "document.querySelector('bead-answer').set('plate', '5/8in', {})"


def changed(phone: Phone) -> None:
    """The page follows an entry that is changed."""
    before = phone.page.locator("#set-travel .number").inner_text()
    phone.page.evaluate(CHANGE)
    expect(phone.page.locator("#state")).to_contain_text("Your job", timeout=READY_MS)
    expect(phone.page.locator("#set-travel .number")).not_to_have_text(before, timeout=READY_MS)


def test_all_files_cleared_while_the_app_runs_come_back_with_signal(
    host: Host, phone: Phone
) -> None:
    phone.open()
    phone.expect_ready()
    phone.page.evaluate(CLEAR)
    changed(phone)
    go_to(phone.page, "Heat")
    expect(phone.page).to_have_title(re.compile("Heat"), timeout=READY_MS)
    repair(host, phone, "runtime/stdlib.zip")
    work_without_signal(host, phone)


def test_all_files_cleared_without_signal_leave_the_open_page_working(
    host: Host, phone: Phone
) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    phone.page.evaluate(CLEAR)
    changed(phone)
    address = phone.page.url
    go_to(phone.page, "Heat")
    expect(phone.page.get_by_text("Try again with signal")).to_be_visible(timeout=READY_MS)
    host.start()
    phone.page.goto(address)
    phone.expect_ready()
    work_without_signal(host, phone)


MISTYPED = (
    (*RUNTIME, *SHELL)
    if "BEADWRIGHT_ALL_FAULTS" in os.environ
    else ("runtime/pyodide.asm.wasm", "runtime/pyodide.mjs", "static/css/answer.css")
)


@pytest.mark.long(reason="a first visit for each file")
@pytest.mark.parametrize("file", MISTYPED)
def test_a_host_that_gives_a_file_another_type_is_lived_with(
    make_host: MakeHost, make_phone: MakePhone, file: str
) -> None:
    host = make_host(faults={file: Fault(kind="text/plain")})
    phone = make_phone(host.url)
    phone.open()
    if file in SCRIPTS_OF_ALL:
        expect(phone.page.get_by_text("Scripts are off")).to_be_visible(timeout=READY_MS)
        host.faults.clear()
        phone.page.reload()
    phone.expect_ready()
    work_without_signal(host, phone)


def test_a_service_worker_of_another_type_is_told(
    make_host: MakeHost, make_phone: MakePhone
) -> None:
    host = make_host(faults={"sw.js": Fault(kind="text/plain")})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_running()  # the numbers follow all the same
    phone.expect_word("^no offline: wrong file type$")
    host.faults.clear()
    phone.page.reload()
    phone.expect_ready()
    work_without_signal(host, phone)


def test_a_clock_set_back_by_years_changes_nothing(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.page.clock.set_system_time("1999-12-31")
    work_without_signal(host, phone)
    assert phone.page.evaluate("new Date().getFullYear()") == 1999
