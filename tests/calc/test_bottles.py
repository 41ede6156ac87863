"""The bottle at hand by its size; packages and cylinders by the week worked."""

import pytest

from beadwright.api import answer
from beadwright.supply.cylinder_sizes import BOTTLES
from beadwright.supply.cylinders import content, water_volume
from beadwright.supply.supplies_page import SuppliesAnswer
from tests.calc.shop_checks import ARGON
from tests.calc.ways import MB3
from tests.told import in_words


def supplies(query: str = "") -> SuppliesAnswer:
    return answer("supplies", f"{MB3}&{query}")


@pytest.mark.parametrize(
    ("size", "water"),
    [("330", "48.8L"), ("250ft3", "44.2L"), ("125", "21.6L"), ("80 ft³", "14.1L")],
)
def test_the_size_of_the_bottle_stands_in_for_its_water_volume(size: str, water: str) -> None:
    by_size = supplies(f"gauge=1500psi&bottle={size}").gas_left
    stamped = supplies(f"gauge=1500psi&bottle={size}&water={water}").gas_left
    assert by_size is not None
    assert stamped is not None
    low, taken, high = by_size.gas_m3
    assert taken == pytest.approx(stamped.gas_m3[1], rel=0.005)
    assert (low, high) == pytest.approx((0.93 * taken, 1.07 * taken))
    assert stamped.size is None  # what is stamped rules
    assert by_size.size is not None
    assert f"Taken as a {by_size.size.shown} bottle" in in_words(by_size.phrase)


def test_the_size_bought_stands_in_where_no_other_is_tapped() -> None:
    bought = supplies("gauge=1500psi&cylinder=250ft3").gas_left
    tapped = supplies("gauge=1500psi&cylinder=330ft3&bottle=250ft3").gas_left
    assert bought == tapped
    liters = supplies("gauge=1500psi&bottle=20L").gas_left
    assert liters is not None
    assert liters.gas_m3[0] == liters.gas_m3[2]  # a liter size is its water volume


def test_a_full_bottle_of_argon_holds_what_it_is_called() -> None:
    for name, size in BOTTLES.items():
        water = water_volume(size)
        assert water is not None
        assert size.filled_pa is not None
        if size.content_m3 is not None:
            assert content(ARGON, size.filled_pa, water) == pytest.approx(size.content_m3), name


def test_packages_and_cylinders_last_in_weeks_worked() -> None:
    # 500 parts in 50 weeks: ten a week.
    found = supplies("parts=500&weeks=50&spool=33lb").supplies
    cost = answer("cost", MB3).costs[0].way
    assert found.package_weeks == pytest.approx(33 * 0.45359237 / cost.bought_kg / 10)
    assert found.cylinder_m3 is not None
    assert found.cylinder_weeks == pytest.approx(found.cylinder_m3 / cost.gas_part_m3 / 10)
    assert found.cylinders_a_week == pytest.approx(10 * cost.gas_part_m3 / found.cylinder_m3)
    fewer = supplies("parts=500&weeks=25&spool=33lb").supplies
    assert fewer.package_weeks == pytest.approx(33 * 0.45359237 / cost.bought_kg / 20)
    assert fewer.package_years == pytest.approx(found.package_years)
    none = supplies("parts=0").supplies
    assert none.package_weeks is None
    assert none.cylinder_weeks is None
