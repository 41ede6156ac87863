"""A blank leg is told on the marks of a rule; a typed one as it was typed."""

import pytest

from beadwright.job.job_joint import told_leg, wanted_leg
from beadwright.job.job_query import read_query

UPHILL = "plate=1/2in&position=3F-up&wire=E71T-1C&dia=1/16in&gas=CO2"


def test_a_blank_leg_is_told_in_thirty_seconds_of_an_inch() -> None:
    job = read_query(UPHILL).job
    sizes = told_leg(job) / 0.0254 * 32
    assert sizes == pytest.approx(round(sizes))
    assert abs(told_leg(job) - wanted_leg(job)) <= 0.0254 / 64


def test_a_blank_leg_is_told_in_half_millimeters() -> None:
    job = read_query(f"units=si&{UPHILL.replace('1/2in', '12mm')}").job
    halves = told_leg(job) / 0.0005
    assert halves == pytest.approx(round(halves))
    assert abs(told_leg(job) - wanted_leg(job)) <= 0.00025


@pytest.mark.parametrize("typed", ["leg=0.319in", "leg2=0.319in"])
def test_a_typed_leg_is_told_as_typed(typed: str) -> None:
    job = read_query(f"{UPHILL}&{typed}").job
    assert told_leg(job) == wanted_leg(job)
