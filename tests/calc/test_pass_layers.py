"""Layers of joints simple enough to count by hand, and every limit held by another measure."""

from dataclasses import replace

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from beadwright.joint.joints import WeldRegion, region
from beadwright.layers.frame import Frame, frame_of
from beadwright.layers.layer_counts import layers_of_count
from beadwright.layers.layers import BeadLimits, Layer, fewest_layers, holds
from beadwright.passes.pass_layout import slots_of

MM = 1e-3
ROOMY = BeadLimits(1.0, 1.0, 1.0, 1.0, 1.0, 1.0)


def slot(width: float, height: float) -> WeldRegion:
    """A square groove filled flush, in mm: x astride the middle, its top at y = 0."""
    w, h = width * MM / 2, height * MM
    left, right = (-w, 0.0), (w, 0.0)
    return region("first", (left, (-w, -h), (w, -h), right), right, left, (0.0, -h), 0.0)


def laid(
    width: float,
    height: float,
    *,
    section: float = 1e6,
    root_section: float | None = None,
    root: float = 1e3,
    layer: float = 1e3,
    wide: float = 1e3,
    groove: bool = False,
    around: bool = False,
) -> list[Layer]:
    """Layers of a square groove, everything in mm."""
    limits = BeadLimits(
        (section if root_section is None else root_section) * MM**2,
        section * MM**2,
        root * MM,
        layer * MM,
        wide * MM,
        wide * MM,
    )
    return fewest_layers(frame_of(slot(width, height)), limits, groove=groove, around=around)


def beads(layers: list[Layer]) -> list[int]:
    return [layer.beads for layer in layers]


def thick(layers: list[Layer]) -> list[float]:
    return [(layer.high - layer.low) / MM for layer in layers]


def test_nothing_limits_one_bead() -> None:
    layers = laid(10, 12)
    assert beads(layers) == [1]
    assert thick(layers) == pytest.approx([12])


def test_section_alone_counts_by_area() -> None:
    """120 mm² at 40 mm² a bead is three; at 41 still three, at 39 four."""
    for most, count in ((40, 3), (41, 3), (39, 4), (60, 2), (59.9, 3), (120, 1)):
        layers = laid(10, 12, section=most)
        assert sum(beads(layers)) == count, most
        each = 120 / count
        assert thick(layers) == pytest.approx([each * n / 10 for n in beads(layers)], rel=1e-6)


def test_the_root_has_a_section_of_its_own() -> None:
    """20 mm² of root leaves 100 mm², which 50 mm² a bead lays in two."""
    layers = laid(10, 12, section=50, root_section=20)
    assert sum(beads(layers)) == 3
    assert thick(layers)[0] <= 2 + 1e-6
    assert sum(beads(laid(10, 12, section=50))) == 3
    assert sum(beads(laid(10, 12, section=50, root_section=19.9))) == 4


def test_no_bead_is_lighter_than_its_arc_lays_if_another_cut_spares_it() -> None:
    """60 mm² in two layers: even, 30 each; a root of 35 at least leaves 25, one of 70 is none."""
    frame = frame_of(slot(10, 6))
    even = BeadLimits(1.0, 1.0, 5 * MM, 5 * MM, 1.0, 1.0)

    def cut(limits: BeadLimits) -> list[float]:
        return thick(fewest_layers(frame, limits, groove=False, around=False))

    assert cut(even) == pytest.approx([3, 3])
    root, rest = cut(replace(even, root_least_m2=35 * MM**2))
    assert (root, rest) == pytest.approx((3.5, 2.5))
    root, rest = cut(replace(even, section_least_m2=35 * MM**2))
    assert rest >= 3.5 - 1e-9
    assert cut(replace(even, root_least_m2=70 * MM**2, section_least_m2=70 * MM**2)) == (
        pytest.approx([3, 3])
    )
    assert cut(replace(even, root_least_m2=29 * MM**2, section_least_m2=29 * MM**2)) == (
        pytest.approx([3, 3])
    )


def test_thickness_counts_layers() -> None:
    """12 mm in a root of 5 and layers of 4: 5 + 4 + 3. A root of 4 takes the same three."""
    assert beads(laid(10, 12, root=5, layer=4)) == [1, 1, 1]
    assert beads(laid(10, 12, root=4, layer=4)) == [1, 1, 1]
    assert beads(laid(10, 12, root=3.9, layer=4)) == [1, 1, 1, 1]
    assert beads(laid(10, 12, root=8, layer=4)) == [1, 1]
    assert beads(laid(10, 12, root=7.9, layer=4)) == [1, 1, 1]
    layers = laid(10, 12, root=5, layer=4)
    assert max(thick(layers)[1:]) <= 4 + 1e-6
    assert thick(layers)[0] <= 5 + 1e-6


