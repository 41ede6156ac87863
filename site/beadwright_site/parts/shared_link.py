"""The query of a link that means the same on another phone, and tells no more than it should."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping

from beadwright.known_keys import USUAL
from beadwright.pages import PAGES
from beadwright.reading.packed_query import packed
from beadwright.reading.queries import PACKED
from beadwright_site.forms.kept import keep_name
from beadwright_site.links import query_of

NAMES = frozenset({"welder", "written_by", "proved_by"})
"""Keys that hold people's names."""

MONEY = frozenset({"money", "rate", "price_per_mass", "price_per_volume", "price_per_energy"})
"""Kinds of quantity that are the shop's own business."""

USUAL_KEYS = frozenset(USUAL.values())
"""Keys another phone may fill with what is usual there: a link says them, default or not."""

LONGEST_PLAIN = 300
"""Characters a link's query may have to be left as a person reads it; a longer one is packed."""

_WELDER = re.compile(r",by=[^,;]*")
"""Whose hand the shop's own numbers are of."""

NEVER = frozenset({"coupons", "jobs", "at"})
"""Keys that never go along: all the phone's coupons and jobs, which bead is looked at."""


def private_keys(page: str) -> dict[str, frozenset[str]]:
    """Return the keys of a page that leave only when ticked: its prices and its names."""
    fields = PAGES[page].fields
    prices = frozenset(key for key, field in fields.items() if field.measure in MONEY)
    return {"prices": prices, "names": NAMES & fields.keys()}


def shared_query(
    page: str, typed: Mapping[str, str], kept: Mapping[str, str], tell: Collection[str] = ()
) -> str:
    """Return the query of a link.

    What equals its default is left out, but for what another phone may keep otherwise; what this
    phone keeps of the job and the page used is put in.

    Args:
        page: The page it opens.
        typed: Entries as typed, by key.
        kept: What the phone keeps, by the page's keys.
        tell: What private things may leave: ``prices``, ``names``.
    """
    held = {key: keys for key, keys in private_keys(page).items() if key not in tell}
    private = NEVER.union(*held.values())
    entries = {**dict(_filled(page, kept)), **typed}
    if "own" in entries and "names" not in tell:
        entries["own"] = _WELDER.sub("", entries["own"])
    fields = PAGES[page].fields
    return query_of({
        key: text
        for key, text in entries.items()
        if key not in private
        and (_kept_elsewhere(key) or text != fields[key].default)
    })  # fmt: skip


def short_query(query: str) -> str:
    """Return a query as a link carries it: as it is, or packed where it is long.

    Args:
        query: The query string.
    """
    if len(query) <= LONGEST_PLAIN:
        return query
    small = f"{PACKED}={packed(query)}"
    return min(query, small, key=len)


def _kept_elsewhere(key: str) -> bool:
    """True for a key that another phone may fill with what it keeps."""
    return key in USUAL_KEYS or bool(keep_name(key, "", ""))


def _filled(page: str, kept: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """What a link has to say because another phone may mean something else by a blank."""
    for key, field in PAGES[page].fields.items():
        if key in kept:
            yield key, kept[key]
        elif key in USUAL_KEYS:
            yield key, field.default
