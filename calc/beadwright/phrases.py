"""What the core says, as an id with parameters: its words are in ``words``.

A phrase holds numbers in SI with their measure, names and other phrases. Language, shown unit and
rounding are chosen by the code that shows it.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Amount:
    """A number of a phrase with its kind.

    Attributes:
        value: The number [SI].
        measure: Kind of quantity, key of ``units.MEASURES`` or ``temperature``.
    """

    value: float
    measure: str


@dataclass(frozen=True, slots=True)
class Money:
    """An amount of money of a phrase.

    Attributes:
        amount: How much [money].
        sign: The shop's currency sign, may be empty.
    """

    amount: float
    sign: str


type Parameter = str | int | float | Amount | Money | Phrase | tuple[Parameter, ...]
"""What a phrase may hold; text is a name that no language changes, such as ``ER70S-6``."""


@dataclass(frozen=True, slots=True)
class Phrase:
    """A sentence or part of one, by its id.

    Attributes:
        key: Its id: the room that says it, a point, and what it says, such as ``heating.too-cold``.
        parameters: Name and value of what stands in it.
    """

    key: str
    parameters: tuple[tuple[str, Parameter], ...] = ()


def say(key: str, /, **parameters: Parameter) -> Phrase:
    """Return a phrase.

    Args:
        key: Its id, a key of the room's catalog in ``words`` [-].
        **parameters: What stands in it, by the name its text uses [SI].
    """
    return Phrase(key, tuple(parameters.items()))
