"""A groove that has settings on Dial in has them on Passes, or Dial in says why not."""

from itertools import product

import pytest

from beadwright.errors import FieldErrors
from beadwright.job.job_joint import joint_shape
from beadwright.job.job_query import read_query
from beadwright.process.deposition import bead_section
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.size_limits import side_most_m2
from tests.calc.jobs import planned, query

WIRES = (
    ("ER70S-6", "0.030in", "75/25"),
    ("ER70S-6", "0.035in", "90/10"),
    ("ER70S-6", "0.045in", "90/10"),
    ("E70C-6M", "0.052in", "90/10"),
    ("E71T-1M", "1/16in", "75/25"),
)
PLATES = ("16ga", "1/8in", "3/16in", "1/4in", "3/8in", "1in")
POSITIONS = ("1G", "2G", "3G-up", "3G-down", "4G")
JOINTS = (
    {"joint": "square"},
    {"joint": "square", "gap": "1/16in"},
    {"joint": "square", "back": "gouge"},
    {"joint": "v"},
    {"joint": "v", "back": "gouge"},
    {"joint": "bevel", "back": "gouge"},
    {"joint": "double-v"},
    {"joint": "double-bevel"},
    {"joint": "plug"},
)

REFUSED = {
    "setting.cored-root-wants-backing",
    "setting.gouge-not-shorted",
    "setting.gouge-short-asked",
}
"""Notes by which Dial in says that its mode does not weld one part of the joint."""


def _keys(set_up: DialIn, *levels: str) -> set[str]:
    return {note.phrase.key for note in set_up.notes if note.level in levels}


@pytest.mark.parametrize("position", POSITIONS)
@pytest.mark.parametrize("joint", JOINTS, ids=lambda each: " ".join(each.values()))
def test_no_groove_is_set_on_dial_in_and_silently_stopped_on_passes(
    joint: dict[str, str], position: str
) -> None:
    for (wire, dia, gas), plate in product(WIRES, PLATES):
        typed = joint | {"plate": plate, "position": position}
        typed |= {"wire": wire, "dia": dia, "gas": gas}
        try:
            set_up = dial_in(read_query(query(typed)).job)
        except FieldErrors:
            continue
        if not set_up.open:
            continue
        found = planned(query(typed))
        stops = _keys(set_up, "stop")
        if any(process.refused is not None for process in found.processes.values()):
            assert _keys(set_up, "stop", "caution") & REFUSED, typed
        elif not found.open:
            assert stops, typed
        else:
            assert "setting.side-too-small" not in stops, typed
            assert "setting.root-in-one-bead" not in stops, typed


def test_a_thin_square_butt_is_one_pass_in_short_circuit() -> None:
    """Common practice: 3/16 in plate is short-circuited in one pass; the crown lies over it."""
    found = planned("joint=square&plate=3/16in&position=1G&dia=0.030in&gas=75/25&gap=1/16in")
    assert found.open
    assert len(found.beads) == 1
    assert len(planned("joint=square&plate=1/4in&position=1G&dia=0.030in&gas=75/25").beads) > 1


@pytest.mark.parametrize("thick", ["3/16in", "1/4in"])
def test_no_bead_of_a_second_side_is_lighter_than_its_arc_lays(thick: str) -> None:
    """Conservation of mass: at its settings the arc lays each bead's section within the travel."""
    found = planned(f"joint=double-v&plate={thick}&position=3G-up&dia=0.035in&gas=90/10")
    fast = TRAVEL_RANGE_M_S[found.job.travel_by, "vertical-up"][1]
    for bead in found.beads:
        assert bead.laid is not None
        run = found.processes[bead.part].run(bead.section_m2)
        laid = bead_section(run.laid(bead.laid.point.feed_m_s), fast, found.job.wire.material)
        assert laid <= bead.section_m2 * (1 + 1e-9)


def test_a_side_laid_over_its_size_keeps_to_the_highest_crown() -> None:
    """AWS D1.1's most reinforcement, 1/8 in (from memory), is what a side may take."""
    found = planned("joint=square&plate=3/16in&position=3G-up&dia=0.035in&gas=90/10&back=gouge")
    first = found.beads[0]
    assert first.role == "only"
    assert first.section_m2 > first.slot.section_m2
    face = found.shape.regions[0].face_m
    crown = found.shape.regions[0].crown_m + (first.section_m2 - first.slot.section_m2) / (
        2 / 3 * face
    )
    assert crown <= 0.125 * 0.0254 * 1.01


def test_a_travel_set_by_hand_leaves_a_bead_at_its_size() -> None:
    fast = "joint=tee&plate=16ga&position=3F-up&dia=0.030in&gas=75/25"
    assert planned(fast).beads[0].section_m2 > planned(fast).beads[0].slot.section_m2
    for travel in ("3in/min", "12in/min", "40in/min"):
        (bead,) = planned(f"{fast}&travel={travel}").beads
        assert bead.section_m2 == bead.slot.section_m2


def test_a_side_takes_its_crown_to_an_eighth_of_an_inch() -> None:
    """A parabola over a chord is two thirds of its height; a plug is laid around, half of it."""
    for joint, share in (("joint=v", 1), ("joint=double-v&plate=3/4in", 1), ("joint=plug", 0.5)):
        job = read_query(joint).job
        shape, _ = joint_shape(job)
        for side, region in enumerate(shape.regions, start=1):
            room = 2 / 3 * region.face_m * (0.125 * 0.0254 - region.crown_m)
            most = share * (region.section_m2 + max(0.0, room))
            assert side_most_m2(job, shape, side) == pytest.approx(most)
    job = read_query("joint=tee&leg=1/4in").job
    shape, _ = joint_shape(job)
    assert side_most_m2(job, shape, 1) == pytest.approx(shape.section_m2 * (5 / 4) ** 2)
