"""Spools and cylinders at hand, worked by hand on the way of ``plain_way``."""

import re
from dataclasses import replace
from math import pi
from typing import Any

import pytest

from beadwright.money.cost_ways import PlannedWay
from beadwright.process.wires import wire_of
from beadwright.supply.leftovers import cylinder_left, spool_left
from beadwright.supply.spools import PACKAGES_KG, PACKING, left_by_size, left_by_weight, packages
from beadwright.supply.supplies_page import supplies_answer
from beadwright.supply.supplies_query import CylinderEntries, SpoolEntries
from tests.calc.plain_way import PLAIN
from tests.told import in_words


def planned(query: str = "") -> PlannedWay:
    return replace(supplies_answer(query).planned, way=PLAIN)


def test_share_of_a_winding_that_is_wire() -> None:
    # Common practice: 0.60 to 0.80, 0.70 taken.
    assert PACKING == (0.60, 0.70, 0.80)


def test_packages_with_wire_on_the_machine() -> None:
    # 10 kg needed, 0.5 on hand: two of 5 kg, both loaded on the way, 0.5 left.
    found = packages(10.0, 5.0, 0.5)
    assert (found.count, found.changes) == (2, 2)
    assert found.left_kg == pytest.approx(0.5, rel=1e-12)
    # Nothing on hand: the first of the two is on before the job starts.
    assert packages(10.0, 5.0).changes == 1


def test_rounding_of_a_need_buys_no_package() -> None:
    assert packages(30.0 + 1.2e-8, 15.0).count == 2
    assert packages(30.0 + 1e-6, 15.0).count == 3


def test_an_empty_spool_is_empty() -> None:
    assert left_by_weight(2.0, 2.0) == 0.0
    assert left_by_size(wire_of("ER70S-6", "0.045in"), 0.1, 0.1, 0.1) == (0.0, 0.0, 0.0)


def at_hand(**read: Any) -> CylinderEntries:
    return CylinderEntries(gas_temp=294.26, **read)


def test_a_spool_weighed() -> None:
    found = spool_left(SpoolEntries(spool_gross=6.0, spool_empty=1.0), planned())
    assert found is not None
    assert found.wire_kg == (5.0, 5.0, 5.0)
    # 4 kg of the 5 are melted, 3.2 laid; 0.5 kg to the meter: 6.4 m.
    assert found.weld_m == pytest.approx((6.4, 6.4, 6.4), rel=1e-12)
    assert found.parts == pytest.approx(5 / 1.953125, rel=1e-12)
    assert found.arc_s == pytest.approx(4000, rel=1e-12)


def test_a_spool_measured() -> None:
    sizes = SpoolEntries(spool_outside=0.3, spool_hub=0.1, spool_width=0.1)
    found = spool_left(sizes, planned("wire=ER70S-6&dia=0.045in"))
    assert found is not None
    ring = pi / 4 * (0.09 - 0.01) * 0.1
    # Solid steel, 7850 kg/m³, 0.6 to 0.8 of the ring filled.
    assert found.wire_kg == pytest.approx(tuple(s * ring * 7850 for s in (0.6, 0.7, 0.8)), rel=1e-3)
    taken = found.wire_kg[1]
    assert found.parts == pytest.approx(taken / 1.953125, rel=1e-12)
    assert found.arc_s == pytest.approx(taken * 0.8 / 1e-3, rel=1e-12)
    assert found.wire_m == pytest.approx(taken / (7850 * pi / 4 * (0.045 * 0.0254) ** 2), rel=1e-3)


def test_co2_weighed() -> None:
    found = cylinder_left(at_hand(co2_mass=20.0), None, planned("gas=CO2"))
    assert found is not None
    # 20 kg / 44.01 g/mol × 8.3145 × 294.26 K / 101 325 Pa = 10.97 m³, half a percent less as real.
    assert found.gas_m3 == pytest.approx((10.91, 10.91, 10.91), rel=5e-3)
    assert found.lasts_s == pytest.approx(found.gas_m3[1] / 3e-4, rel=1e-12)
    assert found.parts == pytest.approx(found.gas_m3[1] / 0.4875, rel=1e-12)
    # 36 370 s.
    assert re.fullmatch(r"Lasts 60\d min with the gas on: 22 parts\.", in_words(found.phrase))


def test_little_gas_is_not_none() -> None:
    found = cylinder_left(at_hand(co2_mass=1.0), None, planned("gas=CO2"))
    assert found is not None
    assert in_words(found.phrase).startswith("Lasts 30 min")


def test_an_empty_cylinder_says_so() -> None:
    found = cylinder_left(at_hand(gauge=0.0, water=0.05), None, planned("gas=90/10"))
    assert found is not None
    assert in_words(found.phrase).startswith("Empty: under ")
    assert found.parts == 0


@pytest.mark.parametrize(
    ("name", "pounds"),
    [("10lb", 10), ("33lb", 33), ("44lb", 44), ("60lb", 60), ("250lb", 250), ("500lb", 500),
     ("600lb", 600), ("1000lb", 1000)],
)  # fmt: skip
def test_a_package_holds_what_its_name_says(name: str, pounds: float) -> None:
    assert PACKAGES_KG[name] == pytest.approx(pounds * 0.45359237, rel=1e-12)
