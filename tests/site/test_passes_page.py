"""The Passes page: the core's plan in words and numbers, the picture to scale, bead by bead."""

import json
import re
from urllib.parse import parse_qs, urlsplit

import pytest
import shapely
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.joints import Dimension
from beadwright.pass_beads import PassPlan
from beadwright.pass_page import pass_answer
from beadwright.pass_query import DEFAULTS, EXAMPLE_QUERY
from beadwright_site.page_keys import carried
from beadwright_site.pages.bead_words import aim_words, arc_words, torch_words
from beadwright_site.pages.other_plans import other_plans
from beadwright_site.pages.passes import LATER, PARTS, STEPPED, headline_of, show_passes
from beadwright_site.pages.passes_form import passes_form
from beadwright_site.pages.schedule import schedule_rows
from beadwright_site.passes_drawing import WIDTH, PassDrawing, draw_passes, turns_of
from beadwright_site.phone import call
from tests.site.page import Element, by_id, elements, words

QUERIES = (
    EXAMPLE_QUERY,
    "plate=1in&joint=v&position=1G",
    "plate=2in&joint=double-v&position=1G&units=si",
    "plate=1/2in&joint=bevel&backing=steel&position=2G",
    "plate=1in&joint=double-bevel&position=2G",
    "plate=3/8in&joint=lap",
    "plate=1/2in&leg=1/2in&skew=60",
    "plate=1/2in&joint=plug&position=1G",
    "plate=1in&leg=1in&position=4F",
    "plate=1in&joint=tee-double-bevel&position=2F",
    "plate=1in&leg=3/4in&position=3F-up&transfer=pulse",
)
LONG = "plate=4in&joint=v&position=1G&travel_by=robot"
BLOCKED = "plate=1/2in&leg=1/4in&passes=9&transfer=spray"


def planned(query: str) -> PassPlan:
    return pass_answer(query).found


def drawn(found: PassPlan, at: int) -> PassDrawing:
    def write(dimension: Dimension) -> str:
        return f"{dimension.value_m * 1000:.2f}"

    return draw_passes(found, at, write)


def outline(points: str) -> shapely.Polygon:
    return shapely.Polygon([tuple(map(float, pair.split(","))) for pair in points.split()])


def links(part: Element) -> list[Element]:
    return [each for each in everything(part) if each.tag == "a"]


def everything(part: Element) -> list[Element]:
    found = [part]
    for child in part.children:
        found += everything(child)
    return found


def asked(link: Element) -> dict[str, str]:
    query = urlsplit(link.attrs["href"]).query
    return {key: values[0] for key, values in parse_qs(query).items()}


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_plan_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/passes/?{query}").text
    found = answer("passes", query)
    plan, system = found.found, found.units
    headline = words(by_id(page, "plan"))
    count = len(plan.beads)
    assert f"{count} pass" in headline
    assert arc_words(plan.arc_time_s) in headline
    picture = by_id(page, "picture")
    assert len([e for e in everything(picture) if "data-step" in e.attrs and e.tag == "a"
                and e.attrs.get("class", "").startswith("s")]) == count  # fmt: skip
    card = words(by_id(page, "bead"))
    laid = found.bead.laid
    assert laid is not None
    shown = [(laid.point.feed_m_s, "wire_feed"), (laid.travel_m_s, "travel"),
             (laid.tip_to_work_m, "tip_to_work"), (laid.point.current_a, "current"),
             (laid.heat_j_m, "heat_input"), (laid.heat_en_j_m, "heat_input"),
             (laid.wire_m, "distance"), (found.bead.slot.thickness_m, "leg")]  # fmt: skip
    if laid.transfer != "pulse":
        shown.append((laid.point.volts, "volts"))
    for value, measure in shown:
        assert f"{units.show(value, measure, system)} {units.symbol(measure, system)}" in card
    notes = words(by_id(page, "notes")) + headline
    for note in found.notes:
        assert note.text in notes


