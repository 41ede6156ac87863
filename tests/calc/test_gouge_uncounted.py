"""What sums leave out of a gouged joint is told on every page that sums."""

import pytest

from beadwright.api import answer_json

PULSED = "joint=v&plate=3/8in&position=3G-up&back=gouge"
SPRAYED = "joint=double-v&plate=1in&position=1G"
LISTED = {
    PULSED: "A,v,3/8in,,10in,1,3G-up,,,back=gouge",
    SPRAYED: "A,double-v,1in,,10in,1,1G,,,",
    "joint=v&plate=3/8in&position=1G": "A,v,3/8in,,10in,1,1G,,,",
    "plate=1/8in&leg=1/8in": "A,tee,1/8in,1/8in,10in,1,2F,,,",
    "joint=square&plate=1/4in": "A,square,1/4in,,10in,1,1G,,,",
    "joint=square&plate=1/4in&back=gouge": "A,square,1/4in,,10in,1,1G,,,back=gouge",
}


def said(page: str, query: str) -> str:
    """What a page says of a job."""
    asked = f"lines={LISTED[query]}" if page == "list" else query
    return " ".join(note["text"] for note in answer_json(page, asked)["notes"])


@pytest.mark.parametrize("page", ["cost", "list"])
def test_the_time_of_gouging_is_told_and_how_to_add_it(page: str) -> None:
    for query in (PULSED, SPRAYED, "joint=square&plate=1/4in&back=gouge"):
        assert "the time to gouge is not counted. Time it on one part" in said(page, query)
    assert "gouging" not in said(page, "joint=v&plate=3/8in&position=1G")


def test_minutes_written_for_it_are_counted() -> None:
    """As the note says: under Other, a part."""
    ways = [
        answer_json("cost", f"{SPRAYED}&factor=&fit_up=5min&other={minutes}min")["answer"]["ways"]
        for minutes in (0, 12)
    ]
    assert ways[1][0]["time"]["value"] - ways[0][0]["time"]["value"] == pytest.approx(12, rel=0.2)


@pytest.mark.parametrize("page", ["cost", "supplies", "list"])
def test_one_mode_for_both_sides_is_told_where_the_second_is_pulsed(page: str) -> None:
    assert "counted in short circuit on both sides" in said(page, PULSED)
    assert "counted in short circuit on both sides" not in said(page, SPRAYED)


def test_supplies_say_what_gouging_takes() -> None:
    assert "Rods or disks and air for gouging the back are not counted" in said("supplies", SPRAYED)
    assert "rods or disks" not in said("supplies", "joint=v&plate=3/8in&position=1G")


@pytest.mark.parametrize("page", ["dial-in", "passes", "heat", "card", "cost", "supplies", "list"])
@pytest.mark.parametrize("query", ["plate=1/8in&leg=1/8in", "joint=v&plate=3/8in&position=1G"])
def test_short_circuit_is_not_prequalified_wherever_it_is_planned(page: str, query: str) -> None:
    """AWS D1.1, from memory: whole welds in it, and the root of an open joint."""
    text = said(page, query)
    assert "not prequalified" in text
    assert "AWS D1.1" in text


@pytest.mark.parametrize("page", ["dial-in", "passes", "cost", "supplies", "list"])
def test_a_square_butt_planned_from_one_side_says_so_where_it_is_summed(page: str) -> None:
    assert "This plan is from one side." in said(page, "joint=square&plate=1/4in")
    assert "one side" not in said(page, "joint=square&plate=1/4in&back=gouge")
