"""The Heat page's answer: the code that rules, what is by hand, what is refused, what is said."""

import itertools
import json

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.steels import ELEMENTS, STEELS
from beadwright.temperatures import from_celsius, from_fahrenheit, to_fahrenheit
from tests.told import in_words, told

JOB = "plate=3/8in&leg=5/16in"
THICK = "plate=1in&leg=1/2in&heat=1.5kJ/mm&units=si"


def heat(query: str) -> HeatAnswer:
    return answer("heat", query)


def refused(query: str) -> dict[str, list[str]]:
    with pytest.raises(FieldErrors) as caught:
        heat(query)
    return caught.value.messages


def said(found: HeatAnswer, level: str) -> str:
    return " ".join(told(note, found.units) for note in found.notes if note.level == level)


def test_the_demonstration_bracket_wants_no_preheat() -> None:
    """A36, 3/8 in: category B, 32 °F (AWS D1.1 Table 5.8, found); method B asks none."""
    found = heat(JOB)
    assert found.steel.name == "A36"
    assert found.needed.even_cold
    assert found.needed.by == "table"
    assert found.needed.kelvin == pytest.approx(from_fahrenheit(32))
    assert found.start_k == pytest.approx(from_celsius(20))
    assert "Below 32 °F: warm it to 70 °F" in said(found, "note")
    assert found.dialled.outcome is not None
    assert found.heat.value == found.dialled.outcome.heat.value


def test_the_melt_counted_and_the_worst_are_both_said() -> None:
    usual, worst = heat(THICK), heat(f"{THICK}&melt=limit")
    most = STEELS["A36"].limits[0].most
    assert usual.steel.worst == worst.steel.composition == most
    assert usual.needed.worst_b is not None
    assert worst.needed.method_b is not None
    assert usual.needed.worst_b.kelvin == worst.needed.method_b.kelvin
    assert "go by the mill certificate" in said(usual, "caution")
    assert worst.needed.worst_b is None


def test_a_certificate_counts_before_the_grade() -> None:
    own = heat(f"{THICK}&c=0.18&mn=1.3&steel=unknown")
    assert own.steel.grade is None
    assert own.steel.melt == "certificate"
    assert own.needed.by == "method-b"
    assert own.equivalents[1].value == pytest.approx(0.31)
    both = heat(f"{THICK}&c=0.18&mn=1.3&steel=A36")
    assert both.needed.row is not None
    assert both.needed.method_b == own.needed.method_b


@pytest.mark.parametrize(
    ("query", "key", "text"),
    [
        ("c=0.2", "mn", "Write C and Mn both"),
        ("mn=1.2&cr=0.3", "c", "Write C and Mn both"),
        ("c=60&mn=70", "mn", "add up to 130 %"),
        ("c=0.4&mn=1.0", "c", "C 0.4 % is outside 0.05 to 0.32 %"),
        ("c=0.2&mn=2.2", "mn", "Mn 2.2 % is outside 0.5 to 1.9 %"),
        ("c=0.2&mn=1.2&cr=9", "cr", "Cr 9 % is outside 0 to 1.5 %"),
        ("c=0.2&mn=1.2&cr=9&steel=A36", "cr", "Cr 9 %"),
        ("c=0.32&mn=1.9&mo=0.5", "c", "CET 0.560 is over 0.5"),
        ("c=120&mn=1", "c", "outside 0% to 100%"),
        ("steel=A514", "steel", "A992, A500-B"),
        ("preheat=hot", "preheat", "write 70F or 21C"),
        ("preheat=900F", "preheat", "nobody welds plain steel so"),
        ("preheat=450&units=si", "preheat", "outside −45C to 398C"),
        ("hydrogen=30", "hydrogen", "outside 1 to 20 ml/100 g"),
        ("preheat=-51F", "preheat", "outside −50F to 750F"),
        ("preheat=751F", "preheat", "outside −50F to 750F"),
        ("hydrogen=dry", "hydrogen", "write 5 or H5"),
        ("heat=900kJ/in", "heat", "outside 1kJ/in to 300kJ/in"),
        ("melt=best", "melt", "typical, limit"),
    ],
)
def test_what_cannot_be_taken_says_what_is_allowed_and_why(query: str, key: str, text: str) -> None:
    assert text in " ".join(refused(f"{JOB}&{query}")[key])


