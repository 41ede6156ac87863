"""Keys whose figures count for nothing, because another key that is written stands in for them."""

from __future__ import annotations

import dataclasses
from collections.abc import Collection, Iterator, Mapping
from types import MappingProxyType

from beadwright.money.later_way import OnceEntries

_BY_KEY: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "spool_price": ("wire_price",),
        "factor": ("fit_up", "reposition", "clean", "other", "spool_change"),
        "change_over": tuple(
            each.name for each in dataclasses.fields(OnceEntries) if each.name != "change_over"
        ),
    }
)
"""Keys of a way by the key that stands in for them."""


def outranked(own: Collection[str], prefixes: Collection[str]) -> frozenset[str]:
    """Return the keys that another key stands in for.

    Args:
        own: Keys the shop gave or the query typed [-].
        prefixes: What stands before a key of each way [-].
    """
    return frozenset(_found(own, prefixes))


def _found(own: Collection[str], prefixes: Collection[str]) -> Iterator[str]:
    if "shop_rate" in own:
        yield from ("labour", "overhead")
    if {"cylinder_price", "cylinder_gas"} <= {*own}:
        yield "gas_price"
    for prefix in prefixes:
        for key, instead in _BY_KEY.items():
            if prefix + key in own:
                yield from (prefix + each for each in instead)
