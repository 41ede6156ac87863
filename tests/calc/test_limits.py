"""Limits and the window they leave."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.phrases import Phrase
from beadwright.setting.limits import Limit, Window, tightest_window

ends = st.floats(-1e6, 1e6)


def test_the_tightest_limits_bind() -> None:
    window = tightest_window(
        [
            Limit("a", Phrase("a"), low=1.0, high=9.0),
            Limit("b", Phrase("b"), low=2.0),
            Limit("c", Phrase("c"), high=5.0),
        ]
    )
    assert (window.low, window.high) == (2.0, 5.0)
    assert (window.low_limit.key, window.high_limit.key) == ("b", "c")
    assert window.open


@given(st.lists(st.tuples(ends, ends), min_size=1, max_size=6))
def test_a_value_is_in_the_window_only_if_every_limit_allows_it(
    pairs: list[tuple[float, float]],
) -> None:
    window = tightest_window([Limit(str(n), Phrase("any"), *pair) for n, pair in enumerate(pairs)])
    for value in (window.low, window.high, (window.low + window.high) / 2):
        allowed = all(low <= value <= high for low, high in pairs)
        assert allowed == (window.low <= value <= window.high)


def test_a_window_with_its_ends_crossed_is_shut() -> None:
    one = Limit("one", Phrase(""))
    assert Window(1.0, 1.0, one, one).open
    assert not Window(1.0000001, 1.0, one, one).open


@given(ends, st.floats(0, 1e6), st.floats(0, 1), ends)
def test_place_and_hold(low: float, span: float, share: float, value: float) -> None:
    one = Limit("one", Phrase(""))
    window = Window(low, low + span, one, one)
    slack = 1e-9 * (abs(low) + span + 1)
    assert window.low - slack <= window.place(share) <= window.high + slack
    held = window.hold(value)
    assert window.low <= held <= window.high
    assert held == value or held in (window.low, window.high)
    assert window.place(0) == pytest.approx(low)
