"""What is measured and seen on a finished weld: one key each, all of them optional."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Choice, Measured, WholeNumber

_LEG = "1/32in", "3in", "a weld gauge reads no less and no more"
_FINE = "0in", "1/2in", "deeper is no flaw but a missing weld"
_SUM = "0in", "12in", "more than the length it is counted in"
_LONG = "0in", "1000ft", "one weld, not the whole job"


@dataclass(frozen=True, slots=True, kw_only=True)
class WeldReadings:
    """The keys of a weld's readings; None where nothing was measured [SI]."""

    leg_found: float | None = optional(
        Measured(
            "leg",
            *_LEG,
            label="Leg on the bottom plate",
            help="leg measured along the bottom plate",
        )
    )
    leg2_found: float | None = optional(
        Measured(
            "leg",
            *_LEG,
            label="Leg on the vertical plate",
            help="leg measured along the vertical plate; blank: counted as the first",
            blank="as the first",
        )
    )
    read_by: Literal["along", "gauge"] = required(
        Choice(
            ("along", "gauge"),
            label="Legs of a skewed tee read",
            help="along (on the plate, root to toe) or gauge (square across to the vertical plate)",
            default="along",
        )
    )
    throat_found: float | None = optional(
        Measured(
            "leg",
            *_LEG,
            label="Throat, root to face",
            help="throat from the root to the face, crown and all, as a throat gauge reads it",
        )
    )
    face: float | None = optional(
        Measured(
            "leg",
            "0.02in",
            "4in",
            "no weld has a narrower or wider face",
            label="Width of the face",
            help="width of the face, toe to toe; blank: from the legs, or as planned",
        )
    )
    convexity: float | None = optional(
        Measured(
            "small_length",
            *_FINE,
            label="Crown",
            help="convexity of a fillet, reinforcement of a groove",
        )
    )
    concavity: float | None = optional(
        Measured(
            "small_length",
            *_FINE,
            label="Hollow",
            help="concavity of a fillet, underfill of a groove",
        )
    )
    short_length: float | None = optional(
        Measured(
            "length",
            *_LONG,
            label="Undersize over",
            help="length of the weld that is undersize; blank: all along",
            blank="all along",
        )
    )
    length_found: float | None = optional(
        Measured("length", *_LONG, label="Length of the weld", help="length of the weld measured")
    )
    gap_found: float | None = optional(
        Measured(
            "leg",
            "0in",
            "1in",
            "wider is no joint",
            label="Root opening",
            help="root opening measured; blank: as planned",
        )
    )
    undercut: float | None = optional(
        Measured("small_length", *_FINE, label="Undercut, deepest", help="depth of undercut")
    )
    undercut_length: float | None = optional(
        Measured(
            "length",
            "0in",
            "12in",
            "it is counted in the worst 12 in",
            label="Undercut over",
            help="length of undercut in the worst 12 in (100 mm by ISO); blank: all along",
            blank="all along",
        )
    )
    overlap: float | None = optional(
        Measured(
            "small_length",
            *_FINE,
            label="Overlap",
            help="overlap, cold lap: weld metal on the plate that is not fused",
        )
    )
    pore: float | None = optional(
        Measured("small_length", *_FINE, label="Largest pore", help="diameter of the largest pore")
    )
    pores_inch: float | None = optional(
        Measured(
            "small_length",
            *_SUM,
            label="Pores added up, worst inch",
            help="diameters of pores from 1/32 in added up in the worst inch",
        )
    )
    pores_foot: float | None = optional(
        Measured(
            "small_length",
            *_SUM,
            label="Pores added up, worst 12 in",
            help="diameters of pores from 1/32 in added up in the worst 12 in",
        )
    )
    pore_count: int | None = optional(
        WholeNumber(
            0, 500, label="Pores in the worst 4 in", help="number of pores in the worst 4 in"
        )
    )
    crater: float | None = optional(
        Measured(
            "small_length",
            *_FINE,
            label="Crater, below the face",
            help="how far the end crater lies below the face",
        )
    )
    cracks: Literal["no", "yes", "crater"] | None = optional(
        Choice(
            ("no", "yes", "crater"),
            label="Cracks",
            help="no, yes, or crater; blank: not looked at",
            blank="not looked at",
        )
    )
    unfused: Literal["no", "yes"] | None = optional(
        Choice(
            ("no", "yes"),
            label="Incomplete fusion",
            help="incomplete fusion seen, no or yes; blank: not looked at",
            blank="not looked at",
        )
    )
