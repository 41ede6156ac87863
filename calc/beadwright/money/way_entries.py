"""The keys of one way to weld a part: what the shop pays, measures and waits for that way.

The first way has bare keys; those of a later one stand with its prefix. What a later way leaves
blank comes from the first; see ``cost_ways``.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from typing import Any

from beadwright.job.job import AskedTransfer
from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.money.demo_prices import DEMO_MINUTES, DEMO_PRICES
from beadwright.money.price_fields import Price, Words
from beadwright.process.gases import Gas
from beadwright.process.positions import Mover, Position
from beadwright.reading.entries import optional, part
from beadwright.reading.fields import Measured, QueryField

_MONEY = "no shop pays that for one way"
_MOST_ONCE = "1000000000", "no change of wire costs that"


def _minutes(label: str, help: str, high: str, why: str, default: str = "") -> Measured:
    return Measured("time", "0min", high, why, label=label, help=help, default=default)


@dataclass(frozen=True, slots=True, kw_only=True)
class WayEntries:
    """The keys of a way; defaults are common practice or the demonstration shop's [SI, money]."""

    name: str | None = optional(Words(40, label="Call it", help="what to call the way"))
    arc_min: float | None = optional(
        Measured(
            "time",
            "0.01min",
            "10000min",
            "arc time of one part",
            label="Arc time of a part, timed",
            help="arc time of a part, measured",
            blank="worked out",
        )
    )
    laid: float | None = optional(
        Measured(
            "deposition",
            "0.2lb/h",
            "100lb/h",
            "no wire arc lays less or more",
            label="Laid an hour of arc, weighed",
            help="laid metal per hour of arc, measured",
            blank="worked out",
        )
    )
    efficiency: float | None = optional(
        Measured(
            "share",
            "50%",
            "100%",
            "no more is laid than melted",
            label="Laid over wire used, weighed",
            help="laid metal over wire used, measured",
            blank="worked out",
        )
    )
    gas_flow: float | None = optional(
        Measured(
            "gas_flow",
            "5ft3/h",
            "100ft3/h",
            "outside that nothing is shielded",
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
            label="Operating factor instead",
            help="operating factor: arc time over all time; blank: the minutes below",
        )
    )
    fit_up: float | None = optional(
        _minutes(
            "Fit-up, a part",
            "fit-up and tacking, for a part",
            "10000min",
            "minutes for one part",
            DEMO_MINUTES["fit_up"],
        )
    )
    reposition: float | None = optional(
        _minutes(
            "Next weld, each",
            "getting to the next weld, for each weld",
            "1000min",
            "minutes for one weld",
            DEMO_MINUTES["reposition"],
        )
    )
    clean: float | None = optional(
        _minutes(
            "Cleaning, each pass",
            "cleaning, for each pass",
            "1000min",
            "minutes for one pass",
            DEMO_MINUTES["clean"],
        )
    )
    spatter: float | None = optional(
        _minutes(
            "Spatter off, a part",
            "taking spatter off, for a part",
            "10000min",
            "minutes for one part",
            DEMO_MINUTES["spatter"],
        )
    )
    other: float | None = optional(
        _minutes(
            "Other, a part",
            "other time off the arc, for a part",
            "10000min",
            "minutes for one part",
        )
    )
    spool_change: float | None = optional(
        _minutes(
            "A spool change",
            "one change of spool",
            "1000min",
            "minutes for one change",
            DEMO_MINUTES["spool_change"],
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
            "half of the wire thrown away is no way to weld",
            label="Wire never melted",
            help="wire bought and never melted",
            default="2%",
        )
    )
    rework: float | None = optional(
        Measured(
            "share",
            "0%",
            "100%",
            "each part welded twice at the most",
            label="Parts welded twice",
            help="parts welded twice",
            default="2%",
        )
    )
    wire_price: float | None = optional(
        Price(
            "price_per_mass",
            "1000000/kg",
            _MONEY,
            label="Price of wire",
            help="price of wire",
            default=DEMO_PRICES["wire_price"],
        )
    )
    gas_price: float | None = optional(
        Price(
            "price_per_volume",
            "1000000/m3",
            _MONEY,
            label="Price of gas",
            help="price of gas by volume",
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
            label="Gas in it when full",
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
            label="A tip lasts, arc hours",
            help="arc hours a tip lasts",
            default="8h",
        )
    )
    yearly: float | None = optional(
        Price(
            "money",
            "1000000000",
            _MONEY,
            label="Paid by the year for it",
            help="paid by the year for this way",
        )
    )


def _once(label: str, help: str) -> Price:
    return Price("money", *_MOST_ONCE, label=label, help=f"{help}, paid once", blank="0")


@dataclass(frozen=True, slots=True, kw_only=True)
class OnceEntries:
    """The keys of what changing to a way may cost once [money]."""

    rolls: float | None = optional(_once("Drive rolls", "drive rolls for the wire"))
    liner: float | None = optional(_once("Liner and gun parts", "liner and gun parts"))
    gas_change: float | None = optional(
        _once("Changing the gas", "changing gas: regulators, mixer, leftover cylinders")
    )
    procedure: float | None = optional(_once("Qualifying a procedure", "qualifying a procedure"))
    training: float | None = optional(
        _once("Training and trial plates", "training and trial plates")
    )
    stock: float | None = optional(_once("Old and new stock", "old wire left over and new stock"))

    def amounts(self) -> tuple[tuple[str, float], ...]:
        """Return what is paid once, name by name [money]."""
        names = (each.name for each in dataclasses.fields(self))
        return tuple((name, getattr(self, name) or 0.0) for name in names)


def _of_job(key: str) -> QueryField[Any]:
    return JOB_FIELDS[key].but(default="", blank="worked out")


def _chosen(key: str) -> QueryField[Any]:
    return JOB_FIELDS[key].but(default="", blank="As A")


@dataclass(frozen=True, slots=True, kw_only=True)
class JobChanges:
    """The keys of the job that a later way may have of its own [SI]."""

    wire: str | None = optional(_chosen("wire"))
    dia: str | None = optional(_chosen("dia"))
    gas: Gas | None = optional(_chosen("gas"))
    transfer: AskedTransfer | None = optional(_chosen("transfer"))
    travel_by: Mover | None = optional(_chosen("travel_by"))
    position: Position | None = optional(_chosen("position"))
    leg: float | None = optional(_of_job("leg"))
    reinforcement: float | None = optional(_of_job("reinforcement"))
    wfs: float | None = optional(_of_job("wfs"))
    volts: float | None = optional(_of_job("volts"))
    ctwd: float | None = optional(_of_job("ctwd"))
    travel: float | None = optional(_of_job("travel"))

    def written(self) -> dict[str, Any]:
        """Return those that are said, by key."""
        return written(self)


@dataclass(frozen=True, slots=True, kw_only=True)
class LaterWay:
    """The keys of a later way, without its prefix."""

    job: JobChanges = part(JobChanges)
    way: WayEntries = part(WayEntries)
    once: OnceEntries = part(OnceEntries)


def written(entries: JobChanges | WayEntries) -> dict[str, Any]:
    """Return what of some keys is said, by key.

    Args:
        entries: The keys [SI].
    """
    found = {each.name: getattr(entries, each.name) for each in dataclasses.fields(entries)}
    return {key: value for key, value in found.items() if value is not None}
