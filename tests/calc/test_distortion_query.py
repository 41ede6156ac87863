"""Distortion from a query: the part, the job as dialled in, what is refused."""

import pytest

from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.heating.distortion_query import (
    PartDistortion,
    PartEntries,
    job_distortion,
)
from beadwright.reading.entries import defaults_of, fields_of, made
from beadwright.sources import SOURCES
from tests.told import told

IN, MM = 0.0254, 1e-3


JOB = "joint=tee&plate=3/8in&leg=5/16in&position=2F&weld_length=6in"


FIELDS = fields_of(PartEntries)


def part_of(**typed: str) -> PartEntries:
    given = {key: text for key, text in {**defaults_of(FIELDS), **typed}.items() if text}
    return made(PartEntries, {key: FIELDS[key].deserialize(text) for key, text in given.items()})


def of_query(job: str, **typed: str) -> PartDistortion:
    return job_distortion(answer("dial-in", job).dialled, part_of(**typed))


def test_demo_bracket_answers() -> None:
    found = job_distortion(answer("dial-in", JOB).dialled, part_of())
    assert [way.key for way in found.ways] == ["yours", "smaller", "both", "stitched"]
    assert {s for way in found.ways for q in way.all() for s in q.sources} <= set(SOURCES)
    assert {note.source for note in found.notes} <= set(SOURCES)
    keys = {note.phrase.key for note in found.notes}
    assert keys == {"heating.forms-differ", "heating.free-to-move"}
    yours = found.ways[0]
    assert yours.laid.leg_m == pytest.approx(5 / 16 * IN)
    # The form alone: 0.02·4·(5/16)^1.3/(3/8)² = 0.12541 in of two fillets; of one 0.06270.
    assert yours.lift.value == pytest.approx(0.062705 * IN, rel=1e-4)
    assert found.part.length_m == pytest.approx(6 * IN)


def test_a_square_butt_shrinks_by_its_metal_and_its_gap() -> None:
    found = of_query("joint=square&plate=1/8in&gap=1/16in&weld_length=6in", part_sides="2")
    [yours] = found.ways
    # 0.2·Aw/t + 0.05·d, the metal of the joint once, half of it from each side.
    one = of_query("joint=square&plate=1/8in&gap=1/16in&weld_length=6in").ways[0].laid
    assert 2 * yours.laid.section_m2 == pytest.approx(one.section_m2, rel=1e-12)
    expected = 0.2 * one.section_m2 / (IN / 8) + 0.05 * IN / 16
    assert yours.across.value == pytest.approx(expected, rel=1e-9)
    assert "spraragen-ettinger" in yours.across.sources
    # A blank gap is the joint's usual, half the plate up to 1/8 in: the same 1/16 in.
    usual = of_query("joint=square&plate=1/8in&weld_length=6in")
    assert usual.ways[0].laid.gap_m == pytest.approx(IN / 16, rel=1e-9)
    assert any("Preset it" in told(note) for note in found.notes)
    # Sheet is welded without one.
    assert of_query("joint=square&plate=16ga&weld_length=6in").ways[0].laid.gap_m == 0.0


@pytest.mark.parametrize("sides", ["1", "2"])
def test_a_joint_drawn_from_both_sides_holds_its_metal_once(sides: str) -> None:
    job = "joint=double-v&plate=1in&position=1G&weld_length=6in"
    dialled = answer("dial-in", job).dialled
    laid = of_query(job, part_sides=sides).ways[0].laid
    assert laid.sides == 2
    assert 2 * laid.section_m2 == pytest.approx(dialled.plan.shape.section_m2, rel=1e-12)
    assert laid.passes == round(dialled.plan.passes / 2)
    part = of_query("joint=v&plate=1in&depth=3/8in&weld_length=6in", part_sides=sides)
    assert part.ways[0].laid.sides == int(sides)


def test_a_plug_says_there_is_no_form() -> None:
    notes = of_query("joint=plug&plate=3/8in&plate2=1/2in").notes
    assert any("plug or slot" in told(note) for note in notes)


def test_a_groove_in_a_tee_pulls_on_a_tee() -> None:
    """Boxes 6 x 1/2 and 1/4 x 4 as above; the weld's middle at .125 across, .5 up."""
    job = "joint=tee-bevel&plate=1/2in&plate2=1/4in&weld_length=6in"
    part = of_query(job, part_width="6in", part_height="4in").part
    shown = (part.area_m2 / IN**2, part.camber_offset_m / IN, part.sweep_offset_m / IN)
    assert shown == pytest.approx((4.0, 0.3125, 0.125), rel=1e-6)


def test_both_sides_do_not_bow_it_sideways() -> None:
    assert of_query(JOB, part_sides="2").ways[0].sweep.value == 0.0


