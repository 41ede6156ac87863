"""A phone in a welder's hand: one tab with the app open, and what can be read off it."""

import re
from contextlib import suppress
from dataclasses import dataclass, field
from typing import Any

from playwright.sync_api import (
    BrowserContext,
    ConsoleMessage,
    Locator,
    Page,
    Request,
    TimeoutError,
    expect,
)

READY_MS = 30_000
"""Longest wait for anything, on a busy machine; nothing here waits longer than it must."""

VISIT = """
(address) => new Promise((done) => {
  addEventListener("turbo:load", () => done(), { once: true });
  Turbo.cache.clear();
  Turbo.visit(address);
})
"""
FORGET = """
() => new Promise((done, fail) => {
  localStorage.clear();
  sessionStorage.clear();
  const opening = indexedDB.open("beadwright");
  opening.onupgradeneeded = () => opening.transaction.abort();  // there is none: none is made
  opening.onerror = () => (opening.error.name === "AbortError" ? done() : fail(opening.error));
  opening.onsuccess = () => {
    const { result } = opening;
    const names = [...result.objectStoreNames];
    const close = () => { result.close(); done(); };
    if (!names.length) return close();
    const act = result.transaction(names, "readwrite");
    for (const name of names) act.objectStore(name).clear();
    act.oncomplete = close;
  };
})
"""
ENGINE = """
async ([script, action, payload, how]) => {
  const { engine } = await import(script);
  try {
    return await engine.call(action, payload, how);
  } catch (error) {
    return { failed: error.name, kind: error.kind ?? null, message: error.message };
  }
}
"""


ASKED_LATER = """
const post = Worker.prototype.postMessage;
const held = [];
Worker.prototype.postMessage = function (...message) { held.push([this, message]); };
globalThis.askNow = () => {
  Worker.prototype.postMessage = post;
  for (const [worker, message] of held) post.apply(worker, message);
};
"""
"""Holds what a page asks of its engine until ``askNow()``."""


@dataclass
class Phone:
    """One tab, the address of the app, and every complaint the browser made."""

    page: Page
    url: str
    complaints: list[str] = field(default_factory=list[str])
    requested: list[str] = field(default_factory=list[str])
    loads: int = 0

    def __post_init__(self) -> None:
        self.page.on("console", self._heard)
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))
        self.page.on("load", lambda _: self._loaded())
        self.page.context.on("request", self._asked)

    def _heard(self, message: ConsoleMessage) -> None:
        if message.type in {"error", "warning"}:
            self.complaints.append(f"{message.type}: {message.text}")

    def _loaded(self) -> None:
        self.loads += 1

    def _asked(self, request: Request) -> None:
        self.requested.append(request.url)

    def open(self, path: str = "") -> None:
        """Go to a page of the app by its address below the root."""
        self.page.goto(self.url + path, wait_until="load")

    def part(self, name: str) -> Locator:
        """Return a part of the app's state as written in the header or its panel."""
        return self.page.locator(f'bead-offline [data-part="{name}"]')

    def expect_word(self, text: str) -> None:
        """Wait until the header says this."""
        expect(self.part("word")).to_have_text(re.compile(text), timeout=READY_MS)

    def look_for_update(self) -> None:
        """Tap “Check for update” until a newer release is there.

        The browser looks on its own too. A look it had under way may answer for the tap, from
        before the release came: the panel then says that there is none, and a welder taps once
        more. Or it finds the release first: the button then goes as the update is offered.
        """
        look, take = self._button("look"), self._button("take")
        none = self.part("update").filter(has_text="This is the newest release.")
        for _ in range(3):
            self._open_panel()
            expect(look.or_(take).filter(visible=True)).to_have_count(1, timeout=READY_MS)
            with suppress(TimeoutError):  # the button may go as it is tapped
                look.click(timeout=2_000)
            expect(take.or_(none).filter(visible=True)).to_have_count(1, timeout=READY_MS)
            if take.is_visible():
                break
        expect(take).to_be_visible()

    def expect_running(self) -> None:
        """Wait until the numbers follow."""
        expect(self.part("numbers")).to_have_text("running", timeout=READY_MS)

    def expect_ready(self) -> None:
        """Wait until the app is stored whole and the numbers follow."""
        self.expect_word("^works offline$")
        self.expect_running()

    def _open_panel(self) -> None:
        if not self.part("panel").is_visible():
            self.part("word").click()

    def _button(self, name: str) -> Locator:
        return self.page.locator(f'[data-tap="{name}"]')

    def tap(self, name: str) -> None:
        """Open the panel if it is shut, and tap one of its buttons."""
        self._open_panel()
        self._button(name).click()

    def release(self) -> str:
        """Return the release id the panel shows."""
        return self.part("release").text_content() or ""

    def ask(self, action: str, payload: dict[str, Any], **how: Any) -> Any:
        """Ask the engine behind the page, as a page's script does."""
        script = f"{self.url}static/js/engine/engine.js"
        return self.page.evaluate(ENGINE, [script, action, payload, how])


@dataclass
class RunningPhone(Phone):
    """A phone whose engine runs already: pages are opened as by a link, without a load."""

    def open(self, path: str = "") -> None:
        """Go to a page of the app, its engine kept."""
        visit(self.page, self.url + path)


def visit(page: Page, address: str) -> None:
    """Follow a link to an address of the app and wait until its page stands, as it came."""
    page.evaluate(VISIT, address)


def forget(page: Page) -> None:
    """Clear what the app keeps on this phone, and tell its open tabs, as the app itself does."""
    page.evaluate(FORGET)
    page.evaluate("new BroadcastChannel('beadwright kept').postMessage('')")
    page.wait_for_timeout(100)


def go_to(page: Page, name: str) -> None:
    """Tap a page's name in the bar at the foot, on the sheet of further pages if it lies there."""
    link = page.locator("nav.bar a").get_by_text(name, exact=True)
    if not link.is_visible():
        page.locator("nav.bar summary").click()
    link.click()


def new_phone(context: BrowserContext, url: str) -> Phone:
    """Return a phone with a new tab."""
    return Phone(context.new_page(), url)
