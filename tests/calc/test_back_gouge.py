"""Back gouges against outlines drawn by discs and tangents; their metal on every page that sums."""

from itertools import pairwise
from math import acos, cos, hypot, radians, sin, tan
from typing import Any

import pytest
from shapely import Point, Polygon, box, unary_union
from shapely.affinity import rotate, scale, translate
from shapely.geometry.base import BaseGeometry

from beadwright.api import answer_json
from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.job_joint import joint_shape
from beadwright.job.job_query import read_query
from beadwright.joint.back_gouge import BackGouge, back_wall, sound_depth

IN = 0.0254


def gouge(depth: float, top: float) -> BaseGeometry:
    """A U of 1/4 in radius, 20° between its walls, its bottom at 0, up to a height [in].

    Drawn as a disc and the two tangents to it.
    """
    lean = radians(10)
    out, up = 0.25 * cos(lean), 0.25 * (1 - sin(lean))
    far = out + (9 - up) * tan(lean)
    walls = Polygon([(-out, up), (out, up), (far, 9), (-far, 9)])
    disc = Point(0, 0.25).buffer(0.25, quad_segs=400)
    assert depth <= top
    return disc.union(walls).intersection(box(-9, 0, 9, top))


def second(query: str) -> Polygon:
    """The second side's metal to its straight face, in inches, its back at the top."""
    job = read_query(query).job
    outline = [(x / IN, y / IN) for x, y in joint_shape(job)[0].regions[1].filled]
    return Polygon(outline)


def same(one: BaseGeometry, other: BaseGeometry) -> bool:
    """Whether two outlines are the same within what chords of a round bottom leave."""
    return one.symmetric_difference(other).area < 0.003 * other.area


@pytest.mark.parametrize("joint", ["v", "bevel"])
@pytest.mark.parametrize(
    ("typed", "plate", "deep"),
    [
        ("", 0.5, 1 / 16 + 1 / 8),
        ("root_face=0", 0.5, 1 / 8),
        ("root_face=1/8in&gap=0", 0.5, 1 / 4),
        ("gouge_depth=3/8in", 0.5, 3 / 8),
        ("gouge_depth=1/4in&gap=0", 0.5, 1 / 4),
        # A shallow groove: no more than half of it. 1/4 in plate, 3/16 cut: 1/16 + 3/32.
        ("", 0.25, 1 / 16 + 3 / 32),
    ],
)
def test_a_flat_back_is_gouged_to_a_u(joint: str, typed: str, plate: float, deep: float) -> None:
    """1/8 in past the root face (common practice), or the depth typed; closed form beside it."""
    query = f"joint={joint}&plate={plate}in&back=gouge&reinforcement=0&{typed}"
    expected = scale(translate(gouge(deep, deep), 0, -deep), 1, -1, origin=(0, 0))
    assert same(translate(second(query), 0, plate), expected)
    region = joint_shape(read_query(query).job)[0].regions[1]
    # Segment of a circle, and a trapezoid on it.
    rise = 0.25 * (1 - sin(radians(10)))
    turn = acos(1 - deep / 0.25) if deep < rise else radians(80)
    area = 0.25**2 * (turn - sin(turn) * cos(turn))
    if deep > rise:
        high = deep - rise
        area += high * (2 * 0.25 * cos(radians(10)) + high * tan(radians(10)))
    assert region.section_m2 / IN**2 == pytest.approx(area, rel=2e-3)
    assert region.root == pytest.approx((0.0, (deep - plate) * IN))


@pytest.mark.parametrize(
    "typed",
    ["", "gap=0", "gap=1/4in", "gap=0.48in", "gap=1/2in", "angle=20deg", "gouge_depth=3/8in"],
)
def test_a_v_on_the_second_side_is_gouged_to_u_and_v(typed: str) -> None:
    query = f"joint=double-v&plate=1in&depth=1/2in&depth2=7/16in&reinforcement=0&{typed}"
    words = dict(part.split("=") for part in typed.split("&") if part)
    half = {"": 1 / 8, "0": 0.0, "1/4in": 1 / 4, "0.48in": 0.48, "1/2in": 1 / 2}[
        words.get("gap", "")
    ] / 2
    lean = tan(radians(10 if "angle" in words else 30))
    deep = 3 / 8 if "gouge_depth" in words else 1 / 16 + 1 / 8
    top = 7 / 16 + deep
    vee = Polygon([(-half, deep), (half, deep), (half + lean * 7 / 16, top),
                   (-half - lean * 7 / 16, top)])  # fmt: skip
    wanted = gouge(deep, top).union(vee)
    found = scale(translate(second(query), 0, 1 - top), 1, -1, origin=(0, 0))
    assert same(found, wanted)
    assert found.bounds == pytest.approx(wanted.bounds, abs=1e-6)
    assert found.is_valid


