"""Second opinions on burn-off: units by pint, the molten drop by handbook enthalpy of iron."""

from dataclasses import replace
from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.process import burnoff_fit
from beadwright.process.burnoff import (
    CONSTANTS,
    current_from_feed,
    feed_from_current,
)
from beadwright.process.burnoff_fit import fit
from beadwright.process.deposition import bead_section, laid_rate
from beadwright.process.materials import CARBON_STEEL
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import Wire, wire_of

UNITS: Any = pint.UnitRegistry()
KEYS: list[tuple[Kind, str]] = list(CONSTANTS)
keys = st.sampled_from(KEYS)


def wire_for(kind: Kind, size: str) -> Wire:
    return wire_of(KINDS[kind].representative, size)


def of(value: float, unit: str) -> Any:
    """A quantity of pint's."""
    return UNITS.Quantity(value, unit)


def in_unit(quantity: Any, unit: str) -> float:
    """The number of a quantity of pint's in a unit."""
    return float(quantity.to(unit).magnitude)


@given(keys, st.floats(50, 450), st.floats(0.2, 1.2))
def test_the_balance_in_shop_units_by_pint(
    key: tuple[Kind, str], current: float, extension_in: float
) -> None:
    """Power to melt over mass per length and enthalpy, every unit carried through."""
    wire, made = wire_for(*key), CONSTANTS[key]
    amps, stick = of(current, "ampere"), of(extension_in, "inch")
    anode = amps * of(made.phi_v, "volt")
    resistivity, area = of(made.r_ohm_m, "ohm * meter"), of(wire.conducting_area_m2, "meter ** 2")
    per_length = of(wire.linear_mass_kg_m, "kilogram / meter")
    power = anode + amps**2 * resistivity * stick / area
    feed = power / (per_length * of(CARBON_STEEL.drop_enthalpy_j_kg, "joule / kilogram"))
    ours = feed_from_current(wire, current, extension_in * 0.0254)
    assert ours / 0.0254 * 60 == pytest.approx(in_unit(feed, "inch / minute"), rel=1e-9)


@given(keys, st.floats(60, 600), st.floats(0.8, 1.0))
def test_laid_metal_in_pounds_an_hour_by_pint(
    key: tuple[Kind, str], feed_in_min: float, efficiency: float
) -> None:
    wire = wire_for(*key)
    feed = of(feed_in_min, "inch / minute")
    laid = laid_rate(wire, in_unit(feed, "meter / second"), efficiency)
    by_pint = feed * of(wire.linear_mass_kg_m, "kilogram / meter") * efficiency
    assert laid / 0.45359237 * 3600 == pytest.approx(in_unit(by_pint, "pound / hour"), rel=1e-9)


def test_a_printed_row_by_pint() -> None:
    """E70C-6M sheet: 450 in/min of 0.045 in at 0.420 lb/1000 in is 11.34, printed 11.6 lb/h."""
    sheet = of(0.420, "pound / inch") / 1000 * of(450, "inch / minute")
    assert in_unit(sheet, "pound / hour") == pytest.approx(11.34, abs=0.005)
    ours = laid_rate(wire_of("E70C-6M", "0.045in"), 450 * 0.0254 / 60, 1.0)
    assert in_unit(of(ours, "kilogram / second"), "pound / hour") == pytest.approx(11.6, rel=0.04)


def test_a_bead_by_pint() -> None:
    """6 lb/h at 12 in/min: 0.1 lb/min over 12 in/min and 0.2836 lb/in³ is 0.02938 in²."""
    laid = in_unit(of(6, "pound / hour"), "kilogram / second")
    travel = in_unit(of(12, "inch / minute"), "meter / second")
    section = in_unit(of(bead_section(laid, travel, CARBON_STEEL), "meter ** 2"), "inch ** 2")
    assert section == pytest.approx(0.1 / 12 / 0.2836, rel=1e-3)


def test_the_drop_holds_what_molten_iron_holds() -> None:
    """Iron from 298 K to liquid at 1811 K, handbook values, from memory.

    Mean heat capacity of the solid with its changes about 0.70 kJ/(kg·K) over 1513 K, heat of
    fusion 13.8 kJ/mol over 55.85 g/mol = 247 kJ/kg: 1.31 MJ/kg.
    """
    heated = 0.70e3 * (1811 - 298)
    melted = 13.8e3 / 55.85e-3
    assert CARBON_STEEL.drop_enthalpy_j_kg == pytest.approx(heated + melted, rel=0.03)


@pytest.mark.parametrize(("kind", "size"), [key for key in KEYS if CONSTANTS[key].points])
@pytest.mark.parametrize("enthalpy", [1.2e6, 1.5e6])
def test_feed_and_current_do_not_depend_on_the_enthalpy(
    kind: Kind, size: str, enthalpy: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It scales φ and r together: a hotter drop only asks for more of both."""
    before = fit(kind, size)
    wire = wire_for(kind, size)
    hotter = replace(wire.material, drop_enthalpy_j_kg=enthalpy)
    hot_wire = replace(wire, type=replace(wire.type, material=hotter))

    def hot(_name: str, _size: str) -> Wire:
        return hot_wire

    monkeypatch.setattr(burnoff_fit, "wire_of", hot)
    after = fit(kind, size)
    scale = enthalpy / CARBON_STEEL.drop_enthalpy_j_kg
    assert after.phi_v == pytest.approx(before.phi_v * scale, rel=1e-9)
    assert after.r_ohm_m == pytest.approx(before.r_ohm_m * scale, rel=1e-9)
    assert after.errors == pytest.approx(before.errors, abs=1e-9)


@given(keys, st.floats(80, 400), st.floats(0.006, 0.03))
def test_the_current_is_the_root_found_by_halving(
    key: tuple[Kind, str], current: float, extension: float
) -> None:
    """The closed form against a search that knows only the other direction."""
    wire = wire_for(*key)
    feed = feed_from_current(wire, current, extension)
    low, high = 1.0, 2000.0
    for _ in range(80):
        middle = (low + high) / 2
        if feed_from_current(wire, middle, extension) < feed:
            low = middle
        else:
            high = middle
    assert current_from_feed(wire, feed, extension) == pytest.approx(low, rel=1e-9)
