"""Every row of the tables of gas, wire and copper is held by a printed row; sources are named."""

import json
import re
from pathlib import Path
from typing import Any

import pytest

from beadwright.machine import conductors
from beadwright.measures import MEASURES
from beadwright.money import cost_query
from beadwright.sources import SOURCES
from beadwright.supply import cylinder_sizes, spools
from beadwright.units import read, write
from tests.calc.reference_rows import read_rows

ROWS = read_rows()
CORE = Path(spools.__file__).parents[1]
OURS = (
    "levers", "verdict", "circuit", "cost_page", "supplies_page", "shop_page", "leftovers",
)  # fmt: skip


def asked(function: str, key: str) -> set[Any]:
    """Return the values printed rows give an argument."""
    name = f"shop_checks.{function}"
    return {json.loads(row["inputs"])[key] for row in ROWS if row["function"] == name}


def test_every_cylinder_is_held_by_a_row() -> None:
    assert asked("cylinder_ft3", "size") | {"20L", "10L", "bulk"} == set(cylinder_sizes.CYLINDERS)
    assert asked("cylinder_water_l", "size") == {"50L", "20L", "10L"}
    assert asked("bottle_water_l", "size") >= {"330ft3", "250ft3", "122ft3"}


def test_every_package_is_held_by_a_row() -> None:
    held = asked("package_lb", "package") | asked("package_kg", "package")
    assert held == set(spools.PACKAGES_KG)


def test_every_conductor_is_held_by_a_row() -> None:
    held = asked("ohm_kft", "conductor") | asked("ohm_km", "conductor")
    assert held == set(conductors.CONDUCTORS)
    assert asked("circular_mils", "gauge") == set(conductors.AWG_NUMBERS)
    cords = {name for name, size in conductors.CONDUCTORS.items() if size.cord_a is not None}
    assert asked("cord_a", "conductor") == cords


@pytest.mark.parametrize("stem", OURS)
def test_every_source_named_is_in_the_list(stem: str) -> None:
    text = next(CORE.rglob(f"{stem}.py")).read_text(encoding="utf-8")
    keyed = set(re.findall(r'"((?:nec|iec|awg|i2t|co2|copper|four|machine-|invented|practice)'
                           r'[a-z0-9.-]*)"', text))  # fmt: skip
    known = set(SOURCES) | {"machine_amps", "machine_efficiency"}
    assert keyed <= known


@pytest.mark.parametrize("measure", [
    "price_per_mass", "rate", "price_per_volume", "price_per_energy", "cost_per_length", "share",
    "hours", "distance", "gas_volume", "water_volume", "pressure", "power",
])  # fmt: skip
def test_what_is_written_is_read_back(measure: str) -> None:
    for unit in (MEASURES[measure].us, MEASURES[measure].si, *MEASURES[measure].others):
        for spelling in (unit.symbol, unit.text, *unit.spellings):
            assert read(f"2.5{spelling}", measure) == pytest.approx(2.5 * float(unit.factor))
    for system in ("us", "si"):
        assert read(write(1.2345, measure, system), measure) == 1.2345


@pytest.mark.parametrize(
    ("text", "measure", "expected"),
    [
        # Defined: 1 lb = 0.45359237 kg; 1 psi = 6894.757 Pa (NIST SP 811); 1 kWh = 3.6 MJ.
        ("0.45359237/lb", "price_per_mass", 1.0),
        ("3600/h", "rate", 1.0),
        ("1/ft3", "price_per_volume", 35.3146667),
        ("3.6/kWh", "price_per_energy", 1e-6),
        ("1psi", "pressure", 6894.757),
        ("1bar", "pressure", 1e5),
        ("45%", "share", 0.45),
        ("50L", "water_volume", 0.05),
        ("330ft3", "gas_volume", 9.344559),
        ("10kVA", "power", 10_000.0),
    ],
)
def test_factors_are_those_defined(text: str, measure: str, expected: float) -> None:
    assert read(text, measure) == pytest.approx(expected, rel=1e-6)


def test_a_later_way_may_say_only_what_the_first_may() -> None:
    keys = set(cost_query.DEFAULTS)
    for prefix in cost_query.PREFIXES[1:]:
        own = {key.removeprefix(prefix) for key in keys if key.startswith(prefix)}
        assert own - set(cost_query.ONCE_KEYS) <= keys
