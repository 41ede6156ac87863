"""Which kept coupons prove a card: the same weld with the same wire and gas, at its settings."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupons_query import CouponsQuery
from beadwright.coupons.same_weld import SIZE_APART, same_weld
from beadwright.errors import FieldErrors
from beadwright.job.page_query import read_page
from beadwright.passes.pass_beads import PassPlan
from beadwright.setting.dial_in import DialIn, dial_in

VOLTS_APART_V = 1.0
"""How far the volts of a coupon may be from the card's and still be the same setting [V]. Our
choice: a welder reads a meter to half a volt, twice."""


@dataclass(frozen=True, slots=True)
class Proof:
    """A coupon that may prove a card.

    Attributes:
        record: The coupon.
        mark: What is scribed on it, may be empty.
        feed_m_s: Wire feed it was welded at [m/s].
        volts: Volts it was welded at; None for pulse [V].
    """

    record: CouponRecord
    mark: str
    feed_m_s: float
    volts: float | None


def proofs_of(
    records: Iterable[CouponRecord], dialled: DialIn, found: PassPlan
) -> tuple[Proof, ...]:
    """Return the coupons welded as a card says, the newest first.

    A coupon proves a card if joint, plates, size, position, wire, gas and mode are the card's, its
    wire feed lies within the feeds the card's beads may have, and its volts near theirs.

    Args:
        records: Kept coupons [-].
        dialled: The card's job with its settings [-].
        found: The card's beads [-].
    """
    return tuple(sorted(_proofs(records, dialled, found), key=lambda one: one.record.made,
                        reverse=True))  # fmt: skip


def _proofs(records: Iterable[CouponRecord], dialled: DialIn, found: PassPlan) -> Iterator[Proof]:
    wire = dialled.job.wire
    own = wire.type.name, wire.size, dialled.job.gas.name
    for record in records:
        if (record.wire, record.dia, record.gas) != own:
            continue
        try:
            read = read_page(CouponsQuery, record.query, None)
        except FieldErrors:
            continue  # kept by another version, or by a hand: it proves nothing
        then = dial_in(read.job, read.passes)
        feed = then.settings.wire_feed.value
        if feed is None or not same_weld(read.job, dialled.job):
            continue
        volts = then.settings.volts.value
        if then.plan.transfer == dialled.plan.transfer and _near(feed, volts, dialled, found):
            yield Proof(record, read.seen.coupon or "", feed, volts)


def _near(feed: float, volts: float | None, dialled: DialIn, found: PassPlan) -> bool:
    """True if a setting is one the card would pass as its own."""
    points = [bead.laid.point for bead in found.beads if bead.laid is not None]
    if not points:
        return False
    room = dialled.settings.wire_feed
    low = min([each.feed_m_s for each in points] + [room.low or room.value or feed])
    high = max([each.feed_m_s for each in points] + [room.high or room.value or feed])
    if not low * (1 - SIZE_APART) <= feed <= high * (1 + SIZE_APART):
        return False
    return volts is None or any(abs(volts - each.volts) <= VOLTS_APART_V for each in points)
