"""Queries of a page drawn from its own fields: whatever each of them says it takes.

A query may ask for things that do not go together; a page then refuses it. It must never break.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from random import Random
from typing import Any
from urllib.parse import urlencode

from beadwright import units
from beadwright.money.price_fields import PackagePrice
from beadwright.pages import PAGES
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.reading.fields import Choice, Entry, Measured, QueryField, WholeNumber
from beadwright.units import System

_SAMPLES = {
    "hydrogen": ("H5", "1", "20"),
    "preheat": ("70F", "150C", "-40F"),
    "gas_temp": ("70F", "0C", "-9F"),
    "group": ("line", "rectangle", "circle", "c", "t", "polyline:0,0 4in,0 4in,6in"),
}
"""Texts of fields that take more than a number, a name or a count."""

_PRICES = {
    "price_per_mass": ("2.10/lb", "4.60/kg", "62/33lb", "$62/spool"),
    "price_per_volume": ("0.11/ft3", "4/m3", "38/330ft3", "$38/cylinder"),
}
"""Texts of prices by weight and volume, as a shop is billed."""

_SHARES = (0.03, 0.1, 0.3)
"""Shares of a page's keys that are written: a few as a rule, many at times."""


def _texts(key: str, field: QueryField[Any], draw: Random) -> tuple[str, ...]:
    """Texts a field says it takes: its ends, its default, something between."""
    if isinstance(field, Measured):
        low, high = field.low, field.high
        share = draw.random()
        middle = low + (high - low) * share**4
        system: System = draw.choice(("us", "si"))
        number = f"{units.convert(middle, field.measure, system):.4f}"
        between = number + units.typed_unit(field.measure, system)
        return field.low_text, field.high_text, between, between, between
    if isinstance(field, Choice | Entry):
        return tuple(field.choices)
    if isinstance(field, WholeNumber):
        return str(field.low), str(field.high), str(draw.randint(field.low, field.high)), "2", "12"
    if isinstance(field, PackagePrice):
        return _PRICES[field.measure]
    return _SAMPLES.get(key, (field.default or "Bay 2",))


def drawn_query(page: str, draw: Random) -> str:
    """Return a query of a page: some of its keys, each with a text its field says it takes."""
    share = draw.choice(_SHARES)
    typed: dict[str, str] = {}
    for key, field in PAGES[page].fields.items():
        if draw.random() < share or (key in ("joint", "plate", "position") and draw.random() < 0.5):
            typed[key] = draw.choice(_texts(key, field, draw))
    if draw.random() < 0.7:  # else a wire is most often asked for in a size it is not made in
        typed["wire"] = draw.choice(list(WIRE_TYPES))
        typed["dia"] = draw.choice(WIRE_TYPES[typed["wire"]].sizes)
    return urlencode(typed)


JOINTS = ("tee", "lap", "corner", "square", "v", "double-v", "bevel", "double-bevel", "tee-bevel",
          "tee-double-bevel", "plug", "slot")  # fmt: skip
PLATES = ("30ga", "20ga", "16ga", "10ga", "3/16in", "3/8in", "1in")
WIRES = (("ER70S-6", "0.023in"), ("ER70S-6", "0.045in"), ("E71T-1C", "1/16in"))


def plain_queries() -> Iterator[str]:
    """Yield plain jobs: every joint in every plate, with a thin wire, a usual one and a thick."""
    for joint, plate, (wire, size) in product(JOINTS, PLATES, WIRES):
        yield urlencode({"joint": joint, "plate": plate, "wire": wire, "dia": size})
