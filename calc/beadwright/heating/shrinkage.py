"""How much the parts of a weld shrink: across it and along it.

Each function is one published form. They differ by a factor of two and more; ``distortion`` shows
them together.
"""

from __future__ import annotations

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M
from beadwright.process.materials import Material

TEE_M, LAP_M = 1.02e-3, 1.52e-3
"""Transverse shrinkage of two fillets whose leg is the thickness: tee, lap [m].

Source: AWS Welding Handbook, C1 = 0.04 in and C2 = 0.06 in; from memory.
"""

FILLET_ACROSS_M = 0.8e-3
"""Shop allowance across a fillet, leg up to 3/4 of the plate [m]."""

V_ACROSS_M = (1.5e-3, 3.0e-3)
"""Shop allowance across a 60° V, least and most [m]."""

FILLET_ALONG, BUTT_ALONG = 0.8e-3 / 3, 3e-3 / 3
"""Shop allowance along a fillet and a butt: 0.8 and 3 mm in 3 m [m/m].

Source of the allowances: a welding institute's published rule of thumb; found.
"""

KING_M_PER_A = 0.12e-5 * INCH_M
"""Longitudinal shrinkage × thickness over current and length, 0.12 in per 100 000 A [m/A]."""

GUYOT = 0.025
"""Longitudinal shrinkage per length over weld section / part section [-]."""


def across_butt_by_section(section_m2: float, thickness_m: float, opening_m: float) -> float:
    """Return the transverse shrinkage of a butt after Spraragen and Ettinger [m].

    Source: Welding Journal 1950: 0.2·Aw/t + 0.05·d; from memory.

    Args:
        section_m2: Section of weld metal, above zero [m²].
        thickness_m: Plate, above zero [m].
        opening_m: Root opening, zero or more [m].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(section_m2=section_m2, thickness_m=thickness_m)
    if not 0 <= opening_m < float("inf"):
        raise OutOfRangeError(f"opening_m = {opening_m} must be zero or more")
    return 0.2 * section_m2 / thickness_m + 0.05 * opening_m


def across_butt_by_width(section_m2: float, thickness_m: float) -> float:
    """Return the transverse shrinkage of a butt after Blodgett: a tenth of its mean width [m].

    Source: Design of Welded Structures and procedure handbook: 0.10·Aw/t; found second-hand.

    Args:
        section_m2: Section of weld metal, above zero [m²].
        thickness_m: Plate, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(section_m2=section_m2, thickness_m=thickness_m)
    return 0.10 * section_m2 / thickness_m


def across_fillets(leg_m: float, thickness_m: float, fillets: int, lap: bool = False) -> float:
    """Return the transverse shrinkage of continuous fillets on a tee or lap [m].

    Source: AWS Welding Handbook, two fillets: C·leg/thickness, C = 1.02 mm (tee), 1.52 mm (lap);
    from memory. One fillet is taken as half of it.

    Args:
        leg_m: Leg, above zero [m].
        thickness_m: The plate that shrinks, above zero [m].
        fillets: 1 or 2 [-].
        lap: True for a lap [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(leg_m=leg_m, thickness_m=thickness_m)
    if fillets not in (1, 2):
        raise OutOfRangeError(f"fillets = {fillets} must be 1 or 2")
    return (LAP_M if lap else TEE_M) * leg_m / thickness_m * fillets / 2


def fillet_allowance_holds(leg_m: float, thickness_m: float) -> bool:
    """Return whether the shop allowance across a fillet holds: leg up to 3/4 of the plate.

    Source: a welding institute's published rule of thumb; found.

    Args:
        leg_m: Leg, above zero [m].
        thickness_m: The plate, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, thickness_m=thickness_m)
    return leg_m <= 3 / 4 * thickness_m * (1 + 1e-9)


def along_butt_by_current(current_a: float, thickness_m: float, length_m: float) -> float:
    """Return the longitudinal shrinkage of a butt after King [m].

    Source: AWS Welding Handbook after King (1944): 0.12·I·L/(100 000·t), inches; from memory.

    Args:
        current_a: Current, above zero [A].
        thickness_m: Plate, above zero [m].
        length_m: Length of weld, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(current_a=current_a, thickness_m=thickness_m, length_m=length_m)
    return KING_M_PER_A * current_a * length_m / thickness_m


def along_by_section(section_m2: float, part_m2: float, length_m: float) -> float:
    """Return the longitudinal shrinkage of a welded part after Guyot [m].

    Source: Guyot (1947) in Masubuchi: 25·Aw/Ap thousandths, Ap at least 20 times Aw; from memory.

    Args:
        section_m2: Section of weld metal, above zero [m²].
        part_m2: Section of the part, above zero [m²].
        length_m: Length of weld, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(section_m2=section_m2, part_m2=part_m2, length_m=length_m)
    return GUYOT * section_m2 / part_m2 * length_m


def tendon_force(heat_j_m: float, material: Material) -> float:
    """Return the force a weld shrinks with [N].

    Source: White, Leggatt and Dwight: in proportion to the net heat, by the material's share; from
    memory. Of several passes on one another the hottest counts, not their sum.

    Args:
        heat_j_m: Net heat input of the hottest pass, arc efficiency counted; above zero [J/m].
        material: What is welded [-].

    Raises:
        OutOfRangeError: If it is not above zero.
    """
    require_positive(heat_j_m=heat_j_m)
    return material.tendon_n_per_j_m * heat_j_m


def along_by_force(force_n: float, part_m2: float, length_m: float, material: Material) -> float:
    """Return the longitudinal shrinkage of a part under the force of its welds [m].

    Source: Hooke's law with the tendon force.

    Args:
        force_n: Force, above zero [N].
        part_m2: Section of the part, above zero [m²].
        length_m: Length of weld, above zero [m].
        material: What the part is made of [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(force_n=force_n, part_m2=part_m2, length_m=length_m)
    return force_n * length_m / (material.modulus_pa * part_m2)


def along_by_allowance(length_m: float, fillet: bool) -> float:
    """Return the shop allowance along a weld [m].

    Source: a welding institute's published rule of thumb: fillet 0.8 mm, butt 3 mm in 3 m; found.

    Args:
        length_m: Length of weld, above zero [m].
        fillet: True for a fillet, False for a butt [-].

    Raises:
        OutOfRangeError: If the length is not above zero.
    """
    require_positive(length_m=length_m)
    return (FILLET_ALONG if fillet else BUTT_ALONG) * length_m
