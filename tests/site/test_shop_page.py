"""The Shop page: what the circuit does with the job, and what the phone keeps."""

import json
from typing import Any

import pytest
from flask.testing import FlaskClient

from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site import phone
from beadwright_site.forms.kept import KEPT, check_kept, kept_for, label_kept
from beadwright_site.page_keys import carried
from beadwright_site.pages.cost.page import PAGE as COST
from beadwright_site.pages.shop.page import PAGE as SHOP
from beadwright_site.pages.supplies.page import PAGE as SUPPLIES
from tests.site.page import by_id, elements, words
from tests.told import in_words

EXAMPLE = PAGES["shop"].example

QUERIES = (
    EXAMPLE,
    "leg=5/16in&rated_amps=180&duty=20%&breaker=20&cord=14 AWG&cord_length=100ft",
    "units=si&plate=10mm&leg=8mm&supply=400&phase=3&cable=50mm2&cable_length=20m",
    "leg=5/16in&generator=9kW&arc_share=80%",
)


def call(action: str, **payload: Any) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(phone.call(action, json.dumps(payload)))
    return found


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_checks_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/shop/?{query}").text
    found = answer("shop", query).circuit
    listed = words(by_id(page, "checks"))
    for check in found.checks:
        assert in_words(check.phrase) in listed
    head = words(by_id(page, "holds"))
    assert ("too much" in head) == (not found.holds)
    assert ("can run this job" in head) == all(check.held == "holds" for check in found.checks)
    assert f"{found.on_s / 60:.1f} min on" in head
    assert f"{found.drawn.primary_a:.0f} A" in head


def test_a_job_too_much_is_flagged_first(client: FlaskClient) -> None:
    page = client.get(f"/shop/?{QUERIES[1]}").text
    assert words(by_id(page, "holds")).startswith("This job is too much: ")
    assert "fails" in [e.attrs.get("class") for e in elements(page) if e.tag == "li"]


def test_ways_out_are_taps_that_lead_to_a_page_that_holds(client: FlaskClient) -> None:
    page = client.get("/shop/?leg=5/16in&breaker=30A&arc_share=20%25").text
    head = by_id(page, "holds")
    links = [e for e in elements(page) if e.tag == "a" and e.attrs.get("class") == "way"]
    assert "Any one of these fixes it" in words(head)
    assert len(links) >= 2
    for link in links:
        after = client.get("/shop/?" + link.attrs["data-query"]).text
        assert "can run this job" in words(by_id(after, "holds")), words(link)


def test_the_generator_is_shown_what_it_must_give(client: FlaskClient) -> None:
    head = words(by_id(client.get("/shop/?leg=5/16in&generator=20kVA").text, "holds"))
    found = answer("shop", "leg=5/16in&generator=20kVA").circuit.drawn.apparent_va / 1000
    assert f"{found:.1f} kVAthis job, steady" in head
    assert f"{1.35 * found:.1f} kVAthis job, at a start" in head


@pytest.mark.parametrize("key", ["breaker", "labour", "cable_length", "tip_life"])
def test_an_error_stands_beside_its_field(client: FlaskClient, key: str) -> None:
    page = client.get(f"/shop/?{key}=abc").text
    field = by_id(page, key)
    assert field.attrs["value"] == "abc"
    assert "abc" in words(by_id(page, field.attrs["aria-describedby"]))


def test_a_kept_price_goes_to_the_way_that_welds_with_that_wire() -> None:
    kept = {"wire_price@ER70S-6 0.045in": "1.11/lb", "wire_price@E70C-6M 0.045in": "9/lb",
            "gas_price@CO2": "0.5/ft3", "usual_gas": "75/25"}  # fmt: skip
    assert kept_for("", kept) == {"wire_price": "1.11/lb", "b_wire_price": "9/lb", "gas": "75/25"}
    swapped = kept_for("wire=E70C-6M&b_wire=er70s-6&b_gas=CO2", kept)
    assert swapped["wire_price"] == "9/lb"
    assert swapped["b_wire_price"] == "1.11/lb"
    assert swapped["b_gas_price"] == "0.5/ft3"
    assert "wire_price" not in kept_for("dia=0.035in", kept)
    assert not any(key.startswith("c_") for key in swapped)


