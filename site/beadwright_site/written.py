"""Quantities as the pages write them: a number in the shop's units, and its unit."""

from __future__ import annotations

from beadwright import units
from beadwright.results import Quantity
from beadwright.units import System


def written(value: float | None, measure: str, system: System) -> str:
    """Return a value with its unit, or a dash.

    Args:
        value: The value [SI], or None.
        measure: What it is a value of, such as ``leg``.
        system: Whose units.
    """
    if value is None:
        return "–"
    return units.written(value, measure, system)


def written_quantity(quantity: Quantity, system: System) -> str:
    """Return a quantity with its unit, or a dash."""
    return written(quantity.value, quantity.measure, system)


def written_room(quantity: Quantity, system: System) -> str:
    """Return the ends of a quantity's room without their unit; empty where it has none."""
    if quantity.low is None or quantity.high is None:
        return ""
    low, high = (units.show(end, quantity.measure, system) for end in (quantity.low, quantity.high))
    return f"{low}–{high}" if low != high else ""


def cents(amount: float, sign: str) -> str:
    """Return an amount to the cent, whatever its size.

    Args:
        amount: The amount [money].
        sign: Currency sign.
    """
    return f"{'-' if amount < 0 else ''}{sign}{abs(amount):,.2f}"


def counted(number: float, noun: str) -> str:
    """Return how many of a thing there are.

    Args:
        number: A whole number.
        noun: The thing, one of them.
    """
    return f"{number:,.0f} {noun}{'' if number == 1 else 's'}"
