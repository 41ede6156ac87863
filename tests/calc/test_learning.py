"""How coupons move print: against NumPy, against drawn shops, against tables of Student's t."""

from __future__ import annotations

import random
from math import pi, tan

import numpy as np
import pytest

from beadwright.coupons.learning import (
    FREEDOM,
    Learned,
    Prior,
    Shown,
    learn,
    quadratic,
)
from beadwright.coupons.student_t import t_quantile, t_within
from beadwright.errors import OutOfRangeError

PRIOR = Prior(0.10)
TWO = Prior(0.10, 0.05)


@pytest.mark.parametrize(
    ("chance", "freedom", "printed"),
    [
        # Machinery's Handbook and any table of Student's t, two-sided; from memory.
        (0.90, 1, 6.314), (0.90, 4, 2.132), (0.90, 10, 1.812), (0.90, 30, 1.697),
        (0.95, 5, 2.571), (0.95, 12, 2.179), (0.95, 120, 1.980),
        (0.99, 3, 5.841), (0.99, 20, 2.845),
        (0.50, 1, 1.000), (0.50, 4, 0.741), (0.50, 10, 0.700), (0.50, 30, 0.683),
    ],
)  # fmt: skip
def test_students_t_is_the_printed_one(chance: float, freedom: int, printed: float) -> None:
    assert t_quantile(chance, freedom) == pytest.approx(printed, abs=6e-4)
    assert t_within(printed, freedom) == pytest.approx(chance, abs=2e-4)


@pytest.mark.parametrize("chance", [0.01, 0.3, 0.9999])
def test_of_one_degree_of_freedom_the_quantile_is_a_tangent(chance: float) -> None:
    """Student's t of one degree is Cauchy's distribution: tan(π/2 × chance)."""
    assert t_quantile(chance, 1) == pytest.approx(tan(pi / 2 * chance), rel=1e-6)


def test_nothing_is_within_no_distance() -> None:
    assert t_within(0.0, 4) == 0.0


@pytest.mark.parametrize(("t", "freedom"), [(-0.1, 4), (1.0, 0)])
def test_students_t_refuses_what_has_no_meaning(t: float, freedom: int) -> None:
    with pytest.raises(OutOfRangeError):
        t_within(t, freedom)


@pytest.mark.parametrize("chance", [0.0, 0.99995])
def test_a_quantile_outside_its_range_is_refused(chance: float) -> None:
    with pytest.raises(OutOfRangeError):
        t_quantile(chance, 4)


def drawn(count: int, seed: int) -> list[Shown]:
    chance = random.Random(seed)
    points: list[Shown] = []
    for number in range(count):
        arc = chance.uniform(0.5, 0.95)
        points.append(Shown(str(number), chance.gauss(0.05, 0.06), (arc, 1 - arc)))
    return points


@pytest.mark.parametrize("count", [1, 2, 5, 40])
def test_the_regression_is_numpys(count: int) -> None:
    """The textbook form, in matrices: posterior of normal coefficients, inverse-gamma scatter."""
    points = [Shown(p.key, p.y, p.x, counted=True) for p in drawn(count, count)]
    found = learn(points, TWO)
    x = np.array([p.x for p in points])
    y = np.array([p.y for p in points])
    scatter = np.sqrt(2.0) * 0.10
    cov = np.array([[0.10**2 + 0.05**2, 0.10**2], [0.10**2, 0.10**2 + 0.05**2]]) / scatter**2
    precision = np.linalg.inv(cov) + x.T @ x
    mean = np.linalg.solve(precision, x.T @ y)
    squares = FREEDOM * scatter**2 + y @ y - mean @ precision @ mean
    assert found.mean == pytest.approx(tuple(mean), rel=1e-9)
    assert found.scatter == pytest.approx(np.sqrt(squares / (FREEDOM + count)), rel=1e-9)
    at = np.array([0.7, 0.3])
    half = np.sqrt(at @ np.linalg.inv(precision) @ at) * found.scatter
    assert found.half_band((0.7, 0.3), 0.90) == pytest.approx(
        t_quantile(0.90, FREEDOM + count) * half, rel=1e-9
    )
    assert quadratic(found.spread, (0.7, 0.3)) == pytest.approx(
        float(at @ np.linalg.inv(precision) @ at), rel=1e-9
    )


