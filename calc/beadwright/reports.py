"""An answer as plain data for JSON: shop units, words, numbers rounded to what they are good for.

Each page describes its answer once, as a tree of its values by key (``<page>_report``). ``encoded``
turns the tree into plain data; nothing else knows of units, words and rounding.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import Any, cast

from beadwright import units
from beadwright.measures import MEASURES
from beadwright.phrases import Phrase
from beadwright.results import Note, Quantity
from beadwright.temperatures import degree_sign, degrees
from beadwright.units import System
from beadwright.words.wording import reason, worded

Tree = Mapping[str, object]
"""What a report holds, by key: plain values, phrases, quantities, notes, ``Shown``, ``Number``,
``Joined``, trees, and several of these. The keys of a value under ``**`` stand beside the rest."""

DIGITS = 10
"""Figures a report keeps: far more than a cent, fewer than a float's noise [-]."""

ESTIMATE_DIGITS = 7
"""Figures kept of a quantity with a band or a window [-]."""

DEGREE_PLACES = 4
"""Decimals kept of a temperature [-]."""


@dataclass(frozen=True, slots=True)
class Shown:
    """A value to be shown with its unit.

    Attributes:
        value: The value, or None [SI].
        measure: Kind of quantity, key of ``units.MEASURES`` or ``temperature``.
    """

    value: float | None
    measure: str


@dataclass(frozen=True, slots=True)
class Number:
    """A value to be shown without its unit.

    Attributes:
        value: The value [SI].
        measure: Kind of quantity, key of ``units.MEASURES`` or ``temperature``.
        places: Decimals, or None for ``DIGITS`` figures [-].
    """

    value: float
    measure: str
    places: int | None = None


@dataclass(frozen=True, slots=True)
class Joined:
    """Phrases to be shown as one text.

    Attributes:
        phrases: The phrases; none give an empty text.
        between: What stands between two.
    """

    phrases: tuple[Phrase, ...]
    between: str = "; "


def shown(measure: str, **values: float | None) -> dict[str, Shown]:
    """Return values of a measure by key, each to be shown with its unit.

    Args:
        measure: Kind of quantity, key of ``units.MEASURES`` or ``temperature`` [-].
        **values: The values, or None [SI].
    """
    return {key: Shown(value, measure) for key, value in values.items()}


def figures(**values: float | None) -> dict[str, float | None]:
    """Return numbers by key, each rounded to ``DIGITS`` figures.

    Args:
        **values: The numbers, or None [-].
    """
    return {key: rounded(value) for key, value in values.items()}


def rounded(value: float | None, digits: int = DIGITS) -> float | None:
    """Return a value rounded to some figures.

    Args:
        value: The value, or None [-].
        digits: The figures, above zero [-].
    """
    return None if value is None else float(f"{value:.{digits}g}")


def same(holder: object, *names: str) -> dict[str, Any]:
    """Return attributes under their own names.

    Args:
        holder: What has them [-].
        *names: Their names [-].
    """
    return {name: getattr(holder, name) for name in names}


def encoded(value: object, system: System) -> Any:
    """Return a tree, or any value in one, as plain data.

    Args:
        value: The tree or value [SI].
        system: Whose units [-].
    """
    kind = type(value)
    if kind in _PLAIN:
        return value
    encode = _ENCODERS.get(kind)
    if encode is not None:
        return encode(value, system)
    if isinstance(value, Mapping):
        return _encoded_tree(cast("Tree", value), system)
    if isinstance(value, Iterable):
        return _encoded_all(cast("Iterable[object]", value), system)
    raise TypeError(f"{kind.__name__} is nothing a report can hold")


def _encoded_all(values: Iterable[object], system: System) -> list[Any]:
    return [each if type(each) in _PLAIN else encoded(each, system) for each in values]


def _encoded_tree(tree: Tree, system: System) -> dict[str, Any]:
    report: dict[str, Any] = {}
    for key, value in tree.items():
        if key == "**":
            report |= encoded(value, system)
        else:
            report[key] = value if type(value) in _PLAIN else encoded(value, system)
    return report


def _shown(value: Shown, system: System) -> dict[str, Any]:
    if value.measure == "temperature":
        number = None if value.value is None else round(degrees(value.value, system), DEGREE_PLACES)
        return {"value": number, "unit": degree_sign(system)}
    unit = MEASURES[value.measure].unit(system)
    number = None if value.value is None else value.value / unit.size
    return {"value": rounded(number), "unit": unit.symbol}


def _number(value: Number, system: System) -> float | None:
    if value.measure == "temperature":
        number = degrees(value.value, system)
    else:
        number = units.convert(value.value, value.measure, system)
    return rounded(number) if value.places is None else round(number, value.places)


def _quantity(quantity: Quantity, system: System) -> dict[str, Any]:
    unit = MEASURES[quantity.measure].unit(system)

    def number(value: float | None) -> float | None:
        return None if value is None else rounded(value / unit.size, ESTIMATE_DIGITS)

    report: dict[str, Any] = {
        "value": number(quantity.value),
        "low": number(quantity.low),
        "high": number(quantity.high),
        "unit": unit.symbol,
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


def _note(note: Note, system: System) -> dict[str, str]:
    text = worded(note.phrase, system)
    return {"level": note.level, "text": text, "source": note.source, "field": note.field}


def _joined(value: Joined, system: System) -> str:
    return value.between.join(worded(phrase, system) for phrase in value.phrases)


_PLAIN = frozenset({str, int, float, bool, type(None)})

# The usual kinds by their type: to ask each value whether it is iterable would take longer.
_ENCODERS: Mapping[type, Callable[[Any, System], Any]] = {
    dict: _encoded_tree,
    list: _encoded_all,
    tuple: _encoded_all,
    Phrase: worded,
    Quantity: _quantity,
    Note: _note,
    Shown: _shown,
    Number: _number,
    Joined: _joined,
}
