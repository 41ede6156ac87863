"""Burn-off: the power balance both ways, what extension and core do to it, what it refuses."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.process.burnoff import (
    constants_of,
    current_from_feed,
    extension_from_feed,
    feed_from_current,
)
from beadwright.process.deposition import deposition_efficiency, laid_rate
from beadwright.process.gases import gas_of
from beadwright.process.wires import WIRE_TYPES, Wire, wire_of

INCH = 0.0254
WIRES = [wire_of(t.name, size) for t in WIRE_TYPES.values() for size in t.sizes]

wires = st.sampled_from(WIRES)
currents = st.floats(20, 600)
extensions = st.floats(0.002, 0.05)


@given(wires, currents, extensions)
def test_feed_and_current_undo_each_other(wire: Wire, current: float, extension: float) -> None:
    feed = feed_from_current(wire, current, extension)
    assert current_from_feed(wire, feed, extension) == pytest.approx(current, rel=1e-9)


@given(wires, st.floats(0.005, 0.5), extensions)
def test_current_and_feed_undo_each_other(wire: Wire, feed: float, extension: float) -> None:
    current = current_from_feed(wire, feed, extension)
    assert feed_from_current(wire, current, extension) == pytest.approx(feed, rel=1e-9)


@given(wires, st.floats(60, 500), st.floats(0.005, 0.04))
def test_extension_undoes_feed(wire: Wire, current: float, extension: float) -> None:
    feed = feed_from_current(wire, current, extension)
    assert extension_from_feed(wire, feed, current) == pytest.approx(extension, rel=1e-8)


@given(wires, st.floats(0.02, 0.4), st.floats(0.003, 0.03), st.floats(1.05, 2))
def test_farther_out_draws_less_current(
    wire: Wire, feed: float, extension: float, more: float
) -> None:
    assert current_from_feed(wire, feed, extension * more) < current_from_feed(
        wire, feed, extension
    )


@given(wires, currents, extensions, st.floats(1.01, 3))
def test_more_current_melts_more_wire(
    wire: Wire, current: float, extension: float, more: float
) -> None:
    once = feed_from_current(wire, current, extension)
    again = feed_from_current(wire, current * more, extension)
    # Anode heat goes with the current, resistance heat with its square.
    assert once * more * (1 - 1e-9) <= again <= once * more**2 * (1 + 1e-9)


@pytest.mark.parametrize("current", [250, 275, 300, 340])
@pytest.mark.parametrize("gas", ["90/10", "85/15"])
def test_metal_cored_lays_more_than_solid_at_the_same_current(current: float, gas: str) -> None:
    """What the wire is bought for; at 0.045 in, each at its printed tip-to-work."""
    laid: dict[str, float] = {}
    for name, tip in (("ER70S-6", 0.75), ("E70C-6M", 0.875)):
        wire = wire_of(name, "0.045in")
        feed = feed_from_current(wire, current, tip * INCH - 0.004)
        laid[name] = laid_rate(wire, feed, deposition_efficiency(wire, gas_of(gas), "spray")[1])
    assert laid["E70C-6M"] > laid["ER70S-6"]


@given(st.floats(200, 400), st.floats(0.012, 0.022))
def test_metal_cored_feeds_faster_at_the_same_current_and_extension(
    current: float, extension: float
) -> None:
    solid, cored = wire_of("ER70S-6", "0.045in"), wire_of("E70C-6M", "0.045in")
    assert feed_from_current(cored, current, extension) > feed_from_current(
        solid, current, extension
    )


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
def test_what_is_not_above_zero_is_refused(bad: float) -> None:
    wire = wire_of("ER70S-6", "0.045in")
    with pytest.raises(OutOfRangeError, match=r"current_a = .* must be above zero"):
        feed_from_current(wire, bad, 0.01)
    with pytest.raises(OutOfRangeError, match=r"extension_m = .* must be above zero"):
        feed_from_current(wire, 200, bad)
    with pytest.raises(OutOfRangeError, match=r"feed_m_s = .* must be above zero"):
        current_from_feed(wire, bad, 0.01)
    with pytest.raises(OutOfRangeError, match=r"current_a = .* must be above zero"):
        extension_from_feed(wire, 0.1, bad)


def test_a_size_without_constants_is_refused() -> None:
    known = wire_of("ER70S-6", "0.045in")
    odd = Wire(known.type, "3/32in", 0.0024, 0.035, 4.5e-6, False)
    with pytest.raises(UnknownEntryError, match="no burn-off constants for solid 3/32in"):
        constants_of(odd)
