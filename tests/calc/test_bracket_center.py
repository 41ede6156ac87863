"""Brackets about their center, out of the plane of the weld: the Manual's case, and what is not."""

from math import cos, radians, sin

import pytest

from beadwright.errors import OutOfRangeError
from beadwright.strength.bracket_center import bracket_strength, turns_as_bracket
from beadwright.strength.elastic_line import GroupLoad
from beadwright.strength.weld_group import WeldGroup, polyline_group, shaped_group
from tests.calc.strength_asked import ask
from tests.told import told

BRACKET = "plate=1in&plate2=1in&group=line&group_height=10in&py=-40kip&load_z=5in"


def test_a_bracket_by_the_manual_s_coefficient() -> None:
    # a 0.5, k 0: 0.75 C is 1.72, C 2.293 (Table 8-38). A 1/4 in leg: 2.293 x 4 x 10 = 91.7 kip,
    # half of it with Ω 2.00.
    found = ask(f"{BRACKET}&leg=1/4in&analysis=ic")
    assert found.weld.use == pytest.approx(40 / 45.87, rel=6e-3)
    # Elastic: 4 kip/in down, 200/(10²/6) = 12 across, 12.65 in all, on both sides; 1/4 in holds
    # 2 x 4 x 0.9280.
    elastic = ask(f"{BRACKET}&leg=1/4in")
    assert elastic.weld.use == pytest.approx((4**2 + 12**2) ** 0.5 / 7.424, rel=1e-3)
    assert elastic.weld.use / found.weld.use == pytest.approx(1.95, abs=0.02)


def test_the_elastic_answer_says_what_the_center_would_ask() -> None:
    # 12.65/(2 x 0.9280) = 6.8: 7/16. By the center 40/(2.293 x 10/2) = 3.49: 1/4 in.
    found = ask(BRACKET)
    assert found.legs.needed == pytest.approx(7 / 16 * 0.0254)
    assert found.legs.by_center == pytest.approx(1 / 4 * 0.0254)
    # 1 in plate asks 5/16 in at the least: still less than 7/16.
    said = [told(note) for note in found.notes if note.key == "strength.center-asks-less"]
    assert len(said) == 1
    assert "1/4 in" in said[0]
    light = ask(BRACKET.replace("40kip", "20kip"))  # 4/16 and 2/16 are both under the least
    assert "strength.center-asks-less" not in {note.key for note in light.notes}
    for query in ("design_code=en&steel=S355J2", "weld_sides=1", "load_x=1in", "analysis=ic"):
        assert ask(f"{BRACKET}&{query}").legs.by_center is None


def test_the_case_is_named() -> None:
    keys = {note.key for note in ask(f"{BRACKET}&analysis=ic").notes}
    assert "strength.center-of-bracket" in keys
    flat = ask("group=line&group_height=10in&py=-40kip&analysis=ic&leg=1/4in")
    assert "strength.center-of-bracket" not in {note.key for note in flat.notes}


def test_what_the_points_carry_pulls_at_the_top() -> None:
    found = ask(f"{BRACKET}&analysis=ic&leg=1/4in")
    low, high = found.spread.forces
    assert high.place.y > low.place.y
    assert high.fz > 0 > low.fz
    assert high.fy < 0
    assert found.spread.center is None
    assert found.weld.asked == pytest.approx(1 / found.spread.factor)


def test_two_lines_hold_alike_at_any_distance_apart() -> None:
    near = ask(f"{BRACKET}&analysis=ic&leg=1/4in")
    far = ask(f"{BRACKET}&analysis=ic&leg=1/4in&group=lines&group_width=8in".replace(
        "group=line&", "", 1))  # fmt: skip
    assert far.weld.use == pytest.approx(near.weld.use)


def test_level_lines_turn_about_their_own_axis() -> None:
    level = shaped_group("flats", 1.0, 0.3)
    upright = shaped_group("lines", 0.3, 1.0)
    one = bracket_strength(level, GroupLoad(px=-1.0, my=-0.5), 1.0)
    two = bracket_strength(upright, GroupLoad(py=-1.0, mx=0.5), 1.0)
    assert one.factor == pytest.approx(two.factor, rel=1e-6)
    assert {round(force.fy, 9) for force in one.forces} == {0.0}


@pytest.mark.parametrize(
    ("load", "covered"),
    [
        (GroupLoad(py=-1.0, mx=0.5), True),
        (GroupLoad(pz=1.0), True),
        (GroupLoad(mx=1.0), True),
        (GroupLoad(px=0.1, py=-1.0, mx=0.5), False),  # across the lines
        (GroupLoad(py=-1.0, mx=0.5, mz=0.1), False),  # nearer to one line
        (GroupLoad(py=-1.0, mx=0.5, my=0.1), False),  # twists the bracket
    ],
)
def test_only_a_load_midway_between_the_lines_is_covered(load: GroupLoad, covered: bool) -> None:
    assert turns_as_bracket(shaped_group("lines", 0.1, 0.2), load, 2) is covered


def test_lines_that_run_two_ways_are_no_bracket() -> None:
    c = shaped_group("c", 0.1, 0.2)
    assert not turns_as_bracket(c, GroupLoad(py=-1.0, mx=0.5), 3)
    with pytest.raises(OutOfRangeError, match="more than one way"):
        bracket_strength(c, GroupLoad(py=-1.0, mx=0.5), 1.0)


def test_a_line_in_two_parts_is_one_line() -> None:
    task = ask("group=polyline:0,0 0,3 0,6&py=-5kip&weld_sides=2&leg=1/4in").task
    assert task.lines == 2
    assert len(polyline_group(((0.0, 0.0), (0.0, 3.0), (0.0, 6.0))).stretches) == 2


@pytest.mark.parametrize("degrees", [0, 35, 90, 150])
def test_a_bracket_holds_the_same_however_it_leans_and_wherever_it_lies(degrees: int) -> None:
    """Two lines of 0.25 m, 30 mm apart, turned together with their load."""
    c, s = cos(radians(degrees)), sin(radians(degrees))

    def turned(x: float, y: float) -> tuple[float, float]:
        return 1.3 + c * x - s * y, -0.7 + s * x + c * y

    group = WeldGroup("lines", tuple((turned(x, 0.0), turned(x, 0.25)) for x in (0.0, 0.03)))
    load = GroupLoad(px=s, py=-c, mx=0.1 * c, my=0.1 * s)
    assert turns_as_bracket(group, load, 2)
    upright = bracket_strength(shaped_group("lines", 0.03, 0.25), GroupLoad(py=-1.0, mx=0.1), 1.0)
    found = bracket_strength(group, load, 1.0)
    assert found.factor == pytest.approx(upright.factor, rel=1e-6)
    # The forces add up to the load: across and along the lines.
    top = max(found.forces, key=lambda force: force.fz)
    same = max(upright.forces, key=lambda force: force.fz)
    assert (top.fx, top.fy) == pytest.approx((-s * same.fy, c * same.fy), abs=1e-6 * same.total)
    assert top.fz == pytest.approx(same.fz, rel=1e-6)
    # A force across the lines is no such case, nor is one that twists the bracket.
    assert not turns_as_bracket(group, GroupLoad(px=c, py=s, mx=0.1 * c, my=0.1 * s), 2)
    assert not turns_as_bracket(group, GroupLoad(px=s, py=-c, mx=-0.1 * s, my=0.1 * c), 2)
