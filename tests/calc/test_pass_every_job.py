"""Passes answers every job it is asked: a plan, or a refusal that names what to change."""

import random
from itertools import product
from urllib.parse import urlencode

import pytest
import shapely

from beadwright.errors import FieldErrors
from beadwright.joint.joints import JOINTS, Polygon
from beadwright.passes.passes_page import PassesAnswer, passes_answer
from beadwright.passes.passes_report import passes_report

PLATES = ("30ga", "20ga", "16ga", "1/8in", "1/4in", "1/2in", "2in")
POSITIONS = ("1G", "2G", "3G-up", "3G-down", "4G")
GRID_MM = 1e-5
"""What the union of beads is rounded to: without it edges that nearly meet lose whole beads."""
WIRES = (("ER70S-6", "0.023in"), ("ER70S-6", "0.045in"), ("E71T-1M", "1/16in"))


def whole(query: str) -> PassesAnswer:
    """The answer to a query, each part of it worked out."""
    answer = passes_answer(query)
    passes_report(answer)
    return answer


@pytest.mark.parametrize(
    "query",
    [
        "joint=tee-bevel&plate=20ga",
        "passes=400",
        "joint=square&plate2=30ga&dia=0.023in",
        "joint=tee&plate=16ga&passes=400&angle=20&root_face=0in&welds=8&wfs=200in/min&depth=1/2in",
        "joint=square&plate=3/8in&position=3G-down&wire=E71T-1M&backing=copper&passes=400",
    ],
)
def test_a_job_whose_beads_lean_over_each_other_gets_a_plan_or_is_told_why(query: str) -> None:
    answer = whole(query)
    assert answer.found.open or any(note.level == "stop" for note in answer.notes)
    assert all(bead.slot.width_m > 0 for bead in answer.found.beads)


def plain_jobs() -> list[str]:
    """A grid over joint, plate, position and wire."""
    grid = product(JOINTS, PLATES, POSITIONS, WIRES)
    return [
        urlencode({"joint": j, "plate": plate, "position": at, "wire": wire, "dia": dia})
        for j, plate, at, (wire, dia) in grid
    ]


ASKED = {
    "plate2": ("30ga", "16ga", "1/4in", "1in"),
    "leg": ("1/16in", "1/4in", "1/2in"),
    "gap": ("0in", "1/16in", "1/4in"),
    "gas": ("75/25", "CO2"),
    "transfer": ("short", "spray", "pulse"),
    "travel_by": ("robot", "track"),
    "backing": ("steel", "ceramic"),
    "back": ("gouge",),
    "angle": ("20", "60"),
    "root_face": ("0in", "1/8in"),
    "depth": ("1/8in", "1/2in"),
    "hole": ("1/2in", "1in", "2in"),
    "slot_length": ("2in", "6in"),
    "passes": ("1", "2", "7", "40", "400"),
    "bead": ("stringer",),
    "travel": ("3in/min", "12in/min", "100in/min"),
    "wfs": ("60in/min", "290in/min", "780in/min"),
    "volts": ("14V", "24V"),
    "heat_max": ("15kJ/in", "40kJ/in"),
    "machine_amps": ("120A", "300A"),
}


def random_jobs(seed: int, count: int) -> list[str]:
    """Jobs of a seeded draw, each with a few more entries."""
    draw = random.Random(seed)
    jobs: list[str] = []
    for _ in range(count):
        wire, dia = draw.choice(WIRES)
        typed = {
            "joint": draw.choice(JOINTS),
            "plate": draw.choice(PLATES),
            "position": draw.choice(POSITIONS),
            "wire": wire,
            "dia": dia,
        }
        for key in draw.sample(list(ASKED), 5):
            typed[key] = draw.choice(ASKED[key])
        jobs.append(urlencode(typed))
    return jobs


def answered(query: str) -> PassesAnswer | None:
    """The answer, or None where a field is refused by name."""
    try:
        return whole(query)
    except FieldErrors:
        return None


def in_mm(outline: Polygon) -> shapely.Polygon:
    return shapely.Polygon([(1000 * x, 1000 * y) for x, y in outline])


def check(query: str) -> None:
    """A plan whose beads lie in their joint, apart, and add up to it; or words beside a field."""
    answer = answered(query)
    if answer is None:
        return
    found = answer.found
    assert found.open or any(note.level == "stop" for note in answer.notes), query
    for number, region in enumerate(found.shape.regions, start=1):
        side = [bead.slot for bead in found.beads if bead.side == number]
        whole_mm = in_mm(region.outline)
        beads = [in_mm(outline).buffer(0) for slot in side for outline in slot.outlines]
        total = sum(bead.area for bead in beads)
        assert total == pytest.approx(whole_mm.area, rel=5e-3), query
        together = shapely.unary_union(beads, grid_size=GRID_MM)
        assert together.area == pytest.approx(total, rel=5e-3), query
        outside = together.difference(whole_mm.buffer(0.01)).area
        assert outside < 3e-3 * total, query
        laid = (
            2 * sum(slot.section_m2 for slot in side)
            if found.shape.round
            else sum(slot.section_m2 for slot in side)
        )
        assert laid * 1e6 == pytest.approx(total, rel=5e-3), query


@pytest.mark.parametrize("query", plain_jobs()[::29])
def test_a_plain_job_has_a_plan_or_a_reason(query: str) -> None:
    check(query)


@pytest.mark.long(reason="the whole grid; the quick gate takes every 29th")
@pytest.mark.parametrize("start", range(12))
def test_every_plain_job_has_a_plan_or_a_reason(start: int) -> None:
    for query in plain_jobs()[start::12]:
        check(query)


def test_beads_of_random_jobs_lie_in_their_joints_and_add_up() -> None:
    for query in random_jobs(20201, 40):
        check(query)


@pytest.mark.long(reason="a thousand jobs; the quick gate takes forty")
@pytest.mark.parametrize("seed", range(20))
def test_beads_of_a_thousand_random_jobs_lie_in_their_joints_and_add_up(seed: int) -> None:
    for query in random_jobs(seed, 50):
        check(query)
