"""Nothing of the calculation goes unchecked: every public function, every row of every table.

A public function counts as checked if a row of ``reference/*.csv`` or a page worked by hand runs
it, or if a test that imports its module uses it by name. That is the least: what the check is
worth, ``tests/mutation`` tells.
"""

import ast
import inspect
import json
import sys
from collections.abc import Callable, Iterator
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from types import CodeType, FrameType, ModuleType
from typing import Any, NamedTuple

import beadwright
from beadwright import units
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
from tests.calc.reference_rows import read_rows, values_of
from tests.calc.test_worked_pages import WORKED

HERE = Path(__file__).parent
ROWS = read_rows()

LEFT_OUT = {
    "beadwright.__main__": "a command; test_terminal.py starts it in a process of its own",
}
"""Modules not looked at, and why."""

ENTERED_UNSEEN = {
    "beadwright.job.page_query.PageAnswered.units": "every page's answer has its own",
    "beadwright.reading.queries.messages_of": "run by every refusal; test_query.py",
}
"""Functions no row is seen to enter and no test names, and why that is no gap."""


class Public(NamedTuple):
    """A public function of the core, or a method or property of a public class."""

    module: str
    name: str
    code: CodeType


def modules() -> Iterator[ModuleType]:
    """Every module of the core, from the tree of files."""
    yield beadwright
    for found in walk_packages(beadwright.__path__, "beadwright."):
        if found.name not in LEFT_OUT:
            yield import_module(found.name)


def code_of(member: object) -> CodeType | None:
    """The code behind a function, a method, a property or a wrapped function."""
    function: Any = getattr(member, "fget", None) or member
    code = getattr(inspect.unwrap(function), "__code__", None)
    return code if isinstance(code, CodeType) else None


def public_functions() -> Iterator[Public]:
    for module in modules():
        for name, found in vars(module).items():
            if name.startswith("_") or getattr(found, "__module__", "") != module.__name__:
                continue
            if inspect.isclass(found):
                for inner, member in vars(found).items():
                    if not inner.startswith("_") and (code := code_of(member)):
                        yield Public(module.__name__, f"{name}.{inner}", code)
            elif code := code_of(found):
                yield Public(module.__name__, name, code)


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


@cache
def names_used() -> dict[str, tuple[set[str], set[str]]]:
    """By file of tests: what it imports of the core, and every name it takes from an object."""
    found: dict[str, tuple[set[str], set[str]]] = {}
    for path in HERE.parent.rglob("test_*.py"):
        imported, taken = found.setdefault(str(path), (set(), set()))
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module:
                imported |= {node.module, *(f"{node.module}.{one.name}" for one in node.names)}
            elif isinstance(node, ast.Attribute):
                taken.add(node.attr)
    return found


def is_named_in_a_test(public: Public) -> bool:
    """True if a test imports a function, or takes a member by name from what it imports.

    A page's answer and what it holds come by the door, ``beadwright.api``, or from tests' own file.
    """
    *owner, last = public.name.split(".")
    for imported, taken in names_used().values():
        if f"{public.module}.{public.name}" in imported:
            return True
        by_the_door = bool(owner) and any(
            name == "beadwright.api" or name.startswith("tests.calc.") for name in imported
        )
        if (public.module in imported or by_the_door) and last in taken:
            return True
    return False


def forget_answers() -> None:
    """Empty every cache of the core: an answer remembered is no function entered."""
    for module in modules():
        for found in vars(module).values():
            if hasattr(found, "cache_clear"):
                found.cache_clear()


def test_every_public_function_of_every_module_is_checked() -> None:
    forget_answers()
    entered = codes_run(lambda: (values_of(ROWS), [worked.wrong() for worked in WORKED]))
    unchecked = {
        f"{public.module}.{public.name}"
        for public in public_functions()
        if public.code not in entered and not is_named_in_a_test(public)
    }
    missing = sorted(unchecked - set(ENTERED_UNSEEN))
    assert not missing, "\n".join(missing)


def test_an_excuse_is_for_something_that_is_there() -> None:
    names = {f"{public.module}.{public.name}" for public in public_functions()}
    assert set(ENTERED_UNSEEN) <= names


def test_the_modules_looked_at_are_the_files_of_the_core() -> None:
    root = Path(beadwright.__path__[0])
    files = [path for path in root.rglob("*.py") if path.name != "__init__.py"]
    looked_at = [module for module in modules() if not hasattr(module, "__path__")]
    assert len(looked_at) + len(LEFT_OUT) == len(files) > 150


def test_what_no_test_names_is_found_out() -> None:
    code = code_of(is_named_in_a_test)
    assert code is not None
    assert not is_named_in_a_test(Public("beadwright.units", "no_such_function", code))


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
