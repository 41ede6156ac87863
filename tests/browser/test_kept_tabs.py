"""Two tabs of one phone: what one keeps the other sees, and neither writes over the other."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.dialled import START_MS
from tests.browser.host import Host
from tests.browser.keeping import kept_rows, kept_soon, soon, write_entry
from tests.browser.phone import Phone, RunningPhone, new_phone

LIST = "lines=a,tee,3/8in,5/16in,6in%0Ab,tee,1/4in,1/4in,4in"


@pytest.fixture
def other(steady_context: BrowserContext, steady_host: Host) -> Iterator[Phone]:
    """A second tab of the phone of ``running``."""
    opened = new_phone(steady_context, steady_host.url)
    yield opened
    opened.page.close()


def shop(phone: Phone) -> Page:
    phone.open("shop/")
    phone.expect_running()
    return phone.page


def test_entries_kept_in_two_tabs_stand_side_by_side(running: RunningPhone, other: Phone) -> None:
    here, there = shop(running), shop(other)
    write_entry(here, "labour", "43/h")
    expect(there.locator('input[name="labour"]')).to_have_value("43/h", timeout=START_MS)
    write_entry(there, "overhead", "12/h")
    expect(here.locator('input[name="overhead"]')).to_have_value("12/h", timeout=START_MS)
    assert kept_rows(here)["shop"] == {"labour": "43/h", "overhead": "12/h"}


def test_a_tab_that_heard_nothing_writes_over_nothing(running: RunningPhone, other: Phone) -> None:
    other.page.add_init_script("BroadcastChannel.prototype.postMessage = () => {};")
    here, there = shop(running), shop(other)
    write_entry(there, "fit_up", "4min")
    kept_soon(there)
    write_entry(here, "clean", "2min")
    expect(here.locator("#state")).to_have_text("Kept on this phone", timeout=START_MS)
    assert kept_rows(here)["shop"] == {"fit_up": "4min", "clean": "2min"}
    expect(here.locator('input[name="fit_up"]')).to_have_value("")


def test_a_weld_added_in_another_tab_comes_into_the_list_at_hand(
    running: RunningPhone, other: Phone
) -> None:
    running.open(f"list/?{LIST}")
    here = running.page
    expect(here.locator("#rows li")).to_have_count(2, timeout=START_MS)
    other.open("?plate=1/2in&leg=3/8in")
    expect(other.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    other.page.click("[data-add-weld]")
    kept_soon(other.page)
    here.locator("#weld-1 summary").click()
    here.click("#weld-1 [data-weld=down]")
    expect(here.locator("#rows li")).to_have_count(3, timeout=START_MS)
    assert [line[:6] for line in kept_rows(here)["shop"]["lines"].splitlines()[-3:]] == [
        "b,tee,", "a,tee,", "Weld 1",
    ]  # fmt: skip


def test_a_list_changed_in_both_tabs_is_not_written_over(
    running: RunningPhone, other: Phone
) -> None:
    running.open(f"list/?{LIST}")
    here, there = running.page, other.page
    here.locator("#weld-1 summary").click()
    here.click("#weld-1 [data-weld=copy]")
    expect(here.locator("#state")).to_have_text("Kept on this phone", timeout=START_MS)
    other.open("list/")
    expect(there.locator("#rows li")).to_have_count(3, timeout=START_MS)
    there.locator("#weld-1 summary").click()
    there.click("#weld-1 [data-weld=drop]")
    expect(there.locator("#state")).to_have_text("Kept on this phone", timeout=START_MS)
    before = kept_rows(there)
    here.click("#weld-3 summary")
    here.click("#weld-3 [data-weld=up]")
    told = here.locator('[data-told="kept"]')
    expect(told).to_contain_text("Another tab changed it", timeout=START_MS)
    assert kept_rows(here) == before


def test_a_job_kept_in_one_tab_is_listed_in_the_other(running: RunningPhone, other: Phone) -> None:
    query = "heat/?plate=1/2in&leg=3/8in"
    for phone in (running, other):
        phone.open(query)
        expect(phone.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    running.page.click("[data-keep-job]")
    expect(other.page.locator("#jobs summary")).to_have_text("Kept jobs (1)")


SPIES = """
window.asked = 0; window.durable = [];
StorageManager.prototype.persisted = async () => false;
StorageManager.prototype.persist = async () => { window.asked += 1; return false; };
const { transaction } = IDBDatabase.prototype;
IDBDatabase.prototype.transaction = function (names, mode, how) {
  if (mode === "readwrite") window.durable.push(how?.durability ?? "");
  return transaction.call(this, names, mode, how);
};
"""


def test_the_browser_is_asked_once_to_keep_it_when_there_is_something_to_lose(tab: Phone) -> None:
    page = tab.page
    page.add_init_script(SPIES)
    tab.open("?plate=1/2in&leg=3/8in")
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    soon(page, "durable.length > 0")  # the last job, no loss if it goes
    assert (page.evaluate("asked"), page.evaluate("durable")) == (0, [""])
    page.click("[data-add-weld]")
    soon(page, "asked === 1")
    assert page.evaluate("durable")[-1] == "strict"  # past a flat battery
    page.click("[data-keep-job]")
    expect(page.locator("#jobs summary")).to_have_text("Kept jobs (1)")
    page.reload()
    page.click("#jobs summary")
    page.click("[data-drop-job]")
    expect(page.locator("#jobs summary")).to_have_text("Kept jobs (0)")
    assert page.evaluate("asked") == 0
