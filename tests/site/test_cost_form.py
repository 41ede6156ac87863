"""The form of the Cost page: seven questions first, the rest folded with what it now holds."""

import pytest
from flask.testing import FlaskClient

from beadwright.key_groups import key_groups
from beadwright.pages import PAGES
from tests.site.page import Element, by_id, elements, words

FOLDS = {each.title: set(each.keys) for each in key_groups(PAGES["cost"])}


def names(part: Element) -> list[str]:
    """Names of the entries in a part, each once."""
    found: list[str] = []
    for each in part.children:
        found += [each.attrs["name"]] if each.tag == "input" else names(each)
    return list(dict.fromkeys(found))


def holds(page: str, group: str) -> str:
    """What the summary of a fold says its entries hold."""
    [summary] = [e for e in by_id(page, f"group-{group}").children if e.tag == "summary"]
    return words(summary.children[0].children[0])


def test_what_the_answer_hangs_on_is_asked_first_and_unfolded(client: FlaskClient) -> None:
    page = client.get("/cost/").text
    first = by_id(page, "group-ask")
    assert names(first)[:11] == [
        "wire_price", "b_wire_price", "leg", "weld_length", "welds", "shop_rate", "volume_by",
        "parts", "b_change_over", "spatter", "b_spatter",
    ]  # fmt: skip
    folds = [e for e in elements(page) if e.tag == "details" and "fold" in e.attrs.get("class", "")]
    assert len(folds) > 10
    assert not any("open" in fold.attrs for fold in folds)
    asked = [name for fold in folds for name in names(fold)]
    assert not {*asked} & {*names(first)}
    assert len(asked) == len(set(asked))


def test_every_key_the_help_tells_of_has_its_entry(client: FlaskClient) -> None:
    page = client.get("/cost/?joint=v&c_wire=ER70S-3").text
    asked = {e.attrs["name"] for e in elements(page) if e.attrs.get("name")}
    missing = {key for keys in FOLDS.values() for key in keys} - asked
    others = {"parts_month", "parts_week", "arc_hours", "weld_metal", "wire_month"}
    assert missing >= others  # asked one at a time
    rest = {key for key in missing - others if key not in FOLDS["The job and the rest"]}
    assert rest <= FOLDS["The job"] | {"leg"}  # a joint asks its own


@pytest.mark.parametrize(
    ("query", "group", "said"),
    [
        (
            "",
            "minutes-A",
            "fit-up 6min · moving to the next weld 0.5min · cleaning 0.2min · spool change 5min",
        ),
        ("", "minutes-B", "nothing written"),
        ("b_fit_up=2min", "minutes-B", "fit-up 2min"),
        ("", "way-A", "ER70S-6 · 0.045 · 90/10 · Hand"),
        ("b_gas=85/15&b_travel_by=robot", "way-B", "E70C-6M · 85/15 · Robot"),
        ("", "cell-A", "nothing written"),
        ("stations=2&rate=90/h", "cell-A", "its own rate 90/h · stations 2"),
        ("", "hours", "guns at once 1 · hours in a shift 8h · shifts a week 5 · weeks a year 50"),
        ("b_name=New", "way-B", "New · E70C-6M"),
    ],
)
def test_a_fold_says_what_it_holds(client: FlaskClient, query: str, group: str, said: str) -> None:
    assert holds(client.get(f"/cost/?leg=5/16in&{query}").text, group) == said


