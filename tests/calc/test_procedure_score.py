"""Dial in against whole published rows: the score of each group must not drop."""

from __future__ import annotations

import pytest

from beadwright.process.wires import wire_of
from beadwright.setting.procedure_rows import TABLES
from beadwright.setting.procedure_score import GROUPS, Score, held_rows, scores
from beadwright.sources import SOURCES

AIM_INSIDE, AIM_NEAR = 0.90, 0.70
"""What every group has to reach: rows inside the window, rows at the set point."""

FLOORS = {
    "all": (0.96, 0.90),
    "fitted": (0.97, 0.94),
    "left out": (0.96, 0.80),
    "sheet": (0.97, 0.92),
    "plate": (0.96, 0.76),
    "vertical-up": (1.0, 1.0),
    "overhead": (1.0, 1.0),
    "metal-cored": (1.0, 1.0),
    "flux-cored": (1.0, 0.92),
    "solid spray": (1.0, 0.70),
    "short circuit": (0.93, 0.93),
    "feed and amps alone": (0.95, 1.0),
}
"""The score reached: a change of the plan may not fall under it (inside, at the set point)."""


@pytest.fixture(scope="module")
def found() -> dict[str, Score]:
    return dict(scores())


def test_every_group_is_scored(found: dict[str, Score]) -> None:
    assert tuple(found) == GROUPS == tuple(FLOORS)


def test_every_group_reaches_the_aim_and_none_drops(found: dict[str, Score]) -> None:
    short = [
        f"{group}: {score.inside:.0%} inside, {score.near:.0%} at the set point"
        for group, score in found.items()
        if score.inside < max(AIM_INSIDE, FLOORS[group][0])
        or score.near < max(AIM_NEAR, FLOORS[group][1])
    ]
    assert not short


def test_no_group_leans_to_one_side(found: dict[str, Score]) -> None:
    leaning = [
        f"{group}: amps {score.amps_off:+.0%}, volts {score.volts_off}"
        for group, score in found.items()
        if abs(score.amps_off) > 0.08 or abs(score.volts_off or 0.0) > 1.0
    ]
    assert not leaning


def test_about_a_third_of_the_tables_is_left_out() -> None:
    names = {table.name for table in TABLES}
    left = {table.name for table in TABLES if table.left_out}
    assert len(left) * 3 >= len(names) - 1
    # A table is left out whole: no part of it was fitted.
    assert left.isdisjoint({table.name for table in TABLES if not table.left_out})


def test_every_row_is_of_a_wire_that_is_made_and_a_source_that_is_named() -> None:
    for table in TABLES:
        assert table.source in SOURCES
        for row in table.rows:
            wire_of(table.setup.wire, row.size)
            assert 0 < row.amps_low <= row.amps_high
            assert (row.volts_low or 0) <= (row.volts_high or 0)


def test_every_row_is_held_once() -> None:
    assert sum(len(table.rows) for table in TABLES) == len(list(held_rows())) == 94
