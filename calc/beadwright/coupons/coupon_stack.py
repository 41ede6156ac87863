"""A stack of coupons: five joints for a wire that is new, or the jobs kept; one after the other."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any
from urllib.parse import urlencode

from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.kept_jobs import KeptJob
from beadwright.errors import FieldErrors
from beadwright.job.page_query import page_fields
from beadwright.passes.pass_beads import Bead
from beadwright.passes.passes_page import PassesAnswer, passes_answer
from beadwright.passes.passes_query import PassesQuery
from beadwright.phrases import Phrase, say
from beadwright.reading.queries import split_query

ALONG = ("wire", "dia", "gas", "units", "own", "machine_amps", "machine_volts", "travel_by")
"""Keys a coupon takes over from the job: what it is welded with, not what is welded."""

MOST_JOBS = 8
"""Most kept jobs of one stack: what one sheet of paper holds, the job kept last first [-]."""

NOT_WELDED = ("units", "own", "machine_amps", "machine_volts")
"""Keys that make no other coupon: how it is shown, what it is counted with."""

NO_JOINT = ("shop", "list")
"""Pages whose kept job is no weld of one joint."""


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


def coupon_stack(
    typed: Mapping[str, str], kept: Mapping[str, Any] | None = None
) -> Iterator[StackCoupon]:
    """Yield the stack for the wire and gas of a job, each coupon with its settings.

    Args:
        typed: The job's keys as typed [-].
        kept: The shop's own defaults by key; what is typed wins [-].
    """
    along = {key: typed[key] for key in ALONG if typed.get(key)}
    for mark, (name, joint) in enumerate(_STACK, 1):
        yield _coupon(mark, name, {**along, **joint}, kept)


def stacked_jobs(jobs: Sequence[KeptJob]) -> tuple[tuple[str, Mapping[str, str]], ...]:
    """Return the welds of kept jobs, each once: name and keys, the job kept last first.

    Args:
        jobs: Kept jobs [-].
    """
    found: dict[str, tuple[str, Mapping[str, str]]] = {}
    welded = page_fields(PassesQuery).keys() - {"at"}
    for job in sorted(jobs, key=lambda each: each.made, reverse=True):
        if job.page in NO_JOINT:
            continue
        typed = _typed(job.query)
        if typed is None:
            continue
        keys = {key: text for key, text in typed.items() if key in welded and text}
        found.setdefault(urlencode(sorted(keys.items())), (job.name, keys))
    return tuple(found.values())


def job_stack(
    jobs: Sequence[KeptJob], kept: Mapping[str, Any] | None = None
) -> Iterator[StackCoupon]:
    """Yield a coupon for each weld of the kept jobs, ``MOST_JOBS`` at most.

    Args:
        jobs: Kept jobs [-].
        kept: The shop's own defaults by key; what a job says wins [-].
    """
    for mark, (name, keys) in enumerate(stacked_jobs(jobs)[:MOST_JOBS], 1):
        yield _coupon(mark, say("coupons.kept-job", name=name), keys, kept)


def kept_of(coupon: StackCoupon, records: Iterable[CouponRecord]) -> int:
    """Return how many of the kept coupons are this one: welded with its entries as written [-].

    Args:
        coupon: A coupon of the stack [-].
        records: The kept coupons that may be it [-].
    """
    wanted = split_query(coupon.query)
    for key in NOT_WELDED:
        wanted.pop(key, None)
    told = (_typed(record.query) for record in records)
    return sum(each is not None and wanted.items() <= each.items() for each in told)


def _typed(query: str) -> Mapping[str, str] | None:
    """What a kept query says; None where it is no query of a page."""
    try:
        return split_query(query)
    except FieldErrors:
        return None


def _coupon(
    mark: int, name: Phrase, keys: Mapping[str, str], kept: Mapping[str, Any] | None
) -> StackCoupon:
    query = urlencode(keys, safe="/\"' ")
    try:
        plan = passes_answer(query, kept)
    except FieldErrors:
        return StackCoupon(mark, name, query, None, say("coupons.not-welded"))
    if not plan.found.open:
        return StackCoupon(mark, name, query, None, say("coupons.no-window"))
    return StackCoupon(mark, name, query, plan, None)
