"""Where metal is counted for a change of setting: unlike legs, the last bead, what lies wrong."""

from __future__ import annotations

from math import pi
from urllib.parse import urlencode

import pytest

from beadwright.api import answer
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.inspected import inspected
from beadwright.inspection.size_change import (
    LEAST_BEAD,
    SizeChange,
    is_overwelded,
    laid_settings,
    metal_wanted,
    size_change,
)
from beadwright.inspection.used_settings import used_settings
from beadwright.inspection.weld_readings import WeldReadings

IN = 0.0254
SHORT = {"plate": "3/8in", "leg": "5/16in", "wfs": "350", "volts": "27", "travel": "11",
         "leg_found": "9/32in", "leg2_found": "9/32in"}  # fmt: skip


def inspect(**typed: str) -> InspectAnswer:
    return answer("inspect", urlencode(typed))


def change_of(found: InspectAnswer) -> SizeChange:
    assert found.change is not None
    return found.change


def test_of_unlike_legs_the_metal_is_that_of_both() -> None:
    """9/32 and 5/16: 1.2 × 0.28125 × 0.3125 ÷ 2 = 0.052734 in², over 0.049086 by our sums."""
    change = change_of(inspect(**{**SHORT, "leg2_found": "5/16in"}))
    assert change.laid_over_sums == pytest.approx(0.052734 / 0.049086, rel=2e-3)


def test_of_a_groove_the_last_bead_holds_what_stands_over_the_face() -> None:
    """Half of the joint and two thirds of face × 1/8 in, over what feed and travel lay."""
    assert LEAST_BEAD == 0.2  # our choice
    typed = {"joint": "v", "plate": "1/2in", "wfs": "350", "volts": "27", "travel": "6"}
    found = inspect(**typed, passes="2", convexity="3/16in")
    shape = found.weld.shape
    extra = 2 / 3 * shape.face_m * (3 / 16 * IN - shape.regions[0].crown_m)
    share = found.used.plan.efficiency[1]
    bead = pi * found.used.job.wire.diameter_m**2 / 4 * (350 / 6) * share
    held = (shape.section_m2 / 2 + extra) / bead
    assert change_of(found).laid_over_sums == pytest.approx(held, rel=2e-3)
    said = [note.key for note in found.notes]
    assert ("inspection.sums-differ-last" in said) is (abs(held - 1) > 0.25)
    assert "inspection.sums-differ" not in said
    one = inspect(**{**typed, "travel": "2"}, passes="1", convexity="3/16in")
    assert "inspection.sums-differ-last" not in {note.key for note in one.notes}


@pytest.mark.parametrize(
    ("query", "crown_m"), [("joint=v&plate=1/2in", None), ("joint=plug&plate2=1/2in", IN / 16)]
)
def test_nothing_over_the_face_or_a_plug_asks_for_no_change(
    query: str, crown_m: float | None
) -> None:
    seen = WeldReadings(read_by="along", convexity=crown_m)
    assert metal_wanted(inspected(answer("dial-in", query).dialled.job, seen), 1e-5) is None


def test_one_leg_over_size_is_no_overwelded_fillet() -> None:
    job = answer("dial-in", "plate=3/8in&leg=5/16in").dialled.job
    one = WeldReadings(read_by="along", leg_found=5 / 16 * IN, leg2_found=1 / 2 * IN)
    both = WeldReadings(read_by="along", leg_found=3 / 8 * IN, leg2_found=1 / 2 * IN)
    assert not is_overwelded(inspected(job, one))
    assert is_overwelded(inspected(job, both))


def test_metal_lies_wrong_only_where_a_size_lacks() -> None:
    free = answer("dial-in", "plate=3/8in&leg=5/16in").dialled
    for leg, wrong in ((0.31, True), (5 / 16, False)):
        seen = WeldReadings(read_by="along", leg_found=leg * IN, leg2_found=0.45 * IN)
        used = used_settings(inspected(free.job, seen), free, 1)
        assert used is not None
        change = size_change(laid_settings(used), free)
        assert change is not None
        assert (change.lies_wrong is not None) is wrong
