"""Duty cycle, primary current, leads and cord: what carries the job and what does not."""

import json
from dataclasses import replace
from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.api import answer, answer_json
from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.machine.circuit import Circuit, circuit
from beadwright.machine.conductors import CONDUCTORS, Conductor, conductor_of, volts_lost
from beadwright.machine.power_source import Load, Machine
from beadwright.machine.shop_page import ShopAnswer
from beadwright.machine.shop_query import DEFAULTS
from beadwright.power.duty_cycle import current_at, duty_at, minutes_on
from beadwright.power.primary import effective_current, line_factor, primary_current
from tests.calc.ways import MB3
from tests.told import told

MACHINE = Machine(
    rated_a=350.0,
    plate_a=None,
    duty=0.6,
    most_a=400.0,
    efficiency=0.85,
    power_factor=0.95,
    supply_v=230.0,
    phases=1,
    breaker_a=70.0,
    cord=conductor_of("6 AWG"),
    cord_m=8.0,
    generator_va=None,
    cable=conductor_of("2/0 AWG"),
    cable_m=15.0,
)
LOAD = Load(current_a=300.0, volts=28.0, longest_arc_s=60.0, share=0.35)

AMPS = st.floats(20, 1000)
DUTIES = st.floats(0.05, 1)


def held(found: Circuit) -> dict[str, str]:
    return {check.key: check.held for check in found.checks}


def shop(query: str = "") -> ShopAnswer:
    return answer("shop", f"{MB3}&{query}")


@given(AMPS, DUTIES, DUTIES)
def test_duty_and_current_undo_each_other(rated: float, duty: float, wanted: float) -> None:
    current = current_at(wanted, rated, duty)
    assert duty_at(current, rated, duty) == pytest.approx(wanted)


@given(AMPS, AMPS, DUTIES)
def test_current_squared_times_duty_stays(rated: float, current: float, duty: float) -> None:
    found = duty_at(current, rated, duty)
    assert found <= 1
    if found < 1:
        assert found * current**2 == pytest.approx(duty * rated**2)


@given(st.floats(500, 20_000), st.floats(0.3, 1), st.floats(0.3, 1), st.floats(100, 700))
def test_power_is_kept(watts: float, efficiency: float, factor: float, volts: float) -> None:
    one = primary_current(watts, efficiency, factor, volts, 1)
    three = primary_current(watts, efficiency, factor, volts, 3)
    assert one * volts * factor * efficiency == pytest.approx(watts)
    assert three * volts * sqrt(3) * factor * efficiency == pytest.approx(watts)
    assert line_factor(1) == 1


@given(st.floats(1, 500), st.floats(0, 1))
def test_on_and_off_never_heats_more_than_on(primary: float, duty: float) -> None:
    assert 0.45 * primary <= effective_current(primary, duty) <= primary


@given(st.sampled_from(list(CONDUCTORS.values())), st.floats(1, 100), st.floats(1, 600))
def test_twice_the_lead_loses_twice_the_volts(size: Conductor, metres: float, amps: float) -> None:
    once = volts_lost(size, metres, amps)
    assert volts_lost(size, 2 * metres, amps) == pytest.approx(2 * once)
    assert volts_lost(size, metres, 2 * amps) == pytest.approx(2 * once)


def test_conductors_as_the_shop_writes_them() -> None:
    for text in ("2/0", "2/0 AWG", "2/0awg", "#2/0"):
        assert conductor_of(text).name == "2/0 AWG"
    for text in ("50mm2", "50 mm²", "50 mm2"):
        assert conductor_of(text).name == "50 mm2"
    for name in CONDUCTORS:
        assert conductor_of(name).name == name
    with pytest.raises(UnknownEntryError, match="2/0 AWG"):
        conductor_of("5/0")


def test_thicker_conductors_lose_less() -> None:
    for kind in ("AWG", "mm2"):
        sizes = [c for name, c in CONDUCTORS.items() if name.endswith(kind)]
        ohms = [c.ohm_m for c in sizes]
        assert ohms == sorted(ohms, reverse=True)


def test_a_machine_that_carries_the_job() -> None:
    found = circuit(MACHINE, LOAD)
    assert found.holds
    assert set(held(found).values()) == {"holds"}
    assert found.duty == pytest.approx(0.6 * (350 / 300) ** 2)
    assert found.on_s + found.off_s == pytest.approx(600.0)
    assert minutes_on(found.duty) == found.on_s
    assert found.all_day_a == pytest.approx(350 * sqrt(0.6))
    assert found.cable_v is not None
    assert found.machine_v == pytest.approx(28.0 + found.cable_v)
    drawn = found.machine_v * 300 / 0.85 / 0.95
    assert found.drawn.apparent_va == pytest.approx(drawn)
    assert found.drawn.primary_a == pytest.approx(drawn / 230)
    assert found.drawn.effective_a == pytest.approx(drawn / 230 * sqrt(0.35))


