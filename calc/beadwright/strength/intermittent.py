"""Intermittent fillets: the length of a segment and the pitch from one to the next."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.fillets import least_segment


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


def widest_gap(thinner_m: float) -> float:
    """Return the widest clear gap between segments [m].

    Source: EN 1993-1-8, 4.3.2.2 and Figure 4.1, parts in tension: 16 t of the thinner part and
    200 mm; AISC leaves it to the designer.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    return min(16 * thinner_m, 0.200)


def intermittent_for(
    asked_n_m: float, strength_n_m: float, segment_m: float, leg_m: float
) -> Intermittent:
    """Return the widest pitch at which segments carry a force per length of seam.

    Source: AISC 360 J2.2b(e); the segments carry all that the seam must carry, so pitch is
    strength over force times the segment.

    Args:
        asked_n_m: Force per length of seam, above zero [N/m].
        strength_n_m: Available strength of the weld per length, above zero [N/m].
        segment_m: Length of a segment [m].
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If a segment is too short, or even a weld all along would not carry it.
    """
    require_positive(asked_n_m=asked_n_m, strength_n_m=strength_n_m)
    least = least_segment(leg_m)
    if segment_m < least - 1e-9:
        raise OutOfRangeError(f"segment_m = {segment_m:.4f} is under {least:.4f}")
    if asked_n_m > strength_n_m * (1 + 1e-9):
        raise OutOfRangeError("asked_n_m is over strength_n_m: weld all along, with a larger leg")
    return Intermittent(segment_m, segment_m * max(1.0, strength_n_m / asked_n_m))
