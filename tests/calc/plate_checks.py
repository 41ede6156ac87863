"""Adapters between printed limits of plate, heat input among them, and the core.

Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from math import inf

from beadwright.process import (
    heat,
    positions,
)
from beadwright.process.materials import CARBON_STEEL
from beadwright.process.positions import Mover

INCH = 0.0254
Window = tuple[float, float]


def inches(text: str) -> float:
    """Return a size printed in inches [m]."""
    top, _, below = text.partition("/")
    return float(top) / float(below or 1) * INCH


def travel_in_min(mover: Mover, position: str) -> Window:
    low, high = positions.TRAVEL_RANGE_M_S[mover, positions.position_of(position).orientation]
    return low / INCH * 60, high / INCH * 60


def thumb_current_a(thickness_in: str) -> float:
    return heat.thickness_current(inches(thickness_in))


def plate_currents_a(thickness_mm: float) -> Window:
    thick = thickness_mm / 1000
    top = heat.burn_through_current(thick, CARBON_STEEL) if thick < CARBON_STEEL.thin_m else inf
    return heat.fusion_current(thick, CARBON_STEEL), top


def fusion_share(thickness_mm: float) -> float:
    thick = thickness_mm / 1000
    return heat.fusion_current(thick, CARBON_STEEL) / heat.thickness_current(thick)


def heat_en_kj_mm(volts: float, current_a: float, travel_mm_min: float) -> float:
    return heat.heat_input_en(volts, current_a, travel_mm_min / 60_000) / 1e6


def heat_kj_in(volts: float, current_a: float, travel_in_min: float) -> float:
    return heat.heat_input(volts, current_a, travel_in_min * INCH / 60) * INCH / 1000


def heat_kj_mm(volts: float, current_a: float, travel_in_min: float) -> float:
    return heat.heat_input(volts, current_a, travel_in_min * INCH / 60) / 1e6


def en_efficiency() -> float:
    return heat.EN_EFFICIENCY


def thin_plate_heat(
    thickness_mm: float, current_a: float, volts: float, travel_cm_min: float
) -> str:
    given = heat.heat_input(volts, current_a, travel_cm_min / 6000)
    ceiling = heat.heat_ceiling(thickness_mm / 1000, CARBON_STEEL)
    return "holds" if given <= ceiling else "falls through"
