"""The Cost page's keys: the job, two to four ways to weld it, what the shop pays, its volume.

The first way has bare keys. The second is written with ``b_`` before a key, then ``c_`` and ``d_``.
What is not written for a later way comes from the first; see ``cost_ways``.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from marshmallow import Schema, fields

from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.money.demo_prices import DEMO_MINUTES, DEMO_PRICES, DEMO_VOLUME
from beadwright.money.price_fields import Price, Words
from beadwright.reading.fields import Measured, WholeNumber

PREFIXES = ("", "b_", "c_", "d_")
"""What stands before a key of each way."""

WAY_JOB_KEYS = (
    "wire", "dia", "gas", "transfer", "travel_by", "position", "leg", "reinforcement",
    "wfs", "volts", "ctwd", "travel",
)  # fmt: skip
"""Keys of the job that a later way may have of its own."""

ONCE_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "rolls": "drive rolls for the wire, paid once",
        "liner": "liner and gun parts, paid once",
        "gas_change": "changing gas: regulators, mixer, leftover cylinders, paid once",
        "procedure": "qualifying a procedure, paid once",
        "training": "training and trial plates, paid once",
        "stock": "old wire left over and new stock, paid once",
    }
)
"""What changing to a way may cost once."""

WAY_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "name": "what to call the way",
        "arc_min": "arc time of a part, measured",
        "laid": "laid metal per hour of arc, measured",
        "efficiency": "laid metal over wire used, measured",
        "gas_flow": "gas flow set",
        "factor": "operating factor: arc time over all time; blank: the minutes below",
        "fit_up": "fit-up and tacking, for a part",
        "reposition": "getting to the next weld, for each weld",
        "clean": "cleaning, for each pass",
        "spatter": "taking spatter off, for a part",
        "other": "other time off the arc, for a part",
        "spool_change": "one change of spool",
        "spool": "wire on a spool",
        "waste": "wire bought and never melted",
        "rework": "parts welded twice",
        "wire_price": "price of wire",
        "gas_price": "price of gas by volume",
        "cylinder_price": "price of a cylinder filled; with its content it outranks gas_price",
        "cylinder_gas": "gas in a full cylinder",
        "tip_price": "price of a contact tip",
        "tip_life": "arc hours a tip lasts",
        "yearly": "paid by the year for this way",
    }
)
"""What each key of a way means."""

SHARED_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "labour": "labour, wages and what comes on top",
        "overhead": "overhead of the shop",
        "energy_price": "electricity",
        "machine_efficiency": "arc power over power drawn",
        "idle": "power drawn while no arc burns",
        "nozzle_price": "price of a nozzle",
        "nozzle_life": "arc hours a nozzle lasts",
        "gas_extra": "gas before and after each arc",
        "grind": "grinding out a part before it is welded again",
        "parts": "parts a year",
        "batch": "parts in a batch",
        "months": "months in which what is paid once must come back",
        "welders": "torches that can burn at once",
        "shift": "hours in a shift",
        "shifts": "shifts a week",
        "weeks": "weeks a year",
        "swing_rates": "how far labour and overhead may be off, either way",
        "swing_prices": "how far wire and gas prices may be off",
        "swing_feed": "how far laid metal per hour may be off",
        "swing_minutes": "how far the minutes off the arc may be off",
        "swing_volume": "how far the parts a year may be off",
        "swing_once": "how far what is paid once may be off",
        "swing_size": "how much heavier than drawn the welds may be",
        "seed": "same seed, same draws",
        "draws": "draws of the chance that switching pays",
        "currency": "sign before money",
    }
)
"""What each key of the shop means."""

_WAY_DEFAULTS = {
    "spool": "33lb", "waste": "2%", "rework": "2%", "tip_life": "8h", "other": "", "yearly": "",
}  # fmt: skip
"""Common practice; the rest of a way's defaults are invented or blank."""

_SHARED_DEFAULTS = {
    "machine_efficiency": "85%", "idle": "0.1kW", "nozzle_life": "60h", "gas_extra": "1.5s",
    "months": "12", "welders": "1", "shift": "8h", "shifts": "5", "weeks": "50",
    "swing_rates": "10%", "swing_prices": "5%", "swing_feed": "5%", "swing_minutes": "15%",
    "swing_volume": "25%", "swing_once": "25%", "swing_size": "10%",
    "seed": "1", "draws": "2000", "currency": "$",
}  # fmt: skip

_DEMO = {**DEMO_PRICES, **DEMO_MINUTES, **DEMO_VOLUME}
_NOT_HERE = ("cylinder_price",)
"""Asked here only where the shop pays by the cylinder."""


def _defaults() -> dict[str, str]:
    found = dict(JOB_DEFAULTS)
    for key in WAY_WORDS:
        found[key] = "" if key in _NOT_HERE else _DEMO.get(key, _WAY_DEFAULTS.get(key, ""))
    for key in SHARED_WORDS:
        found[key] = _DEMO.get(key, _SHARED_DEFAULTS.get(key, ""))
    for prefix in PREFIXES[1:]:
        for key in (*WAY_JOB_KEYS, *WAY_WORDS, *ONCE_WORDS):
            found[prefix + key] = _DEMO.get(prefix + key, "")
    found["b_wire"] = "E70C-6M"
    return found


