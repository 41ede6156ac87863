"""Least preheat and interpass temperature by the prequalified table, low-hydrogen processes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType

from beadwright.errors import require_positive
from beadwright.heating.steels import Category
from beadwright.measures import INCH_M, System
from beadwright.temperatures import from_celsius, from_fahrenheit

THICKNESS_STEPS_M: Mapping[System, tuple[float, ...]] = MappingProxyType(
    {
        "us": (0.75 * INCH_M, 1.5 * INCH_M, 2.5 * INCH_M, inf),
        "si": (20e-3, 38e-3, 65e-3, inf),
    }
)
"""Upper ends of the table's four thickness rows, by edition, printed apart and not converted [m].

Source: AWS D1.1/D1.1M:2015 Table 3.3 (2020: Table 5.8).
"""

THINNEST_M: Mapping[System, float] = MappingProxyType({"us": 0.125 * INCH_M, "si": 3e-3})
"""Thickness at which the table begins, by edition [m]. Source: AWS D1.1/D1.1M Table 5.8."""

LEAST: Mapping[Category, tuple[tuple[int, int], ...]] = MappingProxyType(
    {
        "B": ((32, 0), (50, 10), (150, 65), (225, 110)),
        "C": ((50, 10), (150, 65), (225, 110), (300, 150)),
    }
)
"""Least preheat by category and thickness row [°F, °C], as printed in both scales.

Source: AWS D1.1:2015 Table 3.3 (2020: Table 5.8), gas metal arc.
"""

COLD_K = 273.15
"""Base metal colder than this is warmed to ``COLD_TO_K`` [K]. Source: AWS D1.1 Table 5.8, note a.
"""

COLD_TO_K: Mapping[System, float] = MappingProxyType(
    {"us": from_fahrenheit(70), "si": from_celsius(20)}
)
"""What cold metal is warmed to, by edition: 70 °F, 20 °C [K].

Source: AWS D1.1 Table 5.8, note a; from memory.
"""


@dataclass(frozen=True, slots=True)
class TableRow:
    """One row of the table.

    Attributes:
        category: The steel's category.
        over_m: The row is for thickness over this [m].
        through_m: Up to and with this; infinite in the last [m].
        fahrenheit: Least preheat [°F].
        celsius: Least preheat as printed in the other scale [°C].
    """

    category: Category
    over_m: float
    through_m: float
    fahrenheit: int
    celsius: int

    def kelvin(self, system: System) -> float:
        """Return the least preheat as the system's column prints it [K].

        Args:
            system: Whose column [-].
        """
        return from_celsius(self.celsius) if system == "si" else from_fahrenheit(self.fahrenheit)


def table_row(category: Category, thickness_m: float, system: System) -> TableRow:
    """Return the row of the table for the thickest part at the weld.

    Source: AWS D1.1:2020 Table 5.8. The thickness is that of the thickest part, not the sum.

    Args:
        category: The steel's category [-].
        thickness_m: Thickest part at the point of welding, above zero [m].
        system: Whose edition's rows [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    steps = THICKNESS_STEPS_M[system]
    row = next(i for i, top in enumerate(steps) if thickness_m <= top + 1e-9)
    over = steps[row - 1] if row else 0.0
    return TableRow(category, over, steps[row], *LEAST[category][row])
