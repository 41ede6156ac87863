"""Grooves cut part way whose load differs along the weld: the worst point counts, and is named."""

from math import hypot, pi, sqrt

import pytest

from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import in_words

KIP_IN = read("1kip/in", "force_per_length")
PART = "joint=v&plate=1/2in&depth=1/4in&group=line&group_height=6in&held=yes"


def test_the_end_that_is_bent_most_counts() -> None:
    # 6 kip and 12 kip-in on 6 in: n = 6/6 + 6 · 12/6² = 3 kip/in at one end, -1 at the other.
    found = ask(f"{PART}&pz=6kip&mx=12kip-in")
    assert found.weld.use == pytest.approx(3 / (0.6 * 70 / 4 / 1.88))
    assert found.weld.asked / KIP_IN == pytest.approx(3)
    rupture = next(link for link in found.links if link.key == "groove-rupture")
    assert rupture.use == pytest.approx(3 / (58 / 4 / 2))
    assert (found.weld.source, rupture.source) == ("aisc-j2.5", "aisc-j4.2")
    worst = found.spread.forces[found.weld.point]
    assert abs(worst.fz) / KIP_IN == pytest.approx(3)
    assert in_words(found.weld.phrase) in ("weld at point 1", "weld at point 2")
    other = ask(f"{PART}&pz=6kip&mx=-12kip-in")
    assert other.weld.use == pytest.approx(found.weld.use)
    assert other.weld.point != found.weld.point


def test_by_the_european_code_too() -> None:
    # 6 kN and 300 kN·mm on 100 mm: n = 0.06 + 6 · 300/100² = 0.24 kN/mm; a = 10 - 2 = 8 mm.
    query = "units=si&joint=v&plate=20mm&depth=10mm&group_height=100mm&held=yes&weld_ends=full"
    found = ask(f"{query}&pz=6kN&mx=0.3kN-m&design_code=en")
    assert found.weld.use == pytest.approx(0.24 / (8 * 0.360 / sqrt(3) / 0.8 / 1.25))
    # Square to the throat all of it is normal stress: fu/(βw γM2) rules over 0.9 fu/γM2.
    found = ask(f"{query}&pz=6kN&mx=0.3kN-m&design_code=en-directional")
    assert found.weld.use == pytest.approx(0.24 / 8 / min(0.360 / 0.8 / 1.25, 0.9 * 0.360 / 1.25))
    # Through the thickness, and along: three times the square of each.
    found = ask(f"{query}&px=12kN&py=16kN&design_code=en-directional")
    assert found.weld.use == pytest.approx(sqrt(3) * hypot(0.12, 0.16) / 8 / (0.360 / 0.8 / 1.25))
    found = ask(f"{query}&line_load=0.2kN/mm&design_code=en-directional")
    assert found.weld.use == pytest.approx(sqrt(3) * 0.2 / 8 / (0.360 / 0.8 / 1.25))


def test_a_weld_all_round_is_named_by_its_worst_point() -> None:
    # 6 in diameter: 12 kip-in of bending over π d²/4.
    found = ask("joint=v&plate=1/2in&depth=1/4in&group=circle&group_height=6in&mx=12kip-in")
    assert in_words(found.weld.phrase) == "weld at its worst point"
    assert found.weld.asked / KIP_IN == pytest.approx(12 / (pi * 6**2 / 4), rel=1e-3)


def test_a_force_per_length_may_go_any_way_and_is_taken_as_shear() -> None:
    found = ask(f"{PART}&line_load=2kip/in")
    assert found.weld.use == pytest.approx(2 / (0.6 * 70 / 4 / 2))


def test_where_a_pull_goes_is_told_of_butts_only() -> None:
    for query, told in ((PART, True), ("joint=tee-bevel&plate=1/2in&depth=1/4in&held=yes", False)):
        keys = {note.key for note in ask(f"{query}&pz=6kip").notes}
        assert ("strength.butt-pull" in keys) is told


def test_through_the_plate_by_the_european_code_the_weld_holds_as_the_plate() -> None:
    # 4.7.1: as the weaker plate, S235 to 16 mm: 235 MPa; 6 kN on 100 mm of 10 mm plate.
    query = "units=si&joint=v&plate=10mm&backing=steel&group_height=100mm&design_code=en"
    found = ask(f"{query}&pz=6kN")
    assert found.weld.use == pytest.approx(0.06 / (0.235 * 10))
    assert found.weld.source == "en-1993-1-8-butt"
    assert "strength.filler-under" not in {note.key for note in found.notes}


def test_the_points_of_a_weld_of_six_stretches_are_still_numbered() -> None:
    steps = "polyline:0in,0in 1in,0in 1in,1in 2in,1in 2in,2in 3in,2in 3in,3in"
    found = ask(f"joint=v&plate=1/2in&depth=1/4in&group={steps}&pz=6kip&mx=12kip-in&held=yes")
    assert len(found.spread.forces) == 12
    assert in_words(found.weld.phrase).startswith("weld at point ")


def test_a_thick_square_edge_is_stopped_by_the_code_chosen() -> None:
    # AISC: B-L1b-GF to 3/8 in; ISO 9692-1: to 8 mm. No American clause in a European answer.
    for query, thick, source in (
        ("joint=square&plate=3/8in", False, ""),
        ("joint=square&plate=7/16in", True, "aisc-square-details"),
        ("joint=square&plate=8mm&units=si&design_code=en", False, ""),
        ("joint=square&plate=9mm&units=si&design_code=en", True, "iso-9692-1"),
        ("joint=square&plate=8.2mm&units=si&design_code=en", True, "iso-9692-1"),
    ):
        stops = [
            note for note in ask(f"{query}&pz=1kN&backing=steel").notes if note.level == "stop"
        ]
        assert [note.source for note in stops] == ([source] if thick else [])
