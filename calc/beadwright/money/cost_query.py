"""The Cost page's keys: the job, two to four ways to weld it, what the shop pays, its volume.

The first way has bare keys. The second is written with ``b_`` before a key, then ``c_`` and ``d_``.
What is not written for a later way comes from the first; see ``cost_ways``.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from beadwright.job.job_reading import job_of
from beadwright.job.page_query import PageQuery, page_defaults, page_fields
from beadwright.money.cell_entries import CELL_KEYS
from beadwright.money.compared_entries import ComparedEntries
from beadwright.money.demo_prices import DEMO_MINUTES, DEMO_PRICES, DEMO_VOLUME
from beadwright.money.later_way import JobChanges, LaterWay, OnceEntries, written
from beadwright.money.lent_figures import OF_LATER, lent
from beadwright.money.outranked import outranked
from beadwright.money.price_fields import Price, Words
from beadwright.money.swing_shares import SwingShares
from beadwright.money.volume_entries import VolumeEntries
from beadwright.money.way_entries import WayEntries
from beadwright.process.wires import Wire
from beadwright.reading.entries import Fields, optional, part, required
from beadwright.reading.fields import Measured, QueryField, WholeNumber

PREFIXES = ("", "b_", "c_", "d_")
"""What stands before a key of each way."""

WAY_JOB_KEYS = tuple(each.name for each in dataclasses.fields(JobChanges))
"""Keys of the job that a later way may have of its own."""

ONCE_KEYS = tuple(each.name for each in dataclasses.fields(OnceEntries))
"""Keys of what changing to a way may cost once."""

WAY_KEYS = tuple(each.name for each in dataclasses.fields(WayEntries))
"""Keys of a way besides the job's."""

FIRST_DRAWS = 400
"""Draws made with the answer: few enough for an answer at once, good to two or three in a hundred
[-]."""

MOST_DRAWS = 10_000
"""Most draws that an answer waits for, three comparisons of them at the most [-]."""


def _later(prefix: str, key: str, field: QueryField[Any]) -> QueryField[Any]:
    """A field of a way as it stands for a later one."""
    text = f"{field.help}, way {prefix[0].upper()}"
    blank, default = field.blank, OF_LATER.get(prefix + key, "")
    if default and key not in ONCE_KEYS:
        blank = "as A"  # beside another wire than the demonstration's
    elif key in CELL_KEYS:
        text += "; blank: as the first way if the gun is moved the same way"
        blank = "as A, moved the same way"
    elif key not in ONCE_KEYS:
        text += f"; blank: {'worked out' if blank == 'worked out' else 'as the first way'}"
        blank = blank if blank in ("worked out", "As A") else "as A"
    return field.but(help=text, default=default, blank=blank)


