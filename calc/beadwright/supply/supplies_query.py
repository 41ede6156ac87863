"""The Supplies page's keys: the job, how many, packages, the spool and the cylinder in use."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from marshmallow import Schema, ValidationError, fields

from beadwright import units
from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.money.cost_query import DEFAULTS as COST_DEFAULTS
from beadwright.money.cost_query import KEY_WORDS as COST_WORDS
from beadwright.money.cost_query import shared_fields, way_fields
from beadwright.money.demo_prices import DEMO_PRICES
from beadwright.reading.fields import Entry, Measured, WholeNumber
from beadwright.supply.cylinders import CYLINDERS, cylinder_of

_OF_WAY = (
    "arc_min", "laid", "efficiency", "gas_flow", "spool", "waste", "rework", "wire_price",
    "gas_price", "cylinder_price", "cylinder_gas", "tip_price", "tip_life",
)  # fmt: skip
_OF_SHOP = (
    "nozzle_price", "nozzle_life", "gas_extra", "parts", "weeks", "currency",
)  # fmt: skip

SUPPLY_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "count": "parts to weld now",
        "on_hand": "wire on the machine now",
        "cylinder": "size of gas cylinder, or bulk; blank: 330ft3, or 50lb of CO2",
        "spool_gross": "weight of the begun spool with its wire",
        "spool_empty": "weight of such a spool empty",
        "spool_outside": "outside diameter of the winding now",
        "spool_hub": "diameter of the barrel under the winding",
        "spool_width": "width between the flanges",
        "spool_full": "outside diameter of the winding when full; blank: not known",
        "gauge": "pressure on the cylinder's gauge",
        "water": "water volume of the cylinder, stamped on its shoulder",
        "gas_temp": "temperature of the cylinder, as 70F or 21C",
        "co2_mass": "CO2 in the cylinder: its weight now less the weight stamped on it",
    }
)
"""What each key besides the job's and the cost's means."""

_SUPPLY_DEFAULTS = {
    "count": "40", "on_hand": "", "cylinder": "", "spool_gross": "", "spool_empty": "",
    "spool_outside": "", "spool_hub": "", "spool_width": "", "spool_full": "", "gauge": "",
    "water": "", "gas_temp": "70F", "co2_mass": "",
    "cylinder_price": DEMO_PRICES["cylinder_price"],
}  # fmt: skip

DEFAULTS: Mapping[str, str] = MappingProxyType(
    {
        **JOB_DEFAULTS,
        **{key: COST_DEFAULTS[key] for key in (*_OF_WAY, *_OF_SHOP)},
        **_SUPPLY_DEFAULTS,
    }
)
"""What a blank or missing key of the page means."""

KEY_WORDS: Mapping[str, str] = MappingProxyType(
    {**JOB_WORDS, **{key: COST_WORDS[key] for key in (*_OF_WAY, *_OF_SHOP)}, **SUPPLY_WORDS}
)
"""What each key means, for the terminal and the form."""

ZERO_CELSIUS_K = 273.15
COLDEST_K, HOTTEST_K = 250.0, 330.0
"""Temperatures a cylinder is stored at, -23 to 57 °C [K]."""


class Temperature(fields.Field[float]):
    """A temperature with its scale; a bare number takes the page's, °F or °C [K]."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        text = str(value).strip().upper().replace("°", "").replace("DEG", "").replace(" ", "")
        scale = text[-1:] if text[-1:] in ("F", "C", "K") else self._scale(data)
        try:
            number = float(units.read_number(text.rstrip("FCK")))
        except ValueError as error:
            raise ValidationError(f"{units.quoted(str(value))} is no temperature; write 70F or "
                                  "21C") from error  # fmt: skip
        kelvin = {"F": (number + 459.67) / 1.8, "C": number + ZERO_CELSIUS_K, "K": number}[scale]
        if not COLDEST_K <= kelvin <= HOTTEST_K:
            raise ValidationError(f"{units.short(str(value))} is outside -10F to 134F (-23C to "
                                  "56C): no cylinder is kept so")  # fmt: skip
        return kelvin

    @staticmethod
    def _scale(data: Mapping[str, Any] | None) -> str:
        return "C" if Measured.context_units(data) == "si" else "F"


_SPOOL = "sizes of a winding, from hand spool to drum"


def _own() -> dict[str, fields.Field[Any]]:
    weigh = "smallest spool to largest drum"
    return {
        "count": WholeNumber(0, 100_000_000),
        "on_hand": Measured("mass", "0lb", "2000lb", weigh),
        "cylinder": Entry(cylinder_of, tuple(CYLINDERS)),
        "spool_gross": Measured("mass", "0.1lb", "2500lb", weigh),
        "spool_empty": Measured("mass", "0.01lb", "500lb", weigh),
        "spool_outside": Measured("length", "1in", "48in", _SPOOL),
        "spool_hub": Measured("length", "1/2in", "47in", _SPOOL),
        "spool_width": Measured("length", "1/2in", "48in", _SPOOL),
        "spool_full": Measured("length", "1in", "48in", _SPOOL),
        "gauge": Measured("pressure", "0psi", "4400psi", "a 300 bar cylinder holds no more"),
        "water": Measured("water_volume", "0.5L", "1000L", "hand bottle to bundle"),
        "gas_temp": Temperature(),
        "co2_mass": Measured("mass", "0lb", "2000lb", "hand bottle to tank"),
    }


def _fields() -> dict[str, fields.Field[Any]]:
    cost = {**way_fields(), **shared_fields()}
    return {**{key: cost[key] for key in (*_OF_WAY, *_OF_SHOP)}, **_own()}


SuppliesSchema = Schema.from_dict(_fields(), name="SuppliesSchema")
"""The page's keys besides the job's."""
