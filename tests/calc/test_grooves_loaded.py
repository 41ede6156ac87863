"""Grooves under load: by AISC 360 Table J2.5 and EN 1993-1-8 4.7, never as a fillet."""

from collections.abc import Callable
from math import hypot, sqrt
from random import Random

import pytest

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength import groove_strength, plug_strength, tension_members
from beadwright.strength.groove_strength import groove_use_en, sure_depth
from beadwright.strength.groove_weld import GrooveSizes, unmatched
from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import in_words, told

KIP_IN = read("1kip/in", "force_per_length")
PART = "joint=v&plate=1/2in&depth=1/4in&group=line&group_height=6in&held=yes"


def holds(query: str) -> dict[str, float]:
    """What each link holds [kip/in]."""
    return {k.key: k.holds / KIP_IN for k in ask(query).links}


def said(query: str) -> str:
    return " ".join(told(note) for note in ask(query).notes)


def test_a_quarter_inch_groove_is_no_fillet() -> None:
    # Table J2.5, V of 60°: E is the depth, 1/4 in. Pull 0.6·70/4/1.88, shear 0.6·70/4/2.
    pulled, sheared = holds(f"{PART}&pz=12kip"), holds(f"{PART}&py=12kip")
    assert pulled["weld"] == pytest.approx(10.5 / 1.88)
    assert sheared["weld"] == pytest.approx(10.5 / 2)
    # The plate over the same depth, A36: 58/4/2 pulled, 0.6 of it sheared.
    assert pulled["groove-rupture"] == pytest.approx(58 / 4 / 2)
    assert sheared["groove-rupture"] == pytest.approx(0.6 * 58 / 4 / 2)
    sizes = ask(f"{PART}&pz=12kip").sizes
    assert isinstance(sizes, GrooveSizes)
    assert sizes.throat == pytest.approx(0.25 * 0.0254)
    assert sizes.least == pytest.approx(3 / 16 * 0.0254)  # Table J2.3, to 1/2 in
    assert "fillet" not in said(f"{PART}&pz=12kip").replace("that is for fillets", "")


def test_pull_and_shear_together_as_in_the_printed_example() -> None:
    # AISC Design Examples J.2B: squares of the shares. 6 in: n = 1, v = 2 kip/in.
    found = ask(f"{PART}&pz=6kip&py=12kip")
    assert found.weld.use == pytest.approx(hypot(1 / (10.5 / 1.88), 2 / (10.5 / 2)))
    assert found.weld.asked / KIP_IN == pytest.approx(sqrt(5))
    factored = ask(f"{PART}&pz=6kip&py=12kip&design_code=lrfd")
    assert factored.weld.use == pytest.approx(hypot(1 / (0.8 * 10.5), 2 / (0.75 * 10.5)))


def test_in_a_butt_both_plates_are_pulled() -> None:
    found = holds("joint=v&plate=1/2in&plate2=3/8in&group_height=6in&pz=12kip")
    assert found["plate-yield"] == pytest.approx(36 * 0.5 / 1.67)
    assert found["plate2-yield"] == pytest.approx(36 * 0.375 / 1.67)
    tee = holds("joint=tee-bevel&plate=1/2in&plate2=3/8in&group_height=6in&pz=12kip")
    assert tee["plate-yield"] == pytest.approx(0.6 * 36 * 0.5 / 1.5)
    assert tee["plate2-yield"] == pytest.approx(36 * 0.375 / 1.67)


@pytest.mark.parametrize("joint", ["square", "v", "double-v", "bevel", "double-bevel", "tee-bevel",
                                   "tee-double-bevel"])  # fmt: skip
def test_a_weld_through_the_plate_holds_as_the_weaker_plate(joint: str) -> None:
    query = f"joint={joint}&plate=1/2in&plate2=3/8in&group_height=6in&pz=12kip"
    found = ask(query)
    plates = [k for k in found.links if k.key.startswith("plate")]
    assert found.weld.use == max(k.use for k in plates)
    assert in_words(found.weld.phrase).startswith("weld through the plate")
    assert "Counted as welded through" in said(query)
    assert ("the first side's root" in said(query)) is joint.startswith(("double", "tee-double"))
    backed = "" if "double" in joint else "&backing=steel"
    if backed and joint != "square":
        assert "Counted as welded through" not in said(query + backed)


