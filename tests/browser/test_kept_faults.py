"""What could not be kept is told where it was tapped, with its reason; nothing typed is lost."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.dialled import START_MS
from tests.browser.host import Host
from tests.browser.keeping import kept_rows, kept_soon, write_entry
from tests.browser.phone import RunningPhone, forget, new_phone
from tests.site.kept_files import sound_file

JOB = "plate=1/2in&leg=3/8in"
COUPON = "plate=1/4in&leg=1/4in&marked=8in&arc_time=40s&meter_amps=330A&welder=Ann&machine=one"
LIST = "lines=a,tee,3/8in,5/16in,6in%0Ab,tee,1/4in,1/4in,4in"

FULL = """
const error = Object.getOwnPropertyDescriptor(IDBTransaction.prototype, "error").get;
const { commit } = IDBTransaction.prototype;
const { put } = IDBObjectStore.prototype;
const full = new WeakSet();
Object.defineProperty(IDBTransaction.prototype, "error", { get() {
  return full.has(this) ? new DOMException("", "QuotaExceededError") : error.call(this);
} });
IDBTransaction.prototype.commit = function () {
  if (sessionStorage.getItem("full") !== "at the end") return commit.call(this);
  full.add(this);
  this.abort();
};
IDBObjectStore.prototype.put = function (value, name) {
  if (sessionStorage.getItem("full") === name) throw new DOMException("", "QuotaExceededError");
  return put.call(this, value, name);
};
"""
"""A phone that is full while "full" is set: Chromium takes the rows, then breaks off at the end;
others refuse a row among others, here the one of that name."""

INSECURE = """
Object.defineProperty(window, "indexedDB", { get: () => {
  throw new DOMException("The operation is insecure.", "SecurityError");
} });
"""
DENIED = """
IDBFactory.prototype.open = () => {
  const asked = {
    error: new DOMException("The user denied permission to access the database.", "UnknownError") };
  setTimeout(() => asked.onerror());
  return asked;
};
"""
"""Site data blocked, as Firefox says it, and as Chromium does."""

STUCK = """
IDBTransaction.prototype.commit = function () {
  const rows = this.objectStore("kept");
  const hold = () => { rows.get("x").onsuccess = hold; };
  hold();
};
"""
"""A store that takes what is written and never comes to its end."""

FAILS = """
IDBObjectStore.prototype.put = () => { throw new DOMException("Backing store", "UnknownError"); };
"""

Break = Callable[[str], RunningPhone]
Act = Callable[[RunningPhone], Page]


@pytest.fixture(scope="module")
def broken(steady_context: BrowserContext, steady_host: Host) -> Iterator[Break]:
    """Open a tab on the phone that has the app stored, with a fault of its store; one a fault."""
    tabs: dict[str, RunningPhone] = {}

    def open_tab(fault: str) -> RunningPhone:
        if fault not in tabs:
            page = steady_context.new_page()
            page.add_init_script(fault)
            page.goto(f"{steady_host.url}method/")
            tabs[fault] = RunningPhone(page, steady_host.url)
        return tabs[fault]

    yield open_tab
    for tab in tabs.values():
        tab.page.close()


@pytest.fixture(autouse=True)
def forgotten(steady_context: BrowserContext, steady_host: Host) -> Iterator[None]:
    """What a test leaves in the store is cleared, by a tab whose store is sound."""
    yield
    sound = new_phone(steady_context, steady_host.url)
    sound.open("licences.txt")
    forget(sound.page)
    sound.page.close()


def asked(phone: RunningPhone, path: str) -> Page:
    """Open a page with a job and wait until it is worked out."""
    phone.open(path)
    expect(phone.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)
    return phone.page


def keep_entry(phone: RunningPhone) -> Page:
    phone.open("shop/")
    phone.expect_running()
    write_entry(phone.page, "labour", "43/h")
    return phone.page


def keep_job(phone: RunningPhone) -> Page:
    page = asked(phone, f"heat/?{JOB}")
    page.click("[data-keep-job]")
    return page


def keep_coupon(phone: RunningPhone) -> Page:
    page = asked(phone, f"coupons/?{COUPON}")
    page.click("[data-keep-coupon]")
    return page


def add_weld(phone: RunningPhone) -> Page:
    page = asked(phone, f"?{JOB}")
    page.click("[data-add-weld]")
    return page


def move_weld(phone: RunningPhone) -> Page:
    page = asked(phone, f"list/?{LIST}")
    page.locator("#weld-1 summary").click()
    page.click("#weld-1 [data-weld=down]")
    return page


def keep_prices(phone: RunningPhone) -> Page:
    page = asked(phone, f"cost/?{JOB}&overhead=20")
    page.click("[data-keep-all]")
    return page


PLACES = (keep_entry, keep_job, keep_coupon, add_weld, move_weld, keep_prices)


def again(page: Page, act: Act) -> None:
    """Tap again, once there is room."""
    taps: dict[Act, str] = {keep_job: "keep-job", keep_coupon: "keep-coupon", add_weld: "add-weld",
                            move_weld: "weld=down", keep_prices: "keep-all"}  # fmt: skip
    if act is keep_entry:
        write_entry(page, "overhead", "12/h")
    else:
        page.locator(f"[data-{taps[act]}]").first.click()


@pytest.mark.parametrize("act", PLACES, ids=lambda act: act.__name__)
def test_on_a_full_phone_it_is_told_where_it_was_tapped_and_a_second_tap_keeps_it(
    act: Act, broken: Break
) -> None:
    phone = broken(FULL)
    phone.page.evaluate("sessionStorage.setItem('full', 'at the end')")
    page = act(phone)
    told = page.locator('[data-told="kept"]')
    expect(told).to_contain_text("Not kept.", timeout=START_MS)
    expect(told).to_contain_text("no room: free some")
    expect(told).to_contain_text("save it as a file below" if act is keep_entry else "stay")
    expect(told).to_be_in_viewport()
    expect(page.get_by_text("Kept on this phone", exact=True)).to_have_count(0)
    assert kept_rows(page) == {}
    page.evaluate("sessionStorage.clear()")
    again(page, act)
    rows = kept_soon(page)
    expect(told).to_have_count(0)
    if act is keep_entry:
        assert rows["shop"] == {"labour": "43/h", "overhead": "12/h"}


def test_of_a_file_that_does_not_fit_nothing_is_taken(broken: Break, tmp_path: Path) -> None:
    page = keep_entry(broken(FULL))
    before = kept_soon(page)
    file = tmp_path / "in.json"
    file.write_text(json.dumps(sound_file()))
    page.evaluate("sessionStorage.setItem('full', 'coupon:k1')")  # the fourth row of five
    page.locator('input[type="file"]').set_input_files(file)
    page.click('[data-take="yes"]')
    preview = page.locator("[data-preview]")
    expect(preview).to_contain_text("Not kept. The phone has no room")
    assert kept_rows(page) == before
    page.evaluate("sessionStorage.clear()")
    page.click('[data-take="yes"]')
    expect(preview).to_contain_text("Taken over: 7")
    assert len(kept_rows(page)) == 5


@pytest.mark.parametrize("fault", [INSECURE, DENIED], ids=["as Firefox", "as Chromium"])
def test_where_nothing_may_be_stored_it_counts_while_open_and_goes_into_the_file(
    fault: str, broken: Break, tmp_path: Path
) -> None:
    phone = broken(fault)
    page = keep_entry(phone)
    told = page.locator('[data-told="kept"]')
    expect(told).to_contain_text("Not kept. This browser stores nothing here", timeout=START_MS)
    with page.expect_download() as caught:
        page.click("[data-kept-out]")
    caught.value.save_as(tmp_path / "out.json")
    assert json.loads((tmp_path / "out.json").read_text())["shop"] == {"labour": "43/h"}
    expect(page.locator("[data-preview]")).to_contain_text("The file has the shop alone")
    page = keep_job(phone)
    expect(page.locator("#jobs")).to_contain_text("Not kept. This browser stores nothing here")
    expect(page.locator("#jobs")).to_contain_text("They cannot be read")
    page = asked(phone, f"cost/?{JOB}")
    expect(page.locator('input[name="labour"]')).to_have_attribute("placeholder", "43/h")


def test_a_store_that_never_comes_to_an_end_is_told_and_nothing_is_written_later(
    broken: Break,
) -> None:
    page = keep_coupon(broken(STUCK))
    told = page.locator('[data-told="kept"]')
    expect(told).to_contain_text("Perhaps not kept.", timeout=START_MS)
    expect(told).to_contain_text("does not answer")
    expect(page.locator("#arc_time")).to_have_value("40s")
    assert kept_rows(page) == {}


def test_a_store_that_fails_is_told_with_its_own_words(broken: Break) -> None:
    page = add_weld(broken(FAILS))
    told = page.locator('[data-told="kept"]')
    expect(told).to_contain_text("Not kept. The store on this phone failed")
    expect(told).to_contain_text("(Backing store)")
