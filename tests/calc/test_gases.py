"""Shielding gas: any mix read and said, its flow, what it does, its cylinder."""

import json
from collections.abc import Callable
from typing import Any, cast

import CoolProp.CoolProp
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from beadwright.api import answer
from beadwright.errors import FieldErrors, OutOfRangeError, UnknownEntryError
from beadwright.process.compressibility import parts_of
from beadwright.process.gas_effects import EFFECTS, effects_of
from beadwright.process.gas_flow import gas_flow
from beadwright.process.gas_groups import ACTIVE, iso_14175_group
from beadwright.process.gas_mix import Mix, read_mix, say_mix
from beadwright.process.gas_notes import gas_notes
from beadwright.process.gases import GASES, Gas, gas_of
from beadwright.sources import SOURCES
from beadwright.supply.cylinders import SETTLES_K, content, settles_below
from tests.calc.mixes import gases, mixes
from tests.calc.reference_rows import read_rows
from tests.told import told

SAID = {"argon": "Ar", "co2": "CO2", "oxygen": "O2", "helium": "He"}
props = cast("Callable[..., float]", CoolProp.CoolProp.PropsSI)
STATE = cast("Callable[[str, str], Any]", CoolProp.CoolProp.AbstractState)


@given(mixes())
def test_what_is_said_reads_back(mix: Mix) -> None:
    assert read_mix(say_mix(mix)) == mix


@given(mixes(), st.randoms(use_true_random=False))
def test_with_symbols_the_order_does_not_matter(mix: Mix, random: Any) -> None:
    parts = [f"{getattr(mix, name):.2f} {symbol}" for name, symbol in SAID.items()]
    random.shuffle(parts)
    assert read_mix("/".join(parts)) == mix


@given(gases())
def test_a_gas_is_its_name(gas: Gas) -> None:
    assert gas_of(gas.name) == gas
    assert gas.argon + gas.co2 + gas.oxygen + gas.helium == pytest.approx(1, abs=1e-9)
    assert sum(parts_of(gas).values()) == pytest.approx(1, abs=1e-9)
    assert gas.iso_group == iso_14175_group(gas.co2, gas.oxygen, gas.helium)


@given(st.floats(0, 1), st.floats(0, 1))
def test_no_mix_is_in_two_groups(co2: float, oxygen: float) -> None:
    assume(co2 + oxygen <= 1)

    def within(share: float, limits: tuple[float, float]) -> bool:
        low, high = limits
        if high == 0:
            return share == 0
        return (low <= share if low == 0.005 else low < share) and share <= high

    held = [row.name for row in ACTIVE if within(co2, row.co2) and within(oxygen, row.oxygen)]
    assert len(held) <= 1
    if held:
        assert iso_14175_group(co2, oxygen) == held[0]


@pytest.mark.parametrize("name", list(GASES))
def test_a_usual_gas_is_called_by_its_normal_name(name: str) -> None:
    assert GASES[name].name == name
    assert gas_of(name) is GASES[name]
    assert say_mix(read_mix(name)) == name


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("90/11", "“90/11” adds to 101; the shares must add to 100"),
        ("80/10", "“80/10” adds to 90; the shares must add to 100"),
        ("90/5/5", "“90/5/5” does not say what the 5 is"),
        ("90 He/10", "“90 He/10” does not say what the 10 is"),
        ("50 Ar/50 Ar", "“50 Ar/50 Ar” has Ar twice"),
        ("95/5 Xe", "“xe” in “95/5 Xe” is not Ar, CO2, O2 or He"),
        ("90//10", "“90//10” is no gas"),
        ("-5/105", "“-5/105” is no gas"),
        ("٩٠/١٠", "“٩٠/١٠” is no gas"),
        ("", "“” is no gas"),
        ("98/2 H2", "hydrogen in the gas cracks carbon steel"),
        ("98/2 N2", "nitrogen in the gas makes pores"),
        ("He", "He is no gas for wire on steel: helium alone does not hold an arc"),
        ("2/98 He", "2/98 He is no gas for wire on steel: helium alone"),
        ("84/16 O2", "ISO 14175 has no group over 15 % O2"),
        ("84.4/15.6 O2", "ISO 14175 has no group over 15 % O2"),
        ("69 CO2/31 O2", "ISO 14175 has no group over 30 % O2 in CO2"),
        ("40/60", "over 50 % CO2 it is in no group of ISO 14175; use CO2 or a leaner mix"),
        ("99.7/0.3", "under 0.5 % counts for no group"),
        ("98.8/1/0.2 O2", "under 0.5 % counts for no group"),
        ("49/51", "over 50 % CO2 it is in no group of ISO 14175; use CO2 or a leaner mix"),
        ("4.99/95.01 He", "4.99/95.01 He is no gas for wire on steel: helium alone"),
        ("60/38/2 O2", "no group with 38 % CO2 and 2 % O2"),
    ],
)
def test_what_is_refused_says_why(text: str, message: str) -> None:
    with pytest.raises(UnknownEntryError) as refusal:
        gas_of(text)
    assert message in str(refusal.value)


@given(st.text(max_size=60))
def test_any_text_is_taken_or_refused_in_words(text: str) -> None:
    try:
        gas = gas_of(text)
    except UnknownEntryError:
        return
    assert gas_of(gas.name) == gas


