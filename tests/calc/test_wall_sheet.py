"""The wall sheet: which three wires it is for."""

from __future__ import annotations

import pytest

from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.setting.dial_in import dial_in
from beadwright.sheets.settings_sheet import PLATES, Made, sheet_rows
from beadwright.sheets.wall_sheet import DEFAULTS, WALL_PLATES, wall_entries, wall_wires
from tests.told import in_words


def test_nothing_asked_is_three_usual_wires() -> None:
    assert wall_wires(wall_entries("")) == (
        Made("us", "ER70S-6", "0.045in", "90/10"),
        Made("us", "ER70S-6", "0.035in", "75/25"),
        Made("us", "E70C-6M", "0.045in", "90/10"),
    )


def test_a_wire_is_read_as_dial_in_reads_it() -> None:
    """A metric size, another spelling, a mixture nobody sells: all are one wire of one name."""
    asked = wall_entries("?units=si&wire=er70s-3&dia=1.2mm&gas=83/17&b_gas=co2&c_dia=1/16in")
    assert wall_wires(asked) == (
        Made("si", "ER70S-3", "0.045in", "83/17"),
        Made("si", "ER70S-6", "0.035in", "CO2"),
        Made("si", "E70C-6M", "1/16in", "90/10"),
    )


def test_the_shop_s_usual_wire_is_the_first_and_the_query_wins() -> None:
    kept = {"wire": "E71T-1M", "dia": "1/16in", "gas": "75/25", "units": "si", "labour": "41/h"}
    assert wall_wires(wall_entries("", kept))[0] == Made("si", "E71T-1M", "1/16in", "75/25")
    first = wall_wires(wall_entries("gas=80/20&units=us", kept))[0]
    assert first == Made("us", "E71T-1M", "1/16in", "80/20")
    assert "labour" not in wall_entries("", kept)


def test_what_cannot_be_taken_is_told_under_the_key_of_its_wire() -> None:
    asked = wall_entries("gas=mud&b_dia=3mm&c_wire=E99&plate=nonsense")
    with pytest.raises(FieldErrors) as told:
        wall_wires(asked)
    assert told.value.messages.keys() == {"gas", "b_dia", "c_wire"}
    assert "mud" in told.value.messages["gas"][0]
    with pytest.raises(FieldErrors):
        wall_entries("&".join(f"a{n}=1" for n in range(400)))


@pytest.mark.parametrize("units", WALL_PLATES)
def test_its_rows_are_rows_of_a_sheet_or_between_them(units: str) -> None:
    """Ten rows for three wires: more would not stand on one page."""
    made = wall_wires(wall_entries(f"units={units}"))[0]
    plates = WALL_PLATES[made.units]
    assert len(plates) == 10
    assert set(plates) <= set(PLATES[made.units]) | {"18ga"}
    rows = list(sheet_rows(made, plates))
    assert [plate for plate, _ in rows] == list(plates)
    whole = dict(sheet_rows(made))
    for plate, cells in rows:
        assert plate not in whole or cells == whole[plate]
    assert all(dial_in(cell.found.job) == cell.found for _, cells in rows[:2] for cell in cells)


def test_blanks_are_the_usual_wires() -> None:
    assert wall_entries("gas=&b_wire=") == wall_entries("")
    assert set(DEFAULTS) == {"", "b_", "c_"}


OWN = "ER70S-6,0.045in,90/10,n7,phi0.85,r0.85,band0.08,travel0.8,volts0.8,at=one,by=Ann"


def test_the_shop_s_own_numbers_count_and_are_told_of_the_wire_they_are_of() -> None:
    wires = wall_wires(wall_entries("", {"own": OWN}))
    told = [[phrase.key for phrase in made.own_told()] for made in wires]
    assert told == [["job.own-numbers-of", "process.meter-over"], [], []]
    plain = wall_wires(wall_entries(""))
    for own, bare in zip(wires, plain, strict=True):
        assert own.query("1/4in", "2F") == bare.query("1/4in", "2F")
        (_, mine), *_ = sheet_rows(own, ("1/4in",))
        (_, printed), *_ = sheet_rows(bare, ("1/4in",))
        counts = own is wires[0]
        assert (mine[0].found.settings != printed[0].found.settings) is counts
        # The same as Dial in answers with what the shop keeps.
        behind = answer("dial-in", mine[0].query, {"own": OWN}).dialled
        assert mine[0].found == behind


def test_own_numbers_are_switched_off_and_their_links_say_so() -> None:
    wires = wall_wires(wall_entries("own=off", {"own": OWN}))
    for off, bare in zip(wires, wall_wires(wall_entries("")), strict=True):
        assert [phrase.key for phrase in off.own_told()] == ["job.own-numbers-off"]
        assert off.query("1/4in", "2F") == bare.query("1/4in", "2F") + "&own=off"
        (_, mine), *_ = sheet_rows(off, ("1/4in",))
        (_, printed), *_ = sheet_rows(bare, ("1/4in",))
        assert mine[0].found == printed[0].found
    with pytest.raises(FieldErrors) as wrong:
        wall_wires(wall_entries("own=nonsense"))
    assert wrong.value.messages.keys() == {"own"}


@pytest.mark.parametrize(("volts", "said"), [("0.8", "0.8 V higher"), ("-0.6", "0.6 V lower")])
def test_a_meter_that_stands_off_the_arc_is_told_which_way(volts: str, said: str) -> None:
    own = f"ER70S-6,0.045in,90/10,n3,volts{volts}"
    told = [in_words(phrase) for phrase in wall_wires(wall_entries("", {"own": own}))[0].own_told()]
    assert said in told[-1]
    plain = wall_wires(wall_entries("", {"own": "ER70S-6,0.045in,90/10,n3,travel0.9"}))[0]
    assert [phrase.key for phrase in plain.own_told()] == ["job.own-numbers"]
