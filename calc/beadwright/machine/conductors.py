"""Copper conductors by size, their resistance, and the volts lost along them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi
from types import MappingProxyType

from beadwright.errors import UnknownEntryError, require_positive
from beadwright.measures import INCH_M
from beadwright.power.primary import Phases

COPPER_OHM_M = 1 / 58 * 1e-6
"""Resistivity of annealed copper at 20 °C [Ω·m]. Source: IEC 60028, 1/58 Ω·mm²/m."""

COPPER_PER_K = 0.00393
"""Rise of copper's resistance by degree from 20 °C [1/K]. Source: IEC 60028."""

STRANDED = 1.02
"""Resistance of a stranded conductor over a solid one of its section [-].

Source: the lay of the strands, about 2 % (ASTM B8, from memory); NFPA 70 chapter 9 Table 8 agrees.
"""

WARM_K = 50.0
"""Rise over 20 °C of a welding lead at work, to 70 °C [K]. Common practice."""

IEC_OHM_KM: Mapping[str, float] = MappingProxyType(
    {
        "1.5": 13.3, "2.5": 7.98, "4": 4.95, "6": 3.30, "10": 1.91, "16": 1.21, "25": 0.780,
        "35": 0.554, "50": 0.386, "70": 0.272, "95": 0.206, "120": 0.161,
    }
)  # fmt: skip
"""Highest resistance at 20 °C of flexible copper by mm² [Ω/km]. Source: IEC 60228, class 5."""

AWG_NUMBERS: Mapping[str, int] = MappingProxyType(
    {
        "14": 14, "12": 12, "10": 10, "8": 8, "6": 6, "4": 4, "3": 3, "2": 2, "1": 1, "1/0": 0,
        "2/0": -1, "3/0": -2, "4/0": -3,
    }
)  # fmt: skip
"""American gauge number by name; 1/0 is 0, 2/0 is -1."""

CORD_AMPS: Mapping[str, float] = MappingProxyType(
    {
        "14 AWG": 15, "12 AWG": 20, "10 AWG": 25, "8 AWG": 35, "6 AWG": 45, "4 AWG": 60,
        "3 AWG": 70, "2 AWG": 80, "1 AWG": 95,
    }
)  # fmt: skip
"""Current of a flexible cord with three wires carrying, as for three phase [A].

Source: NFPA 70 (NEC), 2011 and later Table 400.5(A)(1), before that 400.5(A), column A; 14 to 2 AWG
found second-hand, 3 and 1 AWG from memory.
"""

CORD_AMPS_SINGLE: Mapping[str, float] = MappingProxyType(
    {
        "14 AWG": 18, "12 AWG": 25, "10 AWG": 30, "8 AWG": 40, "6 AWG": 55, "4 AWG": 70,
        "2 AWG": 95,
    }
)  # fmt: skip
"""Current of a flexible cord with two wires carrying, as for single phase [A].

Source: as ``CORD_AMPS``, column B; found second-hand. Sizes that are not here go by column A.
"""

IEC_CORD_AMPS: Mapping[str, float] = MappingProxyType(
    {"1.5 mm2": 16, "2.5 mm2": 20, "4 mm2": 30, "6 mm2": 37, "10 mm2": 52, "16 mm2": 69}
)
"""Current of a flexible rubber cord with three wires carrying; single phase counts by it too [A].

Source: HD 516 / IEC 60364-5-52 rounded down, from memory: the cord's own sheet rules.
"""


@dataclass(frozen=True, slots=True)
class Conductor:
    """A size of copper conductor.

    Attributes:
        name: As 2/0 AWG or 50 mm2.
        section_m2: Copper section [m²].
        ohm_m: Resistance at 20 °C [Ω/m].
        cord_a: What a cord of this size carries with three wires loaded, or None where our table
            has none [A].
    """

    name: str
    section_m2: float
    ohm_m: float
    cord_a: float | None


def awg_diameter(number: int) -> float:
    """Return the diameter of an American gauge number [m].

    Source: ASTM B258: 0.005 in at 36, 0.46 in at 4/0 (-3), 39 equal ratios between them.

    Args:
        number: Gauge number; 1/0 is 0, 4/0 is -3 [-].
    """
    return float(0.005 * 92 ** ((36 - number) / 39) * INCH_M)


def _table() -> dict[str, Conductor]:
    found: dict[str, Conductor] = {}
    for text, number in AWG_NUMBERS.items():
        name = f"{text} AWG"
        section = pi / 4 * awg_diameter(number) ** 2
        ohm = COPPER_OHM_M * STRANDED / section
        found[name] = Conductor(name, section, ohm, CORD_AMPS.get(name))
    for text, ohm_km in IEC_OHM_KM.items():
        name = f"{text} mm2"
        found[name] = Conductor(name, float(text) * 1e-6, ohm_km / 1000, IEC_CORD_AMPS.get(name))
    return found


CONDUCTORS: Mapping[str, Conductor] = MappingProxyType(_table())
"""Conductors by name."""


def conductor_of(name: str) -> Conductor:
    """Return a conductor by its name.

    Args:
        name: Such as ``2/0``, ``2/0 AWG``, ``50mm2`` [-].

    Raises:
        UnknownEntryError: If it is not in the table.
    """
    plain = name.lower().replace("²", "2").replace("awg", "").replace(" ", "").lstrip("#")
    number = plain.removesuffix("mm2")
    found = CONDUCTORS.get(f"{number} mm2" if plain.endswith("mm2") else f"{plain} AWG")
    if found is None:
        raise UnknownEntryError(f"{name} is not in the table; it has {', '.join(CONDUCTORS)}")
    return found


def cord_amps(conductor: Conductor, phases: Phases) -> float | None:
    """Return what a flexible cord of a size carries [A]; None where our tables have none.

    Source: ``CORD_AMPS_SINGLE`` for single phase, two wires carrying; else ``CORD_AMPS``,
    ``IEC_CORD_AMPS``.

    Args:
        conductor: Its size [-].
        phases: 1 or 3 [-].
    """
    single = CORD_AMPS_SINGLE.get(conductor.name) if phases == 1 else None
    return conductor.cord_a if single is None else single


def resistance(conductor: Conductor, length_m: float, warmer_k: float = 0.0) -> float:
    """Return the resistance of a length of conductor [Ω].

    Args:
        conductor: The conductor [-].
        length_m: Length there and back, above zero [m].
        warmer_k: How much warmer than 20 °C it is [K].

    Raises:
        OutOfRangeError: If the length is not above zero.
    """
    require_positive(length_m=length_m)
    return conductor.ohm_m * (1 + COPPER_PER_K * warmer_k) * length_m


def volts_lost(
    conductor: Conductor, length_m: float, current_a: float, warmer_k: float = WARM_K
) -> float:
    """Return the volts lost along a conductor [V]. Source: Ohm's law.

    Args:
        conductor: The conductor [-].
        length_m: Length of both leads together, above zero [m].
        current_a: Current, above zero [A].
        warmer_k: How much warmer than 20 °C it is at work [K].

    Raises:
        OutOfRangeError: If length or current is not above zero.
    """
    require_positive(current_a=current_a)
    return current_a * resistance(conductor, length_m, warmer_k)
