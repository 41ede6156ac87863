"""Time a weld takes from 800 to 500 °C, thick and thin plate, and which of the two holds."""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.temperatures import to_celsius

HOT_C, COOL_C = 800.0, 500.0
"""The two temperatures [°C]. Source: EN 1011-2, Annex D."""

Regime = Literal["thick", "thin"]


@dataclass(frozen=True, slots=True)
class ShapeFactors:
    """Cooling time of a joint over that of a bead on plate.

    Attributes:
        thin: F2, least, taken, most [-].
        thick: F3, least, taken, most [-].
    """

    thin: tuple[float, float, float]
    thick: tuple[float, float, float]


BEAD = ShapeFactors((1.0, 1.0, 1.0), (1.0, 1.0, 1.0))
BUTT = ShapeFactors((0.9, 0.9, 0.9), (0.9, 0.9, 0.9))
CORNER = ShapeFactors((0.67, 0.785, 0.9), (0.67, 0.67, 0.67))
TEE = ShapeFactors((0.45, 0.56, 0.67), (0.67, 0.67, 0.67))
"""Shape factors. Source: EN 1011-2 Table D.1, from memory; where it prints a range the middle is
taken. A lap is counted as a tee, common practice: heat flows away three ways."""


def shape_factors(joint: str) -> ShapeFactors:
    """Return the shape factors of a joint.

    Args:
        joint: Kind of joint; what is no fillet counts as a butt's filling run [-].
    """
    if joint in ("tee", "lap"):
        return TEE
    return CORNER if joint == "corner" else BUTT


def _start(start_k: float) -> float:
    celsius = to_celsius(start_k)
    if not -50 <= celsius < COOL_C:
        raise OutOfRangeError(f"start {celsius:.0f} °C must be from −50 °C to below 500 °C")
    return celsius


def thick_time(heat_en_j_m: float, start_k: float, factor: float = 1.0) -> float:
    """Return the cooling time of thick plate: heat flows away downward too [s].

    Source: EN 1011-2, D: (6700 - 5 T0) Q [1/(500-T0) - 1/(800-T0)] F3.

    Args:
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].
        start_k: Preheat or interpass temperature, −50 to below 500 °C [K].
        factor: F3, above zero [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(heat_en_j_m=heat_en_j_m, factor=factor)
    t0, q = _start(start_k), heat_en_j_m / 1e6
    return (6700 - 5 * t0) * q * (1 / (COOL_C - t0) - 1 / (HOT_C - t0)) * factor


def thin_time(heat_en_j_m: float, thickness_m: float, start_k: float, factor: float = 1.0) -> float:
    """Return the cooling time of thin plate: heat flows away only sideways [s].

    Source: EN 1011-2, D: (4300 - 4.3 T0) 1e5 Q²/d² [1/(500-T0)² - 1/(800-T0)²] F2.

    Args:
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].
        thickness_m: Thickness, above zero [m].
        start_k: Preheat or interpass temperature, −50 to below 500 °C [K].
        factor: F2, above zero [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(heat_en_j_m=heat_en_j_m, thickness_m=thickness_m, factor=factor)
    t0, q, d = _start(start_k), heat_en_j_m / 1e6, thickness_m * 1e3
    span = 1 / (COOL_C - t0) ** 2 - 1 / (HOT_C - t0) ** 2
    return (4300 - 4.3 * t0) * 1e5 * (q / d) ** 2 * span * factor


def transition_thickness(
    heat_en_j_m: float, start_k: float, thin: float = 1.0, thick: float = 1.0
) -> float:
    """Return the thickness at which both formulas give the same time [m].

    Source: the two formulas set equal; EN 1011-2 draws it.

    Args:
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].
        start_k: Preheat or interpass temperature, −50 to below 500 °C [K].
        thin: F2, above zero [-].
        thick: F3, above zero [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(heat_en_j_m=heat_en_j_m, thin=thin, thick=thick)
    t0, q = _start(start_k), heat_en_j_m / 1e6
    both = 1 / (COOL_C - t0) + 1 / (HOT_C - t0)
    return 1e-3 * sqrt((4300 - 4.3 * t0) / (6700 - 5 * t0) * 1e5 * q * both * thin / thick)


@dataclass(frozen=True, slots=True)
class Cooling:
    """How a weld cools.

    Attributes:
        regime: The formula that holds.
        seconds: Time from 800 to 500 °C [s].
        low: Least it may be: less heat, the thicker part, the shape that cools fastest [s].
        high: Most it may be [s].
        thick_s: By the formula for thick plate [s].
        thin_s: By the formula for thin plate [s].
        transition_m: Thickness at which the two meet [m].
        start_k: Where it starts from [K].
        factors: The joint's shape factors.
    """

    regime: Regime
    seconds: float
    low: float
    high: float
    thick_s: float
    thin_s: float
    transition_m: float
    start_k: float
    factors: ShapeFactors


def cooling(
    heat_en_j_m: tuple[float, float, float],
    plates_m: tuple[float, float],
    start_k: float,
    factors: ShapeFactors,
) -> Cooling:
    """Return how a weld cools: the larger of the two times holds.

    Args:
        heat_en_j_m: Heat input with EN's efficiency, low, taken, high; above zero [J/m].
        plates_m: Thickness of both parts, above zero [m].
        start_k: Preheat or interpass temperature [K].
        factors: The joint's shape factors [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    depths = (max(plates_m), sum(plates_m) / 2, min(plates_m))
    times: list[tuple[float, float]] = []
    for heat, depth, f2, f3 in zip(heat_en_j_m, depths, factors.thin, factors.thick, strict=True):
        times.append((thick_time(heat, start_k, f3), thin_time(heat, depth, start_k, f2)))
    thick_s, thin_s = times[1]
    return Cooling(
        regime="thin" if thin_s > thick_s else "thick",
        seconds=max(times[1]),
        low=max(times[0]),
        high=max(times[2]),
        thick_s=thick_s,
        thin_s=thin_s,
        transition_m=transition_thickness(
            heat_en_j_m[1], start_k, factors.thin[1], factors.thick[1]
        ),
        start_k=start_k,
        factors=factors,
    )
