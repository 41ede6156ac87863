"""The sizes gas cylinders are sold in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.errors import UnknownEntryError
from beadwright.measures import CUBIC_FOOT_M3, POUND_KG, PSI_PA

_CUBIC_FOOT_M3, _POUND_KG, _PSI_PA = float(CUBIC_FOOT_M3), float(POUND_KG), float(PSI_PA)

LARGEST_FILLED_PSI = 2640
FILLED_PSI = 2200
"""Gauge pressure of a full 330 ft³ cylinder and of the smaller ones, at 70 °F [psi].

Source: 2200 psi from a welding page on cylinders (found second-hand); 2640 psi from memory.
"""


@dataclass(frozen=True, slots=True)
class CylinderSize:
    """A size of cylinder: by its content, by water volume and filling pressure, or by weight.

    Attributes:
        name: Its name.
        content_m3: Argon in a full one, where the size is sold by content [m³].
        water_m3: Water volume, where it is sold by that [m³].
        filled_pa: Gauge pressure of a full one [Pa].
        co2_kg: CO2 in a full one, where it is sold by weight [kg].
    """

    name: str
    content_m3: float | None = None
    water_m3: float | None = None
    filled_pa: float | None = None
    co2_kg: float | None = None

    @property
    def shown(self) -> str:
        """Its name as it is shown."""
        return self.name.replace("ft3", " ft³")


def _sizes() -> dict[str, CylinderSize]:
    found = [
        CylinderSize(
            f"{n}ft3",
            content_m3=n * _CUBIC_FOOT_M3,
            filled_pa=(LARGEST_FILLED_PSI if n == 330 else FILLED_PSI) * _PSI_PA,
        )
        for n in (330, 250, 122, 80, 55, 40, 22)
    ]
    found += [CylinderSize(f"{n}L", water_m3=n / 1000, filled_pa=200e5) for n in (50, 20, 10)]
    found += [CylinderSize(f"{n}lb CO2", co2_kg=n * _POUND_KG) for n in (50, 20)]
    found.append(CylinderSize("bulk"))
    return {size.name: size for size in found}


CYLINDERS: Mapping[str, CylinderSize] = MappingProxyType(_sizes())
"""Sizes by name. Source: cylinder chart, argon by size class; 50, 20, 10 L at 200 bar and CO2 by
weight: common practice."""


BOTTLES: Mapping[str, CylinderSize] = MappingProxyType(
    {name: size for name, size in CYLINDERS.items() if size.filled_pa is not None}
)
"""Sizes of compressed gas by name: a gauge tells what is in them."""

_CALLED = {"125": "122ft3", "20": "22ft3"}
"""Sizes as the shop calls them, where that is not the content of the chart. Common practice."""


def cylinder_of(name: str) -> CylinderSize:
    """Return a size of cylinder by its name.

    Args:
        name: A key of ``CYLINDERS``, whatever its case [-].

    Raises:
        UnknownEntryError: If it is not in the table.
    """
    return _named(name, CYLINDERS)


def _named(name: str, sizes: Mapping[str, CylinderSize]) -> CylinderSize:
    wanted = name.lower().replace("³", "3").replace(" ", "")
    wanted = _CALLED.get(wanted.removesuffix("ft3"), wanted)
    for known, size in sizes.items():
        if wanted in (known.lower().replace(" ", ""), known.lower().removesuffix("ft3")):
            return size
    raise UnknownEntryError(f"{name} is not in the table; it has {', '.join(sizes)}")


def bottle_of(name: str) -> CylinderSize:
    """Return a size of bottle whose gauge tells what is in it.

    Args:
        name: A key of ``BOTTLES``, or a number of cubic feet as the shop calls it, as 125 [-].

    Raises:
        UnknownEntryError: If it is not in the table.
    """
    return _named(name, BOTTLES)
