"""The keys of one way to weld a part: what the shop pays, measures and waits for that way.

The first way has bare keys; those of a later one stand with its prefix. What a later way leaves
blank comes from the first; see ``cost_ways``.
"""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.money.cell_entries import CellEntries, minutes
from beadwright.money.demo_prices import DEMO_MINUTES, DEMO_PRICES
from beadwright.money.price_fields import PackagePrice, Price, Priced, Words
from beadwright.reading.entries import optional
from beadwright.reading.fields import Measured

_MONEY = "no shop pays that for one way"


@dataclass(frozen=True, slots=True, kw_only=True)
class WayEntries(CellEntries):
    """The keys of a way; defaults are common practice or the demonstration shop's [SI, money]."""

    name: str | None = optional(Words(40, label="Name", help="what to call the way"))
    arc_min: float | None = optional(
        Measured(
            "time",
            "0.01min",
            "10000min",
            "arc time of one part",
            label="Arc time a part, timed",
            help="arc time of a part, measured",
            blank="worked out",
        )
    )
    laid: float | None = optional(
        Measured(
            "deposition",
            "0.2lb/h",
            "100lb/h",
            "no wire arc deposits less or more",
            label="Deposition rate, weighed",
            help="deposition rate: weld metal an hour of arc, measured",
            blank="worked out",
        )
    )
    efficiency: float | None = optional(
        Measured(
            "share",
            "50%",
            "100%",
            "no more is deposited than melted",
            label="Deposition efficiency, weighed",
            help="deposition efficiency: weld metal over wire used, measured",
            blank="worked out",
        )
    )
    gas_flow: float | None = optional(
        Measured(
            "gas_flow",
            "5ft3/h",
            "100ft3/h",
            "outside that the weld is not shielded",
            label="Gas flow set",
            help="gas flow set",
            blank="worked out",
        )
    )
    factor: float | None = optional(
        Measured(
            "share",
            "1%",
            "100%",
            "arc time over all time, as 45%",
            label="Operating factor",
            help="operating factor: arc time over all time, cleanup and all other minutes in it; "
            "a later way keeps the minutes of the first, adjusted for its own that differ; "
            "blank: the minutes",
        )
    )
    fit_up: float | None = optional(
        minutes(
            "Fit-up, a part",
            "fit-up and tacking, for a part",
            "10000min",
            "minutes for one part",
            DEMO_MINUTES["fit_up"],
        )
    )
    reposition: float | None = optional(
        minutes(
            "Moving to the next weld",
            "moving to the next weld, for each weld",
            "1000min",
            "minutes for one weld",
            DEMO_MINUTES["reposition"],
        )
    )
    clean: float | None = optional(
        minutes(
            "Cleaning, each pass",
            "cleaning, for each pass",
            "1000min",
            "minutes for one pass",
            DEMO_MINUTES["clean"],
        )
    )
    spatter: float | None = optional(
        minutes(
            "Spatter cleanup, a part",
            "spatter cleanup, for a part",
            "10000min",
            "minutes for one part",
            DEMO_MINUTES["spatter"],
        )
    )
    other: float | None = optional(
        minutes(
            "Other non-arc, a part",
            "other non-arc time, for a part",
            "10000min",
            "minutes for one part",
        )
    )
    spool_change: float | None = optional(
        minutes(
            "Spool change, each",
            "one change of spool",
            "1000min",
            "minutes for one change",
            DEMO_MINUTES["spool_change"],
        )
    )
    swap: float | None = optional(
        minutes(
            "Wire swap, a batch",
            "changing spool, rolls and settings over, for each batch",
            "10000min",
            "minutes for one batch",
            blank="none",
        )
    )
    spool: float | None = optional(
        Measured(
            "mass",
            "1lb",
            "2000lb",
            "smallest spool to largest drum",
            label="Wire on a spool",
            help="wire on a spool",
            default="33lb",
        )
    )
    waste: float | None = optional(
        Measured(
            "share",
            "0%",
            "50%",
            "more than half of the wire wasted is not a way to weld",
            label="Wire wasted",
            help="wire bought and not melted",
            default="2%",
        )
    )
    rework: float | None = optional(
        Measured(
            "share",
            "0%",
            "100%",
            "each part is welded again once at most",
            label="Rework, parts welded again",
            help="rework: parts welded again",
            default="2%",
        )
    )
    wire_price: Priced | None = optional(
        PackagePrice(
            "price_per_mass",
            "mass",
            "1000000/kg",
            _MONEY,
            label="Price of wire",
            help="price of wire, as 2.10/lb, 62/33lb, or 62/spool with the wire on a spool",
            default=DEMO_PRICES["wire_price"],
        )
    )
    spool_price: float | None = optional(
        Price(
            "money",
            "1000000000",
            _MONEY,
            label="Price of a spool, box or drum",
            help="price of a full spool, box or drum; with the wire on it, it outranks wire_price",
            blank="by weight",
        )
    )
    gas_price: Priced | None = optional(
        PackagePrice(
            "price_per_volume",
            "gas_volume",
            "1000000/m3",
            _MONEY,
            label="Price of gas",
            help="price of gas, as 0.11/ft3, 38/330ft3, or 38/cylinder with the gas in one",
            default=DEMO_PRICES["gas_price"],
        )
    )
    # No default: asked only where the shop pays by the cylinder.
    cylinder_price: float | None = optional(
        Price(
            "money",
            "1000000000",
            _MONEY,
            label="Price of a cylinder",
            help="price of a cylinder filled; with its content it outranks gas_price",
        )
    )
    cylinder_gas: float | None = optional(
        Measured(
            "gas_volume",
            "1ft3",
            "100000ft3",
            "hand bottle to bulk tank",
            label="Gas in a full cylinder",
            help="gas in a full cylinder",
        )
    )
    tip_price: float | None = optional(
        Price(
            "money",
            "1000000",
            _MONEY,
            label="Price of a tip",
            help="price of a contact tip",
            default=DEMO_PRICES["tip_price"],
        )
    )
    tip_life: float | None = optional(
        Measured(
            "hours",
            "0.1h",
            "10000h",
            "arc hours of one tip",
            label="Life of a tip, arc hours",
            help="arc hours a tip lasts",
            default="8h",
        )
    )