def test_what_is_kept_feeds_every_page_and_the_query_wins() -> None:
    kept = {"labour": "41/h", "weeks": "40", "machine_amps": "300A"}
    cost = COST.show(EXAMPLE, kept).html["ways"]
    assert cost == COST.show(f"{EXAMPLE}&labour=41&weeks=40&machine_amps=300A").html["ways"]
    assert COST.show(f"{EXAMPLE}&labour=26&machine_amps=", kept).html["ways"] != cost
    supplies = SUPPLIES.show(EXAMPLE, {"wire_price@ER70S-6 0.045in": "5/lb"}).html["buy"]
    assert "$165.00" in supplies  # 33 lb at 5 a pound
    shop = call("page", page="dial-in", query="", kept={"usual_gas": "75/25", "usual_dia": "0.035"})
    assert "75/25" in shop["html"]["joint"]
    assert "0.035" in shop["html"]["joint"]


def test_kept_entries_stand_in_the_form_and_are_not_called_invented() -> None:
    form = SHOP.show("", {"labour": "41/h"}).html["job-form"]
    assert by_id(form, "labour").attrs["value"] == "41/h"
    assert "invented" not in words(by_id(form, "field-labour"))
    assert "invented" in words(by_id(form, "field-overhead"))


@pytest.mark.parametrize("page", ["cost", "supplies", "shop"])
@pytest.mark.parametrize("query", ["", EXAMPLE, "labour=abc&wire_price=x&breaker=y", "units=si"])
def test_the_phone_gives_what_the_live_page_shows(
    client: FlaskClient, page: str, query: str
) -> None:
    shown = call("page", page=page, query=query, kept=None)
    live = client.get(f"/{page}/?{query}").text
    assert shown["html"]
    for part, html in shown["html"].items():
        assert html in live, part
        assert f'id="{part}"' in html
    assert shown["ok"] == ("abc" not in query)
    again = call("page", page=page, query=shown["query"], kept=None)
    assert again["html"].keys() == shown["html"].keys()
    assert again["query"] == shown["query"]


@pytest.mark.parametrize("kept", [None, [], 3, {"labour": [1]}, {"labour": "<script>"}, {"@": "x"}])
def test_what_was_kept_wrong_breaks_no_page(kept: object) -> None:
    for page in ("cost", "supplies", "shop", "dial-in"):
        shown = call("page", page=page, query="", kept=kept)
        assert "error" not in shown
        assert "<script>" not in "".join(shown["html"].values())


def test_a_file_is_read_like_anything_typed() -> None:
    good, wrong = check_kept({"labour": "26/h", "breaker": "9999", "zz": "1", "usual_wire": "E99",
                              "wire_price@ER70S-6 0.045in": "2/lb", "gas_price@": "1",
                              "fit_up": 3})  # fmt: skip
    assert good == {"labour": "26/h", "wire_price@ER70S-6 0.045in": "2/lb"}
    assert wrong.keys() == {"breaker", "zz", "usual_wire", "gas_price@", "fit_up"}


def test_every_kept_entry_has_a_name_and_a_field_on_the_page() -> None:
    form = SHOP.show("").html["job-form"]
    names = {e.attrs["name"] for e in elements(form) if "name" in e.attrs}
    assert set(KEPT) <= names
    assert all(label_kept(key) != key for key in KEPT)


def test_chance_by_chunks_is_the_run_at_once_also_after_the_worker_fell() -> None:
    query, way = f"{EXAMPLE}&draws=300&seed=5", 1
    done, answers = 0, list[dict[str, Any]]()
    while done < 300:
        answers.append(call("chance", query=query, kept={}, way=way, done=done, chunk=90))
        done = answers[-1]["done"]
    assert [a["done"] for a in answers] == [90, 180, 270, 300]
    found = answer("cost", query).comparisons[0].chance
    assert found is not None
    assert answers[-1]["pays"] == found.pays
    assert answers[-1]["finished"]
    anew = call("chance", query=query, kept={}, way=way, done=120, chunk=90)
    assert anew["done"] == 90  # nobody holds 120 draws: from the start, the same again
    assert anew["pays"] == answers[0]["pays"]
    more = call("chance", query=query, kept={}, way=way, done=0, chunk=90, draws=10_000)
    assert (more["draws"], more["finished"]) == (10_000, False)  # as the tapped button says
    assert "error" in call("chance", query=query, kept={}, way=9, done=0, chunk=1)
    assert call("chance", query="labour=x", kept={}, way=1, done=0, chunk=1)["ok"] is False


def test_links_carry_to_each_page_what_it_knows() -> None:
    assert "b_wire" not in carried("cost").split()
    assert "*" in carried("cost").split()
    assert {"leg", "labour"} <= set(carried("cost").split())
    assert "leg" in carried("dial-in").split()
    assert "labour" not in carried("dial-in").split()
    assert carried("method") == ""
