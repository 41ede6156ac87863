"""The Shop page's answer: what machine, leads and circuit do with the planned job."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from marshmallow import Schema

from beadwright.errors import FieldErrors
from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.job.page_query import PageAnswered, PageQuery, read_job, read_page
from beadwright.machine.circuit import Circuit, Load, Machine, circuit
from beadwright.machine.conductors import CONDUCTORS, conductor_of
from beadwright.reading.fields import Choice, Entry, Measured
from beadwright.results import Level, Note
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.units import System

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
"""What each key past the job's means."""

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

_KEYS_OF_MACHINE = ("rated_amps", "duty", "supply", "breaker", "cord", "cable")


class ShopSchema(Schema):
    """The Shop page's keys past the job's."""

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


@dataclass(frozen=True, slots=True)
class ShopAnswer(PageAnswered):
    """The Shop page's answer.

    Attributes:
        page: ``shop``.
        query: The query as read.
        dialled: The job as dialled in.
        circuit: What machine and circuit do with it.
        notes: What to mind, loudest first.
    """

    dialled: DialIn
    circuit: Circuit
    notes: tuple[Note, ...]

    @property
    def units(self) -> System:
        """How to show."""
        return self.dialled.job.units


def shop_answer(query: str, kept: Mapping[str, Any] | None = None) -> ShopAnswer:
    """Return the Shop page's answer to a query string.

    Args:
        query: Keys of ``DEFAULTS`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(query, kept, ShopSchema, DEFAULTS)
    # What the machine cannot give is what this page is to say, so the job is dialled in without.
    free = {k: v for k, v in read.filled.items() if k not in ("machine_amps", "machine_volts")}
    read_job(read.filled)
    dialled = dial_in(read_job(free).job)
    found = circuit(_machine(read.values), _load(read.values, dialled))
    return ShopAnswer("shop", read, dialled, found, (*_notes(read, found), *read.notes()))


def _machine(values: Mapping[str, Any]) -> Machine:
    most = values.get("machine_amps")
    rated = values.get("rated_amps") or most or float(DEMO_RATED)
    return Machine(
        rated,
        values["duty"],
        most,
        values["machine_efficiency"],
        values["power_factor"],
        values["supply"],
        3 if values["phase"] == "3" else 1,
        values.get("breaker"),
        values.get("cord"),
        values["cord_length"],
        values.get("generator"),
        values.get("cable"),
        values["cable_length"],
    )


def _load(values: Mapping[str, Any], dialled: DialIn) -> Load:
    point, travel, job = dialled.point, dialled.settings.travel.value, dialled.job
    if point is None or travel is None:
        text = "No setting holds every limit of this job. Write the feed you run."
        raise FieldErrors({"wfs": [text]})
    current = values.get("amps") or point.current_a
    return Load(current, point.volts, job.weld_length_m / travel, values.get("arc_share"))


def _notes(read: PageQuery, found: Circuit) -> Iterator[Note]:
    loud: Mapping[str, Level] = {"fails": "stop", "close": "caution"}
    fields = {"current": "machine_amps", "arc": "duty", "share": "arc_share",
              "cord_drop": "cord_length"}  # fmt: skip
    for held in ("fails", "close"):
        for check in found.checks:
            if check.held == held:
                field = fields.get(check.key, check.key)
                yield Note(loud[held], check.text, check.source, field)
    if found.duty < 1:
        yield Note(
            "note",
            "The rule for duty cycle errs by up to a tenth; the plate rules. Plates are tested at "
            "40 °C (104 °F).",
            "i2t",
            "duty",
        )
    yield Note(
        "caution",
        "Wiring, breakers and earthing belong to a licensed electrician and the local code.",
        "nec-630",
    )
    rated = "machine_amps" in read.own
    missing = [
        key
        for key in _KEYS_OF_MACHINE
        if key not in read.own and not (key == "rated_amps" and rated)
    ]
    if missing:
        yield Note(
            "caution",
            f"The demonstration shop's machine stands in for: {', '.join(missing)}.",
            "invented",
        )
