"""EN 1993-1-8 by its clauses, worked by hand: ends, short and long welds, filler, seams, sheet."""

from math import hypot, sqrt

import pytest

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength.effective_weld import effective_weld
from beadwright.strength.leg_search import largest_counted, shop_legs
from beadwright.strength.resistance_en import least_length_en
from beadwright.strength.segments import segments_for
from beadwright.strength.strength_check import spread
from beadwright.strength.weld_group import polyline_group, shaped_group
from beadwright.strength.weld_line import line_properties
from tests.calc.strength_asked import ask
from tests.told import told

EN = "units=si&design_code=en&plate=10mm&plate2=10mm"
A6 = 6 / sqrt(2)
"""Throat of a 6 mm leg [mm]."""

S235 = 360 / (sqrt(3) * 0.8 * 1.25)
"""fvw,d of S235 [N/mm²]."""


def refused(query: str) -> tuple[set[str], str]:
    with pytest.raises(FieldErrors) as found:
        ask(query)
    texts = " ".join(text for of in found.value.messages.values() for text in of)
    return set(found.value.messages), texts


def test_a_long_lap_is_held_by_the_first_leg_that_has_anything_left() -> None:
    # 4.11(3), 3 m: a 4 mm leg (a 2.828) has 1.2 - 0.2·3000/424.3 < 0; of 5 mm (a 3.5355) is left
    # 1.2 - 0.2·3000/530.3 = 0.06863: 0.06863·207.85·3.5355 = 50.43 N/mm, on 2992.9 mm 151 kN.
    found = ask(f"{EN}&joint=lap&group=line&group_height=3000mm&py=100kN")
    assert found.legs.needed == pytest.approx(0.005)
    assert found.weld.use == pytest.approx(100 / 150.94, rel=1e-3)
    assert any(note.key == "strength.long-lap" for note in found.notes)


def test_past_450_throats_a_longer_lap_is_said_to_hold_less() -> None:
    # 4.11(3): l·(1.2 - l/(750 a)) is greatest at 450 a; a 6 mm leg (a 4.2426): 1909 mm. On lengths
    # less the two throats of the ends: 1800 mm holds 0.63431·207.85·4.2426·1791.5 = 1002 kN, 2000
    # mm 0.57145·…·1991.5 = 1003.5, 2400 mm 0.44574·…·2391.5 = 940.0.
    def held(length_mm: int) -> tuple[float, bool]:
        query = f"{EN}&joint=lap&group=line&leg=6mm&group_height={length_mm}mm&py=100kN"
        found = ask(query)
        return 100 / found.weld.use, "strength.lap-too-long" in {n.key for n in found.notes}

    assert [held(mm)[0] for mm in (1800, 2000, 2400)] == pytest.approx(
        [1002.0, 1003.5, 940.0], rel=1e-3
    )
    assert [held(mm)[1] for mm in (1800, 1905, 1915, 2400)] == [False, False, True, True]
    note = next(
        n
        for n in ask(f"{EN}&joint=lap&group=line&leg=6mm&group_height=2400mm&py=100kN").notes
        if n.key == "strength.lap-too-long"
    )
    assert (note.level, note.source) == ("caution", "en-1993-1-8-lap")
    assert "rule 1909.2 mm holds" in told(note, "si")


def test_where_a_longer_lap_holds_less_no_more_length_is_recommended() -> None:
    """4.11(3): 30 m at 50 mm (a 35.36): past 450 a = 15.9 m; 1 m of the same is not."""
    at = f"{EN}&joint=lap&group=line&plate=50mm&plate2=50mm"
    long = ask(f"{at}&group_height=30000mm&py=20000kN")
    stops = [told(n, "si") for n in long.notes if n.level == "stop"]
    assert stops == [
        "No fillet up to 2 in holds this, and a longer one holds less. Use more "
        "lines of weld, or a groove."
    ]
    short = ask(f"{at}&group_height=1000mm&py=20000kN")
    assert "longer weld" in " ".join(told(n, "si") for n in short.notes if n.level == "stop")
    # Nor are pieces of it: 3 m at 5 mm (a 3.54) is 849 throats, 1.5 m 424.
    at = f"{EN}&joint=lap&group=line&leg=5mm&py=20kN"
    assert ask(f"{at}&group_height=3000mm").segments is None
    assert ask(f"{at}&group_height=1500mm").segments is not None


def test_a_weld_over_900_throats_is_refused_as_too_long() -> None:
    keys, texts = refused(f"{EN}&joint=lap&group=line&group_height=3000mm&py=100kN&leg=4mm")
    assert keys == {"leg", "group_height"}
    assert "over 900 throats" in texts
    assert "short" not in texts.replace("shorter", "")


