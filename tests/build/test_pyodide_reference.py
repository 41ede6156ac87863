"""Every row of the reference tables, on the shipped runtime: to the last digit as here.

How near a row comes to what is printed is for the tests of the core; a phone cannot differ.
"""

import json
from pathlib import Path
from typing import Any

import pytest

from beadwright_build.pyodide_node import run
from tests.calc import reference_rows

ROWS = reference_rows.read_rows()


@pytest.fixture(scope="module")
def on_the_phone(built_site: Path) -> list[Any]:
    values: list[Any] = run(
        "reference_rows",
        ROWS,
        mounts={
            "runtime": built_site / "runtime",
            "reference": Path(reference_rows.__file__).parent,
        },
        path=["runtime/app.zip", "runtime/libs.zip", "reference"],
        runtime=built_site / "runtime",
    )
    return values


def told(row: reference_rows.Row, value: object, wanted: object) -> str:
    return f"{row['file']}.csv line {row['row']}: {value!r} on the phone, {wanted!r} wanted"


def test_every_table_is_asked() -> None:
    assert {row["file"] for row in ROWS} == {
        path.stem for path in reference_rows.FOLDER.glob("*.csv")
    }
    assert len(ROWS) > 100


def test_every_value_is_this_machines_to_the_last_digit(on_the_phone: list[Any]) -> None:
    here = json.loads(reference_rows.main(json.dumps(ROWS)))
    assert [
        told(row, value, wanted)
        for row, value, wanted in zip(ROWS, on_the_phone, here, strict=True)
        if value != wanted or type(value) is not type(wanted)
    ] == []
