"""The Passes page: the core's plan in words and numbers, the picture to scale, bead by bead."""

import re
from urllib.parse import parse_qs, urlsplit

import pytest
import shapely
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.joint.joints import Dimension
from beadwright.passes.pass_beads import PassPlan
from beadwright.passes.passes_page import passes_answer
from beadwright_site.drawings.passes_drawing import WIDTH, PassDrawing, draw_passes, turns_of
from beadwright_site.pages.passes.bead_words import aim_words, arc_words, torch_words
from beadwright_site.pages.passes.other_plans import other_plans
from beadwright_site.pages.passes.schedule import schedule_rows
from tests.site.page import Element, by_id, words
from tests.told import in_words, told

EXAMPLE_QUERY = "plate=3/4in&leg=5/8in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"

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
    return passes_answer(query).found


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
        assert told(note, plan.job.units) in notes


@pytest.mark.parametrize("query", [*QUERIES, LONG])
def test_the_picture_is_to_scale_and_on_the_paper(query: str) -> None:
    found = planned(query)
    for at in (1, len(found.beads)):
        drawing = drawn(found, at)
        # Every point is turned alike: what is drawn is as many pixels as the plan is meters.
        shown = sum(outline(plate).area for plate in drawing.plates)
        scale2 = shown / sum(shapely.Polygon(plate).area for plate in found.shape.plates)
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
            whole = bead.slot.section_m2 * scale2
            # Points are rounded to a tenth of a pixel.
            assert area == pytest.approx(whole, rel=0.02, abs=0.1 * shapes[0].length)
            if mark.size:
                assert shapes[0].buffer(1).contains(shapely.Point(mark.x, mark.y - 4))
        joint = sum(region.section_m2 for region in found.shape.regions)
        assert areas == pytest.approx(joint * scale2, rel=0.01)


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
    upper, lower = middles  # the beveled plate is the first
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
    count = len(plan.beads)
    assert words(by_id(last, "bead")).startswith(f"Bead {count} of {count}")


@pytest.mark.parametrize(
    ("query", "bead", "torch", "aim"),
    [
        # Stacked from the lower plate up: root, toe of the first on the plate, then its upper toe.
        (EXAMPLE_QUERY, 1, "45° up from the bottom plate", "Root"),
        (EXAMPLE_QUERY, 2, "up from the bottom plate", "Lower toe of bead 1"),
        (EXAMPLE_QUERY, 3, "up from the bottom plate", "Upper toe of bead 1"),
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
    found = passes_answer(EXAMPLE_QUERY)
    rows = list(other_plans(found, {"leg": "5/8in"}))
    assert [row.same for row in rows].count(True) == 1
    now = found.found.arc_time_s
    for row, choice in zip(rows, found.choices(), strict=True):
        assert choice.arc_time_s is not None
        assert row.time == arc_words(choice.arc_time_s)
        if not row.same:
            change = choice.arc_time_s - now
            told = f"{'+' if change > 0 else '−'}{arc_words(abs(change))}"
            time = told if abs(change) > 0.5 else "same time"
            assert row.against.startswith(f"{time}, hottest ")
            other = planned(f"{EXAMPLE_QUERY}&{row.query}")
            assert other.arc_time_s == pytest.approx(choice.arc_time_s)


def test_a_plan_that_cannot_be_laid_says_where_it_stops_and_the_nearest(
    client: FlaskClient,
) -> None:
    page = client.get(f"/passes/?{BLOCKED}").text
    plan = by_id(page, "plan")
    assert "9 passes do not work here" in words(plan)
    assert "two limits conflict" in words(plan)
    near = passes_answer(BLOCKED).nearest
    assert near is not None
    first, *_ = [link for link in links(plan) if link.attrs.get("class") == "way"]
    assert asked(first)["passes"] == near.changes["passes"]
    assert in_words(near.phrase) in words(first)
    opened = client.get(f"/passes/{first.attrs['href']}").text
    assert "cannot" not in words(by_id(opened, "plan"))
    assert "–" in words(by_id(page, "schedule"))


def test_where_a_gouge_cuts_the_side_being_laid_is_seen() -> None:
    """Bead 1, the root, is gouged out and lies under bead 5; neither's number is written twice."""
    found = planned("joint=v&plate=1/2in&position=1G&back=gouge")
    count = len(found.beads)
    first, last = drawn(found, 1), drawn(found, count)
    assert [mark.number for mark in first.beads if mark.lost] == [5]
    assert [mark.number for mark in last.beads if mark.lost] == [1]
    assert {mark.number for mark in first.painted[-4:]} == {1, 2, 3, 4}
    assert last.painted == last.beads
    for query in QUERIES:
        plan = planned(query)
        if not plan.shape.gouged:
            drawing = drawn(plan, 1)
            assert drawing.painted == drawing.beads
            assert not any(mark.lost for mark in drawing.beads)