def test_width_splits_layers_after_the_root() -> None:
    """10 mm wide at 5 mm a bead: two beads a layer, three at 4.9; a root is one bead if it can."""
    assert beads(laid(10, 12, layer=4, root=4, wide=10)) == [1, 1, 1]
    assert beads(laid(10, 12, layer=4, root=4, wide=5)) == [2, 2, 2]
    assert beads(laid(10, 12, layer=4, root=4, wide=4.9)) == [3, 3, 3]


def test_beads_around_a_hole_lay_half_the_section() -> None:
    """120 mm² shown is 60 mm² laid: at 20 mm² three beads, at 19 four; 5 mm wide is one ring."""
    assert sum(beads(laid(10, 12, section=20, around=True))) == 3
    assert sum(beads(laid(10, 12, section=19, around=True))) == 4
    assert beads(laid(10, 12, layer=4, root=4, wide=5, around=True)) == [1, 1, 1]
    assert beads(laid(10, 12, layer=4, root=4, wide=4.9, around=True)) == [2, 2, 2]


def test_a_groove_s_cap_starts_under_flush() -> None:
    """A groove's last layer reaches 0.8 mm under flush: 12.5 in layers of 4 then takes four."""
    open_ = laid(10, 12.5, root=4, layer=4)
    assert beads(open_) == [1, 1, 1, 1]
    capped = laid(10, 12.5, root=4, layer=4, groove=True)
    assert capped[-1].low <= -0.8 * MM + 1e-9
    assert sum(beads(capped)) == 4


def test_of_as_few_beads_those_near_the_good_shape_are_laid() -> None:
    """Four beads of 40 mm² in 16 × 10 mm: two layers of two lie 8 × 5, near 1.8 to 1.

    Four layers of one would lie 16 × 2.5. In 6 × 26.67 mm they lie one on another, 6 × 6.7.
    """
    assert beads(laid(16, 10, section=40, layer=5, root=5)) == [2, 2]
    assert beads(laid(6, 26.67, section=40.1)) == [1, 1, 1, 1]


@pytest.mark.parametrize("count", range(1, 13))
def test_a_count_is_given_where_the_fewest_only_come_in_twos(count: int) -> None:
    """Layers of two beads each: an odd count adds one where beads are largest."""
    frame = frame_of(slot(10, 12))
    limits = BeadLimits(1.0, 1.0, 3 * MM, 3 * MM, 5 * MM, 5 * MM)
    layers = layers_of_count(frame, limits, count, groove=False, around=False)
    assert sum(beads(layers)) == count
    assert layers[0].low == pytest.approx(-12 * MM)
    assert layers[-1].high == pytest.approx(0)
    sizes = [(layer.high - layer.low) / layer.beads for layer in layers]
    assert max(sizes) <= 2.1 * min(sizes) or count == 3


def limits_of(draw: st.DrawFn) -> BeadLimits:
    section, root, layer, wide = (
        draw(st.floats(a, b)) for a, b in ((15, 80), (2, 9), (2, 7), (5, 20))
    )
    return BeadLimits(
        draw(st.floats(15, 80)) * MM**2,
        section * MM**2,
        root * MM,
        layer * MM,
        wide * MM,
        wide * MM,
    )


@st.composite
def grooves(draw: st.DrawFn) -> tuple[Frame, BeadLimits]:
    """A V with a root gap, filled flush, and limits to lay it within."""
    depth, gap, spread = (draw(st.floats(a, b)) for a, b in ((6, 50), (2, 8), (0.1, 1.2)))
    d, g, s = depth * MM, gap * MM / 2, depth * spread * MM
    left, right = (-g - s, 0.0), (g + s, 0.0)
    outline = (left, (-g, -d), (g, -d), right)
    return frame_of(region("first", outline, right, left, (0.0, -d), 0.0)), limits_of(draw)


@given(grooves())
def test_every_limit_is_held_by_another_measure(given_: tuple[Frame, BeadLimits]) -> None:
    """Sections, thickness and width of each layer, measured by shapely on what it cuts."""
    frame, limits = given_
    layers = fewest_layers(frame, limits, groove=False, around=False)
    whole = shapely.Polygon([(x / MM, y / MM) for x, y in frame.outline])
    step = (layers[-1].high - layers[0].low) / 32
    for number, layer in enumerate(layers):
        low, high = layer.low / MM, layer.high / MM
        cut = whole.intersection(shapely.box(-1e3, low, 1e3, high))
        top = whole.intersection(shapely.LineString([(-1e3, high - 1e-6), (1e3, high - 1e-6)]))
        floor = whole.intersection(shapely.LineString([(-1e3, low + 1e-6), (1e3, low + 1e-6)]))
        # The last layer's width is that of its floor: a cap laps over the edges.
        wide = floor.length if number == len(layers) - 1 else max(top.length, floor.length)
        most = limits.root_m2 if number == 0 else limits.section_m2
        deep = limits.root_m if number == 0 else limits.layer_m
        assert cut.area / layer.beads <= most / MM**2 * 1.0001
        if layer.high - layer.low > step * 1.01:
            assert layer.high - layer.low <= deep + 1e-8
        if number < len(layers) - 1:
            assert wide / layer.beads <= limits.width_m / MM * 1.0001
    total = sum(layer.beads for layer in layers)
    assert total >= whole.area * MM**2 / max(limits.root_m2, limits.section_m2) - 1e-6


