"""The bands: ends, steps, words."""

import pytest

from beadwright import units
from beadwright.api import answer
from beadwright.measures import System
from beadwright.results import Quantity
from beadwright_site.pages.dial_in.bands import STEPS, band_of
from tests.site.test_pages import QUERIES


@pytest.mark.parametrize(("measure", "system"), STEPS)
def test_a_step_is_what_a_hand_can_set(measure: str, system: System) -> None:
    step = STEPS[measure, system]
    factor = float(units.MEASURES[measure].unit(system).factor)
    for count in (1, 3, 40):
        value = count * step * factor
        assert units.settable(value, measure, system) == pytest.approx(value)
    assert units.settable(1.4 * step * factor, measure, system) == pytest.approx(step * factor)


@pytest.mark.parametrize("query", QUERIES)
def test_window_and_set_point_stand_inside_the_band(query: str) -> None:
    found = answer("dial-in", query).dialled
    for setting in found.settings.all():
        band = band_of(setting, found.job.units)
        for at in (band.low, band.high, band.at):
            assert at is None or 0 <= at <= 100
        if band.now is not None:
            assert band.least <= band.now <= band.most
        assert band.most > band.least > 0


def quantity(value: float | None, *, by_hand: bool = False) -> Quantity:
    return Quantity("Volts at the arc", "volts", value, 24.0, 28.0, "window", by_hand=by_hand)


@pytest.mark.parametrize(
    ("setting", "word"),
    [
        (quantity(26.0), ""),
        (quantity(26.0, by_hand=True), "by hand"),
        (quantity(23.0, by_hand=True), "under 24.0"),
        (quantity(29.0, by_hand=True), "over 28.0"),
        (quantity(None), "no window"),
        (Quantity("Travel", "travel", None, meaning="window"), ""),
    ],
)
def test_the_word_says_where_it_stands(setting: Quantity, word: str) -> None:
    assert band_of(setting, "us").word == word


def test_a_band_is_spoken_whole() -> None:
    assert band_of(quantity(23.0, by_hand=True), "us").spoken == (
        "23.0 V, window 24.0 to 28.0, under 24.0"
    )


def test_a_set_point_on_the_end_is_at_the_end() -> None:
    band = band_of(quantity(24.0), "us")
    assert band.at == band.low
    assert band.inside
