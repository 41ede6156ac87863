"""A stack of coupons for a new wire: five joints, welded one after the other."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from urllib.parse import urlencode

from beadwright.errors import FieldErrors
from beadwright.passes.pass_beads import Bead
from beadwright.passes.passes_page import PassesAnswer, passes_answer
from beadwright.phrases import Phrase, say

ALONG = ("wire", "dia", "gas", "units", "own", "machine_amps", "machine_volts", "travel_by")
"""Keys a coupon takes over from the job: what it is welded with, not what is welded."""


@dataclass(frozen=True, slots=True)
class StackCoupon:
    """One coupon of the stack.

    Attributes:
        mark: Number to scribe on it, from 1 [-].
        name: What it is.
        query: The job, a query of any page.
        plan: Its beads and settings, or None if this wire and gas do not weld it.
        refused: Why not, or None.
    """

    mark: int
    name: Phrase
    query: str
    plan: PassesAnswer | None
    refused: Phrase | None

    @property
    def beads(self) -> tuple[Bead, ...]:
        """The first bead of each role: what the sheet lists."""
        if self.plan is None:
            return ()
        found: dict[str, Bead] = {}
        for bead in self.plan.found.beads:
            found.setdefault(bead.role, bead)
        return tuple(found.values())


_STACK: tuple[tuple[Phrase, Mapping[str, str]], ...] = (
    (say("coupons.thin-lap"), {"joint": "lap", "plate": "14ga", "position": "2F"}),
    (say("coupons.eighth-tee"), {"joint": "tee", "plate": "1/8in", "leg": "1/8in",
                                 "position": "2F"}),
    (say("coupons.quarter-tee"), {"joint": "tee", "plate": "1/4in", "leg": "1/4in",
                                  "position": "2F"}),
    (say("coupons.quarter-lap"), {"joint": "lap", "plate": "1/4in", "leg": "1/4in",
                                  "position": "2F", "passes": "3"}),
    (say("coupons.half-v"), {"joint": "v", "plate": "1/2in", "position": "1G",
                             "backing": "steel"}),
)  # fmt: skip
"""The joints. Common practice for a wire that is new to a shop: sheet, thin and thick fillets, a
fillet in light beads, a groove."""


def coupon_stack(typed: Mapping[str, str]) -> Iterator[StackCoupon]:
    """Yield the stack for the wire and gas of a job, each coupon with its settings.

    Args:
        typed: The job's keys as typed or kept [-].
    """
    along = {key: typed[key] for key in ALONG if typed.get(key)}
    for mark, (name, joint) in enumerate(_STACK, 1):
        query = urlencode({**along, **joint}, safe="/\"' ")
        try:
            plan = passes_answer(query)
        except FieldErrors:
            yield StackCoupon(mark, name, query, None, say("coupons.not-welded"))
            continue
        if not plan.found.open:
            yield StackCoupon(mark, name, query, None, say("coupons.no-window"))
            continue
        yield StackCoupon(mark, name, query, plan, None)