@pytest.mark.parametrize("query", [*QUERIES, LONG])
def test_the_picture_is_to_scale_and_on_the_paper(query: str) -> None:
    found = planned(query)
    for at in (1, len(found.beads)):
        drawing = drawn(found, at)
        areas = 0.0
        for bead, mark in zip(found.beads, drawing.beads, strict=True):
            shapes = [outline(points) for points in mark.points]
            for shape in shapes:
                x0, y0, x1, y1 = shape.bounds
                assert x0 >= 0
                assert y0 >= 0
                assert x1 <= WIDTH
                assert y1 <= drawing.height
            area = sum(shape.area for shape in shapes) / len(shapes)
            areas += area * len(shapes)
            whole = bead.slot.section_m2 * drawing.scale**2
            # Points are rounded to a tenth of a pixel.
            assert area == pytest.approx(whole, rel=0.02, abs=0.1 * shapes[0].length)
            if mark.size:
                assert shapes[0].buffer(1).contains(shapely.Point(mark.x, mark.y - 4))
        joint = sum(region.section_m2 for region in found.shape.regions)
        assert areas == pytest.approx(joint * drawing.scale**2, rel=0.01)


@pytest.mark.parametrize("query", QUERIES)
def test_the_torch_points_at_its_bead_from_outside(query: str) -> None:
    """The aim lies on the bead; going out along the torch leaves the joint's metal in air."""
    found = planned(query)
    for bead in found.beads:
        drawing = drawn(found, bead.number)
        mark = drawing.beads[bead.number - 1]
        aim = shapely.Point(drawing.aim)
        assert min(outline(points).distance(aim) for points in mark.points) < 1.0
        moves = [float(text) for text in re.findall(r"-?[\d.]+", drawing.torch)]
        out = shapely.Point(aim.x + moves[2], aim.y + moves[3])
        way = shapely.LineString([aim, out])
        plates = [outline(points) for points in drawing.plates]
        for plate in plates:
            assert way.intersection(plate.buffer(-0.5)).length == 0


def test_horizontal_butts_stand_on_their_lower_plate_and_overhead_hangs() -> None:
    butt = planned("plate=1/2in&joint=bevel&position=2G")
    assert turns_of(butt) == 1
    drawing = drawn(butt, 1)
    middles = [outline(points).centroid.y for points in drawing.plates]
    upper, lower = middles  # the bevelled plate is the first
    assert upper < lower
    over = planned("plate=1in&leg=3/4in&position=4F")
    hung = drawn(over, 1)
    lying = outline(hung.plates[0]).centroid.y
    assert lying < min(outline(bead.points[0]).centroid.y for bead in hung.beads)
    assert turns_of(planned("leg=5/16in&position=2F")) == 0


def test_numbers_too_small_to_read_are_left_out_and_large_ones_are_not() -> None:
    few, many = (drawn(planned(query), 1) for query in (QUERIES[1], LONG))
    assert all(bead.size >= 9 for bead in few.beads)
    assert all(bead.size == 0 or bead.size >= 9 for bead in many.beads)
    assert sum(bead.size > 0 for bead in many.beads) > 0.9 * len(many.beads)
    steps = [bead.step for bead in many.beads]
    assert steps == sorted(steps)
    assert (steps[0], steps[-1]) == (0, 5)


