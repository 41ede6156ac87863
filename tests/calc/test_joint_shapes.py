"""Every joint as a query makes it: regions that fill it, exactly, and plates they do not enter."""

from itertools import combinations
from math import hypot, radians, sin, tan
from urllib.parse import urlencode

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.job_joint import joint_shape, weld_way
from beadwright.job.job_query import read_query
from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.fillet_joints import (
    fillet_face,
    fillet_joint,
    fillet_throat,
    gauge_leg,
    skew_leg,
)
from beadwright.joint.groove_joints import Groove, groove_joint
from beadwright.joint.joint_entries import ENTRIES, JOINT_KEYS, entries_of
from beadwright.joint.joints import (
    DOUBLES,
    HOLES,
    JOINTS,
    JointKind,
    JointShape,
)
from beadwright.joint.plug_slot import plug_joint, turn_length
from beadwright.joint.tee_grooves import distance_to_face, tee_groove_joint

INCH = 0.0254
WORDS = {
    "plate": ("16ga", "1/8in", "3/16in", "1/4in", "10mm", "1/2in", "3/4in", "1in", "2in"),
    "plate2": ("", "1/8in", "1/4in", "3/8in", "1/2in", "1in", "40mm"),
    "corner": ("open", "half", "closed"),
    "skew": ("", "60deg", "75", "90", "105deg", "135deg"),
    "leg": ("", "1/8in", "1/4in", "8mm", "1/2in"),
    "leg2": ("", "3/16in", "3/8in"),
    "gap": ("", "0in", "1/16in", "1/8in", "3/16in", "1/4in"),
    "angle": ("", "20deg", "45", "60", "90deg"),
    "root_face": ("", "0in", "1/16in", "1/8in", "1/4in"),
    "depth": ("", "1/8in", "3/16in", "1/4in", "3/8in"),
    "depth2": ("", "1/8in", "3/16in", "1/4in"),
    "backing": ("none", "none", "steel", "copper", "ceramic"),
    "back": ("", "", "open", "gouge"),
    "gouge_depth": ("", "", "1/8in", "1/4in"),
    "hole": ("", "3/8in", "3/4in", "1in"),
    "slot_length": ("", "1in", "2in"),
    "reinforcement": ("", "0in", "1/32in", "1/8in"),
    "position": ("1G", "2G", "3G-up", "4G"),
}
Typed = dict[str, str]


@st.composite
def typed_joints(draw: st.DrawFn) -> Typed:
    joint = draw(st.sampled_from(JOINTS))
    keys = [key for key in WORDS if key in ENTRIES[joint] or key in ("plate", "position")]
    typed: Typed = {"joint": joint}
    return typed | {key: draw(st.sampled_from(WORDS[key])) for key in keys}


def shape_of(typed: Typed) -> JointShape:
    kind: JointKind = next(kind for kind in JOINTS if kind == typed["joint"])
    refused: set[str] = set()
    try:
        return joint_shape(read_query(urlencode(typed)).job)[0]
    except FieldErrors as error:
        refused = set(error.messages)
    # Contradictions are refused beside an entry of this very joint.
    assert refused <= {"joint", *entries_of(kind)}
    assume(False)
    raise AssertionError


