"""Carbon equivalents: how much carbon the other elements count for, each with its range."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType
from typing import Literal

from beadwright.heating.steels import ELEMENTS, SYMBOLS, Composition, Element, Limits
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


def worst_melt(limits: Limits, method: Method) -> Composition:
    """Return the melt a grade allows that a carbon equivalent counts highest [% by mass].

    Every element at its limit; where the grade caps CE(IIW) too, no melt may have them all. Then
    those that bring the method the most for what they use of the cap come first.

    Source: derived; one linear cap on shares each with its own limit is filled best in that order.

    Args:
        limits: What the grade allows at the thickness [% by mass].
        method: The carbon equivalent that is to be highest, key of ``FORMULAS`` [-].
    """
    cap, weights = FORMULAS["ce"].weights, FORMULAS[method].weights

    def worth(element: Element) -> float:
        return weights.get(element, 0.0) / cap[element] if element in cap else inf

    room = inf if limits.ce_cap is None else limits.ce_cap
    shares: dict[str, float] = {}
    for element in sorted(ELEMENTS, key=worth, reverse=True):
        share, uses = limits.most.share(element), cap.get(element, 0.0)
        if uses:
            share = min(share, room / uses)
            room = max(0.0, room - share * uses)
        shares[element] = share
    return Composition(**shares)
