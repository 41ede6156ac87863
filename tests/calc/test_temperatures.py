"""Temperatures go to a scale and back; what is none is refused."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.temperatures import (
    degree_sign,
    degrees,
    from_celsius,
    from_fahrenheit,
    read_temperature,
    rounded_up,
    show_temperature,
    to_celsius,
    to_fahrenheit,
)


@given(st.floats(-40, 700))
def test_temperatures_go_there_and_back(celsius: float) -> None:
    kelvin = from_celsius(celsius)
    assert to_celsius(kelvin) == pytest.approx(celsius, abs=1e-9)
    assert from_fahrenheit(to_fahrenheit(kelvin)) == pytest.approx(kelvin)
    for system in ("us", "si"):
        shown = show_temperature(kelvin, system)
        assert read_temperature(shown, "us") == pytest.approx(kelvin, abs=0.51)
        assert shown.endswith(degree_sign(system))
        up = rounded_up(kelvin, system)
        assert kelvin - 1e-3 <= up < kelvin + (5.6 if system == "us" else 5.0)
        assert degrees(up, system) == pytest.approx(round(degrees(up, system)))


@pytest.mark.parametrize("text", ["warm", "", "F", "150K2", "1/0F", "150FC", "K"])
def test_what_is_no_temperature_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="write 70F or 21C"):
        read_temperature(text, "us")
