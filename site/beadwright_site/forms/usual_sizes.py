"""The usual sizes of plates and legs, to tap."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright import units
from beadwright.typed_number import short
from beadwright.units import System
from beadwright_site.forms.entries import Entry, Option

_PLATES_IN = (
    "16ga", "14ga", "12ga", "10ga", "3/16in", "1/4in", "5/16in", "3/8in", "1/2in", "5/8in",
    "3/4in", "1in",
)  # fmt: skip
_PLATES_MM = ("1.5mm", "2mm", "3mm", "4mm", "5mm", "6mm", "8mm", "10mm", "12mm", "15mm", "20mm",
              "25mm")  # fmt: skip
_LEGS_IN = ("1/8in", "3/16in", "1/4in", "5/16in", "3/8in", "1/2in")
_LEGS_MM = ("3mm", "4mm", "5mm", "6mm", "8mm", "10mm")

SIZES: Mapping[tuple[str, System], tuple[str, ...]] = MappingProxyType({
    ("plate", "us"): _PLATES_IN,
    ("plate", "si"): _PLATES_MM,
    ("leg", "us"): ("", *_LEGS_IN),
    ("leg", "si"): ("", *_LEGS_MM),
})  # fmt: skip
"""Usual sizes by key and units, blank for the one worked out (common practice of stock lists)."""

_ALIKE_M = 1e-6


def usual_sizes(entry: Entry, system: System) -> tuple[Option, ...]:
    """Return the sizes to tap beside an entry, with the one it holds marked, first if not usual.

    Args:
        entry: The entry.
        system: Units of bare numbers.
    """
    held = _metres(entry.value, system)
    sizes = tuple(
        Option(size, _word(size), "", size == "" if held is None else _same(size, held))
        for size in SIZES.get((entry.key, system), ())
    )
    if held is None or any(size.chosen for size in sizes):
        return sizes
    return (Option(entry.value, short(entry.value), "", True), *sizes)


def _metres(text: str, system: System) -> float | None:
    """A length as typed [m]; None for a blank and for what cannot be read."""
    try:
        return units.read(text, "length", system) if text else None
    except ValueError:
        return None


def _same(size: str, held_m: float) -> bool:
    return bool(size) and abs(units.read(size, "length") - held_m) < _ALIKE_M


def _word(size: str) -> str:
    if not size:
        return "Usual"
    return size.replace("ga", " ga").removesuffix("in").removesuffix("mm")
