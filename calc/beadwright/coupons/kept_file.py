"""The file of all a phone keeps, read strictly: taken whole, or refused whole with the reason."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, NoReturn, cast

from beadwright.coupons.coupon_records import (
    LONGEST_QUERY,
    CouponRecord,
    CouponRecordsError,
    read_rows,
)
from beadwright.coupons.kept_jobs import LONGEST_NAME, MOST_JOBS, KeptJob
from beadwright.coupons.new_record import new_record
from beadwright.errors import BeadwrightError, FieldErrors
from beadwright.typed_number import quoted

KIND = "beadwright"
SHOP_KIND = "beadwright shop"
"""Kinds of file: all that is kept; and as the first releases wrote it, the shop's entries alone."""

VERSION = 1
"""Version of the file; a later one is refused by name, not guessed at."""

MOST_CHARACTERS = 5_000_000
"""Characters of a file: far more than a shop has [-]."""

LONGEST_LIST = 100_000
LONGEST_JOB = 3 * LONGEST_LIST
"""Characters of a kept weld list, and of a job's query: a list in an address, where a comma takes
three [-]."""

LISTS = frozenset({"lines"})
"""Entries of several lines."""

_KEYS = {KIND: ("shop", "jobs", "coupons"), SHOP_KIND: ("kept",)}


_BREAKS = {ord(each): " " for each in "\n\r\t"}
"""What parts lines and cells of a list, which is no harm in it."""


class KeptFileError(BeadwrightError):
    """A file that cannot be taken; the message gives the reason."""


@dataclass(frozen=True, slots=True)
class KeptFile:
    """What a file holds.

    Attributes:
        shop: The shop's entries by name; whether each can be kept is not looked at here.
        jobs: Kept jobs.
        coupons: Coupons, their facts worked out anew from what was typed.
    """

    shop: Mapping[str, str]
    jobs: tuple[KeptJob, ...]
    coupons: tuple[CouponRecord, ...]


def read_kept_file(text: str) -> KeptFile:
    """Return what a file holds.

    Args:
        text: The file's text, JSON as the Shop page saves it [-].

    Raises:
        KeptFileError: If anything in it cannot be taken.
    """
    if len(text) > MOST_CHARACTERS:
        _refuse(f"The file has {len(text):,} characters; at most {MOST_CHARACTERS:,} are read.")
    data = _object(_json(text), "The file")
    kind, version = data.get("kind"), data.get("version")
    if not isinstance(kind, str) or kind not in _KEYS:
        _refuse("This is no file of what the app keeps.")
    if type(version) is not int or version != VERSION:
        _refuse(
            f"The file has version {quoted(str(version)[:20])}, this app reads {VERSION}: "
            "update the app, then try again."
        )
    strange = [key for key in data if key not in ("kind", "version", *_KEYS[kind])]
    if strange:
        _refuse(f"The file holds {quoted(strange[0][:40])}, which this app does not know.")
    return KeptFile(
        shop=_shop(data.get("kept" if kind == SHOP_KIND else "shop", {})),
        jobs=_jobs(data.get("jobs", [])),
        coupons=_coupons(data.get("coupons", [])),
    )


def _refuse(reason: str) -> NoReturn:
    raise KeptFileError(reason)


def _no_number(name: str) -> NoReturn:
    _refuse(f"The file holds {name}, which is no number.")


def _json(text: str) -> Any:
    try:
        return json.loads(text, parse_constant=_no_number)
    except (ValueError, RecursionError):
        _refuse("The file is no JSON: it is cut, damaged or of another kind.")


def _object(found: Any, what: str) -> dict[str, Any]:
    if not isinstance(found, dict):
        _refuse(f"{what} is no record.")
    return cast("dict[str, Any]", found)


def _list(found: Any, what: str) -> Sequence[Any]:
    if not isinstance(found, list):
        _refuse(f"{what} are no list.")
    return [*cast("Iterable[Any]", found)]


def _text(found: Any, what: str, longest: int, *, in_lines: bool = False) -> str:
    plain = found.translate(_BREAKS) if in_lines and isinstance(found, str) else found
    if not isinstance(found, str) or len(found) > longest or not plain.isprintable():
        _refuse(f"{what} is no plain text of up to {longest:,} characters.")
    return found


def _shop(found: Any) -> Mapping[str, str]:
    entries = _object(found, "What the shop keeps")
    return {
        _text(name, "The name of an entry of the shop", LONGEST_NAME): _entry(name, value)
        for name, value in entries.items()
    }


def _entry(name: str, value: Any) -> str:
    in_lines = name in LISTS
    longest = LONGEST_LIST if in_lines else LONGEST_QUERY
    return _text(value, f"Shop, {quoted(name[:40])}", longest, in_lines=in_lines)


def _jobs(found: Any) -> tuple[KeptJob, ...]:
    rows = _list(found, "The jobs")
    if len(rows) > MOST_JOBS:
        _refuse(f"{len(rows):,} jobs are more than {MOST_JOBS:,}.")
    jobs = tuple(_job(row, number) for number, row in enumerate(rows, 1))
    if len({job.key for job in jobs}) < len(jobs):
        _refuse("The file has one job twice.")
    return jobs


def _job(row: Any, number: int) -> KeptJob:
    told = _object(row, f"Job {number}")
    longest = {"page": 40, "query": LONGEST_JOB, "name": LONGEST_NAME, "made": 40}
    if told.keys() != longest.keys():
        _refuse(f"Job {number} must have {', '.join(longest)} and nothing else.")
    return KeptJob(**{key: _text(told[key], f"Job {number}: {key}", longest[key])
                      for key in longest})  # fmt: skip


def _coupons(found: Any) -> tuple[CouponRecord, ...]:
    try:
        records = read_rows(_list(found, "The coupons"))
    except CouponRecordsError as error:
        _refuse(str(error))
    return tuple(_anew(record, number) for number, record in enumerate(records, 1))


def _anew(record: CouponRecord, number: int) -> CouponRecord:
    """The record as the core makes it of what was typed: a file cannot bring facts of its own."""
    key, made, query = (
        _text(getattr(record, name), f"Coupon {number}: {name}", longest)
        for name, longest in (("key", 80), ("made", 40), ("query", LONGEST_QUERY))
    )
    try:
        return new_record(query, None, key, made)
    except FieldErrors as error:
        _refuse(f"Coupon {number} cannot be read: {str(error)[:300]}")
