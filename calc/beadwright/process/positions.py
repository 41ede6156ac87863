"""Welding positions: AWS A3.0 and ISO 6947 names, and what each allows."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.errors import UnknownEntryError
from beadwright.measures import INCH_M
from beadwright.phrases import Phrase, say
from beadwright.typed_number import quoted

Orientation = Literal["flat", "horizontal", "vertical-up", "vertical-down", "overhead"]
Mover = Literal["hand", "track", "robot"]


@dataclass(frozen=True, slots=True)
class Position:
    """A position.

    Attributes:
        number: 1, 2, 3-up, 3-down or 4.
        orientation: In words.
        iso_fillet: ISO 6947 name for fillets.
        iso_groove: ISO 6947 name for grooves.
        single_pass_leg_m: Largest fillet in one pass [m].
        single_pass_source: Source id of that.
        practical_leg_m: What one pass is planned to [m].
        sprays: True if axial spray can be held.
    """

    number: str
    orientation: Orientation
    iso_fillet: str
    iso_groove: str
    single_pass_leg_m: float
    single_pass_source: str
    practical_leg_m: float
    sprays: bool

    @property
    def phrase(self) -> Phrase:
        """What its orientation is called."""
        return ORIENTATION_PHRASES[self.orientation]

    def name(self, fillet: bool) -> str:
        """Return the AWS name, such as 2F or 3G-up."""
        digit, _, way = self.number.partition("-")
        return digit + ("F" if fillet else "G") + (f"-{way}" if way else "")


POSITIONS: Mapping[str, Position] = MappingProxyType(
    {
        position.number: position
        for position in (
            Position("1", "flat", "PA", "PA", 1 / 2 * INCH_M, "aws-d1.1-5.1", 3 / 8 * INCH_M, True),
            Position("2", "horizontal", "PB", "PC", 3 / 8 * INCH_M, "aws-d1.1-5.1",
                     5 / 16 * INCH_M, True),
            Position("3-up", "vertical-up", "PF", "PF", 1 / 2 * INCH_M, "aws-d1.1-5.1",
                     3 / 8 * INCH_M, False),
            Position("3-down", "vertical-down", "PG", "PG", 3 / 16 * INCH_M, "practice",
                     3 / 16 * INCH_M, False),
            Position("4", "overhead", "PD", "PE", 5 / 16 * INCH_M, "aws-d1.1-5.1",
                     1 / 4 * INCH_M, False),
        )
    }
)  # fmt: skip
"""Positions by number.

Largest single-pass fillet: AWS D1.1:2020 Table 5.1, GMAW/FCAW column (second-hand copy): flat
1/2, horizontal 3/8, vertical 1/2, overhead 5/16 in. Vertical-down is not in that table; 3/16 in
is common practice. What one pass is *planned* to: horizontal 5/16 in is AISC Steel Interchange's
practical one-pass size; the others are common practice.
"""

ORIENTATION_PHRASES: Mapping[Orientation, Phrase] = MappingProxyType(
    {
        "flat": say("process.flat"),
        "horizontal": say("process.horizontal"),
        "vertical-up": say("process.vertical-up"),
        "vertical-down": say("process.vertical-down"),
        "overhead": say("process.overhead"),
    }
)
"""What each orientation is called."""

MOVER_PHRASES: Mapping[Mover, Phrase] = MappingProxyType(
    {
        "hand": say("process.a-hand"),
        "track": say("process.a-track"),
        "robot": say("process.a-robot"),
    }
)
"""What moves the torch, as a sentence names it."""

_TRAVEL_IN_MIN: tuple[tuple[Mover, Orientation, float, float], ...] = (
    ("hand", "flat", 6.0, 40.0),
    ("hand", "horizontal", 6.0, 40.0),
    ("hand", "vertical-up", 3.0, 8.0),
    ("hand", "vertical-down", 8.0, 36.0),
    ("hand", "overhead", 4.0, 20.0),
    ("track", "flat", 4.0, 60.0),
    ("track", "horizontal", 4.0, 60.0),
    ("track", "vertical-up", 3.0, 15.0),
    ("track", "vertical-down", 8.0, 60.0),
    ("track", "overhead", 4.0, 40.0),
    ("robot", "flat", 6.0, 80.0),
    ("robot", "horizontal", 6.0, 80.0),
    ("robot", "vertical-up", 3.0, 20.0),
    ("robot", "vertical-down", 8.0, 80.0),
    ("robot", "overhead", 5.0, 60.0),
)

TRAVEL_RANGE_M_S: Mapping[tuple[Mover, Orientation], tuple[float, float]] = MappingProxyType(
    {
        (mover, orientation): (low * INCH_M / 60, high * INCH_M / 60)
        for mover, orientation, low, high in _TRAVEL_IN_MIN
    }
)
"""Travel that a hand, track or robot holds steadily, by position: low, high [m/s]. Common
practice."""

_COMFORTABLE_IN_MIN: tuple[tuple[Mover, Orientation, float, float], ...] = (
    ("hand", "flat", 9.0, 24.0),
    ("hand", "horizontal", 9.0, 24.0),
    ("hand", "vertical-up", 3.5, 7.0),
    ("hand", "vertical-down", 10.0, 26.0),
    ("hand", "overhead", 5.0, 14.0),
    ("track", "flat", 8.0, 32.0),
    ("track", "horizontal", 8.0, 32.0),
    ("track", "vertical-up", 3.5, 10.0),
    ("track", "vertical-down", 10.0, 40.0),
    ("track", "overhead", 5.0, 24.0),
    ("robot", "flat", 12.0, 55.0),
    ("robot", "horizontal", 12.0, 55.0),
    ("robot", "vertical-up", 4.0, 14.0),
    ("robot", "vertical-down", 12.0, 55.0),
    ("robot", "overhead", 6.0, 36.0),
)

COMFORTABLE_TRAVEL_M_S: Mapping[tuple[Mover, Orientation], tuple[float, float]] = MappingProxyType(
    {
        (mover, orientation): (low * INCH_M / 60, high * INCH_M / 60)
        for mover, orientation, low, high in _COMFORTABLE_IN_MIN
    }
)
"""Travel a mover keeps for a shift, by position: slow and fast end [m/s].

Source: printed fillets run 25 to 60 cm/min, 10 to 24 in/min, flat and horizontal (power-source
manuals, found); overhead flux-cored 8 to 14 in/min (a sample procedure, second-hand); vertical-up 3
to 8 in/min (from memory). Track and robot: common practice.
"""

_ISO: Mapping[str, str] = MappingProxyType(
    {"PA": "1", "PB": "2", "PC": "2", "PD": "4", "PE": "4", "PF": "3-up", "PG": "3-down"}
)


def position_of(name: str) -> Position:
    """Return a position by its AWS name (fillet or groove letter) or ISO 6947 name.

    Source: AWS A3.0M/A3.0 and ISO 6947:2019 designations, from memory.

    Args:
        name: Such as ``2F``, ``3G-up``, ``PB`` [-].

    Raises:
        UnknownEntryError: If it is none of them.
    """
    wanted = name.strip().upper()
    number = _ISO.get(wanted)
    if number is None and len(wanted) >= 2 and wanted[1] in "FG":
        number = wanted[0] + wanted[2:].lower()
    if number is None or number not in POSITIONS:
        raise UnknownEntryError(
            f"{quoted(name)} is no position; use 1F 2F 3F-up 3F-down 4F, 1G 2G 3G-up 3G-down 4G "
            "or PA to PG"
        )
    return POSITIONS[number]
