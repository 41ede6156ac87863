"""Which of the demonstration's figures stand in, beside what is written."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from beadwright.errors import BeadwrightError
from beadwright.job.job_entries import DEFAULTS
from beadwright.money.demo_prices import DEMO_GAS_CHANGE, DEMO_MINUTES, DEMO_PRICES
from beadwright.process.gases import gas_of
from beadwright.reading.entries import Fields

OTHER_WIRE = "E70C-6M"
"""Wire of the demonstration's second way."""

OF_LATER: Mapping[str, str] = MappingProxyType(
    {**DEMO_PRICES, **DEMO_MINUTES, "b_wire": OTHER_WIRE}
)
"""The demonstration's figures by key; those of the second way begin with ``b_``."""


def lent(fields: Fields, own: Mapping[str, str], prefixes: Sequence[str]) -> Fields:
    """Return the fields of the Cost page with the defaults that hold beside what is written.

    The figures of the demonstration's second wire count for that wire only. A way in another gas
    than the first brings what changing the gas costs.

    Args:
        fields: The page's fields by key [-].
        own: Keys the shop gave or the query typed, to text [-].
        prefixes: What stands before a key of each way, the first way's first [-].
    """
    found: dict[str, str] = {}
    if own.get("b_wire", "").strip().upper() not in ("", OTHER_WIRE):
        found |= dict.fromkeys((k for k in OF_LATER if k[:2] == "b_" and k != "b_wire"), "")
    for prefix in prefixes[1:]:
        if _changes_gas(own, prefix):
            found[f"{prefix}gas_change"] = DEMO_GAS_CHANGE
    if not found:
        return fields
    return MappingProxyType(
        {**fields, **{key: fields[key].but(default=text) for key, text in found.items()}}
    )


def _changes_gas(own: Mapping[str, str], prefix: str) -> bool:
    """True if a later way is given another gas than the first's; what is no gas is refused."""
    try:
        there = gas_of(own.get(f"{prefix}gas", ""))
        here = gas_of(own.get("gas", "") or DEFAULTS["gas"])
    except BeadwrightError:
        return False
    return there.name != here.name
