"""The key of how later ways are run beside the first: the one control of like for like."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.reading.entries import optional
from beadwright.reading.fields import Choice
from beadwright.setting.run_alike import HeldEqual

Compared = Literal[HeldEqual, "measured"]
"""How a later way is compared with the first."""

COMPARED: tuple[Compared, ...] = ("equal-amps", "equal-travel", "as-run", "measured")
"""All of them, in the order of the form."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedEntries:
    """The key of how later ways are run beside the first."""

    compared: Compared | None = optional(
        Choice(
            COMPARED,
            label="How compared",
            help="how later ways are run: equal-amps or equal-travel with the first, as-run (each "
            "as usually run), measured (feed, travel or lb/h typed for the way); what is typed for "
            "a way stands before it; blank: equal-amps; as-run where size, mover or position "
            "differ",
            blank="equal amps",
        )
    )