def test_a_square_edge_is_left_as_it_is() -> None:
    """As in the prequalified J grooves: the left plate is beveled 45°, the right one is square."""
    query = "joint=double-bevel&plate=1in&depth=1/2in&depth2=7/16in&reinforcement=0"
    deep, top = 3 / 16, 7 / 16 + 3 / 16
    bevel = Polygon([(-1 / 16, deep), (1 / 16, deep), (1 / 16, top), (-1 / 2, top)])
    wanted = gouge(deep, top).intersection(box(-9, 0, 1 / 16, 9)).union(bevel)
    wanted = wanted.union(box(0, 0, 1 / 16, top))
    assert same(scale(translate(second(query), 0, 1 - top), 1, -1, origin=(0, 0)), wanted)


@pytest.mark.parametrize("double", [True, False])
def test_a_tee_is_gouged_in_its_upright(double: bool) -> None:
    """Half a U above the plate, in the middle of the gap; groove and fillet over it."""
    joint = "tee-double-bevel&depth=1/2in&depth2=7/16in" if double else "tee-bevel&back=gouge"
    query = f"joint={joint}&plate=1in&plate2=1in&leg=1/8in&reinforcement=0&gap=1/8in"
    deep, behind = 3 / 16, 7 / 16 if double else 0.0
    across = rotate(gouge(deep, deep + behind), -90, origin=(0, 0))
    cut = translate(across, -deep - behind, 1 / 16).intersection(box(-9, 0, 0, 9))
    cut = cut.union(box(-deep - behind, 0, 0, 1 / 16))
    groove = Polygon([(-behind, 0), (0, 0), (0, 1 / 8 + behind), (-behind, 1 / 8)])
    cut = cut.union(groove) if double else cut
    top = cut.bounds[3] if double else cut.intersection(box(-1e-6, 0, 0, 9)).bounds[3]
    wanted = cut.union(Polygon([(0, 0), (1 / 8, 0), (0, max(1 / 8, top))]))
    assert same(translate(scale(second(query), -1, 1, origin=(0, 0)), -1, 0), wanted)


JOB = "joint=v&plate=1/2in&position=1G&weld_length=10in&welds=4"
LINE = "A,v,1/2in,,10in,4,1G,,,"


def at(answer: Any, path: str) -> float:
    """The number a path leads to."""
    for key in path.split("."):
        answer = answer[int(key) if key.isdigit() else key]
    return float(answer["value"])


@pytest.mark.parametrize(
    ("page", "path", "near"),
    [
        ("dial-in", "metal", 1e-3),
        ("dial-in", "wire_mass", 1e-3),
        ("passes", "metal", 1e-3),
        ("passes", "wire", 0.02),  # the root of the first side sprays less of its wire away
        ("cost", "ways.0.metal", 1e-3),
        ("cost", "ways.0.wire_bought", 1e-3),
        ("supplies", "wire", 1e-3),
        ("list", "totals.0.metal", 1e-3),
        ("list", "totals.0.wire", 1e-3),
    ],
)
def test_the_gouged_metal_is_counted(page: str, path: str, near: float) -> None:
    """Metal and wire go with the section: on the first side's, the gouge and its crown."""
    shapes = [joint_shape(read_query(f"{JOB}&back={back}").job)[0] for back in ("open", "gouge")]
    wide = shapes[1].regions[1].face_m / IN
    added = (shapes[1].section_m2 - shapes[0].section_m2) / IN**2
    crown = 2 / 3 * wide * 1 / 16
    assert added == pytest.approx(gouge(3 / 16, 3 / 16).area + crown, rel=2e-3)
    asked = f"lines={LINE}back=%s" if page == "list" else f"{JOB}&back=%s"
    open_, gouged = (at(answer_json(page, asked % b)["answer"], path) for b in ("open", "gouge"))
    assert gouged / open_ == pytest.approx(shapes[1].section_m2 / shapes[0].section_m2, rel=near)


@pytest.mark.parametrize(
    ("page", "path"),
    [("dial-in", "arc_time"), ("passes", "arc_time"), ("cost", "ways.0.times.0"),
     ("cost", "ways.0.time"), ("supplies", "arc"), ("list", "totals.0.arc")],
)  # fmt: skip
def test_welding_the_gouge_takes_time(page: str, path: str) -> None:
    asked = f"lines={LINE}back=%s" if page == "list" else f"{JOB}&back=%s"
    open_, gouged = (at(answer_json(page, asked % b)["answer"], path) for b in ("open", "gouge"))
    assert 1.1 * open_ < gouged < 2 * open_


