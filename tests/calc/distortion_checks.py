"""Adapters between published forms for distortion and the core.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.heating import angular, camber, shrinkage, welded_part
from beadwright.process.materials import CARBON_STEEL

IN, MM, KIP, KN = 0.0254, 1e-3, 4448.2216152605, 1e3


def across_butt_in(section_in2: float, thickness_in: float, opening_in: float) -> float:
    args = (section_in2 * IN**2, thickness_in * IN, opening_in * IN)
    return shrinkage.across_butt_by_section(*args) / IN


def across_butt_mm(section_mm2: float, thickness_mm: float, opening_mm: float) -> float:
    args = (section_mm2 * MM**2, thickness_mm * MM, opening_mm * MM)
    return shrinkage.across_butt_by_section(*args) / MM


def across_width_in(section_in2: float, thickness_in: float) -> float:
    return shrinkage.across_butt_by_width(section_in2 * IN**2, thickness_in * IN) / IN


def across_width_mm(section_mm2: float, thickness_mm: float) -> float:
    return shrinkage.across_butt_by_width(section_mm2 * MM**2, thickness_mm * MM) / MM


def across_fillets_mm(leg_mm: float, thickness_mm: float, fillets: int, joint: str) -> float:
    lap = {"tee": False, "lap": True}[joint]
    return shrinkage.across_fillets(leg_mm * MM, thickness_mm * MM, fillets, lap) / MM


def across_fillets_in(leg_in: float, thickness_in: float, fillets: int, joint: str) -> float:
    lap = {"tee": False, "lap": True}[joint]
    return shrinkage.across_fillets(leg_in * IN, thickness_in * IN, fillets, lap) / IN


def across_allowance_mm(of: str) -> float:
    low, high = shrinkage.V_ACROSS_M
    return {"fillet": shrinkage.FILLET_ACROSS_M, "v least": low, "v most": high}[of] / MM


def allowance_holds(leg: float, thickness: float) -> str:
    return "holds" if shrinkage.fillet_allowance_holds(leg, thickness) else "does not hold"


def along_allowance_mm(length_m: float, of: str) -> float:
    return shrinkage.along_by_allowance(length_m, {"fillet": True, "butt": False}[of]) / MM


def along_current_in(current_a: float, thickness_in: float, length_in: float) -> float:
    found = shrinkage.along_butt_by_current(current_a, thickness_in * IN, length_in * IN)
    return found / IN


def along_current_mm(current_a: float, thickness_mm: float, length_mm: float) -> float:
    found = shrinkage.along_butt_by_current(current_a, thickness_mm * MM, length_mm * MM)
    return found / MM


def along_section_in(section_in2: float, part_in2: float, length_in: float) -> float:
    args = (section_in2 * IN**2, part_in2 * IN**2, length_in * IN)
    return shrinkage.along_by_section(*args) / IN


def along_section_mm(section_mm2: float, part_mm2: float, length_mm: float) -> float:
    args = (section_mm2 * MM**2, part_mm2 * MM**2, length_mm * MM)
    return shrinkage.along_by_section(*args) / MM


def tendon_kn(heat_kj_mm: float) -> float:
    return shrinkage.tendon_force(heat_kj_mm * 1e6, CARBON_STEEL) / KN


def along_force_mm(force_kn: float, part_mm2: float, length_mm: float) -> float:
    args = (force_kn * KN, part_mm2 * MM**2, length_mm * MM, CARBON_STEEL)
    return shrinkage.along_by_force(*args) / MM


def along_force_in(force_kip: float, part_in2: float, length_in: float) -> float:
    args = (force_kip * KIP, part_in2 * IN**2, length_in * IN, CARBON_STEEL)
    return shrinkage.along_by_force(*args) / IN


def camber_in(section_in2: float, offset_in: float, length_in: float, inertia_in4: float) -> float:
    args = (section_in2 * IN**2, offset_in * IN, length_in * IN, inertia_in4 * IN**4)
    return camber.camber_by_section(*args) / IN


def camber_force_mm(
    force_kn: float, offset_mm: float, length_mm: float, inertia_mm4: float
) -> float:
    args = (force_kn * KN, offset_mm * MM, length_mm * MM, inertia_mm4 * MM**4)
    return camber.camber_by_force(*args, CARBON_STEEL) / MM


def camber_force_in(
    force_kip: float, offset_in: float, length_in: float, inertia_in4: float
) -> float:
    args = (force_kip * KIP, offset_in * IN, length_in * IN, inertia_in4 * IN**4)
    return camber.camber_by_force(*args, CARBON_STEEL) / IN


def short_weld(weld_mm: float, part_mm: float) -> float:
    return camber.bow_of_short_weld(weld_mm * MM, part_mm * MM)


def lift_in(leg_in: float, thickness_in: float, width_in: float, fillets: int) -> float:
    return angular.edge_lift(leg_in * IN, thickness_in * IN, width_in * IN, fillets) / IN


def tilt_rad(lift: float, width: float) -> float:
    return angular.tilt(lift, width)


def passes_factor(passes: int) -> float:
    return angular.passes_factor(passes)


def _of(part: welded_part.WeldedPart, of: str) -> float:
    assert part.sweep_inertia_m4 is not None
    return {
        "area mm2": part.area_m2 / MM**2,
        "camber inertia mm4": part.camber_inertia_m4 / MM**4,
        "camber offset mm": part.camber_offset_m / MM,
        "sweep inertia mm4": part.sweep_inertia_m4 / MM**4,
        "sweep offset mm": part.sweep_offset_m / MM,
        "width mm": part.width_m / MM,
    }[of]


def tee(
    of: str, flange_mm: float, web_mm: float, width_mm: float, height_mm: float, leg_mm: float
) -> float:
    sizes = (flange_mm * MM, web_mm * MM, width_mm * MM, height_mm * MM, leg_mm * MM)
    return _of(welded_part.tee_part(*sizes, 1.0), of)


def corner(
    of: str, flange_mm: float, web_mm: float, width_mm: float, height_mm: float, leg_mm: float
) -> float:
    sizes = (flange_mm * MM, web_mm * MM, width_mm * MM, height_mm * MM, leg_mm * MM)
    return _of(welded_part.corner_part(*sizes, 1.0), of)


def tee_groove(
    of: str, flange_mm: float, web_mm: float, width_mm: float, height_mm: float
) -> float:
    part = welded_part.tee_groove_part(
        flange_mm * MM, web_mm * MM, width_mm * MM, height_mm * MM, 1.0
    )  # fmt: skip
    return _of(part, of)


def lap(of: str, lower_mm: float, upper_mm: float, width_mm: float, leg_mm: float) -> float:
    sizes = (lower_mm * MM, upper_mm * MM, width_mm * MM, leg_mm * MM)
    return _of(welded_part.lap_part(*sizes, 1.0), of)


def butt(of: str, plate_mm: float, width_mm: float) -> float:
    return _of(welded_part.butt_part(plate_mm * MM, width_mm * MM, 1.0), of)
