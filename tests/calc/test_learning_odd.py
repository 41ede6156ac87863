"""Odd coupons named by what all the others foretell, each left out in turn and fitted anew."""

from __future__ import annotations

import random

import numpy as np
import pytest

from beadwright.coupons.learning import (
    FREEDOM,
    LOOK_PAST,
    MOST_ODD,
    ODD_CHANCE,
    Learned,
    Pair,
    Prior,
    Shown,
    learn,
)
from beadwright.coupons.student_t import t_quantile

TWO = Prior(0.10, 0.05)
ONE = Prior(0.10)


def drawn(count: int, seed: int, *, at: Pair = (0.05, -0.04), scatter: float = 0.05) -> list[Shown]:
    """Coupons of a shop whose arc and extension stand off print by unlike shares."""
    chance = random.Random(seed)
    points: list[Shown] = []
    for number in range(count):
        arc = chance.uniform(0.5, 0.95)
        x = arc, 1 - arc
        true = at[0] * x[0] + at[1] * x[1]
        points.append(Shown(str(number), true + chance.gauss(0.0, scatter), x))
    return points


def t_without(points: list[Shown], out: int, prior: Prior = TWO) -> float:
    """How far a coupon stands from what the others foretell: fitted without it, in matrices."""
    x = np.array([p.x for n, p in enumerate(points) if n != out])
    y = np.array([p.y for n, p in enumerate(points) if n != out])
    scatter = np.sqrt(2.0) * prior.level
    both, own = prior.level**2, prior.apart**2
    cov = np.array([[both + own, both], [both, both + own]]) / scatter**2
    precision = np.linalg.inv(cov) + x.T @ x
    mean = np.linalg.solve(precision, x.T @ y)
    freedom = FREEDOM + len(y)
    squares = FREEDOM * scatter**2 + y @ y - mean @ precision @ mean
    at = np.array(points[out].x)
    wide = 1 + at @ np.linalg.inv(precision) @ at
    return float((points[out].y - at @ mean) / np.sqrt(squares / freedom * wide))


def times_over(t: float, freedom: int) -> float:
    """A coupon's part of all squares over the part at which it would just be named."""
    limit = t_quantile(ODD_CHANCE, freedom)

    def share(each: float) -> float:
        return each**2 / (freedom + each**2)

    return share(t) / share(limit)


@pytest.mark.parametrize("seed", range(6))
def test_a_coupon_is_odd_by_the_t_of_the_fit_without_it(seed: int) -> None:
    count = 5 + 3 * seed
    points = drawn(count, seed)
    points[2] = Shown("2", points[2].y + 0.9, points[2].x)
    [(key, times)] = learn(points, TWO).odd
    freedom = FREEDOM + count - 1
    t = t_without(points, 2)
    assert key == "2"
    assert abs(t) > t_quantile(ODD_CHANCE, freedom)
    assert times == pytest.approx(times_over(t, freedom), rel=1e-9)


@pytest.mark.parametrize("seed", range(4))
def test_the_limit_is_where_the_t_is(seed: int) -> None:
    """A hair over it a coupon is named, a hair under it counts: found by halving."""
    points = drawn(8, seed)
    limit = t_quantile(ODD_CHANCE, FREEDOM + 7)
    low, high = 0.0, 5.0
    for _ in range(60):
        middle = (low + high) / 2
        points[0] = Shown("0", middle, points[0].x)
        if abs(t_without(points, 0)) > limit and middle > 0.1:
            high = middle
        else:
            low = middle
    for y, named in ((high * (1 + 1e-6), True), (low * (1 - 1e-6), False)):
        points[0] = Shown("0", y, points[0].x)
        assert ("0" in {key for key, _ in learn(points, TWO).odd}) is named


def alike(count: int, *odd: float) -> Learned:
    points = [Shown(str(n), 0.01 * (n % 3)) for n in range(count)]
    return learn([*points, *(Shown(f"odd{n}", y) for n, y in enumerate(odd))], ONE)


