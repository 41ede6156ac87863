"""Links: short, the same on another phone, and without what is private until it is ticked."""

from __future__ import annotations

import json
from urllib.parse import parse_qs, quote

import pytest

from beadwright.api import answer_json
from beadwright.pages import PAGES
from beadwright.reading.queries import split_query
from beadwright_site.page_table import SITE_PAGES
from beadwright_site.parts.shared_link import private_keys, shared_query
from beadwright_site.phone import call
from tests.site.page import elements

PRIVATE = {
    "wire_price": "2.10/lb", "shop_rate": "85/h", "written_by": "J. Ott", "proved_by": "Ann Lee",
    "welder": "Ann Lee",
}  # fmt: skip


@pytest.mark.parametrize("page", PAGES)
def test_without_a_tick_no_price_and_no_name_leaves(page: str) -> None:
    typed = {key: text for key, text in PRIVATE.items() if key in PAGES[page].fields}
    link = shared_query(page, {"leg": "5/16in", **typed}, {"labour": "30/h", "coupons": "[]"})
    assert not set(parse_qs(link)) & {*PRIVATE, "labour", "coupons"}
    ticked = shared_query(page, {"leg": "5/16in", **typed}, {}, ("prices", "names"))
    assert set(typed) <= set(parse_qs(ticked))


def test_whose_hand_the_shop_s_own_numbers_are_of_leaves_only_when_ticked() -> None:
    ann = "ER70S-6,0.045in,90/10,n7,travel0.9,at=one,by=Ann%20Lee"
    own = {"own": f"{ann};E70C-6M,0.045in,CO2,n1,travel1"}
    untold = parse_qs(shared_query("card", {"leg": "5/16in"}, own))["own"][0]
    assert untold == own["own"].replace(",by=Ann%20Lee", "")
    told = parse_qs(shared_query("card", {"leg": "5/16in"}, own, ("names",)))["own"][0]
    assert told == own["own"]


def test_every_price_of_cost_and_every_way_is_private() -> None:
    prices = private_keys("cost")["prices"]
    assert {key for key in PAGES["cost"].fields if key.endswith("price")} <= prices
    assert {"labour", "overhead", "shop_rate", "b_wire_price", "c_gas_price"} <= prices
    assert private_keys("card")["names"] == {"written_by", "proved_by"}
    assert not prices & {"wire", "plate", "parts_month"}


def test_a_default_is_left_out_where_no_phone_keeps_it_otherwise() -> None:
    typed = {"joint": "tee", "plate": "3/8in", "leg": "5/16in", "wire": "ER70S-6", "position": "2F"}
    link = shared_query("card", typed, {})
    assert set(parse_qs(link)) == {
        "leg",
        "wire",
        "dia",
        "gas",
    }  # another phone's usual wire differs


def test_what_this_phone_keeps_of_the_job_goes_along() -> None:
    link = parse_qs(shared_query("card", {"leg": "1/4in"}, {"wire": "E70C-6M", "units": "si"}))
    assert (link["wire"], link["units"]) == (["E70C-6M"], ["si"])


@pytest.mark.parametrize(("ticked", "told"), [("no", False), ("yes", True)])
def test_the_code_of_a_card_tells_names_only_when_ticked(ticked: str, told: bool) -> None:
    query = f"leg=5/16in&written_by=J. Ott&proved_mark=C-12&proved_by=Ann Lee&code_names={ticked}"
    shown = SITE_PAGES["card"].load().show(query)
    [code] = [one for one in elements(shown.html["sheet"]) if one.tag == "bead-code"]
    link = parse_qs(code.attrs["data-link"])
    assert ("proved_by" in link and "written_by" in link) is told
    assert link["proved_mark"] == ["C-12"]
    assert "Ann Lee" in shown.html["sheet"]  # on paper she stands


LIST = "lines=" + quote("\n".join(f"Gusset {at},tee,3/8in,5/16in,{at}in,1,2F" for at in range(30)))


def link_to(page: str, query: str, **more: object) -> str:
    """What the phone's Share button sends."""
    answer = json.loads(call("link", json.dumps({"page": page, "query": query, **more})))
    found: str = answer["query"]
    return found


def test_a_short_link_is_left_as_a_person_reads_it_and_a_long_one_is_packed() -> None:
    job = link_to("dial-in", "plate=1/2in&leg=3/8in&joint=tee")
    assert {"plate=1/2in", "leg=3/8in"} <= set(job.split("&"))
    assert "lines=" in link_to("list", LIST, short=False)  # in a file nothing need be short
    long = link_to("list", LIST)
    assert long.startswith("z=")
    assert len(long) < len(LIST) / 2
    assert split_query(long)["lines"] == split_query(LIST)["lines"]


@pytest.mark.parametrize("page", PAGES)
def test_a_link_opens_what_was_shared(page: str) -> None:
    query = PAGES[page].example or "leg=1/4in"
    shared = link_to(page, query)
    assert len(shared) <= 520
    first, again = (answer_json(page, asked)["answer"] for asked in (query, shared))
    for row in (*first.get("rows", ()), *again.get("rows", ())):
        row.pop("query", None)  # a shared line says its wire, whatever the other phone's usual one
    assert again == first


def test_a_bare_number_is_shared_with_the_unit_it_was_meant_in() -> None:
    shared = parse_qs(link_to("dial-in", "plate=12&leg=8&units=si"))
    assert shared["plate"] == ["12mm"]
    assert shared["leg"] == ["8mm"]


@pytest.mark.parametrize(("tell", "told"), [(False, False), (True, True)])
def test_the_link_tells_prices_and_names_only_when_ticked(tell: bool, told: bool) -> None:
    query = "leg=5/16in&written_by=J. Ott"
    assert ("written_by" in parse_qs(link_to("card", query, tell=tell))) is told
    cost = link_to("cost", "leg=5/16in&wire_price=3/lb", tell=tell, kept={"labour": "30/h"})
    assert ("wire_price" in parse_qs(cost)) is told
    assert ("labour" in parse_qs(cost)) is told
