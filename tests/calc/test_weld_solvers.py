"""Drawn weld groups, a thousand of each kind, held against solvers written apart; seeds kept."""

from itertools import pairwise
from math import cos, hypot, pi, sin
from random import Random

import numpy as np
import pytest

from beadwright.strength.bracket_center import bracket_strength, turns_as_bracket
from beadwright.strength.elastic_line import GroupLoad, line_forces, load_at_centroid
from beadwright.strength.instantaneous_center import center_strength
from beadwright.strength.resistance_en import directional_use
from beadwright.strength.weld_group import SHAPES, WeldGroup, polyline_group, shaped_group
from beadwright.strength.weld_line import line_properties
from tests.calc import weld_solvers

CASES = 1000

SOME_OR_ALL = pytest.mark.parametrize(
    "cases",
    [
        pytest.param(100),
        pytest.param(CASES, marks=pytest.mark.long(reason="a center costs ten milliseconds twice")),
    ],
)
"""A tenth of the cases at every run, all of them in the long one."""


def drawn_group(rng: Random, *, wide: bool = True) -> WeldGroup:
    """A shape of some size, or a line of one's own with two to five bends."""
    while True:
        if rng.random() < 0.6:
            group = shaped_group(
                rng.choice(sorted(SHAPES)), rng.uniform(0.05, 0.5), rng.uniform(0.05, 0.5)
            )
        else:
            spots = [(rng.uniform(0, 0.4), rng.uniform(0, 0.4)) for _ in range(rng.randint(3, 6))]
            if any(hypot(b[0] - a[0], b[1] - a[1]) < 0.02 for a, b in pairwise(spots)):
                continue
            group = polyline_group(tuple(spots))
        p = line_properties(group)
        if not wide or p.ix * p.iy - p.ixy**2 > 1e-3 * p.j**2:
            return group


def about(group: WeldGroup, x: float, y: float) -> tuple[weld_solvers.Stretch, ...]:
    """The group's stretches, seen from a point."""
    return tuple(((a[0] - x, a[1] - y), (b[0] - x, b[1] - y)) for a, b in group.stretches)


def test_a_thousand_groups_by_the_elastic_method() -> None:
    rng = Random(19)
    for _ in range(CASES):
        group = drawn_group(rng)
        given = GroupLoad(*(rng.uniform(-1e5, 1e5) for _ in range(3)),
                          *(rng.uniform(-1e4, 1e4) for _ in range(3)))  # fmt: skip
        at = rng.uniform(-0.5, 0.5), rng.uniform(-0.5, 0.5), rng.uniform(-0.5, 0.5)
        force = np.array([given.px, given.py, given.pz])
        moment = np.array([given.mx, given.my, given.mz]) + np.cross(at, force)
        second = weld_solvers.elastic_forces(group.stretches, np.concatenate([force, moment]))
        p = line_properties(group)
        first = line_forces(group, load_at_centroid(p, given, at), p)
        ours = np.array([[f.fx, f.fy, f.fz] for f in first])
        assert ours == pytest.approx(second, rel=1e-6, abs=1e-6 * np.abs(second).max())


@SOME_OR_ALL
def test_groups_about_their_center_in_the_plane(cases: int) -> None:
    rng = Random(20)
    for _ in range(cases):
        group = drawn_group(rng, wide=False)
        p = line_properties(group)
        way, size = rng.uniform(0, 2 * pi), group.length_m / 4
        arm = rng.choice((-1, 1)) * rng.uniform(0.1, 2.0) * size
        first = center_strength(group, GroupLoad(cos(way), sin(way), mz=arm), 1.0, p)
        # Lengths in units of a quarter of the weld, so that shifts and turns weigh alike.
        unit = tuple(
            ((a[0] / size, a[1] / size), (b[0] / size, b[1] / size))
            for a, b in about(group, p.x, p.y)
        )
        load = np.array([cos(way), sin(way), 0, 0, 0, arm / size])
        second = weld_solvers.center_factor(unit, load, [0, 1, 5]) * size
        assert first.factor == pytest.approx(second, rel=2e-3)


@SOME_OR_ALL
def test_brackets_about_their_center_out_of_the_plane(cases: int) -> None:
    rng = Random(21)
    for _ in range(cases):
        depth, apart = rng.uniform(0.05, 0.5), rng.uniform(0.005, 0.5)
        along, pull = rng.choice(((1.0, 0.0), (0.8, 0.6), (0.5, -0.8), (0.0, 1.0)))
        out, up = rng.choice((-1, 1)) * rng.uniform(0.1, 2.0), rng.uniform(0.05, 0.5)
        # Two uprights and the load midway between them; lengths in units of their own.
        force, moment = np.array([0.0, along, pull]), np.array([up * pull - out * along, 0.0, 0.0])
        unit = tuple(((x, -0.5), (x, 0.5)) for x in (-apart / depth / 2, apart / depth / 2))
        second = weld_solvers.center_factor(unit, np.concatenate([force, moment]), [1, 2, 3])
        # The same leaning at some angle, and as large as drawn.
        turn = rng.uniform(0, 2 * pi)
        c, s = cos(turn), sin(turn)
        group = WeldGroup(
            "lines",
            tuple(
                ((depth * (c * x - s * y), depth * (s * x + c * y)),
                 (depth * (c * x - s * z), depth * (s * x + c * z)))
                for (x, y), (_, z) in unit
            ),
        )  # fmt: skip
        load = GroupLoad(
            px=-s * along, py=c * along, pz=pull, mx=c * moment[0] * depth, my=s * moment[0] * depth
        )
        assert turns_as_bracket(group, load, 2)
        first = bracket_strength(group, load, 1.0)
        assert first.factor == pytest.approx(second * depth, rel=2e-3)
        assert not turns_as_bracket(group, load, 1)


@SOME_OR_ALL
def test_how_far_the_elastic_method_is_from_the_center(cases: int) -> None:
    """The bounds that the method's text and the page tell: nine tenths to 2.6."""
    rng = Random(23)
    shares: list[float] = []
    for _ in range(cases):
        group = drawn_group(rng, wide=False)
        p = line_properties(group)
        way, size = rng.uniform(0, 2 * pi), group.length_m / 4
        arm = rng.choice((-1, 1)) * 10 ** rng.uniform(-2, 1) * size
        load = GroupLoad(cos(way), sin(way), mz=arm)
        elastic = 1 / max(force.total for force in line_forces(group, load, p))
        shares.append(center_strength(group, load, 1.0, p).factor / elastic)
    assert min(shares) > 0.88
    assert max(shares) < 2.65
    assert sorted(shares)[cases // 20] > 1  # nineteen of twenty are on the safe side


def test_a_thousand_throats_by_the_directional_method() -> None:
    rng = Random(22)
    for _ in range(CASES):
        force = [rng.uniform(-1e6, 1e6) * (rng.random() < 0.8) for _ in range(3)]
        throat, fu = rng.uniform(0.003, 0.02), rng.choice((360e6, 410e6, 470e6))
        beta = rng.choice((0.5, 0.8, 0.85, 0.9))
        along, across, pull = force
        first = directional_use(along, across, pull, throat, fu, beta)
        second = weld_solvers.throat_use(np.array(force), throat, fu, beta)
        assert first == pytest.approx(second, rel=1e-9, abs=1e-12)
