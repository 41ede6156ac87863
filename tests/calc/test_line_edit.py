"""One entry of a line of the weld list set anew: the rest of the list stays as it was typed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import FieldErrors
from beadwright.job.job_entries import FIELDS
from beadwright.weld_list.line_edit import edited_list
from beadwright.weld_list.weld_lines import read_lines

TWO = 'Gusset near,tee,3/8in,5/16in,6in,2,2F\n"Rail, far",lap,10ga,,5in,1,2F,ER70S-6 0.035in,75/25'


@pytest.mark.parametrize(("key", "value", "line"), [
    ("plate", "1/2in", "Gusset near,tee,1/2in,5/16in,6in,2,2F"),
    ("leg", "", "Gusset near,tee,3/8in,,6in,2,2F"),
    ("position", "", "Gusset near,tee,3/8in,5/16in,6in,2"),
    ("gas", "90/10", "Gusset near,tee,3/8in,5/16in,6in,2,2F,,90/10"),
    ("gap", "1/16in", "Gusset near,tee,3/8in,5/16in,6in,2,2F,gap=1/16in"),
    ("name", "Gusset, near", '"Gusset, near",tee,3/8in,5/16in,6in,2,2F'),
    ("name", "leg=9", ",tee,3/8in,5/16in,6in,2,2F,name=leg=9"),
])  # fmt: skip
def test_an_entry_is_written_in_its_column_or_by_its_name(key: str, value: str, line: str) -> None:
    assert edited_list(TWO, 1, key, value).splitlines() == [line, TWO.splitlines()[1]]


def test_a_wire_s_size_in_the_same_cell_stays() -> None:
    second = read_lines(edited_list(TWO, 2, "wire", "E70C-6M")).lines[1]
    assert (second.entries["wire"], second.entries["dia"]) == ("E70C-6M", "0.035in")
    thick = edited_list(TWO, 2, "dia", "0.045in")
    assert read_lines(thick).lines[1].entries["dia"] == "0.045in"
    again = read_lines(edited_list(thick, 2, "wire", "E70C-6M")).lines[1]
    assert (again.entries["wire"], again.entries["dia"]) == ("E70C-6M", "0.045in")


def test_an_entry_named_in_its_cell_is_replaced_and_another_in_its_column_stays() -> None:
    text = "a,tee,3/8in,gap=1/16in,6in"
    assert edited_list(text, 1, "gap", "1/8in") == "a,tee,3/8in,,6in,gap=1/8in"
    assert edited_list(text, 1, "leg", "1/4in") == "a,tee,3/8in,gap=1/16in,6in,leg=1/4in"


def test_a_spreadsheet_s_own_columns_keep_their_order_and_what_is_none_of_a_weld() -> None:
    text = "mark\tdrawing\tthickness\tlength\nA1\tD-77\t3/8in\t6in"
    assert edited_list(text, 1, "plate", "1/2in").splitlines()[1] == "A1\tD-77\t1/2in\t6in"
    assert edited_list(text, 1, "leg", "1/4in").splitlines()[1] == "A1\tD-77\t3/8in\t6in\tleg=1/4in"


@pytest.mark.parametrize(("text", "number", "told"), [
    (TWO, 3, "no line 3"),
    ('"open,tee,3/8in', 1, "quote"),
    ("a;tee;3/8in;;6in", 1, "commas"),
])  # fmt: skip
def test_what_cannot_be_edited_is_told(text: str, number: int, told: str) -> None:
    with pytest.raises(FieldErrors) as caught:
        edited_list(text, number, "name", "a,b,c,d,e,f,g")
    assert told in caught.value.messages["name"][0]


WORDS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cs")), max_size=12)
CELLS = st.lists(WORDS | st.sampled_from(["tee", "3/8in", "gap=1/16in", "ER70S-6 0.035in"]),
                 min_size=1, max_size=11)  # fmt: skip
KEYS = st.sampled_from(["name", *sorted(set(FIELDS) - {"units", "own"})])


@given(st.lists(CELLS, min_size=1, max_size=4), st.sampled_from(",;\t"), st.integers(1, 4), KEYS,
       WORDS)  # fmt: skip
def test_the_entry_says_what_was_written_and_every_other_what_it_said(
    rows: list[list[str]], parts: str, number: int, key: str, value: str
) -> None:
    text = "\n".join(parts.join(cells) for cells in rows)
    try:
        after = read_lines(edited_list(text, number, key, value))
    except FieldErrors:
        return
    before = read_lines(text)
    assert len(after.lines) == len(before.lines)
    for one, two in zip(before.lines, after.lines, strict=True):
        said = [{"name": each.name, **each.entries} for each in (one, two)]
        if one.number == number:
            wanted = " ".join(value.split())
            if key == "wire":
                wanted = wanted.partition(" ")[0]
            default = "1" if key == "welds" else ""
            assert said[1].get(key, "") == (wanted or default)
            for entries in said:
                for each in {key, "dia"} if key == "wire" else {key}:
                    entries.pop(each, None)
        assert said[0] == said[1]
