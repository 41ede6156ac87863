"""Kept coupons: one JSON text, read back with every record checked, refused whole if any is bad."""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, cast

from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.errors import BeadwrightError
from beadwright.typed_number import quoted

VERSION = 1
"""Version of a record; a later one is refused by name, not guessed at."""

MOST_RECORDS = 5000
MOST_CHARACTERS = 5_000_000
"""Records and characters of a text: far more than a shop welds [-]."""

LONGEST_QUERY = 4000
"""Characters of one coupon's entries [-]."""

_FACTS = tuple(field.name for field in dataclasses.fields(CouponFacts))
_TEXTS = ("key", "made", "query", "wire", "dia", "gas", "machine", "welder")


class CouponRecordsError(BeadwrightError):
    """A text that holds no coupons as this version keeps them; the message gives the reason."""


@dataclass(frozen=True, slots=True)
class CouponRecord:
    """One kept coupon.

    Attributes:
        key: Its own key: no two coupons share one.
        made: When it was kept, as the phone's clock wrote it.
        query: Its entries as typed, a query of the Coupons page.
        wire: Classification of the wire.
        dia: Inch name of its size.
        gas: Name of the gas.
        machine: The machine's name, may be empty.
        welder: The welder's name, may be empty.
        facts: What it says in numbers.
        count_odd: True if it counts though it does not fit the others.
    """

    key: str
    made: str
    query: str
    wire: str
    dia: str
    gas: str
    machine: str
    welder: str
    facts: CouponFacts
    count_odd: bool = False

    def plain(self) -> dict[str, Any]:
        """Return the record as plain data for JSON; what was not measured is left out."""
        found = dataclasses.asdict(self)
        facts = cast("dict[str, float | None]", found["facts"])
        found["facts"] = {name: value for name, value in facts.items() if value is not None}
        return {"version": VERSION, **found}


def records_text(records: Iterable[CouponRecord]) -> str:
    """Return coupons as one JSON text; ``read_records`` reads it back.

    Args:
        records: The coupons [-].
    """
    return json.dumps([record.plain() for record in records], ensure_ascii=False)


def read_records(text: str) -> tuple[CouponRecord, ...]:
    """Return the coupons of a JSON text.

    Args:
        text: A list of records as ``records_text`` writes them; blank means none [-].

    Raises:
        CouponRecordsError: If the text is too long, is no such list, or any record is bad.
    """
    if not text.strip():
        return ()
    if len(text) > MOST_CHARACTERS:
        raise CouponRecordsError(f"{len(text):,} characters are more than {MOST_CHARACTERS:,}")
    try:
        found: Any = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise CouponRecordsError("The coupons are no JSON: the text is cut or damaged.") from error
    if not isinstance(found, list):
        raise CouponRecordsError("The coupons are no list.")
    return read_rows([*cast("Iterable[Any]", found)])


def read_rows(rows: Sequence[Any]) -> tuple[CouponRecord, ...]:
    """Return the coupons of plain data, as JSON gives it.

    Args:
        rows: Records as ``CouponRecord.plain`` gives them [-].

    Raises:
        CouponRecordsError: If there are too many, or any record is bad.
    """
    if len(rows) > MOST_RECORDS:
        raise CouponRecordsError(f"{len(rows):,} coupons are more than {MOST_RECORDS:,}.")
    records = tuple(_record(row, number) for number, row in enumerate(rows, 1))
    if len({record.key for record in records}) < len(records):
        raise CouponRecordsError("Two coupons have one key.")
    return records


def _record(row: Any, number: int) -> CouponRecord:
    if not isinstance(row, dict):
        raise CouponRecordsError(f"Coupon {number} is no record.")
    told = cast("dict[str, Any]", row)
    if told.get("version") != VERSION:
        raise CouponRecordsError(
            f"Coupon {number} has version {quoted(str(told.get('version'))[:20])}, this app reads "
            f"{VERSION}: update the app, then try again."
        )
    texts = {name: told.get(name, "") for name in _TEXTS}
    for name, text in texts.items():
        if not isinstance(text, str) or len(text) > LONGEST_QUERY:
            raise CouponRecordsError(f"Coupon {number}: {name} is no short text.")
    if not texts["key"]:
        raise CouponRecordsError(f"Coupon {number} has no key.")
    odd = told.get("count_odd", False)
    if not isinstance(odd, bool):
        raise CouponRecordsError(f"Coupon {number}: count_odd is neither true nor false.")
    return CouponRecord(
        **cast("dict[str, str]", texts), facts=_facts(told.get("facts"), number), count_odd=odd
    )


def _facts(told: Any, number: int) -> CouponFacts:
    """The facts this release knows; those a later one adds are left out, and the rest counts."""
    if not isinstance(told, dict):
        raise CouponRecordsError(f"Coupon {number} has no facts.")
    given = cast("Mapping[str, Any]", told)
    values: dict[str, float] = {}
    for name, value in given.items():
        if isinstance(value, bool) or not isinstance(value, int | float) or not abs(value) < 1e6:
            raise CouponRecordsError(f"Coupon {number}: {name[:30]} is no number.")
        if name in _FACTS:
            values[name] = float(value)
    return CouponFacts(**values)
