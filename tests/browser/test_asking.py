"""What a page asks for, and what it keeps of it: no more often than once, and under one name."""

from playwright.sync_api import Page, Request, expect

from tests.browser.conftest import MakeHost, MakePhone, MakeRelease
from tests.browser.host import Host
from tests.browser.phone import ASKED_LATER, READY_MS, Phone, RunningPhone

WORKER = "static/js/engine/worker.js"
EDITS = 50
TYPE_MANY = """
(count) => {
  const field = document.querySelector('input[name="plate"]');
  for (let typed = 1; typed <= count; typed += 1) {
    field.value = `${typed}mm`;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }
}
"""
STORE = """
([name, job]) => new Promise((resolve, reject) => {
  const opening = indexedDB.open("beadwright");
  opening.onupgradeneeded = () => opening.result.createObjectStore("kept");
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const change = opening.result.transaction("kept", "readwrite");
    change.objectStore("kept").put(job, name);
    change.oncomplete = () => { opening.result.close(); resolve(); };
  };
})
"""
NAMES = """
() => new Promise((resolve, reject) => {
  const opening = indexedDB.open("beadwright");
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const names = opening.result.transaction("kept").objectStore("kept").getAllKeys();
    names.onsuccess = () => { opening.result.close(); resolve(names.result); };
  };
})
"""


def test_fifty_edits_before_the_engine_fails_ask_the_server_once(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    silent = make_release({WORKER: lambda _: b"addEventListener('message', () => {});"})
    phone = make_phone(make_host(silent).url)
    phone.page.clock.install()
    phone.open()
    phone.expect_word("^works offline$")
    expect(phone.part("numbers")).to_have_text("starting")
    asked: list[str] = []

    def note(request: Request) -> None:
        if "?" in request.url and request.resource_type == "fetch":
            asked.append(request.url)

    phone.page.on("request", note)
    phone.page.evaluate(TYPE_MANY, EDITS)
    phone.page.wait_for_timeout(500)
    assert asked == []
    phone.page.clock.run_for(95_000)
    phone.expect_word("^stopped: did not start$")
    expect(phone.page.locator("#state")).to_contain_text("Not worked out")
    phone.page.wait_for_timeout(1_000)
    assert len(asked) == 1
    assert f"plate={EDITS}mm" in asked[0]


def test_the_last_job_of_an_older_release_is_found_and_moved(
    host: Host, make_phone: MakePhone
) -> None:
    phone = make_phone(host.url)
    phone.open("method/")
    job = {"query": "plate=1/2in&leg=3/8in", "line": "Tee, 2F, plate 1/2 in"}
    phone.page.evaluate(STORE, ["last-job", job])
    phone.open()
    back = phone.page.locator("[data-last]")
    expect(back).to_have_text("Back to your last job: Tee, 2F, plate 1/2 in", timeout=READY_MS)
    names = phone.page.evaluate(NAMES)
    assert "last-dial-in" in names
    assert "last-job" not in names
    back.click()
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    assert "plate=1/2in" in phone.page.url


def switch_to_metric(page: Page) -> None:
    page.click("#change > summary")
    page.click("#group-show > summary")
    page.locator('input[name="units"][value="si"]').check(force=True)
    expect(page.locator("#units-switch .on")).to_have_text("mm", timeout=READY_MS)


def test_numbers_typed_bare_keep_their_inches_in_metric(host: Host, make_phone: MakePhone) -> None:
    phone: Phone = make_phone(host.url)
    phone.open("?plate=1.&leg=½")
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    switch_to_metric(phone.page)
    expect(phone.page.locator("#joint")).to_contain_text("25.4 mm")
    expect(phone.page.locator("#joint")).to_contain_text("12.7 mm")


BOTH = """
async (script) => {
  const { askPage } = await import(script);
  const left = askPage("cost", "").then(() => "answered", (error) => error.name);
  const now = askPage("dial-in", "plate=1/2in").then((answer) => answer.ok, (error) => error.name);
  return [await left, await now];
}
"""


def test_a_page_that_was_left_does_not_take_the_place_of_the_one_that_stands(
    running: RunningPhone,
) -> None:
    """Cost waits for what coupons are kept; by then another page is asked about."""
    running.open()
    running.expect_running()
    asking = f"{running.url}static/js/page/asking.js"
    assert running.page.evaluate(BOTH, asking) == ["AbortError", True]


def test_news_of_another_tab_while_the_engine_starts_leaves_the_job_asked_for(tab: Phone) -> None:
    tab.page.add_init_script(ASKED_LATER)
    tab.open("passes/?plate=1/2in&leg=3/8in")
    expect(tab.page.locator("#state")).to_have_text("Working…", timeout=READY_MS)
    tab.page.evaluate("new BroadcastChannel('beadwright kept').postMessage('')")
    tab.page.wait_for_timeout(500)
    tab.page.evaluate("askNow()")
    expect(tab.page.locator("#state")).to_contain_text("Your job", timeout=READY_MS)
    assert "plate=1/2in&leg=3/8in" in tab.page.url
