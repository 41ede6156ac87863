"""The Method page misses no formula: each one the core holds is named by an equation or table."""

import ast
import inspect
import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from functools import cache
from itertools import zip_longest
from numbers import Number
from pathlib import Path
from typing import Any, cast

import beadwright
from beadwright_site.method.contents import sections
from tests.calc.reference_rows import module_named

CORE = Path(beadwright.__file__).parent

EXCEPTIONS: Mapping[str, tuple[str, ...]] = {
    "reads, writes or turns units, exactly": (
        "temperatures.ZERO_CELSIUS_K", "temperatures.degree_sign", "temperatures.degrees",
        "temperatures.from_celsius", "temperatures.from_fahrenheit",
        "temperatures.read_temperature", "temperatures.show_temperature",
        "temperatures.to_celsius", "temperatures.to_fahrenheit",
        "units.STEPS", "units.convert", "units.fraction_text",
        "units.read", "units.settable", "units.show", "units.symbol", "units.system_named",
        "units.typed_unit", "units.write", "units.written",
    ),
    "finds a row of a table": (
        "conductors.conductor_of", "cylinder_sizes.bottle_of", "cylinder_sizes.cylinder_of",
        "cylinders.usual_cylinder",
        "gas_flow.nozzle_of", "positions.position_of", "wires.size_of", "wires.wire_of",
    ),
    "a table of sizes or names": (
        "conductors.AWG_NUMBERS", "conductors.CONDUCTORS", "cylinder_sizes.BOTTLES",
        "cylinder_sizes.CYLINDERS",
        "positions.POSITIONS", "shop_ways.BREAKERS_A",
        "spools.PACKAGES_KG", "spools.packages", "spools.packages_sold", "wires.INCH_SIZES_M",
    ),
    "a printed table, shown on its page with its source": (
        "conductors.CORD_AMPS", "conductors.CORD_AMPS_SINGLE",
        "conductors.IEC_CORD_AMPS", "conductors.IEC_OHM_KM",
        "preheat.INTERPASS_K",
    ),
    "says in words what is told here": (
        "comparison.more_laid", "groove_remarks.one_sided_butt",
        "published_range.published_notes",
        "transfer.gas_refused", "transfer.position_refused", "transfer.transfer_refused",
        "remarks.mode_note", "remarks.remarks", "settings.windowed", "ways_out.ways_out",
        "weld_symbol.weld_symbol", "wire_remarks.print_remark", "wire_remarks.wire_remarks",
    ),
    "drawn only, or how finely a thing is sought": (
        "procedure_score.groups_of", "procedure_score.query_of_row", "chance.AT_ONCE",
        "chance.BINS", "cooling_curve.POINTS", "groove_joints.BACKING_M",
        "job_joint.joint_shape",
        "joints.FACE_CHORDS", "joints.box", "joints.corners", "joints.region", "joints.same",
        "strength_check.point_numbers", "transfer_regions.NO_SHORT_V", "window_map.LEAST_V",
        "window_map.STEPS",
    ),
    "a limit on what may be asked, or on waiting": (
        "chance.MOST_DRAWS", "ways_out.MOST_OFFERED",
        "ways_out.NEAR_SIZES", "plan.MOST_PASSES",
    ),
    "refuses a pair of entries, and says why beside them": (
        "joint_conflicts.conflicts",
    ),
    "no answer depends on it": (
        "volts_limits.START_V",
    ),
}  # fmt: skip
"""What needs no equation, by the reason."""

EXCEPTED = {name for names in EXCEPTIONS.values() for name in names}


@cache
def told() -> frozenset[str]:
    """Everything equations and tables of the page say they tell of."""
    names: set[str] = set()
    for section in sections():
        names |= set(section.equation.covers)
        for table in section.tables:
            names |= set(table.covers)
    return frozenset(names)


def assigned(node: ast.stmt) -> list[str]:
    """Names a statement of a module gives a value to."""
    if not isinstance(node, ast.Assign | ast.AnnAssign):
        return []
    targets = node.targets if isinstance(node, ast.Assign) else [node.target]
    return [n.id for target in targets for n in ast.walk(target) if isinstance(n, ast.Name)]


def sourced(path: Path) -> Iterator[str]:
    """Public functions and constants of a file whose own docstring names a source."""
    body = ast.parse(path.read_text(encoding="utf-8")).body
    for node, below in zip_longest(body, body[1:]):
        names, words = assigned(node), ""
        if isinstance(node, ast.FunctionDef):
            names, words = [node.name], ast.get_docstring(node) or ""
        elif isinstance(below, ast.Expr) and isinstance(below.value, ast.Constant):
            words = str(below.value.value)
        if re.search(r"\bSource( of [^:]*)?:", words):
            yield from (name for name in names if not name.startswith("_"))


def formula_modules() -> list[str]:
    """Modules with a sourced function or constant, and those the page tells of anyway."""
    files = {path.stem: path for path in CORE.rglob("*.py") if path.stem[0] != "_"}
    named = {name.partition(".")[0] for name in told()}
    return sorted(stem for stem, path in files.items() if stem in named or any(sourced(path)))


def holds_a_number(value: Any) -> bool:
    """True for a number and for what has one in it; names and words have none."""
    if isinstance(value, bool | str):
        return False
    if isinstance(value, Number):
        return True
    if isinstance(value, Mapping):
        return holds_a_number([*cast(Any, value).items()])
    if isinstance(value, tuple | list | frozenset | set):
        return any(map(holds_a_number, cast("tuple[Any, ...]", value)))
    if is_dataclass(value) and not isinstance(value, type):
        return any(holds_a_number(getattr(value, field.name)) for field in fields(value))
    return False


@cache
def public_names(module: str) -> frozenset[str]:
    """Functions and constants with a number that a module defines itself."""
    found = module_named(module)
    own = {n for node in ast.parse(inspect.getsource(found)).body for n in assigned(node)}
    return frozenset(
        f"{module}.{name}"
        for name, value in vars(found).items()
        if not name.startswith("_")
        if (inspect.isfunction(value) and value.__module__ == found.__name__)
        or (name in own and name.isupper() and holds_a_number(value))
    )


def test_no_formula_or_sourced_number_of_the_core_is_missing() -> None:
    modules = formula_modules()
    assert len(modules) > 90
    missing = {name for module in modules for name in public_names(module)} - told() - EXCEPTED
    assert not missing, f"tell of them in an equation or table of method/topics: {sorted(missing)}"


def test_what_the_page_names_is_there() -> None:
    for name in told():
        module, _, attribute = name.partition(".")
        assert hasattr(module_named(module), attribute), name


def test_an_exception_is_for_something_that_is_there_and_not_told() -> None:
    wanted = {name for module in formula_modules() for name in public_names(module)}
    assert wanted >= EXCEPTED, sorted(EXCEPTED - wanted)
    assert not EXCEPTED & told(), sorted(EXCEPTED & told())


def test_a_formula_nobody_tells_of_is_found() -> None:
    """The list is the tree's: a name taken off the page is missed at once."""
    names = {name for module in formula_modules() for name in public_names(module)}
    assert {"burnoff.feed_from_current", "shrinkage.tendon_force", "units.SHEET_GAUGE_IN"} <= names
    assert "transfer.NAMES" not in names  # words, no number
