"""The core against print: every row of ``reference/*.csv``."""

import json
import re
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


EXACT_FILES = sorted({row["file"] for row in ROWS} - set(LEAST_SHARE))


def of_file(name: str) -> list[Row]:
    return [row for row in ROWS if row["file"] == name]


def answered(row: Row) -> object:
    """What the core answers, or the error it raises: a row that cannot be asked fails by name."""
    try:
        return values_of([row])[0]
    except Exception as error:
        return error


def is_held(row: Row) -> bool:
    return holds(values_of([row])[0], row["expected"], row["tolerance"])


def failed(rows: list[Row]) -> list[str]:
    """Each row that does not hold, with its line, what it asks, what is printed and what came."""
    found: list[str] = []
    for row in rows:
        value = answered(row)
        if isinstance(value, Exception) or not holds(value, row["expected"], row["tolerance"]):
            found.append(
                f"{row['file']}.csv line {row['row']}: {row['function']} {row['inputs']} gives"
                f" {value!r}, printed {row['expected']} within {row['tolerance'] or 'nothing'}"
                f" ({row['document']}, {row['place']})"
            )
    return found


@pytest.mark.parametrize("file", EXACT_FILES)
def test_every_row_is_answered_as_printed(file: str) -> None:
    wrong = failed(of_file(file))
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize("file", sorted(LEAST_SHARE))
def test_nine_in_ten_measured_points_stand_within_their_band(file: str) -> None:
    rows = of_file(file)
    out = failed(rows)
    assert 1 - len(out) / len(rows) >= LEAST_SHARE[file], "\n".join(out)


def test_every_row_says_where_its_value_comes_from() -> None:
    silent = [
        f"{row['file']}.csv line {row['row']}"
        for row in ROWS
        if row["how"] not in HOWS or not row["document"].strip() or not row["place"].strip()
    ]
    assert silent == []


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


def test_a_row_that_fails_is_named_with_what_came() -> None:
    row = of_file("gauges")[0]
    [told] = failed([{**row, "expected": "17"}])
    assert told.startswith(f"gauges.csv line {row['row']}: checks.gauge_in ")
    assert "printed 17 within" in told
    [told] = failed([{**row, "inputs": '{"gauge": "no gauge"}'}])
    assert "no gauge" in told


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


KIND = re.compile(
    r"^(?:an? |second |third )?(?:[\w-]+ ){0,3}?"
    r"(?:manuals?|sheet|tables?|textbook|handbook|article|magazine|chart|guide|plate|lessons|institute)\b",
    re.IGNORECASE,
)
"""A document called by what kind it is; in print there are many such."""

TITLE = re.compile(
    r"\bAWS D|\bAISC\b|\bPublic reference fluid tables, argon \(|Machinery's Handbook"
)
"""Documents whose title is of such words."""

COPY = re.compile(r"\b[\w-]+\.(?:com|net|org|info)\b|\b(?:scribd|studylib) \d{5,}")
"""Where a copy stands: a site, and the document's number there."""


def is_named(document: str) -> bool:
    """True if a reader can tell which document is meant."""
    return bool(not KIND.match(document) or TITLE.search(document) or COPY.search(document))


def test_what_is_found_stands_in_a_document_one_can_name() -> None:
    bare = {
        f"{row['document']} ({row['file']}.csv line {row['row']})"
        for row in ROWS
        if row["how"] == "found" and not is_named(row["document"])
    }
    assert not bare, "\n".join(sorted(bare))


def test_a_bare_kind_of_document_is_no_name() -> None:
    assert not is_named("Power-source manual, condition table")
    assert not is_named("Second weld-metal weight table, lb/ft")
    assert not is_named("Rating plate of a power source")
    assert is_named("Power-source manual, thumb rules, manualshive.com 1796700")
    assert is_named("Machinery's Handbook, 31st ed.")
    assert is_named("AISC 360 Table J2.1")
