"""Adapters for the reference rows of plates pulled through welds, in the source's own units."""

from __future__ import annotations

from math import cos, radians, sin

from beadwright.process.wires import wire_of
from beadwright.strength import groove_strength, plug_strength, skew_sides, tension_members
from beadwright.strength.base_metal import together
from beadwright.strength.resistance_aisc import Basis
from beadwright.units import read

_IN = 0.0254
_KIP = read("1kip", "force")
_KSI = read("1ksi", "stress")


def _basis(text: str) -> Basis:
    return "lrfd" if text == "lrfd" else "asd"


def yielding_kip(width_in: float, thickness_in: float, ksi: float, basis: str) -> float:
    """Pull at which a flat bar yields."""
    area = width_in * thickness_in * _IN**2
    return tension_members.gross_yielding(area, ksi * _KSI, _basis(basis)) / _KIP


def tearing_kip(width_in: float, thickness_in: float, ksi: float, lag: float, basis: str) -> float:
    """Pull at which a flat bar tears."""
    area = width_in * thickness_in * _IN**2
    return tension_members.net_rupture(area, ksi * _KSI, lag, _basis(basis)) / _KIP


def edge_lag(length_in: float, width_in: float, off_in: float) -> float:
    """U of welds along both edges."""
    return tension_members.lag_of_edge_welds(length_in * _IN, width_in * _IN, off_in * _IN)


def mixed_lag(length_in: float, off_in: float) -> float:
    """U of welds along and across."""
    return tension_members.lag_of_mixed_welds(length_in * _IN, off_in * _IN)


def block_kip(
    shear_in2: float, tension_in2: float, fy_ksi: float, fu_ksi: float, basis: str
) -> float:
    """Pull at which a block tears out."""
    found = tension_members.block_shear(
        shear_in2 * _IN**2, tension_in2 * _IN**2, fy_ksi * _KSI, fu_ksi * _KSI, _basis(basis)
    )
    return found / _KIP


def spread_in(width_in: float, length_in: float) -> float:
    """Whitmore width."""
    return tension_members.spread_width(width_in * _IN, length_in * _IN) / _IN


def yielding_kn_en(width_mm: float, thickness_mm: float, mpa: float) -> float:
    """Design pull at which a flat bar yields by EN 1993-1-1."""
    area = width_mm * thickness_mm / 1e6
    return tension_members.gross_yielding_en(area, mpa * 1e6) / 1000


def groove_kip_in(way: str, throat_in: float, ksi: float, basis: str) -> float:
    """Strength of a groove cut part way per inch: pull or shear."""
    function = getattr(groove_strength, f"groove_{way}")
    return float(function(throat_in * _IN, ksi * _KSI, _basis(basis))) / _KIP * _IN


def plate_at_groove_kip_in(way: str, throat_in: float, ksi: float, basis: str) -> float:
    """Strength of the plate over a groove's throat per inch: pull or shear."""
    pull, shear = groove_strength.plate_at_groove(throat_in * _IN, ksi * _KSI, _basis(basis))
    return (pull if way == "pull" else shear) / _KIP * _IN


def groove_length_in(
    kip: float, angle_deg: float, throat_in: float, ksi: float, basis: str
) -> float:
    """Length of a groove cut part way that carries a force at an angle to it."""
    pull, shear = (groove_kip_in(way, throat_in, ksi, basis) for way in ("pull", "shear"))
    turn = radians(angle_deg)
    return together(kip * sin(turn), kip * cos(turn), pull, shear)


def groove_en_kn_mm(way: str, throat_mm: float, fu_mpa: float, correlation: float) -> float:
    """Part-way groove by the directional method of EN, force along, across or pulling alone."""
    forces = {"along": (1e6, 0.0, 0.0), "across": (0.0, 1e6, 0.0), "pull": (0.0, 0.0, 1e6)}[way]
    throat = throat_mm / 1000
    return 1 / groove_strength.groove_use_en(*forces, throat, fu_mpa * 1e6, correlation)


def sure_depth_mm(depths_mm: list[float]) -> float:
    """Throat of a part-way groove by ENV 1993-1-1."""
    return groove_strength.sure_depth(d / 1000 for d in depths_mm) * 1000


def plug_kip(hole_in: float, ksi: float, basis: str, slot_in: float | None = None) -> float:
    """Shear a plug or slot takes."""
    slot = None if slot_in is None else slot_in * _IN
    area = plug_strength.faying_area(hole_in * _IN, slot)
    return plug_strength.plug_shear(area, ksi * _KSI, _basis(basis)) / _KIP


def plug_kn_en(hole_mm: float, fu_mpa: float, correlation: float) -> float:
    """Design shear a plug takes by EN."""
    area = plug_strength.faying_area(hole_mm / 1000)
    return plug_strength.plug_shear_en(area, fu_mpa * 1e6, correlation) / 1000


def plug_limit_mm(of: str, plate_mm: float) -> float:
    """Least hole or least fill of a plug by EN."""
    return float(getattr(plug_strength, f"least_{of}_en")(plate_mm / 1000)) * 1000


def spacing_in(way: int, hole_in: float, slot_in: float | None = None) -> float:
    """Least spacing: 0 side by side, 1 end to end."""
    slot = None if slot_in is None else slot_in * _IN
    return plug_strength.least_spacing(hole_in * _IN, slot)[way] / _IN


def laid_throat(laid: float, angle_deg: float) -> float:
    """Throat of legs laid along two plates."""
    return skew_sides.throat_of_laid(laid, angle_deg)


def root_loss_in(angle_deg: float, wire: str, out_of_position: bool) -> float:
    """Z loss; -1 where the code has none to give."""
    lost = skew_sides.root_loss(angle_deg, wire_of(wire, "0.045in"),
                                out_of_position=out_of_position)  # fmt: skip
    return -1.0 if lost is None else lost / _IN


def tearing_kn_en(width_mm: float, thickness_mm: float, mpa: float) -> float:
    """Design pull at which a flat bar tears by EN 1993-1-1."""
    return tension_members.net_rupture_en(width_mm * thickness_mm / 1e6, mpa * 1e6) / 1000