def test_a_filler_weaker_than_the_plate_is_stopped_through_the_plate_only() -> None:
    query = "joint=v&plate=1/2in&steel=A572-60&group_height=6in&pz=6kip"
    assert unmatched(ask(query).task)
    stops = [note for note in ask(query).notes if note.level == "stop"]
    assert [note.key for note in stops] == ["strength.filler-under"]
    assert not ask(query).holds
    strong = f"{query}&wire=ER80S-D2"
    assert ask(strong).holds
    part = f"{query}&depth=1/4in&held=yes"
    assert ask(part).holds
    # The weaker of two steels is what a filler matches.
    assert ask(f"{query}&steel2=A36").holds


def test_a_groove_too_shallow_for_the_plate_is_stopped() -> None:
    # Table J2.3: over 3/4 in to 1-1/2 asks 5/16 in.
    query = "joint=v&plate=1in&depth=1/4in&group_height=6in&py=3kip"
    assert "under the code minimum of 5/16 in" in said(query)
    assert not ask(query).holds
    assert ask(query.replace("depth=1/4in", "depth=5/16in")).holds


def test_a_narrow_bevel_out_of_position_loses_an_eighth() -> None:
    # Table J2.1: a 45° bevel, vertical or overhead: depth less 1/8 in.
    query = "joint=bevel&plate=3/4in&depth=1/2in&group_height=6in&py=3kip"
    assert holds(f"{query}&position=1G")["weld"] == pytest.approx(0.6 * 70 * 0.5 / 2)
    assert holds(f"{query}&position=3G-up")["weld"] == pytest.approx(0.6 * 70 * 0.375 / 2)


def test_by_the_european_code_two_millimeters_of_each_side_do_not_count() -> None:
    query = "units=si&joint=v&plate=20mm&depth=10mm&group_height=100mm&held=yes&design_code=en"
    found = ask(f"{query}&pz=50kN")
    # S235, 8 mm: 360/(√3·0.8·1.25)·8 in any direction; by direction 0.9·360/1.25·8 pulled.
    assert found.weld.holds / 1e6 == pytest.approx(207.846 * 8 / 1000, rel=1e-5)
    exact = ask(f"{query}&pz=50kN".replace("=en", "=en-directional"))
    assert exact.weld.holds / 1e6 == pytest.approx(0.9 * 360 / 1.25 * 8 / 1000)
    sheared = ask(f"{query}&py=50kN".replace("=en", "=en-directional"))
    assert sheared.weld.holds / 1e6 == pytest.approx(207.846 * 8 / 1000, rel=1e-5)
    assert "2 mm less than cut" in said(f"{query}&pz=50kN")
    double = ask(f"{query}&pz=50kN&depth2=6mm".replace("=v&", "=double-v&"))
    assert isinstance(double.sizes, GrooveSizes)
    assert double.sizes.throat == pytest.approx(0.012)
    tee = "units=si&joint=tee-bevel&plate=20mm&plate2=20mm&depth=10mm&leg=6mm&design_code=en"
    thinner = ask(f"{tee}&py=10kN&group_height=100mm&held=yes").sizes
    assert isinstance(thinner, GrooveSizes)
    assert 0.008 <= thinner.throat < 0.014
    with pytest.raises(FieldErrors) as caught:
        ask(f"{query}&pz=50kN&depth=2mm")
    assert "Cut it deeper" in caught.value.messages["depth"][0]
    assert ask(f"{query}&pz=5kN&depth=4mm").notes[0].key == "strength.throat-under-least"


def test_a_force_per_length_is_taken_as_shear() -> None:
    found = ask(f"{PART}&line_load=1kip/in")
    assert found.weld.holds / KIP_IN == pytest.approx(10.5 / 2)
    european = (
        "units=si&joint=v&plate=20mm&depth=10mm&group_height=100mm&held=yes"
        "&design_code=en-directional&line_load=0.5kN/mm"
    )
    assert ask(european).weld.holds / 1e6 == pytest.approx(207.846 * 8 / 1000, rel=1e-5)


