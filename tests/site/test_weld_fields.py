"""One weld of the list as a form: every entry named, what is wrong beside it, nothing lost."""

from __future__ import annotations

import json
from typing import Any
from urllib.parse import quote

import pytest

from beadwright_site.phone import call
from tests.site.page import elements

LINES = "a,tee,3/8in,5/16in,6in\nb,tee,1/4in,,4in,2,2F,gap=1/32in"


def asked(number: int, lines: str = LINES, **entry: str) -> dict[str, Any]:
    query = f"lines={quote(lines)}&wire=E70C-6M"
    answer = call("weld", json.dumps({"query": query, "number": number, **entry}))
    found: dict[str, Any] = json.loads(answer)
    return found


def values(html: str) -> dict[str, str]:
    """What each entry says: what is typed, or the choice marked."""
    fields = [each.attrs for each in elements(html) if each.tag == "input"]
    return {
        field["name"]: field["value"]
        for field in fields
        if field["type"] == "text" or "checked" in field
    }


def test_each_entry_stands_under_its_name_with_what_the_line_says() -> None:
    said = values(asked(2)["html"])
    assert {key: said[f"weld.{key}"] for key in ("name", "joint", "plate", "weld_length", "welds",
            "position", "wire", "gap", "leg")} == {
        "name": "b", "joint": "tee", "plate": "1/4in", "weld_length": "4in", "welds": "2",
        "position": "2F", "wire": "E70C-6M", "gap": "1/32in", "leg": "",
    }  # fmt: skip


def test_an_entry_set_anew_changes_its_line_alone() -> None:
    found = asked(2, key="plate", value="3/8in")
    assert found["ok"]
    assert found["lines"].splitlines() == [
        LINES.splitlines()[0],
        "b,tee,3/8in,,4in,2,2F,gap=1/32in",
    ]
    assert values(found["html"])["weld.plate"] == "3/8in"


@pytest.mark.parametrize(("key", "value", "told"), [
    ("plate", "nothing", "nothing"),
    ("plate", "", "plate is blank"),
    ("weld_length", "90000ft", "90000"),
    ("position", "9Z", "9Z"),
])  # fmt: skip
def test_what_cannot_be_taken_stays_with_the_reason_beside_it(
    key: str, value: str, told: str
) -> None:
    found = asked(2, key=key, value=value)
    assert found["ok"]
    assert values(found["html"]).get(f"weld.{key}") == value or value == ""
    assert told in found["html"]
    if value and key != "position":
        assert f'aria-describedby="wrong-weld-{key}"' in found["html"]


def test_a_line_that_cannot_be_taken_apart_has_no_entries_and_is_not_changed() -> None:
    lines = '"open,tee,3/8in'
    found = asked(1, lines, key="plate", value="1/2in")
    assert not found["ok"]
    assert found["lines"] == lines
    assert "quote is opened" in found["html"]
    assert "weld.plate" not in values(found["html"])


def test_no_weld_of_that_number_draws_nothing() -> None:
    assert asked(9) == {"ok": False, "lines": LINES, "html": ""}
