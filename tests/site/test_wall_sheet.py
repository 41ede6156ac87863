"""The wall sheet: three wires the shop names, every cell as Dial in answers it."""

from __future__ import annotations

import json
from typing import Any
from urllib.parse import unquote_plus

import pytest
from flask.testing import FlaskClient

from beadwright.sheets.settings_sheet import POSITIONS
from beadwright.sheets.wall_sheet import WALL_PLATES
from beadwright.units import System
from beadwright_site.phone import call
from tests.site.cell_words import cell_words, query_of
from tests.site.page import Element, by_id, elements, inside, words

QUERIES = (
    "",
    "units=si&gas=82/18&b_wire=ER80S-D2&b_gas=98/2 O2&c_wire=E71T-1M&c_dia=1/16in&c_gas=75/25",
    "dia=0.023in&gas=CO2&b_gas=65/8/0.5 O2/26.5 He&c_wire=E80C-Ni1&c_gas=95/5",
)


def _cells(page: str) -> list[Element]:
    return [each for each in elements(page) if each.tag == "td"]


def _on_phone(query: str, kept: dict[str, str]) -> Any:
    return json.loads(call("wall", json.dumps({"query": query, "kept": kept})))


@pytest.mark.parametrize("query", QUERIES)
def test_every_cell_equals_the_answer_behind_its_link(client: FlaskClient, query: str) -> None:
    cells = _cells(client.get(f"/sheets/wall.html?{query}").text)
    system: System = "si" if "units=si" in query else "us"
    assert len(cells) == 3 * len(WALL_PLATES[system]) * len(POSITIONS)
    for cell in cells:
        told = cell_words(query_of(cell))
        if told.refused:
            assert words(cell) == told.refused
            continue
        first, second = (words(e) for e in inside(cell) if e.tag in {"b", "span"})
        assert first == told.first
        assert second == f"{told.leg} · {told.travel} · {told.passes}"


def test_a_block_names_its_wire_size_gas_and_polarity(client: FlaskClient) -> None:
    page = elements(client.get(f"/sheets/wall.html?{QUERIES[1]}").text)
    assert [words(e) for e in page if e.tag == "h2"][1:] == [  # the first is of the phone panel
        "ER70S-6 1.2 mm, 82/18, wire on DC+",
        "ER80S-D2 0.9 mm, 98/2 O2, wire on DC+",
        "E71T-1M 1.6 mm, 75/25, wire on DC+",
    ]


def test_the_phone_draws_what_the_server_does_with_the_shop_s_usual_wire_first() -> None:
    drawn = _on_phone(QUERIES[2], {})
    assert drawn["ok"]
    assert len(_cells(drawn["html"])) == 120
    kept = {"usual_wire": "E71T-1C", "usual_dia": "1/16in", "usual_gas": "CO2", "units": "si"}
    first = next(e for e in elements(_on_phone("", kept)["html"]) if e.tag == "h2")
    assert words(first) == "E71T-1C 1.6 mm, CO2, wire on DC+"


def test_what_cannot_be_taken_stands_beside_its_wire_and_nothing_typed_is_lost() -> None:
    told = _on_phone("gas=mud&b_dia=3mm&c_wire=<b>", {})
    assert not told["ok"]
    assert "“mud” is no gas" in words(by_id(told["html"], "wrong-gas"))
    assert "“3mm” is no size" in words(by_id(told["html"], "wrong-b_dia"))
    assert words(by_id(told["html"], "wrong-c_wire"))
    assert 'value="mud"' in told["html"]
    assert 'value="3mm" selected' in told["html"]
    assert "&lt;b&gt;" in told["html"]
    assert "<b>" not in told["html"]
    assert _cells(told["html"]) == []


def test_more_entries_than_an_address_holds_are_refused_with_the_reason() -> None:
    told = _on_phone("&".join(f"a{n}=1" for n in range(400)), {})
    assert not told["ok"]
    assert "more than 300 entries" in told["html"]


def test_the_index_leads_to_it_and_it_says_it_is_no_procedure(client: FlaskClient) -> None:
    links = [e.attrs.get("href") for e in elements(client.get("/sheets/").text) if e.tag == "a"]
    assert "wall.html" in links
    page = client.get("/sheets/wall.html").text
    assert "Starting points, not a qualified procedure" in page
    assert "Cautions" in page
    assert "will not follow your changes" in page  # it asks; without scripts it cannot answer


OWN = "ER70S-6,0.045in,90/10,n7,phi0.85,r0.85,band0.08,travel0.8,by=Ann"


def test_the_shop_s_own_numbers_count_and_are_switched_off_by_a_tap() -> None:
    mine = _on_phone("gas=90/10", {"own": OWN})["html"]
    assert mine.count("Your own numbers count here, from 7 coupons of Ann.") == 1
    [off] = [e for e in elements(mine) if e.tag == "a" and words(e) == "Show this as published"]
    query = unquote_plus(off.attrs["href"].removeprefix("?"))
    plain = _on_phone(query, {"own": OWN})["html"]
    assert plain.count("Your own numbers are switched off") == 3
    bare = _on_phone("", {})["html"]
    assert "own numbers" not in bare

    def said(page: str) -> list[str]:
        return [words(cell) for cell in _cells(page)]

    assert said(plain) == said(bare) != said(mine)
    assert all("own=off" in query_of(cell) for cell in _cells(plain))
    # A wire changed in the form leaves the numbers off.
    assert [e.attrs["value"] for e in elements(plain) if e.attrs.get("name") == "own"] == ["off"]
    [on] = [e for e in elements(plain) if e.tag == "a" and words(e) == "Count your own numbers"]
    assert said(_on_phone(on.attrs["href"].removeprefix("?"), {"own": OWN})["html"]) == said(mine)
