"""Reading and writing as the shop does: exact both ways, and clear when it cannot be read."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.typed_number import LONGEST_TEXT, quoted, read_number, short
from beadwright.units import (
    MEASURES,
    SHEET_GAUGE_IN,
    System,
    convert,
    fraction_text,
    read,
    settable,
    show,
    symbol,
    write,
    written,
)

INCH = Fraction(254, 10_000)
SYSTEMS: tuple[System, ...] = ("us", "si")

measures = st.sampled_from(list(MEASURES))
systems = st.sampled_from(SYSTEMS)
lengths = st.sampled_from(["length", "leg", "tip_to_work", "wire_diameter"])


@given(measures, systems, st.floats(1e-8, 1e8), st.sampled_from([1, -1]))
def test_what_is_written_reads_back_to_the_same_float(
    measure: str, system: System, of_unit: float, sign: int
) -> None:
    value = sign * of_unit * float(MEASURES[measure].unit(system).factor)
    text = write(value, measure, system)
    assert read(text, measure) == value
    assert len(text) <= LONGEST_TEXT
    # The unit stands in the text, so neither system's bare unit can creep in.
    assert read(text, measure, "si") == read(text, measure, "us")


@given(measures, systems, st.integers(1, 200_000), st.integers(0, 4))
def test_a_value_shown_in_few_digits_is_written_in_few_digits(
    measure: str, system: System, digits: int, places: int
) -> None:
    typed = f"{Fraction(digits, 10**places).numerator / 10**places:.{places}f}"
    text = f"{typed}{MEASURES[measure].unit(system).text}"
    value = read(text, measure)
    again = write(value, measure, system)
    assert len(again) <= len(text) + 3  # 15/16 for 0.9375 and the like
    assert read(again, measure) == value


@given(measures)
def test_nothing_is_written_as_nothing(measure: str) -> None:
    assert read(write(0.0, measure), measure) == 0.0


@given(lengths, st.integers(1, 2000), st.sampled_from([16, 32]))
def test_shop_fractions_come_back_as_fractions(measure: str, steps: int, denominator: int) -> None:
    value = float(Fraction(steps, denominator) * INCH)
    text = write(value, measure, "us", denominator)
    assert read(text, measure) == value
    assert "." not in text
    assert text.endswith("in")


@given(st.integers(-5000, 5000), st.sampled_from([2, 4, 8, 16, 32, 64]))
def test_shop_fractions(steps: int, denominator: int) -> None:
    text = fraction_text(steps / denominator, denominator)
    assert text is not None
    assert read_number(text) == Fraction(steps, denominator)
    # Half a step off is no such fraction.
    assert fraction_text((steps + 0.5) / denominator, denominator) is None


@pytest.mark.parametrize(
    ("inches", "text"),
    [(0.375, "3/8"), (1.25, "1-1/4"), (2.0, "2"), (0.0, "0"), (-0.5, "-1/2"), (-1.5, "-1-1/2")],
)
def test_fractions_as_a_tape_is_read(inches: float, text: str) -> None:
    assert fraction_text(inches) == text


@given(measures)
def test_every_spelling_is_read_as_its_unit(measure: str) -> None:
    kind = MEASURES[measure]
    for spelling, unit in kind.spelled().items():
        assert read(f"2{spelling}", measure) == float(2 * unit.factor)
        assert read(f"2 {spelling.upper()}", measure) == float(2 * unit.factor)
    for system in SYSTEMS:
        assert read("2", measure, system) == float(2 * kind.unit(system).factor)
        assert read(f"2{kind.unit(system).symbol}", measure) == read("2", measure, system)


@pytest.mark.parametrize(
    "text",
    ['3/8in', '3/8"', "3/8 in", "3 / 8 in", "0.375", ".375", "0,375", "+3/8in", "3⁄8in", "⅜in",
     "⅜", "0.375 inches", "3/8 IN", "3/8″", "9.525mm", "9,5250 mm", ".9525cm", "0.03125 ft"],
)  # fmt: skip
def test_three_eighths_however_it_is_typed(text: str) -> None:
    assert read(text, "length") == 0.009525


@pytest.mark.parametrize(
    "text",
    ["1-1/4in", "1 1/4in", "1¼in", "1 ¼ in", "1-¼in", "1 - 1/4 in", "1‑1/4in", "1–1/4in",
     "1.25in", "1,25", "31.75mm", "1\u00a01/4in"],
)  # fmt: skip
def test_one_and_a_quarter_however_it_is_typed(text: str) -> None:
    assert read(text, "tip_to_work") == 0.03175


@pytest.mark.parametrize("text", ["10ga", "10 ga", "10GA", "10 gauge", "#10ga", "10ga."])
def test_gauge_however_it_is_typed(text: str) -> None:
    assert read(text, "length") == float(Fraction("0.1345") * INCH)


def test_gauges_fall_as_numbers_rise() -> None:
    thicknesses = [float(inches) for _, inches in sorted(SHEET_GAUGE_IN.items())]
    assert thicknesses == sorted(thicknesses, reverse=True)


@pytest.mark.parametrize(
    ("text", "measure", "message"),
    [
        ("", "length", r"“” is not a quantity; write it like 3/8in"),
        ("thick", "length", r"“thick” is not a quantity; write it like 3/8in"),
        ("nan", "length", r"“nan” is not a quantity"),
        ("inf", "wire_feed", r"“inf” is not a quantity; write it like 290in/min"),
        ("--1in", "length", r"“--1in” is not a quantity"),
        ("٣in", "length", r"“٣in” is not a quantity"),
        ("3/0in", "length", r"“3/0” has a zero below the line"),
        ("1/2/3in", "length", r"“1/2/3” is not a number; write 3/8, 1-1/4 or 0.375"),
        ("1.2.3in", "length", r"“1.2.3” is not a number"),
        ("1 2in", "length", r"“1 2” is not a number"),
        ("1e3in", "length", r"“1e3in”: unit not known here; use cm, ft, in, m, mm"),
        ("3/8furlong", "length", r"unit not known here; use cm, ft, in, m, mm"),
        ("290mm", "wire_feed", r"“290mm”: unit not known here; use cm/min, in/min, m/min, mm/s"),
        ("10ga", "leg", r"“10ga”: unit not known here; use cm, in, mm"),
        ("24A", "volts", r"“24A”: unit not known here; use V"),
        ("8x", "count", r"“8x”: unit not known here; use a bare number"),
        ("5ga", "length", r"5 ga is not in the steel sheet table; it has 3, 7, 8, 9, 10"),
        ("9" * 41, "length", r"“9{40}…” is too long; write it like 3/8in"),
    ],
)
def test_what_cannot_be_read_is_refused_with_what_can(
    text: str, measure: str, message: str
) -> None:
    with pytest.raises(ValueError, match=message):
        read(text, measure)


@given(st.text(max_size=60), measures, systems)
def test_any_text_is_read_or_refused_in_words(text: str, measure: str, system: System) -> None:
    said = ""
    value = 0.0
    try:
        value = read(text, measure, system)
    except ValueError as error:
        said = str(error)
    assert abs(value) < 1e20
    assert len(said) < 250
    assert said.isprintable()


def test_long_input_is_cut_in_messages() -> None:
    assert short("x" * 41) == "x" * 40 + "…"
    assert short("a\nb\x00c") == "a b c"
    assert quoted("3/8in") == "“3/8in”"


@pytest.mark.parametrize(
    ("value", "measure", "system", "text", "unit"),
    [
        (0.009525, "length", "us", "3/8", "in"),
        (0.009525, "length", "si", "9.5", "mm"),
        (0.0034163, "length", "us", "0.135", "in"),
        (0.00635, "leg", "us", "1/4", "in"),
        (0.0163, "tip_to_work", "us", "5/8", "in"),
        (0.0163, "tip_to_work", "si", "16", "mm"),
        (0.12277, "wire_feed", "us", "290", "in/min"),
        (0.12277, "wire_feed", "si", "7.4", "m/min"),
        (0.005, "travel", "us", "11.8", "in/min"),
        (0.005, "travel", "si", "300", "mm/min"),
        (23.64, "volts", "us", "23.6", "V"),
        (181.4, "current", "si", "181", "A"),
        (2.5961e-4, "gas_flow", "us", "33", "ft³/h"),
        (2.5961e-4, "gas_flow", "si", "16", "L/min"),
        (756_000.0, "heat_input", "us", "19.2", "kJ/in"),
        (756_000.0, "heat_input", "si", "0.76", "kJ/mm"),
        (0.001, "deposition", "us", "7.9", "lb/h"),
        (0.001, "deposition", "si", "3.60", "kg/h"),
        (0.158, "mass_per_length", "us", "0.106", "lb/ft"),
    ],
)
def test_numbers_as_the_page_shows_them(
    value: float, measure: str, system: System, text: str, unit: str
) -> None:
    assert show(value, measure, system) == text
    assert symbol(measure, system) == unit
    assert written(value, measure, system) == f"{text} {unit}".strip()


STEPS = {
    ("wire_feed", "us"): "5in/min",
    ("wire_feed", "si"): "0.1m/min",
    ("volts", "us"): "0.1V",
    ("tip_to_work", "us"): "1/16in",
    ("tip_to_work", "si"): "1mm",
    ("travel", "us"): "0.1in/min",
    ("travel", "si"): "5mm/min",
    ("gas_flow", "us"): "1ft3/h",
    ("gas_flow", "si"): "1L/min",
    ("leg", "us"): "1/16in",
    ("leg", "si"): "0.5mm",
}


@given(st.sampled_from(list(STEPS)), st.floats(0.5, 500))
def test_settable_is_the_nearest_step(key: tuple[str, System], steps: float) -> None:
    measure, system = key
    step = read(STEPS[key], measure)
    value = steps * step
    set_ = settable(value, measure, system)
    assert abs(set_ - value) <= step / 2 * (1 + 1e-9)
    assert set_ / step == pytest.approx(round(set_ / step), abs=1e-9)
    assert settable(set_, measure, system) == set_


def test_what_has_no_step_is_left_alone() -> None:
    assert settable(0.123456789, "current", "us") == 0.123456789


@given(measures, systems, st.floats(1e-6, 1e6))
def test_converting_is_dividing_by_the_unit(measure: str, system: System, value: float) -> None:
    unit = MEASURES[measure].unit(system)
    assert convert(value, measure, system) * float(unit.factor) == pytest.approx(value, rel=1e-12)
