"""Adapters for the reference rows of weld strength, in the source's own units."""

from __future__ import annotations

from math import hypot, sqrt

from beadwright.joint import fillets
from beadwright.joint.fillets import throat
from beadwright.strength import base_metal, intermittent, resistance_aisc, resistance_en
from beadwright.strength.bracket_center import bracket_strength
from beadwright.strength.elastic_line import GroupLoad, line_forces, load_at_centroid, worst
from beadwright.strength.instantaneous_center import center_strength
from beadwright.strength.resistance_aisc import Basis
from beadwright.strength.steel_strength import strength_of
from beadwright.strength.strength_page import strength_answer
from beadwright.strength.weld_group import WeldGroup, polyline_group, shaped_group
from beadwright.strength.weld_line import line_properties
from beadwright.units import convert, read

_IN = 0.0254
_KIP = read("1kip", "force")
_KSI = read("1ksi", "stress")
_KIP_IN = _KIP / _IN
_SIXTEENTH = _IN / 16
_E70 = 70 * _KSI


def _c_shape(k: float) -> WeldGroup:
    return shaped_group("c", k, 1.0) if k else shaped_group("line", 1.0, 1.0)


def _coefficient(group: WeldGroup, a: float) -> float:
    """C of the manual: nominal kips for a leg of 1/16 in and a length l of 1 in, E70."""
    unit = resistance_aisc.nominal_strength(throat(_SIXTEENTH), _E70) / _KIP_IN
    load = GroupLoad(py=1.0, mz=a)
    # Cut: the phone's C library may end a power elsewhere, and the search with it.
    return float(f"{center_strength(group, load, unit).factor:.9g}")


def c_shape_coefficient(k: float, a: float) -> float:
    """Table 8-8, angle 0."""
    return _coefficient(_c_shape(k), a)


def two_lines_phi_coefficient(k: float, a: float) -> float:
    """Table 8-38 of the metric manual, angle 0: C with 0.75 in it."""
    if k == 0:
        return 0.75 * 2 * _coefficient(shaped_group("line", 1.0, 1.0), a)
    return 0.75 * _coefficient(shaped_group("lines", k, 1.0), a)


def bracket_phi_coefficient(a: float) -> float:
    """Table 8-38 of the metric manual, load not in the plane of the weld group: 0.75 in it."""
    return 0.75 * _bracket(a)


def bracket_coefficient_of_a_line(a: float) -> float:
    """The same for one line of the two, without the factor."""
    return _bracket(a) / 2


def _bracket(a: float) -> float:
    unit = resistance_aisc.nominal_strength(throat(_SIXTEENTH), _E70) / _KIP_IN
    # A kip down, held out of the joint by a: it turns the top of the weld off.
    found = bracket_strength(shaped_group("lines", 0.3, 1.0), GroupLoad(py=-1.0, mx=a), unit)
    # Cut: the phone's C library may end a power elsewhere, and the search with it.
    return float(f"{found.factor:.9g}")


def c_shape_concentric(k: float) -> float:
    """Table 8-8, angle 0, a = 0."""
    unit = resistance_aisc.nominal_strength(throat(_SIXTEENTH), _E70) / _KIP_IN
    return resistance_aisc.concentric_strength(unit, 2 * k * unit)


def line_property(
    shape: str, width: float, height: float, of: str, points: list[list[float]] | None = None
) -> float:
    """A property of a group as a line, in the unit its sizes are in; ``sx`` is Ix over c."""
    given = tuple((x, y) for x, y in points or [])
    group = polyline_group(given) if given else shaped_group(shape, width, height)
    p = line_properties(group)
    if of == "sx":
        _, bottom, _, top = group.outline
        return p.ix / max(top - p.y, p.y - bottom)
    value = getattr(p, of)
    assert isinstance(value, float)
    return value


def bracket_stress_ksi(point: int) -> float:
    """The C of 4 + 11 + 4 in, leg 1/2 in, 52 kips at 10 degrees, 416 kip-in about the centroid."""
    group = shaped_group("c", 4 * _IN, 11 * _IN)
    p = line_properties(group)
    load = GroupLoad(px=-9.03 * _KIP, py=-51.2 * _KIP, mz=-416.0 * _KIP * _IN)
    forces = line_forces(group, load, p)
    # A to D of the example run from the upper right tip round to the lower right.
    force = forces[{"A": 5, "B": 3, "C": 1, "D": 0}["ABCD"[point]]]
    return force.total / (0.5 * _IN / sqrt(2)) / _KSI


def bracket_reach_in(point: int) -> float:
    """Distance of its points from the centroid [in]."""
    group = shaped_group("c", 4 * _IN, 11 * _IN)
    p = line_properties(group)
    place = group.ends[{"A": 5, "B": 3}["AB"[point]]]
    return hypot(place.x - p.x, place.y - p.y) / _IN


def leg_sixteenths(query: str) -> float:
    """Leg the page says strength needs [1/16 in]."""
    needed = strength_answer(query).legs.needed
    assert needed is not None
    return needed / _SIXTEENTH


def worst_kip_in(shape: str, width: float, height: float, load: list[float]) -> float:
    """Worst force per length under Px, Py at x, y from the group's lower left; kip, in."""
    px, py, x, y = load
    group = shaped_group(shape, width * _IN, height * _IN)
    p = line_properties(group)
    at = x * _IN, y * _IN, 0.0
    forces = line_forces(group, load_at_centroid(p, GroupLoad(px * _KIP, py * _KIP), at), p)
    return forces[worst(forces)].total / _KIP_IN


