"""Prices by the spool, box, drum and cylinder: what they come to, and what is asked for."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.price_fields import Priced
from beadwright.pages import PAGES

POUND, FOOT = 0.45359237, 0.3048


def wire_lb(query: str, way: int = 0) -> float:
    return answer("cost", f"leg=5/16in&{query}").costs[way].way.wire_kg * POUND


def gas_ft3(query: str, way: int = 0) -> float:
    return answer("cost", f"leg=5/16in&{query}").costs[way].way.gas_m3 * FOOT**3


@pytest.mark.parametrize(
    "query",
    [
        "wire_price=2/lb",
        "wire_price=$66/spool&spool=33lb",
        "wire_price=66/33lb",
        "wire_price=88 / box&spool=44lb",
        "wire_price=1,000/500lb",
        "wire_price=$1000/drum&spool=500lb",
        "spool_price=66&spool=33lb",
        "spool_price=66&spool=33lb&wire_price=9/lb",
        "units=si&wire_price=66/14.96854821kg",
    ],
)
def test_two_dollars_a_pound_however_it_is_billed(query: str) -> None:
    assert wire_lb(query) == pytest.approx(2.0, rel=1e-9)


@pytest.mark.parametrize(
    "query",
    [
        "gas_price=0.10/ft3",
        "gas_price=33/cylinder&cylinder_gas=330ft3",
        "gas_price=$33/330ft3",
        "gas_price=33 / bottle&cylinder_gas=330",
        "cylinder_price=33&cylinder_gas=330ft3&gas_price=9/ft3",
    ],
)
def test_ten_cents_a_cubic_foot_however_it_is_billed(query: str) -> None:
    assert gas_ft3(query) == pytest.approx(0.10, rel=1e-9)


@pytest.mark.parametrize(
    ("query", "key", "says"),
    [
        ("wire_price=$62/spool", "spool", "how much wire is on it"),
        ("wire_price=62/drum", "spool", "how much wire is on it"),
        ("spool_price=62", "spool", "how much wire is on it"),
        ("b_spool_price=75", "b_spool", "how much wire is on it"),
        ("b_wire_price=75/spool", "b_spool", "how much wire is on it"),
        ("gas_price=38/cylinder", "cylinder_gas", "how much gas a full one holds"),
        ("cylinder_price=38", "cylinder_gas", "how much gas a full one holds"),
        ("wire_price=62/0lb", "wire_price", "an empty package has no price"),
        ("wire_price=62/33ft", "wire_price", "unit not known"),
        ("gas_price=38/33lb", "gas_price", "unit not known"),
        ("wire_price=-62/spool", "wire_price", "below zero"),
        ("wire_price=62/bag", "wire_price", "unit not known"),
    ],
)
def test_a_price_without_its_content_is_asked_about(query: str, key: str, says: str) -> None:
    errors = answer_json("cost", f"leg=5/16in&{query}")["errors"]
    assert list(errors) == [key]
    assert says in errors[key][0]


def test_a_later_way_has_its_own_price_before_that_of_the_first() -> None:
    drum = "spool_price=66&spool=33lb"
    assert wire_lb(f"{drum}&b_wire_price=2.80/lb", 1) == pytest.approx(2.80)
    assert wire_lb(f"{drum}&b_spool_price=99", 1) == pytest.approx(3.0)
    assert wire_lb(f"{drum}&b_wire_price=90/spool&b_spool=45lb", 1) == pytest.approx(2.0)
    assert wire_lb(f"{drum}&b_wire=ER70S-3", 1) == pytest.approx(2.0)
    bottle = "cylinder_price=33&cylinder_gas=330ft3"
    assert gas_ft3(f"{bottle}&b_gas_price=0.2/ft3", 1) == pytest.approx(0.2)
    assert gas_ft3(bottle, 1) == pytest.approx(0.1)


def test_a_cylinder_kept_without_its_gas_is_told_and_not_counted() -> None:
    found = answer("cost", "gas_price=0.2/ft3", {"cylinder_price": "38"})
    assert found.costs[0].way.gas_m3 * FOOT**3 == pytest.approx(0.2)
    assert "money.cylinder-uncounted" in [note.key for note in found.notes]


def test_what_a_package_outranks_is_not_called_invented() -> None:
    spool = answer("cost", "spool_price=62&spool=33lb").query
    assert "wire_price" in spool.outranked
    assert "gas_price" in answer("cost", "cylinder_price=38&cylinder_gas=330ft3").query.outranked
    assert not answer("cost", "").query.outranked


def test_a_price_is_read_with_its_package() -> None:
    price = PAGES["cost"].fields["wire_price"]
    assert price.deserialize("$62/spool", "wire_price", {}) == Priced(62.0, package=True)
    assert price.deserialize("2", "wire_price", {}) == Priced(2 / POUND)
    assert price.deserialize("2", "wire_price", {"units": "si"}) == Priced(2.0)


def test_the_supplies_page_prices_its_packages_too() -> None:
    query = "leg=5/16in&wire_price=66/spool&spool=33lb&waste=0%25&rework=0%25"
    [wire, *_] = answer("supplies", query).purchases
    assert wire.price == pytest.approx(66.0)
