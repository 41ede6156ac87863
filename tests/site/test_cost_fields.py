"""The form of the Cost page: labels, errors beside their fields, whatever is typed is kept."""

from urllib.parse import urlencode

import pytest
from flask.testing import FlaskClient

from beadwright.money.cost_query import DEFAULTS
from tests.site.page import by_id, elements, inside, words


@pytest.mark.parametrize("key", ["labour", "wire_price", "b_wire_price", "spool", "plate", "weeks"])
def test_an_error_stands_beside_its_field(client: FlaskClient, key: str) -> None:
    page = client.get(f"/cost/?{key}=abc&batch=17").text
    field = by_id(page, key)
    assert field.attrs["value"] == "abc"
    assert field.attrs["aria-invalid"] == "true"
    assert "abc" in words(by_id(page, field.attrs["aria-describedby"]))
    assert by_id(page, "batch").attrs["value"] == "17"
    folds = [e for e in elements(page) if e.tag == "details" and field in inside(e)]
    assert folds or key.endswith("wire_price")  # what is asked first stands in no fold
    assert all("open" in fold.attrs for fold in folds)


@pytest.mark.parametrize("query", ["", "c_wire=ER70S-3&leg=5/16in", "labour=abc"])
def test_every_field_has_a_label_of_its_own(client: FlaskClient, query: str) -> None:
    for path in ("/cost/", "/supplies/", "/shop/"):
        page = client.get(f"{path}?{query}").text
        everything = elements(page)
        targets = {e.attrs["for"] for e in everything if e.tag == "label" and "for" in e.attrs}
        ids = [e.attrs["id"] for e in everything if "id" in e.attrs]
        assert len(ids) == len(set(ids)), path
        for e in everything:
            if e.tag == "input" and e.attrs.get("type") == "text":
                assert e.attrs["id"] in targets, e.attrs
        for label in (e for e in everything if e.tag == "label"):
            assert words(label), path


def test_nothing_typed_is_lost_when_the_form_is_sent(client: FlaskClient) -> None:
    typed = {"plate2": "1/2in", "gap": "1/16in", "machine_amps": "300A", "labour": "30/h",
             "b_name": "New", "leg": "5/16in"}  # fmt: skip
    page = client.get(f"/cost/?{urlencode(typed)}").text
    sent = {e.attrs["name"]: e.attrs["value"] for e in elements(page)
            if e.tag == "input" and e.attrs.get("type") != "radio"}  # fmt: skip
    assert typed.items() <= sent.items()


VALUES = ("<script>alert(1)</script>", '"><img src=x onerror=alert(1)>', "NaN", "1e999", "-1", "0",
          "9" * 5000, "=1+1", "½ ☃ 漢字", "\u202e\u0000\r\n", "٣", "%", "1/0")  # fmt: skip


@pytest.mark.parametrize("path", ["/cost/", "/supplies/", "/shop/"])
def test_no_value_of_any_entry_breaks_a_page(client: FlaskClient, path: str) -> None:
    keys = [*DEFAULTS, "count", "gauge", "spool_gross", "cord", "wire_price@x", "<b>", "usual_dia"]
    for at, key in enumerate(keys):
        for value in (VALUES[at % len(VALUES)], VALUES[(at * 5 + 1) % len(VALUES)]):
            response = client.get(f"{path}?" + urlencode({key: value}))
            assert response.status_code == 200, (key, value[:40])
            assert "<script>alert" not in response.text
            assert "<img" not in response.text
            assert "<b>=" not in response.text
