"""What a shielding gas may be mixed from: one row for each component."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType


@dataclass(frozen=True, slots=True)
class Substance:
    """A pure gas.

    Attributes:
        critical_k: Critical temperature [K].
        critical_pa: Critical pressure [Pa].
        molar_kg: Molar mass [kg/mol].
    """

    critical_k: float
    critical_pa: float
    molar_kg: float


@dataclass(frozen=True, slots=True)
class Component:
    """A component of a shielding gas.

    Attributes:
        name: Its name, lower case; the first way to type it.
        symbol: Its chemical symbol, as the shop writes it.
        spellings: Other ways to type it, lower case.
        substance: The pure gas, for density and for the cylinder.
        open_v: Volts that a full share of it adds to the open arc; of the four that ``arc`` has
            lines for, zero [V].
        short_v: Volts that a full share of it adds to the shorting arc; the same [V].
    """

    name: str
    symbol: str
    spellings: tuple[str, ...]
    substance: Substance
    open_v: float = 0.0
    short_v: float = 0.0


COMPONENTS: Mapping[str, Component] = MappingProxyType(
    {
        component.name: component
        for component in (
            Component("argon", "Ar", ("ar",), Substance(150.687, 4.863e6, 0.039948)),
            Component("co2", "CO2", (), Substance(304.1282, 7.3773e6, 0.0440095)),
            Component("oxygen", "O2", ("o2",), Substance(154.581, 5.043e6, 0.0319988)),
            Component("helium", "He", ("he",), Substance(10.28, 6.52e5, 0.0040026)),
        )
    }
)
"""Components by name, in the order the shop says them.

Critical points: Tegeler 1999, Span and Wagner 1996, Schmidt and Wagner 1985; memory. Helium is too
light for its own critical point: its row has the one of Gunn, Chueh and Prausnitz 1966 for
quantum gases (10.47 K and 0.676 MPa, corrected to 294 K), from memory.
"""