@pytest.mark.parametrize(
    ("query", "fields", "says"),
    [
        ("joint=v&back=gouge&gouge_depth=1/16in", {"gouge_depth", "root_face"}, "Gouge deeper."),
        ("joint=v&back=gouge&gouge_depth=3/8in", {"gouge_depth"}, "Gouge less deep."),
        ("joint=double-v&plate=1in&gouge_depth=17/32in", {"gouge_depth"}, "Gouge less deep."),
        ("joint=v&back=gouge&backing=steel", {"back", "backing"}, "A backing closes the back"),
        ("joint=v&back=gouge&depth=3/16in", {"back", "depth"}, "Cut it deeper"),
        (
            "joint=square&position=1G&back=gouge&gouge_depth=3/16in&plate=3/8in",
            {"gouge_depth", "plate"},
            "Gouge deeper.",
        ),
        (
            "joint=square&position=1G&back=gouge&gouge_depth=3/8in&plate=3/8in",
            {"gouge_depth"},
            "Gouge less deep.",
        ),
        (
            "joint=square&position=1G&back=gouge&backing=steel",
            {"back", "backing"},
            "A backing closes the back",
        ),
        ("joint=square&position=1G&back=gouge&depth=1/8in", {"back", "depth"}, "Cut it deeper"),
    ],
)
def test_what_no_gouge_can_be_is_said_beside_its_field(
    query: str, fields: set[str], says: str
) -> None:
    with pytest.raises(FieldErrors) as refused:
        read_query(query)
    assert set(refused.value.messages) == fields
    assert all(says in " ".join(said) for said in refused.value.messages.values())


@pytest.mark.parametrize(
    "query",
    [
        "joint=v&back=gouge&gouge_depth=5/64in",
        "joint=v&back=gouge&gouge_depth=23/64in",
        "joint=double-v&plate=1in&gouge_depth=33/64in",
        "joint=v&back=gouge&depth=1/4in",
        "joint=v&back=open&backing=steel",
        "joint=double-v&plate=1in&depth=1/4in&depth2=1/4in&gouge_depth=1/32in",
    ],
)
def test_what_a_gouge_can_be_is_taken(query: str) -> None:
    assert joint_shape(read_query(query).job)[0].section_m2 > 0


def test_a_depth_without_a_gouge_is_named_and_left_aside() -> None:
    for joint, named in (("v", True), ("v&back=gouge", False), ("double-v", False), ("tee", True)):
        notes = answer_json("dial-in", f"joint={joint}&plate=1/2in&gouge_depth=1/8in")["notes"]
        assert any(": depth of gouge" in each["text"] for each in notes) == named


@pytest.mark.parametrize(
    ("face", "first"), [(-0.001, 0.01), (float("inf"), 0.01), (0.001, 0.0), (0.001, -1.0)]
)
def test_no_depth_for_edges_that_cannot_be(face: float, first: float) -> None:
    with pytest.raises(OutOfRangeError):
        sound_depth(face, first)


@pytest.mark.parametrize(
    "gouge", [BackGouge(0.0), BackGouge(-0.001), BackGouge(0.003, 0.0), BackGouge(0.003, 0.006, -1),
              BackGouge(0.003, 0.006, 180)]
)  # fmt: skip
def test_no_wall_for_a_gouge_that_cannot_be(gouge: BackGouge) -> None:
    with pytest.raises(OutOfRangeError):
        back_wall(gouge, 0.003, 0.0, 0.0)


def test_straight_walls_at_no_angle() -> None:
    wall = back_wall(BackGouge(0.010, 0.004, 0.0), 0.003, 0.0, 0.0)
    assert wall[0] == (0.0, 0.0)
    assert [each for point in wall[-2:] for each in point] == pytest.approx(
        [0.004, 0.004, 0.010, 0.004]
    )


@pytest.mark.parametrize("deep", [0.001, 0.004, 0.00525])
def test_the_round_bottom_is_cut_into_even_chords(deep: float) -> None:
    """A 1/4 in radius: (out)² + (r - level)² = r², to the tangent of the walls at 80°."""
    wall = back_wall(BackGouge(deep), 0.0, 0.0, 0.0)
    arc = wall[:-1]
    assert len(arc) == 17
    assert [hypot(out, 0.00635 - level) for level, out in arc] == pytest.approx([0.00635] * 17)
    steps = [hypot(y1 - y0, x1 - x0) for (y0, x0), (y1, x1) in pairwise(arc)]
    assert steps == pytest.approx([steps[0]] * 16)
    assert wall[-1][0] == deep
    assert arc[-1][0] == pytest.approx(min(deep, 0.00635 * (1 - sin(radians(10)))))


@pytest.mark.parametrize(
    "joint",
    [
        "v&back=gouge",
        "bevel&back=gouge",
        "double-v",
        "double-bevel",
        "double-v&gap=1/2in",
        "square&back=gouge",
        "square&back=gouge&gap=1/8in",
    ],
)
def test_plates_and_metal_fill_a_gouged_butt(joint: str) -> None:
    """What is gouged is cut out of the plates: they and the metal make the whole plate, level."""
    shape = joint_shape(read_query(f"joint={joint}&plate=1in&reinforcement=0").job)[0]
    plates = [Polygon(plate) for plate in shape.plates]
    metal = unary_union([Polygon(region.outline) for region in shape.regions])
    whole = unary_union([*plates, metal])
    assert all(plate.is_valid for plate in plates)
    assert all(plate.intersection(metal).area < 1e-6 * metal.area for plate in plates)
    assert whole.area == pytest.approx(box(*whole.bounds).area, rel=1e-6)
