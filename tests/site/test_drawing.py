"""Joints are drawn to scale and dimensioned with what they measure."""

from collections.abc import Sequence
from math import hypot, isclose

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright import units
from beadwright.api import answer
from beadwright.joint.joints import JOINTS, Dimension, JointShape
from beadwright_site.drawings.axes import nice_step, round_values
from beadwright_site.drawings.joint_drawing import HEIGHT, WIDTH, JointDrawing, draw_joint
from beadwright_site.drawings.map_drawing import draw_map

JOBS = (
    "plate=3/8in&leg=5/16in",
    "plate=1in&plate2=1/4in&leg=1/4in",
    "joint=lap&plate=1/4in&leg=3/16in",
    "joint=corner&plate=3/8in&leg=1/4in",
    "joint=square&plate=3/16in",
    "joint=square&plate=1/4in&plate2=3/16in&gap=1/8in",
    "plate=4in&leg=5/16in",
    "plate=22ga",
    "units=si&plate=10mm&leg=8mm",
    "joint=v&plate=1/2in",
    "joint=v&plate=1in&backing=steel",
    "joint=double-v&plate=1in",
    "joint=double-bevel&plate=1in&plate2=1-1/4in",
    "joint=tee-bevel&plate2=3/4in&depth=3/8in",
    "joint=tee-double-bevel&plate2=1in",
    "joint=corner&corner=half",
    "joint=corner&corner=closed&plate=10ga",
    "joint=plug",
    "joint=slot&plate2=1in",
    "skew=60deg",
    "skew=120deg&leg=1/4in",
    "leg=1/4in&leg2=3/8in",
)


def write(dimension: Dimension) -> str:
    return units.show(dimension.value_m, "leg", "us")


def drawn(query: str) -> tuple[JointShape, JointDrawing]:
    shape = answer("dial-in", query).dialled.plan.shape
    return shape, draw_joint(shape, write)


def points(text: str) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in (pair.split(",") for pair in text.split())]


def scale_of(shape: JointShape, drawing: JointDrawing) -> float:
    """Pixels a meter, by the longer side of all that is drawn: the least error of rounding."""
    on_paper = longer_side(*map(points, (*drawing.plates, *drawing.welds)))
    return on_paper / longer_side(*shape.plates, *(r.outline for r in shape.regions))


def longer_side(*outlines: Sequence[tuple[float, float]]) -> float:
    """Width or height of what is drawn, whichever is larger."""
    (left, bottom), (right, top) = (
        [end(point[way] for outline in outlines for point in outline) for way in (0, 1)]
        for end in (min, max)
    )
    return max(right - left, top - bottom)


@pytest.mark.parametrize("query", JOBS)
def test_every_length_is_drawn_to_the_one_scale(query: str) -> None:
    shape, drawing = drawn(query)
    scale = scale_of(shape, drawing)
    outlines = (*shape.plates, *(r.outline for r in shape.regions))
    for outline, text in zip(outlines, (*drawing.plates, *drawing.welds), strict=True):
        on_paper = points(text)
        assert len(on_paper) == len(outline)
        for at in range(len(outline)):
            (x0, y0), (x1, y1) = outline[at - 1], outline[at]
            (u0, v0), (u1, v1) = on_paper[at - 1], on_paper[at]
            assert u1 - u0 == pytest.approx((x1 - x0) * scale, abs=0.02)
            assert v1 - v0 == pytest.approx((y0 - y1) * scale, abs=0.02)


@pytest.mark.parametrize("query", JOBS)
def test_a_dimension_line_is_as_long_as_what_is_written_on_it(query: str) -> None:
    shape, drawing = drawn(query)
    by_name = {d.name: d for d in shape.dimensions}
    angles = {a.name: a.value_deg for a in shape.angles}
    for mark in drawing.marks:
        if mark.name in angles:
            assert mark.label.text == f"{angles[mark.name]:g}°"
            continue
        dimension = by_name[mark.name]
        assert mark.label.text == write(dimension)
        length = hypot(dimension.end[0] - dimension.start[0], dimension.end[1] - dimension.start[1])
        if mark.name != "reinforcement":  # measured upright, from toe height to crown height
            assert isclose(length, dimension.value_m, rel_tol=1e-9)
        # The third stroke of the path is the dimension line itself.
        stroke = mark.path.split("M")[3]
        start, _, end = stroke.replace("H", "V").partition("V")
        along = start.split()[1] if "V" in stroke else start.split()[0]
        assert abs(float(end) - float(along)) == pytest.approx(
            dimension.value_m * scale_of(shape, drawing), abs=0.11
        )