def test_a_wrong_gas_stands_beside_its_field() -> None:
    with pytest.raises(FieldErrors) as refusal:
        answer("dial-in", "gas=90/11")
    assert list(refusal.value.messages) == ["gas"]
    with pytest.raises(FieldErrors) as refusal:
        answer("dial-in", "nozzle=1in")
    assert refusal.value.messages == {
        "nozzle": ["“1in” is no nozzle bore in the table; it has 1/2in, 5/8in, 3/4in"]
    }


def test_a_blank_line_takes_no_gas_back() -> None:
    # A form sends the tapped gas and then the line for another mix.
    for query, gas in (
        ("gas=75/25&gas=", "75/25"),
        ("gas=75/25&gas=82/18", "82/18"),
        ("gas=&gas=CO2", "CO2"),
    ):
        assert answer("dial-in", query).query.job.gas.name == gas


# Flow


def test_a_group_without_helium_named() -> None:
    assert iso_14175_group(0.0, 0.0) == "I1"
    with pytest.raises(UnknownEntryError, match=r"no group with 60\.13 % CO2 and 0 % O2"):
        iso_14175_group(0.60126, 0.0)


# What it does


def test_every_effect_is_held_by_a_row() -> None:
    rows = [json.loads(r["inputs"]) for r in read_rows() if r["function"] == "gas_checks.effect"]
    held = {
        effect
        for row in rows
        for effect in effects_of(gas_of(row["gas"]))
        if (effect.what, effect.part) == (row["what"], row["part"])
    }
    assert held == set(EFFECTS)
    assert {effect.source for effect in EFFECTS} <= set(SOURCES)


@given(gases())
def test_a_part_moves_a_thing_one_way(gas: Gas) -> None:
    found = list(effects_of(gas))
    assert all(getattr(gas, effect.part) > 0 for effect in found)
    of_co2 = [e.what for e in found if e.part == "co2"]
    assert len(of_co2) == len(set(of_co2))
    if gas.co2 > 0:
        assert {"volts", "transfer", "spatter", "laid", "fume"} <= set(of_co2)


@pytest.mark.parametrize(
    ("gas", "words"),
    [
        ("Ar", ("Ar is inert", "2 % O2 or 5 % CO2")),
        ("75/25 He", ("75/25 He is inert", "Shielding gas pushes")),
        ("7.5/2.5/90 He", ("stainless", "common practice", "flowmeter made for argon shows 33")),
        ("80/5/15 He", ("flowmeter made for argon shows 33 ft³/h when 35",)),
        ("90/10 O2", ("10 % O2 burns manganese",)),
        ("CO2", ("CO2 pushes", "5 mph")),
        ("90/10", ("Argon and CO2 push", "5 mph")),
    ],
)
def test_what_the_welder_is_told(gas: str, words: tuple[str, ...]) -> None:
    found = gas_of(gas)
    notes = list(gas_notes(found, gas_flow(found, 250, "flat")))
    text = " ".join(told(note) for note in notes)
    for word in words:
        assert word in text
    assert all(note.source in SOURCES for note in notes)


def test_a_plain_mix_is_told_nothing_of_helium() -> None:
    gas = gas_of("90/10")
    text = " ".join(told(note) for note in gas_notes(gas, gas_flow(gas, 250, "flat")))
    for word in ("elium", "inert", "flowmeter", "burns"):
        assert word not in text


# Cylinders


@pytest.mark.parametrize(("share", "kelvin"), SETTLES_K)
def test_co2_settles_where_the_dew_line_ends(share: float, kelvin: float) -> None:
    state = STATE("HEOS", "CarbonDioxide&Argon")
    state.set_mole_fractions([share, 1 - share])
    state.build_phase_envelope("none")
    line = state.get_phase_envelope_data()
    below = [t for t, p in zip(line.T, line.p, strict=True) if p < 150e5]
    assert max(below) == pytest.approx(kelvin, abs=1)


def test_a_cold_cylinder_of_rich_mix_is_not_read_by_its_gauge() -> None:
    half = gas_of("50/50")
    assert content(half, 50e5, 0.05, settles_below(half) + 0.1) > 0
    with pytest.raises(OutOfRangeError, match="turns liquid"):
        content(half, 50e5, 0.05, settles_below(half) - 0.1)
    with pytest.raises(OutOfRangeError, match="comes in no cylinder"):
        content(gas_of("97 CO2/3 O2"), 50e5, 0.05)
    assert settles_below(gas_of("90/10")) == 0


@pytest.mark.parametrize("gas", ["82/18", "65/8/0.5 O2/26.5 He", "97 CO2/3 O2", "Ar", "90/8/2 O2"])
def test_every_page_answers_for_any_mix(gas: str) -> None:
    query = f"plate=3/8in&leg=5/16in&gas={gas}"
    assert answer("dial-in", query).query.job.gas.name == gas
    assert answer("cost", f"{query}&b_wire=ER70S-3").ways
    found = answer("supplies", query).supplies
    assert found.gas_m3 > 0
    assert (found.cylinders is None) == (gas == "97 CO2/3 O2")
