"""Second opinions on weld groups, in NumPy: solved in space with six unknowns, nothing of ours.

A weld is cut into many short pieces, each with a place and a way. A motion of the part, three
shifts and three turns about the origin, moves each piece; the piece resists along its move. What is
sought is the motion whose resistance is the load.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any, cast

import numpy as np
from numpy.polynomial.legendre import leggauss
from numpy.typing import NDArray

Array = NDArray[np.float64]
Stretch = tuple[tuple[float, float], tuple[float, float]]


def _solved(matrix: Array, right: Array) -> Array:
    found: Array = cast(Any, np.linalg).solve(matrix, right)
    return found


def size_of(vector: Array) -> float:
    """Its length."""
    return float(np.sqrt(vector @ vector))


class Pieces:
    """A weld in short pieces: places, ways along it, lengths, and its ends."""

    def __init__(self, stretches: tuple[Stretch, ...], panels: int = 20, nodes: int = 5) -> None:
        at, weight = leggauss(nodes)
        at = np.concatenate([(i + (1 + at) / 2) / panels for i in range(panels)])
        weight = np.tile(weight / 2 / panels, panels)
        a = np.array([s[0] for s in stretches], dtype=float)
        b = np.array([s[1] for s in stretches], dtype=float)
        length = np.sqrt(((b - a) ** 2).sum(axis=1))
        ways = (b - a) / length[:, None]
        self.xy = (a[:, None] + at[None, :, None] * (b - a)[:, None]).reshape(-1, 2)
        self.way = np.repeat(ways, len(at), axis=0)
        self.length = (length[:, None] * weight[None, :]).ravel()
        self.ends = np.stack([a, b], axis=1).reshape(-1, 2)
        self.end_way = np.repeat(ways, 2, axis=0)


def moves(xy: Array) -> Array:
    """How a place moves per unit of each of the six parts of a motion: shape (places, 3, 6)."""
    zero, one = np.zeros(len(xy)), np.ones(len(xy))
    x, y = xy[:, 0], xy[:, 1]
    # shift + turn × (x, y, 0)
    return np.stack(
        [
            np.stack([one, zero, zero, zero, zero, -y], axis=1),
            np.stack([zero, one, zero, zero, zero, x], axis=1),
            np.stack([zero, zero, one, y, -x, zero], axis=1),
        ],
        axis=1,
    )


def elastic_forces(stretches: tuple[Stretch, ...], load: Array) -> Array:
    """Force per length at each end of each stretch, elastic, load about the origin: (ends, 3)."""
    pieces = Pieces(stretches, panels=1)
    of = moves(pieces.xy)
    stiffness = np.einsum("p,pij,pik->jk", pieces.length, of, of)
    motion = _solved(stiffness, load)
    forces: Array = moves(pieces.ends) @ motion
    return forces


def _angles(moved: Array, way: Array) -> tuple[Array, Array]:
    size = np.sqrt((moved**2).sum(axis=1))
    along = np.abs(np.einsum("pi,pi->p", moved[:, :2], way))
    cosine = np.clip(along / np.maximum(size, 1e-300), 0, 1)
    return size, np.degrees(np.arccos(cosine))


def _resistance(pieces: Pieces, of: Array, of_ends: Array, soft: float, motion: Array) -> Array:
    """Six sums of what the pieces resist when the motion has grown until the first end breaks.

    ``soft`` blunts the curve of pieces that hardly move, in shares of the mean move.
    """
    size, angle = _angles(of_ends @ motion, pieces.end_way)
    breaking = np.minimum(1.087 * (angle + 6) ** -0.65, 0.17)
    reach = np.min(breaking / np.maximum(size, 1e-12))
    moved = of @ motion
    size, angle = _angles(moved, pieces.way)
    size = np.sqrt(size**2 + (soft * np.mean(size)) ** 2)
    share = reach * size / (0.209 * (angle + 2) ** -0.32)
    share = np.minimum(share, 2.0)  # only the blunt curve gets there
    curve = (share * (1.9 - 0.9 * share)) ** 0.3
    force = (1 + 0.5 * np.sin(np.radians(angle)) ** 1.5) * curve * pieces.length
    found: Array = np.einsum("p,pij,pi->j", force / size, of, moved)
    return found


def center_factor(stretches: tuple[Stretch, ...], load: Array, free: list[int]) -> float:
    """Load at strength over the load, 1 N/m of strength along the weld; by Newton's method.

    From the elastic motion, and from a blunt curve to the true one.

    Args:
        stretches: The weld, about a point near its middle.
        load: Px, Py, Pz, Mx, My, Mz about that point.
        free: Which of the six parts the load has or may have; the others are held.
    """
    pieces = Pieces(stretches)
    of, of_ends = moves(pieces.xy)[:, :, free], moves(pieces.ends)[:, :, free]
    wanted = load[free] / size_of(load[free])
    stiffness = np.einsum("p,pij,pik->jk", pieces.length, of, of)
    motion: Array = _solved(stiffness, wanted)
    motion = motion / size_of(motion)
    for blunt in (0.3, 0.1, 0.03, 0.01, 0.003, 0.001):
        motion, off = _newton(partial(_resistance, pieces, of, of_ends, blunt), motion, wanted)
    assert off < 1e-3, f"no center found for {stretches}, {load}: {off}"
    whole = np.zeros(6)
    whole[free] = motion
    found = _resistance(pieces, moves(pieces.xy), moves(pieces.ends), 0.0, whole)
    size = float(found @ load / size_of(load))
    # What is held must be held by no force either: the rest of the six sums is nothing.
    assert size_of(found - size * load / size_of(load)) < 5e-3 * size
    return size / size_of(load)


def _newton(
    resistance: Callable[[Array], Array], motion: Array, wanted: Array
) -> tuple[Array, float]:
    """Return the motion whose resistance runs as wanted, and how far off it still is."""

    def miss(m: Array) -> Array:
        r = resistance(m)
        found: Array = r / size_of(r) - wanted
        return found

    off = miss(motion)
    for _ in range(30):
        if size_of(off) < 1e-8:
            break
        steps = 1e-7 * np.eye(len(motion))
        slope = np.stack([(miss(motion + step) - off) / 1e-7 for step in steps], axis=1)
        move = np.linalg.lstsq(slope, -off, rcond=1e-6)[0]
        for damp in (1.0, 0.5, 0.25, 0.1, 0.03, 0.01):
            tried = motion + damp * move
            tried = tried / size_of(tried)
            there = miss(tried)
            if size_of(there) < size_of(off):
                motion, off = tried, there
                break
        else:
            break
    return motion, size_of(off)


def throat_use(force: Array, throat: float, fu: float, beta: float, gamma: float = 1.25) -> float:
    """Use of a fillet by EN 1993-1-8, 4.5.3.2, stress taken on its throat; the worse side's.

    Args:
        force: Along the weld, across it in the plate, square to the plate [N/m].
        throat: Throat [m].
        fu: Tensile strength [Pa].
        beta: Correlation factor.
        gamma: Partial factor.
    """
    traction = force / throat
    worst = 0.0
    for side in (-1.0, 1.0):
        square = np.array([0.0, side, 1.0]) / np.sqrt(2)
        normal = float(traction @ square)
        along = float(traction[0])
        rest = traction - normal * square
        across = float(np.sqrt(max(rest @ rest - along**2, 0.0)))
        combined = np.sqrt(normal**2 + 3 * (across**2 + along**2)) / (fu / (beta * gamma))
        worst = max(worst, float(combined), abs(normal) / (0.9 * fu / gamma))
    return worst
