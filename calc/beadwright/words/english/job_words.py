"""English of room ``job``: the job and its joint."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "job.no-entry": "“{key}” in the address is no entry of this page; left aside.",
    }
)
"""Texts by id."""