def test_a_lean_steel_is_counted_as_the_least_method_b_knows() -> None:
    found = heat(f"{THICK}&c=0.04&mn=0.3")
    notes = said(found, "note")
    for text in ("C taken as 0.05 %", "Mn taken as 0.5 %", "taken as 0.2, the lowest in"):
        assert text in notes
    assert [e.value for e in found.equivalents] == [None, None, None]
    assert "C 0.04 % is outside" in in_words(found.equivalents[0].refused[0])


def test_an_unknown_steel_gets_no_number() -> None:
    found = heat(f"{THICK}&steel=unknown")
    assert found.needed.kelvin is None
    assert found.equivalents == ()
    assert found.hardness.value is None
    assert "do not guess" in said(found, "stop")


def test_a_temperature_by_hand_is_welded_at_and_judged() -> None:
    asked = f"{THICK}&steel=A572-60&preheat_code=en-b"
    cold, hot, good = (heat(f"{asked}&preheat={t}") for t in ("40C", "300C", "120C"))
    assert [f.start_k for f in (cold, hot, good)] == [from_celsius(t) for t in (40, 300, 120)]
    assert "too cold: preheat to 80 °C" in said(cold, "out")
    assert "too hot: wait until it is under 250 °C" in said(hot, "out")
    assert said(good, "out") == ""
    assert cold.cooling is not None
    assert good.cooling is not None
    assert good.cooling.seconds > cold.cooling.seconds
    assert (good.hardness.value or 0) < (cold.hardness.value or 0)
    bare = heat("plate=1in&leg=1/2in&preheat=150")
    assert to_fahrenheit(bare.start_k) == pytest.approx(150)


@pytest.mark.parametrize("typed", [-50, 750])
def test_a_temperature_at_an_end_of_what_may_be_typed_is_taken(typed: int) -> None:
    found = heat(f"{JOB}&preheat={typed}F")
    assert to_fahrenheit(found.start_k) == pytest.approx(typed, abs=1e-6)


@pytest.mark.parametrize("typed", [1, 20])
def test_hydrogen_at_an_end_of_method_b_is_taken(typed: int) -> None:
    assert heat(f"{JOB}&hydrogen={typed}").hydrogen == typed


def test_heat_by_hand_is_counted_both_ways() -> None:
    found = heat(f"{JOB}&heat=40kJ/in")
    assert found.heat.value == pytest.approx(40e3 / 0.0254)
    assert found.heat_en.value == pytest.approx(32e3 / 0.0254)  # EN 1011-1: k = 0.8
    assert found.heat.by_hand


def test_a_job_no_setting_holds_still_gets_its_preheat() -> None:
    found = heat("plate=1in&leg=1/2in&gas=CO2&transfer=spray&steel=A572-60")
    assert found.dialled.outcome is None
    assert found.heat.value is None
    assert found.cooling is None
    assert found.curves == ()
    assert found.needed.kelvin is not None
    assert (
        found.needed.method_b
        == heat(
            "plate=1in&leg=1/2in&steel=A572-60&heat=0.625kJ/mm"  # 0.5 kJ/mm with EN's 0.8
        ).needed.method_b
    )
    assert "No setting fits this job" in said(found, "out")


def test_hydrogen_follows_the_wire_unless_written() -> None:
    assert heat(JOB).hydrogen == HYDROGEN["solid"]
    assert heat(f"{JOB}&wire=E70C-6M").hydrogen == HYDROGEN["metal-cored"]
    assert heat(f"{JOB}&hydrogen=H4").hydrogen == 4
    assert heat(f"{JOB}&hydrogen=2.5 ml/100g").hydrogen == 2.5


