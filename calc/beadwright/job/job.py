"""The job as understood: every input of a query with its default, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.joint.fillet_joints import Corner
from beadwright.joint.groove_rules import STRUCTURAL_FROM_M
from beadwright.joint.joints import DOUBLES, FILLETS, GOUGED, HOLES, JointKind
from beadwright.power.primary import Phases
from beadwright.process.gas_flow import Nozzle
from beadwright.process.gases import Gas
from beadwright.process.positions import Mover, Position
from beadwright.process.wires import Wire
from beadwright.tolerance import REL_TOL
from beadwright.units import System

Aim = Literal["balanced", "least-time", "least-heat", "easiest"]
"""The aim of the set point inside the window."""

AskedTransfer = Literal["auto", "short", "spray", "pulse"]
Backing = Literal["none", "steel", "copper", "ceramic"]
Back = Literal["open", "gouge"]
"""What is done at the back of a root: left as it is, or gouged to sound metal and welded."""


@dataclass(frozen=True, slots=True)
class ByHand:
    """Settings fixed by hand; None where Beadwright chooses.

    Attributes:
        wire_feed_m_s: Wire feed [m/s].
        volts: Volts at the arc [V].
        tip_to_work_m: Contact tip to work [m].
        travel_m_s: Travel [m/s].
    """

    wire_feed_m_s: float | None = None
    volts: float | None = None
    tip_to_work_m: float | None = None
    travel_m_s: float | None = None


@dataclass(frozen=True, slots=True)
class Edges:
    """Place and preparation of the edges; None for the usual.

    Attributes:
        leg2_m: Leg up the other plate [m].
        skew_deg: Angle between a tee's plates on the weld's side [°].
        corner: How far a corner's edges stand apart.
        angle_deg: Groove angle: between the faces of a V, of the one face of a bevel [°].
        root_face_m: Edge left square [m].
        depth_m: Depth of the groove on the side welded first; of a plug, how full [m].
        depth2_m: Depth of the groove on the second side [m].
        backing: What lies under the root.
        back: What is done at the back of the root; None for the usual: gouged where both sides are
            beveled, else left open.
        gouge_m: Depth of a back gouge from the back of the root [m].
        hole_m: Diameter of a plug's hole, width of a slot [m].
        slot_m: Length of a slot, end to end [m].
        pitch_m: Center to center of intermittent welds [m].
    """

    leg2_m: float | None = None
    skew_deg: float = 90.0
    corner: Corner = "open"
    angle_deg: float | None = None
    root_face_m: float | None = None
    depth_m: float | None = None
    depth2_m: float | None = None
    backing: Backing = "none"
    back: Back | None = None
    gouge_m: float | None = None
    hole_m: float | None = None
    slot_m: float | None = None
    pitch_m: float | None = None


USUAL_SUPPLY_V = 230.0
"""Supply volts where none are written [V]. Common practice: a shop's single phase."""


@dataclass(frozen=True, slots=True)
class PowerSource:
    """What the plate of the power source and its circuit say; None where it is not written.

    Attributes:
        rated_a: Rated current [A].
        duty: Duty cycle at it [-].
        breaker_a: Breaker or fuse [A].
        supply_v: Supply volts, between lines if three phase [V].
        phases: 1 or 3.
    """

    rated_a: float | None = None
    duty: float | None = None
    breaker_a: float | None = None
    supply_v: float = USUAL_SUPPLY_V
    phases: Phases = 1


@dataclass(frozen=True, slots=True)
class Job:
    """One joint to weld, with wire, gas and limits.

    Attributes:
        units: How to show.
        joint: Kind of joint.
        plate_m: Thickness of the horizontal plate [m].
        plate2_m: Thickness of the other [m].
        leg_m: Fillet leg asked for, or None for what a hand lays on the plate [m].
        gap_m: Fit-up gap, or None for the joint's usual [m].
        reinforcement_m: Crown of the face, or None for the usual [m].
        position: Welding position.
        wire: Wire.
        gas: Gas.
        transfer: Transfer asked for.
        travel_by: Who moves the torch.
        by_hand: Settings fixed by hand.
        weld_length_m: Length of one weld [m].
        welds: Welds in the job [-].
        machine_amps_a: Most the power source gives, or None [A].
        machine_volts_v: Most volts at the arc, or None [V].
        source: Plate and circuit of the power source.
        edges: Place and preparation of the edges.
        nozzle: Gas nozzle, or None for the usual one at the current.
        aim: Aim of the set point.
        heat_min_j_m: Least heat input a written procedure asks, or None [J/m].
        heat_max_j_m: Most heat input it allows, or None [J/m].
    """

    units: System
    joint: JointKind
    plate_m: float
    plate2_m: float
    leg_m: float | None
    gap_m: float | None
    reinforcement_m: float | None
    position: Position
    wire: Wire
    gas: Gas
    transfer: AskedTransfer
    travel_by: Mover
    by_hand: ByHand
    weld_length_m: float
    welds: int
    machine_amps_a: float | None
    machine_volts_v: float | None
    source: PowerSource = PowerSource()
    edges: Edges = Edges()
    nozzle: Nozzle | None = None
    aim: Aim = "balanced"
    heat_min_j_m: float | None = None
    heat_max_j_m: float | None = None

    @property
    def thinner_m(self) -> float:
        """Thickness of the thinner part [m]."""
        return min(self.plate_m, self.plate2_m)

    @property
    def is_fillet(self) -> bool:
        """True for tee, lap and corner, but not a closed corner: that one is a groove."""
        return self.joint in FILLETS and not self.closed_corner

    @property
    def skew_deg(self) -> float:
        """Angle between the plates on the weld's side; only a tee is skewed [°]."""
        return self.edges.skew_deg if self.joint == "tee" else 90.0

    @property
    def closed_corner(self) -> bool:
        """True for a corner whose edge is covered: welded like a square butt."""
        return self.joint == "corner" and self.edges.corner == "closed"

    @property
    def is_double(self) -> bool:
        """True if the groove is prepared from both sides."""
        return self.joint in DOUBLES

    @property
    def is_round(self) -> bool:
        """True for plug and slot, laid around their axis."""
        return self.joint in HOLES

    @property
    def is_sheet(self) -> bool:
        """True under the thinnest plate of AWS D1.1, where another code rules."""
        return self.thinner_m < STRUCTURAL_FROM_M[self.units] - REL_TOL

    @property
    def backed(self) -> bool:
        """True if something lies under the root."""
        return self.edges.backing != "none"

    @property
    def back_gouged(self) -> bool:
        """True if the root is to be gouged from the back: as asked, or as a double groove is."""
        if self.edges.back is None:
            return self.is_double
        return self.edges.back == "gouge" and self.joint in GOUGED

    @property
    def open_root(self) -> bool:
        """True if the gap, as asked for or usual, has no backing under it."""
        through = not (self.is_fillet or self.is_round or self.backed)
        return through and (self.gap_m is None or self.gap_m > 0)

    @property
    def position_name(self) -> str:
        """AWS name of the position for this joint, such as 2F."""
        return self.position.name(self.is_fillet)
