"""English of room ``sheets``: why a cell of a sheet gives no settings, in two words."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "sheets.laps-cold": "laps cold",
        "sheets.not-downhill": "not downhill",
        "sheets.no-window": "no window",
    }
)
