"""Adapters between printed values of steels, preheat, cooling and hardness and the core.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
What goes through exp, log or tanh is cut to nine digits: the phone's C library may differ in the
last of them. Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from math import exp
from typing import Any

from beadwright import temperatures
from beadwright.heating import (
    carbon_equivalent,
    cooling,
    haz_hardness,
    preheat,
    preheat_a,
    preheat_table,
    steels,
    thermal_field,
)
from beadwright.heating.carbon_equivalent import Method
from beadwright.heating.steels import Composition, Element
from beadwright.measures import System

INCH = 0.0254
KJ_MM = 1e6


def nine(value: float) -> float:
    return float(f"{value:.9g}")


def grade(name: str) -> steels.Steel:
    found = steels.steel_of(name)
    assert found is not None
    return found


def analysis(percent: dict[str, float]) -> Composition:
    return Composition(**percent)


# Steels


def limit_percent(steel: str, element: Element, thickness_mm: float, units: System = "si") -> float:
    return grade(steel).limits_at(thickness_mm / 1000, units).most.share(element)


def most_mn(steel: str, c: float, thickness_mm: float) -> float:
    found = grade(steel)
    return nine(found.most_mn(found.limits_at(thickness_mm / 1000, "si"), c))


def typical_percent(steel: str, element: Element) -> float:
    return grade(steel).typical.share(element)


def ce_cap(steel: str, thickness_mm: float, units: System = "si") -> float:
    found = grade(steel).limits_at(thickness_mm / 1000, units).ce_cap
    assert found is not None
    return found


def most_percent(method: Method, element: Element) -> float:
    return carbon_equivalent.FORMULAS[method].ranges[element][1]


def least_percent(method: Method, element: Element) -> float:
    return carbon_equivalent.FORMULAS[method].ranges[element][0]


def ce_percent(percent: dict[str, float]) -> float:
    return _inside(percent, "ce")


def ce_sum_percent(percent: dict[str, float]) -> float:
    """The sum alone, of a steel past the method's range."""
    return nine(carbon_equivalent.equivalent(analysis(percent), "ce"))


def cet_percent(percent: dict[str, float]) -> float:
    return _inside(percent, "cet")


def pcm_percent(percent: dict[str, float]) -> float:
    return _inside(percent, "pcm")


def _inside(percent: dict[str, float], method: Method) -> float:
    """A carbon equivalent of a steel that the method is for."""
    steel = analysis(percent)
    assert carbon_equivalent.outside(steel, method) == ()
    return nine(carbon_equivalent.equivalent(steel, method))


# Preheat


def table_f(steel: str, thickness_in: float) -> float:
    category = grade(steel).category
    assert category is not None
    row = preheat_table.table_row(category, thickness_in * INCH, "us")
    return nine(temperatures.to_fahrenheit(row.kelvin("us")))


def table_c(steel: str, thickness_mm: float) -> float:
    category = grade(steel).category
    assert category is not None
    row = preheat_table.table_row(category, thickness_mm / 1000, "si")
    return nine(temperatures.to_celsius(row.kelvin("si")))


def method_b_c(cet: float, d_mm: float, hydrogen: float, q_kj_mm: float) -> float:
    kelvin = preheat.method_b(cet, d_mm / 1000, hydrogen, q_kj_mm * KJ_MM)
    return nine(temperatures.to_celsius(kelvin))


def preheat_b_c(percent: dict[str, float], d_mm: float, hydrogen: float, q_kj_mm: float) -> float:
    found = preheat.preheat_b(analysis(percent), d_mm / 1000, hydrogen, q_kj_mm * KJ_MM)
    assert found.kelvin is not None
    return nine(temperatures.to_celsius(found.kelvin))


def combined_mm(joint: str, plate_mm: float, plate2_mm: float) -> float:
    return nine(1000 * preheat.combined_thickness(joint, plate_mm / 1000, plate2_mm / 1000))


def hydrogen_ml(kind: Any) -> float:
    return preheat.HYDROGEN[kind]


def interpass_c() -> float:
    return nine(temperatures.to_celsius(preheat.INTERPASS_K))


def warm_to_f() -> float:
    return nine(temperatures.to_fahrenheit(preheat_table.COLD_TO_K["us"]))


def warm_to_c() -> float:
    return nine(temperatures.to_celsius(preheat_table.COLD_TO_K["si"]))


def without_preheat_mm(ce: float, hydrogen: float, q_kj_mm: float) -> float:
    """The largest combined thickness, by a steel of 0.15 % C and 0.5 % Cr with Mn to the CE."""
    steel = Composition(0.15, 6 * (ce - 0.15 - 0.5 / 5), cr=0.5)
    found = preheat_a.preheat_a(steel, 0.010, hydrogen, q_kj_mm * KJ_MM)
    assert found.most_m is not None
    return nine(1000 * found.most_m)


def scale(hydrogen: float) -> str:
    return preheat_a.hydrogen_scale(hydrogen)


# Cooling


