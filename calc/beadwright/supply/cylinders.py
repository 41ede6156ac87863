"""What is in a gas cylinder and how long it lasts; volumes at 70 °F and 1 atm, as sold.

Flow is counted in the same way: a flowmeter's cubic foot is at 70 °F and 1 atm.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.errors import OutOfRangeError, UnknownEntryError, require_positive
from beadwright.process.compressibility import NORMAL_K, NORMAL_PA, compressibility
from beadwright.process.gases import Gas

_CUBIC_FOOT_M3 = 0.3048**3
_POUND_KG = 0.45359237

CO2_M3_KG = 8.76 * _CUBIC_FOOT_M3 / _POUND_KG
"""Gas from a kilogram of CO2, 70 °F and 1 atm [m³/kg]. Source: conversion table, 8.76 ft³/lb."""

RESIDUAL_PA = 50 * 6894.757293168361
"""Gauge pressure below which a regulator no longer holds the flow [Pa]. Common practice, 50 psi."""


@dataclass(frozen=True, slots=True)
class CylinderSize:
    """A size of cylinder: by its content, by water volume and filling pressure, or by weight.

    Attributes:
        name: Its name.
        content_m3: Gas in a full one, where the size is sold by content [m³].
        water_m3: Water volume, where it is sold by that [m³].
        filled_pa: Gauge pressure of a full one [Pa].
        co2_kg: CO2 in a full one, where it is sold by weight [kg].
    """

    name: str
    content_m3: float | None = None
    water_m3: float | None = None
    filled_pa: float | None = None
    co2_kg: float | None = None


def _sizes() -> dict[str, CylinderSize]:
    found = [CylinderSize(f"{n}ft3", content_m3=n * _CUBIC_FOOT_M3)
             for n in (330, 250, 122, 80, 55, 40, 22)]  # fmt: skip
    found += [CylinderSize(f"{n}L", water_m3=n / 1000, filled_pa=200e5) for n in (50, 20, 10)]
    found += [CylinderSize(f"{n}lb CO2", co2_kg=n * _POUND_KG) for n in (50, 20)]
    found.append(CylinderSize("bulk"))
    return {size.name: size for size in found}


CYLINDERS: Mapping[str, CylinderSize] = MappingProxyType(_sizes())
"""Sizes by name. Source: cylinder chart, argon by size class; 50, 20, 10 L at 200 bar and CO2 by
weight: common practice."""


def cylinder_of(name: str) -> CylinderSize:
    """Return a size of cylinder by its name.

    Args:
        name: A key of ``CYLINDERS``, whatever its case [-].

    Raises:
        UnknownEntryError: If it is not in the table.
    """
    for known, size in CYLINDERS.items():
        if known.lower() == name.strip().lower().replace("³", "3"):
            return size
    raise UnknownEntryError(f"{name} is not in the table; it has {', '.join(CYLINDERS)}")


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
