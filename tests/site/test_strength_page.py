"""The Strength page: the core's numbers, the weld to scale, the worst point ringed, refusals."""

import re
from math import hypot

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site.drawings.point_forces import LONGEST_FORCE
from beadwright_site.drawings.strength_drawing import HEIGHT, WIDTH, draw_group
from beadwright_site.pages.strength.page import PAGE
from beadwright_site.pages.strength.view import verdict_of
from beadwright_site.written import written
from tests.site.page import by_id, elements, words
from tests.told import in_words, told

EXAMPLE = PAGES["strength"].example

QUERIES = (
    EXAMPLE,
    "py=-20kip&load_x=8in&group=c&group_width=4in&group_height=11in&weld_sides=1&joint=lap",
    "analysis=ic&py=-20kip&load_x=8in&group=c&group_width=4in&group_height=11in&leg=1/4in",
    "group=circle&group_height=6in&mz=10kip-ft&pz=2kip",
    "units=si&design_code=en-directional&plate=12mm&px=40kN&pz=10kN&group=rectangle"
    "&group_width=80mm&group_height=120mm&weld_sides=1&leg=6mm",
    "line_load=3kip/in",
    "group=polyline:0,0 4in,0 4in,6in 1in,6in&py=5kip&load_x=10in&design_code=lrfd",
    "group=t&mx=20kip-in&my=10kip-in",
    "py=200kip",
)


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_numbers_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/strength/?{query}").text
    found = answer("strength", query)
    headline, reason = verdict_of(found)
    top = words(by_id(page, "verdict"))
    assert headline in top
    assert reason in top
    for value, measure in ((found.weld.asked, "force_per_length"), (found.legs.throat, "length")):
        assert written(value, measure, found.units) in top
    listed = words(by_id(page, "links"))
    for link in found.links:
        assert f"{link.use:.0%}" in listed
        assert units.show(link.holds, "force_per_length", found.units) in listed
    assert units.show(found.legs.least, "leg", found.units) in words(by_id(page, "sizes"))
    notes = words(by_id(page, "notes"))
    assert "licensed people" in notes
    assert all(told(note, found.units) in notes for note in found.notes)


def test_the_verdict_in_words() -> None:
    def said(query: str) -> str:
        return " ".join(verdict_of(answer("strength", query)))

    assert said(EXAMPLE).startswith("5/16 in holds; 69% used")
    assert "all around holds" in said("group=circle&py=2kip&leg=1/4in")
    assert said("py=2kip").startswith("Weld 3/16 in")
    assert "does not hold" in said("leg=3/16in&py=-10kip&load_z=4in")
    assert "second plate does not hold" in said("leg=1/2in&py=60kip")
    assert "No fillet holds this" in said("py=5000kip")


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("py=1kip&line_load=1kip/in", "py", "not both"),
        ("py=lots", "py", "lots"),
        ("analysis=ic&pz=1kip&group=c", "pz", "take the elastic method"),
        ("joint=lap&leg=3/8in&plate2=3/8in&py=1kip", "leg", "most along the edge"),
        ("group=c&group_height=8in&part_length=6in&py=1kip", "part_length", "shorten the weld"),
        ("filler_strength=10ksi", "filler_strength", "10ksi"),
        ("group=polyline:0,0", "group", "2 to 24 points"),
    ],
)
def test_an_error_stands_beside_its_field(
    client: FlaskClient, query: str, key: str, said: str
) -> None:
    page = client.get(f"/strength/?{query}").text
    field = by_id(page, key)
    assert field.attrs["aria-invalid"] == "true"
    assert said in words(by_id(page, field.attrs["aria-describedby"]))
    for name, value in (pair.split("=") for pair in query.split("&")):
        if name not in ("analysis", "joint"):
            shown = [e for e in elements(page) if e.attrs.get("name") == name]
            assert any(e.attrs.get("value") == value for e in shown)


def test_an_error_of_a_choice_stands_beside_it(client: FlaskClient) -> None:
    page = client.get("/strength/?design_code=en&steel=A36").text
    for key in ("steel", "design_code"):
        assert "correlation factor" in words(by_id(page, f"wrong-{key}"))


@pytest.mark.parametrize("query", QUERIES)
def test_the_picture_stays_on_the_paper(query: str) -> None:
    found = answer("strength", query)
    drawing = draw_group(found, lambda value, measure: written(value, measure, found.units))
    numbers = re.findall(r"-?\d+\.\d", drawing.weld)
    xs, ys = [float(n) for n in numbers[::2]], [float(n) for n in numbers[1::2]]
    assert all(0 <= x <= WIDTH for x in xs)
    assert all(0 <= y <= HEIGHT for y in ys)
    for text in drawing.texts:
        assert -2 <= text.x <= WIDTH + 2
        assert 0 < text.y <= HEIGHT + 2
    load = drawing.load.text
    assert load is not None
    half = 8 * len(load.text) * {"start": 0.0, "middle": 0.5, "end": 1.0}[load.anchor]
    assert load.x - half >= 0
    assert load.x - half + 8 * len(load.text) <= WIDTH


