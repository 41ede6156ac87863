"""Which keys of the query each page knows, so that links carry to each what it can take."""

from __future__ import annotations

from collections.abc import Collection
from functools import cache

from beadwright.money.cost_query import PREFIXES
from beadwright.pages import PAGES


@cache
def carried(page: str) -> str:
    """Return the keys a link to a page carries, a blank between them.

    ``*`` stands for the keys of later ways on the page that has them. A page that asks nothing has
    none.

    Args:
        page: A page's name.
    """
    keys: Collection[str] = PAGES[page].defaults if page in PAGES else ()
    later = PREFIXES[1:]
    plain = [key for key in keys if not key.startswith(later)]
    return " ".join([*plain, *("*" for _ in later[:1] if len(plain) < len(keys))])
