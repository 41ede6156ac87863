"""Temperature about a source of heat that moves along a plate, thick and thin.

Properties of the metal are those the cooling-time formulas imply, so that curve and cooling time
agree; they include the heat the transformation gives off and are not handbook values.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import exp, hypot, log, pi, sqrt

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.temperatures import to_celsius


@dataclass(frozen=True, slots=True)
class Metal:
    """The metal the heat flows through.

    Attributes:
        conductivity: [W/(m·K)].
        capacity: Heat capacity by volume [J/(m³·K)].
    """

    conductivity: float
    capacity: float

    @property
    def diffusivity(self) -> float:
        """Thermal diffusivity [m²/s]."""
        return self.conductivity / self.capacity


def implied_metal(start_k: float) -> Metal:
    """Return the steel that EN 1011-2 Annex D implies at a preheat.

    Source: Annex D's terms 6700 - 5 T0 and (4300 - 4.3 T0)·1e5 set equal to Rosenthal's
    1/(2πλ) and 1/(4πλρc).

    Args:
        start_k: Preheat or interpass temperature, −50 to below 500 °C [K].

    Raises:
        OutOfRangeError: If the temperature is out of range.
    """
    t0 = to_celsius(start_k)
    if not -50 <= t0 < 500:
        raise OutOfRangeError(f"start {t0:.0f} °C must be from −50 °C to below 500 °C")
    conductivity = 1e6 / (2 * pi * (6700 - 5 * t0))
    capacity = 1e13 / (4 * pi * conductivity * (4300 - 4.3 * t0))
    return Metal(conductivity, capacity)


def scaled_k0(x: float) -> float:
    """Return e^x·K0(x), K0 the modified Bessel function of the second kind, order zero [-].

    Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 9.8.1, 9.8.5 and 9.8.6,
    from memory; within 2e-7.

    Args:
        x: Above zero [-].

    Raises:
        OutOfRangeError: If x is not above zero.
    """
    require_positive(x=x)
    if x > 2:
        return _poly(2 / x, _K0_FAR) / sqrt(x)
    near = _poly((x / 2) ** 2, _K0_NEAR) - log(x / 2) * _poly((x / 3.75) ** 2, _I0_NEAR)
    return exp(x) * near


_K0_FAR = (1.25331414, -0.07832358, 0.02189568, -0.01062446, 0.00587872, -0.00251540, 0.00053208)
_K0_NEAR = (-0.57721566, 0.42278420, 0.23069756, 0.03488590, 0.00262698, 0.00010750, 0.00000740)
_I0_NEAR = (1.0, 3.5156229, 3.0899424, 1.2067492, 0.2659732, 0.0360768, 0.0045813)
"""Coefficients of Abramowitz and Stegun 9.8.6, 9.8.5 and 9.8.1, as printed."""


def _poly(x: float, terms: tuple[float, ...]) -> float:
    total = 0.0
    for term in reversed(terms):
        total = total * x + term
    return total


def thick_temperature(
    metal: Metal,
    power_w: float,
    travel_m_s: float,
    behind_m: float,
    aside_m: float,
    start_k: float,
) -> float:
    """Return the temperature on the surface of thick plate [K].

    Source: Rosenthal: T - T0 = q/(2πλR)·exp(-v(R - b)/2a), b the distance behind the source.

    Args:
        metal: The steel [-].
        power_w: Power that enters the plate, above zero [W].
        travel_m_s: Travel, above zero [m/s].
        behind_m: Distance behind the source; below zero ahead of it [m].
        aside_m: Distance to the side [m].
        start_k: Preheat or interpass temperature [K].

    Raises:
        OutOfRangeError: At the source itself, or if power or travel is not above zero.
    """
    require_positive(power_w=power_w, travel_m_s=travel_m_s, distance=hypot(behind_m, aside_m))
    away = hypot(behind_m, aside_m)
    fall = travel_m_s * (away - behind_m) / (2 * metal.diffusivity)
    return start_k + power_w / (2 * pi * metal.conductivity * away) * exp(-fall)


def thin_temperature(
    metal: Metal,
    power_w: float,
    travel_m_s: float,
    thickness_m: float,
    behind_m: float,
    aside_m: float,
    start_k: float,
) -> float:
    """Return the temperature of thin plate, alike through its thickness [K].

    Source: Rosenthal: T - T0 = q/(2πλd)·exp(v·b/2a)·K0(v·R/2a).

    Args:
        metal: The steel [-].
        power_w: Power that enters the plate, above zero [W].
        travel_m_s: Travel, above zero [m/s].
        thickness_m: Thickness, above zero [m].
        behind_m: Distance behind the source; below zero ahead of it [m].
        aside_m: Distance to the side [m].
        start_k: Preheat or interpass temperature [K].

    Raises:
        OutOfRangeError: At the source itself, or if an argument is not above zero.
    """
    away = hypot(behind_m, aside_m)
    require_positive(power_w=power_w, travel_m_s=travel_m_s, thickness_m=thickness_m, distance=away)
    rate = travel_m_s / (2 * metal.diffusivity)
    rise = power_w / (2 * pi * metal.conductivity * thickness_m)
    return start_k + rise * exp(-rate * (away - behind_m)) * scaled_k0(rate * away)
