"""Fillet sizes the codes ask for, by thickness, edge and gap."""

from __future__ import annotations

from math import sqrt

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL, figure_up_to

MINIMUM_LEG_M = (
    (1 / 4 * INCH_M, 1 / 8 * INCH_M),
    (1 / 2 * INCH_M, 3 / 16 * INCH_M),
    (3 / 4 * INCH_M, 1 / 4 * INCH_M),
    (float("inf"), 5 / 16 * INCH_M),
)
"""Thinner part up to [m], least leg [m]. Source: AISC 360-16 Table J2.4, inch sizes."""

MINIMUM_LEG_METRIC_M = (
    (1 / 4 * INCH_M, 0.003),
    (0.013, 0.005),
    (3 / 4 * INCH_M, 0.006),
    (float("inf"), 0.008),
)
"""The same in the table's metric sizes. Source: AISC 360-16 Table J2.4: to 6, 13, 19 mm. A plate of
1/4 or 3/4 in stays in the row of its twin, 6 or 19 mm."""

METRIC_SIZES_M = (
    (1 / 8 * INCH_M, 0.003),
    (3 / 16 * INCH_M, 0.005),
    (1 / 4 * INCH_M, 0.006),
    (5 / 16 * INCH_M, 0.008),
    (3 / 8 * INCH_M, 0.010),
    (1 / 2 * INCH_M, 0.012),
)
"""Sizes of fillets in inches and what the codes print beside them in millimeters [m, m]. Source:
AWS D1.1:2020 Tables 5.1 and 7.7."""

REINFORCED_OVER_FLAT = 1.2
"""Section of a fillet as welded over the flat-faced triangle [-].

Source: weld-metal weight tables, reinforced fillets against flat ones of the same leg.
"""


def minimum_leg(thinner_m: float, *, metric: bool = False) -> float:
    """Return the least fillet leg for the thinner part joined [m].

    Source: AISC 360-16 Table J2.4; AWS D1.1:2020 Table 7.7 with a low-hydrogen process, as gas
    metal arc is. Need not exceed the thinner part (D1.1, note to the table).

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].
        metric: True for the table's metric sizes, 3, 5, 6 and 8 mm.

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    rows = MINIMUM_LEG_METRIC_M if metric else MINIMUM_LEG_M
    return min(figure_up_to(rows, thinner_m), thinner_m)


def printed_size(leg_m: float, *, metric: bool) -> float:
    """Return a size of the codes as they print it: in inches, or its twin in millimeters [m].

    Args:
        leg_m: The size in inches, of ``METRIC_SIZES_M`` [m].
        metric: True for millimeters.

    Raises:
        OutOfRangeError: If the codes have no such size.
    """
    for inch, twin in METRIC_SIZES_M:
        if abs(leg_m - inch) < REL_TOL:
            return twin if metric else inch
    raise OutOfRangeError(f"leg_m = {leg_m} is no size of the codes")


def largest_edge_leg(edge_m: float, *, metric: bool = False) -> float:
    """Return the largest fillet along the edge of a plate [m].

    Source: AISC 360-16 J2.2b(b): the thickness below 1/4 in (6 mm); from there, 1/16 in (2 mm)
    less.

    Args:
        edge_m: Thickness of the plate whose edge is welded, above zero [m].
        metric: True for the code's metric sizes.

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(edge_m=edge_m)
    thick, less = (0.006, 0.002) if metric else (1 / 4 * INCH_M, 1 / 16 * INCH_M)
    return edge_m if edge_m < thick - REL_TOL else edge_m - less


def gapped_leg(leg_m: float, gap_m: float) -> float:
    """Return the leg to weld so that a gap takes nothing from the throat [m].

    Source: AWS D1.1 7.21.1: up to 1/16 in nothing; over 1/16 to 3/16 in the leg grows by the
    gap; a wider gap is not allowed, except on plate of 3 in and over.

    Args:
        leg_m: Leg wanted, above zero [m].
        gap_m: Root gap, zero or more [m].

    Raises:
        OutOfRangeError: If the leg is not above zero, or the gap negative or over 3/16 in.
    """
    require_positive(leg_m=leg_m)
    if not 0 <= gap_m <= 3 / 16 * INCH_M + REL_TOL:
        raise OutOfRangeError(f"gap_m = {gap_m} must be 0 to {3 / 16 * INCH_M:.5f} (3/16 in)")
    return leg_m if gap_m <= 1 / 16 * INCH_M + REL_TOL else leg_m + gap_m


