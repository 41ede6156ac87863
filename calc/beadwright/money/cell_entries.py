"""The keys of a cell, track or robot: its rate, how it is loaded, what stops it."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass

from beadwright.money.price_fields import Price
from beadwright.reading.entries import optional
from beadwright.reading.fields import Measured, WholeNumber


def minutes(
    label: str, help: str, high: str, why: str, default: str = "", blank: str = ""
) -> Measured:
    """Return a field of minutes.

    Args:
        label: What it is called [-].
        help: What it means [-].
        high: Most allowed, as the shop writes it [-].
        why: Why the range is what it is, a half sentence [-].
        default: What a blank one means, as it would be typed [-].
        blank: What a form says a blank one means, without a default [-].
    """
    return Measured("time", "0min", high, why, label=label, help=help, default=default, blank=blank)


@dataclass(frozen=True, slots=True, kw_only=True)
class CellEntries:
    """The keys of what a way runs in, beside a hand's; all may be blank [SI, money]."""

    rate: float | None = optional(
        Price(
            "rate",
            "1000000/h",
            "no cell costs that",
            label="Its own rate",
            help="rate of a cell, track or robot by the hour, operator and overhead in it",
            blank="the shop's",
        )
    )
    load: float | None = optional(
        minutes(
            "Loading, a part",
            "loading and unloading, for a part",
            "10000min",
            "minutes for one part",
            blank="none",
        )
    )
    stations: int | None = optional(
        WholeNumber(
            1,
            2,
            label="Stations",
            help="1, or 2: one is loaded, fitted and cleaned up while the other is welded",
            blank="one",
        )
    )
    clean_stop: float | None = optional(
        minutes(
            "A stop to clean the nozzle",
            "one stop to clean the nozzle; with clean_every",
            "60min",
            "minutes for one stop",
            blank="none",
        )
    )
    clean_every: float | None = optional(
        Measured(
            "time",
            "0.1min",
            "10000min",
            "arc minutes between two stops",
            label="Arc time between two stops",
            help="arc time from one stop to clean the nozzle to the next",
            blank="no stops",
        )
    )
    tip_change: float | None = optional(
        minutes(
            "A tip change",
            "one change of contact tip",
            "60min",
            "minutes for one change",
            blank="none",
        )
    )
    yearly: float | None = optional(
        Price(
            "money",
            "1000000000",
            "no shop pays that for one way",
            label="Paid by the year for it",
            help="paid by the year for this way: lease, service, contract",
            blank="none",
        )
    )


CELL_KEYS = tuple(each.name for each in dataclasses.fields(CellEntries))
"""Keys a later way takes from the first only where the torch is moved alike."""