def test_a_part_of_your_own() -> None:
    found = of_query(JOB, part_length="10ft", part_area="5in2", part_inertia="20in4",
                     part_offset="3in")  # fmt: skip
    assert found.part.sweep_inertia_m4 is None
    assert found.ways[0].sweep.value is None
    weld = found.ways[0].laid.section_m2 / IN**2
    # 0.005·Aw·3·120²/20, bent over 6 in of 120: 6·(240 − 6)/120².
    expected = 0.005 * weld * 3 * 120**2 / 20 * 6 * 234 / 120**2
    camber_m = found.ways[0].camber.value
    assert camber_m is not None
    assert camber_m / IN == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize("joint", ["tee", "lap", "corner", "square"])
def test_every_joint_has_its_part(joint: str) -> None:
    found = of_query(f"joint={joint}&plate=1/4in&weld_length=12in")
    assert found.ways[0].across.value is not None
    wide = 8 if joint == "square" else 4
    assert found.part.width_m == pytest.approx(wide * IN)


@pytest.mark.parametrize(
    ("joint", "wanted"),
    [
        # Boxes 6 x 1/2 and 1/4 x 4: 3 + 1 in2, middle (3 x .25 + 2.5)/4 = .8125 up; level 3 (.25/12
        # + .5625^2) + 16/12 + 1.6875^2, upright 3 x 36/12 + .0625/12; the weld's middle at .25
        # across, .625 up.
        ("tee", (4.0, 5.1927083, 0.1875, 9.0052083, 0.25, 6.0)),
        # The same boxes edge to edge: middle (3 x -3 + .125)/4 = -2.21875 across; upright 3 (3 +
        # .78125^2) + .0625/12 + 2.34375^2; leg 3/16, the weld's middle at .0625 across, .4375 up.
        ("corner", (4.0, 5.1927083, 0.375, 16.3294271, 2.28125, 6.0)),
        # 6 x 1/2 under 6 x 1/4, half over: 3 + 1.5 in2, middle -1 across, .375 up; level 3
        # (.25/12 + .125^2) + 1.5 (.0625/12 + .25^2), upright 3 x 4 + 1.5 x 7;
        # the weld's at .125, .625.
        ("lap", (4.5, 0.2109375, 0.25, 22.5, 1.125, 6.0)),
        # Two of 6 in, counted as thick as the thinner: 12 x 1/4; 12/64/12 and 144 x 3/12.
        ("square", (3.0, 0.015625, 0.0, 36.0, 0.0, 12.0)),
    ],
)
def test_the_part_of_each_joint(joint: str, wanted: tuple[float, ...]) -> None:
    leg = {"square": "", "corner": "&leg=3/16in"}.get(joint, "&leg=3/8in")
    job = f"joint={joint}&plate=1/2in&plate2=1/4in{leg}&weld_length=6in"
    found = of_query(job, part_width="6in", part_height="4in", part_length="48in")
    part, laid = found.part, found.ways[0].laid
    assert part.sweep_inertia_m4 is not None
    assert (
        part.area_m2 / IN**2,
        part.camber_inertia_m4 / IN**4,
        part.camber_offset_m / IN,
        part.sweep_inertia_m4 / IN**4,
        part.sweep_offset_m / IN,
        part.width_m / IN,
    ) == pytest.approx(wanted, rel=1e-6, abs=1e-9)
    assert part.length_m / IN == pytest.approx(48)
    # A fillet pulls on the plate it lies on, a groove on the thinner.
    assert laid.plate_m / IN == pytest.approx(0.25 if joint == "square" else 0.5)


def test_no_setting_still_has_an_answer() -> None:
    job = JOB + "&wfs=&machine_amps=60A"
    found = of_query(job)
    assert "tendon" not in found.ways[0].camber.sources
    assert any("formulas that need the heat input" in told(note) for note in found.notes)
    assert not any(
        "formulas that need the heat input" in told(note) for note in of_query(JOB).notes
    )


def test_the_angle_of_a_butt_is_not_made_up() -> None:
    notes = of_query("joint=square&plate=1/8in").notes
    assert any("Preset it" in told(note) for note in notes)
    assert not any("Preset it" in told(note) for note in of_query(JOB).notes)


@pytest.mark.parametrize(
    ("typed", "fields", "said"),
    [
        ({"part_length": "5.9in"}, {"part_length", "weld_length"}, "longer than the part"),
        ({"part_area": "2in2"}, {"part_inertia", "part_offset"}, "all three"),
    ],
)
def test_what_is_refused(typed: dict[str, str], fields: set[str], said: str) -> None:
    with pytest.raises(FieldErrors) as refused:
        of_query(JOB, **typed)
    assert set(refused.value.messages) == fields
    assert all(said in text for texts in refused.value.messages.values() for text in texts)


def test_the_part_as_long_as_its_weld_is_taken() -> None:
    assert of_query(JOB, part_length="6in").part.length_m == pytest.approx(6 * IN)
