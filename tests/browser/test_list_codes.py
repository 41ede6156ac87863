"""A list goes to another phone by its printed codes: one, or several read in any order."""

from __future__ import annotations

import importlib
from typing import Any
from urllib.parse import urlsplit

import zxingcpp
from playwright.sync_api import Page, expect

from tests.browser.dialled import START_MS
from tests.browser.keeping import kept_rows, soon
from tests.browser.phone import Phone

pypdfium2: Any = importlib.import_module("pypdfium2")  # it ships no types
SQUARE = zxingcpp.barcode_formats_from_str("QRCode")

LONG = [f"W{at},tee,3/8in,{3 + at % 3}/16in,{2 + at * 7 % 31}.{at % 8}in,{1 + at % 4},2F"
        for at in range(60)]  # fmt: skip


def open_list(phone: Phone, lines: list[str]) -> None:
    phone.open("list/?lines=" + "%0A".join(lines))
    expect(phone.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)


def codes_read(page: Page) -> list[str]:
    """The link of each code, as a reader of its own finds it on the printed pages."""
    page.locator(".codes summary").click()
    codes = page.locator("bead-code")
    expect(codes.first.locator("svg")).to_be_visible()
    expect(codes.locator("svg")).to_have_count(codes.count())
    found = list[str]()
    with pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True)) as printed:
        for sheet in printed:
            picture = sheet.render(scale=200 / 72).to_numpy()
            found += [code.text for code in zxingcpp.read_barcodes(picture, formats=SQUARE)]
    return found


def test_a_short_list_is_one_code_that_opens_it(tab: Phone) -> None:
    open_list(tab, LONG[:6])
    [link] = codes_read(tab.page)
    tab.page.goto(link)
    expect(tab.page.locator("#rows li")).to_have_count(6, timeout=START_MS)
    expect(tab.page.locator("#rows summary b").first).to_have_text("W0")


def test_a_long_list_is_put_together_from_codes_read_in_any_order(tab: Phone) -> None:
    open_list(tab, LONG)
    links = codes_read(tab.page)
    assert len(set(links)) == tab.page.locator("bead-code").count() >= 2
    last, *others = sorted(links, reverse=True)
    tab.page.goto(last)
    expect(tab.page.locator("#notes")).to_contain_text("not read yet", timeout=START_MS)
    for link in others:
        tab.page.goto(link)
        expect(tab.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)
    expect(tab.page.locator("#rows li")).to_have_count(len(LONG), timeout=START_MS)
    assert tab.page.locator("#lines").input_value().splitlines() == LONG
    expect(tab.page.locator("#notes")).not_to_contain_text("not read yet")


def test_share_sends_a_long_list_packed_and_a_job_as_a_person_reads_it(tab: Phone) -> None:
    for path, starts in (("list/?lines=" + "%0A".join(LONG), "z="), ("?leg=1/4in", "")):
        tab.open(path)
        expect(tab.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)
        tab.page.evaluate("() => { navigator.share = async ({ url }) => { window.sent = url; }; }")
        tab.page.click("[data-share]")
        query = urlsplit(soon(tab.page, "window.sent")).query
        assert query.startswith(starts)
        assert starts or "leg=1/4in" in query.split("&")


def test_a_job_saved_as_a_file_opens_in_the_app(tab: Phone) -> None:
    """Where the app is installed a phone hands it the file; here the test does."""
    tab.page.add_init_script(
        "Object.defineProperty(window, 'launchQueue', "
        "{ value: { setConsumer(take) { window.take = take; } } });"
    )
    tab.open("?plate=1/2in&leg=3/8in")
    expect(tab.page.locator("#state")).to_contain_text("Your job", timeout=START_MS)
    with tab.page.expect_download() as saving:
        tab.page.click("[data-job-file]")
    assert saving.value.suggested_filename == "dial-in.beadwright"
    text = saving.value.path().read_text()
    tab.open("shop/")
    soon(tab.page, "window.take && 'there'")
    tab.page.evaluate(
        """(text) => window.take({ files: [{ getFile: async () =>
             new File([text], "dial-in.beadwright") }] })""",
        text,
    )
    expect(tab.page.locator("[data-preview]")).to_contain_text("Dial in", timeout=START_MS)
    tab.page.click("[data-take=yes]")
    expect(tab.page.locator("[data-preview]")).to_contain_text("Taken over: 1")
    job = next(iter(kept_rows(tab.page, "job:").values()))
    assert "plate=1/2in" in job["query"]
