"""Burn-off: wire feed to current and back, from the power balance at the wire tip.

    ρ·A · v · H  =  I·φ  +  I² · r · L / A_c

What the wire takes up to melt (linear mass ρA, feed v, enthalpy H of the molten drop) equals
what the arc gives the tip (I·φ) plus what the current gives the extension L it flows through
(resistivity r over the section A_c that carries it). φ and r are fitted by wire kind and
diameter to published points (``burnoff_points``); H scales both alike.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt
from types import MappingProxyType

from beadwright.errors import UnknownEntryError, require_positive
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import Wire


@dataclass(frozen=True, slots=True)
class BurnOff:
    """Fitted constants for one wire kind and diameter.

    Attributes:
        phi_v: Heating voltage at the tip [V].
        r_ohm_m: Mean resistivity of the hot extension [Ω·m].
        band: Half-band of the feed at a given current, as a share [-].
        points: Published points behind it; 0 where interpolated or carried over.
    """

    phi_v: float
    r_ohm_m: float
    band: float
    points: int


CONSTANTS: Mapping[tuple[Kind, str], BurnOff] = MappingProxyType(
    {
        ("solid", "0.023in"): BurnOff(3.864, 1.817e-7, 0.13, 6),
        ("solid", "0.030in"): BurnOff(3.809, 3.126e-7, 0.13, 10),
        ("solid", "0.035in"): BurnOff(3.466, 4.011e-7, 0.20, 29),
        ("solid", "0.040in"): BurnOff(3.829, 3.733e-7, 0.23, 0),
        ("solid", "0.045in"): BurnOff(4.192, 3.454e-7, 0.19, 18),
        ("solid", "0.052in"): BurnOff(4.015, 4.629e-7, 0.15, 3),
        ("solid", "1/16in"): BurnOff(3.663, 5.740e-7, 0.13, 9),
        ("metal-cored", "0.035in"): BurnOff(3.351, 5.571e-7, 0.20, 0),
        ("metal-cored", "0.040in"): BurnOff(3.351, 5.571e-7, 0.20, 0),
        ("metal-cored", "0.045in"): BurnOff(3.351, 5.571e-7, 0.12, 3),
        ("metal-cored", "0.052in"): BurnOff(2.916, 6.183e-7, 0.15, 0),
        ("metal-cored", "1/16in"): BurnOff(2.263, 7.102e-7, 0.12, 4),
        ("flux-cored", "0.035in"): BurnOff(3.698, 3.708e-7, 0.15, 4),
        ("flux-cored", "0.045in"): BurnOff(3.387, 5.339e-7, 0.15, 5),
        ("flux-cored", "0.052in"): BurnOff(3.551, 5.424e-7, 0.15, 5),
        ("flux-cored", "1/16in"): BurnOff(4.588, 4.470e-7, 0.15, 5),
    }
)
"""Burn-off constants by wire kind and size: φ [V], r [Ω·m], band, points.

Source: least squares through ``burnoff_points`` (``burnoff_fit.fit``). Solid 0.040 in is
interpolated by diameter between 0.035 and 0.045 in, metal-cored 0.052 in between 0.045 in and
1/16 in, and metal-cored 0.035 and 0.040 in carried over from 0.045 in, each with a wider band: no
published points were found. Metal-cored wire is fitted to its spray rows, which are what is
compared in practice; its short-arc rows then stand 6 to 9 % off, inside the band. Solid 0.040 in
stands in the ranges of feed that a machine's manual prints from 80 to 160 A, and 3 % under its
range at 180 A. The band is the least whole per cent that holds nine printed points in ten, those of
metal-cored wire's short-arc rows too, but no tighter than 13 % for solid wire, 12 % for metal-cored
(by so much the sheet of 1/16 in disagrees with itself), and 15 % for flux-cored wire, whose points
are remembered and print no tip-to-work, and where only three points stand.
"""


def constants_of(wire: Wire) -> BurnOff:
    """Return the constants of a wire: fitted to print, moved by the shop's own coupons.

    Args:
        wire: The wire [-].

    Raises:
        UnknownEntryError: If that kind and size has none.
    """
    found = CONSTANTS.get((wire.kind, wire.size))
    if found is None:
        raise UnknownEntryError(f"no burn-off constants for {wire.kind} {wire.size}")
    own = wire.own
    if own is None or own.phi is None or own.r is None or own.band is None:
        return found
    return BurnOff(found.phi_v * own.phi, found.r_ohm_m * own.r, own.band, found.points)


def feed_from_current(wire: Wire, current_a: float, extension_m: float) -> float:
    """Return the wire feed that a current melts [m/s].

    Source: power balance above; constants fitted, see ``CONSTANTS``.

    Valid for: the fitted points' range, see ``burnoff_points``.

    Args:
        wire: The wire [-].
        current_a: Mean current, DC electrode positive, above zero [A].
        extension_m: Electrode extension (tip-to-work less arc length), above zero [m].

    Raises:
        OutOfRangeError: If current or extension is not above zero.
    """
    require_positive(current_a=current_a, extension_m=extension_m)
    fit = constants_of(wire)
    anode = current_a * fit.phi_v
    resistance = current_a**2 * fit.r_ohm_m * extension_m / wire.conducting_area_m2
    return (anode + resistance) / (wire.linear_mass_kg_m * wire.material.drop_enthalpy_j_kg)


def current_from_feed(wire: Wire, feed_m_s: float, extension_m: float) -> float:
    """Return the current that melts a wire feed [A]; the inverse of ``feed_from_current``.

    Source: power balance above, solved for current (a quadratic with one positive root).

    Args:
        wire: The wire [-].
        feed_m_s: Wire feed, above zero [m/s].
        extension_m: Electrode extension, above zero [m].

    Raises:
        OutOfRangeError: If feed or extension is not above zero.
    """
    require_positive(feed_m_s=feed_m_s, extension_m=extension_m)
    fit = constants_of(wire)
    power = wire.linear_mass_kg_m * feed_m_s * wire.material.drop_enthalpy_j_kg
    resistance = fit.r_ohm_m * extension_m / wire.conducting_area_m2
    # This form of the root loses no digits when the extension's share is small.
    return 2 * power / (fit.phi_v + sqrt(fit.phi_v**2 + 4 * resistance * power))


def extension_from_feed(wire: Wire, feed_m_s: float, current_a: float) -> float:
    """Return the extension at which a feed draws a current; below zero if none does [m].

    Source: power balance above, solved for the extension.

    Args:
        wire: The wire [-].
        feed_m_s: Wire feed, above zero [m/s].
        current_a: Mean current, above zero [A].

    Raises:
        OutOfRangeError: If feed or current is not above zero.
    """
    require_positive(feed_m_s=feed_m_s, current_a=current_a)
    fit = constants_of(wire)
    melting = wire.linear_mass_kg_m * feed_m_s * wire.material.drop_enthalpy_j_kg
    left = melting - current_a * fit.phi_v
    return left * wire.conducting_area_m2 / (current_a**2 * fit.r_ohm_m)