@pytest.mark.parametrize(
    ("query", "keys"),
    [
        ("joint=corner&corner=closed&py=1kip", {"corner", "joint"}),
        ("joint=v&analysis=ic&py=1kip", {"analysis", "joint"}),
        ("joint=v&weld_sides=2&py=1kip", {"weld_sides", "joint"}),
        ("joint=plug&analysis=ic&py=1kip", {"analysis", "joint"}),
    ],
)
def test_what_no_rule_covers_is_refused_by_name(query: str, keys: set[str]) -> None:
    with pytest.raises(FieldErrors) as caught:
        ask(query)
    assert set(caught.value.messages) == keys


def test_no_added_strength_across_a_groove() -> None:
    query = f"{PART}&px=3kip"
    assert ask(query).weld.holds == ask(f"{query}&cross_increase=yes").weld.holds
    assert "No directional increase across a groove" in said(f"{query}&cross_increase=yes")


def test_a_depth_below_nothing_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="depths_m"):
        sure_depth((0.004, -0.001))


def test_a_thousand_part_way_grooves_agree_with_the_table() -> None:
    chance = Random(25)
    for _ in range(1000):
        plate = chance.choice((8, 10, 12, 16, 20, 24))  # sixteenths
        depth = chance.randint(4, plate - 3)
        length = round(chance.uniform(3, 20), 3)
        pull, shear = (round(chance.uniform(0.1, 20), 3) for _ in range(2))
        lrfd = chance.random() < 0.5
        found = ask(
            f"joint=v&plate={plate}/16in&depth={depth}/16in&group=line&group_height={length}in"
            f"&pz={pull}kip&py={shear}kip&design_code={'lrfd' if lrfd else 'asd'}&held=yes"
        )
        throat = depth / 16
        # Table J2.5 for E70 and A36, straight: what it lets each direction carry, per inch.
        pulled = 0.6 * 70 * throat * (0.8 if lrfd else 1 / 1.88)
        sheared = 0.6 * 70 * throat * (0.75 if lrfd else 1 / 2)
        base = throat * (0.75 if lrfd else 1 / 2)
        n, v = pull / length, shear / length
        uses = {k.key: k.use for k in found.links}
        assert uses["weld"] == pytest.approx(hypot(n / pulled, v / sheared), rel=1e-9)
        assert uses["groove-rupture"] == pytest.approx(
            hypot(n / (58 * base), v / (0.6 * 58 * base)), rel=1e-9
        )


def test_a_square_edge_is_welded_through_no_thicker_than_its_details() -> None:
    query = "joint=square&group_height=6in&pz=5kip"
    assert not ask(f"{query}&plate=3/8in").stopped
    thick = ask(f"{query}&plate=1/2in")
    assert "strength.square-thick" in {n.key for n in thick.notes if n.level == "stop"}
    assert not thick.holds
    part = f"{query}&plate=1/2in&depth=3/16in&held=yes"
    assert "Only a test shows" in said(part)
    assert not ask(part).stopped
    assert "Only a test shows" not in said(f"{PART}&pz=1kip")


def test_sides_cut_to_different_depths_are_named() -> None:
    query = "joint=double-v&plate=3/4in&group_height=6in&pz=5kip&depth=1/4in"
    assert "different depths" in said(f"{query}&depth2=3/16in")
    assert "different depths" not in said(f"{query}&depth2=1/4in")
    assert ask(f"{query}&depth2=1/4in").weld.holds / KIP_IN == pytest.approx(42 * 0.5 / 1.88)


def test_sheet_and_strong_filler_are_named_for_every_weld() -> None:
    for joint in ("v", "plug", "lap"):
        query = f"joint={joint}&py=0.2kip&steel=A36"
        assert "strength.sheet-us" in {n.key for n in ask(f"{query}&plate=14ga").notes}
        strong = {n.key for n in ask(f"{query}&filler_strength=110ksi").notes}
        assert "strength.filler-over-matching" in strong


