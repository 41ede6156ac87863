"""What timed and weighed coupons say of a way to weld a job: the figures Cost takes as measured."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from statistics import fmean

from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupons_query import CouponsQuery
from beadwright.coupons.learned_numbers import learned_number
from beadwright.coupons.same_weld import same_weld
from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.job.job_joint import wanted_leg
from beadwright.job.page_query import read_page


@dataclass(frozen=True, slots=True)
class MeasuredWay:
    """What the coupons of one way say.

    Attributes:
        coupons: Coupons of this weld, timed and weighed, that count [-].
        elsewhere: Coupons of the same wire and gas, timed and weighed, of another weld [-].
        odd: Days of those set aside, as they do not fit the others.
        laid_kg_s: Weld metal laid a second of arc; None without a coupon [kg/s].
        efficiency: Laid over wire run; None without a coupon [-].
        clean_s_m: Clean-up for a length of bead; None if not every coupon was timed so [s/m].
    """

    coupons: int
    elsewhere: int
    odd: tuple[str, ...] = ()
    laid_kg_s: float | None = None
    efficiency: float | None = None
    clean_s_m: float | None = None


@dataclass(frozen=True, slots=True)
class _Weighed:
    record: CouponRecord
    laid_kg_s: float
    feed_m_s: float
    clean_s_m: float | None


def measured_way(
    records: Iterable[CouponRecord], job: Job, machine: str, welder: str
) -> MeasuredWay:
    """Return what kept coupons say of a job: those of its weld, wire, gas, machine and hand.

    A coupon counts if it was timed and weighed. One whose laid share does not fit the others is
    set aside and named, as on Coupons.

    Source: the mean of the coupons; ``learned_numbers`` for the odd ones.

    Args:
        records: All kept coupons [-].
        job: The job as this way welds it [-].
        machine: The machine's name, may be empty [-].
        welder: The welder's name, may be empty [-].
    """
    way = job.wire.type.name, job.wire.size, job.gas.name, machine, welder
    same: list[_Weighed] = []
    elsewhere = 0
    for record in records:
        facts = record.facts
        if (record.wire, record.dia, record.gas, record.machine, record.welder) != way:
            continue
        if facts.laid_kg_s is None or facts.feed_m_s is None:
            continue
        try:
            read = read_page(CouponsQuery, record.query, None)
        except FieldErrors:
            continue  # kept by another version: nobody knows what it was of
        if not same_weld(_sized(read.job), _sized(job)):
            elsewhere += 1
            continue
        clean = None
        if facts.clean_s is not None and read.seen.marked is not None:
            clean = facts.clean_s / read.seen.marked
        same.append(_Weighed(record, facts.laid_kg_s, facts.feed_m_s, clean))
    return _mean(same, elsewhere, job)


def _sized(job: Job) -> Job:
    """The job with its leg written out where the plate gives it."""
    return replace(job, leg_m=wanted_leg(job)) if job.is_fillet else job


def _mean(same: Sequence[_Weighed], elsewhere: int, job: Job) -> MeasuredWay:
    number = learned_number("efficiency", [each.record for each in same], job.wire, (1.0, 0.0))
    out = {key for key, _ in number.found.odd}
    counted = [each for each in same if each.record.key not in out]
    odd = tuple(each.record.made[:10] for each in same if each.record.key in out)
    if not counted:
        return MeasuredWay(0, elsewhere, odd)
    cleaned = [each.clean_s_m for each in counted if each.clean_s_m is not None]
    metre = job.wire.linear_mass_kg_m
    return MeasuredWay(
        coupons=len(counted),
        elsewhere=elsewhere,
        odd=odd,
        laid_kg_s=fmean(each.laid_kg_s for each in counted),
        efficiency=fmean(each.laid_kg_s / (each.feed_m_s * metre) for each in counted),
        clean_s_m=fmean(cleaned) if len(cleaned) == len(counted) else None,
    )
