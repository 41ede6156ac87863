"""What a phone's coupons taught, for each wire, gas, machine and welder: the terminal's answer."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from beadwright.coupons.coupon_records import CouponRecord, records_text
from beadwright.coupons.coupons_page import coupons_answer
from beadwright.coupons.coupons_report import learned_tree
from beadwright.reports import encoded

_Way = tuple[str, str, str, str, str]


def learned_report(records: Sequence[CouponRecord]) -> list[dict[str, Any]]:
    """Return what coupons taught as plain data, a row for each wire, gas, machine and welder.

    Each row stands for the job of its last coupon: a band depends a little on the settings.

    Args:
        records: Coupons as ``kept_file`` reads them [-].
    """
    last: dict[_Way, CouponRecord] = {}
    for record in sorted(records, key=lambda each: each.made):
        way = record.wire, record.dia, record.gas, record.machine, record.welder
        last[way] = record
    text = records_text(records)
    return [_row(record, text) for record in last.values()]


def _row(record: CouponRecord, text: str) -> dict[str, Any]:
    answer = coupons_answer(record.query, {"coupons": text})
    row: dict[str, Any] = encoded(
        {
            "wire": record.wire,
            "dia": record.dia,
            "gas": record.gas,
            "machine": record.machine,
            "welder": record.welder,
            "job": record.query,
            **learned_tree(answer),
        },
        answer.units,
    )
    return row
