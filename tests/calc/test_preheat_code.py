"""The code that rules the preheat: as chosen or as the steel's own, the others beside it."""

import pytest

from beadwright.api import answer
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.steels import STEELS
from beadwright.temperatures import to_celsius, to_fahrenheit
from tests.told import told

JOB = "plate=3/8in&leg=5/16in"
THICK = "plate=1in&leg=1/2in&heat=1.5kJ/mm&units=si"


def heat(query: str) -> HeatAnswer:
    return answer("heat", query)


def said(found: HeatAnswer, level: str) -> str:
    return " ".join(told(note, found.units) for note in found.notes if note.level == level)


def test_the_code_chosen_rules_and_the_other_stands_beside_it() -> None:
    """A572-60 at 25.4 mm: table 65 °C (found); method B by its formula, worked by hand.

    CET .16 + .130 + .002 + .004 + .0125 + .00225 = .31075; 697 CET 216.59; 160 tanh(25.4/35)
    99.27; 62·5^0.35 108.90; (53 CET - 32)·1.2 = -18.64; sum - 328 = 78.1 °C: up to 80 °C.
    """
    asked = f"{THICK}&steel=A572-60"
    for query, code, by, celsius in (
        (asked, "d1.1", "table", 65),
        (f"{asked}&preheat_code=d1.1", "d1.1", "table", 65),
        (f"{asked}&preheat_code=en-b", "en-b", "method-b", 80),
    ):
        found = heat(query)
        assert (found.needed.code, found.needed.by) == (code, by)
        assert to_celsius(found.needed.kelvin or 0) == pytest.approx(celsius)
        assert to_celsius(found.start_k) == pytest.approx(celsius)
        assert to_celsius(found.needed.table_k or 0) == pytest.approx(65)
        assert found.needed.method_b is not None
        assert to_celsius(found.needed.method_b.kelvin or 0) == pytest.approx(78.1, abs=0.1)
    assert "method B asks 78 °C" in said(heat(asked), "caution")
    assert "needs more" not in said(heat(f"{asked}&preheat_code=en-b"), "caution")
    lean = heat(f"{asked}&hydrogen=2&preheat_code=en-b")  # 62·2^0.35 = 79.02: 48.2, up to 50 °C
    assert round(to_celsius(lean.needed.kelvin or 0)) == 50
    assert "AWS D1.1's table asks 65 °C" in said(lean, "caution")


def test_where_preheat_is_measured_is_told_by_the_code_that_rules() -> None:
    """AWS D1.1:2020, 5.7: 3 in, or the thickness; EN ISO 13916, 4.2 (from memory): 4t, to 50 mm."""
    asked = f"{THICK}&steel=A572-60&preheat_code="
    for code, source, text in (
        ("d1.1", "aws-d1.1-5.7", "at least 75 mm each way from the weld"),
        ("en-b", "en-13916", "four times the thickness"),
        ("en-b", "en-13916", "at most 50 mm from them"),
    ):
        told_of = [note for note in heat(asked + code).notes if "heat-through" in note.phrase.key]
        assert [note.source for note in told_of] == [source]
        assert text in told(told_of[0], "si")


@pytest.mark.parametrize("name", STEELS)
@pytest.mark.parametrize("system", ["us", "si"])
def test_without_a_choice_the_steel_s_own_code_rules_in_either_system(
    name: str, system: str
) -> None:
    found = heat(f"plate=1in&leg=1/4in&steel={name}&heat=40kJ/in&units={system}")
    listed = STEELS[name].category is not None
    assert (found.needed.row is not None) == listed
    assert found.needed.code == ("d1.1" if listed else "en-b")
    assert not found.needed.chosen
    assert found.needed.kelvin is not None
    assert found.start_k >= found.needed.kelvin - 1e-9


