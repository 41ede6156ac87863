"""The instantaneous-center method: strength of a weld group loaded in its plane.

The group turns as one about a center; each element moves square to its radius and resists by a
measured curve, until the first element breaks. Where the three sums of statics agree with
the load, that is the strength.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import acos, degrees, hypot, sin

from beadwright.errors import OutOfRangeError
from beadwright.strength.elastic_line import GroupLoad, LineForce
from beadwright.strength.weld_group import Place, WeldGroup
from beadwright.strength.weld_line import LineProperties, line_properties

_MOST_TURNS = 400
"""Most steps of the search; about ten are enough for a usual load [-]."""

_CLOSE = 1e-7
"""Change of the motion, as a share, at which the search ends [-]."""

_STEP, _SHORT_STEP = 1.2, 0.5
"""Share of each step that is taken, and the share if that does not settle [-]."""


@dataclass(frozen=True, slots=True)
class CenterStrength:
    """Strength of a group under one load, and how it moves at that strength.

    Attributes:
        factor: Load at strength over the load given [-].
        center: The instantaneous center from the group's origin, or None if it only slides [m].
        forces: Force per length along the weld at strength [N/m].
        first: Index among ``forces`` of the element that breaks first.
    """

    factor: float
    center: tuple[float, float] | None
    forces: tuple[LineForce, ...]
    first: int


def peak_deformation(angle_deg: float) -> float:
    """Return the deformation at greatest strength, over the leg [-].

    Source: AISC 360 J2.4 (2010; commentary in later editions): 0.209 (θ + 2)^-0.32.

    Args:
        angle_deg: Between force and weld, 0 to 90 [°].
    """
    return float(0.209 * (angle_deg + 2) ** -0.32)


def breaking_deformation(angle_deg: float) -> float:
    """Return the deformation at which an element breaks, over the leg [-].

    Source: AISC 360 J2.4: 1.087 (θ + 6)^-0.65, at most 0.17.

    Args:
        angle_deg: Between force and weld, 0 to 90 [°].
    """
    return min(float(1.087 * (angle_deg + 6) ** -0.65), 0.17)


def element_strength(angle_deg: float, share: float) -> float:
    """Return an element's force over 0.60 FEXX times its throat area [-].

    Source: AISC 360 J2.4: (1 + 0.5 sin^1.5 θ) [p (1.9 - 0.9 p)]^0.3.

    Args:
        angle_deg: Between force and weld, 0 to 90 [°].
        share: Deformation over ``peak_deformation``, 0 to 2.1 [-].
    """
    rise = share * (1.9 - 0.9 * share)
    if rise <= 0:
        return 0.0
    return float((1 + 0.5 * sin(angle_deg * 0.017453292519943295) ** 1.5) * rise**0.3)


def _angle(place: Place, dx: float, dy: float, size: float) -> float:
    cosine = abs(dx * place.along_x + dy * place.along_y) / size
    return degrees(acos(min(cosine, 1.0)))


@dataclass(slots=True)
class _Turning:
    """A group turning: its samples about the centroid, and lengths in units of its own size."""

    places: tuple[tuple[float, float, Place], ...]
    ends: tuple[tuple[float, float, Place], ...]

    def moved(self, motion: tuple[float, float, float]) -> tuple[float, int]:
        """Return the size of a motion at which the first element breaks, and which one it is."""
        u, v, w = motion
        least, first = float("inf"), 0
        for index, (x, y, place) in enumerate(self.ends):
            dx, dy = u - w * y, v + w * x
            size = hypot(dx, dy)
            if size > 1e-12:
                room = breaking_deformation(_angle(place, dx, dy, size)) / size
                if room < least:
                    least, first = room, index
        return least, first

    def stiffness(
        self, motion: tuple[float, float, float], reach: float
    ) -> tuple[float, float, float, float]:
        """Return the secant stiffness k and its sums kx, ky, k(x² + y²) over the group."""
        u, v, w = motion
        k = kx = ky = kr = 0.0
        for x, y, place in self.places:
            dx, dy = u - w * y, v + w * x
            size = hypot(dx, dy)
            if size < 1e-12:
                continue
            angle = _angle(place, dx, dy, size)
            share = size * reach / peak_deformation(angle)
            secant = element_strength(angle, share) / size * place.length_m
            k += secant
            kx += secant * x
            ky += secant * y
            kr += secant * (x * x + y * y)
        return k, kx, ky, kr


def center_strength(
    group: WeldGroup,
    load: GroupLoad,
    strength_n_m: float,
    properties: LineProperties | None = None,
) -> CenterStrength:
    """Return the strength of a group under a load in its plane.

    Source: AISC Manual part 8, instantaneous center of rotation; element curve of AISC 360 J2.4.
    Found by solving for the motion whose resisting forces have the ratio of the load.

    Args:
        group: The weld group [-].
        load: Load at the centroid, in the plane only, not nothing [N, N·m].
        strength_n_m: 0.60 FEXX times the throat: an element's strength along the weld [N/m].
        properties: The group's, if at hand [-].

    Raises:
        OutOfRangeError: If the load leaves the plane or there is none, or no center is found.
    """
    if not load.in_plane:
        raise OutOfRangeError("load leaves the plane of the weld group")
    p = properties or line_properties(group)
    radius = (p.j / p.length_m) ** 0.5
    size = hypot(load.px, load.py, load.mz / radius)
    if size == 0:
        raise OutOfRangeError("load is nothing")
    wanted = load.px / size, load.py / size, load.mz / radius / size
    turning = _Turning(
        tuple(((s.x - p.x) / radius, (s.y - p.y) / radius, s) for s in group.samples),
        tuple(((s.x - p.x) / radius, (s.y - p.y) / radius, s) for s in group.ends),
    )
    motion, total = _settle(turning, wanted)
    reach, first = turning.moved(motion)
    u, v, w = motion
    forces = tuple(
        _force(place, u - w * y, v + w * x, reach, strength_n_m) for x, y, place in turning.ends
    )
    slides = abs(w) < 1e-6 * hypot(u, v)
    center = None if slides else (p.x - v / w * radius, p.y + u / w * radius)
    return CenterStrength(total * strength_n_m / size, center, forces, first)


def _force(place: Place, dx: float, dy: float, reach: float, strength: float) -> LineForce:
    size = hypot(dx, dy)
    if size < 1e-12:
        return LineForce(place, 0.0, 0.0, 0.0)
    angle = _angle(place, dx, dy, size)
    force = strength * element_strength(angle, size * reach / peak_deformation(angle))
    return LineForce(place, force * dx / size, force * dy / size, 0.0)


def _settle(
    turning: _Turning, wanted: tuple[float, float, float]
) -> tuple[tuple[float, float, float], float]:
    """Return the motion that resists in the ratio of the load, and the size of its resistance.

    Step by step: each step takes the secant stiffness of the last motion and solves for the motion
    it gives under the load.
    """
    motion = wanted
    for turn in range(_MOST_TURNS):
        step = _STEP if turn < _MOST_TURNS // 4 else _SHORT_STEP
        reach, _first = turning.moved(motion)
        k, kx, ky, kr = turning.stiffness(motion, reach)
        next_motion = _solve(k, kx, ky, kr, wanted)
        scale = hypot(*next_motion)
        next_motion = next_motion[0] / scale, next_motion[1] / scale, next_motion[2] / scale
        change = max(abs(a - b) for a, b in zip(next_motion, motion, strict=True))
        if change < _CLOSE:
            return motion, _resistance(k, kx, ky, kr, motion, wanted)
        stepped = [m + step * (n - m) for n, m in zip(next_motion, motion, strict=True)]
        size = hypot(*stepped)
        motion = stepped[0] / size, stepped[1] / size, stepped[2] / size
    raise OutOfRangeError("load finds no instantaneous center in this weld group")


def _solve(
    k: float, kx: float, ky: float, kr: float, load: tuple[float, float, float]
) -> tuple[float, float, float]:
    """Solve for u, v, w: k u - ky w = X, k v + kx w = Y, -ky u + kx v + kr w = M."""
    x, y, m = load
    w = (m + (ky * x - kx * y) / k) / (kr - (kx * kx + ky * ky) / k)
    return (x + ky * w) / k, (y - kx * w) / k, w


def _resistance(
    k: float,
    kx: float,
    ky: float,
    kr: float,
    motion: tuple[float, float, float],
    wanted: tuple[float, float, float],
) -> float:
    u, v, w = motion
    resisting = k * u - ky * w, k * v + kx * w, -ky * u + kx * v + kr * w
    return sum(a * b for a, b in zip(resisting, wanted, strict=True))