@dataclass(frozen=True, slots=True, kw_only=True)
class CostQuery(PageQuery):
    """The Cost page's query: its keys besides the job's [SI, money].

    Defaults are common practice, or the demonstration shop's and invented.
    """

    way: WayEntries = part(WayEntries)
    shop_rate: float | None = optional(
        Price(
            "rate",
            "1000000/h",
            "no shop costs that; 0 if your time is free",
            label="Shop rate",
            help="shop rate by the hour, labor and overhead in it, instead of the two",
            blank="labor and overhead",
        )
    )
    labour: float = required(
        Price(
            "rate",
            "1000000/h",
            "nobody earns that; 0 if your time is free",
            label="Labor",
            help="labor: wages and what comes on top",
            default=DEMO_PRICES["labour"],
        )
    )
    overhead: float = required(
        Price(
            "rate",
            "1000000/h",
            "no shop costs that; 0 if there is none",
            label="Overhead",
            help="overhead of the shop",
            default=DEMO_PRICES["overhead"],
        )
    )
    energy_price: float = required(
        Price(
            "price_per_energy",
            "100000/kWh",
            "no power costs that",
            label="Price of electricity",
            help="price of electricity",
            default=DEMO_PRICES["energy_price"],
        )
    )
    machine_efficiency: float = required(
        Measured(
            "share",
            "30%",
            "99%",
            "old transformer to best inverter",
            label="Machine's efficiency",
            help="arc power over power drawn",
            default="85%",
        )
    )
    idle: float = required(
        Measured(
            "power",
            "0kW",
            "5kW",
            "no power source idles at more",
            label="Idle power",
            help="power drawn while no arc burns",
            default="0.1kW",
        )
    )
    nozzle_price: float = required(
        Price(
            "money",
            "1000000",
            "no nozzle costs that",
            label="Price of a nozzle",
            help="price of a nozzle",
            default=DEMO_PRICES["nozzle_price"],
        )
    )
    nozzle_life: float = required(
        Measured(
            "hours",
            "0.1h",
            "100000h",
            "arc hours of one nozzle",
            label="Life of a nozzle, arc hours",
            help="arc hours a nozzle lasts",
            default="60h",
        )
    )
    gas_extra: float = required(
        Measured(
            "time",
            "0s",
            "60s",
            "seconds before and after one arc",
            label="Gas before and after an arc",
            help="gas before and after each arc",
            default="1.5s",
        )
    )
    grind: float = required(
        Measured(
            "time",
            "0min",
            "10000min",
            "minutes for one part",
            label="Grinding out for rework, a part",
            help="grinding out a part before it is welded again",
            default=DEMO_MINUTES["grind"],
        )
    )
    volume: VolumeEntries = part(VolumeEntries)
    batch: int = required(
        WholeNumber(
            1,
            100_000_000,
            label="Parts in a batch",
            help="parts in a batch",
            default=DEMO_VOLUME["batch"],
        )
    )
    months: int = required(
        WholeNumber(
            1,
            240,
            label="Payback wanted, months",
            help="months in which the change-over cost must be paid back",
            default="12",
        )
    )
    welders: int = required(
        WholeNumber(
            1,
            10_000,
            label="Guns at once",
            help="guns that can weld at once",
            default="1",
        )
    )
    shift: float = required(
        Measured(
            "hours",
            "0.25h",
            "24h",
            "a day has 24 hours",
            label="Hours in a shift",
            help="hours in a shift",
            default="8h",
        )
    )
    shifts: int = required(
        WholeNumber(1, 21, label="Shifts a week", help="shifts a week", default="5")
    )
    weeks: int = required(
        WholeNumber(1, 53, label="Weeks a year", help="weeks a year", default="50")
    )
    swings: SwingShares = part(SwingShares, "swing_")
    seed: int = required(
        WholeNumber(
            0,
            999_999_999,
            label="Seed of the what-ifs",
            help="same seed, same what-ifs",
            default="1",
        )
    )
    draws: int = required(
        WholeNumber(
            100,
            MOST_DRAWS,
            "more do not help: the prices behind them are no more certain",
            label="What-ifs to run",
            help="what-ifs for the chance that switching pays",
            default=str(FIRST_DRAWS),
        )
    )
    currency: str = required(Words(4, label="Currency sign", help="currency sign", default="$"))
    beside: ComparedEntries = part(ComparedEntries)
    b: LaterWay = part(LaterWay, "b_", change=partial(_later, "b_"))
    c: LaterWay = part(LaterWay, "c_", change=partial(_later, "c_"))
    d: LaterWay = part(LaterWay, "d_", change=partial(_later, "d_"))

    @classmethod
    def fields_for(cls, own: Mapping[str, str]) -> Fields:
        """Return the page's fields, with the defaults that hold beside what is written.

        The figures of the demonstration's second wire count for that wire only. A way in another
        gas than the first brings what changing the gas costs.

        Args:
            own: Keys the shop gave or the query typed, to text [-].
        """
        return lent(page_fields(cls), own, PREFIXES)

    @property
    def outranked(self) -> frozenset[str]:
        """Keys that another key stands in for: their figures count for nothing."""
        return outranked(self.own, PREFIXES)

    def wires(self) -> tuple[Wire, ...]:
        """Return every wire whose numbers the answer counts with: that of each way."""
        later = (replace(self.asked, **written(way.job)) for way in self.later().values())
        return (self.job.wire, *(job_of(asked).wire for asked in later))

    def later(self) -> Mapping[str, LaterWay]:
        """Return the later ways that are asked, by prefix: the second, and any with a key given."""
        ways = {"b_": self.b, "c_": self.c, "d_": self.d}
        return {
            prefix: way
            for prefix, way in ways.items()
            if prefix == "b_" or any(key.startswith(prefix) for key in self.own)
        }


DEFAULTS = page_defaults(CostQuery)
"""What a blank or missing key of the page means. Blank: worked out, or as in the first way."""
