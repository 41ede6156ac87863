"""Settings on the steps a hand can set, inside their room."""

import pytest

from beadwright.phrases import Phrase
from beadwright.setting.limits import Limit, Window
from beadwright.setting.set_point import stepped

IN_MIN = 0.0254 / 60


def room(low: float, high: float) -> Window:
    limit = Limit("any", Phrase("any"))
    return Window(low, high, limit, limit)


@pytest.mark.parametrize(
    ("volts", "low", "high", "set_"),
    [
        (25.04, 24.0, 26.0, 25.0),
        (25.06, 24.0, 26.0, 25.1),
        # The nearest tenth is out: the one on the other side.
        (25.04, 25.01, 26.0, 25.1),
        (24.96, 24.0, 24.99, 24.9),
        # An end is inside.
        (25.04, 25.0, 25.09, 25.0),
        (24.96, 24.91, 25.0, 25.0),
        # No tenth is in: as it is.
        (25.04, 25.01, 25.09, 25.04),
    ],
)
def test_volts_on_a_tenth(volts: float, low: float, high: float, set_: float) -> None:
    assert stepped(volts, "volts", "us", room(low, high)) == set_


@pytest.mark.parametrize(
    ("feed", "low", "high", "set_"),
    [(402, 380, 420, 400), (402, 401, 420, 405), (403, 380, 404, 400), (403, 402, 404, 403)],
)
def test_feed_on_five(feed: float, low: float, high: float, set_: float) -> None:
    found = stepped(feed * IN_MIN, "wire_feed", "us", room(low * IN_MIN, high * IN_MIN))
    assert found / IN_MIN == pytest.approx(set_)
