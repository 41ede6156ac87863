"""A weld list as text: what a spreadsheet, a file and a thumb write is read; nothing is lost."""

from __future__ import annotations

import csv
import io
from urllib.parse import quote

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.api import answer, answer_csv
from beadwright.reading.queries import split_query
from beadwright.weld_list.weld_lines import job_line, read_lines, written_lines

SAID = {"joint": "tee", "plate": "3/8in", "leg": "5/16in", "weld_length": "6in", "welds": "2",
        "position": "2F"}  # fmt: skip


@pytest.mark.parametrize(
    "text",
    [
        "a,tee,3/8in,5/16in,6in,2,2F",
        " a , tee , 3/8in , 5/16in , 6in , 2 , 2F ",
        "a\ttee\t3/8in\t5/16in\t6in\t2\t2F",
        "a;tee;3/8in;5/16in;6in;2;2F",
        '"a","tee","3/8in","5/16in","6in","2","2F"',
        "Name,Joint,Plate,Leg,Length,Count,Position\na,tee,3/8in,5/16in,6in,2,2F",
        "qty\tmark\tthickness\tlength\tsize\tpos.\tjoint\n2\ta\t3/8in\t6in\t5/16in\t2F\ttee",
        "a,tee,3/8in,,6in,2,2F,leg=5/16in",
        "\r\n\r\na,tee,3/8in,5/16in,6in,2,2F,,\r\n\r\n",
    ],
)
def test_spreadsheet_file_and_thumb_say_the_same(text: str) -> None:
    [line] = read_lines(text).lines
    assert (line.name, line.wrong, dict(line.entries)) == ("a", "", SAID)


def test_a_decimal_comma_a_gauge_and_an_inch_mark() -> None:
    found = answer("list", f"units=si&lines={quote('a;lap;9,5mm;;150mm')}")
    [row] = found.rows
    assert row.weld is not None
    assert row.weld.first.dialled.job.plate_m == pytest.approx(0.0095)
    marks = 'a,lap,10ga,,6"\nb,tee,3/8",5/16",6"'
    found = answer("list", f"lines={quote(marks)}")
    assert [row.wrong for row in found.rows] == ["", ""]


def test_a_comma_within_a_quoted_cell_and_a_cell_over_two_lines() -> None:
    text = '"Gusset, near",tee,3/8in,,6in\n"Lug\nfar",tee,3/8in,,6in'
    assert [line.name for line in read_lines(text).lines] == ["Gusset, near", "Lug far"]


def test_a_column_nothing_is_called_is_named_and_its_cells_stay() -> None:
    found = read_lines("name,plate,length,paint\na,3/8in,6in,red")
    assert found.passed_over == ("paint",)
    assert [(line.typed, line.wrong) for line in found.lines] == [("a,3/8in,6in,red", "")]


def test_wire_with_its_size() -> None:
    [line] = read_lines("a,tee,3/8in,,6in,1,2F,E70C-6M 1/16in,90/10").lines
    assert (line.entries["wire"], line.entries["dia"]) == ("E70C-6M", "1/16in")


cell = st.text(st.characters(codec="utf-8", exclude_characters="="), max_size=12)


@given(st.lists(st.lists(cell, min_size=2, max_size=9), max_size=8))
def test_no_line_of_any_text_is_lost(rows: list[list[str]]) -> None:
    """Every character but line ends and blank lines comes back as typed."""
    text = "\n".join(",".join(row) for row in rows)
    found = read_lines(text)
    kept = [found.header, *(line.typed for line in found.lines)]
    blank = ", \t;\r\n\x0b\x0c\x1c\x1d\x1e\x85\u2028\u2029"
    assert "".join("".join(kept).split()).strip(blank).replace(",", "") == (
        "".join("".join(text.splitlines()).split()).strip(blank).replace(",", "")
    ) or any(not line.strip(blank) for line in text.splitlines())


name = st.text("abc XYZ09,;\"'äß-", min_size=1, max_size=12).map(lambda t: " ".join(t.split()))


@given(st.lists(st.tuples(name.filter(bool), st.integers(1, 99)), min_size=1, max_size=6))
def test_written_lines_are_read_back_as_they_were(rows: list[tuple[str, int]]) -> None:
    text = written_lines([[n, "tee", "3/8in", "5/16in", "6in", str(c), "2F"] for n, c in rows])
    found = read_lines(text).lines
    assert [(line.name, line.entries["welds"]) for line in found] == [(n, str(c)) for n, c in rows]


def test_the_csv_of_a_list_is_a_list_again() -> None:
    lines = '"a, near",tee,3/8in,5/16in,6in,2,2F,,,gap=1/16in\nbad,tee,9zz,,6in\nb,v,1/2in,,4in'
    query = f"lines={quote(lines)}"
    text = answer_csv("list", query)
    again = answer("list", f"lines={quote(text)}")
    found = answer("list", query)
    assert again.totals == found.totals
    assert [bool(row.wrong) for row in again.rows] == [False, True, False]
    assert again.read.passed_over == ()
    rows = list(csv.reader(io.StringIO(text)))
    assert len({len(row) for row in rows}) == 1


def test_the_job_at_hand_as_a_line_is_that_job() -> None:
    query = "joint=v&plate=1/2in&gap=1/8in&backing=steel&position=1G&dia=0.052in"
    line = job_line("Seam", split_query(query))
    [row] = answer("list", f"lines={quote(line)}").rows
    assert row.weld is not None
    assert row.line.name == "Seam"
    assert row.weld.first.dialled.job == answer("dial-in", query).dialled.job
