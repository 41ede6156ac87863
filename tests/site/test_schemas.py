"""The published schemas: they are schemas, and every page asks and answers as they say."""

from __future__ import annotations

import json
from random import Random
from typing import Any, cast

import pytest
from flask.testing import FlaskClient
from jsonschema import Draft202012Validator

from beadwright.api import answer_json
from beadwright.coupons.new_record import new_record
from beadwright.pages import PAGES
from beadwright.reading.queries import split_query
from beadwright_site.schemas.page_schemas import DIALECT, answer_schema, published, query_schema
from tests.any_query import drawn_query
from tests.calc.test_worked_pages import WORKED
from tests.site.answer_gaps import answer_gaps
from tests.site.page import elements

DRAWN = {"dial-in": 60, "passes": 15, "cost": 60, "card": 10}
"""Queries drawn for each page; fewer where one answer takes longer."""

WELDED = "plate=1/4in&leg=1/4in&marked=8in&arc_time=40s&meter_amps=330A&coupon=C-12&welder=Ann"
"""A coupon that proves the card of its job."""


def _tried(page: str, drawn: int, seed: str) -> list[str]:
    draw = Random(f"{seed} {page}")
    return [
        "", PAGES[page].example,
        *(worked.query for worked in WORKED if worked.page == page),
        *(drawn_query(page, draw) for _ in range(drawn)),
    ]  # fmt: skip


def _answers_to_the_schema(page: str, queries: list[str]) -> int:
    answered = 0
    for query in queries:
        found = answer_json(page, query)
        told = answer_gaps(page, found)
        assert not told, "\n".join([f"{page} {query}", *told])
        answered += "errors" not in found
    return answered


@pytest.mark.parametrize("page", PAGES)
def test_what_a_page_answers_is_what_its_schema_says(page: str) -> None:
    queries = _tried(page, DRAWN.get(page, 100), "schema")
    answered = _answers_to_the_schema(page, queries)
    assert len(queries) > answered > 0.1 * len(queries)  # answers and refusals both


@pytest.mark.long(reason="Three hundred queries a page: two minutes.")
@pytest.mark.parametrize("page", PAGES)
def test_many_more_answers_are_what_the_schema_says(page: str) -> None:
    draw = Random(f"many schemas {page}")
    _answers_to_the_schema(page, [drawn_query(page, draw) for _ in range(300)])


@pytest.mark.parametrize("page", ["coupons", "card"])
def test_an_answer_with_a_kept_coupon_is_what_the_schema_says(page: str) -> None:
    kept = json.dumps([new_record(WELDED, None, "key1", "2026-11-10T08:00:00Z").plain()])
    found = answer_json(page, "plate=1/4in&leg=1/4in", {"coupons": kept})
    assert "errors" not in found
    assert page != "card" or found["answer"]["proofs"]
    assert page != "coupons" or found["answer"]["coupons"] == 1
    assert answer_gaps(page, found) == []


@pytest.mark.parametrize("page", PAGES)
def test_every_page_has_both_and_both_are_schemas_with_no_key_left_open(page: str) -> None:
    made = published()
    for kind in ("query", "answer"):
        schema = made[f"{page}.{kind}.json"]()
        assert schema["$schema"] == DIALECT
        Draft202012Validator.check_schema(schema)
        assert all("additionalProperties" in each for each in _objects(schema)), kind


def _objects(schema: Any) -> list[dict[str, Any]]:
    """Every schema of an object within a schema."""
    held: list[dict[str, Any]] = []
    if isinstance(schema, dict):
        known = cast("dict[str, Any]", schema)
        if known.get("type") == "object":
            held.append(known)
        for each in known.values():
            held += _objects(each)
    return held


@pytest.mark.parametrize("page", PAGES)
def test_what_a_page_takes_is_what_the_schema_of_its_query_says(page: str) -> None:
    holds = Draft202012Validator(query_schema(PAGES[page]))
    taken = 0
    for query in _tried(page, 40, "asked"):
        asked = {key: text for key, text in split_query(query).items() if text}
        own = {key: text for key, text in asked.items() if key in PAGES[page].fields}
        assert holds.is_valid(own), query
        taken += bool(own)
    assert taken > 20
    assert not holds.is_valid({"platte": "3/8in"})
    assert not holds.is_valid({"units": "furlongs"})


def test_a_query_s_entry_says_label_range_unit_default_and_choices() -> None:
    entries = query_schema(PAGES["dial-in"])["properties"]
    assert entries["plate"] == {
        "title": "Bottom plate",
        "description": "thickness of the bottom plate, or sheet gauge (10ga); 30ga to 4in; "
        "a bare number is in, with units=si mm; blank: 3/8in",
        "type": "string",
        "default": "3/8in",
    }
    assert entries["units"]["enum"] == ["us", "si"]
    assert "90/10" in entries["gas"]["examples"]  # any mixture may be typed
    assert entries["welds"]["pattern"] == "^[0-9]+$"


@pytest.mark.parametrize("page", PAGES)
def test_the_whole_answer_s_schema_takes_one_answer_or_one_refusal(page: str) -> None:
    holds = Draft202012Validator(answer_schema(PAGES[page]))
    found = answer_json(page, PAGES[page].example)
    assert holds.is_valid(found)
    assert holds.is_valid(answer_json(page, "plate=0"))
    assert not holds.is_valid({**found, "errors": {"plate": ["no"]}})
    assert not holds.is_valid({"errors": {}})


def test_what_an_answer_has_and_the_schema_has_not_is_told_with_its_place() -> None:
    found = answer_json("dial-in", PAGES["dial-in"].example)
    found["answer"]["wire"]["spool"] = 1
    found["answer"]["volts"]["value"] = "27"
    del found["answer"]["gas"]
    told = dict(each.split(": ", 1) for each in answer_gaps("dial-in", found))
    assert told.keys() == {"answer", "answer.volts.value", "answer.wire"}
    assert "'gas' is a required property" in told["answer"]
    assert "'spool' was unexpected" in told["answer.wire"]
    assert answer_gaps("dial-in", {"errors": {"plate": []}}) != []


def test_they_are_served_and_method_leads_to_each(client: FlaskClient) -> None:
    links = {e.attrs.get("href", "") for e in elements(client.get("/method/").text)}
    names = {link.removeprefix("../schema/") for link in links if link.startswith("../schema/")}
    assert names == set(published())
    for name in names:
        served = client.get(f"/schema/{name}")
        assert served.mimetype == "application/json"
        assert served.get_json()["$schema"] == DIALECT