def test_three_far_off_are_found_though_two_hide_behind_the_third() -> None:
    """Two may be taken out on trial before one has to be sure."""
    assert LOOK_PAST == 2
    assert {key for key, _ in alike(14, 0.9, 0.92, 0.94).odd} == {"odd0", "odd1", "odd2"}


def test_no_more_than_a_third_is_set_aside() -> None:
    assert MOST_ODD == 3
    for odd in range(1, 7):
        found = alike(9, *(3.0 + 7.0 * n for n in range(odd)))
        assert len(found.odd) <= max(1, (9 + odd) // 3)


def test_no_more_than_a_third_is_set_aside_however_many_go_at_a_time() -> None:
    """Eight crowds, each five times as far off as the last: a tenth of the sure goes at once."""
    points = [Shown(str(n), 0.01 * (n % 3)) for n in range(640)]
    points += [Shown(f"{far}-{n}", 5.0**far * (-1) ** n) for far in range(8) for n in range(45)]
    assert len(learn(points, ONE).odd) == 1000 // MOST_ODD


def test_many_far_off_among_hundreds_are_all_named_and_nearly_none_besides() -> None:
    chance = random.Random(3)
    points = [Shown(str(n), chance.gauss(0.04, 0.05)) for n in range(400)]
    points += [Shown(f"odd{n}", chance.uniform(0.6, 1.4)) for n in range(60)]
    named = {key for key, _ in learn(points, ONE).odd}
    assert {f"odd{n}" for n in range(60)} <= named
    assert len(named) <= 60 + 4


def test_both_coefficients_count_in_a_share_and_its_band() -> None:
    found = learn(drawn(12, 5), TWO)
    first, second = found.mean
    assert first != pytest.approx(second)
    assert found.share((0.7, 0.3)) == pytest.approx(0.7 * first + 0.3 * second)
    assert found.share() == first
    assert found.half_band() == pytest.approx(
        t_quantile(0.95, FREEDOM + 12) * found.scatter * found.spread[0] ** 0.5
    )


def test_a_prior_of_one_coefficient_has_no_second() -> None:
    """Level² over the scatter², 2 × level²: a half; what both share is none of a lone one."""
    assert ONE.spread() == pytest.approx((0.5, 0.0, 0.5))
    assert TWO.spread() == pytest.approx((0.625, 0.5, 0.625))


@pytest.mark.parametrize("scatter", [0.05, 0.14])
@pytest.mark.parametrize("count", [1, 4, 12])
def test_the_band_of_a_mix_holds_nine_drawn_shops_in_ten(count: int, scatter: float) -> None:
    """Arc and extension each stand off print by themselves, half as far as what they share."""
    chance, hits, shops = random.Random(count), 0, 1500
    for _ in range(shops):
        shared = chance.gauss(0.0, 0.10)
        own = shared + chance.gauss(0.0, 0.05), shared + chance.gauss(0.0, 0.05)
        points = drawn(count, chance.randrange(10**6), at=own, scatter=scatter)
        found, at = learn(points, TWO), (0.7, 0.3)
        true = own[0] * at[0] + own[1] * at[1]
        hits += abs(found.share(at) - true) <= found.half_band(at)
    assert hits / shops >= 0.90


@pytest.mark.parametrize("count", [1, 2, 5, 10])
def test_over_thousands_of_shops_it_is_nearer_than_print_and_than_the_plain_mean(
    count: int,
) -> None:
    """What shrinkage is for: the mean squared error is below that of either alone."""
    chance = random.Random(count)
    learned = printed = plain = 0.0
    for _ in range(2000):
        true = chance.gauss(0.0, 0.10)
        seen = [true + chance.gauss(0.0, 0.14) for _ in range(count)]
        points = [Shown(str(n), y) for n, y in enumerate(seen)]
        learned += (learn(points, ONE).share() - true) ** 2
        printed += true**2
        plain += (sum(seen) / count - true) ** 2
    assert learned < printed
    assert learned < plain
    # By theory, 1 / (1 + n / 2) of print's own; setting sound coupons aside costs a little.
    assert learned / printed == pytest.approx(1 / (1 + count / 2), rel=0.12)
