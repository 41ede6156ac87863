"""Intermittent fillets: the length of a segment and the pitch from one to the next."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M


@dataclass(frozen=True, slots=True)
class Intermittent:
    """Segments along a seam.

    Attributes:
        segment_m: Length of a segment [m].
        pitch_m: Middle of one segment to middle of the next [m].
    """

    segment_m: float
    pitch_m: float

    @property
    def share(self) -> float:
        """Welded over whole length [-]."""
        return self.segment_m / self.pitch_m


def widest_pitch_aisc(thinner_m: float) -> float:
    """Return the widest spacing of segments that make plates act as one [m].

    The code says spacing; it is taken from middle to middle, the safe reading.

    Source: AWS D1.1:2020, 4.12.2.1 (AISC 360-22 J3.5 for fasteners): 24 t of the thinner part and
    12 in.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    return min(24 * thinner_m, 12 * INCH_M)


def widest_gap_en(thinner_m: float) -> float:
    """Return the widest clear gap between segments, for parts pressed or sheared [m].

    Parts pulled may have 16 t; which it is, and the width of the plate, is not asked. A quarter of
    the narrower plate's width is a limit too, and the answer says so.

    Source: EN 1993-1-8:2005, 4.3.2.2 and Figure 4.1: 12 t of the thinner part and 200 mm.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    return min(12 * thinner_m, 0.200)


def pitch_for(asked_n_m: float, strength_n_m: float, counted_m: float) -> float:
    """Return the pitch at which segments carry a force per length of seam [m].

    Source: AISC 360-22 J2.2b(e), EN 1993-1-8:2005, 4.3.2.2: the segments carry all that the seam
    must carry, so pitch is strength over force times what counts of a segment.

    Args:
        asked_n_m: Force per length of seam, above zero [N/m].
        strength_n_m: Available strength per length, above zero [N/m].
        counted_m: Length of a segment that counts, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero, or even a weld all along would not
            carry it.
    """
    require_positive(asked_n_m=asked_n_m, strength_n_m=strength_n_m, counted_m=counted_m)
    if asked_n_m > strength_n_m * (1 + 1e-9):
        raise OutOfRangeError("asked_n_m is over strength_n_m: weld all along, with a larger leg")
    return counted_m * max(1.0, strength_n_m / asked_n_m)
