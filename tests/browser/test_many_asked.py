"""Thousands of things asked of one open page: each is answered or refused, and nothing grows.

The fault table asks ten thousand; here it is a part of them.
"""

import json
import os
from random import Random
from typing import cast

import pytest
from playwright.sync_api import expect

from beadwright.pages import PAGES
from tests.any_query import drawn_query
from tests.browser.phone import READY_MS, RunningPhone
from tests.site.kept_files import broken_file, sound_file

ALL = "BEADWRIGHT_ALL_FAULTS" in os.environ
MANY = 10_000 if ALL else 300
EDITS = 2_000 if ALL else 400
AT_ONCE = 100
ASK_EACH = """
async ([script, action, payloads]) => {
  const { engine } = await import(script);
  const lost = [];
  for (const payload of payloads) {
    try {
      const answer = await engine.call(action, payload);
      if (typeof answer.ok !== "boolean") lost.push([payload, JSON.stringify(answer)]);
    } catch (error) {
      lost.push([payload, error.message]);
    }
  }
  return lost;
}
"""
EDIT_MANY = """
async (count) => {
  const page = document.querySelector("bead-answer");
  for (let edit = 1; edit <= count; edit += 1) {
    const field = page.querySelector('input[name="plate"]');
    const shown = new Promise((done) => page.addEventListener("shown", done, { once: true }));
    field.value = `${8 + (edit % 40) / 8}mm`;
    field.dispatchEvent(new Event("change", { bubbles: true }));
    await shown;
  }
}
"""
GROWTH = 1.15
"""A heap counted after the garbage is thrown away differs by so much from one time to the next."""
PICTURES = 4
"""Icons Chromium may hold or not, each counted as a document; a leak of one an edit is hundreds."""


def ask_each(phone: RunningPhone, action: str, payloads: list[dict[str, object]]) -> list[object]:
    script = f"{phone.url}static/js/engine/engine.js"
    lost: list[object] = []
    for first in range(0, len(payloads), AT_ONCE):
        some = payloads[first : first + AT_ONCE]
        lost += phone.page.evaluate(ASK_EACH, [script, action, some])
    return lost


@pytest.mark.long(reason="hundreds of questions")
def test_drawn_queries_are_answered_or_refused(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    draw = Random("asked in the browser")
    pages = list(PAGES)
    payloads: list[dict[str, object]] = []
    for number in range(MANY):
        page = pages[number % len(pages)]
        payloads.append({"page": page, "query": drawn_query(page, draw), "kept": {}})
    assert ask_each(running, "page", payloads) == []
    running.expect_ready()


@pytest.mark.long(reason="hundreds of files")
def test_broken_files_are_looked_at(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    draw, sound = Random("files in the browser"), json.dumps(sound_file())
    here: dict[str, object] = {"shop": {}, "jobs": [], "coupons": []}
    payloads = [{"text": broken_file(sound, draw), **here} for _ in range(MANY)]
    assert ask_each(running, "look", payloads) == []
    running.expect_ready()


@pytest.mark.long(reason="hundreds of edits, one after another")
def test_many_edits_leave_nothing_behind(running: RunningPhone) -> None:
    page = running.page
    running.open("?plate=3/8in")
    expect(page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    session = page.context.new_cdp_session(page)

    def held() -> dict[str, float]:
        session.send("HeapProfiler.collectGarbage")
        counted = cast("dict[str, float]", session.send("Memory.getDOMCounters"))
        heap = cast("dict[str, float]", session.send("Runtime.getHeapUsage"))
        return {**counted, "heap": heap["usedSize"]}

    page.evaluate(EDIT_MANY, 100)
    before = held()
    page.evaluate(EDIT_MANY, EDITS)
    after = held()
    for what in ("documents", "nodes", "jsEventListeners", "heap"):
        most = before[what] * GROWTH + (PICTURES if what == "documents" else 0)
        assert after[what] <= most, f"{what}: {before[what]} → {after[what]}"
