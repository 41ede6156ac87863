"""The leg where none is asked for, and the shape it is laid in, worked by hand."""

import pytest

from beadwright.job.job import Job
from beadwright.job.job_joint import ROUNDED_CORNER, joint_shape, wanted_leg
from beadwright.job.job_query import read_query
from beadwright.job.usual_leg import UPHILL_OVER_PLATE, USUAL_LEG_IN, leg_of_plate, usual_leg

INCH = 0.0254
JOB = "wire=ER70S-6&dia=0.045in&gas=90/10"


def job(query: str) -> Job:
    return read_query(query).job


def test_the_usual_leg_by_plate() -> None:
    """Inches on inches, as a shop would chalk them up."""
    typed = ((0.030, 0.080), (0.060, 0.100), (0.080, 0.115), (0.125, 0.140), (3 / 16, 3 / 16),
             (1 / 4, 3 / 16), (1 / 2, 1 / 4), (3 / 4, 5 / 16))  # fmt: skip
    assert tuple(USUAL_LEG_IN) == typed
    for thin, leg in ((0.02, 0.080), (0.045, 0.090), (0.375, 0.21875), (0.625, 0.28125),
                      (2.0, 0.3125)):  # fmt: skip
        assert leg_of_plate(thin * INCH) == pytest.approx(leg * INCH)


@pytest.mark.parametrize("position", ["1F", "2F", "4F", "3F-down"])
def test_a_blank_leg_is_that_of_the_plate(position: str) -> None:
    here = job(f"{JOB}&plate=1/4in&position={position}")
    assert usual_leg(here) == pytest.approx(3 / 16 * INCH)
    assert wanted_leg(here) == usual_leg(here)


def test_an_uphill_leg_is_what_the_held_current_lays() -> None:
    """E71T-1C 0.045 in in CO2, 1/2 in plate, by hand: 200 A, at most 7 in/min.

    On 24 V the arc takes 3.5 mm of the 19.05: 3.387 × 200 + 5.339e-7 × 200² × 15.55e-3 /
    (0.731 × 1.0261e-6) W; of 1.30e6 J/kg that melts, 85 % is laid.
    """
    here = job("wire=E71T-1C&dia=0.045in&gas=CO2&plate=1/2in&position=3F-up")
    watts = 3.387 * 200 + 5.339e-7 * 200**2 * 15.55e-3 / (0.86 * 0.85 * 1.0261e-6)
    section = watts / 1.30e6 * 0.85 / (7 * INCH / 60) / 7850
    leg = usual_leg(here)
    assert leg == pytest.approx((section / 0.6) ** 0.5, rel=0.01)
    assert leg > leg_of_plate(here.thinner_m)


def test_an_uphill_leg_goes_no_further_than_a_quarter_over_its_plate() -> None:
    assert UPHILL_OVER_PLATE == 1.25
    here = job("wire=E71T-1C&dia=1/16in&gas=CO2&plate=1/4in&position=3F-up")
    assert usual_leg(here) == pytest.approx(1.25 * INCH / 4)


def test_metal_cored_wire_wets_flatter() -> None:
    """1.1 times the flat triangle flat and horizontal, against 1.2 for solid and flux-cored."""
    flat = 0.5 * (0.25 * INCH) ** 2
    for name, position, over in (
        ("E70C-6M", "2F", 1.1), ("E70C-6M", "1F", 1.1), ("E70C-6M", "3F-up", 1.2),
        ("ER70S-6", "2F", 1.2), ("E71T-1M", "2F", 1.2),
    ):  # fmt: skip
        gas = "75/25" if name == "E71T-1M" else "90/10"
        asked = job(f"wire={name}&dia=0.045in&gas={gas}&plate=3/8in&leg=1/4in&position={position}")
        assert joint_shape(asked)[0].section_m2 == pytest.approx(over * flat)


def test_an_outside_corner_is_filled_round() -> None:
    """Where no leg is asked for: a crown of 0.4 of the face, as far as the code lets it go."""
    assert ROUNDED_CORNER == 0.4
    thin = joint_shape(job(f"{JOB}&plate=0.060in&joint=corner"))[0]
    leg = job(f"{JOB}&plate=0.060in&joint=corner")
    face = 2**0.5 * wanted_leg(leg)
    crown = thin.crown_m2 * 3 / 2 / face
    assert crown == pytest.approx(min(0.4 * face, INCH / 16), rel=1e-3)
