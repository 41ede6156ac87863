"""What coupons teach, against Bayes' rule summed over a grid: no closed form on that side.

Every pair of coefficients and every scatter of a grid is weighed by what was believed of it and by
how well it foretells the coupons; the weights alone give mean and band.
"""

from __future__ import annotations

import random
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from beadwright.coupons.learning import FREEDOM, Pair, Prior, Shown, learn

Grid = NDArray[np.floating[Any]]
LEVEL, APART = 0.10, 0.05
SCATTER = 2**0.5 * LEVEL
STEP = 0.005
"""Step of the grid."""


def coupons(count: int, seed: int, scatter: float) -> list[Shown]:
    chance = random.Random(seed)
    points: list[Shown] = []
    for number in range(count):
        arc = chance.uniform(0.4, 0.95)
        y = 0.06 * arc - 0.03 * (1 - arc) + chance.gauss(0.0, scatter)
        points.append(Shown(str(number), y, (arc, 1 - arc), counted=True))
    return points


def weighed(points: list[Shown]) -> tuple[Grid, Grid, Grid]:
    """Coefficients of the grid and the weight of each pair, the scatter summed out."""
    line = np.arange(-140, 141) * STEP
    first, second = np.meshgrid(line, line, indexing="ij")
    shared = LEVEL**2 / SCATTER**2
    own = APART**2 / SCATTER**2
    # What both share and what each has of its own add: their covariance, turned round by hand.
    size = (shared + own) ** 2 - shared**2
    believed = ((shared + own) * (first**2 + second**2) - 2 * shared * first * second) / size
    off: Grid = np.zeros(first.shape)
    for p in points:
        off += (p.y - p.x[0] * first - p.x[1] * second) ** 2
    scatters = [0.01 * 150 ** (step / 139) for step in range(140)]
    logs = [
        # Coefficients: two normals of this scatter; coupons: one each; scatter: inverse gamma of
        # its square, per step of its logarithm.
        -(2 + len(points) + FREEDOM) * np.log(s)
        - (believed + off + FREEDOM * SCATTER**2) / (2 * s**2)
        for s in scatters
    ]
    most = max(float(each.max()) for each in logs)
    weight: Grid = np.zeros(first.shape)
    for each in logs:
        weight += np.exp(each - most)
    return first, second, weight / weight.sum()


def within(weight: Grid, off: Grid, half: float) -> float:
    """The weight no further off than a half band; a cell on the edge counts for its part."""
    return float((weight * np.clip((half - np.abs(off)) / STEP + 0.5, 0, 1)).sum())


@pytest.mark.parametrize(("count", "scatter"), [(1, 0.14), (3, 0.05), (8, 0.2), (25, 0.08)])
def test_mean_and_band_are_those_of_bayes_rule(count: int, scatter: float) -> None:
    points = coupons(count, count, scatter)
    found = learn(points, Prior(LEVEL, APART))
    first, second, weight = weighed(points)
    assert found.mean[0] == pytest.approx(float((weight * first).sum()), abs=2e-4)
    assert found.mean[1] == pytest.approx(float((weight * second).sum()), abs=2e-4)
    mixes: tuple[Pair, ...] = ((1.0, 0.0), (0.7, 0.3), (0.3, 0.7))
    for at in mixes:
        share = at[0] * first + at[1] * second
        for chance in (0.80, 0.95):
            held = within(weight, share - found.share(at), found.half_band(at, chance))
            assert held == pytest.approx(chance, abs=0.004)


def test_the_grid_tells_a_wrong_band_from_a_right_one() -> None:
    points = coupons(3, 3, 0.05)
    found = learn(points, Prior(LEVEL, APART))
    first, second, weight = weighed(points)
    share = 0.7 * first + 0.3 * second
    for wrong in (0.9, 1.1):
        half = wrong * found.half_band((0.7, 0.3))
        assert abs(within(weight, share - found.share((0.7, 0.3)), half) - 0.95) > 0.012