def thick_s(q_kj_mm: float, start_c: float, factor: float = 1.0) -> float:
    return nine(cooling.thick_time(q_kj_mm * KJ_MM, temperatures.from_celsius(start_c), factor))


def thin_s(q_kj_mm: float, d_mm: float, start_c: float, factor: float = 1.0) -> float:
    start = temperatures.from_celsius(start_c)
    return nine(cooling.thin_time(q_kj_mm * KJ_MM, d_mm / 1000, start, factor))


def transition_mm(q_kj_mm: float, start_c: float, thin: float = 1.0, thick: float = 1.0) -> float:
    start = temperatures.from_celsius(start_c)
    return nine(1000 * cooling.transition_thickness(q_kj_mm * KJ_MM, start, thin, thick))


def shape_factor(joint: str, of: str, end: int) -> float:
    found = cooling.BEAD if joint == "bead" else cooling.shape_factors(joint)
    return {"thin": found.thin, "thick": found.thick}[of][end]


def rules_s(q_kj_mm: float, d_mm: float, start_c: float, joint: str) -> float:
    found = cooling.cooling(
        (q_kj_mm * KJ_MM, q_kj_mm * KJ_MM, q_kj_mm * KJ_MM),
        (d_mm / 1000, d_mm / 1000),
        temperatures.from_celsius(start_c),
        cooling.BEAD if joint == "bead" else cooling.shape_factors(joint),
    )
    return nine(found.seconds)


def conductivity(start_c: float) -> float:
    return nine(thermal_field.implied_metal(temperatures.from_celsius(start_c)).conductivity)


def diffusivity_mm2_s(start_c: float) -> float:
    return nine(1e6 * thermal_field.implied_metal(temperatures.from_celsius(start_c)).diffusivity)


def bessel_k0(x: float) -> float:
    return nine(thermal_field.scaled_k0(x) * exp(-x))


def thick_c(
    conductivity: float, capacity: float, watts: float, mm_s: float, behind_mm: float,
    aside_mm: float, start_c: float,
) -> float:  # fmt: skip
    metal = thermal_field.Metal(conductivity, capacity)
    kelvin = thermal_field.thick_temperature(
        metal, watts, mm_s / 1000, behind_mm / 1000, aside_mm / 1000,
        temperatures.from_celsius(start_c),
    )  # fmt: skip
    return nine(temperatures.to_celsius(kelvin))


def thin_c(
    conductivity: float, capacity: float, watts: float, mm_s: float, thickness_mm: float,
    behind_mm: float, aside_mm: float, start_c: float,
) -> float:  # fmt: skip
    metal = thermal_field.Metal(conductivity, capacity)
    kelvin = thermal_field.thin_temperature(
        metal, watts, mm_s / 1000, thickness_mm / 1000, behind_mm / 1000, aside_mm / 1000,
        temperatures.from_celsius(start_c),
    )  # fmt: skip
    return nine(temperatures.to_celsius(kelvin))


# Hardness


def bainite_ce_percent(percent: dict[str, float]) -> float:
    return nine(haz_hardness.bainite_equivalent(analysis(percent)))


def martensite_hv(percent: dict[str, float]) -> float:
    return nine(haz_hardness.martensite_hardness(analysis(percent)))


def bainite_hv(percent: dict[str, float]) -> float:
    return nine(haz_hardness.bainite_hardness(analysis(percent)))


def mixed_hv(percent: dict[str, float], seconds: float) -> float:
    return nine(haz_hardness.mixed_hardness(analysis(percent), seconds))


def haz_hv(percent: dict[str, float], seconds: float) -> float:
    return nine(haz_hardness.haz_hardness(analysis(percent), seconds))


def scatter_hv() -> float:
    return haz_hardness.SCATTER_HV


def most_hv() -> float:
    return haz_hardness.MOST_HV


def hardness_least_percent(element: Element) -> float:
    return haz_hardness.RANGES[element][0]


def hardness_most_percent(element: Element) -> float:
    return haz_hardness.RANGES[element][1]


# Temperatures


def celsius_of_f(fahrenheit: float) -> float:
    return nine(temperatures.to_celsius(temperatures.from_fahrenheit(fahrenheit)))


def fahrenheit_of_c(celsius: float) -> float:
    return nine(temperatures.to_fahrenheit(temperatures.from_celsius(celsius)))


def written_us(celsius: float) -> str:
    return temperatures.show_temperature(temperatures.from_celsius(celsius), "us")


def rounded_up_f(fahrenheit: float) -> float:
    kelvin = temperatures.rounded_up(temperatures.from_fahrenheit(fahrenheit), "us")
    return nine(temperatures.to_fahrenheit(kelvin))


def rounded_up_c(celsius: float) -> float:
    kelvin = temperatures.rounded_up(temperatures.from_celsius(celsius), "si")
    return nine(temperatures.to_celsius(kelvin))


def read_c(text: str) -> float:
    return nine(temperatures.to_celsius(temperatures.read_temperature(text, "us")))
