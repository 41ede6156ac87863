"""Fits the burn-off constants to the published points; shows how far the points lie from the fit.

The power balance is linear in φ and r, so least squares on the relative error of the feed has
a closed form. The fitted numbers stand in ``burnoff.CONSTANTS``; a test refits and compares.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from beadwright.measures import INCH_M
from beadwright.process.burnoff import (
    CONSTANTS,
    current_from_feed,
    feed_from_current,
)
from beadwright.process.burnoff_points import POINTS, Point
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import Wire, wire_of

_SHORT_TIP_TO_WORK_IN = 0.375
_OPEN_TIP_TO_WORK_IN = 0.75
_SHORT_ARC_M = 0.002
_OPEN_ARC_M = 0.004
"""Arc length taken off the tip-to-work: 4 mm in an open arc, 2 mm in short circuit."""


@dataclass(frozen=True, slots=True)
class Fit:
    """What a fit found.

    Attributes:
        phi_v: Heating voltage at the tip [V].
        r_ohm_m: Mean resistivity of the extension [Ω·m].
        deviation: Root mean square of the relative error of the feed [-].
        errors: Relative error of the feed, point by point [-].
    """

    phi_v: float
    r_ohm_m: float
    deviation: float
    errors: tuple[float, ...]


def fitted_points(kind: Kind, size: str) -> tuple[Point, ...]:
    """Return the points a fit of this kind and size uses."""
    return tuple(p for p in POINTS if p.kind == kind and p.size == size and p.fitted)


def extension_m(point: Point) -> float:
    """Return the electrode extension of a point, assuming tip-to-work where none is printed [m]."""
    short = point.transfer == "short"
    stick = point.tip_to_work_in or (_SHORT_TIP_TO_WORK_IN if short else _OPEN_TIP_TO_WORK_IN)
    return stick * INCH_M - (_SHORT_ARC_M if short else _OPEN_ARC_M)


def _terms(point: Point, wire: Wire) -> tuple[float, float]:
    """Shares of the melting power for each volt of φ and for each Ω·m of r."""
    feed = point.feed_in_min * INCH_M / 60
    power = wire.linear_mass_kg_m * feed * wire.material.drop_enthalpy_j_kg
    extension = extension_m(point)
    return (
        point.current_a / power,
        point.current_a**2 * extension / wire.conducting_area_m2 / power,
    )


def relative_errors(
    points: Sequence[Point], wire: Wire, phi_v: float, r_ohm_m: float
) -> tuple[float, ...]:
    """Return the calculated feed over the printed feed, less one, for each point [-]."""
    pairs = (_terms(point, wire) for point in points)
    return tuple(a * phi_v + b * r_ohm_m - 1 for a, b in pairs)


def fit(kind: Kind, size: str) -> Fit:
    """Return the φ and r with the least relative error for the points of a wire kind and size.

    Source: ``burnoff_points``.

    Args:
        kind: Solid, metal-cored or flux-cored [-].
        size: Inch name of the diameter [-].

    Raises:
        ZeroDivisionError: If the points do not span two different currents.
    """
    wire = wire_of(KINDS[kind].representative, size)
    points = fitted_points(kind, size)
    terms = [_terms(point, wire) for point in points]
    aa = sum(a * a for a, _ in terms)
    ab = sum(a * b for a, b in terms)
    bb = sum(b * b for _, b in terms)
    ya = sum(a for a, _ in terms)
    yb = sum(b for _, b in terms)
    determinant = aa * bb - ab * ab
    phi = (ya * bb - yb * ab) / determinant
    r = (yb * aa - ya * ab) / determinant
    errors = relative_errors(points, wire, phi, r)
    return Fit(phi, r, sqrt(sum(e * e for e in errors) / len(errors)), errors)


@dataclass(frozen=True, slots=True)
class Shown:
    """A printed point beside what the power balance gives.

    Attributes:
        point: As printed.
        extension_m: Its extension, assumed where no tip-to-work is printed [m].
        feed_m_s: Feed as printed [m/s].
        predicted_m_s: Feed the balance gives at its current [m/s].
        low_m_s: Low end of the band about that [m/s].
        high_m_s: High end [m/s].
        predicted_a: Current the balance gives at its feed [A].
    """

    point: Point
    extension_m: float
    feed_m_s: float
    predicted_m_s: float
    low_m_s: float
    high_m_s: float
    predicted_a: float

    @property
    def error(self) -> float:
        """Calculated feed over the printed feed, less one [-]."""
        return self.predicted_m_s / self.feed_m_s - 1

    @property
    def inside(self) -> bool:
        """True if that error is no more than the band."""
        return abs(self.error) <= CONSTANTS[self.point.kind, self.point.size].band


def shown_points(kind: Kind, size: str) -> tuple[Shown, ...]:
    """Return the fitted points of a wire kind and size, each with its prediction and band.

    Source: ``burnoff_points``; constants ``burnoff.CONSTANTS``.

    Args:
        kind: Solid, metal-cored or flux-cored [-].
        size: Inch name of the diameter [-].
    """
    wire, band = wire_of(KINDS[kind].representative, size), CONSTANTS[kind, size].band
    shown: list[Shown] = []
    for point in fitted_points(kind, size):
        extension, feed = extension_m(point), point.feed_in_min * INCH_M / 60
        predicted = feed_from_current(wire, point.current_a, extension)
        current = current_from_feed(wire, feed, extension)
        low, high = predicted / (1 + band), predicted / (1 - band)
        shown.append(Shown(point, extension, feed, predicted, low, high, current))
    return tuple(shown)


def share_inside(kind: Kind, size: str) -> float | None:
    """Return the share of the points of a kind and size inside the band; None without points [-].

    Args:
        kind: Solid, metal-cored or flux-cored [-].
        size: Inch name of the diameter [-].
    """
    points = shown_points(kind, size)
    return sum(shown.inside for shown in points) / len(points) if points else None
