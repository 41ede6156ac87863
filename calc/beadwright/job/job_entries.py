"""The table of a job's keys: what may be asked, its ranges, its defaults, what each is called.

One set of fields serves the form, the address bar, the terminal and the tests. A blank value means
the default; no default: ours to choose, or no limit.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.job.job import Aim, AskedTransfer, Back, Backing
from beadwright.job.own_entry import OwnField
from beadwright.joint.fillet_joints import Corner
from beadwright.joint.joints import JOINTS, JointKind
from beadwright.process.gas_flow import NOZZLES, Nozzle, nozzle_of
from beadwright.process.gases import GASES, Gas, gas_of
from beadwright.process.own_numbers import OwnBook
from beadwright.process.positions import Mover, Position, position_of
from beadwright.process.wires import INCH_SIZES_M, WIRE_TYPES, size_of
from beadwright.reading.entries import Fields, defaults_of, fields_of, optional, required
from beadwright.reading.fields import Choice, Entry, Measured, WholeNumber
from beadwright.units import System

_POSITION_NAMES = (
    "1F", "2F", "3F-up", "3F-down", "4F", "1G", "2G", "3G-up", "3G-down", "4G",
    "PA", "PB", "PC", "PD", "PE", "PF", "PG",
)  # fmt: skip

_SHEET_TO_PLATE = "30ga", "4in", "sheet of 30 gauge to plate of 4 in"
_LEG = "1/16in", "2in", "a smaller one cannot be measured; use a groove for a larger one"
_DEPTH = "1/32in", "4in", "no groove is shallower, no plate here thicker"
_HEAT = "1kJ/in", "200kJ/in", "no wire procedure has less or more"


@dataclass(frozen=True, slots=True, kw_only=True)
class JobEntries:
    """A job as typed, key by key, in the order of the form [SI]."""

    units: System = required(Choice(("us", "si"), label="Units", help="us or si", default="us"))
    joint: JointKind = required(
        Choice(JOINTS, label="Joint type", help=", ".join(JOINTS), default="tee")
    )
    plate: float = required(
        Measured(
            "length",
            *_SHEET_TO_PLATE,
            label="Bottom plate",
            help="thickness of the bottom plate, or sheet gauge (10ga)",
            default="3/8in",
        )
    )
    plate2: float | None = optional(
        Measured(
            "length",
            *_SHEET_TO_PLATE,
            label="Second plate",
            help="thickness of the second plate (a tee's vertical one); blank: the same",
            blank="the same",
        )
    )
    corner: Corner = required(
        Choice(
            ("open", "half", "closed"),
            label="Edges",
            help="open (edge to edge), half (half covered), closed (covered)",
            default="open",
        )
    )
    skew: float | None = optional(
        Measured(
            "angle",
            "60deg",
            "135deg",
            "a sharper one hides the root, a flatter one is a butt",
            label="Angle between the plates",
            help="angle of a tee on the weld's side; blank: 90deg",
            blank="square, 90°",
        )
    )
    leg: float | None = optional(
        Measured(
            "leg",
            *_LEG,
            label="Leg",
            help="fillet leg as on a square tee; blank: what a hand lays on the plate",
        )
    )
    leg2: float | None = optional(
        Measured(
            "leg",
            *_LEG,
            label="Leg on the vertical plate",
            help="leg on the vertical plate, up the edge of a lap; blank: the same",
            blank="the same",
        )
    )
    gap: float | None = optional(
        Measured(
            "leg",
            "0in",
            "1/2in",
            "no detail opens a root wider",
            label="Root opening",
            help="root opening, fit-up",
        )
    )
    angle: float | None = optional(
        Measured(
            "angle",
            "10deg",
            "120deg",
            "a narrower one hides the root, a wider one is all filler",
            label="Groove angle",
            help="groove angle: between the faces of a V, of the beveled face of a bevel",
        )
    )
    root_face: float | None = optional(
        Measured(
            "leg",
            "0in",
            "2in",
            "an edge cannot be less, and 2 in is never melted",
            label="Root face",
            help="edge left square",
        )
    )
    depth: float | None = optional(
        Measured(
            "leg",
            *_DEPTH,
            label="Depth of groove",
            help="depth of the groove, first side; of a plug how full; blank: through",
        )
    )
    depth2: float | None = optional(
        Measured(
            "leg",
            *_DEPTH,
            label="Depth, second side",
            help="depth of the groove, second side",
        )
    )
    backing: Backing = required(
        Choice(
            ("none", "steel", "copper", "ceramic"),
            label="Backing",
            help="none, steel, copper, ceramic",
            default="none",
        )
    )
    back: Back | None = optional(
        Choice(
            ("open", "gouge"),
            label="Back of the root",
            help="open (left as it is), gouge (gouged to sound metal and welded); blank: gouged "
            "where both sides are beveled",
            blank="gouged if beveled both sides",
        )
    )
    gouge_depth: float | None = optional(
        Measured(
            "leg",
            "1/32in",
            "2in",
            "less is a grinder scratch, more is a new groove",
            label="Depth of gouge",
            help="depth of the back gouge, from the back of the root; blank: 1/8 in past the root "
            "face",
            blank="to sound metal",
        )
    )
    hole: float | None = optional(
        Measured(
            "leg",
            "3/16in",
            "3in",
            "a smaller one hides the root; weld a fillet around a larger one",
            label="Hole",
            help="diameter of a plug's hole, width of a slot; blank: the code's least",
        )
    )
    slot_length: float | None = optional(
        Measured(
            "length",
            "3/16in",
            "20in",
            "weld a fillet around a longer one",
            label="Slot length",
            help="length of a slot, end to end",
        )
    )
    reinforcement: float | None = optional(
        Measured(
            "leg",
            "0in",
            "3/16in",
            "no code accepts a higher crown",
            label="Crown",
            help="crown of the face; blank: the usual",
        )
    )
    position: Position = required(
        Entry(
            position_of,
            _POSITION_NAMES,
            label="Position",
            help="1F 2F 3F-up 3F-down 4F, 1G 2G 3G-up 3G-down 4G, or PA to PG",
            default="2F",
        )
    )
    wire: str = required(
        Choice(tuple(WIRE_TYPES), label="Wire", help="AWS classification", default="ER70S-6")
    )
    dia: str = required(
        Entry(
            size_of, tuple(INCH_SIZES_M), label="Wire size", help="wire diameter", default="0.045in"
        )
    )
    gas: Gas = required(
        Entry(
            gas_of,
            tuple(GASES),
            label="Gas",
            help="any mix as said in the shop: 90/10, 98/2 O2, 90/8/2 O2, CO2",
            default="90/10",
        )
    )
    transfer: AskedTransfer = required(
        Choice(
            ("auto", "short", "spray", "pulse"),
            label="Transfer",
            help="auto, short, spray, pulse",
            default="auto",
        )
    )
    travel_by: Mover = required(
        Choice(
            ("hand", "track", "robot"),
            label="Gun moved by",
            help="hand, track, robot",
            default="hand",
        )
    )
    aim: Aim = required(
        Choice(
            ("balanced", "least-time", "least-heat", "easiest"),
            label="Aim",
            help="balanced, least-time, least-heat, easiest: what the settings are chosen for",
            default="balanced",
        )
    )
    heat_min: float | None = optional(
        Measured(
            "heat_input",
            *_HEAT,
            label="Lowest heat input",
            help="lowest heat input a written procedure allows: volts × amps ÷ travel speed",
            blank="no limit",
        )
    )
    heat_max: float | None = optional(
        Measured(
            "heat_input",
            *_HEAT,
            label="Highest heat input",
            help="highest heat input it allows, figured the same way",
            blank="no limit",
        )
    )
    wfs: float | None = optional(
        Measured(
            "wire_feed",
            "30in/min",
            "1000in/min",
            "no feeder holds less or gives more",
            label="Wire feed",
            help="wire feed set by hand",
        )
    )
    volts: float | None = optional(
        Measured(
            "volts",
            "10V",
            "50V",
            "no wire arc burns outside that",
            label="Volts at the arc",
            help="volts at the arc set by hand",
        )
    )
    ctwd: float | None = optional(
        Measured(
            "tip_to_work",
            "1/8in",
            "2in",
            "closer melts the tip, farther lets the arc wander",
            label="Stickout (tip to work)",
            help="stickout (contact tip to work) set by hand",
        )
    )
    travel: float | None = optional(
        Measured(
            "travel",
            "1in/min",
            "200in/min",
            "no hand or machine moves a gun at that speed",
            label="Travel speed",
            help="travel speed set by hand",
        )
    )
    weld_length: float = required(
        Measured(
            "length",
            "1/4in",
            "1000ft",
            "one weld, not the whole job",
            label="Length of one weld",
            help="length of one weld",
            default="6in",
        )
    )
    pitch: float | None = optional(
        Measured(
            "length",
            "1/4in",
            "1000ft",
            "center to center, not the whole job",
            label="Center to center",
            help="center to center of intermittent welds; blank: one after another",
            blank="no space between",
        )
    )
    welds: int = required(
        WholeNumber(1, 1_000_000, label="Welds in the job", help="welds in the job", default="8")
    )
    machine_amps: float | None = optional(
        Measured(
            "current",
            "30A",
            "1000A",
            "smallest to largest wire power source",
            label="Machine's maximum amps",
            help="highest current of the power source",
        )
    )
    machine_volts: float | None = optional(
        Measured(
            "volts",
            "12V",
            "60V",
            "smallest to largest wire power source",
            label="Machine's maximum volts",
            help="highest volts of the power source at the arc",
        )
    )
    rated_amps: float | None = optional(
        Measured(
            "current",
            "30A",
            "1500A",
            "smallest to largest wire power source",
            label="Rated amps",
            help="rated current on the plate; blank: not counted",
            blank="not counted",
        )
    )
    duty: float | None = optional(
        Measured(
            "share",
            "5%",
            "100%",
            "plates say 10 to 100 %",
            label="Duty cycle at rated amps",
            help="duty cycle at the rated current; blank: not counted",
            blank="not counted",
        )
    )
    breaker: float | None = optional(
        Measured(
            "current",
            "5A",
            "1000A",
            "house circuit to factory line",
            label="Breaker",
            help="breaker or fuse of the circuit; blank: not counted",
            blank="not counted",
        )
    )
    supply: float | None = optional(
        Measured(
            "volts",
            "90V",
            "700V",
            "wall socket to factory line",
            label="Supply volts",
            help="supply volts, between lines if three phase; blank: 230",
            blank="230",
        )
    )
    phase: Literal["1", "3"] | None = optional(
        Choice(("1", "3"), label="Phases", help="1 or 3; blank: 1", blank="1")
    )
    nozzle: Nozzle | None = optional(
        Entry(
            nozzle_of,
            tuple(NOZZLES),
            label="Gas nozzle",
            help="bore of the gas nozzle: 1/2in, 5/8in, 3/4in; blank: the usual at this current",
        )
    )
    own: OwnBook | None = optional(
        OwnField(
            label="Shop's own numbers",
            help="what Coupons learned of this wire and hand, or off; blank: as published",
            blank="as published",
        )
    )


FIELDS: Fields = MappingProxyType(fields_of(JobEntries))
"""The job's fields, by key."""

DEFAULTS: Mapping[str, str] = MappingProxyType(defaults_of(FIELDS))
"""What a blank or missing key means. Blank: ours to choose (or no limit)."""
