"""Tables without scripts: read on a phone, printed on one page."""

from __future__ import annotations

import importlib
import re
from collections.abc import Callable
from typing import Any
from urllib.parse import unquote_plus, urlsplit

import pytest
from playwright.sync_api import BrowserContext, expect

from beadwright import units
from beadwright.api import answer
from tests.browser.conftest import SIZE
from tests.browser.host import Host
from tests.browser.phone import READY_MS, Phone

pypdfium2: Any = importlib.import_module("pypdfium2")  # it ships no types

SHEETS = ("us-er70s-6-0.045in-90-10", "si-e71t-1m-0.045in-75-25")


@pytest.mark.parametrize("name", SHEETS)
def test_a_sheet_is_read_with_scripts_off_and_prints_on_one_page(
    host: Host, make_context: Callable[..., BrowserContext], name: str
) -> None:
    page = make_context(java_script_enabled=False).new_page()
    page.goto(f"{host.url}sheets/{name}.html")
    expect(page.get_by_text("Scripts are off")).to_have_count(0)  # nothing here needs them
    cell = page.locator("td a:has(b)").first
    assert cell.is_visible()
    assert page.evaluate("document.documentElement.scrollWidth") <= SIZE["width"]
    link = cell.get_attribute("href")
    assert link is not None
    found = answer("dial-in", unquote_plus(urlsplit(link).query)).dialled
    feed = found.settings.wire_feed.value
    assert feed is not None
    for paper in ("Letter", "A4"):
        printed = pypdfium2.PdfDocument(page.pdf(format=paper))
        assert len(printed) == 1, paper
        text = printed[0].get_textpage().get_text_range()
        assert f"{units.show(feed, 'wire_feed', found.job.units)} · " in text
        assert "not a qualified procedure" in text


@pytest.mark.parametrize("name", SHEETS)
def test_a_sheet_and_the_job_of_a_cell_open_with_no_signal(
    phone: Phone, host: Host, name: str
) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    phone.open("sheets/")
    phone.page.locator(f'a[href="{name}.html"]').click()
    cell = phone.page.locator("td a:has(b)").first
    expect(cell).to_be_visible()
    expect(phone.part("notice")).to_be_hidden()
    feed = cell.locator("b").inner_text().split(" · ")[0]
    cell.click()
    shown = re.compile(rf"^\s*{re.escape(feed)}\s")
    expect(phone.page.locator("#set-wfs .number")).to_have_text(shown, timeout=READY_MS)


def test_a_sheet_has_no_numbers_that_would_not_follow(host: Host, phone: Phone) -> None:
    """With scripts on, where the app cannot work out: Dial in says so, a sheet has no need."""
    phone.page.add_init_script("delete globalThis.WebAssembly")
    phone.open(f"sheets/{SHEETS[0]}.html")
    phone.expect_word("^stopped: no WebAssembly$")
    expect(phone.part("notice")).to_be_hidden()
    phone.page.locator("td a:has(b)").first.click()
    expect(phone.part("notice")).to_contain_text("will not follow your changes")
