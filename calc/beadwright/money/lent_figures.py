"""Which of the demonstration's figures stand in, beside what is written."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from beadwright.errors import BeadwrightError
from beadwright.job.job_entries import DEFAULTS
from beadwright.money.demo_prices import DEMO_GAS_CHANGE, DEMO_MINUTES, DEMO_PRICES
from beadwright.process.gases import gas_of
from beadwright.process.transfer import gas_refused
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.process.wires import size_of, wire_of
from beadwright.reading.entries import Fields

OTHER_WIRE = "E70C-6M"
"""Wire of the demonstration's second way."""

OF_LATER: Mapping[str, str] = MappingProxyType(
    {**DEMO_PRICES, **DEMO_MINUTES, "b_wire": OTHER_WIRE}
)
"""The demonstration's figures by key; those of the second way begin with ``b_``."""


_FIRST_OF = {"wire_price": "b_wire_price", "spatter": "b_spatter"}
"""Figures of the first way, and where those of the demonstration's second wire stand."""


def lent(fields: Fields, own: Mapping[str, str], prefixes: Sequence[str]) -> Fields:
    """Return the fields of the Cost page with the defaults that hold beside what is written.

    The second way is never the first: beside metal-cored wire it is solid. The figures of the
    demonstration's two wires go with the wire, whichever way has it, and with no other. A way in
    another gas than the first brings what changing the gas costs.

    Args:
        fields: The page's fields by key [-].
        own: Keys the shop gave or the query typed, to text [-].
        prefixes: What stands before a key of each way, the first way's first [-].
    """
    found = _second_wire(own)
    for prefix in prefixes[1:]:
        if _changes_gas({**found, **own}, prefix):
            found[f"{prefix}gas_change"] = DEMO_GAS_CHANGE
    if not found:
        return fields
    return MappingProxyType(
        {**fields, **{key: fields[key].but(default=text) for key, text in found.items()}}
    )


def _second_wire(own: Mapping[str, str]) -> dict[str, str]:
    """The second wire where none is written, its size and gas where the first's do not suit it."""
    first = _named(own, "wire") or DEFAULTS["wire"]
    kind = WIRE_TYPES[first].kind if first in WIRE_TYPES else "solid"
    stands = DEFAULTS["wire"] if kind == "metal-cored" else OTHER_WIRE
    second = _named(own, "b_wire") or stands
    found: dict[str, str] = {}
    if stands != OTHER_WIRE:
        found["b_wire"] = stands
    if first == OTHER_WIRE:
        found |= {key: OF_LATER[of] for key, of in _FIRST_OF.items()}
    if first == OTHER_WIRE and second == stands:
        found |= {of: OF_LATER[key] for key, of in _FIRST_OF.items()}
    elif second != OTHER_WIRE or first == second:
        found |= dict.fromkeys((k for k in OF_LATER if k[:2] == "b_" and k != "b_wire"), "")
    return found if "b_wire" in own else found | _suited(own, stands)


def _suited(own: Mapping[str, str], second: str) -> dict[str, str]:
    """Size and gas of the second wire where it is not made in the first's, or not for its gas."""
    found: dict[str, str] = {}
    try:
        size = size_of(own.get("dia", "") or DEFAULTS["dia"])
        gas = gas_of(own.get("gas", "") or DEFAULTS["gas"])
    except BeadwrightError:  # said beside its own entry
        return found
    sizes = WIRE_TYPES[second].sizes
    if "b_dia" not in own and size not in sizes:
        found["b_dia"] = sizes[0]
    if "b_gas" not in own and gas_refused(wire_of(second, sizes[0]), gas) is not None:
        found["b_gas"] = DEFAULTS["gas"]
    return found


def _named(own: Mapping[str, str], key: str) -> str:
    """The wire written under a key as its table names it; what is no wire is refused elsewhere."""
    written = own.get(key, "").strip()
    return next((name for name in WIRE_TYPES if name.lower() == written.lower()), written)


def _changes_gas(own: Mapping[str, str], prefix: str) -> bool:
    """True if a later way is given another gas than the first's; what is no gas is refused."""
    try:
        there = gas_of(own.get(f"{prefix}gas", ""))
        here = gas_of(own.get("gas", "") or DEFAULTS["gas"])
    except BeadwrightError:
        return False
    return there.name != here.name