@given(grooves(), st.floats(0.1, 6), st.integers(1, 60))
def test_a_root_over_a_gap_stays_as_thick_however_many_beads_are_laid(
    given_: tuple[Frame, BeadLimits], least: float, count: int
) -> None:
    """A layer has beads, the layers fill the groove, and none ends under the least root."""
    frame, limits = given_
    bridged = replace(limits, root_least_m=min(least * MM, limits.root_m))
    layers = layers_of_count(frame, bridged, count, groove=True, around=False)
    assert all(layer.beads >= 1 for layer in layers)
    assert sum(beads(layers)) == count
    ends = [frame.bottom, *(layer.high for layer in layers)]
    assert [layer.low for layer in layers] == ends[:-1]
    assert ends[-1] == frame.levels.levels[-1]
    step = (ends[-1] - ends[0]) / 32
    thin = layers[0].high - layers[0].low < bridged.root_least_m - 1e-9
    assert not thin or len(layers) == 1 or bridged.root_least_m < step


@given(grooves())
def test_tighter_limits_never_take_fewer(given_: tuple[Frame, BeadLimits]) -> None:
    frame, limits = given_
    counts = [
        sum(x.beads for x in fewest_layers(frame, limits.times(f), groove=False, around=False))
        for f in (1.5, 1.0, 0.6)
    ]
    assert counts[0] <= counts[1] + 1  # levels are steps: rounding may add a bead
    assert counts[1] <= counts[2] + 1


HELD = BeadLimits(20 * MM**2, 10 * MM**2, 4 * MM, 2 * MM, 5 * MM, 5 * MM)


@pytest.mark.parametrize(
    ("low", "high", "count", "root", "held"),
    [
        (-12, -10, 1, True, True),  # 10 × 2 = 20 mm², 10 mm wide over 5
        (-12, -10, 2, True, True),
        (-12, -9, 2, True, True),  # 15 mm² a bead, 3 mm thick
        (-12, -7.9, 2, True, False),  # 4.1 mm thick
        (-10, -8, 2, False, True),  # 10 mm² a bead
        (-10, -7.9, 2, False, False),  # 10.5 mm² and 2.1 mm
        (-10, -9, 1, False, False),  # 10 mm wide
    ],
)
def test_what_holds_by_hand(low: float, high: float, count: int, root: bool, held: bool) -> None:
    if (low, high, count) == (-12, -10, 1):
        held = False  # its width alone breaks it
    frame = frame_of(slot(10, 12))
    layer = Layer(low * MM, high * MM, count)
    assert holds(frame, layer, HELD, root=root, around=False) is held


def test_around_a_hole_half_is_what_is_held() -> None:
    frame = frame_of(slot(10, 12))
    layer = Layer(-10 * MM, -8 * MM, 1)
    assert holds(frame, layer, HELD, root=False, around=True)
    assert not holds(frame, layer, HELD, root=False, around=False)


def test_slots_go_to_and_fro_by_layers() -> None:
    frame = frame_of(slot(10, 12))
    layers = [Layer(-12 * MM, -6 * MM, 2), Layer(-6 * MM, 0.0, 2)]
    there = slots_of(frame, layers, start=1, alternate=True, around=False)
    assert [s.across > 0 for s in there] == [False, True, True, False]
    back = slots_of(frame, layers, start=-1, alternate=False, around=False)
    assert [s.across > 0 for s in back] == [True, False, True, False]
    # The cut leans half the layer's thickness toward the bead laid first: 3 mm over 6.
    first = there[0].outlines[0]
    widths = {
        round(y / MM): (max(x for x, h in first if h == y) - min(x for x, h in first if h == y))
        for y in {h for _, h in first}
    }
    assert (widths[-12] - widths[-6]) / MM == pytest.approx(3.0, rel=1e-6)
    assert there[0].width_m == pytest.approx(widths[-6])
    assert [s.across for s in there][:2] == pytest.approx([-0.5, 0.5], abs=0.12)


def test_one_bead_in_a_layer_does_not_lean() -> None:
    (only,) = slots_of(
        frame_of(slot(10, 12)), [Layer(-12 * MM, 0.0, 1)], start=1, alternate=False, around=False
    )
    assert {round(x / MM, 6) for x, _ in only.outlines[0]} >= {-5.0, 5.0}
    assert only.across == pytest.approx(0.0)
    assert only.aim == pytest.approx((0.0, -12 * MM), abs=1e-9)
