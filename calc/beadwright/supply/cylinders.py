"""What is in a gas cylinder and how long it lasts; volumes at 70 °F and 1 atm, as sold.

Flow is counted in the same way: a flowmeter's cubic foot is at 70 °F and 1 atm.
"""

from __future__ import annotations

from bisect import bisect_right

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import CUBIC_FOOT_M3, POUND_KG, PSI_PA
from beadwright.process.compressibility import NORMAL_K, NORMAL_PA, compressibility
from beadwright.process.gases import Gas
from beadwright.supply.cylinder_sizes import CYLINDERS, CylinderSize

CO2_M3_KG = 8.76 * float(CUBIC_FOOT_M3 / POUND_KG)
"""Gas from a kilogram of CO2, 70 °F and 1 atm [m³/kg]. Source: conversion table, 8.76 ft³/lb."""

RESIDUAL_PA = 50 * float(PSI_PA)
"""Gauge pressure below which a regulator no longer holds the flow [Pa]. Common practice, 50 psi."""

WATER_OFF = 0.07
"""How far the water volume of a size may be off [-]. Common practice: makers differ, and sizes are
called by round numbers; what is stamped on the shoulder rules."""

_ARGON = Gas("argon", 1.0, 0.0, 0.0, "I1")


def usual_cylinder(gas: Gas) -> CylinderSize:
    """Return the size a shop most often has of a gas. Common practice.

    Args:
        gas: The gas; CO2 with oxygen is mixed at the shop's own panel [-].
    """
    if is_liquid(gas):
        return CYLINDERS["50lb CO2" if gas.co2 == 1 else "bulk"]
    return CYLINDERS["330ft3"]


def is_liquid(gas: Gas) -> bool:
    """Return whether a gas is mostly CO2, which is liquid in the cylinder.

    Args:
        gas: The gas [-].
    """
    return gas.co2 > 0.5


SETTLES_K: tuple[tuple[float, float], ...] = (
    (0.25, 235.2), (0.30, 242.5), (0.35, 249.2), (0.40, 255.2), (0.50, 265.6),
)  # fmt: skip
"""CO2 in argon and the temperature above which none of it turns liquid at any pressure [-, K].

Source: derived, top of the dew line by reference equations of state, to 1 K. Under 25 % it is
below the temperature a cylinder is kept at.
"""


def settles_below(gas: Gas) -> float:
    """Return the temperature under which CO2 in a compressed mix may turn liquid; 0 for never [K].

    Straight lines between the rows of ``SETTLES_K``; helium and oxygen count as argon.

    Args:
        gas: The gas, not mostly CO2 [-].
    """
    rows = SETTLES_K
    if gas.co2 < rows[0][0]:
        return 0.0
    after = min(bisect_right([share for share, _ in rows], gas.co2), len(rows) - 1)
    (x0, y0), (x1, y1) = rows[after - 1], rows[after]
    return y0 + (y1 - y0) * (gas.co2 - x0) / (x1 - x0)


def content(gas: Gas, gauge_pa: float, water_m3: float, kelvin: float = NORMAL_K) -> float:
    """Return the gas in a cylinder from its gauge, water volume and temperature [m³].

    Source: n = p·V / (Z·R·T); Z by ``compressibility.compressibility``. Not valid with liquid
    CO2 in the cylinder: its gauge reads the same until the liquid is gone.

    Args:
        gas: The gas [-].
        gauge_pa: Pressure on the gauge, zero or more [Pa].
        water_m3: Water volume, above zero [m³].
        kelvin: Temperature of the cylinder, 250 to 330 [K].

    Raises:
        OutOfRangeError: If an argument is out of range, or CO2 is liquid in it.
    """
    require_positive(water_m3=water_m3)
    if is_liquid(gas):
        what = "is liquid in the cylinder; weigh it" if gas.co2 == 1 else "comes in no cylinder"
        raise OutOfRangeError(f"gas = {gas.name} {what}")
    if kelvin < settles_below(gas):
        raise OutOfRangeError(
            f"kelvin = {kelvin:.0f} must be {settles_below(gas):.0f} or more for {gas.name}: "
            "colder, CO2 in it turns liquid"
        )
    if gauge_pa < 0:
        raise OutOfRangeError(f"gauge_pa = {gauge_pa} must be zero or more")
    pressure = gauge_pa + NORMAL_PA
    z = compressibility(gas, pressure, kelvin)
    return water_m3 * pressure / NORMAL_PA * NORMAL_K / kelvin / z


def water_volume(size: CylinderSize) -> float | None:
    """Return the water volume of a size [m³]; None for one without a gauge that tells.

    Of a size sold by content it is derived: the volume that holds its argon at the pressure it is
    filled to.

    Args:
        size: The size [-].
    """
    if size.water_m3 is not None or size.content_m3 is None or size.filled_pa is None:
        return size.water_m3
    return size.content_m3 / content(_ARGON, size.filled_pa, 1.0)


def usable(gas: Gas, gauge_pa: float, water_m3: float, kelvin: float = NORMAL_K) -> float:
    """Return the gas that can be used before the regulator fails to hold the flow [m³].

    Args:
        gas: The gas, not CO2 alone [-].
        gauge_pa: Pressure on the gauge, zero or more [Pa].
        water_m3: Water volume, above zero [m³].
        kelvin: Temperature of the cylinder, 250 to 330 [K].

    Raises:
        OutOfRangeError: As ``content``.
    """
    left = content(gas, min(gauge_pa, RESIDUAL_PA), water_m3, kelvin)
    return content(gas, gauge_pa, water_m3, kelvin) - left


def co2_gas(mass_kg: float) -> float:
    """Return the gas from a mass of CO2 [m³].

    Source: conversion table, 8.76 ft³ a pound at 70 °F.

    Args:
        mass_kg: CO2 in the cylinder, zero or more [kg].

    Raises:
        OutOfRangeError: If the mass is below zero.
    """
    if not mass_kg >= 0:
        raise OutOfRangeError(f"mass_kg = {mass_kg} must be zero or more")
    return mass_kg * CO2_M3_KG


def full_content(size: CylinderSize, gas: Gas) -> float | None:
    """Return the gas in a full cylinder of a size [m³]; None for bulk.

    Args:
        size: The size [-].
        gas: The gas [-].

    Raises:
        OutOfRangeError: If the gas is not sold in such a cylinder.
    """
    if size.co2_kg is not None:
        if gas.co2 != 1:
            raise OutOfRangeError(f"gas = {gas.name} is not sold by weight; {size.name} is for CO2")
        return co2_gas(size.co2_kg)
    if is_liquid(gas) and size.name != "bulk":
        if gas.co2 < 1:
            raise OutOfRangeError(f"gas = {gas.name} is mixed on the spot; use bulk")
        raise OutOfRangeError("gas = CO2 is sold by weight; use 50lb CO2, 20lb CO2 or bulk")
    if size.water_m3 is not None and size.filled_pa is not None:
        return content(gas, size.filled_pa, size.water_m3)
    return size.content_m3


def lasts(gas_m3: float, flow_m3_s: float) -> float:
    """Return how long gas lasts at a flow, in time with the gas on [s].

    Args:
        gas_m3: Gas, zero or more [m³].
        flow_m3_s: Flow, above zero [m³/s].

    Raises:
        OutOfRangeError: If the flow is not above zero.
    """
    require_positive(flow_m3_s=flow_m3_s)
    return gas_m3 / flow_m3_s
