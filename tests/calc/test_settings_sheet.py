"""Sheets of settings: which there are, and what a cell refuses."""

from __future__ import annotations

from dataclasses import replace

import pytest

from beadwright.api import answer
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.sheets.settings_sheet import (
    WIRES,
    SheetCell,
    set_alike,
    sheet_rows,
    sheets_made,
)

MADE = {made.name: made for made in sheets_made()}


def _rows(name: str) -> dict[str, dict[str, SheetCell]]:
    return {plate: {c.position: c for c in cells} for plate, cells in sheet_rows(MADE[name])}


def test_a_wire_has_a_sheet_in_the_gases_it_is_made_for_and_in_no_other() -> None:
    """AWS A5.20: the C of E71T-1C is CO2, the M of E71T-1M 75 to 80 % argon."""
    gases = {wire: {m.gas for m in sheets_made() if m.wire == wire} for wire in
             ("ER70S-6", "E70C-6M", "E71T-1C", "E71T-1M")}  # fmt: skip
    assert gases == {
        "ER70S-6": {"98/2 O2", "90/10", "82/18", "75/25", "CO2"},
        "E70C-6M": {"98/2 O2", "90/10", "82/18", "75/25"},
        "E71T-1C": {"CO2"},
        "E71T-1M": {"75/25"},
    }


def test_thin_plate_is_not_refused_and_a_heavy_one_is_not_run_downhill() -> None:
    """Common practice: sheet is welded downhill; heavy plate laps cold."""
    rows = _rows("us-er70s-6-0.035in-75-25")
    assert rows["16ga"]["3F-down"].stopped is None
    heavy = rows["3/4in"]["3F-down"].stopped
    assert heavy is not None
    assert heavy.key == "sheets.laps-cold"


def test_flux_cored_wire_is_not_run_downhill() -> None:
    """Common practice: the slag of E71T-1 runs ahead of the pool."""
    stopped = _rows("us-e71t-1m-0.045in-75-25")["1/4in"]["3F-down"].stopped
    assert stopped is not None
    assert stopped.key == "sheets.not-downhill"


def test_short_circuit_on_heavy_plate_says_that_it_may_not_fuse() -> None:
    """Common practice: lack of fusion is the fault of short circuit on plate, not on sheet."""
    rows = _rows("us-er70s-6-0.045in-75-25")
    assert not rows["16ga"]["3F-up"].may_not_fuse
    assert rows["3/8in"]["3F-up"].may_not_fuse


ALIKE = [(own, other) for own, others in set_alike().items() for other in others]


def test_every_classification_has_sheets_or_goes_by_another_s() -> None:
    assert {*WIRES, *(other for _, other in ALIKE)} == set(WIRE_TYPES)
    assert dict(set_alike()) == {
        "ER70S-6": ("ER70S-3", "ER70S-2", "ER80S-D2"), "E70C-6M": ("E80C-Ni1",),
    }  # fmt: skip


@pytest.mark.parametrize(("own", "other"), ALIKE)
def test_a_wire_set_as_another_has_the_other_s_cells(own: str, other: str) -> None:
    """In every size both are made in and every gas, in the units where both have sheets."""
    tried = 0
    for made in sheets_made():
        if made.wire != own or made.dia not in WIRE_TYPES[other].sizes or made.units != "us":
            continue
        its = replace(made, wire=other)
        for (_, ours), (_, theirs) in zip(sheet_rows(made), sheet_rows(its), strict=True):
            assert [_set(cell) for cell in ours] == [_set(cell) for cell in theirs], its.name
        tried += 1
    assert tried > 3


def _set(cell: SheetCell) -> tuple[object, ...]:
    found, outcome = cell.found, cell.found.outcome
    settings = found.settings
    return (
        cell.stopped, cell.may_not_fuse, found.plan.passes, found.plan.wanted_leg_m,
        settings.wire_feed.value, settings.volts.value, settings.travel.value,
        settings.tip_to_work.value,
        outcome and (outcome.transfer, outcome.current.value),
    )  # fmt: skip


def test_a_gas_of_two_words_is_one_name_and_one_entry() -> None:
    made = MADE["us-er70s-6-0.045in-98-2-o2"]
    assert made.gas == "98/2 O2"
    assert made.query("3/8in", "2F").endswith("&gas=98/2+O2")
    assert answer("dial-in", made.query("3/8in", "2F")).dialled.job.gas.name == "98/2 O2"


def test_a_name_and_a_query_say_what_the_sheet_is_for() -> None:
    made = MADE["si-er70s-6-1-16in-co2"]
    assert (made.units, made.wire, made.dia, made.gas) == ("si", "ER70S-6", "1/16in", "CO2")
    query = made.query("3mm", "2F")
    assert query == "units=si&plate=3mm&position=2F&wire=ER70S-6&dia=1/16in&gas=CO2"
    assert answer("dial-in", query).dialled.job.plate_m == 0.003
