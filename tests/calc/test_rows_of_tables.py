"""No row of a table goes unchecked: ``reference/*.csv`` has one for every entry."""

import json
from collections.abc import Mapping
from typing import Any

from beadwright import units
from beadwright.inspection import aws_limits, iso_limits
from beadwright.job import preparations
from beadwright.joint import fillets, groove_rules, joints
from beadwright.process import (
    burnoff,
    burnoff_points,
    gases,
    plate_currents,
    position_currents,
    positions,
    transfer,
    wires,
)
from tests.calc.reference_rows import read_rows

ROWS = read_rows()


def asked(function: str, *keys: str, home: str = "checks") -> set[Any]:
    """The values rows give a function's arguments; tuples where several are named."""
    inputs = [json.loads(r["inputs"]) for r in ROWS if r["function"] == f"{home}.{function}"]
    found = [tuple(given[key] for key in keys) for given in inputs]
    return {one[0] if len(keys) == 1 else one for one in found}


def test_every_sheet_gauge_is_checked() -> None:
    assert asked("gauge_in", "gauge") == set(units.SHEET_GAUGE_IN)


def test_every_step_of_the_minimum_fillet_is_checked() -> None:
    legs = {row["expected"] for row in ROWS if row["function"] == "checks.minimum_leg_in"}
    assert {round(leg / 0.0254, 6) for _, leg in fillets.MINIMUM_LEG_M} <= {
        round(int(top) / int(below), 6) for top, below in (leg.split("/") for leg in legs)
    }


def test_every_step_of_the_least_throat_is_checked() -> None:
    printed = {row["expected"] for row in ROWS
               if row["function"] == "joint_checks.minimum_throat_in"}  # fmt: skip
    checked = {round(int(top) / int(below), 6) for top, below in (v.split("/") for v in printed)}
    assert {round(least / 0.0254, 6) for _, least in groove_rules.MINIMUM_THROAT_M} == checked


def test_every_detail_and_every_joint_s_entries_are_checked() -> None:
    assert asked("detail", "joint", "case", home="joint_checks") == set(preparations.DETAILS)
    kinds = {joint for joint, _ in asked("asks", "joint", "key", home="joint_checks")}
    assert kinds == set(joints.JOINTS)


def test_every_transition_current_is_checked() -> None:
    table = {(size, share) for size, row in transfer.TRANSITION_A.items() for share, _ in row}
    checked = asked("transition_a", "wire", "size", "co2")
    assert table <= {(size, co2) for wire, size, co2 in checked if wire == "ER70S-6"}
    cored = {size for wire, size, _ in checked if wire == "E70C-6M"}
    assert cored == set(transfer.CORED_TRANSITION_A)
    flux = {size for wire, size, _ in checked if wire == "E71T-1C"}
    assert flux == set(transfer.FLUX_CORED_LEAST_A)


def test_every_current_range_is_checked() -> None:
    assert asked("short_range_a", "size") == set(transfer.SHORT_RANGE_A)
    checked = {
        (wires.WIRE_TYPES[wire].kind, size) for wire, size in asked("open_top_a", "wire", "size")
    }
    assert checked == set(transfer.OPEN_TOP_A)


def test_every_position_is_checked() -> None:
    numbers = set(positions.POSITIONS)
    for function in ("single_pass_leg_in", "practical_leg_in", "sprays"):
        names = asked(function, "position")
        assert {positions.position_of(name).number for name in names} == numbers
    names = asked("iso_position", "position")
    assert names == {
        p.name(fillet) for p in positions.POSITIONS.values() for fillet in (False, True)
    }
    assert asked("aws_position", "position") == {"PA", "PB", "PC", "PD", "PE", "PF", "PG"}


def test_every_travel_range_is_checked() -> None:
    checked = {
        (mover, positions.position_of(name).orientation)
        for mover, name in asked("travel_in_min", "mover", "position")
    }
    assert checked == set(positions.TRAVEL_RANGE_M_S)
    comfortable = {
        (mover, positions.position_of(name).orientation)
        for mover, name in asked("comfortable_in_min", "mover", "position")
    }
    assert comfortable == set(positions.COMFORTABLE_TRAVEL_M_S)


def test_every_printed_plate_is_checked() -> None:
    """A corner of either line is a printed plate but where the docstring calls it practice."""
    for joint, line in (
        ("fillet", plate_currents.FILLET_LINE_A),
        ("butt", plate_currents.BUTT_LINE_A),
    ):
        checked = {
            mm
            for function in ("plate_a", "short_plate_a")
            for mm, of in asked(function, "thickness_mm", "joint", home="plan_checks")
            if of == joint
        }
        printed = {mm for mm, _ in line if 0.9 <= mm <= 12}
        assert printed - checked <= {12.0}  # butts are printed to 9 mm


