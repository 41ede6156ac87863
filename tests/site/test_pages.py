"""Pages as Flask answers them."""

import re
from urllib.parse import urlencode

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.job.job_entries import DEFAULTS
from beadwright.joint.joint_entries import JOINT_KEYS, entries_of
from beadwright.joint.joints import JOINTS, JointKind
from beadwright.pages import PAGES
from beadwright_site.links import PATHS
from tests.site.page import by_id, elements, words
from tests.told import in_words

EXAMPLE_QUERY = PAGES["dial-in"].example

QUERIES = (
    "",
    EXAMPLE_QUERY,
    "wire=E70C-6M&leg=5/16in",
    "joint=square&plate=3/16in&position=1G",
    "joint=lap&plate=10ga&position=3F-down&transfer=short&gas=75/25&dia=0.035in",
    "joint=corner&plate=3/8in&plate2=1/4in",
    "joint=corner&corner=half",
    "skew=120deg&leg=1/4in",
    "joint=v&plate=1/2in&backing=steel",
    "joint=tee-double-bevel&plate2=1in",
    "units=si&joint=double-v&plate=20mm&depth=5mm&depth2=6mm",
    "joint=slot&plate2=1in&pitch=8in",
    "units=si&plate=10mm&leg=8mm",
    "plate=3/8in&leg=5/16in&wfs=450in/min&volts=22",
    "transfer=pulse",
    "plate=16ga",
    "plate=3in&leg=3/4in&position=3F-up",
    "gas=CO2&transfer=spray",
)


@pytest.mark.parametrize("path", ["/", *(f"/{path}" for path in PATHS.values())])
def test_every_page_answers(client: FlaskClient, path: str) -> None:
    assert client.get(path).status_code == 200


def test_an_unknown_address_answers_not_found(client: FlaskClient) -> None:
    response = client.get("/no/such/page")
    assert response.status_code == 404
    assert "No such page" in response.text


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_numbers_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/?{query}").text
    found = answer("dial-in", query).dialled
    system = found.job.units
    for key, setting in zip(("wfs", "volts", "travel", "ctwd"), found.settings.all(), strict=True):
        if setting.value is None:
            continue
        if not found.open and key != "wfs" and not setting.by_hand:
            continue  # shut: what cannot be set is not offered
        shown = words(by_id(page, f"set-{key}"))
        assert units.show(setting.value, setting.measure, system) in shown
        for end in (setting.low, setting.high):
            if end is not None:
                assert units.show(end, setting.measure, system) in shown
    if found.outcome is not None:
        facts = words(by_id(page, "facts"))
        for quantity in (found.outcome.current, found.outcome.laid, found.outcome.gas_flow):
            assert quantity.value is not None
            assert units.show(quantity.value, quantity.measure, system) in facts


def test_a_default_page_is_marked_as_an_example(client: FlaskClient) -> None:
    assert words(by_id(client.get("/").text, "state")) == "Example job"
    assert words(by_id(client.get(f"/?{EXAMPLE_QUERY}").text, "state")) == "Your job"


def test_heat_says_by_which_convention(client: FlaskClient) -> None:
    # EN 1011-1 counts 0.8 of what ASME IX QW-409.1(a) counts; US readers get the one, SI the other.
    us = words(by_id(client.get("/?plate=3/8in&leg=5/16in").text, "facts"))
    si = words(by_id(client.get("/?plate=3/8in&leg=5/16in&units=si").text, "facts"))
    assert "heat input, AWS" in us
    assert "heat input, EN × 0.8" in si
    found = answer("dial-in", "plate=3/8in&leg=5/16in&units=si").dialled.outcome
    assert found is not None
    assert found.heat.value is not None
    assert f"{0.8 * found.heat.value / 1e6:.2f} kJ/mm" in si


@pytest.mark.parametrize("joint", JOINTS)
def test_every_entry_the_joint_asks_is_in_the_form_with_a_label(
    client: FlaskClient, joint: JointKind
) -> None:
    page = client.get(f"/?joint={joint}").text
    everything = elements(page)
    labelled = {e.attrs["for"] for e in everything if e.tag == "label" and "for" in e.attrs}
    asked = [key for key in DEFAULTS if key not in JOINT_KEYS or key in entries_of(joint)]
    left = [key for key in DEFAULTS if key not in asked]
    assert not [e for e in everything if e.tag == "input" and e.attrs.get("name") in left]
    for key in asked:
        fields = [e for e in everything if e.tag == "input" and e.attrs.get("name") == key]
        assert fields, key
        if fields[0].attrs["type"] == "radio":
            group = by_id(page, f"field-{key}")
            assert group.tag == "fieldset"
            assert group.children[0].tag == "legend"
            assert words(group.children[0])
            assert sum("checked" in e.attrs for e in fields) == 1
        else:
            assert [e.attrs["id"] for e in fields] == [key]
            assert key in labelled


