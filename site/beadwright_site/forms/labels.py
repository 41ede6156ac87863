"""What an entry is called in a sentence, whichever page asks it."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from beadwright.money.cost_query import PREFIXES
from beadwright.pages import PAGES
from beadwright.reading.entries import Fields

USUAL_LABELS = {"usual_wire": "Usual wire", "usual_dia": "Usual size", "usual_gas": "Usual gas"}
"""What the shop's usual wire, size and gas are called: no page's query has them."""


@cache
def kept_fields() -> Fields:
    """Return the fields of all that the phone may keep, by key, as the Shop page names them."""
    pages = ("list", "coupons", "supplies", "cost", "shop")
    return {key: field for page in pages for key, field in PAGES[page].fields.items()}


def label_of(key: str) -> str:
    """Return what an entry is called where several ways have one of that name."""
    field = kept_fields().get(key)
    label = field.label if field is not None else USUAL_LABELS.get(key, key)
    return f"{label} of way {key[0].upper()}" if key.startswith(PREFIXES[1:]) else label


def names_of(keys: Sequence[str]) -> str:
    """Return entries named in a sentence."""
    names = [label_of(key) for key in keys]
    return ", ".join([*names[:1], *(name[0].lower() + name[1:] for name in names[1:])])
