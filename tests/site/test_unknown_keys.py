"""A key no page knows: said at the head of the page, with a tap that keeps all else."""

import json

import pytest
from flask.testing import FlaskClient

from beadwright.pages import PAGES
from beadwright_site import phone
from beadwright_site.forms.kept import KEPT
from tests.site.page import by_id, elements, words

QUERY = "plate=1/4in&units=si&plat=1/2in"


def path(page: str) -> str:
    return "/" if page == "dial-in" else f"/{page}/"


@pytest.mark.parametrize("page", PAGES)
def test_it_is_said_at_the_head_and_one_tap_keeps_the_rest(client: FlaskClient, page: str) -> None:
    shown = client.get(f"{path(page)}?{QUERY}").text
    assert words(by_id(shown, "state")) == "One entry cannot be taken"
    said = "“plat” is no entry this app knows. The nearest is “plate”."
    assert words(by_id(shown, "job-form")).startswith(said) or page == "shop"
    assert said in words(by_id(shown, "job-form"))
    links = [e for e in elements(shown) if e.tag == "a" and "Leave it" in words(e)]
    [rest] = [link.attrs["data-query"] for link in links]
    assert dict(pair.split("=") for pair in rest.split("&")) == {"plate": "1/4in", "units": "si"}
    assert "is no entry" not in client.get(f"{path(page)}?{rest}").text


def test_nothing_typed_is_lost_from_the_form(client: FlaskClient) -> None:
    shown = client.get(f"/?{QUERY}").text
    assert by_id(shown, "plate").attrs["value"] == "1/4in"


@pytest.mark.parametrize("page", PAGES)
def test_keys_other_pages_know_raise_nothing(page: str) -> None:
    others = {key: other.fields[key].default for other in PAGES.values() for key in other.fields}
    foreign = [f"{key}={text}" for key, text in others.items() if key not in PAGES[page].fields]
    kept = [f"{key}=x" for key in KEPT if key not in others]
    known = [*foreign, *([] if page == "shop" else kept)]
    for at in range(0, len(known), 200):  # an address may hold no more than 300
        query = "&".join(["plate=1/4in", *known[at : at + 200]])
        shown = json.loads(phone.call("page", json.dumps({"page": page, "query": query})))
        assert shown["ok"], shown["errors"]