def test_a_weld_too_short_for_any_leg_says_so_beside_its_length() -> None:
    # The least leg, 5 mm (throat 3.54), takes 7.07 mm: 38 mm leave 30.9, 37 mm 29.9.
    assert ask(f"{EN}&group=line&group_height=38mm&py=1kN").legs.least == pytest.approx(0.005)
    keys, texts = refused(f"{EN}&group=line&group_height=37mm&py=1kN")
    assert keys == {"group_height"}
    assert "too short to carry load" in texts


def test_where_no_leg_holds_the_largest_the_length_allows_is_judged() -> None:
    # 60 mm: 60 - 2a must keep 30 mm and 6a, so a up to 7.5 mm, a leg up to 10.6.
    found = ask(f"{EN}&group=line&group_height=60mm&py=900kN&plate=50mm&plate2=50mm")
    assert found.legs.needed is None
    assert found.legs.judged == pytest.approx(0.010)
    assert largest_counted(found.task, spread(found.task)) == pytest.approx(0.010)
    assert shop_legs(found.task)[0] == pytest.approx(0.003)
    assert shop_legs(found.task)[-1] == pytest.approx(0.050)


@pytest.mark.parametrize(("ends", "length"), [("plain", 100 - 2 * A6), ("full", 100.0)])
def test_the_ends_count_in_the_section_too(ends: str, length: float) -> None:
    # A bracket, both sides, 20 kN down 50 mm out: 1000 kN·mm on 2 l²/6, 20 kN on 2 l.
    found = ask(f"{EN}&group=line&group_height=100mm&py=-20kN&load_z=50mm&leg=6mm"
                f"&weld_ends={ends}")  # fmt: skip
    asked = hypot(1e6 / (2 * length**2 / 6), 2e4 / (2 * length)) * 2
    assert found.weld.asked == pytest.approx(asked * 1000, rel=1e-6)
    assert found.weld.use == pytest.approx(asked / (2 * S235 * A6), rel=1e-5)
    assert found.legs.shortest * 1000 == pytest.approx(30 + (2 * A6 if ends == "plain" else 0))
    said = [note for note in found.notes if note.key == "strength.ends-lost"]
    assert len(said) == (ends == "plain")


def test_only_free_ends_are_taken_off() -> None:
    # A C of 40 + 80 + 40 mm: its tips lose 4 mm each, its corners nothing; centroid by hand.
    c = effective_weld(shaped_group("c", 0.040, 0.080), 0.004)
    p = line_properties(c)
    assert p.length_m == pytest.approx(0.152)
    assert p.x == pytest.approx(2 * 0.036 * 0.018 / 0.152)
    assert p.y == pytest.approx(0.040)
    # A T's stem loses at its foot only; a ring, round or square, nowhere.
    assert effective_weld(shaped_group("t", 0.1, 0.2), 0.004).length_m == pytest.approx(0.288)
    for name in ("circle", "rectangle"):
        group = shaped_group(name, 0.1, 0.1)
        assert effective_weld(group, 0.004) is group
    with pytest.raises(OutOfRangeError, match="no longer than"):
        effective_weld(polyline_group(((0.0, 0.0), (0.007, 0.0))), 0.004)
    with pytest.raises(OutOfRangeError, match="no longer than"):  # nothing is left of it either
        effective_weld(polyline_group(((0.0, 0.0), (0.008, 0.0))), 0.004)
    with pytest.raises(OutOfRangeError, match="throat_m"):
        effective_weld(shaped_group("circle", 0.1, 0.1), 0.0)
    assert least_length_en(0.010) == pytest.approx(0.060)


def test_a_load_through_the_centroid_stays_there_when_ends_are_off() -> None:
    whole = ask(f"{EN}&group=c&group_width=40mm&group_height=80mm&py=10kN&leg=6mm")
    assert whole.weld.asked == pytest.approx(1e4 / (0.160 - 2 * A6 / 1000), rel=1e-9)


def test_filler_weaker_than_the_steel_is_refused() -> None:
    # 4.2(2): 60 ksi is 414 MPa; S355 asks 470, S275 410.
    keys, texts = refused(f"{EN}&steel=S355J2&filler_strength=60ksi&py=10kN")
    assert keys == {"filler_strength", "steel"}
    assert "4.2(2)" in texts
    assert ask(f"{EN}&steel=S275JR&filler_strength=60ksi&py=10kN").links
    assert ask(f"{EN}&steel=S355J2&py=10kN").links


@pytest.mark.parametrize(
    ("steel", "ksi", "warned"),
    [("A36", 80, False), ("A36", 90, True), ("A572-60", 90, False), ("A572-60", 100, True)],
)
def test_filler_over_one_level_above_matching_is_warned_of(
    steel: str, ksi: int, warned: bool
) -> None:
    # AISC 360 Table J2.5: one level over. D1.1 Table 5.4: A36 70, A572-60 80 ksi.
    found = ask(f"steel={steel}&filler_strength={ksi}ksi&py=5kip&leg=1/4in")
    keys = [note.key for note in found.notes]
    assert ("strength.filler-over-matching" in keys) is warned