def test_a_thousand_european_grooves_agree_with_the_clause() -> None:
    chance = Random(1993)
    for _ in range(1000):
        along, across, pull = (chance.uniform(-2e6, 2e6) for _ in range(3))
        throat, fu, beta = chance.uniform(0.003, 0.03), chance.uniform(3e8, 5e8), 0.85
        # 4.5.3.2 with σ⊥ = N/a, τ⊥ and τ∥ = V/a: the throat stands square to the pull.
        normal, cross, length = pull / throat, across / throat, along / throat
        combined = sqrt(normal * normal + 3 * (cross * cross + length * length))
        wanted = max(combined / (fu / (beta * 1.25)), abs(normal) / (0.9 * fu / 1.25))
        found = groove_use_en(along, across, pull, throat, fu, beta)
        assert found == pytest.approx(wanted, rel=1e-12)


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: groove_strength.groove_pull(0.0, 4.8e8, "asd"),
        lambda: groove_strength.groove_shear(-0.001, 4.8e8, "asd"),
        lambda: groove_strength.plate_at_groove(0.006, 0.0, "asd"),
        lambda: groove_use_en(1.0, 1.0, 1.0, 0.0, 4e8, 0.8),
        lambda: plug_strength.plug_shear(0.0, 4.8e8, "asd"),
        lambda: plug_strength.plug_shear_en(0.0, 4.8e8, 0.8),
        lambda: plug_strength.least_hole_en(0.0),
        lambda: plug_strength.least_fill_en(-0.01),
        lambda: plug_strength.least_spacing(0.0),
        lambda: plug_strength.least_spacing(0.02, 0.0),
        lambda: tension_members.gross_yielding(0.0, 2e8, "asd"),
        lambda: tension_members.net_rupture(1e-3, 0.0, 1.0, "asd"),
        lambda: tension_members.net_rupture(1e-3, 4e8, 1.01, "asd"),
        lambda: tension_members.lag_of_edge_welds(0.1, 0.0, 0.0),
        lambda: tension_members.lag_of_mixed_welds(float("inf"), 0.0),
        lambda: tension_members.block_shear(0.0, 1e-3, 2e8, 4e8, "asd"),
        lambda: tension_members.spread_width(-0.1, 0.1),
        lambda: tension_members.spread_width(0.1, -0.1),
        lambda: tension_members.gross_yielding_en(0.0, 2e8),
        lambda: tension_members.net_rupture_en(1e-3, 0.0),
    ],
)
def test_what_no_plate_or_weld_has_is_refused(wrong: Callable[[], object]) -> None:
    with pytest.raises(OutOfRangeError):
        wrong()


def test_welds_across_a_wide_plate_spread_nothing() -> None:
    assert tension_members.spread_width(0.1, 0.0) == 0.1


def test_welded_through_a_tee_holds_as_its_standing_plate_a_butt_as_its_thinner() -> None:
    """AISC 360 Table J2.5, CJP: the base metal joined rules; the stem of a tee, 3/8 on 3/4 in."""
    for query, throat in (("joint=tee-bevel&plate=3/8in&plate2=3/4in", 0.75),
                          ("joint=v&plate=3/8in&plate2=3/4in", 0.375),
                          ("joint=v&plate=3/4in&plate2=3/8in", 0.375)):  # fmt: skip
        sizes = ask(f"{query}&group=line&group_height=6in&pz=3kip").sizes
        assert isinstance(sizes, GrooveSizes)
        assert sizes.through
        assert sizes.throat == pytest.approx(throat * 0.0254), query


def test_part_way_the_weaker_plate_and_the_worst_point_count() -> None:
    # J4.2 over the depth: A36, 58 ksi, whichever plate it is; A572-50 has 65.
    for steels in ("steel=A36&steel2=A572-50", "steel=A572-50&steel2=A36"):
        found = holds(f"{PART}&pz=12kip&{steels}")
        assert found["groove-rupture"] == pytest.approx(58 / 4 / 2)
        assert {"plate-yield", "plate2-yield"} <= set(found)
    # Bent about its length's middle: 6M/L² = 6 x 6/36 = 1 kip/in at the end, pulled, none between.
    bent = {k.key: k for k in ask(f"{PART}&mx=6kip-in").links}
    assert bent["weld"].use == pytest.approx(1.0 / (10.5 / 1.88))
    assert bent["groove-rupture"].use == pytest.approx(1.0 / (58 / 4 / 2))
    assert in_words(bent["groove-rupture"].phrase) == "plate over the depth of the groove, tearing"
    assert in_words(bent["weld"].phrase).startswith("weld at point ")