def throat(leg_m: float) -> float:
    """Return the throat of an equal-leg fillet at 90° [m].

    Source: geometry; ISO 2553: a = z/√2.

    Args:
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If the leg is not above zero.
    """
    require_positive(leg_m=leg_m)
    return leg_m / sqrt(2)


def flat_section(leg_m: float) -> float:
    """Return the section of a flat-faced equal-leg fillet [m²].

    Source: geometry: ½·z².

    Args:
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If the leg is not above zero.
    """
    require_positive(leg_m=leg_m)
    return leg_m**2 / 2


def face_section(face_m: float, height_m: float) -> float:
    """Return the section under a rounded face, taken as a parabola [m²].

    Source: geometry: two thirds of width × height.

    Args:
        face_m: Width of the face, zero or more [m].
        height_m: Height of the crown, zero or more [m].
    """
    return 2 / 3 * face_m * height_m


def usual_crown(flat_m2: float, face_m: float, over_flat: float = REINFORCED_OVER_FLAT) -> float:
    """Return the convexity of any fillet as welded [m].

    Source: the crown that makes the section ``over_flat`` times the flat one, held to
    ``largest_convexity``.

    Args:
        flat_m2: Section of the flat-faced fillet, above zero [m²].
        face_m: Width of its face, above zero [m].
        over_flat: Section as welded over the flat one, 1 or more [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(flat_m2=flat_m2, face_m=face_m)
    extra = (over_flat - 1) * flat_m2
    return min(extra / face_section(face_m, 1.0), largest_convexity(face_m))


WIDE_FACE_M = 1.0 * INCH_M
"""Width of a face from which the last step of ``largest_convexity`` holds [m]. Source: AWS D1.1
Table 7.9 (from memory)."""


def largest_convexity(face_m: float) -> float:
    """Return the most convexity the code accepts [m].

    Source: AWS D1.1 Table 7.9 (second-hand; the last step from memory): face to 5/16 in 1/16 in;
    over 5/16 in to under 1 in 1/8 in; from 1 in 3/16 in.

    Args:
        face_m: Width of the weld face, above zero [m].

    Raises:
        OutOfRangeError: If the face is not above zero.
    """
    require_positive(face_m=face_m)
    if face_m <= 5 / 16 * INCH_M + REL_TOL:
        return 1 / 16 * INCH_M
    return 3 / 16 * INCH_M if is_wide_face(face_m) else 1 / 8 * INCH_M


def is_wide_face(face_m: float) -> bool:
    """Return whether a face is as wide as ``WIDE_FACE_M``, where its limit is from memory.

    Args:
        face_m: Width of the weld face, above zero [m].
    """
    return face_m >= WIDE_FACE_M - REL_TOL


def convexity_source(face_m: float) -> str:
    """Return the source id of what ``largest_convexity`` says of a face.

    Args:
        face_m: Width of the weld face, above zero [m].
    """
    return "aws-d1.1-convexity-wide" if is_wide_face(face_m) else "aws-d1.1-convexity"


def least_length(leg_m: float) -> float:
    """Return the shortest fillet that counts with its whole leg [m].

    Source: AISC 360 J2.2b: four times the leg; of a shorter fillet a quarter of the length counts
    as leg.

    Args:
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If the leg is not above zero.
    """
    require_positive(leg_m=leg_m)
    return 4 * leg_m


def least_segment(leg_m: float) -> float:
    """Return the shortest piece of an intermittent fillet [m].

    Source: AISC 360 J2.2b: four times the leg, and at least 1-1/2 in.

    Args:
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If the leg is not above zero.
    """
    return max(least_length(leg_m), 3 / 2 * INCH_M)


def least_lap(thinner_m: float) -> float:
    """Return how far the plates of a lap must cover each other [m].

    Source: AISC 360 J2.2b: five times the thinner part, and at least 1 in.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    return max(5 * thinner_m, 1.0 * INCH_M)


def leg_of_section(section_m2: float, over_flat: float = REINFORCED_OVER_FLAT) -> float:
    """Return the leg that a laid section fills [m].

    Args:
        section_m2: Section laid, above zero [m²].
        over_flat: Section as welded over the flat triangle, 1 or more [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(section_m2=section_m2, over_flat=over_flat)
    return sqrt(2 * section_m2 / over_flat)
