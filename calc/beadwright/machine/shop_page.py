"""The Shop page's answer: what machine, leads and circuit do with the planned job."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.job.job import PowerSource
from beadwright.job.page_query import PageAnswered, PageQuery, read_page
from beadwright.machine.circuit import Circuit, circuit
from beadwright.machine.power_source import Load, Machine
from beadwright.machine.shop_query import DEMO_RATED_A, ShopQuery
from beadwright.phrases import say
from beadwright.results import Level, Note
from beadwright.setting.dial_in import DialIn, dial_in

STANDS_IN = "machine.demo-stands-in"
"""Id of what is said of the figures that are still the invented ones."""

_KEYS_OF_MACHINE = ("rated_amps", "duty", "supply", "breaker", "cord", "cable")


@dataclass(frozen=True, slots=True)
class ShopAnswer(PageAnswered):
    """The Shop page's answer.

    Attributes:
        page: ``shop``.
        query: The query as read.
        dialled: The job as dialled in.
        circuit: What machine and circuit do with it.
        notes: Notes, the most severe first.
    """

    query: ShopQuery
    dialled: DialIn
    circuit: Circuit


def shop_answer(query: str, kept: Mapping[str, Any] | None = None) -> ShopAnswer:
    """Return the Shop page's answer to a query string.

    Args:
        query: Keys of ``shop_query.ShopQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(ShopQuery, query, kept)
    # This page says what the machine cannot give, so the job is dialled in without its limits.
    dialled = dial_in(
        replace(read.job, machine_amps_a=None, machine_volts_v=None, source=PowerSource())
    )
    found = circuit(_machine(read), _load(read, dialled))
    return ShopAnswer("shop", read, dialled, found, notes=tuple(_notes(read, found)))


def _machine(read: ShopQuery) -> Machine:
    return Machine(
        rated_a=read.rated_amps or read.machine_amps or DEMO_RATED_A,
        duty=read.duty,
        most_a=read.machine_amps,
        efficiency=read.machine_efficiency,
        power_factor=read.power_factor,
        supply_v=read.supply,
        phases=3 if read.phase == "3" else 1,
        breaker_a=read.breaker,
        cord=read.cord,
        cord_m=read.cord_length,
        generator_va=read.generator,
        cable=read.cable,
        cable_m=read.cable_length,
    )


def _load(read: ShopQuery, dialled: DialIn) -> Load:
    point, travel, job = dialled.point, dialled.settings.travel.value, dialled.job
    if point is None or travel is None:
        text = "No setting holds every limit of this job. Write the feed you run."
        raise FieldErrors({"wfs": [text]})
    current = read.amps or point.current_a
    return Load(current, point.volts, job.weld_length_m / travel, read.arc_share)


def _notes(read: PageQuery, found: Circuit) -> Iterator[Note]:
    loud: Mapping[str, Level] = {"fails": "stop", "close": "caution"}
    fields = {"current": "machine_amps", "arc": "duty", "share": "arc_share",
              "cord_drop": "cord_length"}  # fmt: skip
    for held in ("fails", "close"):
        for check in found.checks:
            if check.held == held:
                field = fields.get(check.key, check.key)
                yield Note(loud[held], check.phrase, check.source, field)
    if found.duty < 1:
        yield Note(
            "note",
            say("machine.duty-rule"),
            "i2t",
            "duty",
        )
    yield Note(
        "caution",
        say("machine.electrician"),
        "nec-630",
    )
    demo = demo_keys(read)
    if demo:
        yield Note("caution", say(STANDS_IN, keys=demo), "invented")


def demo_keys(read: PageQuery) -> tuple[str, ...]:
    """Return the machine's keys whose figures are still the demonstration shop's.

    Args:
        read: The page's query [-].
    """
    rated = "machine_amps" in read.own
    return tuple(
        key
        for key in _KEYS_OF_MACHINE
        if key not in read.own and not (key == "rated_amps" and rated)
    )
