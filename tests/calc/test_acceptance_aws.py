"""AWS D1.1 by the whole page, where two limits meet: short welds, pores that add up, grooves."""

from __future__ import annotations

import pytest

from beadwright.api import answer
from beadwright.inspection.inspected import Check
from beadwright.sources import SOURCES
from tests.told import in_words

IN = 0.0254
FILLET = "plate=3/8in&leg=5/16in"


def check(query: str, key: str) -> Check:
    [one] = [each for each in answer("inspect", query).checks if each.key == key]
    return one


def found(query: str, key: str) -> float:
    seen = check(query, key).found
    assert seen is not None
    return seen / IN


@pytest.mark.parametrize(
    ("short", "leg", "state"),
    [
        ("0in", "3/16in", "in"),  # over no length at all
        ("0.6in", "3/16in", "in"),  # a tenth of 6 in
        ("0.62in", "3/16in", "out"),
    ],
)
def test_a_leg_may_lack_over_a_tenth_of_the_weld(short: str, leg: str, state: str) -> None:
    query = f"{FILLET}&short_length={short}&leg_found={leg}&leg2_found=5/16in"
    assert check(query, "leg").state == state


def test_the_throat_lacks_in_the_proportion_of_its_leg() -> None:
    """5/16 in may lack 1/8 in: the throat 0.22097 × (1 - 0.4) = 0.13258 in."""
    short = f"{FILLET}&short_length=0.5in"
    assert check(f"{short}&throat_found=0.133in", "throat").state == "in"
    out = check(f"{short}&throat_found=0.12in", "throat")
    assert out.off / IN == pytest.approx(0.13258 - 0.12, abs=1e-4)
    # Legs 1/4 and 3/8: throat 0.20801; 1/4 may lack 3/32, a quarter of the longer leg.
    uneven = "plate=1/2in&leg=1/4in&leg2=3/8in&short_length=0.5in&throat_found=0.1in"
    assert check(uneven, "throat").off / IN == pytest.approx(0.20801 * 0.75 - 0.1, abs=1e-4)


def test_a_crater_may_take_what_stands_over_the_size() -> None:
    """Legs as asked and a crown of 0.05 in: so deep a crater still leaves the throat."""
    crowned = f"{FILLET}&leg_found=5/16in&leg2_found=5/16in&convexity=0.05in"
    assert check(f"{crowned}&crater=0.049in", "crater").state == "in"
    assert check(f"{crowned}&crater=0.06in", "crater").off / IN == pytest.approx(0.01, abs=1e-4)
    unknown = check(f"{FILLET}&crater=0.01in", "crater")  # no leg measured: nothing is over
    assert unknown.state == "out"
    assert unknown.off / IN == pytest.approx(0.01)


def test_pores_from_a_thirty_second_on_are_counted() -> None:
    assert found(f"{FILLET}&pore=1/32in", "pores") == pytest.approx(1 / 32)
    assert found(f"{FILLET}&pore=0.032in", "pores") == pytest.approx(0.032)
    assert found(f"{FILLET}&pore=0.031in", "pores") == 0.0


def test_a_sum_of_pores_is_no_less_than_one_of_them() -> None:
    assert found(f"{FILLET}&pore=1/4in&pores_inch=0.4in", "pores") == pytest.approx(0.4)
    assert found(f"{FILLET}&pore=1/4in", "pores-foot") == pytest.approx(0.25)
    assert found(f"{FILLET}&pores_inch=0.3in&pores_foot=0.7in", "pores-foot") == pytest.approx(0.7)


def test_one_pore_in_four_inches_under_load_that_comes_and_goes() -> None:
    cyclic = f"{FILLET}&accept=d1.1-cyclic&pore_count"
    assert check(f"{cyclic}=1", "pore-count").state == "in"
    assert check(f"{cyclic}=2", "pore-count").state == "out"


@pytest.mark.parametrize(
    ("joint", "state"),
    [
        ("joint=v&plate=1/2in", "out"),  # a butt through the plate, across the pull: none
        ("joint=v&plate=1/2in&depth=1/4in", "in"),  # cut part way
        ("joint=tee-double-bevel&plate=1/2in", "in"),  # through, but no butt
    ],
)
def test_only_a_butt_through_the_plate_takes_no_pore(joint: str, state: str) -> None:
    assert check(f"{joint}&pore=0.3in", "pores").state == state


@pytest.mark.parametrize(
    ("face", "limit", "source"),
    [
        ("0.99in", 1 / 8, "aws-d1.1-convexity"),  # found second-hand
        ("1in", 3 / 16, "aws-d1.1-convexity-wide"),  # from memory
    ],
)
def test_the_limit_of_a_wide_face_is_told_as_from_memory(
    face: str, limit: float, source: str
) -> None:
    crown = check(f"{FILLET}&face={face}", "convexity")
    assert crown.limit / IN == pytest.approx(limit)
    assert crown.source == source
    assert SOURCES[crown.source].how == ("from memory" if limit > 1 / 8 else "found second-hand")


@pytest.mark.parametrize(("plate", "held"), [("1in", False), ("1-1/2in", True)])
def test_the_crown_planned_on_a_groove_has_the_limit_it_is_inspected_by(
    plate: str, held: bool
) -> None:
    """Table 7.9, schedule A, from memory: 1/8 in to 1 in of plate, 3/16 in to 2 in."""
    job = f"joint=v&plate={plate}&reinforcement=3/16in"
    told = {note.key: note for note in answer("dial-in", job).notes}
    assert ("job.reinforcement-over-code" not in told) is held
    if not held:
        over = told["job.reinforcement-over-code"]
        assert "over 1/8 in is more" in in_words(over.phrase, "us")
        assert over.source == "aws-d1.1-7.9"
    crown = check(f"joint=v&plate={plate}&convexity=3/16in", "reinforcement")
    assert (crown.state == "in") is held
    assert crown.source == "aws-d1.1-7.9"


def test_undercut_over_no_length_may_be_as_deep_as_over_two_inches() -> None:
    short = check(f"{FILLET}&undercut=0.05in&undercut_length=0in", "undercut")
    assert short.limit / IN == pytest.approx(1 / 16)
