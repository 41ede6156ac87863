"""What the welds of a list do to the part's shape: Heat's answer, at the weld that does most."""

from __future__ import annotations

from urllib.parse import quote

import pytest

from beadwright.api import answer
from beadwright.weld_list.list_rows import called, most_pulled

LINES = "a,tee,3/8in,5/16in,6in\nb,v,1/2in,,24in,1,1G\nc,tee,3/8in,1/4in,12in"
ALONE = {
    "a": "plate=3/8in&leg=5/16in&weld_length=6in",
    "b": "joint=v&plate=1/2in&weld_length=24in&position=1G",
    "c": "plate=3/8in&leg=1/4in&weld_length=12in",
}
PART = "part_length=30in&part_width=6in&part_height=5in"


@pytest.mark.parametrize("part", ["", PART])
def test_each_distortion_is_that_of_the_weld_which_heat_says_does_most(part: str) -> None:
    found = answer("list", f"lines={quote(LINES)}&{part}")
    heat = {
        name: answer("heat", f"{job}&{part}").distortion.ways[0].named()
        for name, job in ALONE.items()
    }
    pulled = most_pulled(found.counted)
    assert [name for name, _, _ in pulled] == ["across", "along", "camber", "sweep", "lift"]
    for name, row, quantity in pulled:
        ends = {
            weld: max(each[name].value or 0, each[name].high or 0) for weld, each in heat.items()
        }
        assert called(row) == max(ends, key=lambda weld: ends[weld])
        assert quantity == heat[called(row)][name]


def test_a_weld_longer_than_the_part_is_told_and_its_preheat_is_still_known() -> None:
    found = answer("list", f"lines={quote(LINES)}&part_length=13in")
    told = [note for note in found.notes if note.phrase.key == "weld_list.longer-than-part"]
    assert [note.field for note in told] == ["part_length"]
    assert [row.weld.too_long for row in found.counted] == [False, True, False]
    assert found.counted[1].weld.heat is not None
    blank = answer("list", f"lines={quote(LINES)}")
    assert blank.counted[1].weld.heat is not None
    assert found.counted[1].weld.heat.distortion == blank.counted[1].weld.heat.distortion
