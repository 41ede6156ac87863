"""The Shop page's keys: the job, the machine, its circuit and leads."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.machine.conductors import CONDUCTORS, Conductor, conductor_of
from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Entry, Measured

DEMO_RATED_A = 350.0
"""Rated amps of the demonstration shop's machine, used while no machine is written [A]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ShopQuery(PageQuery):
    """The Shop page's query; its defaults are the demonstration shop's [SI]."""

    # The job's, under the names they go by here.
    machine_amps: float | None = optional(
        JOB_FIELDS["machine_amps"].but(label="Most amps", blank="no limit")
    )
    machine_volts: float | None = optional(
        JOB_FIELDS["machine_volts"].but(label="Most volts", blank="no limit")
    )
    rated_amps: float | None = optional(
        JOB_FIELDS["rated_amps"].but(
            help="rated current on the plate; blank: the most current", blank=f"{DEMO_RATED_A:g}"
        )
    )
    plate_amps: float | None = optional(
        Measured(
            "current",
            "5A",
            "300A",
            "smallest to largest wire power source",
            label="Input amps, on its plate",
            help="most current it draws by its plate (I1max), at the supply below",
            blank="not written",
        )
    )
    duty: float = required(
        JOB_FIELDS["duty"].but(help="duty cycle at the rated current", blank="", default="60%")
    )
    supply: float = required(
        JOB_FIELDS["supply"].but(
            help="supply volts, between lines if three phase", blank="", default="230"
        )
    )
    phase: Literal["1", "3"] = required(
        JOB_FIELDS["phase"].but(help="1 or 3", blank="", default="1")
    )
    machine_efficiency: float = required(
        Measured(
            "share",
            "30%",
            "99%",
            "old transformer to best inverter",
            label="Machine's efficiency",
            help="output power over power drawn",
            default="85%",
        )
    )
    power_factor: float = required(
        Measured(
            "share",
            "30%",
            "100%",
            "old transformer to corrected inverter",
            label="Power factor",
            help="power drawn over volt-amps drawn",
            default="95%",
        )
    )
    breaker: float = required(
        JOB_FIELDS["breaker"].but(help="breaker or fuse of the circuit", blank="", default="60")
    )
    cord: Conductor = required(
        Entry(
            conductor_of,
            tuple(CONDUCTORS),
            label="Cord",
            help="cord from wall or generator, AWG or mm2",
            default="6 AWG",
        )
    )
    cord_length: float = required(
        Measured(
            "distance",
            "1ft",
            "1000ft",
            "longer, bring the machine to the wall",
            label="Cord's length, one way",
            help="its length, one way",
            default="25ft",
        )
    )
    generator: float | None = optional(
        Measured(
            "power",
            "1kW",
            "1000kW",
            "hand-carried to trailer",
            label="Generator: rated running kW or kVA",
            help="running rating of the generator, kW or kVA; blank: mains",
            blank="on the mains",
        )
    )
    cable: Conductor = required(
        Entry(
            conductor_of,
            tuple(CONDUCTORS),
            label="Welding leads",
            help="welding leads, AWG or mm2",
            default="2/0 AWG",
        )
    )
    cable_length: float = required(
        Measured(
            "distance",
            "2ft",
            "2000ft",
            "both leads together",
            label="Both leads together",
            help="both leads together",
            default="50ft",
        )
    )
    amps: float | None = optional(
        Measured(
            "current",
            "20A",
            "1000A",
            "outside that no wire arc burns",
            label="Current instead",
            help="current; blank: as dialled in",
            blank="as dialled in",
        )
    )
    arc_share: float | None = optional(
        Measured(
            "share",
            "1%",
            "100%",
            "arc time over all time, as 45%",
            label="Arc on at the busiest",
            help="share of the time the arc burns at the busiest; blank: not known",
            blank="not known",
        )
    )


DEFAULTS = page_defaults(ShopQuery)
"""What a blank or missing key of the page means; the circuit's are of the demonstration shop."""
