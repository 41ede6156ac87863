"""What the app keeps on a phone, read and written past the app."""

import time
from typing import Any, cast

from playwright.sync_api import Page

_ROWS = """
() => new Promise((done, fail) => {
  const opening = indexedDB.open("beadwright");
  opening.onupgradeneeded = () => opening.transaction.abort();  // there is none: none is made
  opening.onerror = () => (opening.error.name === "AbortError" ? done({}) : fail(opening.error));
  opening.onsuccess = () => {
    const { result } = opening;
    const close = (found) => { result.close(); done(found); };
    if (!result.objectStoreNames.contains("kept")) return close({});
    const store = result.transaction("kept").objectStore("kept");
    const names = store.getAllKeys();
    const values = store.getAll();
    values.onsuccess = () => close(
      Object.fromEntries(names.result.map((name, at) => [name, values.result[at]])));
  };
})
"""
_LAY = """
(rows) => new Promise((done, fail) => {
  const opening = indexedDB.open("beadwright");
  opening.onupgradeneeded = () => opening.result.createObjectStore("kept");
  opening.onerror = () => fail(opening.error);
  opening.onblocked = () => fail(new Error("blocked"));
  opening.onsuccess = () => {
    const { result } = opening;
    try {
      const act = result.transaction("kept", "readwrite");
      for (const [name, value] of Object.entries(rows)) act.objectStore("kept").put(value, name);
      act.oncomplete = () => { result.close(); done(); };
      act.onabort = () => { result.close(); fail(act.error); };
    } catch (error) {
      result.close();
      fail(error);
    }
  };
})
"""


def kept_rows(page: Page, prefix: str = "") -> dict[str, Any]:
    """Return what is kept by its name in the store; last jobs only where asked for."""
    rows = cast("dict[str, Any]", page.evaluate(_ROWS))
    return {
        name: value
        for name, value in rows.items()
        if name.startswith(prefix) and (prefix or not name.startswith("last-"))
    }


def lay(page: Page, rows: dict[str, Any]) -> None:
    """Put rows into the store, as an older release left them."""
    page.evaluate(_LAY, rows)


def kept_soon(page: Page, name: str = "", seconds: float = 10) -> dict[str, Any]:
    """Wait until something of this name is kept, and return all that is."""
    ends = time.monotonic() + seconds
    while time.monotonic() < ends:
        rows = kept_rows(page)
        if name in rows if name else rows:
            return rows
        page.wait_for_timeout(50)
    raise AssertionError(f"nothing kept {name}")


def write_entry(page: Page, name: str, text: str) -> None:
    """Write an entry of a form and leave it, as a thumb does."""
    field = page.locator(f'#job-form input[name="{name}"]')
    field.evaluate("(field) => field.closest('details')?.setAttribute('open', '')")
    field.fill(text)
    field.blur()


def soon(page: Page, what: str, seconds: float = 20) -> str:
    """What a script's expression comes to, once it is something."""
    ends = time.monotonic() + seconds
    while time.monotonic() < ends:
        if found := page.evaluate(what):
            return str(found)
        page.wait_for_timeout(100)
    raise AssertionError(f"no {what}")
