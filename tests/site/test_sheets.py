"""Tables: every cell of every sheet is what Dial in answers to the link behind it."""

from __future__ import annotations

import sys
from dataclasses import replace

import pytest
from flask.testing import FlaskClient

from beadwright.process.wire_types import WIRE_TYPES
from beadwright.sheets.settings_sheet import PLATES, POSITIONS, sheets_made
from beadwright_site.page_table import SITE_PAGES
from tests.site.cell_words import cell_words, query_of
from tests.site.page import Element, elements, inside, words

MADE = {made.name: made for made in sheets_made()}


def _cells(client: FlaskClient, name: str) -> list[Element]:
    page = client.get(f"/sheets/{name}.html")
    assert page.status_code == 200
    return [each for each in elements(page.text) if each.tag == "td"]


def _agrees(cell: Element) -> None:
    query = query_of(cell)
    said, told = words(cell), cell_words(query)
    if told.refused:
        assert said == told.refused, query
        return
    first, second, third = (words(e) for e in inside(cell) if e.tag in {"b", "span"})
    assert first == told.first, query
    assert second == f"leg {told.leg} · travel speed {told.travel}", query
    assert third == f"stickout {told.tip} · {told.amps} A · {told.passes}", query


@pytest.mark.parametrize("name", MADE)
def test_every_cell_equals_the_answer_behind_its_link(client: FlaskClient, name: str) -> None:
    cells = _cells(client, name)
    assert len(cells) == len(PLATES[MADE[name].units]) * len(POSITIONS)
    for cell in cells:
        _agrees(cell)


def test_the_leg_and_the_setting_are_those_the_page_shows(client: FlaskClient) -> None:
    """Read off Dial in's own page, not off the core."""
    cells = _cells(client, "us-er70s-6-0.045in-90-10")
    at = PLATES["us"].index("3/8in") * len(POSITIONS)
    link = inside(cells[at])[0].attrs["href"]
    page = " ".join(client.get(f"/{link.removeprefix('../')}").text.split())
    bold, second, _ = (words(e) for e in inside(cells[at]) if e.tag in {"b", "span"})
    feed, volts = bold.removesuffix(" V").split(" · ")
    leg = second.removeprefix("leg ").split(" · ")[0]
    for shown in (feed, volts, leg):
        assert f">{shown}" in page
    assert f"leg {leg} in" in page


def test_the_index_leads_to_every_sheet(client: FlaskClient) -> None:
    links = [e.attrs.get("href", "") for e in elements(client.get("/sheets/").text) if e.tag == "a"]
    leads = [link.removesuffix(".html") for link in links if link.removesuffix(".html") in MADE]
    assert sorted(leads) == sorted(MADE)


def test_a_sheet_says_it_is_no_procedure_and_how_it_was_got(client: FlaskClient) -> None:
    text = client.get("/sheets/si-er70s-6-0.045in-90-10.html").text
    assert "Starting points, not a qualified procedure" in text
    assert "1.2 mm" in text
    assert "How it was figured" in text
    assert "Cautions" in text


def test_the_polarity_is_that_of_the_wire(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    name = "us-e71t-1c-0.045in-co2"
    assert "wire on DC+." in client.get(f"/sheets/{name}.html").text
    other = replace(WIRE_TYPES["E71T-1C"], polarity="DC-")
    table = sys.modules[type(SITE_PAGES["sheets"].load()).__module__]
    monkeypatch.setattr(table, "WIRE_TYPES", {**WIRE_TYPES, "E71T-1C": other})
    assert "wire on DC-." in client.get(f"/sheets/{name}.html").text


def test_the_index_says_which_wires_go_by_another_s_sheets(client: FlaskClient) -> None:
    said = words(next(e for e in elements(client.get("/sheets/").text) if e.tag == "main"))
    assert "ER70S-3, ER70S-2, ER80S-D2 of one size are set as ER70S-6" in said
    assert "E80C-Ni1 of one size is set as E70C-6M" in said


@pytest.mark.parametrize("page", ["sheets", "method"])
def test_a_page_that_asks_nothing_has_no_numbers_that_would_not_follow(
    client: FlaskClient, page: str
) -> None:
    text = client.get(f"/{SITE_PAGES[page].path}").text
    assert "will not follow your changes" not in text
    assert "data-still" in text
    asked = client.get("/").text
    assert "will not follow your changes" in asked
    assert "data-still" not in asked
