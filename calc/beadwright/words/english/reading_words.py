"""English of room ``reading``: what was typed."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "reading.no-entry": "“{key}” in the address is no entry of this page; left aside.",
    }
)
"""Texts by id."""
