"""How many parts a year, in whatever way the shop counts its work."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from math import floor
from typing import Literal

from beadwright.errors import FieldErrors
from beadwright.money.break_even import MONTHS_A_YEAR
from beadwright.money.demo_prices import DEMO_VOLUME
from beadwright.money.way import Way
from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Choice, Measured, WholeNumber

CountedBy = Literal["year", "month", "week", "arc-hours", "weld-metal", "wire"]
"""How a shop counts its work."""

_MOST_PARTS = 100_000_000

VOLUME_KEYS: Mapping[CountedBy, str] = {
    "year": "parts",
    "month": "parts_month",
    "week": "parts_week",
    "arc-hours": "arc_hours",
    "weld-metal": "weld_metal",
    "wire": "wire_month",
}
"""The key that each way of counting is written under."""

_COUNTS: tuple[CountedBy, ...] = tuple(VOLUME_KEYS)
_MORE = "more than any shop welds"


def _parts(label: str, help: str) -> Measured:
    return Measured("count", "0", str(_MOST_PARTS), _MORE, label=label, help=help)


@dataclass(frozen=True, slots=True, kw_only=True)
class VolumeEntries:
    """The keys of how much is welded [SI]; parts a year unless another count is written."""

    volume_by: CountedBy | None = optional(
        Choice(
            _COUNTS,
            label="Count the work by",
            help="year, month, week (parts), arc-hours, weld-metal, wire (a month): which count "
            "holds; blank: the one written",
        )
    )
    parts: int = required(
        WholeNumber(
            0,
            _MOST_PARTS,
            label="Parts a year",
            help="parts a year",
            default=DEMO_VOLUME["parts"],
        )
    )
    parts_month: float | None = optional(_parts("Parts a month", "parts a month"))
    parts_week: float | None = optional(
        _parts("Parts a week", "parts a week, in the weeks worked a year")
    )
    arc_hours: float | None = optional(
        Measured(
            "hours",
            "0h",
            "10000000h",
            _MORE,
            label="Arc hours a month",
            help="hours a month the arc burns on these parts, the first way, rework with them",
        )
    )
    weld_metal: float | None = optional(
        Measured(
            "mass",
            "0lb",
            "100000000lb",
            _MORE,
            label="Weld metal a month",
            help="weld metal laid a month on these parts, rework with them",
        )
    )
    wire_month: float | None = optional(
        Measured(
            "mass",
            "0lb",
            "100000000lb",
            _MORE,
            label="Wire bought a month",
            help="wire bought a month for these parts, the first way, waste and rework with it",
        )
    )


def counted_by(volume: VolumeEntries, own: Collection[str]) -> CountedBy:
    """Return which count holds: the one chosen, else the one written, else parts a year.

    A count chosen but not written stands for whatever else is written, so that choosing alone
    changes nothing.

    Args:
        volume: What is said of the volume [SI].
        own: Keys the shop gave or the query typed [-].

    Raises:
        FieldErrors: If two counts are written and none is chosen.
    """
    written: list[CountedBy] = [by for by, key in VOLUME_KEYS.items() if key in own]
    chosen = volume.volume_by
    if chosen in written:
        return chosen
    if chosen is None and len(written) > 1:
        keys = " and ".join(VOLUME_KEYS[by] for by in written[:2])
        raise FieldErrors(
            {"volume_by": [f"{keys} are both written: choose which of them counts, or clear one."]}
        )
    return written[0] if written else "year"


def parts_a_year(volume: VolumeEntries, own: Collection[str], weeks: int, first: Way) -> int:
    """Return the whole parts a year a volume means [1/year].

    Source: definition of each count; hours and pounds by what a part takes the first way.

    Args:
        volume: What is said of the volume [SI].
        own: Keys the shop gave or the query typed [-].
        weeks: Weeks worked in a year [-].
        first: The way the shop welds now [-].

    Raises:
        FieldErrors: If two counts are written and none is chosen, or no part comes of the one.
    """
    by = counted_by(volume, own)
    number: float = getattr(volume, VOLUME_KEYS[by]) or 0.0
    parts = number * parts_of_one(by, weeks, first)
    whole = floor(parts + 0.5)
    if parts > 0 and not whole:
        text = f"That comes to {parts:.2g} of a part a year: write at least what one part takes."
        raise FieldErrors({VOLUME_KEYS[by]: [text]})
    return whole


def parts_of_one(by: CountedBy, weeks: int, first: Way) -> float:
    """Return the parts a year that one of a count means: one a month, an hour, a kilogram.

    Source: definition of each count.

    Args:
        by: How the work is counted [-].
        weeks: Weeks worked in a year [-].
        first: The way the shop welds now [-].
    """
    again = 1 + first.rework
    return {
        "year": 1.0,
        "month": MONTHS_A_YEAR,
        "week": weeks,
        "arc-hours": MONTHS_A_YEAR / (again * first.arc_s),
        "weld-metal": MONTHS_A_YEAR / (again * first.metal_kg),
        "wire": MONTHS_A_YEAR / first.bought_kg,
    }[by]
