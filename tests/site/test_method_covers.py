"""The Method page misses no formula: each one the core holds is named by an equation or table."""

import inspect
from collections.abc import Iterator

import pytest

from beadwright_site.method.contents import sections
from tests.calc.reference_rows import module_named

FORMULAS = (
    "aims", "arc", "break_even", "burnoff", "capacity", "carbon_equivalent", "chance",
    "compressibility", "conductors", "cooling", "cost", "current_limits", "cylinders", "deposition",
    "dilution", "duty_cycle", "feed_limits", "fillet_joints", "fillets", "gas_flow",
    "groove_joints", "heat", "heat_limits", "limits", "operating", "penetration", "preheat",
    "primary", "run", "set_point", "size_limits", "spools", "swings", "tip_limits", "transfer",
    "travel_limits", "volts_limits", "way", "window_map",
)  # fmt: skip
"""Modules of formulas: everything public in them must be told of, or excused below."""

TOLD_ELSEWHERE = {
    "aims.AIMS": "names",
    "volts_limits.START_V": "where a search starts; no answer hangs on it",
    "window_map.LEAST_V": "drawn only",
    "window_map.STEPS": "how finely the plane is drawn",
    "arc.conventional_load_volts": "rates machines; no answer uses it",
    "cooling.BEAD": "shape factors, told of as a table",
    "cooling.BUTT": "shape factors, told of as a table",
    "cooling.CORNER": "shape factors, told of as a table",
    "cooling.HOT_C": "names the range of the time",
    "cooling.TEE": "shape factors, told of as a table",
    "preheat.CET_RANGE": "where the method holds, said there",
    "preheat.HEAT_RANGE_J_M": "where the method holds, said there",
    "preheat.HYDROGEN_RANGE": "where the method holds, said there",
    "preheat.INTERPASS_K": "said on Heat",
    "preheat.THICKNESS_RANGE_M": "where the method holds, said there",
    "chance.BINS": "how finely the draws are drawn",
    "chance.MOST_DRAWS": "a limit on waiting",
    "conductors.AWG_NUMBERS": "names of sizes",
    "conductors.CONDUCTORS": "a table of sizes",
    "conductors.CORD_AMPS": "a printed table, shown on Shop with its source",
    "conductors.IEC_CORD_AMPS": "a printed table, shown on Shop with its source",
    "conductors.IEC_OHM_KM": "a printed table, shown on Shop with its source",
    "conductors.conductor_of": "finds a row",
    "cylinders.CYLINDERS": "a table of sizes, shown on Supplies",
    "cylinders.cylinder_of": "finds a row",
    "cylinders.usual_cylinder": "finds a row",
    "gas_flow.nozzle_of": "finds a row",
    "groove_joints.BACKING_M": "drawn only",
    "joints.box": "drawn only",
    "joints.region": "gathers what is drawn",
    "positions.COMFORTABLE_TRAVEL_M_S": "where to start, shown on Dial in",
    "positions.POSITIONS": "a table of positions",
    "positions.position_of": "finds a row",
    "spools.PACKAGES_KG": "sizes bought, shown on Supplies",
    "spools.packages": "counts whole packages",
    "spools.packages_sold": "names of packages",
    "transfer.NAMES": "words",
    "transfer.NO_SHORT_V": "drawn only",
    "transfer.gas_refused": "says why in words, beside the field",
    "transfer.position_refused": "says why in words, beside the field",
    "transfer.transfer_refused": "says why in words, beside the field",
    "wires.CORED_MASS_RATIO": "a printed table, told of with laid metal",
    "wires.INCH_SIZES_M": "names of sizes",
    "wires.METRIC_NAMES": "names of sizes",
    "wires.wire_of": "finds a row",
}
"""What needs no equation, and why."""


def covered() -> set[str]:
    """Everything equations and tables of the page say they tell of."""
    names: set[str] = set()
    for section in sections():
        names |= set(section.equation.covers)
        for table in section.tables:
            names |= set(table.covers)
    return names


def public_names(module: str) -> Iterator[str]:
    """Functions and constants a module defines itself."""
    found = module_named(module)
    own = inspect.getsource(found).splitlines()
    for name, value in vars(found).items():
        if name.startswith("_"):
            continue
        if inspect.isfunction(value):
            if value.__module__ == found.__name__:
                yield f"{module}.{name}"
        elif name.isupper() and any(line.startswith((f"{name} =", f"{name}:")) for line in own):
            yield f"{module}.{name}"


@pytest.mark.parametrize("module", FORMULAS)
def test_no_formula_of_a_module_is_missing(module: str) -> None:
    assert set(public_names(module)) - covered() - set(TOLD_ELSEWHERE) == set()


def test_what_the_page_names_is_there() -> None:
    for name in covered():
        module, _, attribute = name.partition(".")
        assert hasattr(module_named(module), attribute), name


def test_an_excuse_is_for_something_that_is_there_and_not_told() -> None:
    told = covered()
    for name in TOLD_ELSEWHERE:
        module, _, attribute = name.partition(".")
        assert hasattr(module_named(module), attribute), name
        assert name not in told, name
