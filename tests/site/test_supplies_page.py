"""The Supplies page: the core's numbers, errors beside what is weighed and read, odd figures."""

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site.forms.filling import Filling
from beadwright_site.pages.supplies.form import supplies_form
from beadwright_site.pages.supplies.page import PAGE
from beadwright_site.written import cents
from tests.site.page import by_id, words
from tests.told import in_words

EXAMPLE = PAGES["supplies"].example

QUERIES = (
    EXAMPLE,
    "units=si&plate=10mm&leg=8mm&count=500&spool=15kg&cylinder=50L",
    "leg=5/16in&gas=CO2&co2_mass=20lb&count=400",
    "leg=5/16in&gauge=1200psi&water=43L&spool_gross=20lb&spool_empty=2lb",
    "leg=5/16in&spool_outside=8in&spool_hub=2in&spool_width=3.5in&cylinder=bulk",
)


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_numbers_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/supplies/?{query}").text
    found = answer("supplies", query)
    need = words(by_id(page, "need"))
    for value, measure in ((found.supplies.wire_kg, "mass"), (found.supplies.gas_m3, "gas_volume"),
                           (found.supplies.arc_s, "hours")):  # fmt: skip
        assert units.show(value, measure, found.units) in need
    listed = words(by_id(page, "buy"))
    for row in found.purchases:
        assert f"{row.count:,} × {row.item}" in listed
        assert row.amount is None or cents(row.amount, "$") in listed
    spool = words(by_id(page, "spool"))
    if found.spool is None:
        assert "Weigh it" in spool
    else:
        assert units.show(found.spool.weld_m[1], "distance", found.units) in spool
    if found.gas_left is not None:
        assert in_words(found.gas_left.phrase, found.units) in words(by_id(page, "cylinder"))


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("spool_gross=20lb", "spool_empty", "Weigh an empty spool"),
        ("spool_gross=2lb&spool_empty=4lb", "spool_gross", "weighs less than when empty"),
        ("spool_outside=8in", "spool_hub", "barrel"),
        ("gas=CO2&gauge=800psi", "co2_mass", "Weigh the cylinder"),
        ("gauge=lots", "gauge", "lots"),
        ("gas_temp=500F&gauge=100", "gas_temp", "500F"),
    ],
)
def test_an_error_stands_beside_its_field(
    client: FlaskClient, query: str, key: str, said: str
) -> None:
    page = client.get(f"/supplies/?{query}").text
    field = by_id(page, key)
    assert field.attrs["aria-invalid"] == "true"
    assert said in words(by_id(page, field.attrs["aria-describedby"]))
    for name, value in (pair.split("=") for pair in query.split("&")):
        if name != "gas":
            assert by_id(page, name).attrs["value"] == value


def test_the_size_of_the_bottle_is_asked_beside_its_taps(client: FlaskClient) -> None:
    asked = client.get("/supplies/?gauge=1200psi").text
    assert "Tap the size of this bottle" in words(by_id(asked, "field-bottle"))
    assert by_id(asked, "gauge").attrs["value"] == "1200psi"
    shown = client.get("/supplies/?gauge=1200psi&bottle=125").text
    assert "not known" not in words(by_id(shown, "field-bottle"))
    assert "Taken as a 122 ft³ bottle" in words(by_id(shown, "cylinder"))


@pytest.mark.parametrize(
    ("query", "part", "said"),
    [
        ("count=0", "need", "Nothing to buy"),
        ("parts=0", "notes", "how long a package lasts: type how many you weld"),
        ("parts=1&spool=1000lb", "notes", "a lifetime of wire"),
        ("gauge=40psi&water=43L", "cylinder", "Empty"),
        ("cylinder=bulk", "need", "gas from the bulk tank"),
    ],
)
def test_odd_figures_give_a_sentence(client: FlaskClient, query: str, part: str, said: str) -> None:
    page = client.get(f"/supplies/?leg=5/16in&{query}").text
    assert said in words(by_id(page, part))
    text = " ".join(words(by_id(page, p)) for p in PAGE.parts if p != "job-form").lower()
    assert " nan" not in text
    assert " inf " not in text


def test_the_size_s_room_is_shown_and_the_scale_s_is_not(client: FlaskClient) -> None:
    sized = words(by_id(client.get(f"/supplies/?{QUERIES[4]}").text, "spool"))
    weighed = words(by_id(client.get(f"/supplies/?{QUERIES[3]}").text, "spool"))
    assert "–" in sized
    assert "–" not in weighed


@pytest.mark.parametrize(
    ("query", "seldom"),
    [
        ("wire=ER70S-6&dia=0.045in", {"10lb", "5kg"}),
        ("wire=ER70S-6&dia=0.030in&plate=16ga&gas=75/25",
         {"60lb", "250lb", "500lb", "600lb", "1000lb"}),
        ("wire=E70C-6M&dia=0.045in", {"10lb", "5kg", "1000lb"}),
        ("wire=E71T-1M&dia=0.052in&gas=75/25", {"10lb", "1000lb"}),
    ],
)  # fmt: skip
def test_packages_seldom_sold_of_a_wire_say_so(query: str, seldom: set[str]) -> None:
    """Small spools are of thin wire, drums of thicker; cored wire to 600 lb: common practice."""
    found = answer("supplies", query)
    form = supplies_form(Filling({}, {}, "us"), found)
    (spool,) = [e for group in form.groups for e in group.entries if e.key == "spool"]
    assert {o.value for o in spool.options if o.under == "seldom sold"} == seldom


def test_the_year_s_work_is_counted_as_on_cost(client: FlaskClient) -> None:
    page = client.get("/supplies/?leg=5/16in&parts_week=24").text
    assert by_id(page, "parts_week").attrs["value"] == "24"
    refused = client.get("/supplies/?parts=500&parts_month=50").text
    assert "both written" in words(by_id(refused, "field-volume_by"))
