"""Distortion on the Heat page: its numbers, the ways beside them, its entries, refusals."""

import re

import pytest

from beadwright.api import answer_json
from beadwright_site.pages.heat.page import PAGE

JOB = "joint=tee&plate=3/8in&leg=5/16in&position=2F&weld_length=6in"


def part(query: str) -> str:
    shown = PAGE.show(query)
    assert shown.ok, shown.errors
    return " ".join(re.sub(r"<[^>]+>", " ", shown.html["distortion"]).split())


def test_the_numbers_stand_with_their_ranges() -> None:
    said = part(JOB)
    # 0.02·4·(5/16)^1.3/(3/8)² = 0.125 in of two fillets, half of it of one; alone to a factor of
    # two; over half of 4 in 1.8°.
    assert "≈ 0.063 in edges lift 0.031–0.125" in said
    assert "≈ 1.8° each half turned 0.9–3.6" in said
    assert "≈ 0.125 in edges lift 0.063–0.251" in part(JOB + "&part_sides=2")
    # 1.02 mm × (5/16)/(3/8)/2 = 0.425 mm.
    assert "≈ 0.43 mm shrinks across 0.21–0.85" in part(JOB + "&units=si")


def test_other_ways_stand_below() -> None:
    said = part(JOB)
    # The code's least leg for 3/8 in is 3/16: 0.02·4·(3/16)^1.3/(3/8)²/2 = 0.0323 in.
    assert re.search(r"Smallest code leg( [\d.]+){4} 0\.032", said)
    assert re.search(r"Both sides, turn about( [\d.]+){3} 0\.000", said)
    assert "Stitched, half the length" in said
    assert "fewer" not in said


def test_what_is_too_little_to_write_is_under_the_last_digit() -> None:
    said = part("plate=2in&leg=1/2in&steel=A572-50&weld_length=2in")
    assert "under 0.001 in bows up or down" in said
    assert "≈ 0.000" not in said


def test_a_butt_says_there_is_no_form_for_its_angle() -> None:
    said = part("joint=square&plate=1/8in&weld_length=6in")
    assert "edges lift: no published formula for this joint" in said
    assert "each half turned" not in said


def test_the_part_has_its_entries() -> None:
    form = PAGE.show(JOB + "&part_length=10ft").html["job-form"]
    for key in ("part_length", "part_width", "part_height", "part_sides", "part_share",
                "part_area", "part_inertia", "part_offset", "weld_length"):  # fmt: skip
        assert f'name="{key}"' in form
    assert 'value="10ft"' in form
    lap = PAGE.show("joint=lap&plate=1/4in").html["job-form"]
    assert 'name="part_height"' not in lap


@pytest.mark.parametrize(
    ("typed", "key", "said"),
    [
        ("part_length=3in", "part_length", "longer than the part"),
        ("part_area=2in2", "part_inertia", "all three"),
        ("part_share=0%", "part_share", "5% to 100%"),
        ("part_width=0.1in", "part_width", "1/2in to 20ft"),
    ],
)
def test_what_is_refused_stands_beside_its_entry(typed: str, key: str, said: str) -> None:
    shown = PAGE.show(f"{JOB}&{typed}")
    assert not shown.ok
    assert any(said in text for text in shown.errors[key])
    assert said in shown.html["job-form"]


def test_the_terminal_says_the_same() -> None:
    ways = answer_json("heat", JOB)["answer"]["distortion"]["ways"]
    assert [way["key"] for way in ways] == ["yours", "smaller", "both", "stitched"]
    lift = ways[0]["lift"]
    assert (round(lift["value"], 4), lift["unit"]) == (0.0627, "in")
    assert (lift["low_by"], lift["sources"]) == ("Blodgett", ["blodgett-angular"])


def test_every_column_of_the_other_ways_has_a_name() -> None:
    drawn = PAGE.show(JOB).html["distortion"]
    names = re.findall(r'<th scope="col">(.*?)</th>', drawn)
    assert len(names) > 1
    assert all(names)
