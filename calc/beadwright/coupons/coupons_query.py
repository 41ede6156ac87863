"""The Coupons page's keys: the job, one coupon's readings, and all coupons the phone keeps."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from marshmallow import ValidationError

from beadwright import units
from beadwright.coupons.coupon_entries import CouponEntries
from beadwright.coupons.coupon_records import CouponRecord, CouponRecordsError, read_records
from beadwright.coupons.kept_jobs import KeptJob, KeptJobsError, read_jobs
from beadwright.errors import FieldErrors
from beadwright.job.page_query import PageQuery
from beadwright.joint.fillet_joints import fillet_throat
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Choice, QueryField, WholeNumber


class RecordsField(QueryField[tuple[CouponRecord, ...]]):
    """All kept coupons as one JSON text; the phone gives it, nobody types it."""

    is_text = True

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> tuple[CouponRecord, ...]:
        try:
            return read_records(str(value))
        except CouponRecordsError as error:
            raise ValidationError(str(error)) from error


class JobsField(QueryField[tuple[KeptJob, ...]]):
    """The phone's kept jobs as one JSON text; the phone gives it, nobody types it."""

    is_text = True

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> tuple[KeptJob, ...]:
        try:
            return read_jobs(str(value))
        except KeptJobsError as error:
            raise ValidationError(str(error)) from error


@dataclass(frozen=True, slots=True, kw_only=True)
class CouponsQuery(PageQuery):
    """The Coupons page's query: its keys besides the job's [SI]."""

    seen: CouponEntries = part(CouponEntries)
    passes: int | None = optional(
        WholeNumber(
            1,
            150,
            label="Beads it is laid in",
            help="beads the joint is laid in, all of one size; blank: as planned",
            blank="as planned",
        )
    )
    stack: Literal["new-wire", "jobs"] = required(
        Choice[Literal["new-wire", "jobs"]](
            ("new-wire", "jobs"),
            label="Stack",
            help="new-wire: five joints for a wire that is new; jobs: the jobs kept on this phone",
            default="new-wire",
        )
    )
    jobs: tuple[KeptJob, ...] | None = optional(
        JobsField(label="Kept jobs", help="kept jobs as JSON, as the phone keeps them")
    )
    coupons: tuple[CouponRecord, ...] | None = optional(
        RecordsField(label="Kept coupons", help="kept coupons as JSON, as the export file has them")
    )

    def check(self) -> None:
        """Refuse readings that contradict each other.

        Raises:
            FieldErrors: With each field's messages.
        """
        found: dict[str, list[str]] = {}
        for key, text in self._conflicts():
            found.setdefault(key, []).append(text)
        if found:
            raise FieldErrors(found)

    def _conflicts(self) -> Iterator[tuple[str, str]]:
        seen = self.seen
        if seen.arc_time is not None and seen.marked is None:
            yield "marked", "The arc was timed: say over what length, mark to mark."
        if (seen.burst_length is None) != (seen.burst_time is None):
            missing = "burst_time" if seen.burst_time is None else "burst_length"
            yield missing, "A feed check needs both the wire run out and its time."
        before, after = seen.weight_before, seen.weight_after
        if (before is None) != (after is None):
            missing = "weight_after" if after is None else "weight_before"
            yield missing, "Both weights are needed, before and after."
        if before is not None and after is not None and after <= before:
            yield "weight_after", "The coupon gained nothing: weigh it again, or swap the two."
        if before is not None and after is not None and seen.arc_time is None:
            yield "arc_time", "What was laid a minute needs the arc time as well."
        if seen.convexity is not None and seen.face is None and seen.convexity > 0:
            yield "face", "Convexity needs the face width beside it."
        yield from self._throat_conflicts()

    def _throat_conflicts(self) -> Iterator[tuple[str, str]]:
        seen = self.seen
        if seen.throat_seen is None or not self.job.is_fillet:
            return
        if seen.convexity is not None:
            yield "throat_seen", "Type the convexity or the throat, not both: each gives the other."
        if seen.leg_seen is None:
            yield "leg_seen", "The throat needs the leg beside it."
            return
        leg, leg2 = seen.leg_seen, seen.leg2_seen or seen.leg_seen
        flat = fillet_throat(leg, leg2, self.job.skew_deg)
        if seen.throat_seen <= flat / 4:
            told = units.written(flat, "leg", self.job.units)
            yield (
                "throat_seen",
                f"Under a flat face these legs have a throat of {told}: a quarter of it leaves no "
                "metal. Measure both again.",
            )
