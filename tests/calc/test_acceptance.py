"""In or out: each limit just inside and just outside, by the whole page."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.inspection import iso_limits
from beadwright.inspection.aws_limits import undercut_allowed, undersize_allowed
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.inspected import Check
from beadwright.joint.groove_rules import reinforcement_allowed
from tests.told import in_words

FILLET = "plate=3/8in&leg=5/16in"
V = "joint=v&plate=1/2in"


def inspect(query: str) -> InspectAnswer:
    return answer("inspect", query)


def check(found: InspectAnswer, key: str) -> Check:
    [one] = [each for each in found.checks if each.key == key]
    return one


@pytest.mark.parametrize(
    ("job", "key", "inside", "outside", "off_in"),
    [
        (FILLET, "leg", "leg_found=5/16in", "leg_found=9/32in", 1 / 32),
        (FILLET, "leg2", "leg2_found=5/16in", "leg2_found=0.3in", 0.0125),
        # A tenth of 6 in may lack 1/8 in of a 5/16 in leg.
        (f"{FILLET}&short_length=0.6in", "leg", "leg_found=3/16in", "leg_found=0.18in", 0.0075),
        (f"{FILLET}&short_length=0.7in", "leg", "leg_found=5/16in", "leg_found=3/16in", 1 / 8),
        (f"{FILLET}&short_length=1in&length_found=10in", "leg", "leg_found=3/16in",
         "leg_found=1/8in", 1 / 16),
        # Over 1/16 in a gap adds to the leg.
        (f"{FILLET}&gap_found=1/8in", "leg", "leg_found=7/16in", "leg_found=3/8in", 1 / 16),
        (f"{FILLET}&gap_found=1/16in", "leg", "leg_found=5/16in", "leg_found=1/4in", 1 / 16),
        # Throat 5/16·0.70711 = 0.22097; a hollow takes from it, a crown adds nothing.
        (f"{FILLET}&leg_found=5/16in&leg2_found=5/16in", "throat", "concavity=0in",
         "concavity=0.03in", 0.03),
        (FILLET, "throat", "throat_found=0.221in", "throat_found=0.2in", 0.02097),
        (f"{FILLET}&convexity=0.05in", "throat", "throat_found=0.272in", "throat_found=0.25in",
         0.02097),
        # Face of legs 5/16 is 0.442 in: 1/8 in; of legs 3/16, 0.265 in: 1/16 in.
        (f"{FILLET}&leg_found=5/16in&leg2_found=5/16in", "convexity", "convexity=1/8in",
         "convexity=0.15in", 0.025),
        (f"{FILLET}&leg_found=3/16in&leg2_found=3/16in", "convexity", "convexity=1/16in",
         "convexity=0.07in", 0.0075),
        (f"{FILLET}&face=1in", "convexity", "convexity=3/16in", "convexity=0.2in", 0.0125),
        (FILLET, "undercut", "undercut=1/32in", "undercut=0.04in", 0.00875),
        (f"{FILLET}&undercut_length=2in", "undercut", "undercut=1/16in", "undercut=0.07in", 0.0075),
        (f"{FILLET}&accept=d1.1-cyclic", "undercut", "undercut=0.01in", "undercut=0.02in", 0.01),
        (f"{FILLET}&accept=d1.1-cyclic&across=no", "undercut", "undercut=1/32in",
         "undercut=0.04in", 0.00875),
        ("plate=1in&leg=5/16in", "undercut", "undercut=1/16in", "undercut=0.07in", 0.0075),
        (FILLET, "overlap", "overlap=0in", "overlap=0.01in", 0.01),
        (FILLET, "pores", "pores_inch=3/8in", "pores_inch=0.4in", 0.025),
        (FILLET, "pores-foot", "pores_foot=3/4in", "pores_foot=0.8in", 0.05),
        (FILLET, "pores", "pore=1/64in", "pore=1/2in", 0.125),
        (f"{FILLET}&accept=d1.1-cyclic", "pores", "pore=3/32in", "pore=0.1in", 0.00625),
        (FILLET, "length", "length_found=6in", "length_found=5.5in", 0.5),
        (FILLET, "gap", "gap_found=3/16in", "gap_found=1/4in", 1 / 16),
        (V, "reinforcement", "convexity=1/8in", "convexity=3/16in", 1 / 16),
        (V, "underfill", "concavity=0in", "concavity=0.02in", 0.02),
        (V, "crater", "crater=0in", "crater=0.02in", 0.02),
        (f"{V}&convexity=0.05in", "crater", "crater=0.05in", "crater=0.07in", 0.02),
        (V, "pores", "pore=0in", "pore=0.03in", 0.03),
        (f"{V}&accept=d1.1-cyclic", "pores", "pore=0in", "pore=0.03in", 0.03),
        (f"{V}&across=no", "pores", "pore=0.3in", "pore=0.4in", 0.025),
        # Legs 3/8 leave a throat of 0.2652 over the 0.2210 asked: room 0.0442.
        (f"{FILLET}&leg_found=3/8in&leg2_found=3/8in", "crater", "crater=0.044in",
         "crater=0.05in", 0.0058),
    ],
)  # fmt: skip
def test_aws_limits_hold_to_the_edge(
    job: str, key: str, inside: str, outside: str, off_in: float
) -> None:
    held, failed = (check(inspect(f"{job}&{found}"), key) for found in (inside, outside))
    assert (held.state, held.off) == ("in", 0.0)
    assert failed.state == "out"
    assert failed.off / 0.0254 == pytest.approx(off_in, abs=6e-5)


METRIC = "units=si&plate=10mm&leg=6mm"
THIN = "units=si&plate=2mm&leg=2mm&dia=0.030in&gas=75/25&weld_length=60mm"
GROOVE = "units=si&joint=v&plate=12mm"


@pytest.mark.parametrize(
    ("job", "key", "inside", "outside", "off_mm"),
    [
        # Leg 6: throat 4.243, face 8.485 mm.
        (f"{METRIC}&accept=iso-b", "throat", "leg_found=6&leg2_found=6", "leg_found=5&leg2_found=6",
         0.402),
        (f"{METRIC}&accept=iso-c&short_length=25mm", "throat", "throat_found=3.6", "throat_found=3",
         0.518),
        (f"{METRIC}&accept=iso-c&short_length=26mm", "throat", "throat_found=4.25",
         "throat_found=3.6", 0.643),
        (f"{METRIC}&accept=iso-b", "throat-over", "throat_found=5.8", "throat_found=6", 0.121),
        (f"{METRIC}&accept=iso-b", "asymmetry", "leg_found=6&leg2_found=8",
         "leg_found=6&leg2_found=8.5", 0.364),
        (f"{METRIC}&accept=iso-b", "convexity", "convexity=1.8", "convexity=2", 0.151),
        (f"{METRIC}&accept=iso-d", "convexity", "convexity=3.1", "convexity=3.2", 0.079),
        (f"{METRIC}&accept=iso-b", "undercut", "undercut=0.5", "undercut=0.6", 0.1),
        (f"{METRIC}&accept=iso-d", "undercut", "undercut=1", "undercut=1.2", 0.2),
        (f"{THIN}&accept=iso-c&undercut_length=15mm", "undercut", "undercut=0.2", "undercut=0.3",
         0.1),
        (f"{THIN}&accept=iso-c", "undercut", "undercut=0", "undercut=0.2", 0.2),
        (f"{THIN}&accept=iso-b&undercut_length=1mm", "undercut", "undercut=0", "undercut=0.1", 0.1),
        (f"{METRIC}&accept=iso-c", "overlap", "overlap=0", "overlap=0.1", 0.1),
        (f"{METRIC}&accept=iso-d", "overlap", "overlap=1.6", "overlap=2", 0.303),
        (f"{METRIC}&accept=iso-b", "pores", "pore=0", "pore=0.1", 0.1),
        (f"{METRIC}&accept=iso-d", "pores", "pore=1.2", "pore=1.5", 0.227),
        (f"{METRIC}&accept=iso-c", "crater", "crater=1", "crater=1.1", 0.1),
        (f"{METRIC}&accept=iso-b", "gap", "gap_found=0.9", "gap_found=1", 0.076),
        (f"{GROOVE}&accept=iso-c&face=14mm", "reinforcement", "convexity=3.1", "convexity=3.5",
         0.4),
        (f"{GROOVE}&accept=iso-c&short_length=20mm", "underfill", "concavity=1", "concavity=1.2",
         0.2),
        (f"{GROOVE}&accept=iso-c", "underfill", "concavity=0", "concavity=0.5", 0.5),
    ],
)  # fmt: skip
def test_iso_limits_hold_to_the_edge(
    job: str, key: str, inside: str, outside: str, off_mm: float
) -> None:
    held, failed = (check(inspect(f"{job}&{found}"), key) for found in (inside, outside))
    assert (held.state, held.off) == ("in", 0.0)
    assert failed.state == "out"
    assert failed.off * 1000 == pytest.approx(off_mm, abs=2e-3)


@pytest.mark.parametrize("accept", ["d1.1-static", "d1.1-cyclic", "iso-b", "iso-c", "iso-d"])
@pytest.mark.parametrize(
    ("seen", "key"),
    [("cracks=yes", "crack"), ("cracks=crater", "crack"), ("unfused=yes", "fusion")],
)
def test_no_standard_takes_a_crack_or_metal_not_fused(accept: str, seen: str, key: str) -> None:
    found = inspect(f"{FILLET}&accept={accept}&{seen}")
    assert (found.verdict, [each.key for each in found.out]) == ("out", [key])
    said = [note.key for note in found.notes]
    assert ("inspection.never-over-a-crack" in said) == (key == "crack")
    assert (found.repairs[0].key, found.notes[0].level) == (
        ("crack", "stop") if key == "crack" else ("cut-out", "note")
    )


def test_a_crack_is_repaired_before_all_else() -> None:
    found = inspect(f"{FILLET}&cracks=yes&leg_found=1/4in&overlap=0.1in&length_found=5in")
    ways = [each.key for each in found.repairs]
    assert ways[0] == "crack"
    assert set(ways) == {"crack", "add", "remove", "lengthen"}


def test_a_gap_too_wide_is_out_by_itself_and_asks_no_larger_leg() -> None:
    found = inspect(f"{FILLET}&gap_found=1/4in&leg_found=5/16in&leg2_found=5/16in")
    assert [each.key for each in found.out] == ["gap"]


def test_what_was_not_measured_is_neither_in_nor_out() -> None:
    found = inspect(FILLET)
    assert found.verdict == "unknown"
    assert {each.state for each in found.checks} == {"unknown"}
    assert inspect(f"{FILLET}&cracks=no").verdict == "in"
    held = inspect(f"{FILLET}&cracks=no&leg_found=5/16in")
    assert {each.key for each in held.checks if each.state == "in"} == {"crack", "leg", "throat"}


def test_out_stands_first_and_cracks_before_sizes() -> None:
    found = inspect(f"{FILLET}&cracks=yes&leg_found=1/4in&undercut=0.01in")
    assert [each.key for each in found.checks][:3] == ["crack", "leg", "throat"]
    states = [each.state for each in found.checks]
    assert states == sorted(states, key=["out", "in", "unknown"].index)


def test_a_skewed_tee_is_judged_by_its_throat_and_either_reading_of_its_legs() -> None:
    # Leg 1/4 at 120°: throat 0.17678 all the same; leg along the plate 0.35355, by gauge 0.30619.
    job = "plate=3/8in&leg=1/4in&skew=120"
    along = inspect(f"{job}&leg_found=0.3536in&leg2_found=0.3536in")
    gauge = inspect(f"{job}&leg_found=0.3062in&leg2_found=0.3062in&read_by=gauge")
    short = inspect(f"{job}&leg_found=0.3062in&leg2_found=0.3062in")
    assert [each.verdict for each in (along, gauge, short)] == ["in", "in", "out"]
    assert "leg" not in {each.key for each in along.checks}
    assert check(gauge, "throat").found == pytest.approx(0.1768 * 0.0254, rel=1e-3)


def test_unequal_legs_asked_for_are_each_their_own() -> None:
    job = "plate=1/2in&leg=1/4in&leg2=3/8in"
    assert inspect(f"{job}&leg_found=1/4in&leg2_found=3/8in").verdict == "in"
    assert [each.key for each in inspect(f"{job}&leg_found=1/4in&leg2_found=5/16in").out] == [
        "leg2",
        "throat",
    ]
    assert "asymmetry" not in {each.key for each in inspect(f"{job}&accept=iso-b").checks}
    # One leg measured: the other in the proportion asked for.
    one = inspect(f"{job}&leg2_found=3/8in")
    assert one.weld.fillet is not None
    assert one.weld.fillet.leg_m == pytest.approx(0.25 * 0.0254)
    assert check(one, "leg").state == "unknown"


def test_no_legs_are_judged_on_a_groove() -> None:
    found = inspect(f"{V}&leg_found=1/4in&convexity=1/16in")
    assert found.verdict == "in"
    assert "inspection.no-leg-here" in {note.key for note in found.notes}
    assert not {"leg", "throat"} & {each.key for each in found.checks}


def test_a_plug_is_judged_by_what_is_seen_on_it() -> None:
    keys = {each.key for each in inspect("joint=plug&plate2=1/2in").checks}
    assert keys == {"crack", "fusion", "undercut", "overlap", "pores", "pores-foot"}


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("convexity=1/16in&concavity=1/16in", "concavity", "not both"),
        ("undercut_length=2in", "undercut_length", "depth"),
        ("pores_inch=1/2in&pores_foot=1/4in", "pores_foot", "worst inch"),
        ("pore=1/2in&pores_inch=1/4in", "pores_inch", "largest pore"),
        ("short_length=7in", "short_length", "longer than the weld"),
        ("leg_found=9in", "leg_found", "outside 1/32in to 3in"),
        ("undercut=2in", "undercut", "missing weld"),
        ("cracks=maybe", "cracks", "maybe"),
        ("accept=iso-a", "accept", "iso-b"),
        ("trouble=fire", "trouble", "porosity"),
        ("pore_count=many", "pore_count", "whole number"),
        ("wind=hurricane", "wind", "draft"),
    ],
)
def test_what_cannot_be_is_refused_beside_its_entry(query: str, key: str, said: str) -> None:
    errors = answer_json("inspect", f"{FILLET}&{query}")["errors"]
    assert said in " ".join(errors[key])
    with pytest.raises(FieldErrors):
        answer("inspect", f"{FILLET}&{query}")


def test_how_strict_a_case_is_counted_is_said() -> None:
    strict = {note.key for note in inspect(f"{FILLET}&accept=d1.1-cyclic").notes}
    assert {"inspection.counted-across", "inspection.stiffeners"} <= strict
    told = {note.key for note in inspect(f"{FILLET}&accept=d1.1-cyclic&across=yes").notes}
    assert "inspection.counted-across" not in told
    assert "inspection.counted-across" not in {note.key for note in inspect(FILLET).notes}


def test_each_check_names_what_it_hangs_on() -> None:
    found = check(inspect(f"{FILLET}&undercut=0.02in"), "undercut")
    assert found.note is not None
    assert "2 in of any 12 in" in in_words(found.note, "us")


@pytest.mark.parametrize("bad", [0.0, -0.01, float("nan")])
def test_limits_refuse_what_is_no_size(bad: float) -> None:
    for limit in (undersize_allowed, reinforcement_allowed, iso_limits.short_length):
        with pytest.raises(OutOfRangeError):
            limit(bad)
    with pytest.raises(OutOfRangeError):
        undercut_allowed(bad, None, cyclic=False, across=False)
    with pytest.raises(OutOfRangeError):
        iso_limits.iso_limit(iso_limits.CONVEXITY, "B", bad)
    with pytest.raises(OutOfRangeError):
        iso_limits.iso_by_plate(iso_limits.PORE, iso_limits.THIN_PORE, "B", bad, 0.01)
    with pytest.raises(OutOfRangeError):
        undercut_allowed(0.01, min(bad, -1.0), cyclic=False, across=False)