def test_any_bead_is_looked_at_by_a_plain_link(client: FlaskClient) -> None:
    page = client.get(f"/passes/?{EXAMPLE_QUERY}&at=3").text
    plan = planned(EXAMPLE_QUERY)
    beads = [e for e in everything(by_id(page, "picture"))
             if e.tag == "a" and e.attrs.get("class", "").startswith("s")]  # fmt: skip
    kinds = [bead.attrs["class"].split()[1] for bead in beads]
    assert kinds == ["laid", "laid", "now", *["open"] * (len(beads) - 3)]
    assert [asked(bead)["at"] for bead in beads] == [str(b.number) for b in plan.beads]
    assert all(asked(bead)["leg"] == "5/8in" for bead in beads)
    steps = [link for link in links(by_id(page, "picture")) if link not in beads]
    assert [asked(step)["at"] for step in steps] == ["2", "4"]
    last = client.get(f"/passes/?{EXAMPLE_QUERY}").text
    [*_, onward] = links(by_id(last, "picture"))
    assert asked(onward)["at"] == "1"
    assert words(by_id(last, "bead")).startswith("Bead 5 of 5")


@pytest.mark.parametrize(
    ("query", "bead", "torch", "aim"),
    [
        # Stacked from the lower plate up: root, toe of the first on the plate, then its upper toe.
        (EXAMPLE_QUERY, 1, "45° up from the lower plate", "Root"),
        (EXAMPLE_QUERY, 2, "up from the lower plate", "Lower toe of bead 1"),
        (EXAMPLE_QUERY, 3, "up from the lower plate", "Upper toe of bead 1"),
        ("plate=1in&joint=v&position=1G", 1, "Square to the plates", "Root"),
        ("plate=1in&joint=v&position=1G", 2, "Square to the plates", "Middle of bead 1"),
        ("plate=1in&joint=v&position=1G", 3, "wire toward the right wall",
         "Where bead 2 meets the right wall"),
        ("plate=1/2in&joint=bevel&backing=steel&position=2G", 2, "wire toward the lower wall",
         "Where bead 1 meets the lower wall"),
        ("plate=1in&leg=1in&position=4F", 2, "down from the plate overhead",
         "Lower toe of bead 1"),
        ("plate=1/2in&joint=plug&position=1G", 1, "Square to the plate", "Wall's foot, all round"),
    ],
)  # fmt: skip
def test_torch_and_aim_in_words(query: str, bead: int, torch: str, aim: str) -> None:
    found = planned(query)
    assert torch in torch_words(found, found.beads[bead - 1])
    assert aim_words(found, found.beads[bead - 1]) == aim


def test_the_sides_in_words_are_those_of_the_picture() -> None:
    """What is called left, right, upper or lower lies there as drawn, on both sides."""
    for query in ("plate=2in&joint=double-v&position=1G", "plate=2in&joint=double-v&position=2G",
                  "plate=2in&joint=double-v&position=4G"):  # fmt: skip
        found = planned(query)
        drawing = drawn(found, 1)
        seen: set[str] = set()
        for bead in found.beads:
            said = re.search(r"meets the (\w+) wall", aim_words(found, bead))
            if said is None:
                continue
            layer = [b for b in found.beads
                     if (b.side, b.slot.layer) == (bead.side, bead.slot.layer)]  # fmt: skip
            places = [outline(drawing.beads[b.number - 1].points[0]).centroid for b in layer]
            here = outline(drawing.beads[bead.number - 1].points[0]).centroid
            xs, ys = [p.x for p in places], [p.y for p in places]
            end = {"left": (here.x, min(xs)), "right": (here.x, max(xs)),
                   "upper": (here.y, min(ys)), "lower": (here.y, max(ys))}[said[1]]  # fmt: skip
            assert end[0] == pytest.approx(end[1], abs=0.05), (query, bead.number)
            seen.add(said[1])
        assert len(seen) == 2


@pytest.mark.parametrize("query", [*QUERIES, LONG])
def test_the_schedule_has_every_bead_once_with_its_settings(query: str) -> None:
    found = planned(query)
    rows = list(schedule_rows(found))
    assert [number for row in rows for number in range(row.first, row.last + 1)] == [
        bead.number for bead in found.beads
    ]
    for row in rows:
        group = [b.laid for b in found.beads[row.first - 1 : row.last] if b.laid]
        travels = [laid.travel_m_s for laid in group]
        slack = 1.05 if found.job.travel_by == "hand" else 1.01
        assert max(travels) <= min(travels) * slack
        for laid in group:
            assert units.show(laid.point.feed_m_s, "wire_feed", found.job.units) == row.feed


