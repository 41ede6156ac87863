"""Solid beside metal-cored wire on this joint, as the page shows it."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright import units
from beadwright.setting.dial_in import DialIn
from beadwright.setting.like_for_like import Alike, Basis, like_for_like

BASES: dict[Basis, str] = {
    "this-wire": "This wire",
    "equal-amps": "Equal amps",
    "equal-heat": "Equal heat",
    "as-run": "As usually run",
}
"""What each row holds equal, in words."""

COLUMNS = (
    ("Feed", "wire_feed"),
    ("Amps", "current"),
    ("Travel speed", "travel"),
    ("Laid", "deposition"),
    ("Heat", "heat_input"),
)
"""What is shown of each row: its name and kind of quantity."""


@dataclass(frozen=True, slots=True)
class AlikeRow:
    """One row: what is held equal, the wire, its numbers, and whether its limits hold there."""

    name: str
    wire: str
    numbers: tuple[str, ...]
    holds: bool


@dataclass(frozen=True, slots=True)
class AlikeTable:
    """The table; no rows where the wires cannot be compared on this joint."""

    heads: tuple[tuple[str, str], ...]
    rows: tuple[AlikeRow, ...]
    no_equal_heat: bool


def alike_table(dialled: DialIn) -> AlikeTable:
    """Return the table for an answer.

    Args:
        dialled: The answer.
    """
    system = dialled.job.units
    found = like_for_like(dialled)
    heads = tuple((name, units.symbol(measure, system)) for name, measure in COLUMNS)
    rows = tuple(_row(alike, system) for alike in found)
    bases = {alike.basis for alike in found}
    return AlikeTable(heads, rows, bool(found) and "equal-heat" not in bases)


def _row(alike: Alike, system: units.System) -> AlikeRow:
    values = (
        alike.feed_m_s,
        alike.current_a,
        alike.travel_m_s,
        alike.laid_kg_s,
        alike.heat_j_m,
    )
    numbers = tuple(
        units.show(value, measure, system)
        for value, (_, measure) in zip(values, COLUMNS, strict=True)
    )
    return AlikeRow(BASES[alike.basis], alike.wire.type.name, numbers, alike.holds)
