"""Preheat by EN 1011-2 method A, as far as its table goes: what is welded without preheat.

Method A's preheat stands in curves (Figure C.2), which this core does not have. Its Table C.1
prints the largest combined thickness welded without preheat for two carbon equivalents and two
heats. Where that covers a joint, no preheat is needed; where not, the curve to read is named.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.errors import require_positive
from beadwright.heating.carbon_equivalent import FORMULAS, equivalent, outside
from beadwright.heating.preheat import SHOP_K
from beadwright.heating.steels import Composition
from beadwright.phrases import Amount, Phrase, say

Scale = Literal["A", "B", "C", "D", "E"]

SCALES: tuple[tuple[Scale, float], ...] = (("E", 3.0), ("D", 5.0), ("C", 10.0), ("B", 15.0))
"""Hydrogen scale and the most diffusible hydrogen in it; more is scale A [ml/100 g].

Source: EN 1011-2:2001 Table C.2, from memory; Table C.1 prints the same steps.
"""

CES = (0.43, 0.49)
"""Carbon equivalents CE(IIW) of Table C.1 [% by mass]. Source: EN 1011-2:2001 Table C.1."""

HEATS_J_M = (1.0e6, 2.0e6)
"""Heat inputs of Table C.1 [J/m]. Source: EN 1011-2:2001 Table C.1."""

WITHOUT_PREHEAT_M: Mapping[Scale, tuple[tuple[float, float], tuple[float, float]]] = (
    MappingProxyType(
        {
            "A": ((40e-3, 80e-3), (25e-3, 50e-3)),
            "B": ((50e-3, 90e-3), (30e-3, 55e-3)),
            "C": ((60e-3, 100e-3), (35e-3, 65e-3)),
            "D": ((100e-3, 100e-3), (50e-3, 100e-3)),
            "E": ((100e-3, 100e-3), (60e-3, 100e-3)),
        }
    )
)
"""Largest combined thickness welded without preheat: by scale, CE of ``CES``, heat of ``HEATS_J_M``
[m]. Source: EN 1011-2:2001 Table C.1, examples; found second-hand."""


@dataclass(frozen=True, slots=True)
class MethodA:
    """What method A's table says of a job.

    Attributes:
        kelvin: Shop temperature where it needs no preheat, or None where the table is silent [K].
        ce: CE(IIW) [% by mass].
        scale: Hydrogen scale.
        most_m: Largest combined thickness it prints for the case, or None where it prints none [m].
        refused: Why the table does not settle it, and what would; None where it does.
    """

    kelvin: float | None
    ce: float
    scale: Scale
    most_m: float | None
    refused: Phrase | None


def hydrogen_scale(hydrogen: float) -> Scale:
    """Return the hydrogen scale of a consumable.

    Source: EN 1011-2:2001 Table C.2: each scale includes its upper end.

    Args:
        hydrogen: Diffusible hydrogen, above zero [ml/100 g].

    Raises:
        OutOfRangeError: If it is not above zero.
    """
    require_positive(hydrogen=hydrogen)
    for scale, most in SCALES:
        if hydrogen <= most + 1e-9:
            return scale
    return "A"


def preheat_a(
    steel: Composition, combined_m: float, hydrogen: float, heat_en_j_m: float
) -> MethodA:
    """Return what method A's table says: no preheat, or that its curve must be read.

    A steel leaner than a printed CE, and more heat than a printed one, count as the printed ones:
    both ask no less. Between and below them nothing is read in.

    Source: EN 1011-2:2001 C.2.2, Table C.1.

    Args:
        steel: The analysis [% by mass].
        combined_m: Combined thickness, above zero [m].
        hydrogen: Diffusible hydrogen, above zero [ml/100 g].
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(combined_m=combined_m, heat_en_j_m=heat_en_j_m)
    ce, scale = equivalent(steel, "ce"), hydrogen_scale(hydrogen)
    least = {element: low for element, (low, _) in FORMULAS["ce"].ranges.items()}
    over = next((w for key, w in outside(steel, "ce") if steel.share(key) > least[key]), None)
    if over is not None:
        return MethodA(None, ce, scale, None, over)
    most = _most(ce, scale, heat_en_j_m)
    if most is not None and combined_m <= most + 1e-9:
        return MethodA(SHOP_K, ce, scale, most, None)
    why = say(
        "heating.method-a-curve",
        ce=ce,
        scale=scale,
        combined=Amount(combined_m, "length"),
        heat=Amount(heat_en_j_m, "heat_input"),
    )
    return MethodA(None, ce, scale, most, why)


def _most(ce: float, scale: Scale, heat_j_m: float) -> float | None:
    row = next((i for i, printed in enumerate(CES) if ce <= printed + 1e-9), None)
    if row is None or heat_j_m < HEATS_J_M[0] * (1 - 1e-9):
        return None
    hot = heat_j_m >= HEATS_J_M[1] * (1 - 1e-9)
    return WITHOUT_PREHEAT_M[scale][row][hot]
