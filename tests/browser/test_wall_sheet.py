"""The wall sheet: made on the phone for the shop's own wires, printed on one page."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from typing import Any
from urllib.parse import parse_qs, urlsplit

from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.conftest import SIZE
from tests.browser.host import Host
from tests.browser.phone import READY_MS, Phone
from tests.site.cell_words import cell_words

pypdfium2: Any = importlib.import_module("pypdfium2")  # it ships no types


def _prints_on_one_page(page: Page, *texts: str) -> None:
    for paper in ("Letter", "A4"):
        printed = pypdfium2.PdfDocument(page.pdf(format=paper))
        assert len(printed) == 1, paper
        text = " ".join(printed[0].get_textpage().get_text_range().split())
        for each in ("not a qualified procedure", "Run a coupon and cut it", *texts):
            assert each in text, (paper, each)


def test_without_scripts_the_usual_wires_are_read_and_printed(
    host: Host, make_context: Callable[..., BrowserContext]
) -> None:
    page = make_context(java_script_enabled=False).new_page()
    page.goto(f"{host.url}sheets/wall.html")
    expect(page.locator("td a:has(b)").first).to_be_visible()
    assert page.evaluate("document.documentElement.scrollWidth") <= SIZE["width"]
    _prints_on_one_page(page, "ER70S-6 0.045 in", "E70C-6M 0.045 in")


def test_the_shop_s_own_wires_are_worked_out_with_no_signal_and_printed(
    phone: Phone, host: Host
) -> None:
    phone.open()
    phone.expect_ready()
    host.kill()
    phone.open("sheets/wall.html")
    page = phone.page
    page.get_by_label("Units").select_option("si")
    page.get_by_label("Second wire").select_option("ER80S-D2")
    gas = page.get_by_label("Second gas")
    gas.fill("83/17")
    gas.press("Enter")
    heading = page.locator("h2", has_text="ER80S-D2 0.9 mm, 83/17, wire on DC+")
    expect(heading).to_be_visible(timeout=READY_MS)
    cell = page.locator("table").nth(1).locator("td a:has(b)").first
    link = cell.get_attribute("href") or ""
    query = urlsplit(link).query
    assert parse_qs(query)["gas"] == ["83/17"]
    expect(cell.locator("b")).to_have_text(cell_words(query).first)
    assert parse_qs(urlsplit(page.url).query)["b_gas"] == ["83/17"]
    _prints_on_one_page(page, "ER80S-D2 0.9 mm, 83/17")
    page.reload()
    expect(heading).to_be_visible(timeout=READY_MS)  # the address is the whole of it
    gas = page.get_by_label("Second gas")
    gas.fill("mud")
    gas.press("Enter")
    expect(page.locator("#wrong-b_gas")).to_contain_text("“mud” is no gas")
    expect(page.get_by_label("Second gas")).to_have_value("mud")
