"""Nothing of the calculation goes unchecked: every public function, every row of every table."""

import ast
import inspect
import json
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from types import CodeType, FrameType
from typing import Any

import pytest

from beadwright import units
from beadwright.job import preparations
from beadwright.joint import fillets, groove_rules, joints
from beadwright.process import burnoff, burnoff_points, gases, positions, transfer, wires
from tests.calc.reference_rows import module_named, read_rows, values_of

MODULES = (
    "aim_results", "aims", "current_limits", "dial_in", "feed_limits", "heat_fight", "heat_limits",
    "outcome", "plan", "published_range", "run", "set_point", "settings", "size_limits",
    "tip_limits", "travel_limits", "usual_range", "volts_limits", "ways_out", "window_map",
    "bead_limits", "pass_choices", "frame", "layers", "pass_layout", "pass_limits",
    "pass_plan", "pass_process", "pass_remarks", "pass_settings", "pass_torch", "sweep",
    "closed_corner", "fillet_joints", "groove_joints", "groove_rules", "job_joint", "joint_entries",
    "plug_slot", "preparations", "tee_grooves", "weld_symbol",
    "angular", "arc", "base_metal", "burnoff", "burnoff_fit", "camber", "carbon_equivalent",
    "comparison", "cooling", "cooling_curve", "deposition", "dilution", "distortion",
    "distortion_query", "elastic_line", "fillets", "gas_effects", "gas_flow", "gas_groups",
    "gas_mix", "gas_notes", "gases", "haz_hardness", "heat", "instantaneous_center",
    "intermittent", "joints", "limits", "melted", "operating", "penetration", "positions",
    "preheat", "preheat_table", "published_forms", "resistance_aisc", "resistance_en",
    "shrinkage", "steel_strength", "steels", "filter_shade", "temperatures", "thermal_field",
    "tip_to_work", "torch",
    "gas_components", "materials", "root",
    "transfer", "units", "weld_group", "weld_line", "welded_part", "wire_ranges", "wire_remarks",
    "wire_kinds", "wire_types", "wires",
)  # fmt: skip
HERE = Path(__file__).parent
ROWS = read_rows()


def public_functions() -> Iterator[tuple[str, CodeType]]:
    for name in MODULES:
        module = module_named(name)
        for attribute, found in vars(module).items():
            if attribute.startswith("_") or getattr(found, "__module__", "") != module.__name__:
                continue
            if inspect.isfunction(found):
                yield f"{name}.{attribute}", found.__code__
            elif inspect.isclass(found):
                for method, member in vars(found).items():
                    code = getattr(getattr(member, "fget", member), "__code__", None)
                    if not method.startswith("_") and isinstance(code, CodeType):
                        yield f"{name}.{attribute}.{method}", code


def codes_run(work: Callable[[], object]) -> set[CodeType]:
    """Every code object entered while a function runs."""
    entered: set[CodeType] = set()

    def note(frame: FrameType, event: str, argument: Any) -> None:
        if event == "call":
            entered.add(frame.f_code)

    before = sys.getprofile()
    sys.setprofile(note)
    try:
        work()
    finally:
        sys.setprofile(before)
    return entered