@settings(max_examples=1000)
@given(typed_joints())
def test_weld_metal_fills_its_joint_and_enters_no_plate(typed: Typed) -> None:
    shape = shape_of(typed)
    drawn = [Polygon(r.outline) for r in shape.regions]
    speck = 1e-9 * sum(p.area for p in drawn) + 1e-16
    for region, outline in zip(shape.regions, drawn, strict=True):
        assert outline.is_valid
        assert outline.exterior.is_ccw
        assert outline.area == pytest.approx(region.section_m2, rel=3e-3)
        if len(region.filled) > 2:
            filled = Polygon(region.filled)
            assert filled.is_valid
            assert filled.exterior.is_ccw
            crown = 2 / 3 * region.face_m * region.crown_m
            assert filled.area + crown == pytest.approx(region.section_m2, rel=1e-9)
            assert filled.difference(outline.buffer(1e-9)).area <= speck
            assert filled.distance(Point(region.root)) < 1e-9
        assert all(outline.distance(Point(toe)) < 1e-9 for toe in region.face)
    parts = [Polygon(p) for p in (*shape.plates, *((shape.backing,) if shape.backing else ()))]
    for part in parts:
        assert part.is_valid
        for outline in drawn:
            assert part.intersection(outline).area <= 1e-6 * outline.area
    # A back gouge cuts into the first side's metal, and is laid again.
    apart = () if shape.gouged else combinations(drawn, 2)
    for one, other in (*apart, *combinations(parts, 2)):
        assert one.intersection(other).area <= speck
    for dimension in shape.dimensions:
        (x0, y0), (x1, y1) = dimension.start, dimension.end
        assert hypot(x1 - x0, y1 - y0) == pytest.approx(dimension.value_m, rel=1e-9)


@settings(max_examples=300)
@given(typed_joints())
def test_sections_add_up_and_throats_are_within_the_joint(typed: Typed) -> None:
    shape = shape_of(typed)
    whole = sum(r.section_m2 for r in shape.regions)
    assert shape.section_m2 == pytest.approx(whole / (2 if shape.round else 1), rel=1e-12)
    assert shape.round == (typed["joint"] in HOLES)
    both = typed["joint"] in DOUBLES or shape.gouged
    assert len(shape.regions) == (2 if both else 1)
    assert [r.side for r in shape.regions] == ["first", "second"][: len(shape.regions)]
    assert 0 <= shape.crown_m2 < shape.section_m2 * (1 + 1e-9)
    assert shape.crown_room_m2(0.0) == 0
    assert shape.crown_room_m2(0.01) > 0
    assert shape.throat_m > 0
    assert shape.weld == shape.regions[0].outline
    assert shape.gouged <= shape.complete
    wanted = typed.get("back") or ("gouge" if typed["joint"] in DOUBLES else "open")
    assert shape.gouged == (shape.complete and not shape.backing and wanted == "gouge")


def square_v(angle: float, gap: float, depth: float) -> float:
    return groove_joint(Groove("v", angle, gap, depth), 0.02, 0.02, 0.0).section_m2


@given(st.floats(20, 90), st.floats(1, 20), st.floats(0, 0.008), st.floats(1e-4, 0.004))
def test_more_angle_or_gap_never_takes_less_metal(
    angle: float, more_deg: float, gap: float, more_m: float
) -> None:
    kinds: tuple[JointKind, ...] = ("v", "double-v", "bevel", "double-bevel")
    for kind in kinds:
        wide = min(angle, 64.0)
        depths = (0.008, 0.008) if kind.startswith("double") else (0.018, 0.0)

        def section(
            deg: float, m: float, kind: JointKind = kind, depths: tuple[float, float] = depths
        ) -> float:
            groove = Groove(kind, deg, m, *depths)
            return groove_joint(groove, 0.02, 0.02, 0.001).section_m2

        assert section(wide + more_deg, gap) > section(wide, gap)
        assert section(wide, gap + more_m) > section(wide, gap)


@given(st.floats(20, 120), st.floats(0, 0.006), st.floats(0.001, 0.02), st.floats(0, 0.003))
def test_a_v_is_its_triangle_and_its_gap(
    angle: float, gap: float, depth: float, face: float
) -> None:
    thick = depth + face
    shape = groove_joint(Groove("v", angle, gap, depth), thick, thick, 0.0)
    closed = depth**2 * tan(radians(angle / 2)) + gap * thick
    assert shape.section_m2 == pytest.approx(closed, rel=1e-9)
    half = groove_joint(Groove("bevel", angle / 2, gap, depth), thick, thick, 0.0)
    assert 2 * half.section_m2 - gap * thick == pytest.approx(closed, rel=1e-9)


