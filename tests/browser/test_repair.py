"""Stored files that went bad or went missing are made good; what the welder saved stays."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from beadwright_build.release import read_release
from tests.browser.host import Host
from tests.browser.phone import READY_MS, Phone

SAVE = """
() => new Promise((resolve, reject) => {
  const opening = indexedDB.open("a shop's own", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("coupons");
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const act = opening.result.transaction("coupons", "readwrite");
    act.objectStore("coupons").put({ volts: 25.8 }, "MB-3");
    act.oncomplete = () => { opening.result.close(); resolve(true); };
  };
})
"""
SAVED = """
() => new Promise((resolve, reject) => {
  const opening = indexedDB.open("a shop's own");
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const get = opening.result.transaction("coupons").objectStore("coupons").get("MB-3");
    get.onsuccess = () => { opening.result.close(); resolve(get.result); };
    get.onerror = () => reject(get.error);
  };
})
"""
SPOIL = """
async ([sha256, gone]) => {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      if (!request.url.endsWith(sha256)) continue;
      if (gone) await cache.delete(request);
      else await cache.put(request, new Response("spoilt"));
      return true;
    }
  }
  return false;
}
"""


def hash_of(site: Path, url: str) -> str:
    files: list[dict[str, Any]] = read_release(site)["files"]
    return str(next(file["sha256"] for file in files if file["url"] == url))


def test_repair_mends_a_spoilt_file_and_leaves_what_was_saved(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    assert phone.page.evaluate(SAVE)
    bad = "runtime/stdlib.zip"
    assert phone.page.evaluate(SPOIL, [hash_of(host.site, bad), False])
    phone.page.reload()
    phone.expect_word("^stopped: (file cut short|did not start)$")
    host.requests.clear()
    phone.tap("repair")
    phone.expect_ready()
    asked = {name.removesuffix(".gz") for name in host.requests if name.startswith("runtime/")}
    assert asked == {bad}
    assert phone.page.evaluate(SAVED) == {"volts": 25.8}


def test_files_the_browser_cleared_come_back_by_themselves(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    gone = "runtime/pyodide.mjs"
    assert phone.page.evaluate(SPOIL, [hash_of(host.site, gone), True])
    host.requests.clear()
    phone.page.reload()
    phone.expect_ready()
    assert host.asked(gone) == 1


def test_files_cleared_and_no_signal_is_told(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    assert phone.page.evaluate(SPOIL, [hash_of(host.site, "runtime/pyodide.mjs"), True])
    host.kill()
    phone.page.reload()
    phone.expect_word("^stopped: no signal$")
    host.start()
    phone.tap("retry")
    phone.expect_ready()


@pytest.mark.long(reason="a first visit; nothing is fetched, so nothing can be lost")
def test_repair_without_signal_keeps_what_is_sound(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    phone.tap("repair")
    expect(phone.page.locator('[data-tap="repair"]')).to_be_enabled(timeout=READY_MS)
    phone.page.reload()
    phone.expect_ready()
