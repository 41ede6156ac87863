"""Gas in a cylinder: what it is counted with, and the edges of what is answered."""

import CoolProp.CoolProp
import pytest

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.process.compressibility import (
    MOST_PA,
    NORMAL_K,
    compressibility,
    normal_density,
)
from beadwright.process.gas_components import COMPONENTS
from beadwright.process.gases import Gas, gas_of
from beadwright.supply.cylinder_sizes import CYLINDERS, bottle_of, cylinder_of
from beadwright.supply.cylinders import (
    RESIDUAL_PA,
    co2_gas,
    content,
    full_content,
    is_liquid,
    settles_below,
    usable,
    water_volume,
)

ARGON = Gas("Ar", 1.0, 0.0, 0.0, "I1")
HALF = gas_of("50/50")
RICH = gas_of("80 CO2/20 O2")


@pytest.mark.parametrize(
    ("size", "psi", "content_ft3"),
    [("330ft3", 2640, 330), ("250ft3", 2200, 250), ("122ft3", 2200, 122), ("22ft3", 2200, 22)],
)
def test_the_water_volume_of_a_size(size: str, psi: float, content_ft3: float) -> None:
    """Argon by a reference equation of state, at the pressure a full one is filled to."""
    full, normal = (
        CoolProp.CoolProp.PropsSI("Dmolar", "T", 294.26, "P", pascal, "Argon")
        for pascal in (psi * 6894.757 + 101_325, 101_325)
    )
    expected = content_ft3 * 0.3048**3 * normal / full
    assert water_volume(CYLINDERS[size]) == pytest.approx(expected, rel=0.017)


@pytest.mark.parametrize("size", ["bulk", "50lb CO2"])
def test_what_no_gauge_tells_has_no_water_volume(size: str) -> None:
    assert water_volume(CYLINDERS[size]) is None
    with pytest.raises(UnknownEntryError, match="330ft3"):
        bottle_of(size)


def test_sizes_as_the_shop_calls_them() -> None:
    for text in ("125", "122", "125 ft³", "122FT3"):
        assert bottle_of(text).name == "122ft3"
    assert cylinder_of("20").name == "22ft3"
    assert cylinder_of("20L").name == "20L"
    assert cylinder_of("50lb co2").name == "50lb CO2"
    assert cylinder_of("BULK").name == "bulk"


@pytest.mark.parametrize(("name", "fluid"), [("argon", "Argon"), ("co2", "CO2"), ("oxygen", "O2")])
def test_critical_points(name: str, fluid: str) -> None:
    """Reference equations of state, as a published library of them has them."""
    ours = COMPONENTS[name].substance
    assert ours.critical_k == pytest.approx(CoolProp.CoolProp.PropsSI("Tcrit", fluid), rel=1e-3)
    assert ours.critical_pa == pytest.approx(CoolProp.CoolProp.PropsSI("Pcrit", fluid), rel=1e-3)
    assert ours.molar_kg == pytest.approx(CoolProp.CoolProp.PropsSI("M", fluid), rel=1e-4)


def test_helium_stands_with_the_point_of_quantum_gases() -> None:
    """At 294 K: 10.47 / (1 + 21.8 / 4.0026 / 294) K, 0.676 / (1 + 44.2 / 4.0026 / 294) MPa."""
    helium = COMPONENTS["helium"].substance
    assert helium.critical_k == pytest.approx(10.2796, abs=0.001)
    assert helium.critical_pa == pytest.approx(0.6515e6, rel=1e-3)
    assert helium.molar_kg == pytest.approx(0.0040026)


def test_the_range_of_pressure_and_temperature() -> None:
    """To 305 bar, a full cylinder of 300 with the air's own; 250 to 330 K."""
    assert compressibility(ARGON, 305e5, 294.26) > 0
    for kelvin in (250.0, 255.0, 330.0):
        assert compressibility(ARGON, 200e5, kelvin) > 0
    for pressure, kelvin in ((306e5, 294.26), (200e5, 249.9), (200e5, 330.1)):
        with pytest.raises(OutOfRangeError, match="250 to 330"):
            compressibility(ARGON, pressure, kelvin)
    assert pytest.approx(305e5) == MOST_PA