@given(
    st.floats(20, 70),
    st.just(0.0) | st.floats(1e-5, 0.006),
    st.floats(0.004, 0.02),
    st.just(0.0) | st.floats(1e-5, 0.003),
)
def test_a_groove_from_both_sides_takes_half_the_triangles(
    angle: float, gap: float, half: float, face: float
) -> None:
    thick = 2 * half + face
    shape = groove_joint(Groove("double-v", angle, gap, half, half), thick, thick, 0.0)
    closed = 2 * half**2 * tan(radians(angle / 2)) + gap * thick
    assert shape.section_m2 == pytest.approx(closed, rel=1e-9)
    # What lies between the bevels is laid from the first side.
    first, second = shape.regions
    assert first.section_m2 - second.section_m2 == pytest.approx(gap * face, rel=1e-6, abs=1e-15)


@given(st.floats(0.003, 0.03), st.floats(60, 135))
def test_a_skewed_fillet_keeps_the_throat_of_the_square_one(leg: float, skew: float) -> None:
    along = skew_leg(leg, skew)
    assert fillet_throat(along, along, skew) == pytest.approx(leg * 0.70710678, rel=1e-7)
    shape = fillet_joint("tee", 0.01, 0.01, along, along, 0.0, skew_deg=skew)
    (x0, y0), (x1, y1) = shape.regions[0].face
    by_drawing = Point(0, 0).distance(LineString([(x0, y0), (x1, y1)]))
    assert shape.throat_m == pytest.approx(by_drawing, rel=1e-9)
    assert gauge_leg(along, skew) == pytest.approx(along * sin(radians(skew)), rel=1e-12)
    assert shape.section_m2 == pytest.approx(shape.throat_m * shape.face_m / 2, rel=1e-9)


@given(st.floats(0.002, 0.03), st.floats(0.002, 0.03), st.floats(60, 135))
def test_the_throat_is_the_shortest_way_out(leg: float, leg2: float, skew: float) -> None:
    shape = fillet_joint("tee", 0.01, 0.01, leg, leg, 0.0, leg2_m=leg2, wanted_leg2_m=leg2,
                         skew_deg=skew)  # fmt: skip
    face = LineString(shape.regions[0].face)
    assert fillet_throat(leg, leg2, skew) == pytest.approx(Point(0, 0).distance(face), rel=1e-9)
    assert fillet_face(leg, leg2, skew) == pytest.approx(face.length, rel=1e-9)
    right, left = shape.regions[0].face
    assert distance_to_face((0.0, 0.0), right, left) == pytest.approx(shape.throat_m, rel=1e-9)


@given(st.floats(0.005, 0.05), st.floats(0, 0.2), st.floats(0.002, 0.02))
def test_section_times_the_way_around_is_the_volume_of_the_hole(
    hole: float, straight: float, fill: float
) -> None:
    slot = hole + straight
    shape = plug_joint("slot", 0.01, fill * 2, hole, fill)
    plan = LineString([(0, 0), (straight, 0)]).buffer(hole / 2, quad_segs=256)
    if straight == 0:
        plan = Point(0, 0).buffer(hole / 2, quad_segs=256)
    assert shape.section_m2 * turn_length(hole, slot) == pytest.approx(plan.area * fill, rel=1e-4)


def test_a_plug_is_as_long_as_the_way_around_it() -> None:
    job = read_query("joint=plug&plate=1/4in&hole=1/2in&weld_length=6in").job
    assert job.weld_length_m == pytest.approx(3.14159265 / 2 * INCH / 2)
    assert weld_way(job) == job.weld_length_m


@given(st.floats(0.003, 0.02), st.floats(20, 70), st.floats(0, 0.006), st.floats(0, 0.015))
def test_a_beveled_tee_is_its_triangles(depth: float, angle: float, gap: float, leg: float) -> None:
    groove = Groove("tee-bevel", angle, gap, depth, complete=False)
    shape = tee_groove_joint(groove, 0.02, 0.02, leg, 0.0)
    rise = depth * tan(radians(angle))
    closed = depth * rise / 2 + gap * depth + leg * max(leg, gap + rise) / 2
    assert shape.section_m2 == pytest.approx(closed, rel=1e-9)
    doubled = Groove("tee-double-bevel", angle, gap, depth / 2, depth / 2, complete=False)
    both = tee_groove_joint(doubled, 0.02, 0.02, leg, 0.0)
    assert both.regions[0].section_m2 == pytest.approx(both.regions[1].section_m2, rel=1e-12)


