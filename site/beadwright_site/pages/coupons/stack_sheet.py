"""The stack of coupons as a sheet: what to set for each, boxes for a pencil."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright import units
from beadwright.coupons.coupon_stack import MOST_JOBS, StackCoupon, kept_of
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.passes.pass_beads import ROLE_NAMES, Bead
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.links import query_of
from beadwright_site.written import written


@dataclass(frozen=True, slots=True)
class SheetRow:
    """A bead of the stack's sheet.

    Attributes:
        name: What it is.
        feed: Wire feed to set.
        volts: Volts to set.
        travel: Travel to keep.
        tip: Tip to work to hold.
    """

    name: str
    feed: str
    volts: str
    travel: str
    tip: str


@dataclass(frozen=True, slots=True)
class SheetCoupon:
    """A coupon of the stack's sheet.

    Attributes:
        mark: Number to scribe on it.
        name: What it is.
        query: The job.
        refused: Why it cannot be planned, or empty.
        also: What else is set: the gas, and how the machine's meter stands; or empty.
        kept: Coupons of it kept already.
        rows: Its beads.
    """

    mark: int
    name: str
    query: str
    refused: str
    also: str
    kept: int
    rows: tuple[SheetRow, ...]


def sheet_coupons(found: CouponsAnswer) -> Iterator[SheetCoupon]:
    """Yield the stack's coupons with what to set for each."""
    for coupon in found.stack():
        yield SheetCoupon(
            mark=coupon.mark,
            name=worded(coupon.name, found.units),
            query=coupon.query,
            refused=worded(coupon.refused, found.units) if coupon.refused else "",
            also=" ".join(_also(coupon, found.units)),
            kept=kept_of(coupon, found.records_to_stack()),
            rows=tuple(_rows(coupon, found)),
        )


def _also(coupon: StackCoupon, system: System) -> Iterator[str]:
    if coupon.plan is None:
        return
    dialled = coupon.plan.dialled
    if dialled.outcome is not None:
        yield f"Gas {written(dialled.outcome.gas_flow.value, 'gas_flow', system)}."
    own = dialled.job.wire.own
    if own is not None and own.meter_told is not None:
        yield worded(own.meter_told, system)


def _rows(coupon: StackCoupon, found: CouponsAnswer) -> Iterator[SheetRow]:
    for bead in coupon.beads:
        if bead.laid is not None:
            yield _row(bead, found)


def _row(bead: Bead, found: CouponsAnswer) -> SheetRow:
    laid, system = bead.laid, found.units
    assert laid is not None
    volts = units.show(laid.point.volts, "volts", system)
    return SheetRow(
        name=ROLE_NAMES[bead.role],
        feed=units.show(laid.point.feed_m_s, "wire_feed", system),
        volts="pulse" if laid.transfer == "pulse" else volts,
        travel=units.show(laid.travel_m_s, "travel", system),
        tip=units.show(laid.tip_to_work_m, "tip_to_work", system),
    )


SET = (
    ("Feed", "wire_feed"),
    ("Volts", "volts"),
    ("Travel speed", "travel"),
    ("Stickout", "tip_to_work"),
)
"""What is set for each bead, by its measure."""


def set_names(system: System) -> tuple[tuple[str, str], ...]:
    """Return what is set for each bead, with its unit.

    Args:
        system: Whose units.
    """
    return tuple((name, units.symbol(measure, system)) for name, measure in SET)


def stack_choice(found: CouponsAnswer, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return what the stack is of, and the link to the other one; none where no job is kept.

    Args:
        found: The answer.
        typed: What was typed.
    """
    of_jobs, jobs = found.query.stack == "jobs", found.jobs_to_stack()
    rest = {key: text for key, text in typed.items() if key != "stack"}
    return {
        "of_jobs": of_jobs,
        "jobs": jobs,
        "left_out": max(0, jobs - MOST_JOBS) if of_jobs else 0,
        "other": query_of(rest if of_jobs else {**rest, "stack": "jobs"}),
    }
