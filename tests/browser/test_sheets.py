"""Tables without scripts: read on a phone, printed on one page."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from typing import Any
from urllib.parse import unquote_plus, urlsplit

import pytest
from playwright.sync_api import BrowserContext

from beadwright import units
from beadwright.api import answer
from tests.browser.conftest import SIZE
from tests.browser.host import Host

pypdfium2: Any = importlib.import_module("pypdfium2")  # it ships no types

SHEETS = ("us-er70s-6-0.045in-90-10", "si-e71t-1m-0.045in-75-25")


@pytest.mark.parametrize("name", SHEETS)
def test_a_sheet_is_read_with_scripts_off_and_prints_on_one_page(
    host: Host, make_context: Callable[..., BrowserContext], name: str
) -> None:
    page = make_context(java_script_enabled=False).new_page()
    page.goto(f"{host.url}sheets/{name}.html")
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
