"""The volts lines as the Method page prints them, worked by hand at one point each.

That the lines hold printed settings is checked elsewhere; these hold the lines themselves.
"""

import pytest

from beadwright.process.arc import (
    carbonic_rise,
    open_arc_volts,
    open_window,
    short_circuit_volts,
    short_window,
)
from beadwright.process.gases import gas_of


@pytest.mark.parametrize(
    ("gas", "amps", "volts"),
    [("98/2 O2", 100, 16.3), ("90/10", 100, 16.8), ("75/25", 200, 20.95), ("CO2", 100, 19.05)],
)
def test_middle_of_short_circuit(gas: str, amps: float, volts: float) -> None:
    """12.9 + 0.05 V per 1 % CO2 to 25 % and 0.02 V beyond + 0.034 V/A."""
    assert short_circuit_volts(amps, gas_of(gas)) == pytest.approx(volts, abs=0.005)


@pytest.mark.parametrize(
    ("size", "gas", "amps", "volts"),
    [
        ("0.030in", "90/10", 150, 23.05),
        ("0.035in", "90/10", 200, 24.4),
        ("0.040in", "90/10", 200, 24.9),
        ("0.045in", "90/10", 200, 25.4),
        ("0.052in", "80/20", 300, 28.8),
        ("1/16in", "98/2 O2", 300, 25.0),
        ("0.045in", "CO2", 300, 30.95),
        ("0.035in", "CO2", 200, 24.5),
    ],
)
def test_middle_of_the_open_arc(size: str, gas: str, amps: float, volts: float) -> None:
    """Foot by size + 0.09 V per 1 % CO2 + slope by size; CO2: 11.6 + 0.0645 V/A."""
    assert open_arc_volts(amps, gas_of(gas), size) == pytest.approx(volts, abs=0.005)


def test_room_about_the_middle() -> None:
    """Solid: ±2.5 V in short circuit, −2.2 and +2.5 V in the open arc.

    Metal-cored: −4 V in short circuit; in the open arc set 1.2 V under solid wire, from −3 V to its
    own top.
    """
    gas = gas_of("90/10")
    assert short_window(100, gas, "solid") == pytest.approx((14.3, 16.8, 19.3))
    assert short_window(100, gas, "metal-cored") == pytest.approx((12.8, 16.8, 19.3))
    assert open_window(200, gas, "solid", "0.045in") == pytest.approx((23.2, 25.4, 27.9))
    assert open_window(200, gas, "metal-cored", "0.045in") == pytest.approx((22.4, 24.2, 32.0))


@pytest.mark.parametrize(
    ("gas", "amps", "rise"),
    [
        # Argon mixtures to 25 % CO2 stand on the middle; so does CO2 to 133 A.
        ("75/25", 250, 0.0),
        ("CO2", 133, 0.0),
        # 200 A: the open arc, 11.6 + 12.9 V, is 2.05 V over 12.9 + 2.75 + 6.8; 67/157 of it.
        ("CO2", 200, 2.05 * 67 / 157),
        # 50/50 stands a third of the way: the open arc of CO2 over 12.9 + 1.75 + 6.8 V, 3.05 V.
        ("50/50", 200, 3.05 * 67 / 157 / 3),
        # 250 A: 27.725 V over 24.15, 117/157 of 3.575 is 2.66; no more than 1.8 V.
        ("CO2", 250, 1.8),
    ],
)
def test_short_circuit_climbs_towards_the_open_arc_in_co2(
    gas: str, amps: float, rise: float
) -> None:
    """Set over the middle of the room, whose ends stay."""
    middle = short_circuit_volts(amps, gas_of(gas))
    assert carbonic_rise(amps, gas_of(gas)) == pytest.approx(rise)
    low, set_, high = short_window(amps, gas_of(gas), "solid")
    assert (low, set_, high) == pytest.approx((middle - 2.5, middle + rise, middle + 2.5))


def test_the_sheet_s_top_is_the_top_of_metal_cored_wire() -> None:
    """The published E70C-6M sheet prints nothing over 38 V; half a volt is for its rounding."""
    assert open_window(400, gas_of("90/10"), "metal-cored", "1/16in")[2] == pytest.approx(38.5)


def test_room_of_flux_cored_wire() -> None:
    """0.035 in in CO2 at 150 A: 17 + 0.06 × 150 = 26 V, 2.5 V either way."""
    window = open_window(150, gas_of("CO2"), "flux-cored", "0.035in")
    assert window == pytest.approx((23.5, 26.0, 28.5))
