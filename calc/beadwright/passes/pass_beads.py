"""A pass plan's parts: each bead, its place, its settings, and the whole."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.job.job import Job
from beadwright.joint.joints import JointShape
from beadwright.layers.bead_limits import bridges
from beadwright.layers.layers import BeadLimits
from beadwright.passes.pass_layout import Slot
from beadwright.passes.pass_process import AS_THE_REST, Part, PartByHand, Process
from beadwright.phrases import Phrase, say
from beadwright.process.operating import Operating
from beadwright.process.transfer import Transfer
from beadwright.setting.limits import Limit
from beadwright.setting.plan import Plan

Role = Literal["only", "root", "hot", "fill", "cap"]

ROLE_NAMES: Mapping[Role, str] = MappingProxyType(
    {
        "only": "The one pass",
        "root": "Root",
        "hot": "Hot pass",
        "fill": "Fill",
        "cap": "Cap",
    }
)
"""Names of the roles."""


def part_of(side: int, role: Role, *, apart: bool = False) -> Part:
    """Return the part a bead is laid with: after gouging no root is open.

    Args:
        side: Side it is laid from, 1 or 2 [-].
        role: What it is [-].
        apart: True if the second side is welded otherwise than as fill and cap [-].
    """
    if apart and side == 2:
        return "back"
    if role in ("only", "root"):
        return "root" if side == 1 else "fill"
    return "cap" if role == "cap" else "fill"


Fight = tuple[Limit, Limit]
"""Two limits between which a bead has no setting."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What the welder asks of the plan besides the job.

    Attributes:
        count: Beads wanted in all, or None for the fewest [-].
        stringers: True to lay every bead without weaving.
        root: What is fixed by hand for the root only.
        cap: What is fixed by hand for the cap only.
    """

    count: int | None = None
    stringers: bool = False
    root: PartByHand = AS_THE_REST
    cap: PartByHand = AS_THE_REST

    def of(self, part: Part) -> PartByHand:
        """Return what is fixed by hand for a part."""
        return {"root": self.root, "cap": self.cap}.get(part, AS_THE_REST)


@dataclass(frozen=True, slots=True)
class Laid:
    """The settings of one bead and what follows from them.

    Attributes:
        transfer: Mode.
        point: Feed, volts, current, extension.
        tip_to_work_m: Tip-to-work [m].
        travel_m_s: Travel that fills its section [m/s].
        heat_j_m: Heat input, no efficiency [J/m].
        heat_en_j_m: Heat input with k = 0.8 [J/m].
        arc_time_s: Arc time along one weld [s].
        wire_m: Wire along one weld [m].
        wire_kg: The same by mass [kg].
    """

    transfer: Transfer
    point: Operating
    tip_to_work_m: float
    travel_m_s: float
    heat_j_m: float
    heat_en_j_m: float
    arc_time_s: float
    wire_m: float
    wire_kg: float


@dataclass(frozen=True, slots=True)
class Bead:
    """One bead.

    Attributes:
        number: In welding order, from 1 [-].
        side: Side it is laid from, 1 or 2 [-].
        role: What it is.
        part: The part of the weld it is laid with.
        slot: Its place.
        torch_deg: Way the torch points away from the joint, from the picture's right [°].
        work_deg: Torch from the horizontal plate, or from the plate's surface [°].
        section_m2: Section laid: that of its place, or more where its arc lays more at the fastest
            travel and the crown has room for it [m²].
        leg_m: Leg of a fillet of its section [m].
        laid: Its settings, or None where no setting holds its limits.
        blocked: The limits that fight where there are none.
    """

    number: int
    side: int
    role: Role
    part: Part
    slot: Slot
    torch_deg: float
    work_deg: float
    section_m2: float
    leg_m: float
    laid: Laid | None
    blocked: Fight | None


def of_beads(beads: Sequence[int]) -> Phrase:
    """Return which beads are meant.

    Args:
        beads: Their numbers, rising, one at least [-].
    """
    return say("passes.beads", beads=tuple(beads), count=len(beads))


@dataclass(frozen=True, slots=True)
class PassPlan:
    """The plan.

    Attributes:
        job: The job.
        plan: Its mode and room, as Dial in plans it.
        asked: What is asked of it.
        shape: The joint to scale.
        beads: Every bead, in welding order.
        layers: Layers of each side.
        processes: Process of root, fill and cap; of a gouged second side where it is another.
        limits: Limits of a bead and a layer.
        over: Beads over a limit of size because a count was asked for.
    """

    job: Job
    plan: Plan
    asked: Asked
    shape: JointShape
    beads: tuple[Bead, ...]
    layers: tuple[int, ...]
    processes: Mapping[Part, Process]
    limits: BeadLimits
    over: tuple[int, ...]

    @property
    def open(self) -> bool:
        """True if every bead has settings that hold every limit, and something to lie on."""
        refusals = (self.plan.refused, *(p.refused for p in self.processes.values()))
        if any(refused is not None for refused in refusals):
            return False
        return not self.beside and all(bead.laid is not None for bead in self.beads)

    @property
    def beside(self) -> tuple[int, ...]:
        """Beads that lie side by side over an open root, with nothing under them."""
        if not bridges(self.shape):
            return ()
        root = [bead for bead in self.beads if bead.side == 1 and bead.slot.layer == 1]
        return tuple(bead.number for bead in root if bead.slot.of > 1)

    @property
    def arc_time_s(self) -> float:
        """Arc time along one weld [s]."""
        return sum(bead.laid.arc_time_s for bead in self.beads if bead.laid is not None)

    @property
    def wire_kg(self) -> float:
        """Wire for one weld [kg]."""
        return sum(bead.laid.wire_kg for bead in self.beads if bead.laid is not None)

    @property
    def hottest(self) -> Bead | None:
        """The bead with the most heat input."""
        laid = [bead for bead in self.beads if bead.laid is not None]
        return max(laid, key=lambda bead: bead.laid.heat_j_m if bead.laid else 0.0, default=None)

    @property
    def metal_kg_m(self) -> float:
        """Weld metal per length of joint [kg/m]."""
        section_m2 = sum(bead.section_m2 for bead in self.beads)
        return self.job.wire.material.density_kg_m3 * section_m2
