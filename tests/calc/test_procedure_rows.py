"""Printed operating rows: what they mean, what is asked of Dial in, the groups they count in."""

import pytest

from beadwright.setting.procedure_rows import TABLES
from beadwright.setting.procedure_score import groups_of, held_rows, query_of_row


def test_the_current_of_a_row_is_the_middle_of_its_range() -> None:
    """Downward fillet in CO2, 6 mm: 280-300 A."""
    [row] = [
        row
        for table in TABLES
        for row in table.rows
        if (row.thickness_mm, row.amps_low, row.amps_high) == (6, 280, 300)
    ]
    assert row.amps == pytest.approx(290)


def test_what_is_asked_is_the_row() -> None:
    queries = [
        query_of_row(held.table, held.row)
        for held in held_rows()
        if held.table.setup.joint and held.row.thickness_mm is not None
    ]
    fillet = "joint=tee&position=1F&plate=6mm&transfer=auto"
    assert any(f"wire=ER70S-6&dia=0.045in&gas=CO2&{fillet}" in query for query in queries)
    assert any("leg=5.5mm" in query for query in queries)
    assert not any("None" in query for query in queries)


def test_a_row_counts_in_the_groups_it_belongs_to() -> None:
    for held in held_rows():
        groups, setup = groups_of(held), held.table.setup
        assert groups[0] == "all"
        assert ("left out" in groups) is held.table.left_out
        assert ("overhead" in groups) is setup.position.startswith("4")
        assert ("vertical-up" in groups) is setup.position.endswith("up")
        assert ("flux-cored" in groups) is setup.wire.startswith("E71T")
        assert len(groups) == len(set(groups))
