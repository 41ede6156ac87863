"""What stands behind a check: which reading counts, with the gap, the skew, one leg alone."""

from math import inf, sqrt
from typing import Any, Literal

import pytest

from beadwright.api import answer
from beadwright.inspection.inspected import Inspected, inspected, least, most, never
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.phrases import say

IN = 0.0254
JOB = "plate=3/8in&leg=5/16in"
NAME = say("inspection.leg")


def weld(query: str, **seen: float) -> Inspected:
    lengths: dict[str, Any] = {key: value * IN for key, value in seen.items()}
    readings = WeldReadings(read_by="along", **lengths)
    return inspected(answer("dial-in", query).dialled.job, readings)


@pytest.mark.parametrize(
    ("found", "limit", "state", "way", "off"),
    [(1.0, 1.0, "in", "most", 0.0), (1.1, 1.0, "out", "most", 0.1), (0.0, 0.0, "in", "none", 0.0),
     (0.5, 0.0, "out", "none", 0.5), (None, 1.0, "unknown", "most", 0.0),
     (9.9, inf, "in", "most", 0.0), (1.0 + 9e-10, 1.0, "in", "most", 0.0)],
)  # fmt: skip
def test_a_most_is_held_to_the_nanometer(
    found: float | None, limit: float, state: str, way: str, off: float
) -> None:
    check = most("leg", "1", NAME, found, limit, "practice")
    assert (check.state, check.way) == (state, way)
    assert check.off == pytest.approx(off)


@pytest.mark.parametrize(
    ("found", "state", "off"), [(1.0, "in", 0.0), (0.9, "out", 0.1), (1.0 - 9e-10, "in", 0.0)]
)
def test_a_least_is_held_to_the_nanometer(found: float, state: str, off: float) -> None:
    check = least("leg", "1", NAME, found, 1.0, "practice")
    assert (check.state, check.way) == (state, "least")
    assert check.off == pytest.approx(off)


def test_what_no_weld_may_have_has_no_limit_but_none() -> None:
    seen = never("crack", "100", NAME, "crater", "practice")
    assert (seen.state, seen.limit, seen.way, seen.off) == ("out", 0.0, "none", 0.0)
    assert (seen.key, seen.number) == ("crack", "100")
    assert never("crack", "100", NAME, "no", "practice").state == "in"
    assert never("crack", "100", NAME, None, "practice").state == "unknown"


def test_of_two_throats_the_lesser_counts() -> None:
    flat = 5 / 16 / sqrt(2)
    legs = {"leg_found": 5 / 16, "leg2_found": 5 / 16}
    assert weld(JOB, **legs, throat_found=0.3, convexity=0.1).throat_found_m == pytest.approx(
        0.2 * IN
    )
    assert weld(JOB, **legs, throat_found=0.4, convexity=0.1).throat_found_m == pytest.approx(
        flat * IN
    )
    assert weld(JOB, **legs, concavity=0.05).throat_found_m == pytest.approx((flat - 0.05) * IN)
    assert weld(JOB).throat_found_m is None


def test_a_throat_with_legs_tells_crown_or_hollow() -> None:
    """Legs 0.3 and 0.4 in: flat throat 0.24."""
    legs = {"leg_found": 0.3, "leg2_found": 0.4}
    over, under = weld(JOB, **legs, throat_found=0.29), weld(JOB, **legs, throat_found=0.2)
    assert over.crown_found_m == pytest.approx(0.05 * IN)
    assert under.crown_found_m == 0.0
    assert under.throat_found_m == pytest.approx(0.2 * IN)
    assert over.throat_found_m == pytest.approx(0.24 * IN)
    assert weld(JOB, **legs).crown_found_m is None


def test_a_gap_to_three_sixteenths_adds_to_legs_and_throat_and_a_wider_one_does_not() -> None:
    held = weld(JOB, gap_found=3 / 16)
    assert held.shape.leg_m == pytest.approx(0.5 * IN)
    assert held.throat_wanted_m == pytest.approx(0.5 / sqrt(2) * IN)
    assert held.leg_m == pytest.approx(5 / 16 * IN)
    wide = weld(JOB, gap_found=1 / 4)
    assert wide.shape.leg_m == pytest.approx(5 / 16 * IN)
    assert (held.gap_m, wide.gap_m) == (3 / 16 * IN, 1 / 4 * IN)
    assert weld(f"{JOB}&gap=1/8in").gap_m == pytest.approx(IN / 8)
    assert weld("joint=v&plate=1/2in").gap_m == weld("joint=v&plate=1/2in").shape.gap_m
    assert weld("joint=v&plate=1/2in").throat_wanted_m == 0.0


def test_one_leg_alone_gives_the_other_in_proportion() -> None:
    job = "plate=1/2in&leg=1/4in&leg2=3/8in"
    first, second = weld(job, leg_found=0.2), weld(job, leg2_found=0.3)
    for one in (first, second):
        assert one.fillet is not None
        assert one.fillet.one_leg
        assert (one.fillet.leg_m / IN, one.fillet.leg2_m / IN) == pytest.approx((0.2, 0.3))
    assert first.legs_found[1] is None
    assert second.legs_found[0] is None
    both = weld(job, leg_found=0.2, leg2_found=0.4, face=0.5)
    assert both.fillet is not None
    assert not both.fillet.one_leg
    assert (both.face_m, both.length_m) == (0.5 * IN, both.job.weld_length_m)
    assert weld(job, length_found=5).length_m == pytest.approx(5 * IN)


def test_a_shop_s_own_metal_counts_in_the_sums() -> None:
    """A wire that lays nine tenths of print makes the weld hold a ninth more than the sums."""
    query = f"{JOB}&wfs=350&volts=27&travel=11&leg_found=9/32in&leg2_found=9/32in"
    plain, own = (
        answer("inspect", each).change
        for each in (query, f"{query}&own=ER70S-6,0.045in,90/10,n7,eff0.9,spread0.02")
    )
    assert plain is not None
    assert own is not None
    assert own.laid_over_sums == pytest.approx(plain.laid_over_sums / 0.9)
    assert own.changes[0].travel_m_s == plain.changes[0].travel_m_s


def test_unequal_legs_of_a_skewed_tee_are_read_along_the_plate_or_by_gauge() -> None:
    """A gauge reads leg × sin 120°, 0.86603 of it: 0.3 and 0.4 in are 0.34641 and 0.46188."""

    def legs(
        job: str, read_by: Literal["along", "gauge"], first: float | None = 0.3
    ) -> list[float | None]:
        leg = None if first is None else first * IN
        readings = WeldReadings(read_by=read_by, leg_found=leg, leg2_found=0.4 * IN)
        told = inspected(answer("dial-in", job).dialled.job, readings).legs_found
        return [None if leg is None else leg / IN for leg in told]

    skewed = f"{JOB}&skew=120"
    assert legs(skewed, "along") == pytest.approx([0.3, 0.4])
    assert legs(skewed, "gauge") == pytest.approx([0.34641, 0.46188], rel=1e-4)
    assert legs(JOB, "gauge") == pytest.approx([0.3, 0.4])
    assert legs(skewed, "gauge", None) == [None, pytest.approx(0.46188, rel=1e-4)]


def test_a_face_measured_counts_without_a_leg_and_a_groove_has_no_legs() -> None:
    assert weld(JOB, face=0.5).face_m == pytest.approx(0.5 * IN)
    groove = weld("joint=v&plate=1/2in", face=0.6, leg_found=0.25, leg2_found=0.25)
    assert groove.face_m == pytest.approx(0.6 * IN)
    assert groove.legs_found == (None, None)
