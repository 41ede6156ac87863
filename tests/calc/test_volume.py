"""A year's parts: the same job counted by week, month, year, arc hours and pounds."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.volume_entries import parts_of_one
from tests.calc.plain_way import PLAIN

PART = "leg=5/16in&arc_min=6min&laid=10lb/h&efficiency=80%25&waste=0%25&weeks=50&rework="
"""A part of 6 min of arc at 10 lb/h: a pound of weld metal, 1.25 lb of wire."""


@pytest.mark.parametrize(
    ("rework", "volume"),
    [
        ("0%25", "parts=1200"),
        ("0%25", "parts_month=100"),
        ("0%25", "parts_week=24"),
        ("0%25", "arc_hours=10h"),
        ("0%25", "arc_hours=10"),
        ("0%25", "weld_metal=100lb"),
        ("0%25", "weld_metal=45.359237kg"),
        ("0%25", "wire_month=125lb"),
        # A quarter welded twice: a quarter more arc, metal and wire for the same parts.
        ("25%25", "arc_hours=12.5h"),
        ("25%25", "weld_metal=125lb"),
        ("25%25", "wire_month=156.25lb"),
    ],
)
def test_one_job_counted_in_every_way_is_one_year(rework: str, volume: str) -> None:
    found = answer("cost", f"{PART}{rework}&{volume}")
    assert found.parts == pytest.approx(1200, rel=1e-9)
    assert found.comparisons[0].case.parts == found.parts
    year = found.costs[0].part * 1200
    assert answer_json("cost", f"{PART}{rework}&{volume}")["answer"]["ways"][0][
        "year"
    ] == pytest.approx(year, rel=1e-9)


@pytest.mark.parametrize(
    "volume",
    ["parts=1200", "parts_month=100", "parts_week=24", "arc_hours=10h", "weld_metal=100lb",
     "wire_month=125lb", "parts=7&parts_week=24&volume_by=week"],
)  # fmt: skip
def test_supplies_last_by_the_same_counts(volume: str) -> None:
    """33 lb at 1.25 lb a part is 26.4 parts, and 24 are welded in each of 50 weeks."""
    found = answer("supplies", f"{PART}0%25&spool=33lb&{volume}").supplies
    assert found.parts == 1200
    assert found.package_weeks == pytest.approx(1.1)
    assert answer_json("supplies", f"{PART}0%25&{volume}")["answer"]["parts"] == 1200


def test_two_counts_written_are_asked_about_on_supplies_too() -> None:
    assert list(answer_json("supplies", "parts=480&arc_hours=10")["errors"]) == ["volume_by"]


def test_hours_and_pounds_go_by_the_first_way() -> None:
    """1250 s of arc, a kilogram of weld, 1.953125 kg of wire; a quarter welded twice."""
    assert parts_of_one("arc-hours", 50, PLAIN) == pytest.approx(12 / 1562.5)
    assert parts_of_one("weld-metal", 50, PLAIN) == pytest.approx(12 / 1.25)
    assert parts_of_one("wire", 50, PLAIN) == pytest.approx(12 / 1.953125)
    assert [parts_of_one(by, 48, PLAIN) for by in ("year", "month", "week")] == [1, 12, 48]


@pytest.mark.parametrize(
    ("volume", "parts"),
    [
        ("weld_metal=100.04lb", 1200),  # 1200.48
        ("weld_metal=100.05lb", 1201),  # 1200.6
        ("parts_week=0.5", 25),
        ("arc_hours=0.005h", 1),  # 0.3 min a month, 3.6 a year: 0.6 of a part
    ],
)
def test_a_year_has_whole_parts(volume: str, parts: int) -> None:
    found = answer_json("cost", f"{PART}0%25&{volume}")["answer"]
    sums = found["comparisons"][0]["sums"]
    assert (found["parts"], sums["parts"], sums["months"]) == (parts, parts, 12)
    assert all(isinstance(n, int) for n in (found["parts"], sums["parts"], sums["months"]))


def test_less_than_a_part_a_year_is_asked_about() -> None:
    errors = answer_json("cost", f"{PART}0%25&arc_hours=0.004h")["errors"]  # 2.88 of 6 min
    assert errors == {
        "arc_hours": ["That comes to 0.48 of a part a year: write at least what one part takes."]
    }


def test_two_counts_written_are_asked_about() -> None:
    errors = answer_json("cost", "parts=480&arc_hours=10")["errors"]
    assert list(errors) == ["volume_by"]
    assert "parts and arc_hours are both written" in errors["volume_by"][0]


@pytest.mark.parametrize(
    ("query", "parts"),
    [
        ("parts=480&parts_month=50&volume_by=month", 600),
        ("parts=480&parts_month=50&volume_by=year", 480),
        ("parts_month=50&volume_by=week", 600),  # chosen and not yet written
        ("volume_by=month", 480),
        ("", 480),
        ("parts_week=0", 0),
    ],
)
def test_the_count_chosen_holds_once_it_is_written(query: str, parts: float) -> None:
    assert answer("cost", query).parts == pytest.approx(parts)


@pytest.mark.parametrize(
    ("query", "key", "says"),
    [
        ("parts_month=-1", "parts_month", "more than any shop welds"),
        ("parts_week=some", "parts_week", "not a quantity"),
        ("arc_hours=10lb", "arc_hours", "unit not known"),
        ("weld_metal=5h", "weld_metal", "unit not known"),
        ("wire_month=-5lb", "wire_month", "outside 0lb"),
        ("volume_by=day", "volume_by", "not one of year, month, week"),
    ],
)
def test_a_volume_that_cannot_be_is_refused_beside_its_field(
    query: str, key: str, says: str
) -> None:
    errors = answer_json("cost", query)["errors"]
    assert list(errors) == [key]
    assert says in errors[key][0]
