"""Hardness beside the bead, from analysis and cooling time."""

from __future__ import annotations

from collections.abc import Mapping
from math import log10
from types import MappingProxyType

from beadwright.errors import OutOfRangeError
from beadwright.heating.steels import SYMBOLS, Composition, Element
from beadwright.phrases import Phrase, say

RANGES: Mapping[Element, tuple[float, float]] = MappingProxyType(
    {"c": (0.03, 0.25), "si": (0, 0.60), "mn": (0.40, 2.00), "cr": (0, 1.00), "mo": (0, 0.60),
     "ni": (0, 1.70), "cu": (0, 0.60), "v": (0, 0.15), "b": (0, 0.0005)}
)  # fmt: skip
"""Steels the formulas were fitted to [% by mass]. Source: Lorenz and Düren, from memory."""

TIME_RANGE_S = (1.0, 100.0)
"""Cooling times the formulas were fitted to [s]. Source: Lorenz and Düren, from memory."""

SCATTER_HV = 28.0
"""Standard deviation of measured from calculated hardness [HV].

Source: Nicholas and Abson (2008), best of twelve methods and their mixtures on 300 points; this
method alone has at least that scatter.
"""

MOST_HV = 380.0
"""Highest hardness of group 1 steels not heat treated [HV]. Source: ISO 15614-1, from memory."""


def bainite_equivalent(steel: Composition) -> float:
    """Return C + Si/11 + Mn/8 + Cu/9 + Cr/5 + Ni/17 + Mo/6 + V/3 [% by mass].

    Source: Lorenz and Düren, from memory.

    Args:
        steel: The analysis [% by mass].
    """
    return (
        steel.c + steel.si / 11 + steel.mn / 8 + steel.cu / 9 + steel.cr / 5 + steel.ni / 17
        + steel.mo / 6 + steel.v / 3
    )  # fmt: skip


def martensite_hardness(steel: Composition) -> float:
    """Return the hardness of all martensite: 802 C + 305 [HV].

    Source: Lorenz and Düren, from memory.

    Args:
        steel: The analysis [% by mass].
    """
    return 802 * steel.c + 305


def bainite_hardness(steel: Composition) -> float:
    """Return the hardness with no martensite: 350 CB + 101 [HV].

    Source: Lorenz and Düren, from memory.

    Args:
        steel: The analysis [% by mass].
    """
    return 350 * bainite_equivalent(steel) + 101


def mixed_hardness(steel: Composition, cooling_s: float) -> float:
    """Return the hardness of a mixture [HV].

    Source: Lorenz and Düren, from memory:
    2019 [C (1 - 0.5 log t) + 0.3 (CB - C)] + 66 (1 - 0.8 log t).

    Args:
        steel: The analysis [% by mass].
        cooling_s: Time from 800 to 500 °C, above zero [s].
    """
    log = log10(cooling_s)
    rest = bainite_equivalent(steel) - steel.c
    return 2019 * (steel.c * (1 - 0.5 * log) + 0.3 * rest) + 66 * (1 - 0.8 * log)


def hardness_refused(steel: Composition, cooling_s: float) -> Phrase | None:
    """Return why the formulas are not for a steel or a cooling time, or None if they are.

    Source: ``RANGES``, ``TIME_RANGE_S``.

    Args:
        steel: The analysis [% by mass].
        cooling_s: Time from 800 to 500 °C [s].
    """
    for element, (low, high) in RANGES.items():
        share = steel.share(element)
        if not low <= share <= high:
            name = SYMBOLS[element]
            return say("heating.element-outside", element=name, share=share, low=low, high=high)
    low, high = TIME_RANGE_S
    if not low <= cooling_s <= high:
        return say("heating.cooling-outside", seconds=cooling_s, low=low, high=high)
    return None


def haz_hardness(steel: Composition, cooling_s: float) -> float:
    """Return the highest hardness beside a single bead [HV].

    That of the mixture, held between no martensite and all martensite.

    Args:
        steel: The analysis, inside ``RANGES`` [% by mass].
        cooling_s: Time from 800 to 500 °C, 1 to 100 s [s].

    Raises:
        OutOfRangeError: Naming element or time, and the range.
    """
    refused = hardness_refused(steel, cooling_s)
    if refused is not None:
        raise OutOfRangeError(f"{refused.key} {dict(refused.parameters)}")
    top, bottom = martensite_hardness(steel), bainite_hardness(steel)
    return min(top, max(bottom, mixed_hardness(steel, cooling_s)))
