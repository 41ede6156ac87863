"""A fillet as measured: its throat from two legs and the angle, its face, its section."""

from __future__ import annotations

from dataclasses import dataclass
from math import radians, sin

from beadwright.errors import require_positive
from beadwright.joint.fillet_joints import fillet_face, fillet_throat, gauge_leg
from beadwright.joint.fillets import face_section


def leg_from_gauge(reading_m: float, skew_deg: float) -> float:
    """Return the leg along the plate whose toe a gauge reads square across; see ``gauge_leg`` [m].

    Source: geometry: reading ÷ sin ψ.

    Args:
        reading_m: Distance of the toe from the other plate, above zero [m].
        skew_deg: Angle between the plates on the weld's side, 60 to 135 [°].

    Raises:
        OutOfRangeError: If the reading is not above zero or the angle outside 60 to 135.
    """
    require_positive(reading_m=reading_m)
    return reading_m / gauge_leg(1.0, skew_deg)


def crown_of_throat(throat_m: float, leg_m: float, leg2_m: float, skew_deg: float) -> float:
    """Return how far a throat as measured stands over the flat face, below zero if under it [m].

    Source: geometry.

    Args:
        throat_m: From the root to the face, above zero [m].
        leg_m: Leg along the plate lying down, above zero [m].
        leg2_m: Leg along the other, above zero [m].
        skew_deg: Angle between them, 60 to 135 [°].

    Raises:
        OutOfRangeError: If a length is not above zero or the angle outside 60 to 135.
    """
    require_positive(throat_m=throat_m)
    return throat_m - fillet_throat(leg_m, leg2_m, skew_deg)


@dataclass(frozen=True, slots=True)
class MeasuredFillet:
    """A fillet as measured.

    Attributes:
        leg_m: Leg along the plate lying down [m].
        leg2_m: Leg along the other [m].
        skew_deg: Angle between the plates [°].
        crown_m: Crown of the face, below zero if hollow; None: not measured [m].
        width_m: Width of the face as measured, or None [m].
        one_leg: True if only one leg was measured.
    """

    leg_m: float
    leg2_m: float
    skew_deg: float
    crown_m: float | None = None
    width_m: float | None = None
    one_leg: bool = False

    @property
    def flat_throat_m(self) -> float:
        """Throat under a flat face: the theoretical one [m].

        Source: geometry; AWS A3.0.
        """
        return fillet_throat(self.leg_m, self.leg2_m, self.skew_deg)

    @property
    def throat_m(self) -> float:
        """Throat that counts: a hollow takes from it, a crown adds nothing [m].

        Source: AWS A3.0, effective throat (from memory).
        """
        return self.flat_throat_m + min(self.crown_m or 0.0, 0.0)

    @property
    def face_m(self) -> float:
        """Width of the face: as measured, or of a flat one [m]."""
        return self.width_m or fillet_face(self.leg_m, self.leg2_m, self.skew_deg)

    def section_m2(self, over_flat: float) -> float:
        """Return the section of weld metal [m²].

        Source: geometry: ½·z₁·z₂·sin ψ and two thirds of face × crown.

        Args:
            over_flat: Section as welded over the flat one where no crown was measured [-].
        """
        flat = self.leg_m * self.leg2_m * sin(radians(self.skew_deg)) / 2
        if self.crown_m is None:
            return flat * over_flat
        face = fillet_face(self.leg_m, self.leg2_m, self.skew_deg)
        return flat + face_section(face, self.crown_m)