@pytest.mark.parametrize(
    ("query", "why"),
    [
        ("steel=S355J2&preheat_code=d1.1", "by AWS D1.1: its table does not list S355J2"),
        (
            "steel=unknown&c=0.2&mn=1.2&preheat_code=d1.1",
            "by AWS D1.1: its table goes by the grade",
        ),
        ("steel=A36&c=0.28&mn=1.0&preheat_code=d1.1", "C 0.28 %, at this thickness at most 0.25 %"),
        ("preheat_code=en-a&heat=10kJ/in", "method A: Table C.1 does not settle it"),
        ("c=0.30&mn=1&preheat_code=en-a", "C 0.3 % is outside 0.05 to 0.25 %"),
    ],
)
def test_a_code_that_gives_none_is_a_stop_with_its_reason(query: str, why: str) -> None:
    found = heat(f"{JOB}&{query}")
    assert (found.needed.kelvin, found.needed.by) == (None, "none")
    assert why in said(found, "stop")


def test_method_a_names_the_curve_to_read() -> None:
    """A36, 3/4 in tee: CE .16 + .75/6 + .103/5 + .34/15 = .328; 3 × 19.05 = 57.15 mm; H5 is D."""
    found = heat("plate=3/4in&leg=1/4in&heat=20kJ/in&units=si&preheat_code=en-a")
    assert "CE 0.33, hydrogen scale D, 57.2 mm combined, 0.63 kJ/mm" in said(found, "stop")
    hot = heat("plate=3/4in&leg=1/4in&heat=40kJ/in&units=si&preheat_code=en-a")
    assert hot.needed.even_cold  # 1.26 kJ/mm counts as 1: CE .43, scale D, to 100 mm
    assert hot.needed.by == "method-a"


@pytest.mark.parametrize(
    ("plate", "units", "asked"),
    [
        ("20mm", "si", 0), ("20.1mm", "si", 10), ("38mm", "si", 10), ("38.1mm", "si", 65),
        ("64mm", "si", 65), ("65mm", "si", 65), ("66mm", "si", 110), ("20mm", "us", 50),
        ("38.1mm", "us", 50), ("64mm", "us", 225), ("65mm", "us", 225),
        ("3/4in", "si", 0), ("3/4in", "us", 32),
    ],
)  # fmt: skip
def test_the_metric_rows_are_those_of_the_metric_edition(
    plate: str, units: str, asked: int
) -> None:
    """AWS D1.1/D1.1M Table 5.8: 3 to 20, to 38, to 65 mm; 1/8 to 3/4, to 1-1/2, to 2-1/2 in."""
    kelvin = heat(f"plate={plate}&leg=10mm&units={units}").needed.kelvin
    assert kelvin is not None
    shown = to_celsius(kelvin) if units == "si" else to_fahrenheit(kelvin)
    assert shown == pytest.approx(asked)


def test_the_50_degree_row_is_a_rule_though_the_shop_is_warmer() -> None:
    """AWS D1.1 Table 5.8, category B, over 3/4 to 1-1/2 in: 50 °F, 10 °C."""
    found = heat("plate=1in&leg=1/2in")
    assert found.needed.even_cold
    assert "50 °F in the shop too" in said(found, "caution")
    assert "below 32 °F, warm it to 70 °F" in said(found, "caution")
    metric = heat("plate=1in&leg=1/2in&units=si")
    assert "10 °C in the shop too" in said(metric, "caution")
    assert "below 0 °C, warm it to 20 °C" in said(metric, "caution")
    assert "is a rule in the shop" not in said(heat(JOB), "caution")
    # Method A says that none is needed at shop temperature; it sets no row of its own.
    by_a = heat("plate=1in&leg=1/2in&heat=40kJ/in&preheat_code=en-a")
    assert by_a.needed.even_cold
    assert "is a rule in the shop" not in said(by_a, "caution")
    assert "Below 32 °F: warm it to 70 °F" in said(by_a, "note")


@pytest.mark.parametrize(
    ("query", "text"),
    [
        ("plate=1/8in&leg=1/8in&transfer=short", "Short circuit is not prequalified"),
        ("plate=3/8in&joint=v&position=1G&gap=1/8in", "root opening of 1/8 in: not prequalified"),
        ("plate=3/8in&leg=5/16in", ""),
    ],
)  # fmt: skip
def test_short_circuit_is_said_not_to_be_prequalified(query: str, text: str) -> None:
    told = said(heat(query), "caution")
    assert (text in told) if text else ("prequalified" not in told)