@pytest.mark.parametrize(
    ("query", "by", "key", "blank"),
    [
        ("", "year", "parts", "480"),
        ("volume_by=month", "month", "parts_month", "40"),
        ("volume_by=week", "week", "parts_week", "9.6"),
        ("parts_month=50", "month", "parts_month", "50"),
        ("parts_month=50&volume_by=week", "week", "parts_week", "12"),
        ("arc_min=6min&volume_by=arc-hours&rework=0%25", "arc-hours", "arc_hours", "4.0h"),
        (
            "arc_min=6min&laid=10lb/h&rework=0%25&volume_by=weld-metal",
            "weld-metal",
            "weld_metal",
            "40.00lb",
        ),
    ],
)
def test_one_count_is_asked_and_says_what_the_others_come_to(
    client: FlaskClient, query: str, by: str, key: str, blank: str
) -> None:
    """480 a year: 40 a month, 9.6 in each of 50 weeks, 4 h of 6 min, 40 lb of a pound."""
    page = client.get(f"/cost/?leg=5/16in&{query}").text
    first = by_id(page, "group-ask")
    at = names(first).index("volume_by")
    assert names(first)[at + 1] == key
    assert by_id(page, key).attrs["placeholder"] == blank
    [chosen] = [e.attrs["value"] for e in elements(page)
                if e.attrs.get("name") == "volume_by" and "checked" in e.attrs]  # fmt: skip
    assert chosen == by


def test_a_count_not_shown_goes_along_when_the_form_is_sent(client: FlaskClient) -> None:
    page = client.get("/cost/?leg=5/16in&parts=500&parts_month=50&volume_by=month").text
    hidden = {e.attrs["name"]: e.attrs["value"] for e in elements(page)
              if e.attrs.get("type") == "hidden"}  # fmt: skip
    assert hidden["parts"] == "500"


def test_two_counts_are_both_shown_while_one_must_be_chosen(client: FlaskClient) -> None:
    page = client.get("/cost/?parts=500&parts_month=50").text
    assert "both written" in words(by_id(page, "field-volume_by"))
    assert by_id(page, "parts").attrs["value"] == "500"
    assert by_id(page, "parts_month").attrs["value"] == "50"


def test_a_price_by_the_spool_without_its_wire_is_asked_beside_the_spool(
    client: FlaskClient,
) -> None:
    page = client.get("/cost/?leg=5/16in&wire_price=$62/spool").text
    assert by_id(page, "wire_price").attrs["value"] == "$62/spool"
    assert "how much wire is on it" in words(by_id(page, "field-spool"))
    assert "open" in by_id(page, "group-bought-A").attrs


def test_a_third_way_is_asked_all_of_its_own(client: FlaskClient) -> None:
    page = client.get("/cost/?leg=5/16in&c_wire=ER70S-3").text
    for key, group in (("c_wire_price", "bought-C"), ("c_spatter", "minutes-C"),
                       ("c_change_over", "once-C"), ("c_rate", "cell-C")):  # fmt: skip
        assert key in names(by_id(page, f"group-{group}"))


def test_what_pieces_come_to_stands_in_the_lines_that_may_replace_them(client: FlaskClient) -> None:
    page = client.get("/cost/?leg=5/16in&labour=30/h&overhead=45/h&b_rolls=100").text
    assert by_id(page, "shop_rate").attrs["placeholder"] == "75/h"
    assert by_id(page, "b_change_over").attrs["placeholder"] == "665: its pieces"


def test_the_page_says_what_rules_a_part(client: FlaskClient) -> None:
    query = "leg=5/16in&b_travel_by=robot&b_stations=2&b_load=30min"
    assert "Loading sets the pace" in words(by_id(client.get(f"/cost/?{query}").text, "hours"))


@pytest.mark.parametrize(
    ("query", "lent"),
    [("", True), ("labour=30/h", True), ("leg=5/16in", False), ("plate=1/4in", False)],
)
def test_a_leg_is_marked_as_long_as_it_is_the_example_s(
    client: FlaskClient, query: str, lent: bool
) -> None:
    leg = by_id(client.get(f"/cost/?{query}").text, "leg")
    assert ("data-lent" in leg.attrs) == lent


def test_a_blank_leg_stands_for_the_usual_one_of_its_plate(client: FlaskClient) -> None:
    """3/16 in on 1/4 in plate: common practice."""
    leg = by_id(client.get("/cost/?plate=1/4in").text, "leg")
    assert (leg.attrs["value"], leg.attrs["placeholder"]) == ("", "the usual, 3/16 in")
