"""Answers as plain data for JSON: shop units, rounded to the digits a float holds."""

from __future__ import annotations

from typing import Any

from beadwright import units
from beadwright.results import Note, Quantity
from beadwright.units import System
from beadwright.words.wording import reason, worded


def number(value: float | None, measure: str, system: System) -> float | None:
    """Return a value in the unit shown, rounded to the digits a float holds.

    Args:
        value: The value, or None [SI].
        measure: Kind of quantity [-].
        system: Whose unit [-].
    """
    if value is None:
        return None
    return float(f"{units.convert(value, measure, system):.7g}")


def quantity_report(quantity: Quantity, system: System) -> dict[str, Any]:
    """Return a quantity as value, low, high, unit and where it comes from.

    Args:
        quantity: The quantity [-].
        system: Whose unit [-].
    """
    report: dict[str, Any] = {
        "value": number(quantity.value, quantity.measure, system),
        "low": number(quantity.low, quantity.measure, system),
        "high": number(quantity.high, quantity.measure, system),
        "unit": units.symbol(quantity.measure, system),
        "meaning": quantity.meaning,
        "sources": list(quantity.sources),
    }
    if quantity.meaning == "window":
        report |= {
            "inside": quantity.inside,
            "by_hand": quantity.by_hand,
            "low_by": reason(quantity.low_by, system),
            "high_by": reason(quantity.high_by, system),
        }
    return report


def note_report(note: Note, system: System) -> dict[str, str]:
    """Return a note as level, text, source and field.

    Args:
        note: The note [-].
        system: Whose units [-].
    """
    text = worded(note.phrase, system)
    return {"level": note.level, "text": text, "source": note.source, "field": note.field}


DIGITS = 10
"""Figures a report keeps: far more than a cent, fewer than a float's noise [-]."""


def shown(value: float | None, measure: str, system: System) -> dict[str, Any]:
    """Return a value in the unit shown, with its unit.

    Args:
        value: The value, or None [SI].
        measure: Kind of quantity [-].
        system: Whose unit [-].
    """
    unit = units.symbol(measure, system)
    if value is None:
        return {"value": None, "unit": unit}
    return {"value": rounded(units.convert(value, measure, system)), "unit": unit}


def rounded(value: float) -> float:
    """Return a value rounded to ``DIGITS`` figures.

    Args:
        value: The value [-].
    """
    return float(f"{value:.{DIGITS}g}")
