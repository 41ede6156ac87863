"""Writes killed in the middle: whatever was said to be kept is there when the app comes back."""

from __future__ import annotations

import json
import os
import random
import signal
import socket
import subprocess
import time
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, cast

import pytest
from playwright.sync_api import Browser, BrowserType, Error, Page

from tests.browser.conftest import ARGS
from tests.browser.host import Host
from tests.browser.keeping import kept_rows, lay
from tests.browser.phone import forget

WRITE = """
async ([root, round]) => {
  const load = (name) => import(`${root}static/js/kept/${name}.js`);
  const [{ kept }, { jobs }, { coupons }] = [
    await load("kept"), await load("jobs"), await load("coupons")];
  const filler = "x".repeat(2_000);
  for (let at = 0; ; at += 1) {
    const text = `${round}-${at}-${filler}`;
    const job = { page: "heat", query: `${round}-${at}`, name: text, made: "" };
    const coupon = { version: 1, key: `${round}-${at}`, query: text, facts: {} };
    const rows = [[jobs.name(job), job], [coupons.name(coupon), coupon]];
    await kept.keep({ labour: text }, { rows });
    console.log(`kept ${round} ${at}`);
  }
}
"""
"""Keeps an entry of the shop, a job and a coupon in one go, again and again, and says each."""

LAID_BEFORE = {"query": "plate=1/2in", "line": "there from the start"}


@dataclass
class Tally:
    """What became of the writes."""

    kills: int = 0
    acknowledged: int = 0
    lost: int = 0
    half_written: int = 0
    said: dict[int, int] = field(default_factory=dict[int, int])
    """The last write each round said was kept."""

    def hear(self, text: str) -> None:
        """Note a write the page said was kept."""
        match text.split():
            case ["kept", number, at]:
                self.said[int(number)] = int(at)
            case _:
                pass

    def count(self, rows: dict[str, Any], number: int) -> None:
        """Compare what a round said with what is there after the kill."""
        last = self.said.get(number, -1)
        jobs = {at for at in range(last + 9) if f"job:heat?{number}-{at}" in rows}
        coupons = {at for at in range(last + 9) if f"coupon:{number}-{at}" in rows}
        shop = str(rows.get("shop", {}).get("labour", ""))
        wanted = set(range(last + 1))
        newest = max(jobs, default=-1)
        self.kills += 1
        self.acknowledged += last + 1
        self.lost += len(wanted - (jobs & coupons)) + (rows.get("laid") != LAID_BEFORE)
        self.half_written += len(jobs ^ coupons)
        self.half_written += newest >= 0 and not shop.startswith(f"{number}-{newest}-")

    def figures(self) -> dict[str, int]:
        """The figures by name."""
        return {
            "kills": self.kills,
            "writes acknowledged": self.acknowledged,
            "acknowledged and lost": self.lost,
            "half written": self.half_written,
        }


class OwnChromium:
    """Chromium as a process of ours, with a profile on the disk, to be killed and started again."""

    def __init__(self, driver: BrowserType, profile: Path) -> None:
        self.driver = driver
        self.profile = profile
        self.process: subprocess.Popen[bytes] | None = None
        self.browser: Browser | None = None

    def start(self) -> Page:
        """Start it and return an empty tab."""
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        path = os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium")
        self.process = subprocess.Popen(
            [path, "--headless", f"--remote-debugging-port={port}",
             f"--user-data-dir={self.profile}", *ARGS, "about:blank"],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        ends = time.monotonic() + 30
        while self.browser is None:
            with suppress(Error):
                self.browser = self.driver.connect_over_cdp(f"http://127.0.0.1:{port}")
            if time.monotonic() > ends:
                raise TimeoutError("Chromium did not start")
        return self.tab()

    def tab(self) -> Page:
        """Return an empty tab; just after a kill the first may be gone before it stands."""
        assert self.browser is not None
        for _ in range(20):
            with suppress(Error):
                return self.browser.contexts[0].new_page()
        raise TimeoutError("no tab opens any more")

    def kill_tabs(self) -> None:
        """Kill the processes of its tabs, as a phone does that takes a tab away."""
        assert self.browser is not None
        session = self.browser.new_browser_cdp_session()
        told = cast("dict[str, Any]", session.send("SystemInfo.getProcessInfo"))
        for process in told["processInfo"]:
            if process["type"] == "renderer":
                os.kill(process["id"], signal.SIGKILL)
        session.detach()

    def kill(self) -> None:
        """Kill it as a phone out of memory does: at once, nothing put away."""
        if self.process is not None:
            self.process.kill()
            self.process.wait()
        if self.browser is not None:
            with suppress(Error):
                self.browser.close()
        self.process = self.browser = None


@pytest.fixture
def own_chromium(chromium: Browser, tmp_path: Path) -> Iterator[OwnChromium]:
    own = OwnChromium(chromium.browser_type, tmp_path / "profile")
    yield own
    own.kill()


def write_and_wait(page: Page, tally: Tally, number: int, wait_ms: float) -> None:
    """Have a page write, and wait for the moment to kill it."""
    page.on("console", lambda message: tally.hear(message.text))
    root = page.evaluate("new URL('.', location).href")
    page.evaluate(f"(asked) => {{ void ({WRITE})(asked); }}", [root, number])
    ends = time.monotonic() + 20
    while number not in tally.said and time.monotonic() < ends:
        page.wait_for_timeout(2)
    page.wait_for_timeout(wait_ms)


def kill_writes(own: OwnChromium, host: Host, kills: int, browser_every: int) -> dict[str, int]:
    """Kill writes in the middle, the tab or each so many times the whole browser; count."""
    tally, draw = Tally(), random.Random(14)

    def empty_tab(page: Page) -> Page:
        page.goto(f"{host.url}licences.txt")
        return page

    page = empty_tab(own.start())
    for number in range(kills):
        lay(page, {})  # makes the database
        forget(page)
        lay(page, {"laid": LAID_BEFORE})
        write_and_wait(page, tally, number, draw.uniform(0, 60))
        if number % browser_every == browser_every - 1:
            own.kill()
            page = empty_tab(own.start())
        else:
            own.kill_tabs()
            page = empty_tab(own.tab())
        tally.count(kept_rows(page), number)
    return tally.figures()


def test_five_killed_writes_lose_nothing_that_was_said_to_be_kept(
    own_chromium: OwnChromium, steady_host: Host
) -> None:
    found = kill_writes(own_chromium, steady_host, kills=5, browser_every=2)
    assert found["kills"] == 5
    assert found["writes acknowledged"] > 5
    assert (found["acknowledged and lost"], found["half written"]) == (0, 0)


@pytest.mark.long(reason="kills 180 tabs and 20 browsers, a second each")
def test_two_hundred_killed_writes_lose_nothing_that_was_said_to_be_kept(
    own_chromium: OwnChromium, steady_host: Host
) -> None:
    found = kill_writes(own_chromium, steady_host, kills=200, browser_every=10)
    print(json.dumps(found))
    assert found["kills"] == 200
    assert found["writes acknowledged"] > 200
    assert (found["acknowledged and lost"], found["half written"]) == (0, 0)
