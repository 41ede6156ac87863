"""The odds in words, and whether a figure known would change them, worked by hand."""

from math import sqrt
from statistics import NormalDist

import pytest

from beadwright.money.chance import Chance, ChanceState
from beadwright.money.odds import odds_if_known, odds_phrase, settles, settling, word_of
from beadwright.money.swings import Lever, Part, Swing, swings
from beadwright.phrases import Phrase
from tests.calc.plain_way import ten_against_eight
from tests.told import in_words


def lever(part: Part, low: float, high: float) -> Lever:
    name = Phrase("x")
    return Lever("x", name, ((part, "wire_kg"),), low, high, "count", 1.0, True, name)


@pytest.mark.parametrize(
    ("pays", "word", "said"),
    [
        (1.0, "pays", "Pays: over 99 chances in 100"),
        (0.996, "pays", "Pays: over 99 chances in 100"),
        (0.99, "pays", "Pays: about 99 chances in 100"),
        (0.96, "pays", "Pays: about 96 chances in 100"),
        (0.90, "pays", "Pays: about 90 chances in 100"),
        (0.8975, "pays", "Pays: about 90 chances in 100"),  # 359 of 400: the word of the figure
        (0.89, "probably pays", "Probably pays: 89 in 100"),
        (0.67, "probably pays", "Probably pays: 67 in 100"),
        (0.66, "even", "Even: 66 in 100 that it pays"),
        (0.50, "even", "Even: 50 in 100 that it pays"),
        (0.34, "even", "Even: 34 in 100 that it pays"),
        (0.33, "probably does not pay", "Probably does not pay: 33 in 100 that it does"),
        (0.11, "probably does not pay", "Probably does not pay: 11 in 100 that it does"),
        (0.1025, "does not pay", "Does not pay: 10 in 100 that it does"),
        (0.10, "does not pay", "Does not pay: 10 in 100 that it does"),
        (0.09, "does not pay", "Does not pay: 9 in 100 that it does"),
        (0.01, "does not pay", "Does not pay: 1 in 100 that it does"),
        (0.004, "does not pay", "Does not pay: under 1 in 100 that it does"),
        (0.0, "does not pay", "Does not pay: under 1 in 100 that it does"),
    ],
)
def test_odds_in_words(pays: float, word: str, said: str) -> None:
    assert word_of(pays) == word
    assert in_words(odds_phrase(pays)) == said


def state(mean: float, spread: float, pays: float) -> ChanceState:
    """Return draws of which only these three matter here."""
    return ChanceState(1, 1, pays, mean, spread, 0, 0, 0, (), (0, 0), (0, 0))


def test_odds_with_the_only_unsure_figure_known_are_sure() -> None:
    """200 saved of wire at 10 against 8, 100 parts; wire now 30 % off: 100 lost to 500 saved."""
    case, only = ten_against_eight(), lever("now", 0.7, 1.3)
    [swing] = swings(case, [only])
    drawn = Chance(case, [only], 1, 20_000).run(20_000)
    # Nothing is saved at a factor of 0.8: a share of 0.1² / (0.6 × 0.3) lies under it.
    assert drawn.pays == pytest.approx(1 - 0.1**2 / (0.6 * 0.3), abs=0.005)
    # One time in ten it is under 0.7 + √(0.1 × 0.6 × 0.3) = 0.834, where 34 are saved. What the
    # spread of the draws has over the triangle's own is nearly nothing.
    worse, better = odds_if_known(drawn, swing)
    assert worse > 0.99
    assert better > 0.99
    assert not settles(drawn, swing)


def test_odds_with_one_of_two_figures_known() -> None:
    """Triangles 0.8 to 1.2 on 10 and 0.9 to 1.1 on 9.5: mean 50, variances (40 000, 9 025) / 6."""
    case = ten_against_eight()
    first = lever("now", 0.8, 1.2)
    [swing] = swings(case, [first])
    spread = sqrt(200**2 / 6 + 95**2 / 6)
    left = NormalDist(0, 95 / sqrt(6))
    # One time in ten the factor is under 0.8 + √(0.1 × 0.4 × 0.2) = 0.8894, 110.6 below the mean.
    away = 1000 * (0.2 - sqrt(0.1 * 0.4 * 0.2))
    worse, better = odds_if_known(state(50, spread, 0.7), swing)
    assert worse == pytest.approx(left.cdf(50 - away), rel=1e-6)
    assert better == pytest.approx(left.cdf(50 + away), rel=1e-6)
    assert settles(state(50, spread, 0.7), swing)


def test_a_figure_that_only_grows_has_its_ends_on_one_side() -> None:
    """1 to 1.5 on 10: a tenth under 1.5 − 0.5 √0.9, a tenth over 1.5 − 0.5 √0.1."""
    case = ten_against_eight()
    [swing] = swings(case, [lever("now", 1.0, 1.5)])
    own = 500 / sqrt(18)
    left = sqrt(300**2 - own**2)
    mean_factor = 3.5 / 3
    worse, better = odds_if_known(state(0, 300, 0.5), swing)
    for found, factor in ((worse, 1.5 - 0.5 * sqrt(0.9)), (better, 1.5 - 0.5 * sqrt(0.1))):
        away = 1000 * (factor - mean_factor)
        assert found == pytest.approx(NormalDist(0, left).cdf(away), rel=1e-6)