@pytest.mark.parametrize(
    ("machine", "load", "key", "word"),
    [
        (replace(MACHINE, most_a=250.0), LOAD, "current", "fails"),
        (replace(MACHINE, most_a=None, rated_a=250.0), LOAD, "current", "close"),
        (MACHINE, replace(LOAD, longest_arc_s=500.0), "arc", "fails"),
        (MACHINE, replace(LOAD, share=0.9), "share", "fails"),
        (MACHINE, replace(LOAD, share=0.78), "share", "close"),
        (replace(MACHINE, cable_m=200.0), LOAD, "cable", "close"),
        (replace(MACHINE, breaker_a=40.0), LOAD, "breaker", "close"),
        (replace(MACHINE, breaker_a=20.0), LOAD, "breaker", "fails"),
        (replace(MACHINE, cord=conductor_of("12 AWG")), LOAD, "cord", "fails"),
        (replace(MACHINE, cord_m=200.0), LOAD, "cord_drop", "close"),
        (replace(MACHINE, generator_va=8000.0), LOAD, "generator", "fails"),
        (replace(MACHINE, generator_va=13_000.0), LOAD, "generator", "close"),
        (replace(MACHINE, generator_va=20_000.0), LOAD, "generator", "holds"),
    ],
)
def test_each_thing_that_does_not_carry_it(
    machine: Machine, load: Load, key: str, word: str
) -> None:
    found = circuit(machine, load)
    assert held(found)[key] == word
    assert found.holds == (word != "fails")


def test_three_phase_draws_less_a_line() -> None:
    three = circuit(replace(MACHINE, phases=3, supply_v=230.0), LOAD)
    assert three.drawn.primary_a == pytest.approx(circuit(MACHINE, LOAD).drawn.primary_a / sqrt(3))


def test_without_leads_and_cord_nothing_is_said_of_them() -> None:
    bare = replace(MACHINE, cable=None, cord=None, breaker_a=None)
    found = circuit(bare, replace(LOAD, share=None))
    assert set(held(found)) == {"current", "arc"}
    assert found.cable_v is None
    assert found.machine_v == 28.0
    assert found.worked_duty == found.duty


def test_ranges() -> None:
    with pytest.raises(OutOfRangeError, match="rated_duty"):
        duty_at(100, 100, 1.5)
    with pytest.raises(OutOfRangeError, match="duty = 2"):
        current_at(2, 100, 0.5)
    with pytest.raises(OutOfRangeError, match="power_factor"):
        primary_current(1000, 0.9, 1.2, 230, 1)
    with pytest.raises(OutOfRangeError, match="supply_v"):
        primary_current(1000, 0.9, 0.9, 0, 1)
    with pytest.raises(OutOfRangeError, match="duty"):
        effective_current(10, 1.2)


def test_the_page_asks_the_planned_job() -> None:
    found = shop()
    point, travel = found.dialled.point, found.dialled.settings.travel.value
    assert point is not None
    assert travel is not None
    assert found.circuit.load.current_a == point.current_a
    assert found.circuit.load.longest_arc_s == pytest.approx(6 * 0.0254 / travel)


def test_the_page_says_where_the_machine_cannot_hold_it() -> None:
    found = shop("machine_amps=250&duty=30%25&arc_share=45%25&weld_length=20ft&breaker=15")
    stops = {note.field for note in found.notes if note.level == "stop"}
    assert stops == {"machine_amps", "duty", "arc_share", "breaker"}
    assert not found.circuit.holds


def test_the_demonstrations_machine_says_it_is_not_yours() -> None:
    assert any(note.source == "invented" for note in shop().notes)
    own = {key: "250" if key == "rated_amps" else DEFAULTS[key] for key in DEFAULTS}
    found = answer("shop", MB3, own)
    assert not any(note.source == "invented" for note in found.notes)


def test_with_no_machine_written_it_is_the_demonstrations() -> None:
    # 350 A at 60 %: all day 350 × √0.6.
    assert shop().circuit.all_day_a == pytest.approx(271.1088, rel=1e-6)


@pytest.mark.parametrize(
    ("query", "keys"),
    [
        ("", "rated_amps, duty, supply, breaker, cord, cable."),
        ("machine_amps=400A", "duty, supply, breaker, cord, cable."),
        ("rated_amps=400A&duty=60%25&cord=6 AWG", "supply, breaker, cable."),
    ],
)
def test_the_figures_still_the_demonstrations_are_named(query: str, keys: str) -> None:
    [text] = [told(note) for note in shop(query).notes if note.source == "invented"]
    assert text.endswith(f": {keys} Type your own.")


def test_the_rule_for_duty_is_said_where_it_is_used_and_the_electrician_always() -> None:
    # All day at the rating, below it no rule is asked.
    for query, rule in (("amps=300A", {"duty"}), ("amps=300A&duty=100%25", set[str]())):
        notes = shop(query).notes
        assert {note.field for note in notes if note.source == "i2t"} == rule
        assert any("licensed electrician" in told(note) for note in notes)


@pytest.mark.parametrize(
    ("query", "field", "says"),
    [
        ("duty=0%25", "duty", "plates say"),
        ("phase=2", "phase", "not one of 1, 3"),
        ("cord=9/0", "cord", "not in the table"),
        ("supply=12V", "supply", "wall socket"),
        ("machine_amps=5", "machine_amps", "smallest to largest"),
        ("plate=1in&leg=1/2in&gas=CO2&transfer=spray", "wfs", "Write the feed you run."),
    ],
)
def test_messages_say_what_is_allowed(query: str, field: str, says: str) -> None:
    assert says in answer_json("shop", query)["errors"][field][0]


def test_the_answer_is_plain_json() -> None:
    for query in (MB3, f"{MB3}&cable=&generator=10kW&units=si&phase=3&supply=400V"):
        found = answer_json("shop", query)
        assert json.loads(json.dumps(found, allow_nan=False)) == found