def test_the_weld_is_drawn_to_scale_and_its_worst_point_ringed() -> None:
    query = QUERIES[1]
    found = answer("strength", query)
    drawing = draw_group(found, lambda value, measure: written(value, measure, found.units))
    path = [tuple(map(float, p)) for p in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", drawing.weld)]
    lengths = [hypot(b[0] - a[0], b[1] - a[1]) for a, b in zip(path[::2], path[1::2], strict=True)]
    assert lengths[1] / lengths[0] == pytest.approx(11 / 4, rel=0.01)
    assert drawing.worst in path
    at = found.spread.forces[found.links[0].point].place
    right = max(x for x, _ in path)
    assert (drawing.worst[0] == right) == (at.x > found.task.properties.x)
    longest = 0.0
    for arrow in drawing.forces:
        x0, y0 = map(float, re.findall(r"-?[\d.]+", arrow.line)[:2])
        x1, y1 = map(float, arrow.head.split()[0].split(","))
        longest = max(longest, hypot(x1 - x0, y1 - y0))
    assert longest == pytest.approx(LONGEST_FORCE, abs=0.2)
    assert drawing.load.arrow is not None
    assert drawing.load.text is not None
    assert drawing.load.text.text == "20.00 kip"


def test_the_turning_center_is_marked_where_it_is() -> None:
    found = answer("strength", QUERIES[2])
    drawing = draw_group(found, lambda value, measure: written(value, measure, found.units))
    assert found.spread.center is not None
    assert drawing.center
    assert any(text.text == "turns here" for text in drawing.texts)
    elastic = answer("strength", QUERIES[1])
    assert not draw_group(elastic, lambda v, m: written(v, m, "us")).center


def test_pull_and_push_are_told_apart() -> None:
    found = answer("strength", EXAMPLE)
    drawing = draw_group(found, lambda value, measure: written(value, measure, found.units))
    assert {ring.pulls for ring in drawing.rings} == {True, False}
    # Ten kip down, held three inches out, pulls the top of the weld off the joint.
    top = min(drawing.rings, key=lambda ring: ring.y)
    assert top.pulls


def test_hostile_words_do_not_become_markup(client: FlaskClient) -> None:
    page = client.get("/strength/?group=<script>alert(1)</script>&py=<b>&steel=%00").text
    assert "<script>alert" not in page
    assert "<b>&" not in page


@pytest.mark.parametrize("query", QUERIES)
def test_units_turn_over_and_back(query: str) -> None:
    shown = PAGE.show(query)
    assert shown.ok
    other = re.search(r'data-query="([^"]*)"', shown.html["units-switch"])
    assert other is not None
    again = PAGE.show(other[1].replace("&amp;", "&"))
    assert again.ok
    assert set(again.html) == set(PAGE.parts)


@pytest.mark.parametrize("query", QUERIES)
def test_the_ring_stands_where_the_weakest_link_is_asked_most(query: str) -> None:
    found = answer("strength", query)
    weak = found.links[0]
    forces = found.spread.forces
    if weak.key != "weld":
        shear = [hypot(f.fx, f.fy) + abs(f.fz) for f in forces]
        assert shear[weak.point] == pytest.approx(max(shear), rel=0.2)
    page = PAGE.show(query).html["picture"]
    assert f"Large ring: {in_words(weak.phrase)}." in page
    circle = re.search(r'class="worst" cx="([\d.]+)" cy="([\d.]+)"', page)
    assert circle is not None
    drawing = draw_group(found, lambda value, measure: written(value, measure, found.units))
    assert drawing.worst == (float(circle[1]), float(circle[2]))


@pytest.mark.parametrize(
    ("query", "headline", "shown"),
    [
        ("joint=plug&hole=13/16in&plate=1/2in&plate2=1/2in&py=5kip", "13/16 in plug: holds; 46%",
         ("0.518", "10.89 kip", "1 plug", "maximum hole", "Not every plate is checked")),
        ("joint=plug&hole=13/16in&plate=1/2in&plate2=1/2in&py=50kip&plugs=2",
         "2 × 13/16 in plugs: does not hold", ("2 plugs",)),
        ("joint=slot&hole=13/16in&slot_length=2in&plate2=7/16in&py=5kip",
         "13/16 in by 2 in slot: holds", ("1 slot", "end to end")),
        ("joint=v&plate=1/2in&depth=1/4in&pz=5kip&held=yes", "1/4 in throat: holds",
         ("minimum throat",)),
        ("joint=v&plate=1/2in&pz=5kip", "Welded through: holds", ("holds as much as the weld",)),
        ("joint=v&plate=1/2in&depth=1/4in&pz=5kip", "Not as it is", ("from one side only",)),
        ("skew=60deg&leg=1/4in&far_leg=1/4in&py=2kip", "1/4 in holds",
         ("leg to lay, 60° side", "0.354 in", "leg to lay, 120° side")),
        ("weld_sides=1&pz=2kip&leg=1/4in", "Not as it is", ("from one side only",)),
        ("leg=1/8in&py=1kip", "Not as it is", ("under the code minimum",)),
        ("joint=lap&group=line&group_height=6in&plate2=3/8in&leg=1/4in&py=5kip", "1/4 in holds",
         ("Not every plate is checked for pull",)),
        ("joint=lap&group=lines&group_height=6in&plate2=1/4in&leg=3/16in&py=30kip",
         "The second plate does not hold", ("yielding over 4 in", "30.00 kip")),
    ],
)  # fmt: skip
def test_every_kind_of_weld_is_judged_by_its_name(
    client: FlaskClient, query: str, headline: str, shown: tuple[str, ...]
) -> None:
    page = client.get(f"/strength/?{query}").text
    top = words(by_id(page, "verdict"))
    assert headline in top
    text = " ".join(words(by_id(page, part)) for part in ("verdict", "links", "sizes", "notes"))
    for word in shown:
        assert word in text
    if "joint=lap" not in query and "joint" in query:
        assert "fillet" not in top
    found = answer("strength", query)
    fails = "fails" in (by_id(page, "verdict").attrs["class"] or "")
    assert fails is not found.holds


def test_a_hole_is_drawn_whole_and_no_point_of_it_is_ringed() -> None:
    plug = PAGE.show("joint=plug&py=2kip").html["picture"]
    assert 'class="worst"' not in plug
    assert "The hole, seen square" in plug
    assert 'class="worst"' in PAGE.show("joint=lap&py=2kip").html["picture"]


def test_the_form_asks_what_the_joint_has(client: FlaskClient) -> None:
    def asked(query: str) -> set[str]:
        page = client.get(f"/strength/?{query}").text
        asking = [e for e in elements(page) if e.attrs.get("type") != "hidden"]
        return {e.attrs["name"] for e in asking if e.attrs.get("name")}

    tee, lap, plug, groove = (asked(f"joint={j}&py=1kip") for j in ("tee", "lap", "plug", "v"))
    assert {"leg", "far_leg", "skew", "weld_sides", "held"} <= tee
    assert {"plate_width", "plate2_width", "steel2"} <= lap
    assert {"hole", "plugs", "pitch", "plate2_width"} <= plug
    assert {"angle", "depth", "root_face", "backing", "held"} <= groove
    assert not {"hole", "depth", "plate_width"} & tee
    assert not {"group", "leg", "weld_sides", "held", "weld_length", "pz", "analysis"} & plug
    assert not {"leg", "plugs", "plate_width", "far_leg"} & groove


@pytest.mark.parametrize("query", [*QUERIES, "design_code=en&py=5kip", "joint=plug&py=5kip"])
def test_every_limit_shows_its_document_and_how_it_was_had(query: str) -> None:
    parts = PAGE.show(query).html
    rows = re.findall(r"<li[^>]*>(.*?)</li>", parts["links"], re.S)
    assert rows
    hows = (
        "found",
        "found second-hand",
        "not checked against the book",
        "derived",
        "common practice",
    )
    for row in rows:
        assert re.search(r'class="cite"[^>]*>([^<]*)<', row)
        assert words_of(row).endswith(hows)
    for row in re.findall(r"<li[^>]*>(.*?)</li>", parts["sizes"], re.S):
        limit = re.search(r"<span>(least|most|largest|shortest|or intermittent)", row)
        assert words_of(row).endswith(hows) or not limit, row


def words_of(markup: str) -> str:
    """A piece of a page without its tags."""
    return " ".join(re.sub(r"<[^>]*>", " ", markup).split())


def test_no_longer_weld_is_recommended_where_it_would_hold_less() -> None:
    """EN 1993-1-8, 4.11(3): past 450 throats a longer lap holds less; 30 m at 50 mm is."""
    lap = "units=si&design_code=en&joint=lap&group=line&plate=50mm&plate2=50mm&py=20000kN"
    long, short = (verdict_of(answer("strength", f"{lap}&group_height={m}m")) for m in (30, 1))
    assert long == (
        "No fillet holds this",
        "Use more lines of weld, or a groove: a longer weld holds less.",
    )
    assert short[1].startswith("Use a longer weld")
