"""What Inspect notes and refuses beside its verdict."""

from __future__ import annotations

import pytest

from beadwright.api import answer, answer_json
from beadwright.inspection.inspect_page import SUMS_OFF
from tests.told import told

FILLET = "plate=3/8in&leg=5/16in"
USED = f"{FILLET}&wfs=350&volts=27&leg_found=9/32in&leg2_found=9/32in&travel"


def notes(query: str) -> dict[str, str]:
    return {note.key: told(note) for note in answer("inspect", query).notes}


@pytest.mark.parametrize(
    ("query", "key"),
    [
        ("pores_inch=0.4in&pores_foot", "0.4in 0.39in"),
        ("pore=0.3in&pores_inch", "0.3in 0.29in"),
        ("short_length", "6in 6.2in"),
    ],
)
def test_a_part_may_be_as_large_as_its_whole_and_no_larger(query: str, key: str) -> None:
    """The weld is 6 in long: all of it may lack in size."""
    whole, less = key.split()
    assert "errors" not in answer_json("inspect", f"{FILLET}&{query}={whole}")
    assert "errors" in answer_json("inspect", f"{FILLET}&{query}={less}")


@pytest.mark.parametrize(("travel", "word"), [("7", "much less"), ("18", "much more")])
def test_metal_far_off_our_sums_is_told_which_way(travel: str, word: str) -> None:
    assert word in notes(f"{USED}={travel}")["inspection.sums-differ"]


def test_a_quarter_off_our_sums_is_doubted() -> None:
    """0.967 of our sums at 11 in/min: 1.24 of them at 14.1, 1.27 at 14.5."""
    assert SUMS_OFF == 0.25  # common practice
    assert "inspection.sums-differ" not in notes(f"{USED}=14.1")
    assert "inspection.sums-differ" in notes(f"{USED}=14.5")


def test_one_leg_measured_is_told_and_every_verdict_says_what_it_does_not_see() -> None:
    one = notes(f"{FILLET}&leg_found=5/16in")
    assert "Measure both" in one["inspection.one-leg"]
    assert "Visual and gauge only" in one["inspection.eye-only"]
    both = notes(f"{FILLET}&leg_found=5/16in&leg2_found=5/16in")
    assert "inspection.one-leg" not in both
    assert "inspection.no-leg-here" not in both
    sources = {}
    for accept in ("d1.1-static", "iso-b"):
        for note in answer("inspect", f"{FILLET}&accept={accept}").notes:
            sources[accept, note.key] = note.source
    assert sources["d1.1-static", "inspection.wait-to-look"] == "aws-d1.1-8.1"
    assert sources["iso-b", "inspection.wait-to-look"] == "practice"


def test_what_is_out_stands_before_what_holds_and_that_before_what_was_not_seen() -> None:
    found = answer("inspect", f"{FILLET}&leg_found=1/4in&leg2_found=5/16in&undercut=0.01in")
    states = [check.state for check in found.checks]
    assert states.index("in") > states.index("out")
    assert states.index("unknown") > len([each for each in states if each != "unknown"]) - 1
    late = answer("inspect", f"{FILLET}&leg_found=5/16in&undercut=0.05in")
    assert (late.checks[0].key, late.checks[0].state) == ("undercut", "out")


def test_of_a_fillet_in_two_passes_the_whole_weld_is_doubted() -> None:
    """Two beads at 5 in/min lay 4.4 times what one lays at 11."""
    said = notes(f"{USED}=5&passes=2")
    assert "inspection.sums-differ" in said
    assert "inspection.sums-differ-last" not in said