DEFAULTS: Mapping[str, str] = MappingProxyType(_defaults())
"""What a blank or missing key of the page means. Blank: worked out, or as in the first way."""

_DEMO_OTHER = tuple(key for key in _DEMO if key.startswith("b_"))


def defaults_for(other_wire: str) -> Mapping[str, str]:
    """Return the defaults; the figures of the demonstration's second wire count for that wire only.

    Args:
        other_wire: The second way's wire as typed, or empty [-].
    """
    if not other_wire or other_wire.strip().upper() == DEFAULTS["b_wire"]:
        return DEFAULTS
    return MappingProxyType({**DEFAULTS, **dict.fromkeys(_DEMO_OTHER, "")})


def _words() -> dict[str, str]:
    found = {**JOB_WORDS, **WAY_WORDS, **SHARED_WORDS}
    for prefix in PREFIXES[1:]:
        way = prefix[0].upper()
        for key in (*WAY_JOB_KEYS, *WAY_WORDS):
            found[prefix + key] = f"{found[key]}, way {way}; blank: as the first way"
        for key, text in ONCE_WORDS.items():
            found[prefix + key] = f"{text}, way {way}"
    return found


KEY_WORDS: Mapping[str, str] = MappingProxyType(_words())
"""What each key means, for the terminal and the form."""


def _minutes(high: str, why: str) -> Measured:
    return Measured("time", "0min", high, why)


def way_fields() -> dict[str, fields.Field[Any]]:
    """Return fresh fields for the keys of one way."""
    money = "no shop pays that for one way"
    return {
        "name": Words(40),
        "arc_min": Measured("time", "0.01min", "10000min", "arc time of one part"),
        "laid": Measured("deposition", "0.2lb/h", "100lb/h", "no wire arc lays less or more"),
        "efficiency": Measured("share", "50%", "100%", "no more is laid than melted"),
        "gas_flow": Measured("gas_flow", "5ft3/h", "100ft3/h", "outside that nothing is shielded"),
        "factor": Measured("share", "1%", "100%", "arc time over all time, as 45%"),
        "fit_up": _minutes("10000min", "minutes for one part"),
        "reposition": _minutes("1000min", "minutes for one weld"),
        "clean": _minutes("1000min", "minutes for one pass"),
        "spatter": _minutes("10000min", "minutes for one part"),
        "other": _minutes("10000min", "minutes for one part"),
        "spool_change": _minutes("1000min", "minutes for one change"),
        "spool": Measured("mass", "1lb", "2000lb", "smallest spool to largest drum"),
        "waste": Measured("share", "0%", "50%", "half of the wire thrown away is no way to weld"),
        "rework": Measured("share", "0%", "100%", "each part welded twice at the most"),
        "wire_price": Price("price_per_mass", "1000000/kg", money),
        "gas_price": Price("price_per_volume", "1000000/m3", money),
        "cylinder_price": Price("money", "1000000000", money),
        "cylinder_gas": Measured("gas_volume", "1ft3", "100000ft3", "hand bottle to bulk tank"),
        "tip_price": Price("money", "1000000", money),
        "tip_life": Measured("hours", "0.1h", "10000h", "arc hours of one tip"),
        "yearly": Price("money", "1000000000", money),
    }


def shared_fields() -> dict[str, fields.Field[Any]]:
    """Return fresh fields for the keys of the shop."""
    swing = "0 is sure, 90 % is a guess"
    return {
        "labour": Price("rate", "1000000/h", "nobody earns that; 0 if your time is free"),
        "overhead": Price("rate", "1000000/h", "no shop costs that; 0 if there is none"),
        "energy_price": Price("price_per_energy", "100000/kWh", "no power costs that"),
        "machine_efficiency": Measured("share", "30%", "99%", "old transformer to best inverter"),
        "idle": Measured("power", "0kW", "5kW", "no power source idles at more"),
        "nozzle_price": Price("money", "1000000", "no nozzle costs that"),
        "nozzle_life": Measured("hours", "0.1h", "100000h", "arc hours of one nozzle"),
        "gas_extra": Measured("time", "0s", "60s", "seconds before and after one arc"),
        "grind": _minutes("10000min", "minutes for one part"),
        "parts": WholeNumber(0, 100_000_000),
        "batch": WholeNumber(1, 100_000_000),
        "months": WholeNumber(1, 240),
        "welders": WholeNumber(1, 10_000),
        "shift": Measured("hours", "0.25h", "24h", "a day has 24 hours"),
        "shifts": WholeNumber(1, 21),
        "weeks": WholeNumber(1, 53),
        **{
            f"swing_{key}": Measured("share", "0%", "90%", swing)
            for key in ("rates", "prices", "feed", "minutes", "volume", "once", "size")
        },
        "seed": WholeNumber(0, 999_999_999),
        "draws": WholeNumber(100, 100_000),
        "currency": Words(4),
    }


def _fields() -> dict[str, fields.Field[Any]]:
    found = {**way_fields(), **shared_fields()}
    for prefix in PREFIXES[1:]:
        found |= {prefix + key: field for key, field in way_fields().items()}
        found |= {
            prefix + key: Price("money", "1000000000", "no change of wire costs that")
            for key in ONCE_WORDS
        }
    return found


CostSchema = Schema.from_dict(_fields(), name="CostSchema")
"""The page's keys besides the job's; the job's are read by ``job_query.JobSchema``, way by way."""
