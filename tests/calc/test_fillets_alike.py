"""A fillet that has settings on Dial in has them on Passes."""

from itertools import product

import pytest

from beadwright.errors import FieldErrors
from beadwright.process.deposition import bead_section
from beadwright.process.positions import TRAVEL_RANGE_M_S
from tests.calc.jobs import dialled, planned, query

WIRES = (
    ("ER70S-6", "0.030in", "75/25"),
    ("ER70S-6", "0.045in", "90/10"),
    ("ER70S-6", "0.052in", "90/10"),
    ("E70C-6M", "0.052in", "90/10"),
    ("E71T-1M", "1/16in", "75/25"),
)
PLATES = ("16ga", "1/8in", "3/16in", "1/4in", "3/8in", "1/2in", "1in")


@pytest.mark.parametrize("position", ["1F", "2F", "3F-up", "3F-down", "4F"])
@pytest.mark.parametrize("joint", ["tee", "lap", "corner"])
def test_a_fillet_that_dial_in_sets_is_planned_on_passes(joint: str, position: str) -> None:
    for (wire, dia, gas), plate in product(WIRES, PLATES):
        typed = {"joint": joint, "plate": plate, "position": position}
        typed |= {"wire": wire, "dia": dia, "gas": gas}
        try:
            set_up = dialled(typed)
        except FieldErrors:
            continue
        if set_up.open:
            assert planned(query(typed)).open, typed


def test_a_fillet_smaller_than_its_arc_lays_is_told_at_the_size_laid() -> None:
    """Conservation of mass: what is laid at the travel told is the section told."""
    found = planned("joint=tee&plate=16ga&position=3F-up&dia=0.030in&gas=75/25")
    (bead,) = found.beads
    assert bead.laid is not None
    process = found.processes[bead.part]
    laid = process.run(bead.section_m2).laid(bead.laid.point.feed_m_s)
    assert bead.section_m2 > bead.slot.section_m2
    assert bead_section(laid, bead.laid.travel_m_s, found.job.wire.material) == pytest.approx(
        bead.section_m2
    )
    assert bead.laid.travel_m_s <= TRAVEL_RANGE_M_S[found.job.travel_by, "vertical-up"][1]
