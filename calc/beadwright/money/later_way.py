"""The keys of a later way: what of the job it changes, its own figures, what the change costs."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from typing import Any

from beadwright.job.job import AskedTransfer
from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.money.price_fields import Price
from beadwright.money.way_entries import WayEntries
from beadwright.process.gases import Gas
from beadwright.process.positions import Mover, Position
from beadwright.reading.entries import optional, part
from beadwright.reading.fields import QueryField

_MOST_ONCE = "1000000000", "no change of wire costs that"


def _once(label: str, help: str) -> Price:
    return Price(
        "money", *_MOST_ONCE, label=label, help=f"{help}; part of the change-over cost", blank="0"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class OnceEntries:
    """The keys of what changing to a way may cost once [money]."""

    change_over: float | None = optional(
        Price(
            "money",
            *_MOST_ONCE,
            label="Change-over cost, in all",
            help="all that changing to this way costs once, instead of its pieces",
            blank="its pieces",
        )
    )
    rolls: float | None = optional(_once("Drive rolls", "drive rolls for the wire"))
    liner: float | None = optional(_once("Liner and gun parts", "liner and gun parts"))
    tips: float | None = optional(_once("Tips and nozzles", "tips and nozzles to suit the wire"))
    gas_change: float | None = optional(
        _once("Changing the gas", "changing gas: leftover cylinders, deposits, mixer")
    )
    regulator: float | None = optional(_once("Regulator", "regulator and flowmeter for the gas"))
    trial: float | None = optional(_once("Trial spool", "spool of wire for trials"))
    procedure: float | None = optional(
        _once("Qualifying a procedure", "qualifying a procedure again")
    )
    training: float | None = optional(
        _once("Training and trial plates", "training and trial plates")
    )
    stock: float | None = optional(
        _once("Stock in two wires", "old wire left over, and a stock of the new one beside it")
    )
    equipment: float | None = optional(
        _once("Cell, robot or track", "cell, robot, track, power source to buy")
    )
    programming: float | None = optional(
        _once("Programming and fixtures", "programming, fixtures and the first parts")
    )

    def amounts(self) -> tuple[tuple[str, float], ...]:
        """Return what is paid once, name by name; one name where it is typed in all [money]."""
        if self.change_over is not None:
            return (("change_over", self.change_over),)
        names = (each.name for each in dataclasses.fields(self) if each.name != "change_over")
        return tuple((name, getattr(self, name) or 0.0) for name in names)


def _of_job(key: str) -> QueryField[Any]:
    return JOB_FIELDS[key].but(default="", blank="worked out")


def _chosen(key: str) -> QueryField[Any]:
    return JOB_FIELDS[key].but(default="", blank="As A")


@dataclass(frozen=True, slots=True, kw_only=True)
class JobChanges:
    """The keys of the job that a later way may have of its own [SI]."""

    wire: str | None = optional(_chosen("wire"))
    dia: str | None = optional(_chosen("dia"))
    gas: Gas | None = optional(_chosen("gas"))
    transfer: AskedTransfer | None = optional(_chosen("transfer"))
    travel_by: Mover | None = optional(_chosen("travel_by"))
    position: Position | None = optional(_chosen("position"))
    leg: float | None = optional(JOB_FIELDS["leg"].but(default="", blank="as A"))
    reinforcement: float | None = optional(
        JOB_FIELDS["reinforcement"].but(default="", blank="as A")
    )
    wfs: float | None = optional(_of_job("wfs"))
    volts: float | None = optional(_of_job("volts"))
    ctwd: float | None = optional(_of_job("ctwd"))
    travel: float | None = optional(_of_job("travel"))


@dataclass(frozen=True, slots=True, kw_only=True)
class LaterWay:
    """The keys of a later way, without its prefix."""

    job: JobChanges = part(JobChanges)
    way: WayEntries = part(WayEntries)
    once: OnceEntries = part(OnceEntries)


def written(entries: JobChanges | WayEntries) -> dict[str, Any]:
    """Return what of some keys is said, by key.

    Args:
        entries: The keys [SI].
    """
    found = {each.name: getattr(entries, each.name) for each in dataclasses.fields(entries)}
    return {key: value for key, value in found.items() if value is not None}
