"""Solid and metal-cored wire on one joint, held against each other by hand."""

from dataclasses import replace

import pytest

from beadwright.job.job_query import read_query
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.like_for_like import Alike, Basis, like_for_like, other_wire

SOLID = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&leg=5/16in&position=2F"
CORED = SOLID.replace("ER70S-6", "E70C-6M")


def dialled(query: str) -> DialIn:
    return dial_in(read_query(query).job)


def rows_of(query: str) -> dict[Basis, Alike]:
    return {row.basis: row for row in like_for_like(dialled(query))}


@pytest.mark.parametrize(
    ("query", "other"),
    [
        ("wire=ER70S-6&dia=0.045in", "E70C-6M"),
        ("wire=ER80S-D2&dia=1/16in", "E70C-6M"),
        ("wire=E70C-6M&dia=0.052in", "ER70S-6"),
        ("wire=ER70S-6&dia=0.023in", None),  # metal-cored wire is not made so thin
        ("wire=E71T-1C&dia=0.045in&gas=CO2", None),
    ],
)
def test_the_wire_it_is_held_against(query: str, other: str | None) -> None:
    job = read_query(f"plate=3/8in&{query}").job
    found = other_wire(job)
    assert (found and found.type.name) == other
    assert found is None or found.size == job.wire.size


def test_the_wire_in_use_stands_first_as_it_is_set() -> None:
    answer = dialled(SOLID)
    own = like_for_like(answer)[0]
    assert answer.point is not None
    assert (own.basis, own.wire.type.name, own.holds) == ("this-wire", "ER70S-6", True)
    assert own.feed_m_s == answer.settings.wire_feed.value
    assert own.volts == answer.settings.volts.value
    assert own.travel_m_s == answer.settings.travel.value


def test_at_equal_amps_metal_cored_lays_and_travels_more() -> None:
    """325 A, each at its tip-to-work on its volts, by hand, φ I + r I² L / A.

    Solid 4.192 × 325.1 + 3.454e-7 × 325.1² × 14.42e-3 / 1.0261e-6 = 1876 W, 97 % laid; cored
    3.351 × 325.1 + 5.571e-7 × 325.1² × 17.89e-3 / 0.7833e-6 = 2434 W, 91 %: 1.217 to one. Its
    fillet is 1.1 times flat, not 1.2, so it travels 1.328 times as fast.
    """
    rows = rows_of(SOLID)
    own, other = rows["this-wire"], rows["equal-amps"]
    assert other.wire.type.name == "E70C-6M"
    assert other.current_a == pytest.approx(own.current_a, rel=1e-6)
    assert other.volts == pytest.approx(own.volts - 1.2, abs=0.06)
    assert other.laid_kg_s / own.laid_kg_s == pytest.approx(1.217, rel=5e-3)
    assert other.travel_m_s / own.travel_m_s == pytest.approx(1.328, rel=5e-3)
    assert other.heat_j_m < own.heat_j_m


def test_at_equal_heat_the_heat_is_equal() -> None:
    for query in (SOLID, CORED):
        for basis, row in rows_of(query).items():
            assert row.heat_j_m == pytest.approx(row.volts * row.current_a / row.travel_m_s)
            if basis == "equal-heat":
                assert row.heat_j_m == pytest.approx(rows_of(query)["this-wire"].heat_j_m, rel=1e-6)


STOUT = "wire=ER70S-6&dia=1/16in&gas=90/10&plate=3/8in&position=3F-up"


@pytest.mark.parametrize("query", [STOUT, f"{STOUT}&transfer=pulse"])
def test_a_feed_of_the_same_heat_is_told_where_the_other_wire_has_one(query: str) -> None:
    rows = rows_of(query)
    own, found = rows["this-wire"], rows["equal-heat"]
    assert found.wire.type.name == "E70C-6M"
    assert found.heat_j_m == pytest.approx(own.heat_j_m, rel=1e-6)
    assert found.heat_j_m == pytest.approx(found.volts * found.current_a / found.travel_m_s)
    assert found.holds


def test_where_no_feed_of_the_other_wire_is_as_hot_none_is_told() -> None:
    """Metal-cored wire needs less heat for its metal all over its room."""
    rows = rows_of(SOLID)
    assert max(rows["equal-amps"].heat_j_m, rows["as-run"].heat_j_m) < rows["this-wire"].heat_j_m
    assert "equal-heat" not in rows


def test_a_wire_with_no_room_at_all_is_told_at_equal_amps_only() -> None:
    """Solid 0.045 in sprays from 229 A on, over what the machine gives."""
    query = CORED.replace("5/16in", "1/4in") + "&machine_amps=180A&duty=60%&volts=28.02V"
    rows = rows_of(query)
    assert set(rows) == {"this-wire", "equal-amps"}
    assert not rows["equal-amps"].holds


def test_a_wire_at_the_very_end_of_its_room_holds_and_past_it_does_not() -> None:
    answer = dialled(SOLID)
    room, run = answer.plan.feeds, answer.plan.run
    for feed, holds in (
        (room.low, True), (room.high, True), (0.97 * room.low, False), (1.03 * room.high, False)
    ):  # fmt: skip
        own = like_for_like(replace(answer, point=run.point(feed)))[0]
        assert own.holds is holds


def test_as_run_each_is_given_the_same_current() -> None:
    """To a hand's step of 5 in/min, a hundredth of the feed."""
    rows = rows_of(SOLID)
    assert rows["as-run"].current_a == pytest.approx(rows["this-wire"].current_a, rel=0.012)
    assert rows["as-run"].holds
    back = rows_of(CORED)
    assert back["as-run"].feed_m_s == pytest.approx(rows["this-wire"].feed_m_s, rel=1e-9)


def test_a_point_outside_the_other_wire_s_room_is_said_to_be() -> None:
    """Metal-cored 0.045 in ends at 340 A, solid at 380."""
    rows = rows_of(f"{SOLID}&aim=least-time")
    assert rows["this-wire"].current_a > 340
    assert rows["this-wire"].holds
    assert not rows["equal-amps"].holds


@pytest.mark.parametrize(
    "query",
    [
        f"{SOLID}&machine_amps=100A",  # nothing holds it
        "wire=ER70S-6&dia=0.045in&gas=CO2&plate=3/8in&leg=5/16in",  # the other is not for CO2
        "wire=ER70S-6&dia=0.035in&gas=CO2&plate=1/8in&position=1F",  # nor where solid shorts
        # Solid wire runs globular there, metal-cored sprays.
        "wire=ER70S-6&dia=0.035in&gas=75/25&plate=3/8in&position=1F",
        "wire=E71T-1C&dia=0.045in&gas=CO2&plate=3/8in&leg=5/16in",
    ],
)
def test_where_they_cannot_be_compared_there_is_no_table(query: str) -> None:
    assert like_for_like(dialled(query)) == ()
