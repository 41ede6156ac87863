"""The Shop page's answer: what machine, leads and circuit do with the planned job."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.job.page_query import PageAnswered, PageQuery, read_page
from beadwright.machine.circuit import Circuit, circuit
from beadwright.machine.shop_load import dialled_for, load_of, machine_of
from beadwright.machine.shop_query import ShopQuery
from beadwright.machine.shop_ways import shop_ways_out
from beadwright.phrases import Amount, Phrase, say
from beadwright.results import Level, Note
from beadwright.setting.dial_in import DialIn
from beadwright.setting.ways_out import WayOut

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
        ways_out: Single changes that make it hold, where it does not.
        notes: Notes, the most severe first.
    """

    query: ShopQuery
    dialled: DialIn
    circuit: Circuit
    ways_out: tuple[WayOut, ...]


def shop_answer(query: str, kept: Mapping[str, Any] | None = None) -> ShopAnswer:
    """Return the Shop page's answer to a query string.

    Args:
        query: Keys of ``shop_query.ShopQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(ShopQuery, query, kept)
    dialled = dialled_for(read)
    found = circuit(machine_of(read), load_of(read, dialled))
    out = shop_ways_out(read, dialled, found)
    return ShopAnswer("shop", read, dialled, found, out, notes=tuple(_notes(read, found)))


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
    if found.machine.generator_va is not None:
        yield Note("caution", say("machine.generator-mind"), "generator-rule", "generator")
    yield Note("note", _by_plate(found), "nec-630", "plate_amps")
    yield Note("caution", say("machine.electrician"), "nec-630")
    demo = demo_keys(read)
    if demo:
        yield Note("caution", say(STANDS_IN, keys=demo), "invented")


def _by_plate(found: Circuit) -> Phrase:
    """What a circuit is sized by: the machine at its rating, not this job."""
    rated = found.rated
    return say(
        "machine.plate-rules-circuit",
        rated=Amount(found.machine.rated_a, "current"),
        primary=Amount(rated.primary_a, "current"),
        heats_like=Amount(rated.effective_a, "current"),
        duty=found.machine.duty,
        volt_amps=Amount(rated.apparent_va, "power"),
        drawn=Amount(found.drawn.primary_a, "current"),
    )


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
