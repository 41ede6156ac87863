"""Beads in their places: areas against shapely, limits, order, and counts."""

from itertools import pairwise
from math import sqrt

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.joint.fillet_joints import fillet_joint
from beadwright.joint.fillets import flat_section, usual_crown
from beadwright.joint.groove_joints import Groove, groove_joint
from beadwright.joint.joints import JointShape, Polygon, WeldRegion, polygon_area
from beadwright.joint.plug_slot import plug_joint
from beadwright.layers.frame import frame_of
from beadwright.layers.layer_counts import layers_of_count
from beadwright.layers.layers import BeadLimits, Layer, fewest_layers, holds
from beadwright.passes.pass_layout import Slot, slots_of

IN = 0.0254
ONE_PASS = 1.2 * (5 / 16 * IN) ** 2 / 2 * 1.03
HORIZONTAL = BeadLimits(
    root_m2=ONE_PASS,
    section_m2=ONE_PASS,
    root_m=5 / 16 * IN,
    layer_m=1 / 4 * IN,
    width_m=5 / 8 * IN,
    root_width_m=5 / 8 * IN,
)


def fillet(leg: float, leg2: float | None = None, crown: float | None = None) -> JointShape:
    crown = usual_crown(flat_section(leg), leg * sqrt(2)) if crown is None else crown
    return fillet_joint("tee", 0.02, 0.02, leg, leg, crown, leg2_m=leg2)


def vee(plate: float, angle: float, gap: float, root_face: float, crown: float) -> JointShape:
    return groove_joint(Groove("v", angle, gap, plate - root_face), plate, plate, crown)


def in_mm(outline: Polygon) -> shapely.Polygon:
    """An outline as shapely takes it; in meters its overlays lose what is small."""
    return shapely.Polygon([(1000 * x, 1000 * y) for x, y in outline])


shapes = st.one_of(
    st.builds(
        fillet,
        st.floats(0.004, 0.05),
        st.one_of(st.none(), st.floats(0.004, 0.05)),
        st.floats(0, 0.003),
    ).filter(lambda shape: 0.4 < shape.leg2_m / shape.leg_m < 2.5),
    st.builds(
        vee,
        st.floats(0.008, 0.1),
        st.floats(20, 90),
        st.floats(0, 0.008),
        st.floats(0, 0.003),
        st.floats(0.0005, 0.003),
    ),
)


def laid(
    region: WeldRegion, layers: list[Layer], *, start: int = 1, alternate: bool = False
) -> list[Slot]:
    return slots_of(frame_of(region), layers, start=start, alternate=alternate, around=False)


def fewest(shape: JointShape, limits: BeadLimits = HORIZONTAL) -> list[Layer]:
    frame = frame_of(shape.regions[0])
    return fewest_layers(frame, limits, groove=not shape.leg_m, around=False)


@given(shapes, st.sampled_from([1, -1]), st.booleans())
def test_beads_fill_the_joint_and_keep_apart(
    shape: JointShape, start: int, alternate: bool
) -> None:
    region = shape.regions[0]
    slots = laid(region, fewest(shape), start=start, alternate=alternate)
    beads = [in_mm(slot.outlines[0]) for slot in slots]
    whole = in_mm(region.outline)
    assert sum(bead.area for bead in beads) == pytest.approx(whole.area, rel=1e-3)
    assert shapely.unary_union(beads).area == pytest.approx(
        whole.area, rel=2e-3
    )  # so none lies on another
    assert shapely.unary_union(beads).difference(whole.buffer(0.01)).area < 1e-4 * whole.area
    for slot, bead in zip(slots, beads, strict=True):
        assert bead.area == pytest.approx(slot.section_m2 * 1e6, rel=0.01)


@given(shapes)
def test_layers_hold_the_limits_and_follow_each_other(shape: JointShape) -> None:
    frame = frame_of(shape.regions[0])
    layers = fewest(shape)
    assert layers[0].low == pytest.approx(frame.bottom)
    assert layers[-1].high == pytest.approx(frame.levels.levels[-1])
    for below, above in pairwise(layers):
        assert below.high == pytest.approx(above.low)
    for number, layer in enumerate(layers):
        thin = layer.high - layer.low < (layers[-1].high - layers[0].low) / 40
        assert thin or holds(frame, layer, HORIZONTAL, root=number == 0, around=False)


@given(st.floats(0.004, 0.04), st.floats(1.05, 1.8))
def test_a_larger_fillet_never_takes_fewer_beads(leg: float, larger: float) -> None:
    small, large = (
        sum(layer.beads for layer in fewest(fillet(z, crown=0.1 * z))) for z in (leg, leg * larger)
    )
    assert small <= large


@given(shapes, st.integers(1, 40))
def test_a_count_asked_for_is_a_count_given(shape: JointShape, count: int) -> None:
    frame = frame_of(shape.regions[0])
    layers = layers_of_count(frame, HORIZONTAL, count, groove=not shape.leg_m, around=False)
    assert sum(layer.beads for layer in layers) == count
    slots = slots_of(frame, layers, start=1, alternate=False, around=False)
    area = polygon_area(shape.regions[0].outline)
    assert sum(slot.section_m2 for slot in slots) == pytest.approx(area, rel=2e-3)


