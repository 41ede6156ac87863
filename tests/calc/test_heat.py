"""What thin plate stands: the limits of common practice, held to their typed numbers."""

import pytest

from beadwright.api import answer
from beadwright.job.job_query import read_query
from beadwright.process.heat import burn_through_current, fusion_current
from beadwright.process.materials import CARBON_STEEL
from beadwright.setting.heat_limits import heat_ceiling_j_m


@pytest.mark.parametrize(("thickness_mm", "amps"), [(1.2, 105.3), (3.2, 239.2), (4.5, 326.2)])
def test_burn_through_current_of_common_practice(thickness_mm: float, amps: float) -> None:
    """25 A and 1.7 A for each 0.001 in: common practice, worked by hand."""
    assert burn_through_current(thickness_mm / 1000, CARBON_STEEL) == pytest.approx(amps, abs=0.1)


@pytest.mark.parametrize(
    ("thickness_mm", "printed_top_a"), [(1.2, 100), (1.6, 120), (2.3, 140), (3.2, 170), (4.5, 250)]
)
def test_no_printed_current_burns_through(thickness_mm: float, printed_top_a: float) -> None:
    """Highest current by thickness: power-source manuals, condition tables (found)."""
    assert printed_top_a <= burn_through_current(thickness_mm / 1000, CARBON_STEEL)


@pytest.mark.parametrize(
    ("thickness_mm", "printed_low_a"), [(1.2, 60), (1.6, 90), (2.3, 110), (3.2, 120), (4.5, 190)]
)
def test_no_printed_current_lies_unfused(thickness_mm: float, printed_low_a: float) -> None:
    """Lowest current by thickness: power-source manuals, condition tables (found)."""
    assert printed_low_a >= fusion_current(thickness_mm / 1000, CARBON_STEEL)


@pytest.mark.parametrize(
    ("thickness_mm", "amps"), [(3.175, 75.0), (4.7625, 112.5), (6.35, 112.5), (25.4, 112.5)]
)
def test_plate_over_three_sixteenths_asks_no_more(thickness_mm: float, amps: float) -> None:
    """0.6 A for each 0.001 in to 3/16 in: 0.6 × 125, 0.6 × 187.5; common practice."""
    assert fusion_current(thickness_mm / 1000, CARBON_STEEL) == pytest.approx(amps)


def test_heat_that_thin_plate_stands() -> None:
    """0.25 kJ/mm for each mm: common practice; printed butts reach 0.17."""
    plate = read_query("plate=3.2mm").job
    assert heat_ceiling_j_m(plate) == pytest.approx(0.8e6)  # 0.8 kJ/mm
    assert CARBON_STEEL.burn_through_j_m2 / 1e9 == pytest.approx(0.25)


def test_thin_ends_just_under_a_quarter_inch() -> None:
    """Common practice: 1/4 in plate takes a 1/4 in fillet in one pass."""
    assert heat_ceiling_j_m(read_query("plate=1/4in").job) == float("inf")
    assert heat_ceiling_j_m(read_query("plate=5.9mm").job) < float("inf")
    assert CARBON_STEEL.thin_m == pytest.approx(6.0e-3)
    assert answer("dial-in", "plate=1/4in&leg=1/4in").dialled.plan.passes == 1
