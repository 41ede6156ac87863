"""Every entry of the tables behind the Heat page is held by a row of print or of practice."""

import json
from typing import Any

from beadwright.heating.carbon_equivalent import FORMULAS
from beadwright.heating.haz_hardness import RANGES
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.preheat_a import (
    CES,
    HEATS_J_M,
    SCALES,
    WITHOUT_PREHEAT_M,
    hydrogen_scale,
)
from beadwright.heating.preheat_table import LEAST, THICKNESS_STEPS_M
from beadwright.heating.steels import ELEMENTS, STEELS
from tests.calc.reference_rows import read_rows

ROWS = [row for row in read_rows() if row["function"].startswith("heat_checks.")]


def asked(function: str) -> list[dict[str, Any]]:
    return [json.loads(r["inputs"]) for r in ROWS if r["function"] == f"heat_checks.{function}"]


def pairs(function: str, *keys: str) -> set[tuple[Any, ...]]:
    return {tuple(given[key] for key in keys) for given in asked(function)}


def step_of(given: dict[str, Any]) -> int:
    """Which of a grade's steps of thickness a row lies in."""
    steel, units = STEELS[given["steel"]], given.get("units", "si")
    return steel.limits.index(steel.limits_at(given["thickness_mm"] / 1000, units))


def test_every_limit_of_every_steel_is_checked_at_every_thickness() -> None:
    steps = [(s, i, step) for s in STEELS.values() for i, step in enumerate(s.limits)]
    limits = {(s.name, i, e) for s, i, step in steps for e in ELEMENTS if step.most.share(e)}
    rows = asked("limit_percent")
    assert {(given["steel"], step_of(given), given["element"]) for given in rows} == limits
    capped = {(s.name, i) for s, i, step in steps if step.ce_cap is not None}
    assert {(given["steel"], step_of(given)) for given in asked("ce_cap")} == capped


def test_every_manganese_traded_for_carbon_is_checked_at_its_top_and_below() -> None:
    tops = {s.name: s.mn_top for s in STEELS.values() if s.mn_top is not None}
    shown = [row for row in ROWS if row["function"] == "heat_checks.most_mn"]
    at = {(json.loads(r["inputs"])["steel"], float(r["expected"])) for r in shown}
    assert set(tops.items()) <= at
    under = {name for name, most in at if name in tops and most < tops[name]}
    assert under == set(tops) - {"A992"}  # newer editions allow it 1.60 % outright


def test_every_figure_of_method_a_is_checked() -> None:
    cells = {(given["ce"], given["hydrogen"], given["q_kj_mm"] * 1e6)
             for given in asked("without_preheat_mm")}  # fmt: skip
    assert {(ce, hydrogen_scale(h), q) for ce, h, q in cells} == {
        (ce, scale, q) for ce in CES for scale in WITHOUT_PREHEAT_M for q in HEATS_J_M
    }
    ends = {most for _, most in SCALES}
    assert ends <= {given["hydrogen"] for given in asked("scale")}


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
    for function, key, unit, steps in (
        ("table_f", "thickness_in", 0.0254, THICKNESS_STEPS_M["us"]),
        ("table_c", "thickness_mm", 0.001, THICKNESS_STEPS_M["si"]),
    ):
        cells = {
            (STEELS[given["steel"]].category,
             sum(given[key] * unit > step + 1e-9 for step in steps))
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