def test_every_kind_held_out_of_position_is_checked() -> None:
    asked_of = asked("held_a", "wire", "position", home="plan_checks")
    checked = {
        (wires.WIRE_TYPES[wire].kind, positions.position_of(name).orientation)
        for wire, name in asked_of
    }
    # Downhill goes by overhead, and metal-cored by solid wire: common practice.
    borrowed = {
        ("solid", "vertical-down"),
        ("metal-cored", "vertical-down"),
        ("metal-cored", "overhead"),
    }
    assert set(position_currents.HELD_A) - borrowed <= checked


def test_every_share_of_short_circuit_out_of_position_is_checked() -> None:
    checked = {
        positions.position_of(name).orientation
        for name in asked("short_held", "position", home="plan_checks")
    }
    assert checked == set(position_currents.SHORT_HELD) - {"flat", "horizontal"}


def test_every_wire_size_and_mass_is_checked() -> None:
    sizes = set(wires.INCH_SIZES_M)
    assert asked("metric_size", "size") == sizes == set(wires.METRIC_NAMES)
    assert asked("diameter_in", "size") == sizes
    assert {
        (wires.WIRE_TYPES[wire].kind, size)
        for wire, size in asked("mass_over_solid", "wire", "size")
    } == set(wires.CORED_MASS_RATIO)


def test_every_gas_is_checked() -> None:
    assert asked("gas_group", "gas") == set(gases.GASES)
    assert asked("gas_percent", "gas", "of") == {
        (name, of) for name in gases.GASES for of in ("argon", "co2", "oxygen", "helium")
    }


def test_every_burn_off_constant_is_checked() -> None:
    checked = {
        (wires.WIRE_TYPES[wire].kind, size) for wire, size in asked("feed_at_point", "wire", "size")
    }
    # No point was published for the others; test_burnoff holds how they were made.
    bare = {key for key, made in burnoff.CONSTANTS.items() if made.points == 0}
    assert bare == {
        ("solid", "0.040in"),
        ("metal-cored", "0.035in"),
        ("metal-cored", "0.040in"),
        ("metal-cored", "0.052in"),
    }
    assert checked | bare == set(burnoff.CONSTANTS)
    assert {(p.kind, p.size) for p in burnoff_points.POINTS} == checked


def test_every_tip_to_work_is_checked() -> None:
    checked = asked("tip_to_work_in", "wire", "size", "transfer")
    for size in wires.INCH_SIZES_M:
        assert ("ER70S-6", size, "short") in checked
        assert ("ER70S-6", size, "spray") in checked
    for wire in ("E70C-6M", "E71T-1C"):
        for size in wires.WIRE_TYPES[wire].sizes:
            assert (wire, size, "spray") in checked


def test_every_joint_has_its_work_angle_checked() -> None:
    assert asked("work_angle_deg", "joint") == set(joints.JOINTS)
    assert {where for where, _ in asked("travel_angle_deg", "orientation", "transfer")} == {
        position.orientation for position in positions.POSITIONS.values()
    }


def test_efficiency_is_checked_for_every_mode_of_both_kinds() -> None:
    modes = {(wire, mode) for wire, mode in asked("efficiency_percent", "wire", "transfer")}
    assert {("ER70S-6", mode) for mode in transfer.NAMES} <= modes
    assert any(wire == "E70C-6M" for wire, _ in modes)


def test_every_limit_of_acceptance_is_checked_at_every_level() -> None:
    home = "inspect_checks"
    rules = {
        name
        for name, value in vars(iso_limits).items()
        if name.isupper() and isinstance(value, Mapping)
    }
    asked_of = asked("iso_mm", "rule", "level", home=home)
    asked_of |= {("UNDERCUT", level) for level in asked("iso_undercut_mm", "level", home=home)}
    asked_of |= {("THIN_UNDERCUT", level) for level in asked("iso_undercut_mm", "level", home=home)}
    asked_of |= asked("iso_unlimited", "rule", "level", home=home)
    assert asked_of == {(rule, level) for rule in rules for level in "BCD"}
    steps = {units.read(f"{leg}in", "length") for leg in asked("undersize_in", "leg_in", home=home)}
    assert {size for size, _ in aws_limits.UNDERSIZE_M if size} - steps == {0.006}
    named = asked("aws_in", "name", home=home)
    assert named == {"COUNTED_PORE_M", "PORES_INCH_M", "PORES_FOOT_M", "CYCLIC_PORE_M",
                     "DEEP_LENGTH_M", "HEAVY_M", "WIDEST_GAP_M"}  # fmt: skip
