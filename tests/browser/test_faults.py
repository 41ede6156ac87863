"""What goes wrong around the app is lived through, and told by its one true reason."""

from pathlib import Path

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import MakeHost, MakePhone, MakeRelease
from tests.browser.host import Fault, Host
from tests.browser.phone import READY_MS, Phone

WORKER = "static/js/engine/worker.js"
LIBRARIES = "runtime/libs.zip"
QUERY = "?plate=1/2in&leg=5/16in"

STRICT_HISTORY = """
(() => {
  const write = history.replaceState.bind(history);
  let times = [];
  history.replaceState = (...all) => {
    const now = performance.now();
    times = [...times.filter((at) => now - at < 10_000), now];
    if (times.length > 100) throw new DOMException("more than 100 times", "SecurityError");
    return write(...all);
  };
})();
"""
"""A browser that takes no more than 100 changes of the address in 10 seconds."""

DRAG = """
async () => {
  const page = document.querySelector("bead-answer");
  let shown = 0;
  page.addEventListener("shown", () => { shown += 1; });
  for (let step = 0; shown < 130 && step < 2_000; step += 1) {
    page.set("wfs", String(300 + (step % 50)), { live: true });
    await new Promise((done) => setTimeout(done, 15));
  }
  page.set("wfs", "333", { live: false });
  return shown;
}
"""


def test_a_long_drag_ends_with_page_and_address_alike(host: Host, phone: Phone) -> None:
    phone.page.add_init_script(STRICT_HISTORY)
    phone.open(QUERY)
    phone.expect_ready()
    assert phone.page.evaluate(DRAG) >= 130
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    phone.page.wait_for_timeout(1_000)  # the address follows at rest
    shown = phone.page.locator("bead-answer").get_attribute("data-query")
    assert shown is not None
    assert "wfs=333" in shown
    assert phone.page.url.endswith(f"?{shown}")


def sabotaged(site: Path, script: bytes) -> Path:
    """Put a fault of the phone's own store before the service worker's script."""
    worker = site / "sw.js"
    worker.write_bytes(script + worker.read_bytes())
    for packed in site.glob("sw.js.*"):
        packed.unlink()
    return site


LOSES_A_PUT = b"""
{ const put = Cache.prototype.put; let lost = false;
  Cache.prototype.put = function (key, response) {
    if (lost || !response.headers.get("content-type").includes("wasm")) {
      return put.call(this, key, response);
    }
    lost = true;
    return Promise.resolve();
  }; }
"""
NEVER_OPENS = b"CacheStorage.prototype.open = () => new Promise(() => {});\n"


def test_files_a_store_lost_are_not_called_stored(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    phone = make_phone(make_host(sabotaged(make_release({}), LOSES_A_PUT)).url)
    phone.open()
    phone.expect_word("^no offline: files cleared$")
    expect(phone.part("story")).not_to_contain_text("are stored")
    phone.tap("repair")
    phone.expect_ready()
    stored, all_of_it = (phone.part("stored").text_content() or "").split(" of ")
    assert f"{stored} MB" == all_of_it or stored == all_of_it


def test_a_file_store_that_never_answers_is_gone_on_without(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    phone = make_phone(make_host(sabotaged(make_release({}), NEVER_OPENS)).url)
    phone.open(QUERY)
    phone.expect_word("^no offline: store silent$")
    phone.expect_running()
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)


def test_a_shop_store_that_never_answers_is_gone_on_without(host: Host, phone: Phone) -> None:
    phone.page.add_init_script("IDBFactory.prototype.open = () => ({});")
    phone.open(QUERY)
    phone.expect_running()
    expect(phone.page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    expect(phone.part("notice")).to_contain_text("does not answer")


@pytest.mark.parametrize(
    ("fault", "word"),
    [
        (Fault(status=404), "file missing"),
        (Fault(status=500), "server error"),
        (Fault(keep=100, cut=True), "no signal"),
        (Fault(html=True), "sign-in page"),
        (Fault(keep=100), "file cut short"),
    ],
)
def test_one_fault_has_one_reason(
    make_host: MakeHost, make_phone: MakePhone, fault: Fault, word: str
) -> None:
    phone = make_phone(make_host(faults={WORKER: fault}).url)
    phone.open()
    phone.expect_word(f"^stopped: {word}$")
    expect(phone.part("numbers")).to_have_text(word)
    assert phone.part("notice").text_content() == phone.part("story").text_content()


def test_a_page_cut_short_is_no_sign_in_page(make_host: MakeHost, make_phone: MakePhone) -> None:
    phone = make_phone(make_host(faults={"method/": Fault(keep=3_000)}).url)
    phone.open()
    phone.expect_word("file cut short$")


def test_where_a_whole_newer_release_waits_the_user_is_told_to_take_it(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    newer = make_release({"runtime/manifest.json": lambda data: data + b"\n"})
    host = make_host(
        faults={LIBRARIES: Fault(status=404), "runtime/manifest.json": Fault(status=404)}
    )
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("file missing$")
    host.site = newer
    host.faults.clear()
    phone.look_for_update()
    expect(phone.part("story")).to_contain_text("Tap Update")
    phone.tap("take")
    phone.expect_ready()
