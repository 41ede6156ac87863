"""Carbon equivalents: how much carbon the other elements count for, each with its range."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.errors import OutOfRangeError
from beadwright.heating.steels import SYMBOLS, Composition, Element
from beadwright.phrases import Phrase, say

Method = Literal["ce", "cet", "pcm"]
Range = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Formula:
    """A carbon equivalent.

    Attributes:
        name: Its symbol, as written.
        weights: What each element counts for [-].
        ranges: Steels it is for, least and most of each element [% by mass].
        source: Source id of formula and ranges.
    """

    name: str
    weights: Mapping[Element, float]
    ranges: Mapping[Element, Range]
    source: str


_CE = Formula(
    "CE(IIW)",
    {"c": 1, "mn": 1 / 6, "cr": 1 / 5, "mo": 1 / 5, "v": 1 / 5, "ni": 1 / 15, "cu": 1 / 15},
    {"c": (0.05, 0.25), "si": (0, 0.80), "mn": (0, 1.70), "cr": (0, 0.90), "cu": (0, 1.00),
     "ni": (0, 2.50), "mo": (0, 0.75), "v": (0, 0.20)},
    "en-1011-2-a",
)  # fmt: skip
_CET = Formula(
    "CET",
    {"c": 1, "mn": 1 / 10, "mo": 1 / 10, "cr": 1 / 20, "cu": 1 / 20, "ni": 1 / 40},
    {"c": (0.05, 0.32), "si": (0, 0.80), "mn": (0.50, 1.90), "cr": (0, 1.50), "cu": (0, 0.70),
     "mo": (0, 0.75), "nb": (0, 0.06), "ni": (0, 2.50), "v": (0, 0.18), "b": (0, 0.005)},
    "en-1011-2-b",
)  # fmt: skip
_PCM = Formula(
    "Pcm",
    {"c": 1, "si": 1 / 30, "mn": 1 / 20, "cu": 1 / 20, "cr": 1 / 20, "ni": 1 / 60, "mo": 1 / 15,
     "v": 1 / 10, "b": 5},
    {"c": (0.07, 0.22), "si": (0, 0.60), "mn": (0.40, 1.40), "cu": (0, 0.50), "ni": (0, 1.20),
     "cr": (0, 1.20), "mo": (0, 0.70), "v": (0, 0.12), "nb": (0, 0.04), "b": (0, 0.005)},
    "ito-bessyo",
)  # fmt: skip

FORMULAS: Mapping[Method, Formula] = MappingProxyType({"ce": _CE, "cet": _CET, "pcm": _PCM})
"""Carbon equivalents by method. Ranges: EN 1011-2 C.2 and C.3, Ito and Bessyo; from memory."""


def equivalent(steel: Composition, method: Method) -> float:
    """Return a carbon equivalent, even of a steel the method is not for [% by mass].

    Source: ``FORMULAS``.

    Args:
        steel: The analysis [% by mass].
        method: Key of ``FORMULAS`` [-].
    """
    return sum(
        weight * steel.share(element) for element, weight in FORMULAS[method].weights.items()
    )


def outside(steel: Composition, method: Method) -> tuple[tuple[Element, Phrase], ...]:
    """Return each element outside a method's range, with a sentence that names both.

    Args:
        steel: The analysis [% by mass].
        method: Key of ``FORMULAS`` [-].
    """
    formula = FORMULAS[method]
    found: list[tuple[Element, Phrase]] = []
    for element, (low, high) in formula.ranges.items():
        share = steel.share(element)
        if not low <= share <= high:
            why = say(
                "heating.no-such-steel",
                element=SYMBOLS[element],
                share=share,
                low=low,
                high=high,
                formula=formula.name,
            )
            found.append((element, why))
    return tuple(found)


def _held(steel: Composition, method: Method) -> float:
    wrong = outside(steel, method)
    if wrong:
        ranges = FORMULAS[method].ranges
        shares = (
            f"{SYMBOLS[element]} = {steel.share(element):g} must be {ranges[element]}"
            for element, _ in wrong
        )
        raise OutOfRangeError("; ".join(shares))
    return equivalent(steel, method)


def ce_iiw(steel: Composition) -> float:
    """Return CE(IIW) = C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15 [% by mass].

    Source: IIW; range of EN 1011-2 method A, from memory.

    Args:
        steel: The analysis, inside ``FORMULAS['ce'].ranges`` [% by mass].

    Raises:
        OutOfRangeError: Naming each element outside and its range.
    """
    return _held(steel, "ce")


def cet(steel: Composition) -> float:
    """Return CET = C + (Mn+Mo)/10 + (Cr+Cu)/20 + Ni/40 [% by mass].

    Source: EN 1011-2, C.3.

    Args:
        steel: The analysis, inside ``FORMULAS['cet'].ranges`` [% by mass].

    Raises:
        OutOfRangeError: Naming each element outside and its range.
    """
    return _held(steel, "cet")


def pcm(steel: Composition) -> float:
    """Return Pcm = C + Si/30 + (Mn+Cu+Cr)/20 + Ni/60 + Mo/15 + V/10 + 5B [% by mass].

    Source: Ito and Bessyo.

    Args:
        steel: The analysis, inside ``FORMULAS['pcm'].ranges`` [% by mass].

    Raises:
        OutOfRangeError: Naming each element outside and its range.
    """
    return _held(steel, "pcm")
