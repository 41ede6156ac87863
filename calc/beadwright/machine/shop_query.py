"""The Shop page's keys: the job, the machine, its circuit and leads."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from marshmallow import Schema

from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.machine.conductors import CONDUCTORS, conductor_of
from beadwright.reading.fields import Choice, Entry, Measured

CIRCUIT_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "rated_amps": "rated current on the plate; blank: the most current",
        "duty": "duty cycle at the rated current",
        "supply": "supply volts, between lines if three phase",
        "phase": "1 or 3",
        "machine_efficiency": "output power over power drawn",
        "power_factor": "power drawn over volt-amps drawn",
        "breaker": "breaker or fuse of the circuit",
        "cord": "cord from wall or generator, AWG or mm2",
        "cord_length": "its length, one way",
        "generator": "rating of the generator; blank: mains",
        "cable": "welding leads, AWG or mm2",
        "cable_length": "both leads together",
        "amps": "current; blank: as dialled in",
        "arc_share": "share of the time the arc burns at the busiest; blank: not known",
    }
)
"""What each key besides the job's means."""

_CIRCUIT_DEFAULTS = {
    "rated_amps": "", "duty": "60%", "supply": "230", "phase": "1", "machine_efficiency": "85%",
    "power_factor": "95%", "breaker": "60", "cord": "6 AWG", "cord_length": "25ft",
    "generator": "", "cable": "2/0 AWG", "cable_length": "50ft", "amps": "", "arc_share": "",
}  # fmt: skip

DEFAULTS: Mapping[str, str] = MappingProxyType({**JOB_DEFAULTS, **_CIRCUIT_DEFAULTS})
"""What a blank or missing key of the page means; the circuit's are of the demonstration shop."""

KEY_WORDS: Mapping[str, str] = MappingProxyType({**JOB_WORDS, **CIRCUIT_WORDS})
"""What each key means, for the terminal and the form."""

DEMO_RATED = "350"
"""Rated amps of the demonstration shop's machine, used while no machine is written."""


class ShopSchema(Schema):
    """The Shop page's keys besides the job's."""

    rated_amps = Measured("current", "30A", "1500A", "smallest to largest wire power source")
    machine_amps = Measured("current", "30A", "1000A", "smallest to largest wire power source")
    duty = Measured("share", "5%", "100%", "plates say 10 to 100 %")
    supply = Measured("volts", "90V", "700V", "wall socket to factory line")
    phase = Choice(("1", "3"))
    machine_efficiency = Measured("share", "30%", "99%", "old transformer to best inverter")
    power_factor = Measured("share", "30%", "100%", "old transformer to corrected inverter")
    breaker = Measured("current", "5A", "1000A", "house circuit to factory line")
    cord = Entry(conductor_of, tuple(CONDUCTORS))
    cord_length = Measured("distance", "1ft", "1000ft", "longer, bring the machine to the wall")
    generator = Measured("power", "1kW", "1000kW", "hand-carried to trailer")
    cable = Entry(conductor_of, tuple(CONDUCTORS))
    cable_length = Measured("distance", "2ft", "2000ft", "both leads together")
    amps = Measured("current", "20A", "1000A", "outside that no wire arc burns")
    arc_share = Measured("share", "1%", "100%", "arc time over all time, as 45%")
