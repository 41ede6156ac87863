"""How much is welded, as the form asks it: what it is counted by, and the one count that holds."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.money.cost_page import CostAnswer
from beadwright.money.volume_entries import VOLUME_KEYS, CountedBy, counted_by, parts_of_one
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


def volume_entries(form: Form, found: CostAnswer | None) -> Iterator[Entry]:
    """Yield what the work is counted by, and the count; all that are written while it is refused.

    Args:
        form: What entries are made from.
        found: The answer, or None if the entries could not be taken.
    """
    wanted = form.wanted("volume_by")
    chosen: CountedBy | None = next((by for by, _, _ in COUNTS if by == wanted), None)
    if found is not None:
        chosen = chosen or counted_by(found.query.volume, found.query.own)
        yield form.choice("volume_by", COUNTS, chosen=chosen)
        yield form.entry(VOLUME_KEYS[chosen], blank=_worth(found, chosen))
        return
    yield form.choice("volume_by", COUNTS, chosen=chosen or "")
    written = [key for key in VOLUME_KEYS.values() if key in form.filling.typed]
    yield from (form.entry(key) for key in written or ["parts"])


def _worth(found: CostAnswer, by: CountedBy) -> str:
    """The parts a year in another count, for a line that is still blank."""
    number = found.parts / parts_of_one(by, found.query.weeks, found.ways[0].way)
    measure = {"arc-hours": "hours", "weld-metal": "mass", "wire": "mass"}.get(by, "")
    if not measure:
        return f"{number:,.4g}"
    shown = units.show(number, measure, found.units)
    return f"{shown}{units.typed_unit(measure, found.units)}"
