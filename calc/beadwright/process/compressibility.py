"""How far shielding gas under pressure is from an ideal gas: the factor Z.

Redlich and Kwong's equation with the usual mixing of its two constants. It agrees with a
reference equation of state within 1.6 % for every gas of ``gases.GASES`` that is not liquid in the
cylinder, from -10 to 40 °C and up to 200 bar (tests, CoolProp); the ideal gas is off by up to 27 %.
"""

from __future__ import annotations

from math import sqrt

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.process.gas_components import COMPONENTS
from beadwright.process.gases import Gas

GAS_CONSTANT_J_MOL_K = 8.31446261815324
"""Molar gas constant [J/(mol·K)]. Source: exact, SI brochure, 9th ed."""

NORMAL_K = (70 + 459.67) / 1.8
"""Temperature at which the trade counts cubic feet: 70 °F [K]."""

NORMAL_PA = 101_325.0
"""Pressure at which the trade counts cubic feet: 1 atm [Pa]."""

MOST_PA = 305e5
"""Highest pressure asked for: a 300 bar cylinder [Pa]."""

_ROUNDS = 60
"""Most steps of Newton's method; about six settle it [-]."""


def parts_of(gas: Gas) -> dict[str, float]:
    """Return the mole share of each substance in a gas; volume shares of ideal gas.

    Args:
        gas: The gas [-].
    """
    shares = {"argon": gas.argon, "co2": gas.co2, "oxygen": gas.oxygen, "helium": gas.helium}
    shares |= dict(gas.others)
    return {name: share for name, share in shares.items() if share > 0}


def molar_mass(gas: Gas) -> float:
    """Return the molar mass of a gas [kg/mol].

    Args:
        gas: The gas [-].
    """
    return sum(share * COMPONENTS[name].substance.molar_kg for name, share in parts_of(gas).items())


def normal_density(gas: Gas) -> float:
    """Return the density of a gas at 70 °F and 1 atm [kg/m³].

    Source: ideal gas; within 0.7 % for CO2, 0.1 % for argon.

    Args:
        gas: The gas [-].
    """
    return molar_mass(gas) * NORMAL_PA / (GAS_CONSTANT_J_MOL_K * NORMAL_K)


def compressibility(gas: Gas, pressure_pa: float, kelvin: float) -> float:
    """Return Z, the share of an ideal gas's volume that the gas takes up [-].

    Source: Redlich and Kwong 1949: Z³ - Z² + (A - B - B²)·Z - A·B = 0,
    A = 0.42748·(p/pc)/(T/Tc)^2.5, B = 0.08664·(p/pc)/(T/Tc), mixed by mole share.

    Valid for: gas without liquid, 250 to 330 K, up to ``MOST_PA``.

    Args:
        gas: The gas [-].
        pressure_pa: Pressure over vacuum, above zero [Pa].
        kelvin: Temperature [K].

    Raises:
        OutOfRangeError: If pressure or temperature is outside the range.
    """
    require_positive(pressure_pa=pressure_pa)
    if pressure_pa > MOST_PA or not 250 <= kelvin <= 330:
        raise OutOfRangeError(
            f"pressure_pa = {pressure_pa:.0f} and kelvin = {kelvin:.1f} must be up to "
            f"{MOST_PA:.0f} and 250 to 330"
        )
    root_a = big_b = 0.0
    for name, share in parts_of(gas).items():
        pure = COMPONENTS[name].substance
        cold, squeezed = kelvin / pure.critical_k, pressure_pa / pure.critical_pa
        root_a += share * sqrt(0.42748 * squeezed / cold**2.5)
        big_b += share * 0.08664 * squeezed / cold
    return _largest_root(root_a**2, big_b)


def _largest_root(big_a: float, big_b: float) -> float:
    """The largest root by Newton's method from above; it is the root of the gas."""
    z = 1.0 + big_b
    for _ in range(_ROUNDS):
        height = ((z - 1) * z + big_a - big_b - big_b**2) * z - big_a * big_b
        step = height / (3 * z * z - 2 * z + big_a - big_b - big_b**2)
        z -= step
        if abs(step) < 1e-13:
            break
    return z
