"""Gas in a cylinder against reference equations of state; its sizes and ranges."""

from collections.abc import Callable
from typing import Any, cast

import CoolProp.CoolProp
import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.process.compressibility import MOST_PA, compressibility, normal_density
from beadwright.process.gases import GASES, Gas, gas_of
from beadwright.supply.cylinder_sizes import CYLINDERS, cylinder_of
from beadwright.supply.cylinders import (
    RESIDUAL_PA,
    content,
    full_content,
    lasts,
    usable,
    usual_cylinder,
)
from tests.calc.shop_checks import ARGON

TRI = gas_of("7.5/2.5/90 He")


PRESSED = [ARGON, TRI, *(gas for gas in GASES.values() if gas.co2 < 1)]


NAMES = {"argon": "Argon", "co2": "CarbonDioxide", "oxygen": "Oxygen", "helium": "Helium"}


STATE = cast("Callable[[str, str], Any]", CoolProp.CoolProp.AbstractState)


def reference_density(gas: Gas, pascal: float, kelvin: float) -> float:
    """Return moles in a cubic meter by the reference equations of state."""
    shares = {NAMES[n]: s for n in NAMES if (s := getattr(gas, n)) > 0}
    state = STATE("HEOS", "&".join(shares))
    if len(shares) > 1:
        state.set_mole_fractions(list(shares.values()))
        state.specify_phase(CoolProp.CoolProp.iphase_gas)
    state.update(CoolProp.CoolProp.PT_INPUTS, pascal, kelvin)
    return float(state.rhomolar())


@pytest.mark.parametrize("kelvin", [263.15, 278.15, 294.26, 313.15])
@pytest.mark.parametrize("gas", PRESSED, ids=lambda gas: gas.name)
def test_compressibility_stands_by_the_reference_equations(gas: Gas, kelvin: float) -> None:
    for bar in (1, 20, 50, 100, 150, 200):
        reference = bar * 1e5 / (reference_density(gas, bar * 1e5, kelvin) * 8.314462618 * kelvin)
        assert compressibility(gas, bar * 1e5, kelvin) == pytest.approx(reference, rel=0.017)


@pytest.mark.parametrize("gas", [ARGON, gas_of("90/10"), gas_of("75/25")], ids=lambda g: g.name)
def test_content_stands_by_the_reference_equations(gas: Gas) -> None:
    moles = reference_density(gas, 150e5, 294.26) * 0.05
    normal = moles * 8.314462618 * 294.26 / 101_325
    assert content(gas, 150e5 - 101_325, 0.05, 294.26) == pytest.approx(normal, rel=0.017)


@pytest.mark.parametrize("gas", [ARGON, gas_of("CO2")], ids=lambda gas: gas.name)
def test_density_at_70_f(gas: Gas) -> None:
    molar = {"argon": 0.039948, "CO2": 0.0440095}[gas.name]
    reference = reference_density(gas, 101_325, 294.26) * molar
    assert normal_density(gas) == pytest.approx(reference, rel=0.008)


@given(st.floats(1e4, 200e5), st.floats(1e4, 200e5), st.sampled_from(PRESSED))
def test_more_on_the_gauge_is_more_gas(one: float, two: float, gas: Gas) -> None:
    low, high = sorted((one, two))
    assert content(gas, low, 0.05) <= content(gas, high, 0.05)


@given(st.floats(0, 200e5), st.floats(1e-3, 0.1), st.sampled_from(PRESSED))
def test_gas_goes_with_the_size_of_the_cylinder(gauge: float, water: float, gas: Gas) -> None:
    assert content(gas, gauge, 2 * water) == pytest.approx(2 * content(gas, gauge, water))


def test_the_last_of_a_cylinder_cannot_be_drawn() -> None:
    gas = gas_of("90/10")
    assert usable(gas, RESIDUAL_PA, 0.05) == 0
    assert usable(gas, 0, 0.05) == 0
    assert usable(gas, 100e5, 0.05) < content(gas, 100e5, 0.05)


def test_ranges_of_the_gas_sums() -> None:
    gas = gas_of("90/10")
    with pytest.raises(OutOfRangeError, match="kelvin"):
        compressibility(gas, 1e5, 200)
    with pytest.raises(OutOfRangeError, match="pressure_pa"):
        compressibility(gas, MOST_PA * 1.01, 290)
    with pytest.raises(OutOfRangeError, match="weigh it"):
        content(gas_of("CO2"), 50e5, 0.05)
    with pytest.raises(OutOfRangeError, match="gauge_pa"):
        content(gas, -1, 0.05)
    with pytest.raises(OutOfRangeError, match="flow_m3_s"):
        lasts(1.0, 0.0)
    with pytest.raises(OutOfRangeError, match="sold by weight"):
        full_content(CYLINDERS["330ft3"], gas_of("CO2"))
    with pytest.raises(OutOfRangeError, match="is for CO2"):
        full_content(CYLINDERS["50lb CO2"], gas)
    with pytest.raises(UnknownEntryError, match="330ft3"):
        cylinder_of("huge")


def test_every_size_of_cylinder_is_read_by_its_name() -> None:
    for name, size in CYLINDERS.items():
        assert cylinder_of(name.upper()) is size
    assert cylinder_of("330ft³").name == "330ft3"
    assert usual_cylinder(gas_of("CO2")).co2_kg is not None
