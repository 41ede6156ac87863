"""Penetration and dilution of one bead as shown: bands, and where there is no estimate."""

import pytest

from beadwright.process import penetration
from beadwright.process.melted import Melted, melted
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from tests.told import in_words


def one(
    kind: Kind = "solid",
    transfer: Transfer = "spray",
    current_a: float = 300.0,
    u: float = 28.0,
    travel: float = 0.008,
    plate: float = 0.0095,
    leg: float | None = 0.008,
) -> Melted:
    return melted(kind, transfer, current_a, u, travel, plate, 38e-6, leg)


def test_outside_what_was_measured_the_band_widens_and_it_is_said() -> None:
    assert penetration.band_of(300, 28, 0.008) == penetration.BAND
    assert in_words(penetration.outside_measured(300, 28, 0.008)) == ""
    for setting, said in (
        ((249, 28, 0.008), "current below"),
        ((551, 28, 0.008), "current above"),
        ((300, 21.9, 0.008), "volts below"),
        ((300, 36.1, 0.008), "volts above"),
        ((300, 28, 0.0059), "travel speed below"),
        ((300, 28, 0.0181), "travel speed above"),
    ):
        assert in_words(penetration.outside_measured(*setting)) == said
        assert penetration.band_of(*setting) == penetration.STRETCHED_BAND
    near, far = one().penetration, one(travel=0.005).penetration
    assert in_words(near.low_by) == ""
    assert in_words(far.low_by) == "travel speed below what was measured: band widened"
    assert None not in (near.low, near.value, near.high, far.low, far.value, far.high)
    assert (far.high or 0) / (far.value or 1) > (near.high or 0) / (near.value or 1)
    assert (far.low or 0) / (far.value or 1) < (near.low or 0) / (near.value or 1)


@pytest.mark.parametrize(
    ("found", "said"),
    [
        (one(transfer="short"), "short circuit"),
        (one(transfer="pulse"), "pulse"),
        (one("metal-cored"), "metal-cored wire"),
        (one("flux-cored"), "flux-cored wire"),
        (one(current_a=149), "current below"),
        (one(current_a=601), "current above"),
        (one(u=17.9), "volts below"),
        (one(u=40.1), "volts above"),
        (one(travel=0.0019), "travel speed below"),
        (one(travel=0.026), "travel speed above"),
        (one(plate=0.0015), "plate is thinner"),
    ],
)
def test_where_nothing_supports_it_no_estimate_is_given_and_why(found: Melted, said: str) -> None:
    for quantity in (found.penetration, found.dilution):
        assert (quantity.value, quantity.low, quantity.high) == (None, None, None)
        assert in_words(quantity.low_by).startswith("no estimate")
        assert said in in_words(quantity.low_by)


def test_bands_worked_by_hand() -> None:
    # 300 A, 28 V, 8 mm/s: cube root of 8.1e9 / 6.272 is 1089.0; half of 3.05e-6 times that.
    near, far = one().penetration, one(travel=0.005).penetration
    assert near.value == pytest.approx(1.6607e-3, rel=1e-3)
    for found, low, high in (
        (near, 1 - (0.3**2 + 0.4**2) ** 0.5, 1 + (0.4**2 + 0.4**2) ** 0.5),
        (far, 1 - (0.5**2 + 0.4**2) ** 0.5, 1 + (0.6**2 + 0.4**2) ** 0.5),
    ):
        assert found.value is not None
        assert found.low == pytest.approx(low * found.value)
        assert found.high == pytest.approx(high * found.value)
    butt = one(leg=None).penetration
    assert butt.value is not None
    assert butt.low == pytest.approx(0.7 * butt.value)
    assert butt.high == pytest.approx(1.4 * butt.value)


def test_a_plate_no_thicker_than_the_least_depth_gets_no_estimate() -> None:
    least = 0.7 * penetration.bead_penetration(300, 28, 0.008)
    assert one(plate=least).penetration.value is None
    assert one(plate=1.001 * least).penetration.value is not None


def test_refused_quantities_keep_their_measure() -> None:
    for found in (one(), one(transfer="short"), one(leg=None)):
        assert (found.penetration.measure, found.dilution.measure) == ("length", "share")


def test_a_butt_has_depth_on_plate_and_no_dilution() -> None:
    found = one(leg=None)
    fillet = one()
    assert found.penetration.name == "Penetration, bead on plate"
    assert found.penetration.value == penetration.bead_penetration(300, 28, 0.008)
    assert found.dilution.value is None
    assert "butt" in in_words(found.dilution.low_by)
    assert fillet.penetration.value == pytest.approx(0.5 * (found.penetration.value or 0))
