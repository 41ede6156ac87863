"""A file of what a phone keeps, looked at before it is taken: what it would change, or why not."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, cast

from beadwright.coupons.kept_file import KeptFile, KeptFileError, read_kept_file
from beadwright.pages import PAGES
from beadwright_site.forms.kept import MOST_KEPT, check_kept, label_kept
from beadwright_site.written import counted

MOST_LINES = 40
"""Lines of a preview; the rest are counted."""

Plain = Mapping[str, Any]


def preview_file(text: str, now: Plain) -> dict[str, Any]:
    """Return what a file would write that is not kept so already, or why it cannot be taken.

    Args:
        text: The file's text.
        now: What the phone keeps: ``shop`` by name, ``jobs`` and ``coupons`` as lists.

    Returns:
        ``{"ok": False, "reason"}``; or ``ok``, the entries of ``shop``, ``jobs`` and ``coupons``
        to write, ``count``, and ``lines`` of what changes, each with ``what``, ``before``,
        ``after``.
    """
    try:
        file = read_kept_file(text)
        _check(file)
    except KeptFileError as error:
        return {"ok": False, "reason": str(error)}
    held = _object(now.get("shop"))
    shop = {name: value for name, value in file.shop.items() if held.get(name) != value}
    jobs = _news((dataclasses.asdict(job) for job in file.jobs), now.get("jobs"), "page", "query")
    coupons = _news((record.plain() for record in file.coupons), now.get("coupons"), "key")
    lines = [*_shop_lines(shop, held), *_job_lines(jobs), *_coupon_lines(coupons)]
    more = len(lines) - MOST_LINES
    if more > 0:
        lines[MOST_LINES:] = [_line(f"and {more} more", "", "")]
    return {
        "ok": True,
        "shop": shop,
        "jobs": [job for job, _ in jobs],
        "coupons": [coupon for coupon, _ in coupons],
        "count": len(shop) + len(jobs) + len(coupons),
        "lines": lines,
    }


def _check(file: KeptFile) -> None:
    if len(file.shop) > MOST_KEPT:
        raise KeptFileError(f"{len(file.shop)} entries of a shop are more than {MOST_KEPT}.")
    _, wrong = check_kept(file.shop)
    for name, messages in wrong.items():
        raise KeptFileError(f"{_label(name)}: {' '.join(messages)}")
    for number, job in enumerate(file.jobs, 1):
        if job.page not in PAGES:
            raise KeptFileError(f"Job {number} is of a page this app does not have.")


def _label(name: str) -> str:
    try:
        return label_kept(name)
    except LookupError:
        return name[:40]


def _object(found: Any) -> Plain:
    return cast("Plain", found) if isinstance(found, dict) else {}


_News = list[tuple[Plain, bool]]
"""Records not kept so already, each with whether another stands under its key."""


def _news(rows: Iterable[Plain], now: Any, *key: str) -> _News:
    listed = [*cast("Iterable[Any]", now)] if isinstance(now, list) else []
    held = {tuple(map(row.get, key)): row for row in map(_object, listed)}
    found: _News = []
    for row in rows:
        old = held.get(tuple(map(row.get, key)))
        if old is None or old != row:
            found.append((row, old is not None))
    return found


def _line(what: str, before: str, after: str) -> dict[str, str]:
    return {"what": what, "before": before, "after": after}


def _shop_lines(shop: Mapping[str, str], held: Plain) -> Iterator[dict[str, str]]:
    for name, value in shop.items():
        before = held.get(name)
        yield _line(label_kept(name), _shown(before) if before else "not kept", _shown(value))


def _shown(value: object) -> str:
    """A value in a line: of several lines only how many they are."""
    lines = str(value).strip().splitlines()
    return counted(len(lines), "line") if len(lines) > 1 else str(value)


def _job_lines(jobs: _News) -> Iterator[dict[str, str]]:
    for job, changed in jobs:
        name = f"{PAGES[job['page']].title}: {job['name']}"
        yield _line("Job", "kept otherwise" if changed else "not kept", name)


def _coupon_lines(coupons: _News) -> Iterator[dict[str, str]]:
    changed = sum(changed for _, changed in coupons)
    for count, before in ((len(coupons) - changed, "not kept"), (changed, "kept otherwise")):
        if count:
            yield _line("Coupons", before, f"{count} kept" if count > 1 else "1 kept")
