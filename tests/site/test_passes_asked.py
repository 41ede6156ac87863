"""The Passes page: what is asked, refused and linked."""

import json
import re

import pytest
from flask.testing import FlaskClient

from beadwright.pages import PAGES
from beadwright.passes.passes_page import passes_answer
from beadwright.passes.passes_query import DEFAULTS
from beadwright_site.forms.filling import Filling
from beadwright_site.page_keys import carried
from beadwright_site.pages.passes.bead_words import arc_words
from beadwright_site.pages.passes.form import passes_form
from beadwright_site.pages.passes.page import LATER, PAGE, STEPPED
from beadwright_site.pages.passes.view import headline_of
from beadwright_site.phone import call
from tests.site.page import by_id, elements, words
from tests.site.test_passes_page import QUERIES, asked, everything, links, planned

EXAMPLE_QUERY = "plate=3/4in&leg=5/8in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("passes=none", "passes", "is not a count"),
        ("passes=900", "passes", "outside 1 to 400"),
        ("root_wfs=fast", "root_wfs", "fast"),
        ("cap_volts=90V", "cap_volts", "no wire arc burns"),
        ("wfs=5in/min", "wfs", "5in/min"),
        ("plate=9ft", "plate", "9ft"),
    ],
)
def test_an_error_stands_beside_its_field(
    client: FlaskClient, query: str, key: str, said: str
) -> None:
    page = client.get(f"/passes/?leg=5/16in&{query}").text
    field = by_id(page, key)
    assert field.attrs["aria-invalid"] == "true"
    assert said in words(by_id(page, field.attrs["aria-describedby"]))
    assert field.attrs["value"] == query.partition("=")[2]
    assert by_id(page, "leg").attrs["value"] == "5/16in"


def test_a_bead_that_is_not_there_is_said_with_a_way_back(client: FlaskClient) -> None:
    page = client.get(f"/passes/?{EXAMPLE_QUERY}&at=77").text
    form = by_id(page, "job-form")
    assert "There is no bead 77: this plan has 6 beads" in words(form)
    [back] = [link for link in links(form) if "last bead" in words(link)]
    assert "at" not in asked(back)
    assert asked(back)["leg"] == "5/8in"
    assert not [e for e in everything(form) if e.attrs.get("name") == "at"]


def test_every_entry_of_the_page_is_in_the_form_once(client: FlaskClient) -> None:
    found = passes_answer("joint=double-v&position=1G&plate=1in")
    form = passes_form(Filling({}, {}, "us"), found)
    keys = [entry.key for group in form.groups for entry in group.entries]
    assert len(keys) == len(set(keys))
    page = client.get(f"/passes/?{EXAMPLE_QUERY}&nozzle=5/8in&passes=6&at=2&bead=stringer").text
    sent = {e.attrs["name"]: e.attrs["value"] for e in everything(by_id(page, "job-form"))
            if e.tag == "input"
            and (e.attrs.get("type") != "radio" or "checked" in e.attrs)}  # fmt: skip
    assert sent["nozzle"] == "5/8in"  # has no entry here and still goes along
    assert sent["passes"] == "6"
    assert sent["bead"] == "stringer"
    assert "at" not in sent


def test_more_fewer_and_stringers_are_plain_links(client: FlaskClient) -> None:
    page = client.get(f"/passes/?{EXAMPLE_QUERY}&passes=6&at=4").text
    found = {words(link) or "": asked(link) for link in links(by_id(page, "count"))}
    assert found["−"]["passes"] == "5"
    assert found["+"]["passes"] == "7"
    assert "passes" not in found["Fewest"]
    assert found["Stringers"]["bead"] == "stringer"
    assert all("at" not in query for query in found.values())
    least = client.get("/passes/?leg=5/16in").text
    assert [words(link) for link in links(by_id(least, "count"))] == ["+", "Weave", "Stringers"]


def test_other_plans_wait_until_the_rest_stands_and_steps_draw_little() -> None:
    first = [part for part in PAGE.parts if part not in LATER]
    shown = PAGE.show(EXAMPLE_QUERY, None, first)
    assert "others" not in shown.html
    assert set(first) == set(shown.html)
    assert set(PAGE.show(EXAMPLE_QUERY, None, LATER).html) == {"others"}
    step = PAGE.show(f"{EXAMPLE_QUERY}&at=2", None, STEPPED)
    assert set(step.html) == set(STEPPED)
    assert step.query.endswith("at=2")


def test_the_phone_saves_and_tells_the_plan_the_page_stands_with() -> None:
    csv = json.loads(call("csv", json.dumps({"page": "passes", "query": ""})))["csv"]
    rows = csv.strip().split("\r\n")
    assert len(rows) == 1 + len(planned(PAGES["passes"].example).beads)
    told = json.loads(call("json", json.dumps({"page": "passes", "query": "at=2"})))
    assert told["answer"]["passes"] == len(planned(PAGES["passes"].example).beads)
    assert told["answer"]["at"] == 2


def test_the_bare_page_says_it_is_an_example_and_frozen_pictures_are_the_phone_s(
    client: FlaskClient,
) -> None:
    page = client.get("/passes/").text
    assert words(by_id(page, "state")) == PAGES["passes"].example_name
    assert by_id_outer(page, "picture") == by_id_outer(PAGE.show("").html["picture"], "picture")


def by_id_outer(html: str, key: str) -> str:
    start = html.index(f'<section id="{key}"')
    return " ".join(html[start : html.index("</section>", start)].split())


def test_dial_in_leads_to_the_plan_of_its_job(client: FlaskClient) -> None:
    page = client.get("/?plate=3/4in&leg=5/8in").text
    [link] = [
        a for a in elements(by_id_html(page, "facts")) if "passes/" in a.attrs.get("href", "")
    ]
    assert asked(link)["leg"] == "5/8in"
    count = re.match(r"\d+", words(link))
    assert count is not None
    there = client.get(f"/{link.attrs['href']}").text
    assert words(by_id(there, "plan")).startswith(f"{count[0]} pass")
    bare = client.get("/").text
    [link] = [
        a for a in elements(by_id_html(bare, "facts")) if "passes/" in a.attrs.get("href", "")
    ]
    there = client.get(f"/{link.attrs['href']}").text
    assert words(by_id(there, "plan")).startswith("1 pass")


def by_id_html(html: str, key: str) -> str:
    start = html.index(f'id="{key}"')
    return "<section " + html[start : html.index("</section>", start)]


def test_links_from_other_pages_carry_the_job_and_what_is_asked_of_the_plan() -> None:
    keys = carried("passes").split()
    assert set(keys) == set(DEFAULTS)


@pytest.mark.parametrize(
    ("seconds", "said"),
    [(0.4, "0 s"), (35.2, "35 s"), (59.6, "1 min"), (199, "3 min 19 s"), (3840, "1 h 4 min"),
     (7199.6, "2 h")],
)  # fmt: skip
def test_arc_time_as_it_is_said(seconds: float, said: str) -> None:
    assert arc_words(seconds) == said


def test_the_headline_names_layers_and_sides() -> None:
    assert headline_of(planned("leg=5/16in")).startswith("1 pass, ")
    assert headline_of(planned(EXAMPLE_QUERY)).startswith("6 passes in 3 layers, ")
    assert " layers from both sides, " in headline_of(planned(QUERIES[2]))
