"""The card on paper: one page in each size, and its code read back by another reader."""

from __future__ import annotations

import importlib
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any
from urllib.parse import parse_qs, urlsplit

import pytest
import zxingcpp
from playwright.sync_api import Browser, Page
from werkzeug.serving import make_server

from beadwright_build.vendor import copy_front_end
from beadwright_site.app import create_app

pypdfium2: Any = importlib.import_module("pypdfium2")  # it ships no types
SQUARE = zxingcpp.barcode_formats_from_str("QRCode")

JOBS = (
    "leg=5/16in&piece=Bracket MB-3&weld_mark=W1&revision=A&card_date=2026-11-28&proved_mark=C-12"
    "&proved_by=Ann Lee&proved_on=2026-11-20&written_by=J. Ott",
    "plate=1in&joint=double-v&position=2G&passes=14",
    "plate=10ga&joint=lap&position=3F-down&transfer=short&gas=75/25&dia=0.035in",
    "plate=25mm&plate2=12mm&units=si&joint=tee&position=PB&wire=E70C-6M&travel_by=robot",
    "joint=slot&plate2=1in&pitch=8in",
    f"plate=2in&leg=1in&card_note={'Tack every 3 in on the far side ' * 3}",
    "position=4F&wire=E71T-1M&dia=1/16in&gas=75/25",
    "units=si&joint=tee-double-bevel&plate=30mm&plate2=40mm&depth=10mm&depth2=10mm&accept=iso-b",
    "skew=120deg&leg=1/4in&leg2=3/8in",
    "wfs=300in/min&volts=18&travel=25in/min&machine_amps=150",
    "plate=1/2in&joint=v&position=3G-up",
    "plate=16ga&joint=corner&gas=CO2&transfer=spray&accept=d1.1-cyclic",
    "plate=4in&joint=v&position=1G&backing=steel&steel=A572-60",
)
SIZES = {"letter": (612, 792), "a4": (595, 842), "pocket": (288, 432)}
"""Width and height of each paper [points of 1/72 in]."""


@pytest.fixture(scope="module")
def served(
    built_site: Path, chromium: Browser, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[str, Page]]:
    assert built_site.is_dir()  # the build brings the scripts of others that are copied here
    vendor: Path = tmp_path_factory.mktemp("vendor")
    copy_front_end(vendor)
    server = make_server("127.0.0.1", 0, create_app(vendor_dir=vendor), threaded=True)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    page = chromium.new_page()
    yield f"http://127.0.0.1:{server.port}", page
    page.close()
    server.shutdown()
    server.server_close()


@pytest.mark.parametrize("paper", SIZES)
@pytest.mark.parametrize("job", JOBS)
def test_a_card_is_one_page_and_its_code_opens_it(
    served: tuple[str, Page], job: str, paper: str
) -> None:
    base, page = served
    page.goto(f"{base}/card/?{job}&paper={paper}")
    page.wait_for_selector("bead-code svg")
    with pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True)) as printed:
        assert len(printed) == 1
        size = tuple(round(each) for each in printed[0].get_size())
        assert size == SIZES[paper]
        picture = printed[0].render(scale=200 / 72).to_numpy()
    # Lines of the drawing now and then pass for a code of bars: only square codes are looked for.
    [code] = zxingcpp.read_barcodes(picture, formats=SQUARE)
    assert code.text.startswith(f"{base}/card/?")
    page.goto(code.text)  # the job opens again, as another hand's phone would
    again = page.locator("#sheet .joint").inner_text()
    page.goto(f"{base}/card/?{job}&paper={paper}")
    assert again == page.locator("#sheet .joint").inner_text()


@pytest.mark.parametrize(
    ("path", "private"),
    [
        (
            "card/?leg=1/4in&proved_mark=C-12&written_by=J. Ott&proved_by=Ann",
            {"written_by", "proved_by"},
        ),
        ("cost/?leg=1/4in&wire_price=2.22/lb&b_wire_price=3.33/lb", {"wire_price", "b_wire_price"}),
    ],
)
def test_a_link_shared_tells_prices_and_names_only_when_ticked(
    served: tuple[str, Page], path: str, private: set[str]
) -> None:
    base, page = served
    page.goto(f"{base}/{path}")
    page.wait_for_selector("[data-share]:visible")
    page.evaluate("() => { navigator.share = async ({ url }) => { window.sent = url; }; }")
    for ticked in (False, True):
        page.set_checked("[data-tell]", ticked)
        page.click("[data-share]")
        page.wait_for_function("window.sent")
        sent: str = page.evaluate("window.sent")
        told = parse_qs(urlsplit(sent).query)
        assert told["leg"] == ["1/4in"]
        assert (private & told.keys()) == (private if ticked else set())
        page.evaluate("window.sent = null")