def test_a_small_fillet_is_one_bead_and_a_large_one_goes_one_two_three() -> None:
    assert [layer.beads for layer in fewest(fillet(5 / 16 * IN))] == [1]
    assert [layer.beads for layer in fewest(fillet(1 / 2 * IN))] == [1, 2]
    counts = [layer.beads for layer in fewest(fillet(1 * IN))]
    assert counts == sorted(counts)
    assert counts[0] == 1


def test_equal_beads_of_a_flat_fillet_by_hand() -> None:
    """One bead of six under five: the first triangle's leg is z / sqrt(3) in layers of 1, 2."""
    z = 0.012
    shape = fillet(z, crown=0.0)
    layers = fewest(shape, BeadLimits(z * z / 6 * 1.0001, z * z / 6 * 1.0001, z, z, z, z))
    assert [layer.beads for layer in layers] == [1, 2]
    slots = laid(shape.regions[0], layers)
    assert [slot.section_m2 for slot in slots] == pytest.approx([z * z / 6] * 3, rel=1e-3)
    assert slots[0].thickness_m == pytest.approx(z / sqrt(3) / sqrt(2), rel=1e-3)
    # The second bead is aimed at the toe of the first, the third at its upper toe.
    assert slots[1].aim == pytest.approx((z / sqrt(3), 0.0), abs=1e-5)
    assert slots[2].aim == pytest.approx((0.0, z / sqrt(3)), abs=1e-5)


def test_beads_of_a_layer_go_from_the_first_toe_to_the_second_and_back() -> None:
    shape = vee(0.03, 60, 0.003, 0.002, 0.002)
    layers = fewest(shape)
    to_left = laid(shape.regions[0], layers)
    for layer in range(1, len(layers) + 1):
        across = [slot.across for slot in to_left if slot.layer == layer]
        assert across == sorted(across)
    turning = laid(shape.regions[0], layers, alternate=True)
    second = [slot.across for slot in turning if slot.layer == len(layers)]
    assert second == sorted(second, reverse=len(layers) % 2 == 0)


def test_a_cap_closes_over_the_edges() -> None:
    shape = vee(0.02, 60, 0.003, 0.002, 0.002)
    frame = frame_of(shape.regions[0])
    assert fewest(shape)[-1].low < 0  # below flush
    assert frame.levels.levels[-1] == pytest.approx(0.002, rel=1e-3)


def test_beads_around_a_hole_show_twice() -> None:
    shape = plug_joint("plug", 0.012, 0.012, 0.022, 0.012)
    frame = frame_of(shape.regions[0])
    layers = fewest_layers(frame, HORIZONTAL, groove=False, around=True)
    slots = slots_of(frame, layers, start=1, alternate=False, around=True)
    assert all(len(slot.outlines) == 2 for slot in slots)
    assert sum(slot.section_m2 for slot in slots) == pytest.approx(shape.section_m2, rel=5e-3)


def test_no_beads_are_refused() -> None:
    frame = frame_of(fillet(0.008).regions[0])
    with pytest.raises(OutOfRangeError, match="count"):
        layers_of_count(frame, HORIZONTAL, 0, groove=False, around=False)
    with pytest.raises(OutOfRangeError, match="width_m"):
        fewest_layers(
            frame, BeadLimits(1e-5, 1e-5, 1e-2, 1e-2, 0.0, 1e-2), groove=False, around=False
        )


def test_limits_widen_alike() -> None:
    wider = BeadLimits(4e-5, 3e-5, 5e-3, 6e-3, 12e-3, 12e-3).times(2)
    assert (wider.root_m2, wider.section_m2) == pytest.approx((16e-5, 12e-5))
    assert (wider.root_m, wider.layer_m, wider.width_m) == pytest.approx((10e-3, 12e-3, 24e-3))


def test_of_as_few_beads_those_that_lie_well_are_laid() -> None:
    """Ten beads of a 1 in fillet lie in four layers; three would be tall, five flat."""
    assert [layer.beads for layer in fewest(fillet(1 * IN))] == [1, 2, 3, 4]


def test_a_cap_that_cannot_start_under_flush_still_closes_the_joint() -> None:
    """A crown thicker than a layer may be: the limit of size holds, the edges are the welder's."""
    shape = vee(0.02, 60, 0.003, 0.002, 0.003)
    thin = BeadLimits(2e-5, 2e-5, 0.003, 0.002, 0.016, 0.016)
    layers = fewest(shape, thin)
    assert layers[-1].high == pytest.approx(0.003, rel=1e-3)
    frame = frame_of(shape.regions[0])
    assert all(holds(frame, layer, thin, root=layer is layers[0], around=False) for layer in layers)


def test_a_cap_starts_as_far_under_flush_as_asked() -> None:
    for plate in (0.012, 0.016, 0.02, 0.025, 0.03, 0.04):
        layers = fewest(vee(plate, 60, 0.003, 0.002, 0.002))
        assert layers[-1].low <= -0.0008 + 1e-9
