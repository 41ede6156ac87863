"""Every price, rate and minute of the demonstration shop. All of it is invented.

No figure here is a market price or a survey. They are used until the shop writes its own, and a
page says so beside each that is still in use.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.job.page_query import PageQuery

DEMO_PRICES: Mapping[str, str] = MappingProxyType(
    {
        "wire_price": "2.10/lb",
        "b_wire_price": "2.80/lb",
        "gas_price": "0.11/ft3",
        "labour": "26/h",
        "overhead": "34/h",
        "energy_price": "0.14/kWh",
        "tip_price": "1.60",
        "nozzle_price": "9",
        "b_rolls": "70",
        "b_liner": "45",
        "b_procedure": "400",
        "b_training": "120",
        "cylinder_price": "38",
    }
)
"""Invented prices by key."""

DEMO_GAS_CHANGE = "160"
"""Invented cost of changing the gas of a way: cylinders left over, deposit, mixer [money]."""

DEMO_MINUTES: Mapping[str, str] = MappingProxyType(
    {
        "fit_up": "6min",
        "reposition": "0.5min",
        "clean": "0.2min",
        "spatter": "4min",
        "b_spatter": "1min",
        "spool_change": "5min",
        "grind": "10min",
    }
)
"""Invented minutes by key."""

DEMO_VOLUME: Mapping[str, str] = MappingProxyType({"parts": "480", "batch": "40"})
"""The demonstration's volume: forty brackets a month."""

INVENTED: Mapping[str, str] = MappingProxyType(
    {
        **DEMO_PRICES,
        **DEMO_MINUTES,
        **{f"{way}_gas_change": DEMO_GAS_CHANGE for way in ("b", "c", "d")},
    }
)
"""Figures that a page must call invented until the shop writes its own."""

INVENTED_IN_USE = "money.invented-in-use"
"""Id of what a page says about them."""


def invented_in_use(read: PageQuery) -> tuple[str, ...]:
    """Return the keys whose invented figures count and are still the invented ones.

    Args:
        read: A page's query [-].
    """
    used = read.stood_in - read.outranked
    return tuple(key for key in INVENTED if key in used)
