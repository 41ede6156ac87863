"""The Strength page's keys of the parts joined: their widths, the other's steel, how they stand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Choice, Entry, Measured, WholeNumber
from beadwright.strength.steel_strength import STRENGTHS, SteelStrength, strength_of


def _width(label: str, help: str) -> Measured:
    return Measured(
        "length",
        "1/4in",
        "100ft",
        "narrower is no plate",
        label=label,
        help=help,
        blank="the welds'",
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class MemberEntries:
    """The keys of the parts a weld joins [SI]."""

    plate2_width: float | None = optional(
        _width(
            "Width of the upper plate",
            "width of a lap's upper plate across the pull; blank: as far as the welds reach",
        )
    )
    plate_width: float | None = optional(
        _width(
            "Width of the bottom plate",
            "width of a lap's lower plate across the pull; blank: as far as the welds reach",
        )
    )
    steel2: SteelStrength | None = optional(
        Entry(
            strength_of,
            tuple(STRENGTHS),
            label="Second plate's steel",
            help="grade of the second plate; blank: the same",
            blank="the same",
        )
    )
    far_leg: float | None = optional(
        Measured(
            "leg",
            "1/16in",
            "2in",
            "smaller cannot be measured, larger wants a groove",
            label="Leg on the other side",
            help="of a skewed tee, as on a square tee; blank: laid as long as the first side's leg",
            blank="laid as the first",
        )
    )
    plugs: int = required(
        WholeNumber(
            1,
            1000,
            label="Plugs or slots that share the load",
            help="plugs or slots that share the load evenly",
            default="1",
        )
    )
    held: Literal["no", "yes"] = required(
        Choice(
            ("no", "yes"),
            label="Part held from turning about its weld",
            help="yes if something besides a weld from one side keeps the part from turning",
            default="no",
        )
    )
