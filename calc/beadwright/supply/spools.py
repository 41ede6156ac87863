"""Wire by the package, and the wire left on a begun spool."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil, pi
from types import MappingProxyType

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.process.wires import Wire
from beadwright.tolerance import REL_TOL

_POUND_KG = 0.45359237

PACKAGES_KG: Mapping[str, float] = MappingProxyType(
    {
        **{f"{n}lb": n * _POUND_KG for n in (10, 33, 44, 60)},
        "5kg": 5.0,
        "15kg": 15.0,
        **{f"{n}lb": n * _POUND_KG for n in (250, 500, 600, 1000)},
    }
)
"""Wire in a package by its name, spools and from 250 lb drums [kg]. Common practice."""

_THIN = ("0.023in", "0.030in")
_SMALL: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {"0.035in": ("10lb", "5kg"), "0.040in": ("5kg",)}
)

PACKING = (0.60, 0.70, 0.80)
"""Share of the winding's volume that is wire: low, typical, high [-].

Source: round wire in square layers fills π/4 = 0.785; spools are wound looser and uneven at the
flanges. Common practice; weigh the spool where it matters.
"""


def packages_sold(wire: Wire) -> tuple[str, ...]:
    """Return the packages a wire of this kind and size is usually sold in; keys of ``PACKAGES_KG``.

    Thin solid wire comes on small spools (drums from 0.035 in up; 0.040 in, sold as 1.0 mm, on
    5 kg but not 10 lb), cored wire on spools of 33 lb up and in drums to 600 lb;
    flux-cored also on 5 kg spools.

    Source: a wire maker's sheet of class E71T-1 (11, 28, 44, 55 lb spools, 550 lb drum: the nearest
    of our packages), found; the rest common practice.

    Args:
        wire: The wire [-].
    """
    if wire.size in _THIN:
        return ("10lb", "5kg", "33lb", "15kg", "44lb")
    if not wire.traits.cored:
        small = _SMALL.get(wire.size, ())
        return (*small, "33lb", "15kg", "44lb", "60lb", "250lb", "500lb", "600lb", "1000lb")
    small = ("5kg",) if wire.traits.slag else ()
    return (*small, "33lb", "15kg", "44lb", "60lb", "250lb", "500lb", "600lb")


@dataclass(frozen=True, slots=True)
class Packages:
    """A need of wire in packages.

    Attributes:
        count: Packages to buy [-].
        changes: Change-overs while the job runs [-].
        left_kg: Wire left when it is done [kg].
    """

    count: int
    changes: int
    left_kg: float


def packages(need_kg: float, package_kg: float, on_hand_kg: float = 0.0) -> Packages:
    """Return packages to buy, change-overs and wire left.

    Args:
        need_kg: Wire the job takes, zero or more [kg].
        package_kg: Wire in a package, above zero [kg].
        on_hand_kg: Wire on the machine now, used up first, zero or more [kg].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(package_kg=package_kg)
    if not (need_kg >= 0 and on_hand_kg >= 0):
        raise OutOfRangeError(
            f"need_kg = {need_kg} and on_hand_kg = {on_hand_kg} must be zero or more"
        )
    rounding = REL_TOL * package_kg
    count = max(0, ceil((need_kg - on_hand_kg - rounding) / package_kg))
    loaded = on_hand_kg > 0
    changes = count if loaded else max(0, count - 1)
    return Packages(count, changes, on_hand_kg + count * package_kg - need_kg)


def left_by_weight(gross_kg: float, empty_kg: float) -> float:
    """Return the wire on a spool from its weight [kg].

    Args:
        gross_kg: Spool with wire, above zero [kg].
        empty_kg: The same spool empty, above zero [kg].

    Raises:
        OutOfRangeError: If the spool weighs less with wire than empty.
    """
    require_positive(gross_kg=gross_kg, empty_kg=empty_kg)
    if gross_kg < empty_kg:
        raise OutOfRangeError(f"gross_kg = {gross_kg} must be at least empty_kg = {empty_kg}")
    return gross_kg - empty_kg


def left_by_size(
    wire: Wire, outside_m: float, hub_m: float, width_m: float
) -> tuple[float, float, float]:
    """Return the wire on a spool from the size of the winding: low, typical, high [kg].

    Source: volume of the ring × share filled × density of the wire as a rod of its diameter.

    Args:
        wire: The wire [-].
        outside_m: Outside diameter of the winding [m].
        hub_m: Diameter of the barrel it is wound on, above zero, at most the outside [m].
        width_m: Width between the flanges, above zero [m].

    Raises:
        OutOfRangeError: If a size is out of range.
    """
    require_positive(outside_m=outside_m, hub_m=hub_m, width_m=width_m)
    if outside_m < hub_m:
        raise OutOfRangeError(f"outside_m = {outside_m} must be at least hub_m = {hub_m}")
    ring = pi / 4 * (outside_m**2 - hub_m**2) * width_m
    density = wire.linear_mass_kg_m / (pi / 4 * wire.diameter_m**2)
    low, typical, high = (ring * share * density for share in PACKING)
    return low, typical, high


def left_by_full(full_kg: float, full_outside_m: float, outside_m: float, hub_m: float) -> float:
    """Return the wire on a spool from its size now and when full; needs no packing share [kg].

    Source: the area of the ring grows with the mass, if the winding is even.

    Args:
        full_kg: Wire on it when full, above zero [kg].
        full_outside_m: Outside diameter of the winding when full [m].
        outside_m: Outside diameter now [m].
        hub_m: Diameter of the barrel, above zero [m].

    Raises:
        OutOfRangeError: If the sizes are not in order.
    """
    require_positive(full_kg=full_kg, hub_m=hub_m)
    if not hub_m <= outside_m <= full_outside_m or full_outside_m == hub_m:
        raise OutOfRangeError(
            f"hub_m = {hub_m}, outside_m = {outside_m}, full_outside_m = {full_outside_m} "
            "must grow in this order"
        )
    return full_kg * (outside_m**2 - hub_m**2) / (full_outside_m**2 - hub_m**2)


def wire_length(wire: Wire, mass_kg: float) -> float:
    """Return the length of a mass of wire [m].

    Args:
        wire: The wire [-].
        mass_kg: Mass, zero or more [kg].
    """
    return mass_kg / wire.linear_mass_kg_m


def weld_length(mass_kg: float, efficiency: float, metal_kg_m: float) -> float:
    """Return the length of weld a mass of wire lays [m].

    Source: conservation of mass.

    Args:
        mass_kg: Wire, zero or more [kg].
        efficiency: Laid metal over wire, above 0 to 1 [-].
        metal_kg_m: Weld metal by length, above zero [kg/m].

    Raises:
        OutOfRangeError: If the efficiency or the weld metal is not above zero.
    """
    require_positive(efficiency=efficiency, metal_kg_m=metal_kg_m)
    return mass_kg * efficiency / metal_kg_m
