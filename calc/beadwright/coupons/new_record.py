"""A record of the coupon at hand, to be kept."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any
from urllib.parse import urlencode

from beadwright.coupons.coupon_facts import coupon_facts
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupons_query import CouponsQuery
from beadwright.coupons.learned_numbers import OF
from beadwright.errors import FieldErrors
from beadwright.job.page_query import page_fields, read_page


def new_record(query: str, kept: Mapping[str, Any] | None, key: str, made: str) -> CouponRecord:
    """Return a record of the coupon a query describes.

    Args:
        query: Keys of ``coupons_query.CouponsQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].
        key: Its own key, which no other coupon has [-].
        made: When it is kept [-].

    Raises:
        FieldErrors: With each field's messages, or if nothing was measured.
    """
    read = read_page(CouponsQuery, query, kept)
    read.check()
    job, seen = read.job, read.seen
    facts = coupon_facts(job, seen, read.passes)
    if not any(of(facts) is not None for of in OF.values()):
        raise FieldErrors(
            {"arc_time": ["Nothing to learn from yet: time it, read the amps, gauge it or weigh "
                          "it, then keep it."]}
        )  # fmt: skip
    return CouponRecord(
        key=key,
        made=made,
        query=_whole(read, kept),
        wire=job.wire.type.name,
        dia=job.wire.size,
        gas=job.gas.name,
        machine=seen.machine or "",
        welder=seen.welder or "",
        facts=facts,
        count_odd=seen.count_odd == "yes",
    )


_NOT_OF_A_COUPON = ("own", "coupons", "jobs", "stack")
"""What coupons taught, all that is kept, the stack shown: no part of what one coupon was."""


def _whole(read: CouponsQuery, kept: Mapping[str, Any] | None) -> str:
    """The query with what the shop gave written out: it says the same on any phone, at any time."""
    given = {**(kept or {}), **read.typed}
    texts = {key: str(given[key]) for key in page_fields(CouponsQuery) if given.get(key)}
    for key in _NOT_OF_A_COUPON:
        texts.pop(key, None)
    return urlencode(texts, safe="/\"' ")
