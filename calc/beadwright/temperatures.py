"""Temperatures as the shop writes them, °F or °C; kelvin inside.

A temperature scale has an offset, so it is not a ``Measure``: a measure has only a factor.
"""

from __future__ import annotations

from math import ceil

from beadwright.measures import System
from beadwright.typed_number import quoted, read_number

ZERO_CELSIUS_K = 273.15
"""The zero of the Celsius scale, exact by definition [K]. Source: SI Brochure, 9th ed."""


def from_celsius(celsius: float) -> float:
    """Return a temperature in kelvin [K].

    Args:
        celsius: Any [°C].
    """
    return celsius + ZERO_CELSIUS_K


def from_fahrenheit(fahrenheit: float) -> float:
    """Return a temperature in kelvin [K].

    Args:
        fahrenheit: Any [°F].
    """
    return (fahrenheit + 459.67) / 1.8


def to_celsius(kelvin: float) -> float:
    """Return a temperature in degrees Celsius [°C].

    Args:
        kelvin: Any [K].
    """
    return kelvin - ZERO_CELSIUS_K


def to_fahrenheit(kelvin: float) -> float:
    """Return a temperature in degrees Fahrenheit [°F].

    Args:
        kelvin: Any [K].
    """
    return kelvin * 1.8 - 459.67


def degrees(kelvin: float, system: System) -> float:
    """Return a temperature on the scale a system shows [°F or °C].

    Args:
        kelvin: Any [K].
        system: Whose scale [-].
    """
    return to_celsius(kelvin) if system == "si" else to_fahrenheit(kelvin)


def degree_sign(system: System) -> str:
    """Return the sign of the scale a system shows."""
    return "°C" if system == "si" else "°F"


def show_temperature(kelvin: float, system: System) -> str:
    """Return a temperature in whole degrees with its scale.

    Args:
        kelvin: Any [K].
        system: Whose scale [-].
    """
    whole = round(degrees(kelvin, system))
    return f"{str(whole).replace('-', '−')} {degree_sign(system)}"


def rounded_up(kelvin: float, system: System) -> float:
    """Return a temperature rounded up to a step crayons are sold in: 10 °F or 5 °C [K].

    Source: common practice.

    Args:
        kelvin: Any [K].
        system: Whose scale [-].
    """
    if system == "si":
        return from_celsius(5 * ceil(round(to_celsius(kelvin) / 5, 6)))
    return from_fahrenheit(10 * ceil(round(to_fahrenheit(kelvin) / 10, 6)))


def read_temperature(text: str, system: System) -> float:
    """Return a typed temperature; a bare number takes the system's scale [K].

    Args:
        text: Such as ``150F``, ``65 °C``, ``294K``, ``150`` [-].
        system: Whose scale a bare number takes [-].

    Raises:
        ValueError: If it cannot be read; the text says how to write it.
    """
    plain = text.strip().upper().replace("°", "").replace("DEG", "").replace(" ", "")
    scale = plain[-1:] if plain[-1:] in ("F", "C", "K") else "C" if system == "si" else "F"
    try:
        number = float(read_number(plain.removesuffix(scale)))
    except ValueError as error:
        raise ValueError(f"{quoted(text)} is no temperature; write 70F or 21C") from error
    if scale == "K":
        return number
    return from_celsius(number) if scale == "C" else from_fahrenheit(number)
