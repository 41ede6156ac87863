"""Keys of a query that no page knows: each is refused, with the key that comes nearest.

A key another page knows is passed over: a link carries the whole job from page to page.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from functools import cache
from types import MappingProxyType

from beadwright.pages import PAGES
from beadwright.reading.queries import split_query
from beadwright.typed_number import quoted

USUAL: Mapping[str, str] = MappingProxyType(
    {"usual_wire": "wire", "usual_dia": "dia", "usual_gas": "gas"}
)
"""The shop's usual wire, size and gas, and the keys of a job they stand in for."""

MOST_NAMED = 5
"""Unknown keys that are named one by one; of more only the number is said."""

_ADDED_BY_OTHERS = ("utm_", "fbclid", "gclid", "msclkid")
"""How keys begin that mail and messengers hang on a link when it is sent."""


@cache
def known_keys() -> frozenset[str]:
    """Return every key that some page knows, with those only kept on a phone."""
    return frozenset(USUAL).union(*(page.fields for page in PAGES.values()))


def unknown_keys(page: str, query: str) -> dict[str, list[str]]:
    """Return a message for each key of a query that no page knows, by key.

    Args:
        page: Name of the page asked; its own keys are looked at first for the nearest [-].
        query: The query string [-].

    Raises:
        FieldErrors: If there are more than ``queries.MOST_KEYS`` keys.
    """
    own = PAGES[page].fields
    foreign = [key for key in split_query(query) if key not in own and key]
    # The keys of all pages are only gathered for a query that needs them.
    strange = [key for key in foreign if not _is_known(key)]
    found = {key[:40]: [_refusal(key, own)] for key in strange[:MOST_NAMED]}
    if len(strange) > MOST_NAMED:
        found["query"] = [f"{len(strange) - MOST_NAMED} more keys are not known."]
    return found


def _is_known(key: str) -> bool:
    """True for a key of any page; a kept price stands before what it is the price of."""
    return key.startswith(_ADDED_BY_OTHERS) or key.partition("@")[0] in known_keys()


def _refusal(key: str, own: Mapping[str, object]) -> str:
    nearest = _nearest(key, own) or _nearest(key, known_keys())
    hint = f" The nearest is {quoted(nearest)}." if nearest else ""
    return f"{quoted(key)} is no entry this app knows.{hint}"


def _nearest(key: str, keys: Collection[str]) -> str:
    from difflib import get_close_matches  # most queries have no need of it

    return next(iter(get_close_matches(key[:40].lower(), sorted(keys), 1)), "")
