"""Where every number comes from: every source by its id, gathered from the tables by topic."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.sources import (
    distortion_sources,
    gas_sources,
    heat_sources,
    inspection_sources,
    joints_sources,
    process_sources,
    shop_sources,
    strength_sources,
)
from beadwright.sources.source import Row, Source

_GENERAL: tuple[Row, ...] = (
    ("invented", "Invented for the demonstration shop", "put in your own", "common practice"),
    ("practice", "Common practice of the trade", "", "common practice"),
    ("yours", "Set by you", "", "common practice"),
    ("own-coupons", "The shop's own coupons, weighed against the published fits", "Coupons page",
     "derived"),
)  # fmt: skip

_TABLES = (
    distortion_sources.ROWS,
    heat_sources.ROWS,
    process_sources.ROWS,
    gas_sources.ROWS,
    inspection_sources.ROWS,
    joints_sources.ROWS,
    shop_sources.ROWS,
    strength_sources.ROWS,
    _GENERAL,
)

SOURCES: Mapping[str, Source] = MappingProxyType(
    {row[0]: Source(*row) for table in _TABLES for row in table}
)
"""Sources by id."""
