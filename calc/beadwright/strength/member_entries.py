"""The Strength page's keys of the parts joined: their widths, the other's steel, how they stand."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.reading.entries import optional
from beadwright.reading.fields import Entry, Measured
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
            "Width of the plate lying down",
            "width of a lap's lower plate across the pull; blank: as far as the welds reach",
        )
    )
    steel2: SteelStrength | None = optional(
        Entry(
            strength_of,
            tuple(STRENGTHS),
            label="Other plate's steel",
            help="grade of the other plate; blank: the same",
            blank="the same",
        )
    )