@pytest.mark.parametrize(
    ("query", "key"),
    [
        ("plate=0.12in&py=1kip", "strength.sheet-us"),
        ("plate=1/8in&py=1kip", ""),
        ("plate=3mm&py=1kN&units=si&design_code=en", "strength.sheet-en"),
        ("plate=4mm&py=1kN&units=si&design_code=en", ""),
    ],
)
def test_sheet_says_which_code_rules(query: str, key: str) -> None:
    keys = {note.key for note in ask(query).notes}
    assert keys & {"strength.sheet-us", "strength.sheet-en"} == ({key} if key else set())


def test_round_tube_is_named_apart_from_shaped() -> None:
    keys = {note.key for note in ask("steel=A500-B&py=1kip&group=circle").notes}
    assert "strength.shaped-tube" in keys
    found = ask("steel=A500 Gr B round&py=1kip&group=circle")
    assert found.task.steel.grade == "A500-B-round"
    assert "strength.shaped-tube" not in {note.key for note in found.notes}


def test_a_seam_in_pieces_by_its_own_rules() -> None:
    # A 6 mm leg: 30 + 2·4.243 = 38.5, by tens 40 mm; 31.5 count. Two sides hold 2·207.85·4.243 =
    # 1763.6 N/mm; 300 asked: pitch 31.5·5.879 = 185. The other plate, S235, 10 mm, sheared:
    # 40·1356.8/300 = 181. Gap: 12·10 = 120, pitch 160 by tens.
    found = ask(f"{EN}&line_load=0.3kN/mm&leg=6mm")
    assert found.segments is not None
    assert found.segments.segment_m == pytest.approx(0.040)
    assert found.segments.pitch_m == pytest.approx(0.160)
    assert found.segments.share == pytest.approx(0.25)
    # At 0.5 kN/mm that plate rules: 40·1356.8/500 = 108.5, by tens 100; with one of 20 mm the weld:
    # 31.5·1763.6/500 = 111, so 110. Full to their ends 30 mm do: 30·3.527 = 105.8, so 100.
    assert _pitch(f"{EN}&line_load=0.5kN/mm&leg=6mm") == pytest.approx(0.100)
    thick = f"{EN}&plate2=20mm&line_load=0.5kN/mm&leg=6mm".replace("plate2=10mm&", "")
    assert _pitch(thick) == pytest.approx(0.110)
    assert _pitch(f"{thick}&weld_ends=full") == pytest.approx(0.100)
    keys, texts = refused(f"{EN}&line_load=0.3kN/mm&leg=6mm&segment=35mm")
    assert keys == {"segment"}
    assert "EN 1993-1-8, 4.5.1" in texts
    assert "J2.2b" in refused("segment=1.4in&line_load=1kip/in&leg=1/4in")[1]
    said = next(note for note in found.notes if note.key == "strength.intermittent-en")
    assert "a quarter of the narrower plate" in told(said)
    assert segments_for(found.task, found.links, found.legs) == found.segments


def _pitch(query: str) -> float:
    found = ask(query).segments
    assert found is not None
    return found.pitch_m


@pytest.mark.parametrize("code", ["en", "en-directional"])
@pytest.mark.parametrize(
    "query",
    [
        "py=-20kN&load_z=50mm",
        "joint=lap&group=lines&group_width=60mm&py=300kN&leg=10mm",
        "joint=lap&plate2=6mm&leg=6mm&py=10kN",
        "group=lines&group_width=10mm&py=20kN",
        "line_load=0.1kN/mm&leg=20mm&position=4F",
        "line_load=9kN/mm",
        "gap=2mm&line_load=0.1kN/mm",
        "group=c&py=10kN&load_x=200mm&cross_increase=yes",
        "group=line&group_height=2000mm&py=500kN&leg=5mm&joint=lap",
    ],
)
def test_no_american_limit_stands_in_a_european_answer(query: str, code: str) -> None:
    found = ask(f"{EN}&design_code={code}&{query}".replace("&design_code=en&", "&", 1))
    sources = {note.source for note in found.notes} | {link.source for link in found.links}
    assert not {s for s in sources if s.startswith(("aisc", "aws"))}
    texts = " ".join(told(note) for note in found.notes)
    assert not [word for word in ("AISC", "AWS", "D1.1", "J2") if word in texts]
    assert found.legs.most is None
    assert found.legs.one_pass is None


def test_a_gap_takes_its_own_width_of_leg() -> None:
    # No rule of D1.1: 6 mm and a gap of 1 mm ask for 7 mm.
    assert ask(f"{EN}&leg=6mm&gap=1mm&py=10kN").legs.to_weld == pytest.approx(0.007)


def test_who_has_taken_the_directional_method_is_not_told_to() -> None:
    for code, told_to in (("en", True), ("en-directional", False)):
        notes = ask(f"units=si&py=20kN&cross_increase=yes&design_code={code}").notes
        assert any("pick Directional" in told(note) for note in notes) is told_to
