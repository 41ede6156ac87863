"""All a phone keeps, out to a file and in from one: looked at first, taken whole, undone."""

import json
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from playwright.sync_api import Locator, Page, expect

from beadwright.coupons.kept_file import read_kept_file
from tests.browser.keeping import kept_rows, lay
from tests.browser.phone import READY_MS, Phone
from tests.site.kept_files import sound_file
from tests.site.published_schema import SCHEMA


@pytest.fixture
def shop(tab: Phone) -> Page:
    tab.open("shop/")
    tab.expect_ready()
    return tab.page


def saved(page: Page, to: Path) -> dict[str, Any]:
    """Return what the page saves as a file."""
    with page.expect_download() as caught:
        page.locator("[data-kept-out]").click()
    caught.value.save_as(to)
    found: dict[str, Any] = json.loads(to.read_text())
    return found


def given(page: Page, file: Path, data: Any) -> Locator:
    """Give the page a file, and return where it says what that changes."""
    file.write_text(data if isinstance(data, str) else json.dumps(data))
    page.locator('input[type="file"]').set_input_files(file)
    return page.locator("[data-preview]")


def test_all_goes_in_after_a_look_is_undone_and_comes_out_again(shop: Page, tmp_path: Path) -> None:
    lay(shop, {"shop": {"labour": "38/h"}})
    shop.reload()
    expect(shop.locator('input[name="labour"]')).to_have_value("38/h", timeout=READY_MS)
    before = kept_rows(shop)
    file = sound_file()
    preview = given(shop, tmp_path / "in.json", file)
    expect(preview).to_contain_text("38/h → 41/h", timeout=READY_MS)
    expect(preview).to_contain_text("Dial in: Bracket MB-3")
    expect(preview).to_contain_text("3 kept")
    assert kept_rows(shop) == before  # a look changes nothing
    shop.locator('[data-take="yes"]').click()
    expect(preview).to_contain_text("Taken over: 7")
    out = saved(shop, tmp_path / "out.json")
    Draft202012Validator(SCHEMA).validate(out)
    assert {**out, "jobs": [], "coupons": []} == {**file, "jobs": [], "coupons": []}
    assert (out["jobs"], out["coupons"]) == (file["jobs"], file["coupons"])
    assert len(read_kept_file(json.dumps(out)).coupons) == 3
    shop.locator('[data-take="back"]').click()
    expect(preview).to_contain_text("All is as it was")
    assert kept_rows(shop) == before

    # The same again, and a second time: nothing is kept twice.
    given(shop, tmp_path / "in.json", file)
    shop.locator('[data-take="yes"]').click(timeout=READY_MS)
    expect(preview).to_contain_text("Taken over: 7")
    given(shop, tmp_path / "in.json", file)
    expect(preview).to_contain_text("kept already", timeout=READY_MS)


@pytest.mark.parametrize(
    ("data", "why"),
    [
        (json.dumps(sound_file())[:-30], "cut, damaged"),
        ({**sound_file(), "version": 2}, "update the app"),
        ({**sound_file(), "shop": {"nonsense": "1"}}, "keeps no such entry"),
        (" " * 5_000_001, "MB, at most 5"),
    ],
)
def test_a_bad_file_is_refused_whole(shop: Page, tmp_path: Path, data: Any, why: str) -> None:
    before = kept_rows(shop)
    preview = given(shop, tmp_path / "in.json", data)
    expect(preview).to_contain_text(why, timeout=READY_MS)
    expect(preview).to_contain_text("Nothing was changed")
    expect(preview.locator("button")).to_have_count(0)
    assert kept_rows(shop) == before
