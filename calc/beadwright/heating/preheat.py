"""Preheat by EN 1011-2 method B, and how hot a joint may get between passes."""

from __future__ import annotations

from dataclasses import dataclass
from math import tanh

from beadwright.errors import OutOfRangeError
from beadwright.heating.carbon_equivalent import FORMULAS, equivalent, outside
from beadwright.heating.steels import SYMBOLS, Composition, Element
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.wire_kinds import Kind
from beadwright.temperatures import from_celsius

SHOP_K = from_celsius(20)
"""Temperature of a joint that is not preheated [K]. Common practice."""

CET_RANGE = (0.20, 0.50)
"""CET the method is for [% by mass]. Source: EN 1011-2, C.3, from memory."""

THICKNESS_RANGE_M = (10e-3, 90e-3)
"""Thickness the method is for [m]. Source: EN 1011-2, C.3, from memory."""

HYDROGEN_RANGE = (1.0, 20.0)
"""Diffusible hydrogen the method is for [ml/100 g]. Source: EN 1011-2, C.3, from memory."""

HEAT_RANGE_J_M = (0.5e6, 4.0e6)
"""Heat input, with EN's efficiency, the method is for [J/m]. Source: EN 1011-2, C.3, memory."""

_THINNEST = Amount(THICKNESS_RANGE_M[0], "length")
_LEAST_HEAT, _MOST_HEAT = (Amount(heat, "heat_input") for heat in HEAT_RANGE_J_M)

INTERPASS_K = from_celsius(250)
"""Highest interpass temperature of plain structural steel [K].

Source: EN 1011-2, from memory; D1.1 sets none for these grades.
"""

HYDROGEN: dict[Kind, float] = {"solid": 5.0, "metal-cored": 8.0, "flux-cored": 8.0}
"""Diffusible hydrogen by kind of wire where the maker says none [ml/100 g].

Source: EN 1011-2 Table C.2, gas-shielded solid wire in scale D or C; cored, common practice: H8.
"""


def method_b(cet: float, thickness_m: float, hydrogen: float, heat_en_j_m: float) -> float:
    """Return the preheat of EN 1011-2 method B; it may lie below freezing [K].

    Source: EN 1011-2, C.3: Tp = 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - 328,
    found second-hand.

    Valid for: yield up to 1000 MPa. d is the plate's thickness, not the sum of the parts.

    Args:
        cet: Carbon equivalent CET, 0.20 to 0.50 [% by mass].
        thickness_m: Thickness, 10 to 90 mm [m].
        hydrogen: Diffusible hydrogen, 1 to 20 [ml/100 g].
        heat_en_j_m: Heat input with EN's efficiency, 0.5 to 4 kJ/mm [J/m].

    Raises:
        OutOfRangeError: Naming the value and the range.
    """
    _within("CET", cet, CET_RANGE, 1.0, "%")
    _within("thickness", thickness_m, THICKNESS_RANGE_M, 1e-3, "mm")
    _within("hydrogen", hydrogen, HYDROGEN_RANGE, 1.0, "ml/100 g")
    _within("heat input", heat_en_j_m, HEAT_RANGE_J_M, 1e6, "kJ/mm")
    return _line(cet, thickness_m, hydrogen, heat_en_j_m)


def _within(name: str, value: float, span: tuple[float, float], unit: float, sign: str) -> None:
    low, high = span
    if not low <= value <= high:
        text = f"{name} {value / unit:.4g} {sign} is outside {low / unit:g} to {high / unit:g}"
        raise OutOfRangeError(f"{text} {sign}: EN 1011-2 method B")


def _line(cet: float, thickness_m: float, hydrogen: float, heat_en_j_m: float) -> float:
    d, q = thickness_m * 1e3, heat_en_j_m / 1e6
    celsius = (
        697 * cet + 160 * tanh(d / 35) + 62 * hydrogen**0.35 + (53 * cet - 32) * q - 328
    )  # fmt: skip
    return from_celsius(celsius)


@dataclass(frozen=True, slots=True)
class MethodB:
    """The answer of method B for a job.

    Attributes:
        kelvin: Preheat, or None where the method is not for it [K].
        cet: CET as counted [% by mass].
        counted: Values counted other than given, and why.
        refused: Elements or values the method is not for, each with why.
    """

    kelvin: float | None
    cet: float
    counted: tuple[Phrase, ...]
    refused: tuple[tuple[Element | str, Phrase], ...]


def preheat_b(
    steel: Composition, thickness_m: float, hydrogen: float, heat_en_j_m: float
) -> MethodB:
    """Return method B's preheat; a value below its range counts as the end of the range.

    Each such change asks for more preheat than the value itself would; for heat under 0.5 kJ/mm the
    method's own line is used, which asks for more.

    Args:
        steel: The analysis [% by mass].
        thickness_m: Thickest part, above zero [m].
        hydrogen: Diffusible hydrogen, 1 to 20 [ml/100 g].
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].
    """
    counted: list[Phrase] = []
    refused: list[tuple[Element | str, Phrase]] = []
    for element, why in outside(steel, "cet"):
        low = FORMULAS["cet"].ranges[element][0]
        if steel.share(element) < low:
            counted.append(say("heating.element-counted", element=SYMBOLS[element], least=low))
        else:
            refused.append((element, why))
    cet = equivalent(steel, "cet")
    for element, (low, _) in FORMULAS["cet"].ranges.items():
        cet += FORMULAS["cet"].weights.get(element, 0.0) * max(0.0, low - steel.share(element))
    if cet < CET_RANGE[0]:
        counted.append(say("heating.cet-counted", cet=cet, least=CET_RANGE[0]))
        cet = CET_RANGE[0]
    elif cet > CET_RANGE[1]:
        refused.append(("cet", say("heating.cet-over", cet=cet, most=CET_RANGE[1])))
    depth = thickness_m
    if depth < THICKNESS_RANGE_M[0]:
        counted.append(say("heating.thickness-counted", least=_THINNEST))
        depth = THICKNESS_RANGE_M[0]
    heat = heat_en_j_m
    if heat > HEAT_RANGE_J_M[1]:
        counted.append(say("heating.heat-counted", most=_MOST_HEAT))
        heat = HEAT_RANGE_J_M[1]
    elif heat < HEAT_RANGE_J_M[0]:
        counted.append(say("heating.heat-under-range", least=_LEAST_HEAT))
    if refused:
        return MethodB(None, cet, tuple(counted), tuple(refused))
    return MethodB(_line(cet, depth, hydrogen, heat), cet, tuple(counted), ())


def combined_thickness(joint: str, plate_m: float, plate2_m: float) -> float:
    """Return the combined thickness the heat flows into, as EN 1011-2 method A counts it [m].

    Not for methods that take only the thickest part.

    Source: EN 1011-2, C.2.4: both sides of the plate a tee or lap stands on, from memory.

    Args:
        joint: Kind of joint [-].
        plate_m: Plate lying down [m].
        plate2_m: The other [m].
    """
    sides = 2 if joint in ("tee", "lap") else 1
    return sides * plate_m + plate2_m
