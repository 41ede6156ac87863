"""The keys of how far each kind of input of a comparison may be off."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.reading.entries import required
from beadwright.reading.fields import Measured


def _swing(label: str, help: str, default: str) -> Measured:
    return Measured(
        "share",
        "0%",
        "90%",
        "0 is certain, 90 % is a guess",
        label=label,
        help=help,
        default=default,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class SwingShares:
    """The keys of how far each kind of input may be off, as a share either way.

    Attributes:
        rates: Labour and overhead [-].
        prices: Wire and gas [-].
        feed: Laid metal per hour, where it was not measured [-].
        minutes: Minutes off the arc [-].
        volume: Parts a year [-].
        once: Paid once [-].
        size: Welds heavier than drawn; only upward [-].
    """

    rates: float = required(
        _swing("Rates, either way", "how far labor and overhead may be off, either way", "10%")
    )
    prices: float = required(_swing("Prices", "how far wire and gas prices may be off", "5%"))
    feed: float = required(
        _swing("Deposition rate", "how far the deposition rate may be off", "5%")
    )
    minutes: float = required(
        _swing("Non-arc minutes", "how far the non-arc minutes may be off", "15%")
    )
    volume: float = required(_swing("Parts a year", "how far the parts a year may be off", "25%"))
    once: float = required(
        _swing("Change-over cost", "how far the change-over cost may be off", "25%")
    )
    size: float = required(
        _swing("Welds heavier than drawn", "how much heavier than drawn the welds may be", "10%")
    )
