"""The Strength page's keys: the job's, the shape of the weld, what it carries, by which code."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.process.wires import Wire
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Choice, Entry, Measured
from beadwright.strength.member_entries import MemberEntries
from beadwright.strength.outline_field import GROUPS, Outline
from beadwright.strength.steel_strength import STRENGTHS, SteelStrength, strength_of
from beadwright.strength.weld_group import WeldGroup

DesignCode = Literal["asd", "lrfd", "en", "en-directional"]
"""AISC 360 on service loads, AISC 360 on factored loads, EN 1993-1-8 simplified, directional."""

Analysis = Literal["elastic", "ic"]
"""How the load spreads: by elastic vectors, or about the instantaneous center."""

FORCES = ("px", "py", "pz", "mx", "my", "mz")
"""Keys of forces and moments."""

LOADS = (*FORCES, "line_load")
"""Keys that load the weld."""

PLACES = ("load_x", "load_y", "load_z")
"""Keys of where a force acts."""

DEMO_LOAD: Mapping[str, str] = MappingProxyType({"py": "-10kip", "load_z": "3in"})
"""What stands in while nothing loads the weld: invented for the demonstration shop's bracket."""

DEMO_LOAD_IN_PLANE: Mapping[str, str] = MappingProxyType({"py": "-10kip", "load_x": "3in"})
"""The same where only a load in the plane can be taken."""

DEMO_SHEAR: Mapping[str, str] = MappingProxyType({"py": "-5kip"})
"""The same for a joint that is no bracket: along the weld."""


def _force(label: str, help: str) -> Measured:
    return Measured(
        "force",
        "-10000kip",
        "10000kip",
        "over that no fillet on a phone is the answer",
        label=label,
        help=help,
        blank="none",
    )


def _moment(label: str, help: str) -> Measured:
    return Measured(
        "moment",
        "-1000000kip-in",
        "1000000kip-in",
        "over that ask an engineer",
        label=label,
        help=help,
        blank="none",
    )


def _reach(label: str, help: str, blank: str = "centroid") -> Measured:
    return Measured(
        "length",
        "-100ft",
        "100ft",
        "the load is not that far off",
        label=label,
        help=help,
        blank=blank,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadEntries:
    """The keys of what loads the weld, and where [SI]."""

    px: float | None = optional(_force("Force to the right", "force to the right"))
    py: float | None = optional(_force("Force up, minus down", "force up"))
    pz: float | None = optional(
        _force("Pull square off the joint", "force pulling square off the joint")
    )
    load_x: float | None = optional(
        _reach(
            "Acts right of lower left",
            "where the force acts, right of the weld's lower left; blank: at its centroid",
        )
    )
    load_y: float | None = optional(
        _reach(
            "Acts above lower left",
            "where it acts, above the weld's lower left; blank: at its centroid",
        )
    )
    load_z: float | None = optional(
        _reach("Acts out from the joint", "how far out from the joint it acts", "0")
    )
    mx: float | None = optional(_moment("Bending, level axis", "bending about the level axis"))
    my: float | None = optional(_moment("Bending, upright axis", "bending about the upright axis"))
    mz: float | None = optional(
        _moment(
            "Turning in the joint's plane",
            "turning in the plane of the joint, counter-clockwise",
        )
    )
    line_load: float | None = optional(
        Measured(
            "force_per_length",
            "0.001kip/in",
            "100kip/in",
            "no fillet holds more",
            label="Or force per length of weld",
            help="force per length of weld, instead of forces and moments",
            blank="none",
        )
    )

    def written(self, *keys: str) -> tuple[str, ...]:
        """Return those of some keys that are given and not zero.

        Args:
            *keys: Keys of loads and places [-].
        """
        return tuple(key for key in keys if getattr(self, key))


@dataclass(frozen=True, slots=True, kw_only=True)
class StrengthQuery(PageQuery):
    """The Strength page's query: its keys besides the job's [SI]."""

    group: str | WeldGroup = required(
        Outline(
            label="Shape of the weld",
            help="shape of the weld: " + " ".join(GROUPS) + ", or polyline:0,0 4,0 4,6",
            default="line",
        )
    )
    group_width: float = required(
        Measured(
            "length",
            "1/4in",
            "100ft",
            "shorter is no weld",
            label="Width",
            help="of the weld, left to right",
            default="4in",
        )
    )
    group_height: float | None = optional(
        Measured(
            "length",
            "1/4in",
            "100ft",
            "shorter is no weld",
            label="Height, or diameter",
            help="of the weld, bottom to top; a circle's diameter; blank: weld_length",
            blank="weld length",
        )
    )
    weld_sides: Literal["1", "2"] | None = optional(
        Choice(
            ("1", "2"),
            label="Weld on",
            help="1, or 2: both sides of the plate; blank: 2 for a line in a tee, else 1",
            blank="Usual",
        )
    )
    part_length: float | None = optional(
        Measured(
            "length",
            "1/4in",
            "1000ft",
            "the part the weld lies on",
            label="Part's length, if it must fit",
            help="length of the part along the weld; blank: not checked",
            blank="not checked",
        )
    )
    load: LoadEntries = part(LoadEntries)
    member: MemberEntries = part(MemberEntries)
    design_code: DesignCode = required(
        Choice(
            ("asd", "lrfd", "en", "en-directional"),
            label="Code",
            help="asd, lrfd, en or en-directional",
            default="asd",
        )
    )
    analysis: Analysis = required(
        Choice(
            ("elastic", "ic"),
            label="How the load spreads",
            help="elastic, or ic for the instantaneous center: loads in the plane of the weld, and "
            "brackets welded along two equal lines",
            default="elastic",
        )
    )
    cross_increase: Literal["no", "yes"] = required(
        Choice(
            ("no", "yes"),
            label="Added strength across the weld",
            help="yes counts the added strength across the weld (AISC 360 J2.4)",
            default="no",
        )
    )
    weld_ends: Literal["plain", "full"] = required(
        Choice(
            ("plain", "full"),
            label="Ends of the weld",
            help="full: full size to its ends, or returned round the corner; plain: by EN "
            "1993-1-8 each end costs a throat of length",
            default="plain",
        )
    )
    filler_strength: float | None = optional(
        Measured(
            "stress",
            "60ksi",
            "120ksi",
            "classes of steel filler",
            label="Filler strength",
            help="tensile strength of the filler; blank: by the wire's class",
            blank="by wire",
        )
    )
    steel: SteelStrength | None = optional(
        Entry(
            strength_of,
            tuple(STRENGTHS),
            label="Steel",
            help="grade; blank: A36, or S235JR with EN 1993",
            blank="Usual",
        )
    )
    segment: float | None = optional(
        Measured(
            "length",
            "30mm",
            "12in",
            "the codes ask for 30 mm (EN 1993-1-8) or 1-1/2 in (AISC 360) and more",
            label="Intermittent segment",
            help="length of an intermittent segment; blank: the shortest allowed",
            blank="shortest",
        )
    )

    def wires(self) -> tuple[Wire, ...]:
        """Return every wire whose numbers the answer counts with: no coupon tells strength."""
        return ()


DEFAULTS = page_defaults(StrengthQuery)
"""What a blank or missing key of the page means."""
