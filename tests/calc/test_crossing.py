"""Where a line crosses a level: found right, and in few steps; windows depend on it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.root import crossing

FEW = 8


def counted(slope: float, bend: float, low: float, high: float, level: float) -> tuple[float, int]:
    """Where slope·x + bend·x² crosses, and how often the line was asked between the ends."""
    asked: list[float] = []

    def line(x: float) -> float:
        asked.append(x)
        return slope * x + bend * x * x

    return crossing(line, low, high, level), len(asked) - 2


@pytest.mark.parametrize("turned", [1.0, -1.0])
@pytest.mark.parametrize("bend", [0.0, 0.3, 1.0, 4.0, -0.04])
def test_a_bent_line_is_crossed_in_few_steps(bend: float, turned: float) -> None:
    level = turned * (5.0 + bend * 25.0)  # at x = 5
    found, steps = counted(turned, turned * bend, 1.0, 9.0, level)
    assert found == pytest.approx(5.0, rel=1e-9)
    assert steps <= FEW


@given(st.floats(0.1, 10), st.floats(0, 5), st.floats(1.0, 9.0), st.sampled_from([1.0, -1.0]))
def test_rising_or_falling_the_place_is_found(
    slope: float, bend: float, place: float, turned: float
) -> None:
    level = turned * (slope * place + bend * place * place)
    found, _ = counted(turned * slope, turned * bend, 0.5, 9.5, level)
    assert found == pytest.approx(place, rel=1e-8)


def test_a_level_of_nothing_is_found_too() -> None:
    assert crossing(lambda x: x * x - 2, 0.0, 2.0, 0.0) == pytest.approx(2**0.5, rel=1e-9)


def test_a_level_line_is_where_it_starts() -> None:
    assert crossing(lambda _: 3.0, 1.0, 2.0, 3.0) == 1.0
