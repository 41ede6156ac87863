"""The Passes page's keys: the job, how many beads, how they are laid, what root and cap run on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.passes.bead_count import MOST_BEADS
from beadwright.passes.pass_beads import Asked
from beadwright.passes.pass_process import PartByHand
from beadwright.process.transfer import Transfer
from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Choice, Measured, WholeNumber


def _feed(label: str, help: str) -> Measured:
    return Measured(
        "wire_feed",
        "30in/min",
        "1000in/min",
        "no feeder holds less or gives more",
        label=label,
        help=help,
        blank="auto",
    )


def _volts(label: str, help: str) -> Measured:
    return Measured(
        "volts",
        "10V",
        "50V",
        "outside that no wire arc burns",
        label=label,
        help=help,
        blank="auto",
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PassesQuery(PageQuery):
    """The Passes page's query: its keys besides the job's [SI]."""

    passes: int | None = optional(
        WholeNumber(
            1,
            MOST_BEADS,
            label="Passes",
            help="beads in all; blank: the fewest that hold every limit",
            blank="the fewest",
        )
    )
    bead: Literal["weave", "stringer"] = required(
        Choice(
            ("weave", "stringer"),
            label="Beads",
            help="weave, up to the code's width; or stringer, without weaving",
            default="weave",
        )
    )
    root_transfer: Transfer | None = optional(
        Choice(
            ("short", "spray", "pulse"),
            label="Root's transfer",
            help="transfer of the root: short, spray, pulse; blank: follows the job",
            blank="As the rest",
        )
    )
    root_wfs: float | None = optional(
        _feed("Root's wire feed", "wire feed of the root set by hand")
    )
    root_volts: float | None = optional(_volts("Root's volts", "volts of the root set by hand"))
    cap_wfs: float | None = optional(_feed("Cap's wire feed", "wire feed of the cap set by hand"))
    cap_volts: float | None = optional(_volts("Cap's volts", "volts of the cap set by hand"))
    at: int | None = optional(
        WholeNumber(
            1,
            MOST_BEADS,
            label="Bead shown",
            help="bead shown, from 1; blank: the last",
            blank="the last",
        )
    )

    @property
    def plan(self) -> Asked:
        """What is asked of the plan."""
        return Asked(
            count=self.passes,
            stringers=self.bead == "stringer",
            root=PartByHand(self.root_transfer, self.root_wfs, self.root_volts),
            cap=PartByHand(None, self.cap_wfs, self.cap_volts),
        )


DEFAULTS = page_defaults(PassesQuery)
"""What a blank or missing key of the page means."""
