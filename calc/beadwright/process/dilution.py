"""Dilution: the share of a bead that came from the plates."""

from __future__ import annotations

from math import sqrt

from beadwright.errors import require_positive


def dilution(melted_m2: float, laid_m2: float) -> float:
    """Return the share of base metal in the bead [-].

    Source: welding glossary, dilution: melted base section over the whole section.

    Args:
        melted_m2: Section melted out of the plates, above zero [m²].
        laid_m2: Section laid from the wire, above zero [m²].

    Raises:
        OutOfRangeError: If a section is not above zero.
    """
    require_positive(melted_m2=melted_m2, laid_m2=laid_m2)
    return melted_m2 / (melted_m2 + laid_m2)


def melted_by_fillet(leg_m: float, root_m: float) -> float:
    """Return the section a fillet melts out of both plates [m²].

    Fusion lines run straight from each toe to the point the root reaches on the bisector: two
    triangles of base ``leg`` and height ``root / √2``. A real fusion line bends outward between
    them.

    Source: geometry.

    Args:
        leg_m: Leg of the bead, above zero [m].
        root_m: Depth past the root along the bisector, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, root_m=root_m)
    return leg_m * root_m / sqrt(2)
