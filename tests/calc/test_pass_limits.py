"""Limits of root, cap and second layer in a pass plan, over joints and positions."""

import pytest

from beadwright.passes.passes_page import passes_answer
from tests.calc.jobs import planned
from tests.told import told


@pytest.mark.parametrize("position", ["1G", "2G", "3G-up", "4G"])
@pytest.mark.parametrize("joint", ["v", "bevel", "double-v", "tee-bevel"])
def test_no_short_circuit_layer_is_thicker_than_what_fuses(joint: str, position: str) -> None:
    """Common practice: over 3/16 in, short circuit may lie on the edges without fusing."""
    found = planned(f"joint={joint}&plate=1/2in&position={position}&gap=1/8in")
    for bead in found.beads:
        if bead.laid is not None and bead.laid.transfer == "short":
            assert bead.slot.thickness_m <= 3 / 16 * 0.0254 * (1 + 1e-6)


@pytest.mark.parametrize("plate", ["3/16in", "1/4in", "3/8in", "1/2in", "1in"])
@pytest.mark.parametrize("joint", ["v", "bevel", "double-v", "tee-bevel", "square"])
def test_a_root_over_a_gap_of_an_eighth_is_no_skin_and_no_race(joint: str, plate: str) -> None:
    """Common practice: by hand 6 to 14 in/min over a 1/8 in gap, 15 at the most."""
    for wire in ("0.035in", "0.045in"):
        found = planned(f"joint={joint}&plate={plate}&position=1G&gap=1/8in&dia={wire}")
        root = found.beads[0]
        assert root.laid is not None
        assert root.laid.travel_m_s <= 15 * 0.0254 / 60 * (1 + 1e-6)
        assert root.slot.thickness_m >= 1 / 8 * 0.0254 * (1 - 1e-6)


def test_however_many_passes_are_asked_for_the_gap_is_bridged() -> None:
    """The gap is an eighth of an inch wide whether five beads close the groove or fifty."""
    for plate, count in (("1/2in", 8), ("2in", 60), ("2in", 400)):
        found = planned(f"joint=v&plate={plate}&position=1G&gap=1/8in&passes={count}")
        assert len(found.beads) == count
        assert found.beads[0].slot.thickness_m >= 1 / 8 * 0.0254 * (1 - 1e-6)


THIN = [
    f"joint={joint}&plate={plate}&position={position}&gap={gap}"
    for joint in ("v", "bevel", "square", "double-v")
    for plate in ("1/16in", "1/8in", "3/16in")
    for position in ("1G", "2G", "4G")
    for gap in ("1/8in", "3/16in")
]


@pytest.mark.parametrize("job", THIN)
def test_no_bead_lies_beside_another_over_an_open_gap(job: str) -> None:
    """Common practice: one bead bridges a gap over 1/16 in from edge to edge."""
    for count in ("", "&passes=2", "&passes=4"):
        found = planned(job + count)
        root = [bead for bead in found.beads if bead.side == 1 and bead.slot.layer == 1]
        assert not found.open or len(root) == 1


@pytest.mark.parametrize("count", ["", "&passes=2"])
def test_a_thin_plate_over_a_wide_gap_is_refused_by_name(count: str) -> None:
    job = "joint=v&plate=1/8in&position=2G&gap=1/8in"
    answer = passes_answer(job + count)
    assert not answer.found.open
    assert not answer.dialled.plan.open
    said = " ".join(told(note) for note in answer.notes if note.level == "stop")
    assert "Close the root opening to 1/16 in, or weld it from one side on a backing." in said
    assert ("lie side by side over an open root" in said) is bool(count)
    for way in ("gap=1/16in", "gap=1/8in&backing=steel"):
        assert planned(f"joint=v&plate=1/8in&position=2G&{way}").open


@pytest.mark.parametrize("joint", ["slot", "v", "bevel", "tee-bevel"])
def test_a_heavy_plate_has_plans_beside_the_one_shown(joint: str) -> None:
    """2 in plate: the level of the bridging root lies near others and is kept all the same."""
    for position in ("1G", "2G", "3G-up", "4G"):
        answer = passes_answer(f"joint={joint}&plate=2in&position={position}")
        assert all(row.beads >= 1 for row in answer.choices())


@pytest.mark.parametrize("position", ["1G", "2G", "4G"])
def test_a_cap_is_split_where_the_code_splits_it(position: str) -> None:
    """AWS D1.1:2020 Table 5.1, layers over 5/8 in wide, from memory: toe to toe, laps and all."""
    for plate in ("3/8in", "1/2in", "5/8in", "3/4in"):
        found = planned(f"joint=v&plate={plate}&position={position}")
        face = found.shape.face_m
        cap = [bead for bead in found.beads if bead.slot.layer == found.layers[0]]
        assert face / len(cap) <= 5 / 8 * 0.0254 * (1 + 1e-6)


def test_the_second_layer_of_a_fillet_lying_horizontal_is_two_stringers() -> None:
    found = planned("plate=1/2in&leg=3/8in&position=2F")
    assert [(bead.slot.layer, bead.slot.of) for bead in found.beads] == [(1, 1), (2, 2), (2, 2)]
    for bead in found.beads:
        assert bead.slot.width_m <= 3 / 8 * 0.0254
        assert 1 < bead.slot.width_m / bead.slot.thickness_m < 3


@pytest.mark.parametrize("query", ["joint=v&plate=1/2in", "joint=tee-bevel&plate=3/8in"])
def test_a_flux_cored_root_is_laid_on_a_backing_only(query: str) -> None:
    """Common practice: its one mode falls through an open gap."""
    cored = f"{query}&position=1G&wire=E71T-1M&dia=0.045in&gas=75/25"
    answer = passes_answer(cored)
    assert not answer.found.open
    [stop] = [note for note in answer.notes if note.level == "stop"]
    assert stop.field == "backing"
    assert "weld it on a backing" in told(stop)
    assert not any("in short circuit" in told(note) for note in answer.notes)
    assert passes_answer(f"{cored}&backing=ceramic").found.open


def test_the_second_side_is_gouged_so_no_root_is_shorted_there() -> None:
    found = planned("joint=double-v&plate=1in&position=1G")
    first, second = (next(b for b in found.beads if b.side == side) for side in (1, 2))
    assert first.laid is not None
    assert second.laid is not None
    assert (first.laid.transfer, second.laid.transfer) == ("short", "spray")
