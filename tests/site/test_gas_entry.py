"""The gas entry: one tap for a usual gas, a line for any other mix, nothing typed lost."""

from urllib.parse import urlencode

import pytest
from flask.testing import FlaskClient

from beadwright.process.gas_effects import effects_of
from beadwright.process.gases import GASES, gas_of
from beadwright_site.forms.gas_options import gas_options
from beadwright_site.parts.gas_facts import NAMES, gas_lines
from tests.site.page import Element, by_id, elements, words
from tests.told import in_words

PAGES = {"/": "gas", "/cost/": "b_gas", "/supplies/": "gas", "/shop/": "usual_gas"}


def gas_inputs(page: str, key: str) -> tuple[list[Element], Element]:
    """The gases to tap, and the line."""
    found = [e for e in elements(page) if e.tag == "input" and e.attrs.get("name") == key]
    taps = [e for e in found if e.attrs["type"] == "radio"]
    [line] = [e for e in found if e.attrs["type"] == "text"]
    return taps, line


@pytest.mark.parametrize(("path", "key"), PAGES.items())
def test_each_page_offers_the_usual_gases_and_a_line(
    client: FlaskClient, path: str, key: str
) -> None:
    taps, line = gas_inputs(client.get(path).text, key)
    assert [tap.attrs["value"] for tap in taps if tap.attrs["value"]] == list(GASES)
    assert line.attrs["value"] == ""
    assert sum("checked" in tap.attrs for tap in taps) == 1
    labels = {e.attrs.get("for") for e in elements(client.get(path).text) if e.tag == "label"}
    assert line.attrs["id"] in labels
    assert line.attrs["data-other"] == key


@pytest.mark.parametrize("path", ["/", "/cost/", "/supplies/"])
def test_a_mix_typed_becomes_one_to_tap(client: FlaskClient, path: str) -> None:
    key = PAGES[path]
    page = client.get(f"{path}?{urlencode({key: '82 / 18'})}").text
    taps, line = gas_inputs(page, key)
    [chosen] = [tap.attrs["value"] for tap in taps if "checked" in tap.attrs]
    assert chosen == "82/18"
    assert line.attrs["value"] == ""
    assert "M21" in words(by_id(page, f"field-{key}"))


@pytest.mark.parametrize("path", ["/", "/cost/", "/supplies/"])
def test_a_wrong_mix_stays_in_the_line_with_its_reason(client: FlaskClient, path: str) -> None:
    key = PAGES[path]
    page = client.get(f"{path}?{urlencode({key: '90/11'})}").text
    taps, line = gas_inputs(page, key)
    assert not [tap for tap in taps if "checked" in tap.attrs]
    assert line.attrs["value"] == "90/11"
    assert line.attrs["aria-invalid"] == "true"
    assert "must add to 100" in words(by_id(page, line.attrs["aria-describedby"]))


def test_what_a_form_without_scripts_sends_is_understood(client: FlaskClient) -> None:
    page = client.get("/?gas=75/25&gas=").text
    assert "75/25 · M21" in page
    page = client.get("/?gas=75/25&gas=90/8/2+O2").text
    assert "90/8/2 O2 · M24" in page
    assert 'data-query="gas=90/8/2+O2"' in page


def test_another_wrong_entry_loses_no_mix(client: FlaskClient) -> None:
    taps, line = gas_inputs(client.get("/?gas=82/18&plate=abc").text, "gas")
    assert [tap.attrs["value"] for tap in taps if "checked" in tap.attrs] == ["82/18"]
    assert line.attrs["value"] == ""


@pytest.mark.parametrize("text", ["", *GASES, "82/18", "7.5/2.5/90 He"])
def test_one_at_the_most_is_chosen(text: str) -> None:
    options, line = gas_options(text)
    assert line == ""
    assert [option.value for option in options if option.chosen] == ([text] if text else [])
    for option in options:
        assert option.under == gas_of(option.value).iso_group


@pytest.mark.parametrize("gas", [*GASES, "Ar", "25/75 He", "97 CO2/3 O2"])
def test_the_page_says_what_the_gas_does(client: FlaskClient, gas: str) -> None:
    lines = gas_lines(gas_of(gas), "us")
    assert {in_words(effect.phrase) for effect in effects_of(gas_of(gas))} == {
        in_words(effect.phrase)
        for effect in effects_of(gas_of(gas))
        for line in lines
        if in_words(effect.phrase) in line.text and NAMES[effect.what] == line.name
    }
    said = words(by_id(client.get(f"/?{urlencode({'gas': gas})}").text, "setup"))
    for line in lines:
        assert line.text in said
        assert line.sources


def test_the_nozzle_is_said_with_the_flow(client: FlaskClient) -> None:
    page = client.get("/?plate=3/8in&nozzle=3/4in").text
    assert "3/4 in" in words(by_id(page, "setup"))
    page = client.get("/?plate=3/8in&nozzle=7/8in").text
    assert "it has 1/2in, 5/8in, 3/4in" in words(by_id(page, "wrong-nozzle"))
