"""Laid metal: how much of the wire ends up in the joint, and the bead it makes."""

from __future__ import annotations

from beadwright.errors import require_positive
from beadwright.process.gases import Gas
from beadwright.process.materials import Material
from beadwright.process.transfer import Transfer
from beadwright.process.wires import Wire


def deposition_efficiency(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[float, float, float]:
    """Return low, typical and high deposition efficiency: laid metal over wire used [-].

    A wire with the shop's own efficiency moves the typical by it and takes its band.

    Source: welding lecture sheet (second-hand): short circuit 90-93 %, globular 88-90 %, spray and
    pulsed 98 %; handbook list by gas: 98/2 98 %, 75/25 96 %, CO2 93 %: so solid wire in spray loses
    0.1 % for each 1 % CO2, and in short circuit runs from the argon figure at 25 % CO2 to CO2's.
    Metal-cored: published sheet 88-92 % (short-arc rows 88, 89, 91 %), handbook list 93 %.
    Flux-cored, gas-shielded: handbook list 86 %, web range 82-88 %, class E70T-1 83-88 %; 75/25
    spatters less than CO2 (common practice). The sources differ by as much as the band.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The transfer mode [-].
    """
    published = _published_efficiency(wire, gas, transfer)
    own = wire.own
    if own is None or own.efficiency is None or own.spread is None:
        return published
    typical = min(1.0, published[1] * own.efficiency)
    return typical * (1 - own.spread), typical, min(1.0, typical * (1 + own.spread))


def _published_efficiency(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[float, float, float]:
    if wire.traits.slag:
        return (0.82, 0.85, 0.88) if gas.co2 == 1 else (0.83, 0.87, 0.90)
    if wire.traits.cored:
        return (0.87, 0.89, 0.92) if transfer == "short" else (0.88, 0.91, 0.95)
    if transfer in ("spray", "pulse"):
        return 0.95, max(0.955, 0.98 - 0.1 * gas.co2), 0.98
    if transfer == "globular":
        return 0.88, 0.90, 0.93
    rich = max(0.0, (gas.co2 - 0.25) / 0.75)
    return 0.90 - 0.02 * rich, 0.93 - 0.02 * rich, 0.96 - 0.03 * rich


def laid_rate(wire: Wire, feed_m_s: float, efficiency: float) -> float:
    """Return the deposition rate [kg/s].

    Source: handbook form lb/h = 13.1·D²·feed·efficiency (in, in/min). Its 13.1 implies a density
    of 0.278 lb/in³, 2 % below steel; here it is linear mass × feed × efficiency.

    Args:
        wire: The wire [-].
        feed_m_s: Wire feed, above zero [m/s].
        efficiency: Deposition efficiency, above 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(feed_m_s=feed_m_s, efficiency=efficiency)
    return wire.linear_mass_kg_m * feed_m_s * efficiency


def bead_section(laid_kg_s: float, travel_m_s: float, material: Material) -> float:
    """Return the section of the bead laid [m²].

    Source: conservation of mass.

    Args:
        laid_kg_s: Deposition rate, above zero [kg/s].
        travel_m_s: Travel, above zero [m/s].
        material: What is laid [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(laid_kg_s=laid_kg_s, travel_m_s=travel_m_s)
    return laid_kg_s / (material.density_kg_m3 * travel_m_s)


def travel_for_section(laid_kg_s: float, section_m2: float, material: Material) -> float:
    """Return the travel that lays a section [m/s]; the inverse of ``bead_section``.

    Args:
        laid_kg_s: Deposition rate, above zero [kg/s].
        section_m2: Bead section, above zero [m²].
        material: What is laid [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(laid_kg_s=laid_kg_s, section_m2=section_m2)
    return laid_kg_s / (material.density_kg_m3 * section_m2)


def feed_for_travel(wire: Wire, travel_m_s: float, section_m2: float, efficiency: float) -> float:
    """Return the wire feed that lays a section at a travel [m/s].

    Args:
        wire: The wire [-].
        travel_m_s: Travel, above zero [m/s].
        section_m2: Bead section, above zero [m²].
        efficiency: Deposition efficiency, above 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(travel_m_s=travel_m_s, section_m2=section_m2, efficiency=efficiency)
    laid = travel_m_s * section_m2 * wire.material.density_kg_m3
    return laid / (wire.linear_mass_kg_m * efficiency)
