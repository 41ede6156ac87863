"""Adapters for the reference rows of plates pulled through welds, in the source's own units."""

from __future__ import annotations

from beadwright.strength import tension_members
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