def shear_stress_mpa(force_n: float, leg_mm: float, width_mm: float, height_mm: float) -> float:
    """Direct shear on the throat of a C-shaped weld."""
    group = shaped_group("c", width_mm / 1000, height_mm / 1000)
    return force_n / (group.length_m * throat(leg_mm / 1000)) / 1e6


def turning_stress_mpa(
    moment_n_m: float, leg_mm: float, width_mm: float, height_mm: float
) -> float:
    """Shear from a moment in the plane at a far tip of a C-shaped weld."""
    group = shaped_group("c", width_mm / 1000, height_mm / 1000)
    force = line_forces(group, GroupLoad(mz=moment_n_m))[0]
    return force.total / throat(leg_mm / 1000) / 1e6


def fillet_kip_in(leg_in: float, ksi: float, angle_deg: float = 0.0, basis: str = "") -> float:
    """Strength of a fillet per inch: nominal, or as a basis lets it be used."""
    nominal = resistance_aisc.nominal_strength(throat(leg_in * _IN), ksi * _KSI, angle_deg)
    if basis:
        nominal = resistance_aisc.available(nominal, _basis(basis))
    return nominal / _KIP_IN


def _basis(text: str) -> Basis:
    return "lrfd" if text == "lrfd" else "asd"


def filler_ksi(wire: str) -> float:
    """Strength by class."""
    return resistance_aisc.filler_strength(wire) / _KSI


def long_weld(length_in: float, leg_in: float) -> float:
    """Long weld factor of AISC."""
    return resistance_aisc.long_weld_factor(length_in * _IN, leg_in * _IN)


def counted_leg_in(leg_in: float, length_in: float) -> float:
    """Leg that counts in a short weld."""
    return resistance_aisc.counted_leg(leg_in * _IN, length_in * _IN) / _IN


def plate_kip_in(way: str, thickness_in: float, ksi: float, basis: str) -> float:
    """Strength of a plate per inch: yield, rupture, pull_yield or pull_rupture."""
    function = getattr(base_metal, f"{way}_strength")
    return float(function(thickness_in * _IN, ksi * _KSI, _basis(basis))) / _KIP_IN


def plate_en_kn_mm(way: str, thickness_mm: float, mpa: float) -> float:
    """Strength of a plate per millimeter by EN 1993-1-1: yield or pull."""
    function = getattr(base_metal, f"{way}_strength_en")
    return float(function(thickness_mm / 1000, mpa * 1e6)) / 1e6


def together(pull: float, shear: float, pull_strength: float, shear_strength: float) -> float:
    """Pull and shear together."""
    return base_metal.together(pull, shear, pull_strength, shear_strength)


def simplified_kn_mm(throat_mm: float, fu_mpa: float, correlation: float) -> float:
    """EN simplified, per millimeter."""
    return resistance_en.simplified_strength(throat_mm / 1000, fu_mpa * 1e6, correlation) / 1e6


def directional_kn_mm(way: str, throat_mm: float, fu_mpa: float, correlation: float) -> float:
    """EN directional, per millimeter: force along, across or pulling alone."""
    forces = {"along": (1e6, 0.0, 0.0), "across": (0.0, 1e6, 0.0), "pull": (0.0, 0.0, 1e6)}[way]
    return 1 / resistance_en.directional_use(*forces, throat_mm / 1000, fu_mpa * 1e6, correlation)


def effective_mm(length_mm: float, throat_mm: float, ends_full: bool = False) -> float:
    """Length that counts by EN."""
    length, throat_m = length_mm / 1000, throat_mm / 1000
    return resistance_en.effective_length(length, throat_m, ends_full=ends_full) * 1000


def least_length_mm(throat_mm: float) -> float:
    """Least effective length by EN."""
    return resistance_en.least_length_en(throat_mm / 1000) * 1000


def long_weld_en(length_mm: float, throat_mm: float) -> float:
    """Long lap factor of EN."""
    return resistance_en.long_weld_factor(length_mm / 1000, throat_mm / 1000)


def steel_ksi(grade: str, of: str, thickness: str) -> float:
    """Yield or tensile strength of a grade [ksi]."""
    fy, fu = strength_of(grade).at(read(thickness, "length"))
    return (fy if of == "fy" else fu) / _KSI


def steel_mpa(grade: str, of: str, thickness: str) -> float:
    """Yield or tensile strength of a grade [MPa]."""
    fy, fu = strength_of(grade).at(read(thickness, "length"))
    return (fy if of == "fy" else fu) / 1e6


def correlation(grade: str) -> float:
    """βw of a grade."""
    found = strength_of(grade).correlation
    assert found is not None
    return found


def matching_ksi(grade: str) -> float:
    """Filler that matches a grade by D1.1."""
    found = strength_of(grade).matching
    assert found is not None
    return found / _KSI


def least_segment_in(leg_in: float) -> float:
    """Shortest intermittent segment."""
    return convert(fillets.least_segment(leg_in * _IN), "length", "us")


def widest_gap_mm(thinner_mm: float) -> float:
    """Widest clear gap, EN."""
    return intermittent.widest_gap_en(thinner_mm / 1000) * 1000


def widest_pitch_in(thinner_in: float) -> float:
    """Widest spacing, D1.1."""
    return intermittent.widest_pitch_aisc(thinner_in * _IN) / _IN


def pitch_in(asked: float, strength: float, segment_in: float) -> float:
    """Pitch of intermittent segments; kip/in and in."""
    return intermittent.pitch_for(asked * _KIP_IN, strength * _KIP_IN, segment_in * _IN) / _IN
