"""The core against print: every row of ``reference/*.csv``."""

import json
from pathlib import Path

import pytest

from beadwright.process.burnoff import constants_of
from beadwright.process.wires import wire_of
from tests.calc.reference_rows import Row, function_of, holds, main, read_rows, run_rows, values_of

ROWS = read_rows()
HOWS = {"found", "found second-hand", "from memory", "derived", "common practice"}

# Measurements scatter: of these files a share must stand within tolerance, not each row.
LEAST_SHARE = {
    "penetration_points": 0.90,
    "procedure_points": 0.90,
    "volts_points": 0.90,
    "volts_procedures": 0.90,
}


def of_file(name: str) -> list[Row]:
    return [row for row in ROWS if row["file"] == name]


def title(row: Row) -> str:
    return f"{row['file']}-{row['row']}"


def is_held(row: Row) -> bool:
    return holds(values_of([row])[0], row["expected"], row["tolerance"])


@pytest.mark.parametrize("row", [r for r in ROWS if r["file"] not in LEAST_SHARE], ids=title)
def test_the_core_answers_as_printed(row: Row) -> None:
    [value] = values_of([row])
    assert holds(value, row["expected"], row["tolerance"]), f"{value} for {row}"


@pytest.mark.parametrize(
    "file",
    [
        "penetration_points",
        "procedure_points",
        "volts_points",
        "volts_procedures",
    ],
)
def test_nine_in_ten_measured_points_stand_within_their_band(file: str) -> None:
    rows = of_file(file)
    out = [row for row in rows if not is_held(row)]
    assert 1 - len(out) / len(rows) >= LEAST_SHARE[file], out


@pytest.mark.parametrize("row", ROWS, ids=title)
def test_every_row_says_where_its_value_comes_from(row: Row) -> None:
    assert row["how"] in HOWS
    assert row["document"].strip()
    assert row["place"].strip()


def test_there_are_enough_rows_and_none_twice() -> None:
    assert len(ROWS) >= 150
    keys = [tuple(row[k] for k in ("function", "inputs", "expected", "document", "place"))
            for row in ROWS if not row["file"].startswith("procedure_points")]  # fmt: skip
    doubled = {key for key in keys if keys.count(key) > 1}
    assert {key for key in doubled if not key[0].endswith("volts_window")} == set()


def test_most_rows_are_of_print_not_of_our_own_arithmetic() -> None:
    printed = [row for row in ROWS if row["how"].startswith("found")]
    assert len(printed) >= 150


def test_feed_points_are_held_to_the_band_the_core_states() -> None:
    for row in of_file("procedure_points"):
        asked = json.loads(row["inputs"])
        band = constants_of(wire_of(asked["wire"], asked["size"])).band
        assert row["tolerance"] == f"{100 * band:.0f}%"


def test_the_runner_reports_every_row() -> None:
    reported = run_rows()
    assert [(r["file"], str(r["row"])) for r in reported] == [(r["file"], r["row"]) for r in ROWS]
    assert [r["ok"] for r in reported] == [is_held(row) for row in ROWS]


def test_what_goes_to_the_phone_comes_back_as_the_values(tmp_path: Path) -> None:
    rows = ROWS[:40]
    assert json.loads(main(json.dumps(rows))) == values_of(rows)
    file = tmp_path / "rows.json"
    file.write_text(json.dumps(rows), encoding="utf-8")
    assert json.loads(main(json.dumps(str(file)))) == values_of(rows)


@pytest.mark.parametrize(
    ("value", "expected", "tolerance"),
    [
        (1.06, "1.0", "0.05"),
        (1.11, "1.0", "10%"),
        (0.89, "1.0", "10%"),
        ("M21", "M20", ""),
        ("M21", "M21", "1"),
        ([10.0, 20.0], "21", "0"),
        ([10.0, 20.0], "9..12", "0"),
        ([10.0, 20.0], "18..21", "0.5"),
        (7.0, "8..9", "0.5"),
        (float("nan"), "1", "50%"),
        (0.26, "1/4", "0.005"),
    ],
)
def test_the_check_can_fail(value: object, expected: str, tolerance: str) -> None:
    assert not holds(value, expected, tolerance)


def test_a_row_naming_no_function_is_an_error() -> None:
    with pytest.raises(AttributeError, match="no_such_function"):
        function_of("checks.no_such_function")
