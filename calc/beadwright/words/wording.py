"""A phrase written out in words and in the units of a system.

A text holds each parameter in braces, and after a colon how it is written:

- an amount: ``{leg}`` with its unit, ``{leg:bare}`` without; ``{volts:g}`` and ``{volts:bare g}``
  give the number by a format of Python's instead of the measure's own rounding;
- money as the shop writes it: ``{saved}``;
- a phrase: ``{why}``, or ``{why:capital}`` where it begins a sentence;
- several values: ``{names:, }`` with what stands between two, ``{beads:runs}`` as 2–4, 7;
- any other number by a format of Python's: ``{share:.0%}``.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from importlib import import_module

from beadwright import temperatures, units
from beadwright.measures import System
from beadwright.phrases import Amount, Money, Parameter, Phrase
from beadwright.words.money_text import money_text
from beadwright.words.text import Plural, Rounded, Text

LANGUAGE = "english"
"""The room of ``words`` that holds the catalogs."""

_BARE = "bare"
_CLOSE = ("°", "/")
"""What a unit begins with that stands at its number without a blank."""


def worded(phrase: Phrase, system: System) -> str:
    """Return a phrase in words.

    Args:
        phrase: The phrase; its key is one of its room's catalog [-].
        system: Whose units [-].
    """
    text = catalogue(phrase.key.partition(".")[0])[phrase.key]
    given = dict(phrase.parameters)
    if isinstance(text, Plural):
        text = text.one if given["count"] == 1 else text.other
    elif isinstance(text, Rounded):
        text = text.si if system == "si" else text.us
    if not given:
        return text
    return text.format_map({name: _Shown(value, system) for name, value in given.items()})


def reason(phrase: Phrase | None, system: System) -> str:
    """Return a reason in words; empty where there is none.

    Args:
        phrase: The reason, or None [-].
        system: Whose units [-].
    """
    return "" if phrase is None else worded(phrase, system)


@cache
def catalogue(room: str) -> Mapping[str, Text]:
    """Return the texts of a room by id, imported when first asked for.

    Args:
        room: A room of the core [-].
    """
    module = import_module(f"beadwright.words.{LANGUAGE}.{room}_words")
    texts: Mapping[str, Text] = module.TEXTS
    return texts


class _Shown:
    """A parameter that knows the system it is written in."""

    __slots__ = ("_system", "_value")
    _system: System
    _value: Parameter

    def __init__(self, value: Parameter, system: System) -> None:
        self._value: Parameter = value
        self._system: System = system

    def __format__(self, how: str) -> str:
        return _written(self._value, how, self._system)


def _written(value: Parameter, how: str, system: System) -> str:
    if isinstance(value, Amount):
        return _amount(value, how, system)
    if isinstance(value, Money):
        return money_text(value.amount, value.sign)
    if isinstance(value, Phrase):
        text = worded(value, system)
        return text[:1].upper() + text[1:] if how == "capital" else text
    if isinstance(value, tuple):
        if how == "runs":
            return _runs(int(each) for each in value if isinstance(each, int))
        return how.join(_written(each, "", system) for each in value)
    return format(value, how)


def _amount(amount: Amount, how: str, system: System) -> str:
    if amount.measure == "temperature":
        return temperatures.show_temperature(amount.value, system)
    bare, rounding = how.startswith(_BARE), how.removeprefix(_BARE).strip()
    if rounding:
        number = format(units.convert(amount.value, amount.measure, system), rounding)
    else:
        number = units.show(amount.value, amount.measure, system)
    if bare:
        return number
    unit = units.symbol(amount.measure, system)
    return f"{number}{unit}" if unit.startswith(_CLOSE) else f"{number} {unit}".rstrip()


def _runs(numbers: Iterable[int]) -> str:
    """Rising numbers as a shop writes them: 2–4, 7."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in runs)
