"""Where every number comes from: every source by its id, gathered from the tables by topic."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.errors import UnknownEntryError
from beadwright.sources import distortion, gas, heat, joints, process, shop, strength
from beadwright.sources.source import Row, Source

_GENERAL: tuple[Row, ...] = (
    ("invented", "Invented for the demonstration shop", "put in your own", "common practice"),
    ("practice", "Common practice of the trade", "", "common practice"),
    ("yours", "Set by you", "", "common practice"),
)  # fmt: skip

_TABLES = (
    distortion.ROWS,
    heat.ROWS,
    process.ROWS,
    gas.ROWS,
    joints.ROWS,
    shop.ROWS,
    strength.ROWS,
    _GENERAL,
)

SOURCES: Mapping[str, Source] = MappingProxyType(
    {row[0]: Source(*row) for table in _TABLES for row in table}
)
"""Sources by id."""


def source_of(key: str) -> Source:
    """Return a source by its id.

    Args:
        key: A key of ``SOURCES`` [-].

    Raises:
        UnknownEntryError: If there is none.
    """
    found = SOURCES.get(key)
    if found is None:
        raise UnknownEntryError(f"no source {key}")
    return found