def test_one_coupon_nudges_and_ten_decide() -> None:
    one = learn([Shown("1", 0.09)], PRIOR)
    ten = learn([Shown(str(n), 0.09) for n in range(10)], PRIOR)
    assert one.share() == pytest.approx(0.03)  # a third of the way
    assert ten.share() == pytest.approx(0.075)  # five sixths
    assert ten.half_band() < one.half_band() / 2


def test_without_coupons_print_stands() -> None:
    none = learn([], PRIOR)
    assert none.share() == 0.0
    assert none.counted == ()
    assert none.half_band() > 1.6 * 0.10  # no tighter than print's own band


def test_narrowed_is_what_one_more_coupon_takes_away() -> None:
    points, at, seen = drawn(6, 3), (0.6, 0.4), (0.9, 0.1)
    before = learn(points, TWO)
    after = learn([*points, Shown("x", before.share(seen), seen)], TWO)
    took = 1 - quadratic(after.spread, at) / quadratic(before.spread, at)
    assert before.narrowed(at, seen) == pytest.approx(took, rel=1e-9)


def covered(count: int, scatter: float, shops: int, seed: int) -> float:
    """Share of drawn shops whose true number stands in the band their coupons give."""
    chance = random.Random(seed)
    hits = 0
    for _ in range(shops):
        true = chance.gauss(0.0, 0.10)
        points = [Shown(str(n), true + chance.gauss(0.0, scatter)) for n in range(count)]
        found = learn(points, PRIOR)
        hits += abs(found.share() - true) <= found.half_band()
    return hits / shops


@pytest.mark.parametrize("scatter", [0.03, 0.07, 0.14, 0.25])
@pytest.mark.parametrize("count", [1, 3, 10])
def test_the_band_holds_nine_drawn_shops_in_ten(count: int, scatter: float) -> None:
    """Scatter from a fifth of what is assumed to nearly twice as much."""
    assert covered(count, scatter, 1500, seed=count) >= 0.90


def named(points: list[Shown]) -> set[str]:
    return {key for key, _ in learn(points, PRIOR).odd}


def test_a_coupon_far_off_is_named_and_the_others_stand() -> None:
    chance = random.Random(8)
    found, wrongly = 0, 0
    for _ in range(300):
        true = chance.gauss(0.0, 0.10)
        points = [Shown(str(n), true + chance.gauss(0.0, 0.06)) for n in range(10)]
        points[4] = Shown("4", true + 0.60)  # ten scatters off
        odd = named(points)
        found += "4" in odd
        wrongly += len(odd - {"4"})
    assert found >= 295
    assert wrongly <= 0.01 * 300 * 9


def test_sound_coupons_are_seldom_named() -> None:
    chance = random.Random(9)
    wrongly = sum(
        len(named([Shown(str(n), chance.gauss(0.05, 0.12)) for n in range(12)])) for _ in range(400)
    )
    assert wrongly <= 0.01 * 400 * 12


def test_two_far_off_do_not_hide_each_other() -> None:
    points = [Shown(str(n), 0.01 * (n % 3)) for n in range(10)]
    points += [Shown("a", 0.9), Shown("b", 0.95)]
    assert named(points) == {"a", "b"}


def test_an_odd_coupon_counts_where_the_welder_wants_it() -> None:
    points = [Shown(str(n), 0.01 * (n % 3)) for n in range(10)]
    asked = learn([*points, Shown("a", 0.9, counted=True)], PRIOR)
    aside = learn([*points, Shown("a", 0.9)], PRIOR)
    assert "a" in asked.counted
    assert "a" not in aside.counted
    assert [key for key, _ in aside.odd] == ["a"]
    assert asked.share() > aside.share()


def test_at_most_a_third_is_set_aside() -> None:
    points = [Shown(str(n), 0.0) for n in range(6)]
    points += [Shown(f"far{n}", 3.0 + n) for n in range(5)]
    found: Learned = learn(points, PRIOR)
    assert len(found.odd) <= len(points) // 3


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), 1e9, 1e6, -1.02e6])
def test_what_is_no_share_is_refused(bad: float) -> None:
    with pytest.raises(OutOfRangeError, match="finite"):
        learn([Shown("1", bad)], PRIOR)


def test_a_prior_without_spread_is_refused() -> None:
    with pytest.raises(OutOfRangeError):
        Prior(0.0).spread()