# Not reached by any printed row: the test that holds each.
NAMED_TESTS = {
    "pass_choices.choices": "test_pass_answers.py::test_choices_cost_what_their_plans_cost",
    "pass_choices.nearest":
        "test_pass_answers.py::test_too_few_passes_are_said_and_the_nearest_that_holds_is_named",
    "cooling_curve.cooling_curves":
        "test_thermal_field.py::test_the_curve_takes_the_cooling_time_between_its_marks",
    "distortion.Distortion.all": "test_distortion.py::test_what_is_welded_in_part_counts_in_part",
    "distortion.Distortion.named": "test_distortion.py::test_what_is_welded_in_part_counts_in_part",
    "distortion.Laid.fillet": "test_distortion.py::test_a_fillet_worked_by_hand",
    "distortion.distortion_of": "test_distortion.py::test_a_fillet_worked_by_hand",
    "distortion.distortions": "test_distortion.py::test_no_other_way_draws_a_tee_further",
    "distortion.other_ways": "test_distortion.py::test_the_other_ways",
    "distortion.repassed": "test_distortion.py::test_without_a_set_point_heat_is_left_out",
    "distortion.resized": "test_distortion.py::test_without_a_set_point_heat_is_left_out",
    "distortion_query.distortion_fields":
        "test_distortion_query.py::test_keys_have_words_and_fields",
    "distortion_query.job_distortion": "test_distortion_query.py::test_demo_bracket_answers",
    "published_forms.spread": "test_distortion.py::test_spread_of_forms",
    "arc.arc_length_m": "test_volts.py::test_arc_length_is_that_of_the_fit_and_held_within_bounds",
    "transfer.gas_refused": "test_transfer.py::test_metal_cored_wire_keeps_to_argon",
    "transfer.globular_current": "test_transfer.py::test_globular_without_a_low_end",
    "arc.open_arc_volts": "test_volts.py::test_windows_stand_about_their_middle",
    "arc.short_circuit_volts": "test_volts.py::test_windows_stand_about_their_middle",
    "burnoff.current_from_feed": "test_burnoff.py::test_feed_and_current_undo_each_other",
    "burnoff.extension_from_feed": "test_burnoff.py::test_extension_undoes_feed",
    **{
        f"comparison.{name}": f"test_comparison.py::{test}"
        for name, test in {
            "Way.efficiency": "test_a_wire_is_held_at_its_usual_reach",
            "Comparison.heat_ratio": "test_what_is_said_to_be_equal_is_equal",
            "usual_way": "test_a_wire_is_held_at_its_usual_reach",
            "laid_at_feed": "test_current_and_feed_describe_one_point",
            "laid_at_current": "test_current_and_feed_describe_one_point",
            "at_equal_current": "test_what_is_said_to_be_equal_is_equal",
            "at_equal_feed": "test_what_is_said_to_be_equal_is_equal",
            "at_equal_heat": "test_what_is_said_to_be_equal_is_equal",
            "more_laid": "test_a_comparison_in_words",
        }.items()
    },
    **{
        f"wire_remarks.{name}": f"test_wire_remarks.py::{test}"
        for name, test in {
            "volts_remark": "test_two_truths_about_volts",
            "print_remark": "test_what_is_not_in_print_is_said",
            "lays_remark": "test_what_it_lays_against_solid_is_said_with_its_band",
            "wire_facts": "test_what_stands_on_the_label",
        }.items()
    },
    "wire_remarks.wire_remarks": "test_wire_remarks.py::notes",
    "burnoff_fit.shown_points": "test_burnoff.py::test_what_is_shown_beside_each_point",
    "burnoff_fit.Shown.error": "test_burnoff.py::test_what_is_shown_beside_each_point",
    "burnoff_fit.Shown.inside": "test_burnoff.py::test_what_is_shown_beside_each_point",
    "burnoff_fit.share_inside": "test_burnoff.py::test_the_share_inside_is_said",
    "burnoff_fit.fitted_range_a": "test_burnoff.py::test_the_range_of_the_points_is_said",
    "burnoff_fit.fit": "test_burnoff.py::test_a_refit_gives_the_constants_printed",
    "burnoff_fit.fitted_points": "test_burnoff.py::test_every_point_is_a_printed_row",
    "burnoff_fit.extension_m": "test_burnoff.py::test_extension_assumed_where_none_is_printed",
    "burnoff_fit.relative_errors": "test_burnoff.py::test_points_stand_within_the_band",
    "deposition.bead_section": "test_deposition.py::test_travel_and_section_undo_each_other",
    "deposition.travel_for_section": "test_deposition.py::test_travel_and_section_undo_each_other",
    "deposition.feed_for_travel": "test_deposition.py::test_feed_and_travel_undo_each_other",
    "elastic_line.LineForce.along": (
        "test_weld_lines.py::test_turning_weld_and_load_together_changes_nothing"
    ),
    "elastic_line.LineForce.across": (
        "test_weld_lines.py::test_turning_weld_and_load_together_changes_nothing"
    ),
    "fillets.leg_of_section": "test_fillets.py::test_leg_and_section_undo_each_other",
    "joints.square_face_width": "test_joints.py::test_square_face",
    "joints.Angle.value_deg":
        "test_joints.py::test_the_angle_written_is_the_one_between_the_edges",
    "joints.JointShape.weld":
        "test_joints.py::test_the_angle_written_is_the_one_between_the_edges",
    "limits.tightest_window": "test_limits.py::test_the_tightest_limits_bind",
    "limits.Window.open": "test_limits.py::test_a_window_with_its_ends_crossed_is_shut",
    "limits.Window.place": "test_limits.py::test_place_and_hold",
    "limits.Window.hold": "test_limits.py::test_place_and_hold",
    "operating.at_feed": "test_operating.py::test_feed_and_current_agree_through_the_volts",
    "operating.feed_at_current": "test_operating.py::test_feed_and_current_agree_through_the_volts",
    "operating.volts_window": "test_operating.py::test_volts_of_a_mode",
    "operating.extension": "test_operating.py::test_extension_is_what_the_arc_leaves",
    "transfer.edges": "test_transfer.py::test_edges_are_those_of_the_windows",
    "transfer.transfer_at": "test_transfer.py::test_the_mode_at_published_points",
    "penetration.fit_constant": "test_penetration.py::test_the_constant_is_the_mean_of_the_beads",
    "penetration.measured_over_formed":
        "test_penetration.py::test_beads_stand_within_the_band_as_said",
    "penetration.refused": "test_penetration.py::test_refusals_come_from_one_place",
    "units.short": "test_units.py::test_long_input_is_cut_in_messages",
    "units.quoted": "test_units.py::test_long_input_is_cut_in_messages",
    "units.fraction_text": "test_units.py::test_shop_fractions",
    "units.write": "test_units.py::test_what_is_written_reads_back_to_the_same_float",
    "units.show": "test_units.py::test_numbers_as_the_page_shows_them",
    "units.settable": "test_units.py::test_settable_is_the_nearest_step",
    "units.symbol": "test_units.py::test_numbers_as_the_page_shows_them",
}  # fmt: skip


def test_every_public_function_is_checked() -> None:
    entered = codes_run(lambda: values_of(ROWS))
    unvisited = {name for name, code in public_functions() if code not in entered}
    assert unvisited - set(NAMED_TESTS) == set()


@pytest.mark.parametrize(("function", "test"), NAMED_TESTS.items())
def test_a_named_test_is_there_and_uses_its_function(function: str, test: str) -> None:
    file, _, name = test.partition("::")
    source = (HERE / file).read_text(encoding="utf-8")
    found = [
        ast.get_source_segment(source, node) or ""
        for node in ast.parse(source).body
        if isinstance(node, ast.FunctionDef) and node.name == name
    ]
    assert len(found) == 1
    assert function.split(".")[-1] in found[0]


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
    assert asked("comfortable_in_min", "mover") == set(positions.COMFORTABLE_TRAVEL_M_S)


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