def test_what_a_regulator_leaves() -> None:
    """50 psi are 344.7 kPa: in 50 L, with Z within a few thousandths of one, 0.1701 m³ over 1 atm.

    The 0.05 m³ that stand at 1 atm are counted on both sides.
    """
    assert pytest.approx(344_738, abs=1) == RESIDUAL_PA
    full, empty = content(ARGON, 100e5, 0.05), content(ARGON, 0.0, 0.05)
    left = full - usable(ARGON, 100e5, 0.05) - empty
    assert left == pytest.approx(0.05 * 344_738 / 101_325, rel=0.005)
    assert usable(ARGON, 300e3, 0.05) == pytest.approx(0.0)


def test_where_a_mix_is_liquid() -> None:
    assert not is_liquid(HALF)
    assert is_liquid(Gas("49 Ar/51 CO2", 0.49, 0.51, 0.0, ""))
    assert settles_below(HALF) == pytest.approx(265.6)
    assert content(HALF, 50e5, 0.05, 265.6) > 0
    assert settles_below(gas_of("75/25")) == pytest.approx(235.2)


def test_liquid_has_no_content_by_gauge() -> None:
    with pytest.raises(OutOfRangeError, match="weigh it"):
        content(gas_of("CO2"), 50e5, 0.05)
    with pytest.raises(OutOfRangeError, match="comes in no cylinder"):
        content(RICH, 50e5, 0.05)


def test_the_trade_s_cubic_foot() -> None:
    """70 °F, 529.67 °R: argon 39.948 g × 101 325 Pa / (8.31446 × 294.261 K) = 1.6544 kg/m³."""
    assert pytest.approx(294.2611, abs=1e-4) == NORMAL_K
    assert normal_density(ARGON) == pytest.approx(1.65443, abs=2e-5)


def test_what_is_not_sold_so() -> None:
    assert co2_gas(0.0) == 0.0
    with pytest.raises(OutOfRangeError, match="mixed on the spot"):
        full_content(CYLINDERS["330ft3"], RICH)
    with pytest.raises(OutOfRangeError, match="sold by weight; use"):
        full_content(CYLINDERS["330ft3"], gas_of("CO2"))
    assert full_content(CYLINDERS["bulk"], RICH) is None


@pytest.mark.parametrize("name", ["98/2 O2", "75/25", "65/8/0.5 O2/26.5 He"])
@pytest.mark.parametrize("bar", [20, 200])
def test_the_largest_root_of_the_cubic(name: str, bar: int) -> None:
    """Redlich and Kwong: Z³ - Z² + (A - B - B²)·Z - A·B = 0, to the last figures."""
    gas, kelvin, pressure = gas_of(name), 294.26, bar * 1e5
    root_a = big_b = 0.0
    for pure, share in (("argon", gas.argon), ("co2", gas.co2), ("oxygen", gas.oxygen),
                        ("helium", gas.helium)):  # fmt: skip
        warm = kelvin / COMPONENTS[pure].substance.critical_k
        squeezed = pressure / COMPONENTS[pure].substance.critical_pa
        root_a += share * (0.42748 * squeezed / warm**2.5) ** 0.5
        big_b += share * 0.08664 * squeezed / warm
    big_a = root_a**2
    z = compressibility(gas, pressure, kelvin)
    assert z**3 - z**2 + (big_a - big_b - big_b**2) * z == pytest.approx(big_a * big_b, abs=1e-11)
    # Nothing lies above it: there the cubic only rises.
    assert 3 * z**2 - 2 * z + big_a - big_b - big_b**2 > 0
    assert z > 0.5