@pytest.mark.parametrize(
    ("mean", "pays", "settled"),
    [
        (1000, 0.999, False),  # sure, whatever this figure is
        (120, 0.85, True),  # known to be good, it is sure
        (0, 0.5, True),  # known, it turns
        (-120, 0.15, True),  # known to be bad, it is sure
        (-1000, 0.001, False),
    ],
)
def test_what_is_worth_finding_out(mean: float, pays: float, settled: bool) -> None:
    """A figure worth 82 of a spread of 100."""
    case = ten_against_eight()
    one, idle = lever("now", 0.8, 1.2), lever("other", 1.0, 1.0001)
    found = swings(case, [idle, one])
    drawn = state(mean, 100, pays)
    assert settling(drawn, found) == (found[0] if settled else None)
    assert found[0].lever is one


@pytest.mark.parametrize(("mean", "pays", "settled"), [(60, 0.95, True), (150, 0.95, False)])
def test_a_sure_verdict_is_questioned_where_one_figure_turns_it(
    mean: float, pays: float, settled: bool
) -> None:
    """Spread 100, 82 of it one figure's: 110.6 worse leaves 57 the rest: 60 turns, 150 does not."""
    [swing] = swings(ten_against_eight(), [lever("now", 0.8, 1.2)])
    assert settles(state(mean, 100, pays), swing) == settled


def test_a_figure_that_only_falls_has_its_ends_on_one_side() -> None:
    """0.5 to 1 on 10: a tenth under 0.5 + 0.5 √0.1, a tenth over 0.5 + 0.5 √0.9."""
    [swing] = swings(ten_against_eight(), [lever("now", 0.5, 1.0)])
    left = sqrt(300**2 - 500**2 / 18)
    worse, better = odds_if_known(state(0, 300, 0.5), swing)
    for found, factor in ((worse, 0.5 + 0.5 * sqrt(0.1)), (better, 0.5 + 0.5 * sqrt(0.9))):
        away = 1000 * (factor - 2.5 / 3)
        assert found == pytest.approx(NormalDist(0, left).cdf(away), rel=1e-6)


def test_a_figure_known_nearly_has_its_ends_on_both_sides() -> None:
    """0.95 to 1.05 on 10: 50 less the root of a tenth of 50 × 100 either way."""
    [swing] = swings(ten_against_eight(), [lever("now", 0.95, 1.05)])
    left = NormalDist(0, sqrt(30**2 - 50**2 / 6))
    away = 50 - sqrt(0.1 * 50 * 100)
    assert odds_if_known(state(0, 30, 0.5), swing) == pytest.approx(
        (left.cdf(-away), left.cdf(away)), rel=1e-6
    )


AWAY = 1000 * (0.2 - sqrt(0.1 * 0.4 * 0.2))
"""What a wire of 10, a fifth either way, is off by one time in ten, on 100 parts: 110.6."""


@pytest.mark.parametrize(
    ("mean", "odds"),
    [(AWAY + 0.3, (1, 1)), (AWAY - 0.3, (0, 1)), (0.3 - AWAY, (0, 1)), (-0.3 - AWAY, (0, 0))],
)
def test_with_all_that_is_unsure_known_the_odds_are_none_or_all(
    mean: float, odds: tuple[float, float]
) -> None:
    """The one unsure figure has more spread than the few draws show: nothing else is left."""
    [swing] = swings(ten_against_eight(), [lever("now", 0.8, 1.2)])
    assert odds_if_known(state(mean, 50, 0.5), swing) == odds


@pytest.mark.parametrize(("mean", "odds"), [(0.0, (0, 0)), (0.5, (1, 1)), (-0.5, (0, 0))])
def test_where_nothing_is_unsure_nothing_saved_does_not_pay(
    mean: float, odds: tuple[float, float]
) -> None:
    assert odds_if_known(state(mean, 0, 0.5), STILL) == odds


STILL = Swing(lever("now", 0.8, 1.2), 5.0, 5.0)
"""A figure that moves nothing."""


@pytest.mark.parametrize(
    ("mean", "pays", "settled"),
    [
        (-AWAY + 1.5, 0.05, True),  # known to be good, 51 in 100: over even
        (150, 0.90, False),  # sure before, sure after
        (150, 0.89, True),
        (-150, 0.10, False),
        (-150, 0.11, True),
    ],
)
def test_what_settles_near_the_limits(mean: float, pays: float, settled: bool) -> None:
    [swing] = swings(ten_against_eight(), [lever("now", 0.8, 1.2)])
    assert settles(state(mean, 100, pays), swing) == settled


def test_a_figure_that_moves_nothing_settles_nothing() -> None:
    assert not settles(state(0, 100, 0.95), STILL)
    assert settling(state(150, 100, 0.85), [STILL]) is None


def test_a_figure_that_moves_little_leaves_an_open_verdict_open() -> None:
    """12 in 100 before; 11 or 13 with it known."""
    [swing] = swings(ten_against_eight(), [lever("now", 0.99, 1.01)])
    assert not settles(state(-117, 100, 0.12), swing)


def test_half_a_dollar_may_settle_half_a_dollar() -> None:
    small = Swing(lever("now", 0.8, 1.2), -0.2, 0.3)
    assert settling(state(0.05, 0.11, 0.6), [STILL, small]) is small


def test_a_figure_that_moves_nothing_much_settles_nothing() -> None:
    [swing] = swings(ten_against_eight(), [lever("now", 0.999, 1.001)])
    assert settling(state(60, 100, 0.73), [swing]) is None
