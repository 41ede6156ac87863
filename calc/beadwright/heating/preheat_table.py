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

THICKNESS_STEPS_M = (0.75 * INCH_M, 1.5 * INCH_M, 2.5 * INCH_M, inf)
"""Upper ends of the table's four thickness rows [m]. Source: AWS D1.1 Table 5.8."""

THINNEST_M = 0.125 * INCH_M
"""Thickness at which the table begins [m]. Source: AWS D1.1 Table 5.8."""

LEAST: Mapping[Category, tuple[tuple[int, int], ...]] = MappingProxyType(
    {
        "B": ((32, 0), (50, 10), (150, 65), (225, 110)),
        "C": ((50, 10), (150, 65), (225, 110), (300, 150)),
    }
)
"""Least preheat by category and thickness row [°F, °C], as printed in both scales.

Source: AWS D1.1:2015 Table 3.3 (2020: Table 5.8), gas metal arc.
"""

COLD_K, COLD_TO_K = 273.15, from_fahrenheit(70)
"""Base metal below the first is warmed to the second [K]. Source: AWS D1.1 Table 5.8, note a."""


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


def table_row(category: Category, thickness_m: float) -> TableRow:
    """Return the row of the table for the thickest part at the weld.

    Source: AWS D1.1:2020 Table 5.8. The thickness is that of the thickest part, not the sum.

    Args:
        category: The steel's category [-].
        thickness_m: Thickest part at the point of welding, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    row = next(i for i, top in enumerate(THICKNESS_STEPS_M) if thickness_m <= top + 1e-9)
    over = THICKNESS_STEPS_M[row - 1] if row else 0.0
    return TableRow(category, over, THICKNESS_STEPS_M[row], *LEAST[category][row])
