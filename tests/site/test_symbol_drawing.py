"""Weld symbols: the signs, sides and figures each standard wants, all on the paper."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright.job.job_query import read_query
from beadwright.job.weld_symbol import weld_symbol
from beadwright.joint.joints import JOINTS
from beadwright.setting.dial_in import dial_in
from beadwright_site.drawings.symbol_drawing import (
    HEIGHT,
    LINE,
    WIDTH,
    SymbolDrawing,
    draw_symbol,
    standard_of,
)
from beadwright_site.drawings.symbol_signs import SIGN_AT
from beadwright_site.drawings.symbol_texts import CHARACTER, Standard
from beadwright_site.drawings.symbol_words import spoken
from beadwright_site.parts.job_card import weld_symbols


def drawn(query: str, standard: Standard) -> SymbolDrawing:
    found = dial_in(read_query(query).job)
    symbol = weld_symbol(found.job, found.plan.shape)
    return draw_symbol(symbol, standard, found.job.units)


# AWS A2.4 and ISO 2553, from memory: size left of the sign, length (and pitch) right of it, root
# opening and angle outward; arrow side below the line (A2.4) or on the full line (ISO, system A).
@pytest.mark.parametrize(
    ("query", "standard", "texts"),
    [
        ("leg=5/16in", "AWS A2.4", ["5/16", "6"]),
        ("leg=1/4in&leg2=3/8in", "AWS A2.4", ["1/4×3/8", "6"]),
        ("leg=1/4in&weld_length=3in&pitch=12in", "AWS A2.4", ["1/4", "3-12"]),
        ("units=si&plate=10mm&leg=6mm&weld_length=50mm&pitch=150mm&welds=3", "ISO 2553",
         ["z6", "3×50(100)"]),
        ("units=si&plate=10mm&leg=8mm&weld_length=150mm", "ISO 2553", ["z8", "150"]),
        ("joint=v&plate=1/2in", "AWS A2.4", ["1/8", "60°", "CJP"]),
        ("joint=v&plate=1/2in&depth=1/4in", "AWS A2.4", ["1/4(1/4)", "60°"]),
        ("joint=bevel&plate=1/2in&depth=3/8in&position=3G-up", "AWS A2.4", ["3/8(1/4)", "45°"]),
        ("units=si&joint=v&plate=12mm&depth=6mm", "ISO 2553", ["s6", "60°"]),
        ("joint=double-v&plate=1in&root_face=0", "AWS A2.4",
         ["1/2", "1/8", "60°", "1/2", "1/8", "60°", "CJP", "gouge"]),
        ("joint=v&backing=copper", "AWS A2.4", ["1/4", "45°", "R", "CJP"]),
        ("joint=v&backing=copper", "ISO 2553", ["1/4", "45°", "MR"]),
        ("joint=v&backing=steel", "ISO 2553", ["1/4", "45°", "M"]),
        ("joint=tee-bevel&plate2=3/4in&depth=3/8in&leg=1/4in", "AWS A2.4",
         ["3/8(3/8)", "45°", "1/4"]),
        ("joint=plug&hole=3/4in&depth=3/8in&plate=1/2in&pitch=4in", "AWS A2.4",
         ["Ø3/4", "4", "3/8"]),
        ("joint=slot&hole=3/4in&slot_length=2in", "AWS A2.4", ["3/4", "2"]),
        ("joint=square&plate=1/8in", "AWS A2.4", ["1/16", "CJP"]),
    ],
)  # fmt: skip
def test_the_figures_stand_as_the_standard_has_them(
    query: str, standard: Standard, texts: list[str]
) -> None:
    assert [text.text for text in drawn(query, standard).texts] == texts


def sign_heights(drawing: SymbolDrawing) -> list[float]:
    """Where strokes near the sign reach, below zero is above the line."""
    found: list[float] = []
    for x, y in re.findall(r"L([\d.]+) ([\d.]+)", drawing.path):
        if abs(float(x) - SIGN_AT) < 20:
            found.append(float(y) - LINE)
    return found


def test_the_arrow_side_lies_below_in_one_and_on_the_full_line_in_the_other() -> None:
    aws, iso = drawn("joint=v", "AWS A2.4"), drawn("joint=v", "ISO 2553")
    assert max(sign_heights(aws)) > 0
    assert min(sign_heights(aws)) == 0
    assert min(sign_heights(iso)) < 0
    assert max(sign_heights(iso)) == 0
    assert aws.dashed == ""
    assert iso.dashed != ""
    assert drawn("joint=double-v&plate=1in", "ISO 2553").dashed == ""  # both sides: no dashed line
    assert {h > 0 for h in sign_heights(drawn("joint=double-v&plate=1in", "AWS A2.4")) if h} == {
        True,
        False,
    }


def test_the_arrow_breaks_towards_the_plate_that_is_beveled() -> None:
    straight, broken = drawn("joint=v", "AWS A2.4").path, drawn("joint=bevel", "AWS A2.4").path
    assert "L36 88L46 84" in broken
    assert "L36 88L46 84" not in straight


def test_a_flush_face_has_its_bar() -> None:
    plain = drawn("joint=v", "AWS A2.4")
    flush = drawn("joint=v&reinforcement=0", "AWS A2.4")
    convex = drawn("joint=v&reinforcement=1/16in", "AWS A2.4")
    assert len({plain.path, flush.path, convex.path}) == 3
    assert "flush face" in flush.spoken
    assert "convex face" in convex.spoken


@settings(max_examples=80)
@given(
    st.sampled_from(JOINTS),
    st.sampled_from(["", "&reinforcement=0", "&reinforcement=1/16in"]),
    st.sampled_from(["us", "si"]),
    st.sampled_from(["3/8in", "1in", "45mm"]),
)
def test_everything_written_stands_on_the_paper_apart(
    joint: str, face: str, system: str, plate: str
) -> None:
    for standard in ("AWS A2.4", "ISO 2553"):
        drawing = drawn(f"joint={joint}{face}&units={system}&plate={plate}", standard)
        places: list[tuple[float, float, float]] = []
        for text in drawing.texts:
            wide = CHARACTER * len(text.text)
            left = text.x - wide * {"start": 0.0, "middle": 0.5, "end": 1.0}[text.anchor]
            assert left >= 0
            assert left + wide <= WIDTH
            assert 12 <= text.y <= HEIGHT
            for other, other_wide, y in places:
                beside = left >= other + other_wide - 1 or other >= left + wide - 1
                assert beside or abs(text.y - y) >= 12
            places.append((left, wide, text.y))


def test_in_words_it_says_what_is_drawn() -> None:
    found = dial_in(read_query("joint=bevel&plate=1/2in&depth=1/4in").job)
    said = spoken(weld_symbol(found.job, found.plan.shape), "us")
    assert said == ("Bevel groove, arrow side, depth 1/4 in, throat 1/4 in, angle 45°.")
    assert drawn("joint=double-v&plate=1in", "AWS A2.4").spoken.endswith(
        "welded through; root gouged from the other side."
    )


def test_the_card_shows_the_standard_of_its_units_first() -> None:
    for units, first in (("us", "AWS A2.4"), ("si", "ISO 2553")):
        found = dial_in(read_query(f"units={units}").job)
        symbols = weld_symbols(found, both=True)
        assert symbols[0].standard == first
        assert {symbol.standard for symbol in symbols} == {"AWS A2.4", "ISO 2553"}
        assert weld_symbols(found) == symbols[:1]
    assert standard_of("si") == "ISO 2553"
