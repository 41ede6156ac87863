"""Temperature against time behind the weld, on its middle line."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, sqrt

from beadwright.heating.cooling import COOL_C, Cooling, Regime
from beadwright.heating.thermal_field import implied_metal, thick_temperature, thin_temperature
from beadwright.temperatures import from_celsius

FROM_K = from_celsius(1500)
"""Temperature at which the curve begins: steel is solid at about this [K]. Common practice."""

POINTS = 48
"""Points on a curve."""

SLOW_M_S, USUAL_TRAVEL_M_S = 1e-3, 5e-3
"""Least travel counted, and the travel where none is known [m/s]. On the middle line of thick plate
it makes no difference, of thin plate under one percent."""


@dataclass(frozen=True, slots=True)
class Curve:
    """Temperature against time on the middle line behind the source.

    Attributes:
        regime: Thick or thin plate.
        start_k: Temperature the plate starts from [K].
        rules: True for the regime that holds for the job.
        points: Time behind the source and temperature [s, K].
    """

    regime: Regime
    start_k: float
    rules: bool
    points: tuple[tuple[float, float], ...]


def cooling_curves(
    heat_en_j_m: float,
    thickness_m: float,
    travel_m_s: float | None,
    cooled: Cooling,
    shop_k: float,
) -> tuple[Curve, ...]:
    """Return the curve that holds, the curve of the other regime, and the first without preheat.

    Source: Rosenthal; the shape factor of the joint counts for heat that flows away in another way
    than under a bead on plate: F3·Q on thick plate, √F2·Q on thin.

    Args:
        heat_en_j_m: Heat input with EN's efficiency, above zero [J/m].
        thickness_m: Thickness of thin plate, above zero [m].
        travel_m_s: Travel, above zero; None: usual [m/s].
        cooled: The cooling time [-].
        shop_k: Temperature of a plate not preheated [K].
    """
    travel = max(SLOW_M_S, travel_m_s or USUAL_TRAVEL_M_S)
    rules: Regime = cooled.regime
    other: Regime = "thin" if rules == "thick" else "thick"
    asked: list[tuple[Regime, float]] = [(rules, cooled.start_k), (other, cooled.start_k)]
    if cooled.start_k > shop_k + 1:
        asked.append((rules, shop_k))
    end = 1.8 * _time_to_cool(heat_en_j_m, thickness_m, cooled, rules)
    return tuple(
        Curve(
            regime,
            start,
            regime == rules and start == cooled.start_k,
            _points(regime, start, heat_en_j_m, thickness_m, travel, cooled, end),
        )
        for regime, start in asked
    )


def _time_to_cool(heat: float, thickness: float, cooled: Cooling, regime: Regime) -> float:
    """Time behind the source at which 500 °C is reached [s]."""
    metal, rise = implied_metal(cooled.start_k), from_celsius(COOL_C) - cooled.start_k
    if regime == "thick":
        return cooled.factors.thick[1] * heat / (2 * pi * metal.conductivity * rise)
    power = cooled.factors.thin[1] * (heat / thickness / rise) ** 2
    return power / (4 * pi * metal.conductivity * metal.capacity)


def _points(
    regime: Regime,
    start_k: float,
    heat: float,
    thickness: float,
    travel: float,
    cooled: Cooling,
    end_s: float,
) -> tuple[tuple[float, float], ...]:
    metal = implied_metal(start_k)
    found: list[tuple[float, float]] = []
    for step in range(1, POINTS + 1):
        # Denser near the source, where it falls fastest.
        time = end_s * (step / POINTS) ** 2
        behind = travel * time
        if regime == "thick":
            power = heat * cooled.factors.thick[1] * travel
            kelvin = thick_temperature(metal, power, travel, behind, 0.0, start_k)
        else:
            power = heat * sqrt(cooled.factors.thin[1]) * travel
            kelvin = thin_temperature(metal, power, travel, thickness, behind, 0.0, start_k)
        if kelvin <= FROM_K:
            found.append((time, kelvin))
    return tuple(found)
