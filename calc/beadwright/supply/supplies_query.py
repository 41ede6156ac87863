"""The Supplies page's keys: the job, how many, packages, the spool and the cylinder in use."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.money.cost_query import CostQuery
from beadwright.money.demo_prices import DEMO_PRICES
from beadwright.money.volume_entries import VolumeEntries
from beadwright.money.way_entries import WayEntries
from beadwright.reading.entries import fields_of, optional, part, required
from beadwright.reading.fields import Entry, Measured, QueryField, WholeNumber
from beadwright.reading.temperature_field import Temperature
from beadwright.supply.cylinder_sizes import (
    BOTTLES,
    CYLINDERS,
    CylinderSize,
    bottle_of,
    cylinder_of,
)

_OF_WAY = (
    "arc_min", "laid", "efficiency", "gas_flow", "spool", "waste", "rework", "wire_price",
    "gas_price", "cylinder_price", "cylinder_gas", "tip_price", "tip_life",
)  # fmt: skip
_OF_COST = fields_of(CostQuery)

_WEIGHED = "smallest spool to largest drum"
_WOUND = "sizes of a winding, from hand spool to drum"


@dataclass(frozen=True, slots=True, kw_only=True)
class SpoolEntries:
    """The keys of the begun spool, weighed or measured [SI]."""

    spool_gross: float | None = optional(
        Measured(
            "mass",
            "0.1lb",
            "2500lb",
            _WEIGHED,
            label="Weight of the spool with wire",
            help="weight of the started spool with its wire",
        )
    )
    spool_empty: float | None = optional(
        Measured(
            "mass",
            "0.01lb",
            "500lb",
            _WEIGHED,
            label="Weight of an empty spool",
            help="weight of an empty spool of the same kind",
        )
    )
    spool_outside: float | None = optional(
        Measured(
            "length",
            "1in",
            "48in",
            _WOUND,
            label="Diameter over the wire",
            help="outside diameter over the wire now",
        )
    )
    spool_hub: float | None = optional(
        Measured(
            "length",
            "1/2in",
            "47in",
            _WOUND,
            label="Diameter of the barrel",
            help="diameter of the barrel under the winding",
        )
    )
    spool_width: float | None = optional(
        Measured(
            "length",
            "1/2in",
            "48in",
            _WOUND,
            label="Width between flanges",
            help="width between the flanges",
        )
    )
    spool_full: float | None = optional(
        Measured(
            "length",
            "1in",
            "48in",
            _WOUND,
            label="Diameter when full",
            help="outside diameter of the winding when full; blank: not known",
        )
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class CylinderEntries:
    """The keys of the cylinder at hand [SI]."""

    gauge: float | None = optional(
        Measured(
            "pressure",
            "0psi",
            "4400psi",
            "a 300 bar cylinder holds no more",
            label="Gauge pressure",
            help="pressure on the cylinder's gauge",
        )
    )
    bottle: CylinderSize | None = optional(
        Entry(
            bottle_of,
            tuple(BOTTLES),
            label="Size of this cylinder",
            help="size of the bottle at hand: stands in for its water volume",
        )
    )
    water: float | None = optional(
        Measured(
            "water_volume",
            "0.5L",
            "1000L",
            "hand bottle to bundle",
            label="Water volume stamped on it",
            help="water volume of the cylinder, stamped on its shoulder; outranks its size",
        )
    )
    gas_temp: float = required(
        Temperature(
            250.0,
            330.0,
            {"us": "-9F to 134F", "si": "-23C to 56C"},
            "no cylinder is kept so",
            label="Cylinder's temperature",
            help="temperature of the cylinder, as 70F or 21C",
            default="70F",
        )
    )
    co2_mass: float | None = optional(
        Measured(
            "mass",
            "0lb",
            "2000lb",
            "hand bottle to tank",
            label="CO2 left, weighed",
            help="CO2 in the cylinder: its weight now less the weight stamped on it",
        )
    )


def _of_way(key: str, field: QueryField[Any]) -> QueryField[Any]:
    return field.but(default=DEMO_PRICES[key]) if key == "cylinder_price" else field


@dataclass(frozen=True, slots=True, kw_only=True)
class SuppliesQuery(PageQuery):
    """The Supplies page's query: its keys besides the job's [SI, money]."""

    way: WayEntries = part(WayEntries, only=_OF_WAY, change=_of_way)
    nozzle_price: float = required(_OF_COST["nozzle_price"])
    nozzle_life: float = required(_OF_COST["nozzle_life"])
    gas_extra: float = required(_OF_COST["gas_extra"])
    volume: VolumeEntries = part(VolumeEntries)
    weeks: int = required(_OF_COST["weeks"])
    currency: str = required(_OF_COST["currency"])
    count: int = required(
        WholeNumber(
            0,
            100_000_000,
            label="Parts to weld now",
            help="parts to weld now",
            default="40",
        )
    )
    on_hand: float | None = optional(
        Measured(
            "mass",
            "0lb",
            "2000lb",
            _WEIGHED,
            label="Wire on the machine now",
            help="wire on the machine now",
        )
    )
    cylinder: CylinderSize | None = optional(
        Entry(
            cylinder_of,
            tuple(CYLINDERS),
            label="Size of cylinder",
            help="size of gas cylinder, or bulk; blank: 330ft3, or 50lb of CO2",
            blank="Usual",
        )
    )
    spool: SpoolEntries = part(SpoolEntries)
    gas: CylinderEntries = part(CylinderEntries)


DEFAULTS = page_defaults(SuppliesQuery)
"""What a blank or missing key of the page means."""
