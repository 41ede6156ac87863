"""Square butts welded from both sides: by the detail, by a printed table, by hand."""

from math import acos, cos, radians, sin, tan

import pytest

from beadwright.api import answer_json
from beadwright.job.job_joint import joint_shape
from beadwright.job.job_query import read_query

IN = 0.0254
SQUARE = "joint=square&position=1G&back=gouge"


def u_section(deep: float) -> float:
    """A U of 1/4 in radius, 20° between its walls: a segment of a circle, a trapezoid on it."""
    rise = 0.25 * (1 - sin(radians(10)))
    turn = acos(1 - deep / 0.25) if deep < rise else radians(80)
    high = max(0.0, deep - rise)
    segment = 0.25**2 * (turn - sin(turn) * cos(turn))
    return segment + high * (2 * 0.25 * cos(radians(10)) + high * tan(radians(10)))


@pytest.mark.parametrize(
    ("plate", "deep"),
    # To the middle, and 1/8 in or half of the other half past it.
    [(3 / 16, 9 / 64), (1 / 4, 3 / 16), (3 / 8, 9 / 32)],
)
def test_square_edges_are_welded_from_both_sides(plate: float, deep: float) -> None:
    shape = joint_shape(read_query(f"{SQUARE}&plate={plate}in&reinforcement=0").job)[0]
    first, back = shape.regions
    assert first.section_m2 / IN**2 == pytest.approx(1 / 16 * plate / 2)
    assert back.section_m2 / IN**2 == pytest.approx(u_section(deep), rel=2e-3)
    assert shape.throat_m == pytest.approx(plate * IN)
    assert shape.gap_m == pytest.approx(IN / 16)


def said(page: str, query: str, level: str) -> str:
    """Notes of a level, as one text."""
    notes = answer_json(page, query)["notes"]
    return " ".join(note["text"] for note in notes if note["level"] == level)


@pytest.mark.parametrize("page", ["dial-in", "passes"])
def test_square_edges_say_how_deep_each_side_has_to_fuse(page: str) -> None:
    """AISC LRFD Manual Table 8-36, B-L1b-GF: to 3/8 in, gap 0 to 1/8 in, gouged."""
    query = f"{SQUARE}&plate=3/8in"
    assert "fuse over 3/32 in deep" in said(page, query, "caution")
    assert "over 1/8 in deep" in said(page, f"{query}&gouge_depth=1/4in", "caution")
    assert "root opening 5/32 in is over 1/8 in" in said(page, f"{query}&gap=5/32in", "caution")
    assert "one side" not in said(page, query, "caution")
    assert "bevel it" in said(page, f"{SQUARE}&plate=7/16in", "stop")
    assert "bevel it" not in said(page, f"{SQUARE}&plate=3/8in", "stop")


def test_square_edges_within_their_detail_are_prequalified() -> None:
    for gap in ("0in", "1/8in", ""):
        assert "detail B-L1b-GF" in said("dial-in", f"{SQUARE}&plate=3/8in&gap={gap}", "note")
    for other in ("plate=1/8in&units=us", "plate=3mm&units=si"):
        assert "B-L1b-GF" in said("dial-in", f"{SQUARE}&{other}", "note")
    for other in ("plate=7/16in", "plate=11ga", "plate=2.9mm&units=si"):
        assert "B-L1b-GF" not in said("dial-in", f"{SQUARE}&{other}", "note")


@pytest.mark.parametrize("position", ["1G", "2G"])
@pytest.mark.parametrize("plate", ["3/16in", "1/4in", "3/8in"])
def test_square_edges_have_beads_on_both_sides(plate: str, position: str) -> None:
    """One bead from the first side; after the gouge no short circuit (common practice)."""
    answer = answer_json("passes", f"{SQUARE}&plate={plate}&position={position}")["answer"]
    assert answer["open"]
    sides = [bead["side"] for bead in answer["beads"]]
    assert sides == sorted(sides)
    assert sides.count(1) == 1
    assert all(bead["transfer"] != "short" for bead in answer["beads"] if bead["side"] == 2)


@pytest.mark.parametrize(("plate", "low", "high"), [(6, 220, 260), (9, 320, 340)])
def test_the_first_side_draws_what_a_table_prints(plate: int, low: float, high: float) -> None:
    """A power-source manual's table, CO2, 1.2 mm wire, 1 bead front and 1 back, gap 1.2 to 1.5."""
    query = f"{SQUARE}&units=si&plate={plate}mm&gap=1.35mm&gas=CO2&dia=1.2mm"
    first = answer_json("passes", query)["answer"]["beads"][0]
    assert 0.9 * low < first["current"]["value"] < 1.1 * high
