"""Every entry of the tables behind the Heat page is held by a row of print or of practice."""

import json
from typing import Any

from beadwright.heating.carbon_equivalent import FORMULAS
from beadwright.heating.haz_hardness import RANGES
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.preheat_table import LEAST, THICKNESS_STEPS_M
from beadwright.heating.steels import ELEMENTS, STEELS
from tests.calc.reference_rows import read_rows

ROWS = [row for row in read_rows() if row["function"].startswith("heat_checks.")]


def asked(function: str) -> list[dict[str, Any]]:
    return [json.loads(r["inputs"]) for r in ROWS if r["function"] == f"heat_checks.{function}"]


def pairs(function: str, *keys: str) -> set[tuple[Any, ...]]:
    return {tuple(given[key] for key in keys) for given in asked(function)}


def test_every_limit_of_every_steel_is_checked() -> None:
    limits = {(s.name, e) for s in STEELS.values() for e in ELEMENTS if s.limit.share(e)}
    assert pairs("limit_percent", "steel", "element") == limits
    capped = {(s.name,) for s in STEELS.values() if s.ce_cap is not None}
    assert pairs("ce_cap", "steel") == capped


def test_every_element_of_every_usual_melt_is_checked() -> None:
    wanted = {(s.name, e) for s in STEELS.values() for e in ELEMENTS if s.typical.share(e)}
    assert pairs("typical_percent", "steel", "element") == wanted


def test_every_range_is_checked() -> None:
    most = {(m, e) for m, formula in FORMULAS.items() for e in formula.ranges}
    assert pairs("most_percent", "method", "element") == most
    least = {(m, e) for m, f in FORMULAS.items() for e, (low, _) in f.ranges.items() if low}
    assert pairs("least_percent", "method", "element") == least
    assert pairs("hardness_most_percent", "element") == {(e,) for e in RANGES}


def test_every_cell_of_the_prequalified_table_is_checked() -> None:
    for function, key, unit in (("table_f", "thickness_in", 0.0254),
                                ("table_c", "thickness_mm", 0.001)):  # fmt: skip
        cells = {
            (STEELS[given["steel"]].category,
             sum(given[key] * unit > step + 1e-9 for step in THICKNESS_STEPS_M))
            for given in asked(function)
        }  # fmt: skip
        assert cells == {(category, row) for category in LEAST for row in range(4)}
    listed = {name for name, steel in STEELS.items() if steel.category}
    assert {name for (name,) in pairs("table_f", "steel")} == listed


def test_hydrogen_of_every_kind_of_wire_is_checked() -> None:
    assert pairs("hydrogen_ml", "kind") == {(kind,) for kind in HYDROGEN}


def test_printed_rows_are_many() -> None:
    assert len(ROWS) >= 250
    assert len([row for row in ROWS if row["how"].startswith("found")]) >= 60
