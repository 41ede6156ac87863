"""Codes of a list: each short enough to print, and together they are the list."""

from __future__ import annotations

import json
from urllib.parse import urlencode

import pytest

from beadwright.api import answer_json
from beadwright.reading.queries import split_query
from beadwright.weld_list.list_parts import MOST_PARTS
from beadwright.weld_list.weld_lines import read_lines
from beadwright_site.page_table import SITE_PAGES
from beadwright_site.pages.list.codes import LONGEST, code_queries
from beadwright_site.rendering import draw_part
from tests.site.page import elements

HEADER = "name;qty;plate;length;leg"


def listed(count: int, header: str = "") -> str:
    """Welds that differ in name, plate, leg and length, as a drawing's do."""
    plates, parted = ("1/4in", "3/8in", "10ga", "1/2in"), ";" if header else ","
    lines = [header] if header else []
    for at in range(count):
        name, plate, leg = f"W{at * 7919 % 997}", plates[at % 4], f"{3 + at % 3}/16in"
        length = f"{1 + at * 31 % 47}.{at % 8}in"
        if header:
            lines.append(parted.join((name, str(1 + at % 5), plate, length, leg)))
        else:
            lines.append(parted.join((name, "tee", plate, leg, length, str(1 + at % 5), "2F")))
    return "\n".join(lines)


@pytest.mark.parametrize("header", ["", HEADER])
@pytest.mark.parametrize("count", [1, 8, 40, 90])
def test_the_codes_together_are_the_list_and_each_can_be_read_alone(
    count: int, header: str
) -> None:
    text = listed(count, header)
    read = read_lines(text)
    codes = code_queries(read, {"lines": text, "margin": "25%"}, {})
    assert codes
    assert max(map(len, codes)) <= LONGEST
    found = [split_query(code) for code in codes]
    lines = [each for one in found for each in read_lines(one["lines"]).lines]
    assert [(each.name, each.entries) for each in lines] == [
        (each.name, each.entries) for each in read.lines
    ]
    if len(codes) == 1:
        assert "part" not in found[0]
        return
    marks = {one["part"].split("/", 1)[1] for one in found}
    assert len(marks) == 1
    assert [one["part"].split("/")[0] for one in found] == [
        str(number) for number in range(1, len(codes) + 1)
    ]


def test_a_list_too_long_for_codes_has_none_and_the_page_says_what_to_do() -> None:
    text = listed(900)
    assert code_queries(read_lines(text), {"lines": text}, {}) == ()
    assert "save the list as CSV" in draw_part("list", "codes", codes=())


def test_an_empty_list_has_no_code() -> None:
    assert code_queries(read_lines(""), {}, {}) == ()


def test_no_price_is_in_a_code() -> None:
    text = listed(3)
    [code] = code_queries(read_lines(text), {"lines": text, "shop_rate": "91/h"}, {})
    assert "shop_rate" not in split_query(code)


def test_the_page_shows_each_code_by_its_number() -> None:
    shown = SITE_PAGES["list"].load().show(urlencode({"lines": listed(50)}), None, ("codes",))
    codes = [one for one in elements(shown.html["codes"]) if one.tag == "bead-code"]
    assert 1 < len(codes) <= MOST_PARTS
    names = [one.attrs["data-name"] or "" for one in codes]
    assert names[0].startswith(f"Code 1 of {len(codes)}")
    assert len({one.attrs["data-link"] for one in codes}) == len(codes)


def test_a_part_says_which_codes_are_still_to_be_read() -> None:
    query = urlencode({"lines": listed(2), "part": "3,1/4/1a2b3c"})
    notes = answer_json("list", query)["notes"]
    [told] = [note["text"] for note in notes if "codes" in note["text"]]
    assert "on 4 codes" in told
    assert "2, 4" in told
    whole = urlencode({"lines": listed(2), "part": "1,2/2/1a2b3c"})
    assert "not read yet" not in json.dumps(answer_json("list", whole))


@pytest.mark.parametrize(
    "part", ["2", "0/3/1a2b3c", "4/3/1a2b3c", "1/99/1a2b3c", "1/3/xyzxyz", "a"]
)
def test_a_part_that_cannot_be_is_refused_beside_its_key(part: str) -> None:
    errors = answer_json("list", urlencode({"lines": listed(1), "part": part}))["errors"]
    assert list(errors) == ["part"]
    assert "Scan the code again" in errors["part"][0]
