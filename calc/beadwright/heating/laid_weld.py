"""A weld as laid, for what it does to its part; the same weld in another size or more passes."""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.joint.joints import BUTTS, HOLES
from beadwright.process.materials import Material


@dataclass(frozen=True, slots=True)
class LaidWeld:
    """A weld as laid, for what it does to its part.

    Attributes:
        joint: Kind of joint, as of ``joints``.
        leg_m: Leg of each fillet, zero for a groove [m].
        section_m2: Weld metal of one side [m²].
        plate_m: The plate that shrinks across [m].
        gap_m: Root opening [m].
        passes: Passes on each side [-].
        heat_j_m: Net heat input of the hottest pass, or None without a set point [J/m].
        current_a: Current, or None without a set point [A].
        sides: 1, or 2 with the same on the other side [-].
        share: Share of the length welded: 1 is continuous, less is intermittent [-].
        length_m: From the weld's start to its end [m].
        material: What is welded.
    """

    joint: str
    leg_m: float
    section_m2: float
    plate_m: float
    gap_m: float
    passes: int
    heat_j_m: float | None
    current_a: float | None
    sides: int
    share: float
    length_m: float
    material: Material

    @property
    def fillet(self) -> bool:
        """True for tee, lap and corner."""
        return self.leg_m > 0

    @property
    def butt(self) -> bool:
        """True for plates edge to edge."""
        return self.joint in BUTTS

    @property
    def hole(self) -> bool:
        """True for a plug or slot, for which there is no published form."""
        return self.joint in HOLES


def resized(laid: LaidWeld, leg_m: float) -> LaidWeld:
    """Return a fillet with another leg: section by its square, heat of a pass by its section.

    Source: geometry; a set point lays a section for a heat, whatever the travel.

    Args:
        laid: The weld [SI].
        leg_m: The other leg, above zero [m].
    """
    share = (leg_m / laid.leg_m) ** 2
    heat = None if laid.heat_j_m is None else laid.heat_j_m * share
    return replace(laid, leg_m=leg_m, section_m2=laid.section_m2 * share, heat_j_m=heat)


def repassed(laid: LaidWeld, passes: int) -> LaidWeld:
    """Return a weld laid in another number of passes, the heat shared among them.

    Args:
        laid: The weld [SI].
        passes: Passes, 1 or more [-].
    """
    heat = None if laid.heat_j_m is None else laid.heat_j_m * laid.passes / passes
    return replace(laid, passes=passes, heat_j_m=heat)
