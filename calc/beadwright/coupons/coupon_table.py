"""Coupons as a table: a row a coupon, a column a number, readable in a spreadsheet."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Mapping
from io import StringIO

from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.units import System, convert, symbol

_Value = Callable[[CouponFacts], float | None]

_OVER_PRINT: Mapping[str, _Value] = {
    "melted over print, share": lambda facts: facts.melting,
    "arc's part of the heat, share": lambda facts: facts.anode_share,
    "deposition efficiency over print, share": lambda facts: facts.efficiency,
    "section over print, share": lambda facts: facts.crown,
    "travel over planned, share": lambda facts: facts.travel,
}
"""Numbers without a unit by their heading."""

_MEASURED: Mapping[str, tuple[str, _Value]] = {
    "meter over arc": ("volts", lambda facts: facts.meter_v),
    "travel": ("travel", lambda facts: facts.travel_m_s),
    "laid": ("deposition", lambda facts: facts.laid_kg_s),
    "wire feed": ("wire_feed", lambda facts: facts.feed_m_s),
    "clean-up": ("time", lambda facts: facts.clean_s),
}
"""Quantities by their heading: the measure, and where it stands."""

_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\0")

_SYSTEMS: tuple[System, ...] = ("us", "si")


def coupon_table(records: Iterable[CouponRecord]) -> str:
    """Return coupons as CSV, each quantity in shop units and in SI.

    A text that a spreadsheet would run as a formula has an apostrophe before it.

    Args:
        records: The coupons [-].
    """
    file = StringIO()
    writer = csv.writer(file, lineterminator="\r\n")
    columns: list[tuple[str, str, _Value, System]] = [
        (name, measure, value, system)
        for name, (measure, value) in _MEASURED.items()
        for system in _systems(measure)
    ]
    writer.writerow(
        ["kept", "welder", "machine", "wire", "size", "gas", *_OVER_PRINT]
        + [f"{name}, {symbol(measure, system)}" for name, measure, _, system in columns]
        + ["counted though odd", "entries", "key"]
    )
    for record in records:
        facts = record.facts
        writer.writerow(
            [*map(_plain, (record.made, record.welder, record.machine))]
            + [*map(_plain, (record.wire, record.dia, record.gas))]
            + [_number(value(facts)) for value in _OVER_PRINT.values()]
            + [_in_unit(value(facts), measure, system) for _, measure, value, system in columns]
            + ["yes" if record.count_odd else "no", *map(_plain, (record.query, record.key))]
        )
    return file.getvalue()


def _plain(text: str) -> str:
    """Text that no spreadsheet runs as a formula: an apostrophe goes before a sign that begins one.

    Source: OWASP ASVS 5.0, requirement 1.2.10; the carriage return: CWE-1236.
    """
    return f"'{text}" if text.startswith(_FORMULA) else text


def _systems(measure: str) -> tuple[System, ...]:
    """Both systems of units, or one where they have the same unit."""
    same = symbol(measure, "us") == symbol(measure, "si")
    return _SYSTEMS[:1] if same else _SYSTEMS


def _in_unit(value: float | None, measure: str, system: System) -> str:
    return _number(None if value is None else convert(value, measure, system))


def _number(value: float | None) -> str:
    return "" if value is None else f"{value:.5g}"
