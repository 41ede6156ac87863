"""What older releases left is there; what cannot be read is told and left, and the rest shows."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.dialled import START_MS
from tests.browser.keeping import kept_rows, lay, write_entry
from tests.browser.phone import Phone

COUPON: dict[str, Any] = {
    "version": 1, "key": "6f1c", "made": "2026-11-27T10:00:00.000Z",
    "query": "plate=1/4in&leg=1/4in&welder=Ann&machine=one&marked=8in&arc_time=40s&meter_amps=330A",
    "wire": "ER70S-6", "dia": "0.045in", "gas": "90/10", "machine": "one", "welder": "Ann",
    "facts": {"melting": 0.85, "anode_share": 0.72, "travel": 0.79, "travel_m_s": 0.00508,
              "feed_m_s": 0.15663},
    "count_odd": False,
}  # fmt: skip
"""A coupon as the first release with coupons wrote it."""

JOB = {
    "page": "heat",
    "query": "plate=1/2in&leg=3/8in",
    "name": "Frame 12",
    "made": "2026-11-28T12:00:00.000Z",
}
OLD: dict[str, Any] = {
    "last-job": {"query": "plate=3/8in&leg=5/16in", "line": "Tee, 2F, plate 3/8 in"},
    "last-cost": {"query": "plate=1/2in&leg=3/8in", "line": "Two ways"},
    "shop": {"labour": "41/h", "wire_price@ER70S-6 0.045in": "2.10/lb", "own": ""},
    "coupon:6f1c": COUPON,
    "job:heat?plate=1/2in&leg=3/8in": JOB,
}
"""The database of older releases: first the last job, then the shop, coupons, jobs."""


@pytest.fixture
def laid(tab: Phone) -> Phone:
    """A phone with the app stored, at a page that has no script, to put rows into its store."""
    tab.open("licences.txt")
    return tab


def test_all_that_older_releases_kept_is_there(laid: Phone) -> None:
    lay(laid.page, OLD)
    laid.open()
    back = laid.page.locator("[data-last]")
    expect(back).to_have_text("Back to your last job: Tee, 2F, plate 3/8 in", timeout=START_MS)
    expect(laid.page.locator("#jobs summary")).to_have_text("Kept jobs (1)")
    expect(laid.page.locator("#jobs input")).to_have_value("Frame 12")
    laid.open("shop/")
    expect(laid.page.locator('input[name="labour"]')).to_have_value("41/h", timeout=START_MS)
    price = laid.page.locator('input[name="wire_price@ER70S-6 0.045in"]')
    expect(price).to_have_value("2.10/lb")
    write_entry(laid.page, "overhead", "12/h")
    expect(laid.page.locator("#state")).to_have_text("Kept on this phone", timeout=START_MS)
    laid.open("coupons/?plate=1/4in&leg=1/4in&machine=one&welder=Ann")
    expect(laid.page.locator("#log li")).to_have_count(1, timeout=START_MS)
    rows = kept_rows(laid.page)
    assert rows["shop"] == {
        "labour": "41/h",
        "wire_price@ER70S-6 0.045in": "2.10/lb",
        "overhead": "12/h",
    }
    same = ("coupon:6f1c", "job:heat?plate=1/2in&leg=3/8in")
    assert {name: rows[name] for name in same} == {name: OLD[name] for name in same}
    assert "last-job" not in kept_rows(laid.page, "last-")


STRANGE: dict[str, Any] = {
    "job:broken": 5,
    "job:other?x=1": {**JOB, "page": "heat"},
    "job:heat?y": {"page": "heat", "query": "y", "name": None, "made": ""},
    "coupon:later": {**COUPON, "key": "later", "version": 2},
    "coupon:cut": {**COUPON, "key": "cut", "facts": {"melting": "much"}},
    "coupon:moved": COUPON,
}
"""Records that are not what they should be; a name that is not their own among them."""


def test_records_that_cannot_be_read_are_told_and_left_and_the_rest_shows(
    laid: Phone, tmp_path: Path
) -> None:
    added = {**COUPON, "key": "added", "facts": {**COUPON["facts"], "penetration_m": 0.002}}
    lay(laid.page, {**OLD, **STRANGE, "coupon:added": added})
    laid.open("coupons/?plate=1/4in&leg=1/4in&machine=one&welder=Ann")
    page = laid.page
    expect(page.locator("#log li")).to_have_count(2, timeout=START_MS)
    expect(page.locator('[data-told="unread"]')).to_contain_text("3 kept coupons cannot be read")
    expect(page.locator("#jobs summary")).to_have_text("Kept jobs (1)")
    expect(page.locator("#jobs")).to_contain_text("3 kept jobs cannot be read")
    laid.open("shop/")
    laid.expect_running()
    with page.expect_download() as caught:
        page.click("[data-kept-out]")
    caught.value.save_as(tmp_path / "out.json")
    out = json.loads((tmp_path / "out.json").read_text())
    assert (out["jobs"], len(out["coupons"])) == ([JOB], 2)
    expect(page.locator("[data-preview]")).to_contain_text("The file lacks 6 that cannot be read")
    rows = kept_rows(page)
    assert {name: rows[name] for name in STRANGE} == STRANGE


@pytest.mark.parametrize("found", [["41/h"], {"labour": "41/h", "later": {"a": 1}}, "labour=41/h"])
def test_entries_that_cannot_be_read_are_told_and_never_written_over(
    found: Any, laid: Phone
) -> None:
    lay(laid.page, {"shop": found})
    laid.open("shop/")
    expect(laid.part("notice")).to_contain_text(
        "Not all that your shop keeps is in these numbers", timeout=START_MS
    )
    laid.expect_running()
    write_entry(laid.page, "overhead", "12/h")
    expect(laid.page.locator("#state")).to_have_text("Kept on this phone", timeout=START_MS)
    rows = kept_rows(laid.page)
    if isinstance(found, dict):
        assert rows["shop"] == {**found, "overhead": "12/h"}
    else:
        assert rows == {"shop": {"overhead": "12/h"}, "unreadable shop": found}


def test_the_table_of_coupons_holds_no_formula_and_is_refused_where_they_cannot_be_read(
    laid: Phone, tmp_path: Path
) -> None:
    lay(laid.page, {"coupon:6f1c": {**COUPON, "welder": "=1+1"}})
    laid.open("coupons/?plate=1/4in&leg=1/4in")
    page: Page = laid.page
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    save = page.locator('[data-export="csv"]')
    with page.expect_download() as caught:
        save.click()
    caught.value.save_as(tmp_path / "coupons.csv")
    text = (tmp_path / "coupons.csv").read_text("utf-8-sig")
    [row] = csv.DictReader(io.StringIO(text, newline=""))
    assert row["welder"] == "'=1+1"
    page.evaluate(
        "() => { IDBObjectStore.prototype.getAll = () => {"
        " throw new DOMException('gone', 'DataError'); }; }"
    )
    save.click()
    told = page.locator('[data-told="kept"]')
    expect(told).to_contain_text("Not saved. The coupons cannot be read. The store on this phone")
