"""A fillet from its gauge readings: by hand, and as a polygon by shapely."""

from math import cos, radians, sin, sqrt

import pytest
from shapely.geometry import LineString, Point, Polygon

from beadwright.errors import OutOfRangeError
from beadwright.inspection.measured_fillet import (
    MeasuredFillet,
    crown_of_throat,
    leg_from_gauge,
)

MM = 0.001
ANGLES = (60.0, 75.0, 90.0, 110.0, 135.0)
LEGS = ((6.0, 6.0), (6.0, 8.0), (9.0, 5.0))


def face_line(leg: float, leg2: float, skew: float) -> LineString:
    turn = radians(skew)
    return LineString([(leg, 0.0), (leg2 * cos(turn), leg2 * sin(turn))])


@pytest.mark.parametrize("skew", ANGLES)
@pytest.mark.parametrize(("leg", "leg2"), LEGS)
def test_throat_face_and_section_are_those_of_the_polygon(
    leg: float, leg2: float, skew: float
) -> None:
    fillet = MeasuredFillet(leg * MM, leg2 * MM, skew)
    face = face_line(leg, leg2, skew)
    assert fillet.flat_throat_m / MM == pytest.approx(Point(0, 0).distance(face), rel=1e-12)
    assert fillet.face_m / MM == pytest.approx(face.length, rel=1e-12)
    area = Polygon([(0, 0), *face.coords]).area
    assert fillet.section_m2(1.0) / MM**2 == pytest.approx(area, rel=1e-12)
    assert fillet.section_m2(1.2) / MM**2 == pytest.approx(1.2 * area, rel=1e-12)


@pytest.mark.parametrize("crown", [1.5, -0.8])
@pytest.mark.parametrize("skew", ANGLES)
def test_a_crown_is_a_parabola_on_the_face(crown: float, skew: float) -> None:
    leg, leg2 = 7.0, 9.0
    fillet = MeasuredFillet(leg * MM, leg2 * MM, skew, crown * MM)
    (x0, y0), (x1, y1) = face_line(leg, leg2, skew).coords
    long = sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2)
    out = ((y1 - y0) / long, -(x1 - x0) / long)
    bulge = [(x0 + (x1 - x0) * s + out[0] * 4 * s * (1 - s) * crown,
              y0 + (y1 - y0) * s + out[1] * 4 * s * (1 - s) * crown)
             for s in (step / 2000 for step in range(2001))]  # fmt: skip
    area = Polygon([(0, 0), *bulge]).area
    assert fillet.section_m2(9.9) / MM**2 == pytest.approx(area, rel=1e-6)


def test_a_hollow_takes_from_the_throat_and_a_crown_adds_nothing() -> None:
    # 3-4-5: flat throat 3·4/5 = 2.4.
    assert MeasuredFillet(3 * MM, 4 * MM, 90.0, 0.5 * MM).throat_m == pytest.approx(2.4 * MM)
    assert MeasuredFillet(3 * MM, 4 * MM, 90.0, -0.5 * MM).throat_m == pytest.approx(1.9 * MM)
    assert MeasuredFillet(3 * MM, 4 * MM, 90.0).throat_m == pytest.approx(2.4 * MM)


def test_a_face_measured_counts_before_one_from_the_legs() -> None:
    assert MeasuredFillet(3 * MM, 4 * MM, 90.0, width_m=6 * MM).face_m == 6 * MM


@pytest.mark.parametrize("skew", ANGLES)
def test_a_gauge_reads_the_toe_square_across(skew: float) -> None:
    leg, turn = 10.0, radians(skew)
    other = LineString([(-40 * cos(turn), -40 * sin(turn)), (40 * cos(turn), 40 * sin(turn))])
    reading = Point(leg, 0.0).distance(other)
    assert leg_from_gauge(reading * MM, skew) / MM == pytest.approx(leg, rel=1e-12)


def test_a_throat_measured_tells_crown_and_hollow() -> None:
    assert crown_of_throat(2.9 * MM, 3 * MM, 4 * MM, 90.0) == pytest.approx(0.5 * MM)
    assert crown_of_throat(2.0 * MM, 3 * MM, 4 * MM, 90.0) == pytest.approx(-0.4 * MM)


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan")])
def test_no_reading_at_or_below_zero_is_taken(bad: float) -> None:
    with pytest.raises(OutOfRangeError):
        leg_from_gauge(bad, 90.0)
    with pytest.raises(OutOfRangeError):
        crown_of_throat(bad, 0.01, 0.01, 90.0)