@pytest.mark.parametrize("query", [JOBS[0], *JOBS[2:6]])
def test_a_usual_joint_stands_whole_on_the_paper_with_all_its_dimensions(query: str) -> None:
    shape, drawing = drawn(query)
    names = [mark.name for mark in drawing.marks]
    assert "leg" in names or "reinforcement" in names
    across = shape.kind == "square" and shape.dimensions[0].value_m == shape.dimensions[1].value_m
    assert ({"plate"} if across else {"plate", "plate2"}) <= set(names)
    for text in (*drawing.plates, drawing.welds[0]):
        assert on_the_paper(text)
    gaps = [d for d in shape.dimensions if d.name == "gap" and d.value_m > 0]
    assert ("gap" in names) == bool(gaps)


def on_the_paper(outline: str) -> bool:
    return all(0 <= x <= WIDTH and 0 <= y <= HEIGHT for x, y in points(outline))


@pytest.mark.parametrize("query", [JOBS[1], JOBS[6]])
def test_on_thick_plate_the_weld_is_still_seen(query: str) -> None:
    shape, drawing = drawn(query)
    assert not all(map(on_the_paper, drawing.plates))
    assert shape.leg_m * scale_of(shape, drawing) >= 12
    # What runs off the paper has no dimension.
    assert not {"plate", "plate2"} <= {mark.name for mark in drawing.marks}


@settings(max_examples=60)
@given(
    st.sampled_from(JOINTS),
    st.floats(0.02, 4),
    st.floats(0.02, 4),
)
def test_any_joint_can_be_drawn(joint: str, plate: float, plate2: float) -> None:
    query = f"joint={joint}&plate={plate:.4f}in&plate2={plate2:.4f}in"
    shape, drawing = drawn(query)
    assert scale_of(shape, drawing) > 0
    for x, y in points(drawing.welds[0]):
        assert -60 < x < WIDTH + 60
        assert -60 < y < HEIGHT + 60
    assert shape.kind == joint


@pytest.mark.parametrize("query", [*JOBS, "plate=16ga", "transfer=pulse", "gas=CO2"])
def test_the_map_keeps_everything_inside_its_frame(query: str) -> None:
    found = answer("dial-in", query)
    drawing = draw_map(found.window_map, found.query.job.units)
    field = drawing.field
    left, top, right, bottom = field.left, field.top, field.right, field.bottom
    outlines = [region.points for region in drawing.regions] + [drawing.window]
    for text in outlines:
        for x, y in points(text):
            assert left - 0.1 <= x <= right + 0.1
            assert top - 0.1 <= y <= bottom + 0.1
    assert all(left <= tick.at <= right for tick in drawing.feed_ticks)
    assert len(drawing.feed_ticks) >= 2
    assert len(drawing.volts_ticks) >= 2


def test_the_map_s_point_stands_where_its_axes_say() -> None:
    found = answer("dial-in", "plate=3/8in&leg=5/16in&wfs=400in/min&volts=25")
    drawing = draw_map(found.window_map, "us")
    assert drawing.point is not None
    ends = [(float(tick.text), tick.at) for tick in drawing.feed_ticks]
    (f0, x0), (f1, x1) = ends[0], ends[-1]
    assert drawing.point[0] == pytest.approx(x0 + (400 - f0) * (x1 - x0) / (f1 - f0), abs=0.01)
    ends = [(float(tick.text), tick.at) for tick in drawing.volts_ticks]
    (u0, y0), (u1, y1) = ends[0], ends[-1]
    assert drawing.point[1] == pytest.approx(y0 + (25 - u0) * (y1 - y0) / (u1 - u0), abs=0.01)


@pytest.mark.parametrize(("span", "step"), [(10, 2), (273, 100), (24, 5), (0.9, 0.2), (5, 1)])
def test_a_step_is_round(span: float, step: float) -> None:
    assert nice_step(span, 5) == pytest.approx(step)


@pytest.mark.parametrize(
    ("low", "high", "step", "values"),
    [
        (0.3, 10, 2, [2, 4, 6, 8, 10]),
        (0.3, 1.2, 0.2, [0.4, 0.6, 0.8, 1.0, 1.2]),
        (0, 273, 100, [0, 100, 200]),
        (15, 40, 5, [15, 20, 25, 30, 35, 40]),
    ],
)
def test_round_values_reach_from_end_to_end(
    low: float, high: float, step: float, values: list[float]
) -> None:
    assert round_values(low, high, step) == pytest.approx(values)