def test_other_plans_say_what_they_cost_against_this_one() -> None:
    found = pass_answer(EXAMPLE_QUERY)
    rows = list(other_plans(found, {"leg": "5/8in"}))
    assert [row.same for row in rows].count(True) == 1
    now = found.found.arc_time_s
    for row, choice in zip(rows, found.choices(), strict=True):
        assert choice.arc_time_s is not None
        assert row.time == arc_words(choice.arc_time_s)
        if not row.same:
            change = choice.arc_time_s - now
            assert row.against.startswith(
                f"{'+' if change > 0 else '−'}{arc_words(abs(change))}, hottest "
            )
            other = planned(f"{EXAMPLE_QUERY}&{row.query}")
            assert other.arc_time_s == pytest.approx(choice.arc_time_s)


def test_a_plan_that_cannot_be_laid_says_where_it_stops_and_the_nearest(
    client: FlaskClient,
) -> None:
    page = client.get(f"/passes/?{BLOCKED}").text
    plan = by_id(page, "plan")
    assert "9 passes cannot be laid so" in words(plan)
    assert "two limits fight" in words(plan)
    near = pass_answer(BLOCKED).nearest
    assert near is not None
    first, *_ = [link for link in links(plan) if link.attrs.get("class") == "way"]
    assert asked(first)["passes"] == near.changes["passes"]
    assert near.text in words(first)
    opened = client.get(f"/passes/{first.attrs['href']}").text
    assert "cannot" not in words(by_id(opened, "plan"))
    assert "–" in words(by_id(page, "schedule"))


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
    assert "There is no bead 77: this plan has 5 beads" in words(form)
    [back] = [link for link in links(form) if "last bead" in words(link)]
    assert "at" not in asked(back)
    assert asked(back)["leg"] == "5/8in"
    assert not [e for e in everything(form) if e.attrs.get("name") == "at"]


def test_every_entry_of_the_page_is_in_the_form_once(client: FlaskClient) -> None:
    groups = passes_form({}, {}, "us", pass_answer("joint=double-v&position=1G&plate=1in"))
    keys = [entry.key for group in groups for entry in group.entries]
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
    first = [part for part in PARTS if part not in LATER]
    shown = show_passes(EXAMPLE_QUERY, None, first)
    assert "others" not in shown.html
    assert set(first) == set(shown.html)
    assert set(show_passes(EXAMPLE_QUERY, None, LATER).html) == {"others"}
    step = show_passes(f"{EXAMPLE_QUERY}&at=2", None, STEPPED)
    assert set(step.html) == set(STEPPED)
    assert step.query.endswith("at=2")


def test_the_phone_saves_and_tells_the_plan_the_page_stands_with() -> None:
    csv = json.loads(call("csv", json.dumps({"page": "passes", "query": ""})))["csv"]
    rows = csv.strip().split("\r\n")
    assert len(rows) == 1 + len(planned(EXAMPLE_QUERY).beads)
    told = json.loads(call("json", json.dumps({"page": "passes", "query": "at=2"})))
    assert told["answer"]["passes"] == len(planned(EXAMPLE_QUERY).beads)
    assert told["answer"]["at"] == 2


def test_the_bare_page_says_it_is_an_example_and_frozen_pictures_are_the_phone_s(
    client: FlaskClient,
) -> None:
    page = client.get("/passes/").text
    assert words(by_id(page, "state")) == "Example: a heavier bracket"
    assert by_id_outer(page, "picture") == by_id_outer(show_passes("").html["picture"], "picture")


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
    assert headline_of(planned(EXAMPLE_QUERY)).startswith("5 passes in 3 layers, ")
    assert " layers from both sides, " in headline_of(planned(QUERIES[2]))
