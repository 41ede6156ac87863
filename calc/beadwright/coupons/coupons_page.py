"""The Coupons page's answer: the coupon at hand, what all coupons say, what to weld next."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any

from beadwright.coupons.coupon_facts import CouponFacts, as_published, coupon_facts
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupon_stack import (
    StackCoupon,
    coupon_stack,
    job_stack,
    stacked_jobs,
)
from beadwright.coupons.coupons_query import CouponsQuery
from beadwright.coupons.learned_numbers import (
    OF,
    OF_HAND,
    LearnedKey,
    LearnedNumber,
    learned_number,
    own_numbers_of,
    same_way,
)
from beadwright.coupons.next_coupon import NextCoupon, heat_mix, next_coupon
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.passes.pass_beads import Asked, PassPlan
from beadwright.passes.pass_plan import pass_plan
from beadwright.phrases import say
from beadwright.process.deposition import deposition_efficiency
from beadwright.process.own_numbers import OwnNumbers
from beadwright.results import Note, severest_first
from beadwright.setting.dial_in import DialIn, dial_in

NAMES: Mapping[LearnedKey, str] = MappingProxyType(
    {
        "melting": "coupons.melting",
        "efficiency": "coupons.efficiency",
        "crown": "coupons.crown",
        "travel": "coupons.travel",
        "meter": "coupons.meter",
    }
)
"""Ids of the numbers' names."""


MANY_PASSES = 50
"""Passes of Dial in over which the beads are counted before the rest is worked out [-]."""


@dataclass(frozen=True, slots=True)
class CouponsAnswer(PageAnswered):
    """The Coupons page's answer.

    Attributes:
        page: ``coupons``.
        query: The query as read.
        facts: What the coupon at hand says.
        records: The kept coupons of this wire, gas, machine and welder.
        elsewhere: Kept coupons of any other.
        numbers: What was learned, number by number.
        own: The shop's own numbers, or None while no coupon counts.
        published: The job as published.
        dialled: The job with the shop's own numbers.
        coming: The coupon to weld next, or None.
        kept: The shop's own defaults by key.
        notes: Notes, the most severe first.
    """

    query: CouponsQuery
    facts: CouponFacts
    records: tuple[CouponRecord, ...]
    elsewhere: int
    numbers: tuple[LearnedNumber, ...]
    own: OwnNumbers | None
    published: DialIn
    dialled: DialIn
    coming: NextCoupon | None
    kept: Mapping[str, Any]

    def stack(self) -> tuple[StackCoupon, ...]:
        """Return the stack asked for; worked out when asked."""
        if self.query.stack == "jobs":
            return tuple(job_stack(self.query.jobs or (), self.kept))
        return tuple(coupon_stack(self.query.typed, self.kept))

    def records_to_stack(self) -> tuple[CouponRecord, ...]:
        """Return the kept coupons that may be of the stack: a job has a wire and gas of its own."""
        return _all(self) if self.query.stack == "jobs" else self.records

    def jobs_to_stack(self) -> int:
        """Return how many welds the kept jobs are [-]."""
        return len(stacked_jobs(self.query.jobs or ()))

    def beads(self) -> PassPlan:
        """Return the beads of the job, with the shop's own numbers; worked out when asked."""
        return pass_plan(self.dialled.job, Asked(self.query.passes))

    def travels(self) -> tuple[float, ...]:
        """Return the travel of each bead in welding order [m/s]; empty if none is planned."""
        if self.dialled.plan.passes > 1:
            beads = self.beads().beads
            return tuple(bead.laid.travel_m_s for bead in beads if bead.laid is not None)
        travel = self.dialled.settings.travel.value
        return () if travel is None else (travel,)

    def paced_m(self) -> float:
        """Return the length of each bead [m]: between the marks, else that of the weld."""
        return self.query.seen.marked or self.published.job.weld_length_m

    def odd(self) -> Mapping[str, tuple[LearnedNumber, ...]]:
        """Return the numbers in which a kept coupon does not fit the others, by its key."""
        found: dict[str, tuple[LearnedNumber, ...]] = {}
        for number in self.numbers:
            for key, _ in number.found.odd:
                found[key] = (*found.get(key, ()), number)
        return found


def coupons_answer(query: str, kept: Mapping[str, Any] | None = None) -> CouponsAnswer:
    """Return the Coupons page's answer to a query string.

    Args:
        query: Keys of ``coupons_query.CouponsQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(CouponsQuery, query, kept)
    read.check()
    job = as_published(read.job)
    published = dial_in(job, read.passes)
    records, numbers = _learned(read, published)
    low, typical, high = deposition_efficiency(job.wire, job.gas, published.plan.transfer)
    own = own_numbers_of(numbers, job.wire, job.gas, (high - low) / 2 / typical)
    if own is not None:
        own = replace(own, machine=read.seen.machine or "", welder=read.seen.welder or "")
    dialled = dial_in(replace(job, wire=replace(job.wire, own=own)), read.passes)
    if dialled.plan.passes > MANY_PASSES:
        pass_plan(dialled.job, Asked(read.passes))  # refused here if no plan has as many beads
    answer = CouponsAnswer(
        page="coupons",
        query=read,
        facts=coupon_facts(read.job, read.seen, read.passes),
        records=records,
        elsewhere=len(read.coupons or ()) - len(records),
        numbers=numbers,
        own=own,
        published=published,
        dialled=dialled,
        coming=next_coupon(dialled, job.wire, numbers),
        kept=kept or {},
        notes=(),
    )
    return replace(answer, notes=severest_first(_notes(answer)))


def _learned(
    read: CouponsQuery, published: DialIn
) -> tuple[tuple[CouponRecord, ...], tuple[LearnedNumber, ...]]:
    """The coupons that speak of this job's wire and gas, and what they say."""
    job, machine, welder = published.job, read.seen.machine or "", read.seen.welder or ""
    mix = (1.0, 0.0)
    if published.point is not None:
        mix = heat_mix(published.point, job.wire)
    of = {key: same_way(read.coupons or (), job, machine, welder, key) for key in OF}
    numbers = tuple(
        learned_number(key, of[key], job.wire, mix if key == "melting" else (1.0, 0.0))
        for key in OF
    )
    return of["melting"], numbers


def _notes(answer: CouponsAnswer) -> Iterator[Note]:
    yield Note("note", say("coupons.not-a-procedure"), "practice")
    if not answer.published.open:
        yield Note("out", say("coupons.no-settings"), "", "wfs")
    for key, numbers in answer.odd().items():
        record = next(each for each in _all(answer) if each.key == key)
        for number in numbers:
            told = say("coupons.odd", mark=_mark(record), what=say(NAMES[number.key]))
            yield Note("caution", told, "own-coupons")
    if any(key in OF_HAND for key in OF) and not answer.query.seen.welder and answer.records:
        yield Note("note", say("coupons.no-welder"), "", "welder")


def _all(answer: CouponsAnswer) -> tuple[CouponRecord, ...]:
    return answer.query.coupons or ()


def _mark(record: CouponRecord) -> str:
    return record.made[:10] or record.key[:8]