@given(st.floats(0.001, 0.005), st.floats(0, 0.002), st.floats(0.0003, 0.003))
def test_a_closed_corner_is_a_square_butt_turned(plate: float, gap: float, crown: float) -> None:
    turned = closed_corner_joint(plate, plate, gap, crown)
    butt = groove_joint(Groove("square", 0.0, gap, plate), plate, plate, crown)
    assert turned.section_m2 == pytest.approx(butt.section_m2, rel=1e-12)
    assert turned.face_m == pytest.approx(butt.face_m, rel=1e-12)


def test_every_entry_some_joint_asks_is_known() -> None:
    assert set().union(*ENTRIES.values()) | {"corner"} == set(JOINT_KEYS)
    assert "leg" not in entries_of("corner", "closed")
    assert "leg" in entries_of("corner", "half")


@pytest.mark.parametrize(
    ("work", "message"),
    [
        (lambda: skew_leg(0.006, 59.9), "skew_deg = 59.9 must be 60 to 135"),
        (lambda: gauge_leg(0.0, 90), "leg_m = 0.0 must be above zero"),
        (lambda: fillet_throat(0.006, 0.006, 136), "skew_deg = 136 must be 60 to 135"),
        (lambda: fillet_face(0.006, -1, 90), "leg2_m = -1 must be above zero"),
        (lambda: fillet_joint("lap", 0.01, 0.01, 0.006, 0.006, 0.0, skew_deg=80),
         "skew_deg = 80 must be 90 but for a tee"),
        (lambda: fillet_joint("corner", 0.01, 0.01, 0.006, 0.006, 0.0, corner="closed"),
         "kind = corner must be one of"),
        (lambda: square_v(0.0, 0.0, 0.01), "angle_deg = 0.0 must be above 0"),
        (lambda: square_v(60.0, -0.001, 0.01), "gap_m = -0.001"),
        (lambda: square_v(60.0, 0.0, 0.021), "must fit in 0.02"),
        (lambda: groove_joint(Groove("tee-bevel", 45, 0, 0.01), 0.02, 0.02, 0.0),
         "kind = tee-bevel must be one of square, v"),
        (lambda: tee_groove_joint(Groove("v", 45, 0, 0.01), 0.02, 0.02, 0.0, 0.0),
         "kind = v must be one of tee-bevel"),
        (lambda: tee_groove_joint(Groove("tee-bevel", 90, 0, 0.01), 0.02, 0.02, 0.0, 0.0),
         "angle_deg = 90 must be above 0 to 85"),
        (lambda: tee_groove_joint(Groove("tee-bevel", 45, 0, 0.03), 0.02, 0.02, 0.0, 0.0),
         "must fit in 0.02"),
        (lambda: tee_groove_joint(Groove("tee-bevel", 45, 0, 0.01), 0.02, 0.02, -1.0, 0.0),
         "leg_m = -1.0 must be 0 or more"),
        (lambda: plug_joint("v", 0.01, 0.01, 0.01, 0.01), "kind = v must be one of plug, slot"),
        (lambda: plug_joint("plug", 0.01, 0.01, 0.01, 0.02), "fill_m = 0.02 must be at most"),
        (lambda: turn_length(0.02, 0.01), "slot_m = 0.01 must be at least hole_m = 0.02"),
        (lambda: closed_corner_joint(0.003, 0.003, 0.0, 0.0), "not both 0"),
    ],
)  # fmt: skip
def test_shapes_that_cannot_be_are_refused(work: object, message: str) -> None:
    assert callable(work)
    with pytest.raises(OutOfRangeError) as caught:
        work()
    assert message in str(caught.value)
