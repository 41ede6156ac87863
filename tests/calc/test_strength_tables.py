"""Every row of the tables of weld strength is held by a printed value or by work by hand."""

import json
from typing import Any

from beadwright.strength.steel_strength import STRENGTHS
from beadwright.strength.weld_group import SHAPES
from beadwright.units import read
from tests.calc.reference_rows import read_rows

ROWS = read_rows()


def asked(function: str, *keys: str) -> set[Any]:
    """The values rows give an adapter's arguments; tuples where several are named."""
    inputs = [
        json.loads(row["inputs"])
        for row in ROWS
        if row["function"] == f"strength_checks.{function}"
    ]
    found = [tuple(given[key] for key in keys) for given in inputs]
    return {one[0] if len(keys) == 1 else one for one in found}


def test_every_strength_of_every_steel_is_checked() -> None:
    checked = {
        (grade, of, STRENGTHS[grade].at(read(thickness, "length")))
        for function in ("steel_ksi", "steel_mpa")
        for grade, of, thickness in asked(function, "grade", "of", "thickness")
    }
    for grade, steel in STRENGTHS.items():
        assert {(grade, "fy", (fy, fu)) for _, fy, fu in steel.rows} <= checked
        assert any(key[:2] == (grade, "fu") for key in checked)


def test_every_correlation_factor_is_checked() -> None:
    given = {grade for grade, steel in STRENGTHS.items() if steel.correlation is not None}
    assert asked("correlation", "grade") == given


def test_every_shape_of_weld_has_its_moments_checked() -> None:
    shapes = {shape for shape, _ in asked("line_property", "shape", "of")}
    assert shapes >= {*SHAPES, "circle"}
