"""How much is welded, as the form asks it: what it is counted by, and the one count that holds."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import units
from beadwright.measures import System
from beadwright.money.volume_entries import VOLUME_KEYS, CountedBy, parts_of_one
from beadwright.money.way import Way
from beadwright_site.forms.entries import Entry
from beadwright_site.forms.filling import Form

COUNTS: tuple[tuple[CountedBy, str, str], ...] = (
    ("year", "Year", "parts"),
    ("month", "Month", "parts"),
    ("week", "Week", "parts"),
    ("arc-hours", "Arc hours", "a month"),
    ("weld-metal", "Weld metal", "a month"),
    ("wire", "Wire", "a month"),
)
"""Value, word and a word under it of each way of counting."""


@dataclass(frozen=True, slots=True)
class Counted:
    """The work as it was counted.

    Attributes:
        by: The count that holds.
        parts: Parts a year.
        weeks: Weeks worked in a year.
        way: The way that hours and pounds go by.
        system: Whose units.
    """

    by: CountedBy
    parts: int
    weeks: int
    way: Way
    system: System


def volume_entries(form: Form, found: Counted | None) -> Iterator[Entry]:
    """Yield what the work is counted by, and the count; all that are written while it is refused.

    Args:
        form: What entries are made from.
        found: The work, or None if the entries could not be taken.
    """
    wanted = form.wanted("volume_by")
    chosen: CountedBy | None = next((by for by, _, _ in COUNTS if by == wanted), None)
    if found is not None:
        chosen = chosen or found.by
        yield form.choice("volume_by", COUNTS, chosen=chosen)
        yield form.entry(VOLUME_KEYS[chosen], blank=_worth(found, chosen))
        return
    yield form.choice("volume_by", COUNTS, chosen=chosen or "")
    written = [key for key in VOLUME_KEYS.values() if key in form.filling.typed]
    yield from (form.entry(key) for key in written or ["parts"])


def _worth(found: Counted, by: CountedBy) -> str:
    """The parts a year in another count, for a line that is still blank."""
    number = found.parts / parts_of_one(by, found.weeks, found.way)
    measure = {"arc-hours": "hours", "weld-metal": "mass", "wire": "mass"}.get(by, "")
    if not measure:
        return f"{number:,.4g}"
    return f"{units.show(number, measure, found.system)}{units.typed_unit(measure, found.system)}"