def test_high_carbon_equivalent_hard_zones_and_sheet_are_said() -> None:
    hard = heat("plate=1.5in&leg=1/4in&c=0.22&mn=1.5&heat=15kJ/in&preheat=70F")
    assert "CE 0.47: this steel hardens" in said(hard, "caution")
    assert "over 380" in said(hard, "caution")
    assert "under AWS D1.3" in said(heat("plate=16ga&leg=1/16in"), "caution")
    for plate, thin in (("3.1mm", True), ("1/8in", False), ("3.3mm", False)):
        assert ("AWS D1.3" in said(heat(f"plate={plate}&leg=1/8in"), "caution")) == thin
    assert "AWS D1.3" not in said(heat("plate=3.1mm&leg=3mm&units=si"), "caution")  # from 3 mm on
    sheet = said(heat("plate=2mm&leg=2mm&units=si&steel=S235JR"), "caution")
    assert "AWS D1.1 does not cover plate under 3 mm" in sheet
    assert "first row" not in sheet
    for text in ("written, qualified procedure", "Galvanized"):
        assert text in said(heat(JOB), "caution")
    assert "ventilate" in said(heat(f"{THICK}&steel=A572-60"), "caution")


def test_links_keep_what_was_typed_and_unknown_keys_are_named() -> None:
    query = "plate=1in&steel=A588&c=0.15&mn=1.1&cr=0.5&hydrogen=4&preheat=200F"
    found = heat(query)
    assert heat(found.canonical).needed == found.needed
    assert "“nonsense”" in refused(f"{query}&nonsense=1")["nonsense"][0]


def test_json_is_plain_and_holds_the_answer() -> None:
    found = json.loads(json.dumps(answer_json("heat", f"{THICK}&steel=A572-60")))["answer"]
    assert found["preheat"]["value"] == pytest.approx(65)
    assert (found["preheat"]["code"], found["preheat"]["by"]) == ("d1.1", "table")
    assert found["preheat"]["table"] == {"value": 65.0, "unit": "°C", "category": "C"}
    assert set(found["composition"]) == set(ELEMENTS)
    assert found["cooling"]["regime"] == "thick"
    assert found["curves"][0]["rules"] is True
    seconds = [s for curve in found["curves"] for s, _ in curve["points"]]
    assert seconds == [float(f"{s:.4f}") for s in seconds]
    assert answer_json("heat", "c=0.2")["errors"]["mn"]


def test_the_thin_curve_falls_from_800_to_500_in_the_time_of_the_formula() -> None:
    """EN 1011-2, thin, d the mean of both plates, 8 mm; 1.25 x 0.8 = 1 kJ/mm, 20 °C, F2 0.56.

    (4300 - 86)·1e5·(1/8)²·((1/480)² - (1/780)²)·0.56 = 9.943 s.
    """
    asked = "joint=tee&plate=10mm&plate2=6mm&leg=5mm&heat=1.25kJ/mm&units=si"
    [thin] = [c for c in answer_json("heat", asked)["answer"]["curves"] if c["regime"] == "thin"]

    def when(celsius: float) -> float:
        steps = itertools.pairwise(thin["points"])
        [(s, c, s2, c2)] = [(*a, *b) for a, b in steps if a[1] >= celsius > b[1]]
        return float(s + (s2 - s) * (c - celsius) / (c - c2))

    assert when(500) - when(800) == pytest.approx(9.943, rel=0.01)


def test_frost_is_taken_off_as_the_table_s_note_says() -> None:
    # AWS D1.1 Table 5.8, note a: below 32 °F warmed to 70 °F.
    assert "Below 32 °F: warm it to 70 °F" in said(heat(JOB), "note")


@pytest.mark.parametrize(("plate", "below"), [("1/8in", False), ("0.128in", False), ("11ga", True)])
def test_the_table_begins_at_an_eighth(plate: str, below: bool) -> None:
    found = heat(f"plate={plate}&plate2={plate}&leg=1/8in&steel=A36")
    assert ("AWS D1.1 does not cover" in said(found, "caution")) is below
