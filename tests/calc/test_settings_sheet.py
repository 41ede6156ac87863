"""Sheets of settings: which there are, and what a cell refuses."""

from __future__ import annotations

from beadwright.api import answer
from beadwright.sheets.settings_sheet import SheetCell, sheet_rows, sheets_made

MADE = {made.name: made for made in sheets_made()}


def _rows(name: str) -> dict[str, dict[str, SheetCell]]:
    return {plate: {c.position: c for c in cells} for plate, cells in sheet_rows(MADE[name])}


def test_a_wire_has_a_sheet_in_the_gases_it_is_made_for_and_in_no_other() -> None:
    """AWS A5.20: the C of E71T-1C is CO2, the M of E71T-1M 75 to 80 % argon."""
    gases = {wire: {m.gas for m in sheets_made() if m.wire == wire} for wire in
             ("ER70S-6", "E70C-6M", "E71T-1C", "E71T-1M")}  # fmt: skip
    assert gases == {
        "ER70S-6": {"90/10", "75/25", "CO2"},
        "E70C-6M": {"90/10", "75/25"},
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


def test_a_name_and_a_query_say_what_the_sheet_is_for() -> None:
    made = MADE["si-er70s-6-1-16in-co2"]
    assert (made.units, made.wire, made.dia, made.gas) == ("si", "ER70S-6", "1/16in", "CO2")
    query = made.query("3mm", "2F")
    assert query == "units=si&plate=3mm&position=2F&wire=ER70S-6&dia=1/16in&gas=CO2"
    assert answer("dial-in", query).dialled.job.plate_m == 0.003
