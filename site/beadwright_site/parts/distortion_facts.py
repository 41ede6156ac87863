"""A distortion as a fact: about how much, between what ends, or why there is no number."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright import units
from beadwright.results import Quantity
from beadwright.units import System
from beadwright.words.wording import reason
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written_room

NAMES: Mapping[str, str] = {
    "across": "shrinks across",
    "along": "shrinks along",
    "camber": "bows up or down",
    "sweep": "bows sideways",
    "lift": "edges lift",
}
"""What each number is, beside it."""


def distortion_fact(key: str, quantity: Quantity, system: System) -> Fact:
    """Return one distortion as a fact.

    Args:
        key: A key of ``NAMES``.
        quantity: How much.
        system: Whose units.
    """
    if quantity.value is None or quantity.low is None or quantity.high is None:
        return Fact("–", f"{NAMES[key]}: {reason(quantity.low_by, system)}")
    number = units.show(quantity.value, quantity.measure, system)
    unit = units.symbol(quantity.measure, system)
    if float(number) == 0 and quantity.value > 0:  # too little to write: under its last digit
        return Fact(f"under {number[:-1]}1 {unit}", NAMES[key], "")
    return Fact(f"≈ {number} {unit}", NAMES[key], written_room(quantity, system))
