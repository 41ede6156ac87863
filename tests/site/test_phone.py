"""The phone's door gives what the live app shows."""

import json
from collections.abc import Sequence
from html import unescape
from typing import Any

import pytest
from flask.testing import FlaskClient

from beadwright.api import answer_json
from beadwright.joint.joints import XY, polygon_area
from beadwright.pages import PAGES
from beadwright_site import phone
from beadwright_site.pages.dial_in.page import PAGE
from tests.site.test_pages import QUERIES

REFUSED = ("plate=abc&gas=foo", "dia=2in", "joint=square&gap=0in&reinforcement=0in", "welds=0")


def call(action: str, **payload: Any) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(phone.call(action, json.dumps(payload)))
    return found


@pytest.mark.parametrize("query", [*QUERIES, *REFUSED])
def test_parts_are_those_of_the_live_page(client: FlaskClient, query: str) -> None:
    shown = call("page", page="dial-in", query=query, kept=None)
    live = client.get(f"/?{query}").text
    assert shown["html"]
    for part, html in shown["html"].items():
        assert html in live, part
        assert f'id="{part}"' in html
    assert shown["ok"] == (query not in REFUSED)
    assert bool(shown["errors"]) == (query in REFUSED)


def test_an_answer_has_every_part() -> None:
    assert tuple(call("page", page="dial-in", query="")["html"]) == PAGE.parts


def test_only_the_parts_asked_for_are_drawn() -> None:
    shown = call("page", page="dial-in", query="", parts=["facts", "state", "no such part"])
    whole = call("page", page="dial-in", query="")
    assert shown["html"] == {key: whole["html"][key] for key in ("facts", "state")}


def test_check_compares_with_the_printed_fillet() -> None:
    # Weld-metal weight tables, fillet column: 1/4 in flat fillet 0.106 lb/ft.
    checked = call("check")
    assert checked["ok"] is True
    assert round(checked["answer"], 3) == 0.106


def test_check_can_fail(monkeypatch: pytest.MonkeyPatch) -> None:
    def too_large(points: Sequence[XY]) -> float:
        return 1.2 * polygon_area(points)

    monkeypatch.setattr("beadwright.joint.joints.polygon_area", too_large)
    assert call("check")["ok"] is False


@pytest.mark.parametrize("query", ["", "plate=abc"])
def test_json_is_the_core_s(query: str) -> None:
    expected = json.loads(json.dumps(answer_json("dial-in", query)))
    assert call("json", page="dial-in", query=query, kept=None) == expected


@pytest.mark.parametrize("action", ["page", "json", "csv"])
def test_a_page_has_one_spelling(action: str) -> None:
    """Dial in went by two names, and its JSON was right only because they differed."""
    found = call(action, page="dial_in", query="")
    assert "dial_in" in str(found.get("error") or found["errors"])
    assert "html" not in found


@pytest.mark.parametrize("query", ["", "units=si", "machine_amps=250A"])
def test_dial_in_stands_with_its_defaults_not_with_another_page_s_example(query: str) -> None:
    expected = json.loads(json.dumps(answer_json("dial-in", query)))
    assert call("json", page="dial-in", query=query) == expected


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize("query", ["", "units=si"])
def test_a_page_s_json_answers_what_its_parts_show(page: str, query: str) -> None:
    shown = call("page", page=page, query=query)
    told = call("json", page=page, query=query)
    assert shown["ok"]
    notes = unescape(shown["html"]["notes"])
    assert all(note["text"] in notes for note in told["notes"] if note["source"] != "invented")


def test_an_unknown_action_is_refused_by_name() -> None:
    assert call("format")["error"] == {"type": "UnknownEntryError", "message": "no action format"}


def test_shop_defaults_fill_blanks_and_the_query_wins() -> None:
    kept = {"usual_dia": "0.035in", "usual_gas": "75/25"}
    shown = call("page", page="dial-in", query="gas=90/10", kept=kept)
    assert "ER70S-6 0.035" in shown["html"]["joint"]
    assert "90/10" in shown["html"]["joint"]