def test_errors_stand_beside_their_fields_and_the_rest_is_kept(client: FlaskClient) -> None:
    page = client.get("/?plate=abc&gas=foo&leg=5/16in").text
    everything = {e.attrs.get("id"): e for e in elements(page)}
    plate = everything["plate"]
    assert plate.attrs["value"] == "abc"
    assert plate.attrs["aria-invalid"] == "true"
    assert "abc" in words(by_id(page, plate.attrs["aria-describedby"]))
    assert "foo" in words(by_id(page, "wrong-gas"))
    gas = [e for e in elements(page) if e.attrs.get("name") == "gas"]
    assert not [e for e in gas if "checked" in e.attrs]
    [line] = [e for e in gas if e.attrs["type"] == "text"]
    assert line.attrs["value"] == "foo"  # what was typed stays until changed
    assert line.attrs["aria-describedby"] == "wrong-gas"
    assert everything["leg"].attrs["value"] == "5/16in"
    assert "open" in everything["change"].attrs
    assert not [key for key in everything if key and key.startswith("set-")]  # no numbers for it


def test_a_shut_window_says_why_and_offers_ways_out(client: FlaskClient) -> None:
    page = client.get("/?plate=24ga").text
    found = answer("dial-in", "plate=24ga")
    assert found.ways_out
    settings = by_id(page, "settings")
    assert "Two limits conflict" in words(settings)
    ways = {e.attrs["href"]: words(e) for e in elements(page) if e.attrs.get("class") == "way"}
    assert list(ways.values()) == [in_words(way.phrase) for way in found.ways_out]
    for link, way in zip(ways, found.ways_out, strict=True):
        assert link.startswith("./?plate=24ga&") or "&plate=24ga" in link
        assert answer("dial-in", link.partition("?")[2]).dialled.open, in_words(way.phrase)


def test_letting_go_leads_back_to_our_own_setting(client: FlaskClient) -> None:
    page = client.get("/?leg=5/16in&wfs=450in/min&volts=22").text
    links = {
        e.attrs["data-let-go"]: e.attrs["href"] for e in elements(page) if "data-let-go" in e.attrs
    }
    assert links == {
        "wfs": "./?leg=5/16in&volts=22V",
        "volts": "./?leg=5/16in&wfs=450in/min",
    }


def test_out_of_the_window_is_said_in_a_word(client: FlaskClient) -> None:
    page = client.get("/?plate=3/8in&leg=5/16in&volts=20").text
    row = by_id(page, "set-volts")
    assert "out" in row.attrs["class"].split()
    assert re.search(r"under \d", words(row))


@pytest.mark.parametrize("query", QUERIES)
def test_no_page_asks_another_host(client: FlaskClient, query: str) -> None:
    for path in (f"/?{query}", "/method/", "/404.html"):
        page = client.get(path).text
        assert not re.search(r"""(?:href|src|action)=["'](?:[a-z]+:|/)""", page)
        assert "//" not in re.sub(r"[a-z.]+:// ", "", page)


def test_no_inline_script_or_style_attribute(client: FlaskClient) -> None:
    for path in ("/", "/?plate=16ga", "/method/"):
        for element in elements(client.get(path).text):
            assert "style" not in element.attrs
            assert not [name for name in element.attrs if name.startswith("on")]
            if element.tag == "script":
                assert element.attrs["src"]
                # Of plain scripts, which keep a page from being drawn, there is one of a line.
                plain = element.attrs["src"].endswith("/asked_job.js")
                assert ("type" not in element.attrs) == plain


def test_ids_are_unique(client: FlaskClient) -> None:
    for query in QUERIES:
        for path in (f"/?{query}", "/method/"):
            ids = [e.attrs["id"] for e in elements(client.get(path).text) if "id" in e.attrs]
            assert len(ids) == len(set(ids))


def test_the_manifest_is_the_apps_own(client: FlaskClient) -> None:
    response = client.get("/manifest.webmanifest")
    assert response.mimetype == "application/manifest+json"
    assert response.get_json()["start_url"] == "./"


@pytest.mark.parametrize("query", QUERIES)
def test_a_link_survives_the_round_trip(client: FlaskClient, query: str) -> None:
    """What the page puts in the address bar asks for the same job."""
    page = client.get(f"/?{query}").text
    kept = next(e.attrs["data-query"] for e in elements(page) if e.tag == "bead-answer")
    assert answer("dial-in", kept).query.job == answer("dial-in", query).query.job


def test_bare_numbers_keep_their_meaning_when_the_units_are_changed(client: FlaskClient) -> None:
    page = client.get("/?" + urlencode({"units": "si", "plate": "10", "wfs": "8"})).text
    switch = by_id(page, "units-switch").attrs["data-query"]
    assert switch == "units=us&plate=10mm&wfs=8m/min"
    before = answer("dial-in", "units=si&plate=10&wfs=8").query.job
    after = answer("dial-in", switch).query.job
    assert (after.plate_m, after.by_hand) == (before.plate_m, before.by_hand)
    assert after.units == "us"
