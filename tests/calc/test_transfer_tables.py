"""Ends of the modes: a second transcription of what ``transfer`` says it took, and its steps."""

import pytest

from beadwright.process.gases import Gas
from beadwright.process.transfer import (
    OPEN_TOP_A,
    SHORT_RANGE_A,
    gas_refused,
    spray_refused,
    transition_current,
)
from beadwright.process.transfer_regions import edges, globular_current, transfer_at
from beadwright.process.wires import wire_of
from tests.told import in_words


def mix(co2: float = 0.0, oxygen: float = 0.0, helium: float = 0.0) -> Gas:
    """Argon with shares of others."""
    return Gas("a mix", 1 - co2 - oxygen - helium, co2, oxygen, "", helium)


def test_short_circuit_by_size() -> None:
    """A power-source manual's rules and the tops of an equipment sheet; 0.040 in halfway.

    0.052 in and 1/16 in: a metal-cored sheet's short-arc rows, and common practice.
    """
    assert {
        "0.023in": (30, 90),
        "0.030in": (40, 145),
        "0.035in": (50, 190),
        "0.040in": (pytest.approx((50 + 75) / 2, abs=0.6), pytest.approx((190 + 225) / 2, abs=0.6)),
        "0.045in": (75, 225),
        "0.052in": (95, 240),
        "1/16in": (140, 260),
    } == SHORT_RANGE_A


def test_top_of_a_size_between_its_neighbors() -> None:
    """Metal-cored 0.040 in: (260 + 340) / 2 A."""
    assert OPEN_TOP_A["metal-cored", "0.040in"] == pytest.approx(300)


@pytest.mark.parametrize(
    ("wire", "gas", "sprays"),
    [
        ("ER70S-6", mix(co2=0.20), True),
        ("ER70S-6", mix(co2=0.205), False),
        ("E70C-6M", mix(co2=0.25), True),
        ("E70C-6M", mix(co2=0.255), False),
        ("ER70S-6", mix(co2=0.05, helium=0.40), True),
        ("ER70S-6", mix(co2=0.05, helium=0.41), False),
        ("ER70S-6", mix(oxygen=0.0051), True),
        ("ER70S-6", mix(co2=0.003, oxygen=0.0021), True),
        ("ER70S-6", mix(oxygen=0.005), True),
        ("ER70S-6", mix(oxygen=0.0049), False),
        # Oxygen counts half: 15 + 5 / 2 = 17.5 %; 19 + 3 / 2 = 20.5 %.
        ("ER70S-6", mix(co2=0.15, oxygen=0.05), True),
        ("ER70S-6", mix(co2=0.19, oxygen=0.03), False),
    ],
)
def test_where_spray_ends(wire: str, gas: Gas, *, sprays: bool) -> None:
    """20 % CO2 for solid, 25 % for metal-cored, 40 % helium, 0.5 % of what steadies the arc."""
    assert (in_words(spray_refused(wire_of(wire, "0.045in"), gas)) == "") is sprays


@pytest.mark.parametrize(
    ("co2", "runs"), [(0.195, False), (0.20, True), (0.25, True), (0.255, False)]
)
def test_what_e71t_1m_is_made_for(co2: float, *, runs: bool) -> None:
    """AWS A5.20 (textbook's copy, second-hand): 75-80 % argon, balance CO2."""
    assert (in_words(gas_refused(wire_of("E71T-1M", "0.045in"), mix(co2=co2))) == "") is runs


def test_oxygen_lowers_the_transition_to_five_per_cent() -> None:
    """2 % for each 1 % over the 2 % of the column: at 4 % 220 × 0.96 A; from 5 % on 220 × 0.94."""
    wire = wire_of("ER70S-6", "0.045in")
    assert transition_current(wire, mix(oxygen=0.02)) == pytest.approx(220)
    assert transition_current(wire, mix(oxygen=0.04)) == pytest.approx(211.2)
    assert transition_current(wire, mix(oxygen=0.05)) == pytest.approx(206.8)
    assert transition_current(wire, mix(oxygen=0.08)) == pytest.approx(206.8)


def test_where_drawings_begin_for_wire_that_does_not_short() -> None:
    """12 V: under any arc; common practice."""
    assert edges(200, wire_of("E71T-1C", "0.045in"), mix(co2=1.0)).short_top == 12


def test_the_very_edges() -> None:
    """0.045 in, 90/10, 240 A: 225 + 15 × 2/7 A begin it, on 19.5 + 0.9 + 0.025 × 240 − 2.2 V."""
    wire, gas = wire_of("ER70S-6", "0.045in"), mix(co2=0.10)
    begins, low = 225 + 15 * 2 / 7, 19.5 + 0.9 + 6.0 - 2.2
    assert transfer_at(240, low, wire, gas) == "spray"
    assert transfer_at(240, low - 0.01, wire, gas) == "globular"
    foot = 19.5 + 0.9 + 0.025 * begins
    assert transfer_at(begins, foot, wire, gas) == "spray"
    assert transfer_at(begins - 0.01, foot, wire, gas) == "globular"


def test_what_is_said_of_argon_alone_and_of_none() -> None:
    wire = wire_of("ER70S-6", "0.045in")
    assert (
        in_words(spray_refused(wire, mix(co2=0.2, helium=0.8)))
        == "a mix does not spray: spray needs argon"
    )
    assert "wanders" in in_words(spray_refused(wire, mix()))


def test_an_open_arc_that_stands_clear_throughout() -> None:
    """0.030 in, 90/10: 15.4 + 0.9 V at no current, over 12.9 + 0.5 + 2.5 V of short circuit."""
    assert globular_current(wire_of("ER70S-6", "0.030in"), mix(co2=0.10)) == 0
    assert globular_current(wire_of("E71T-1C", "0.045in"), mix(co2=1.0)) == 0


def test_the_top_of_short_circuit_is_short() -> None:
    """0.045 in, 90/10, 100 A: 12.9 + 0.5 + 3.4 + 2.5 = 19.3 V."""
    wire, gas = wire_of("ER70S-6", "0.045in"), mix(co2=0.10)
    top = edges(100, wire, gas).short_top
    assert top == pytest.approx(19.3)
    assert transfer_at(100, top, wire, gas) == "short"
    assert transfer_at(100, 19.31, wire, gas) == "globular"
