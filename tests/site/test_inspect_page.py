"""The Inspect page: verdict first, the change of setting, the picture, causes, limits, refusals."""

import re

import pytest
from flask.testing import FlaskClient
from shapely.geometry import Polygon

from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright.sources import SOURCES
from beadwright_site.drawings.fillet_gauge_drawing import HEIGHT, WIDTH, draw_gauges
from beadwright_site.pages.inspect.page import PAGE
from tests.site.page import by_id, elements, words
from tests.told import in_words

EXAMPLE = PAGES["inspect"].example
FILLET = "plate=3/8in&leg=5/16in"

QUERIES = (
    EXAMPLE,
    f"{FILLET}&leg_found=1/4in&leg2_found=1/4in&cracks=no",
    f"{FILLET}&leg_found=5/16in&leg2_found=5/16in&cracks=no&unfused=no",
    "units=si&plate=10mm&leg=6mm&skew=120&leg_found=8mm&leg2_found=9mm&convexity=2mm&accept=iso-b",
    "joint=v&plate=1/2in&convexity=3/16in&accept=iso-c",
    "joint=lap&plate=1/4in&leg=1/4in&leg_found=1/4in&leg2_found=3/16in&trouble=undercut",
    "joint=corner&plate=1/4in&leg=1/4in&leg_found=1/4in&concavity=1/32in",
    "joint=plug&plate2=1/2in&trouble=porosity&flow=15",
    "plate=3/4in&leg=1/2in&passes=1&leg_found=3/8in&leg2_found=3/8in",
    "plate=3/8in&leg=5/16in&transfer=spray&gas=CO2&leg_found=1/4in&trouble=spatter",
)


@pytest.mark.parametrize("query", QUERIES)
def test_the_verdict_is_the_first_and_biggest_thing_the_page_says(
    client: FlaskClient, query: str
) -> None:
    page = client.get(f"/inspect/?{query}").text
    found = answer("inspect", query)
    verdict = by_id(page, "verdict")
    assert verdict.children[0].tag == "h1"
    said = {"in": "IN", "out": "OUT", "unknown": "Not measured yet"}[found.verdict]
    assert words(verdict.children[0]) == said
    assert [e.tag for e in elements(page)].count("h1") == 1
    text = " ".join(words(by_id(page, part)) for part in PAGE.parts).lower()
    assert " nan" not in text
    assert " inf " not in text
    assert "none found" not in text


def test_the_example_says_by_how_much_and_what_to_turn(client: FlaskClient) -> None:
    page = client.get("/inspect/").text
    assert "Both legs 1/32 in short." in words(by_id(page, "verdict"))
    mend = words(by_id(page, "mend"))
    assert mend.startswith("Welded at 350 in/min and 11.0 in/min.")
    assert "Travel from 11.0 to 8.9 in/min." in mend
    assert re.search(r"Or feed up 85 to 435 in/min at that travel, \d\d\.\d V\.", mend)


@pytest.mark.parametrize(
    ("query", "part", "said"),
    [
        (f"{FILLET}&leg_found=1/4in&leg2_found=1/4in", "mend",
         "this much metal means it was laid at about 17.5 in/min"),
        (f"{FILLET}&leg_found=1/4in&leg2_found=9/32in", "verdict",
         "Leg on the bottom plate 1/16 in short. Leg on the vertical plate 1/32 in short."),
        (f"{FILLET}&cracks=yes", "verdict", "Stop. Never weld over a crack."),
        (f"{FILLET}&cracks=yes", "repair", "2 in (50 mm) of sound metal"),
        (f"{FILLET}&undercut=0.05in", "verdict", "Undercut 0.019 in over."),
        (f"{FILLET}&overlap=1/32in", "verdict", "Overlap 1/32 in: none is accepted."),
        (FILLET, "verdict", "Type what you measured"),
        (FILLET, "limits", "Leg on the bottom plate"),
        (f"{FILLET}&leg_found=5/16in", "verdict", "limits were not looked at"),
        ("plate=3/4in&leg=1/2in&passes=1&leg_found=3/8in&leg2_found=3/8in", "mend",
         "No change inside the window brings it in. One pass cannot lay this joint"),
        (f"{FILLET}&leg_found=1/4in&leg2_found=1/2in", "mend", "at the short side first"),
        (f"{FILLET}&leg_found=3/8in&leg2_found=3/8in", "verdict", "IN"),
        (f"{FILLET}&trouble=porosity&flow=15", "trouble", "15 ft³/h now, window 22–55"),
        (f"{FILLET}&trouble=porosity&flow=15", "trouble", "Go to 33 ft³/h."),
        (f"{FILLET}&trouble=porosity&flow=15", "verdict",
         "Porosity: too little gas is most likely. Go to 33 ft³/h. All causes"),
        (f"{FILLET}&trouble=birds-nest", "verdict", "is most likely."),
        (f"{FILLET}&accept=iso-c", "verdict", "ISO 5817:2014 C, intermediate"),
        (f"{FILLET}&accept=d1.1-cyclic", "notes", "Judged as lying across the load"),
        ("units=si&plate=10mm&leg=6mm&undercut=0.6mm&accept=iso-c", "verdict",
         "Undercut 0.10 mm over."),
        (f"{FILLET}&leg_found=1/4in&leg2_found=1/4in&undercut=0.05in&overlap=0.1in&pore=1/2in",
         "verdict", "And 1 more."),
    ],
)  # fmt: skip
def test_what_each_part_says(client: FlaskClient, query: str, part: str, said: str) -> None:
    assert said in words(by_id(client.get(f"/inspect/?{query}").text, part))


