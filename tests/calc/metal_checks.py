"""Adapters between printed weights of weld metal and wire and the core.

Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from math import radians as to_radians
from math import sqrt, tan

from beadwright.joint import fillet_joints, fillets, groove_joints, joints
from beadwright.process import wires
from beadwright.process.materials import CARBON_STEEL

INCH = 0.0254
FOOT = 0.3048
POUND = 0.45359237
TABLE_LB_IN3 = 0.283
"""Density the weld-metal weight tables state [lb/in³]."""


def inches(text: str) -> float:
    """Return a size printed in inches [m]."""
    top, _, below = text.partition("/")
    return float(top) / float(below or 1) * INCH


def _lb_ft(section_m2: float) -> float:
    return section_m2 / INCH**2 * 12 * TABLE_LB_IN3


def flat_fillet_lb_ft(leg_in: str) -> float:
    return _lb_ft(fillets.flat_section(inches(leg_in)))


def flat_fillet_kg_m(leg_in: str) -> float:
    return fillets.flat_section(inches(leg_in)) * CARBON_STEEL.density_kg_m3


def wire_needed_lb_ft(leg_in: str, efficiency: float) -> float:
    return _lb_ft(fillets.flat_section(inches(leg_in))) / efficiency


def reinforced_fillet_g_mm(leg_in: str) -> float:
    leg = inches(leg_in)
    crown = fillets.usual_crown(fillets.flat_section(leg), leg * sqrt(2))
    shape = fillet_joints.fillet_joint("tee", 0.01, 0.01, leg, leg, crown)
    return shape.section_m2 * CARBON_STEEL.density_kg_m3


def bevel_triangle_lb_ft(thickness_in: str, bevel_deg: float) -> float:
    deep = inches(thickness_in)
    wide = deep * tan(to_radians(bevel_deg))
    return _lb_ft(joints.polygon_area(((0.0, 0.0), (wide, deep), (0.0, deep))))


def square_groove_lb_ft(thickness_in: str, gap_in: str) -> float:
    deep = inches(thickness_in)
    groove = groove_joints.Groove("square", 0.0, inches(gap_in), deep)
    return _lb_ft(groove_joints.groove_joint(groove, deep, deep, 0.0).section_m2)


def v_groove_lb_ft(thickness_in: str, gap_in: str, bevel_deg: float) -> float:
    triangle = bevel_triangle_lb_ft(thickness_in, bevel_deg)
    return square_groove_lb_ft(thickness_in, gap_in) + 2 * triangle


def inches_per_pound(diameter_in: float) -> float:
    return POUND / wires.solid_linear_mass(diameter_in * INCH, CARBON_STEEL) / INCH


def solid_wire_g_m(diameter_mm: float) -> float:
    return wires.solid_linear_mass(diameter_mm / 1000, CARBON_STEEL) * 1000


def meters_per_kilogram(diameter_mm: float) -> float:
    return 1 / wires.solid_linear_mass(diameter_mm / 1000, CARBON_STEEL)


def wire_lb_per_1000_in(wire: str, size: str) -> float:
    return wires.wire_of(wire, size).linear_mass_kg_m / POUND * 1000 * INCH


def wire_g_m(wire: str, size: str) -> float:
    return wires.wire_of(wire, size).linear_mass_kg_m * 1000


def diameter_in(size: str) -> float:
    return wires.INCH_SIZES_M[size] / INCH