@pytest.mark.parametrize("query", QUERIES)
def test_each_limit_names_its_clause_and_how_it_was_come_by(
    client: FlaskClient, query: str
) -> None:
    page = client.get(f"/inspect/?{query}").text
    limits = words(by_id(page, "limits"))
    for check in answer("inspect", query).checks:
        name = in_words(check.phrase)
        assert f"{name[0].upper()}{name[1:]}" in limits
        source = SOURCES[check.source]
        assert source.key == "practice" or f"{source.place}: {source.told}" in limits


@pytest.mark.parametrize("query", QUERIES)
def test_causes_stand_in_the_order_of_the_core(client: FlaskClient, query: str) -> None:
    shown = words(by_id(client.get(f"/inspect/?{query}").text, "trouble"))
    place = 0
    for _, causes in answer("inspect", query).troubles:
        for each in causes:
            place = shown.index(in_words(each.cause.phrase), place)


@pytest.mark.parametrize("query", [q for q in QUERIES if "joint=v" not in q and "plug" not in q])
def test_the_picture_is_to_scale_and_on_the_paper(query: str) -> None:
    weld = answer("inspect", query).weld
    drawn = draw_gauges(weld, lambda value: f"{value * 1000:.2f}")

    def area(points: str) -> float:
        return Polygon([tuple(map(float, pair.split(","))) for pair in points.split()]).area

    wanted = area(drawn.wanted)
    bare = weld.shape.section_m2 - weld.shape.crown_m2
    if weld.fillet is not None:
        ratio = weld.fillet.section_m2(1.0) / bare
        assert area(drawn.found) / wanted == pytest.approx(ratio, rel=0.01)
    for each in drawn.labels:
        assert 0 <= each.y <= HEIGHT
        wide = 9.5 * len(each.text)
        left = {"start": each.x, "middle": each.x - wide / 2, "end": each.x - wide}[each.anchor]
        assert left >= 0, each
        assert left + wide <= WIDTH, each
    said = " ".join(each.text for each in drawn.labels)
    wanted_by = (weld.shape.leg_m, weld.shape.leg2_m, weld.throat_wanted_m)
    found_by = (*weld.legs_found, weld.throat_found_m)
    for asked, found in zip(wanted_by, found_by, strict=True):
        assert f"({asked * 1000:.2f})" in said
        assert found is None or f"{found * 1000:.2f}" in said


def test_a_groove_has_no_fillet_to_draw(client: FlaskClient) -> None:
    page = client.get("/inspect/?joint=v&plate=1/2in&convexity=1/16in").text
    assert "hidden" in by_id(page, "picture").attrs
    assert "leg_found" not in {e.attrs.get("name") for e in elements(page)}


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("leg_found=lots", "leg_found", "lots"),
        ("leg_found=9in", "leg_found", "outside 1/32in to 3in"),
        ("convexity=1/16in&concavity=1/16in", "concavity", "not both"),
        ("undercut_length=2in", "undercut_length", "depth"),
        ("flow=900", "flow", "no nozzle takes more"),
        ("passes=0", "passes", "outside 1 to 150"),
    ],
)
def test_an_error_stands_beside_its_entry_and_nothing_typed_is_lost(
    client: FlaskClient, query: str, key: str, said: str
) -> None:
    page = client.get(f"/inspect/?{query}").text
    field = by_id(page, key)
    assert field.attrs["aria-invalid"] == "true"
    assert said in words(by_id(page, field.attrs["aria-describedby"]))
    for name, value in (pair.split("=") for pair in query.split("&")):
        assert by_id(page, name).attrs["value"].startswith(value)


def test_troubles_are_chips_that_send_with_the_form(client: FlaskClient) -> None:
    page = client.get(f"/inspect/?{FILLET}&trouble=stubbing").text
    chips = [e for e in elements(page) if e.attrs.get("name") == "trouble"]
    assert len(chips) == 11  # ten and nothing
    assert {e.attrs["form"] for e in chips} == {"job-form"}
    assert [e.attrs["value"] for e in chips if "checked" in e.attrs] == ["stubbing"]


def test_without_a_trouble_named_the_verdict_stands_alone(client: FlaskClient) -> None:
    page = client.get(f"/inspect/?{FILLET}&undercut=0.05in").text
    assert "most likely" not in words(by_id(page, "verdict"))
    assert "most likely" in words(by_id(page, "trouble"))
