"""Dial in for every wire: what the trade runs is inside, what it cannot run is refused."""

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from beadwright.process.gases import gas_of
from beadwright.process.positions import POSITIONS
from beadwright.process.transfer import transfer_refused
from beadwright.process.wires import WIRE_TYPES, wire_of
from tests.calc.jobs import Typed, dialled, jobs_by_hand
from tests.told import in_words, told

INCH = 0.0254
BRACKET: Typed = {"plate": "3/8in", "leg": "5/16in", "position": "2F"}


def flux(**changes: str) -> Typed:
    return BRACKET | {"wire": "E71T-1C", "gas": "CO2"} | changes


@pytest.mark.parametrize("tip", ["", "5/8in", "3/4in", "7/8in"])
def test_what_the_trade_runs_is_inside_every_window(tip: str) -> None:
    """A 1/4 in tee fillet in one horizontal pass, 290 in/min and 23.6 V, 0.045 in on 90/10.

    Common practice with metal-cored wire.
    """
    typed = {"plate": "1/4in", "leg": "1/4in", "position": "2F", "joint": "tee", "gas": "90/10",
             "wire": "E70C-6M", "dia": "0.045in", "wfs": "290in/min", "volts": "23.6"}  # fmt: skip
    answer = dialled(typed | ({"ctwd": tip} if tip else {}))
    assert answer.open
    assert answer.plan.passes == 1
    assert answer.plan.transfer == "spray"
    assert answer.outcome is not None
    assert answer.outcome.transfer == "spray"
    for quantity in answer.settings.all():
        assert quantity.inside, quantity.name
    assert not [note for note in answer.notes if note.level in ("stop", "out")]


@pytest.mark.parametrize("gas", ["75/25", "80/20", "85/15", "90/10", "95/5"])
@pytest.mark.parametrize("volts", ["28V", "30V"])
def test_what_the_sheet_prints_is_inside_the_volts(gas: str, volts: str) -> None:
    """E70C-6M, 0.045 in, 250 in/min, 28-30 V, 75-95 % argon, 3/4-1 in: data sheet, found."""
    typed = BRACKET | {"wire": "E70C-6M", "gas": gas, "wfs": "250in/min", "volts": volts,
                       "ctwd": "7/8in"}  # fmt: skip
    assert dialled(typed).settings.volts.inside


@pytest.mark.parametrize("position", ["1F", "2F", "3F-up", "4F"])
@pytest.mark.parametrize("dia", WIRE_TYPES["E71T-1C"].sizes)
def test_flux_cored_wire_sprays_in_every_position_of_its_class(position: str, dia: str) -> None:
    """AWS A5.20, position column: H, F, VU, OH (textbook's copy, second-hand)."""
    answer = dialled(flux(position=position, dia=dia, leg="1/4in"))
    assert answer.open
    assert answer.plan.transfer == "spray"
    assert answer.outcome is not None
    assert answer.outcome.transfer == "spray"
    for quantity in answer.settings.all():
        assert quantity.inside, quantity.name


def test_flux_cored_wire_down_hill_is_refused() -> None:
    answer = dialled(flux(position="3F-down"))
    assert not answer.open
    (stop,) = [note for note in answer.notes if note.level == "stop"]
    assert told(stop) == (
        "Not this wire: E71T-1C is not made for vertical-down: the slag runs ahead of the arc. "
        "Change the wire or the position."
    )


@pytest.mark.parametrize("mode", ["short", "pulse"])
def test_flux_cored_wire_has_one_mode(mode: str) -> None:
    answer = dialled(flux(transfer=mode))
    assert not answer.open
    assert any(told(note).startswith("Not this wire: ") for note in answer.notes)


def test_flux_cored_wire_stays_in_its_mode_on_sheet() -> None:
    """Where solid wire would short circuit: 1/8 in flat or horizontal is its thinnest (found)."""
    answer = dialled(flux(plate="1/8in", leg="1/8in"))
    assert answer.plan.transfer == "spray"
    assert answer.open
    thin = dialled(flux(plate="20ga", leg=""))
    assert thin.plan.transfer == "spray"
    assert not thin.open


def test_its_slag_is_neither_laid_nor_forgotten() -> None:
    answer = dialled(flux())
    assert answer.outcome is not None
    assert answer.outcome.laid.value is not None
    wire = wire_of("E71T-1C", "0.045in")
    feed = answer.settings.wire_feed.value
    assert feed is not None
    assert answer.outcome.laid.value == pytest.approx(feed * wire.linear_mass_kg_m * 0.85)
    assert any(told(note).startswith("Slag: chip and brush") for note in answer.notes)


@settings(max_examples=100, suppress_health_check=[HealthCheck.filter_too_much])
@given(jobs_by_hand(), st.sampled_from(sorted(WIRE_TYPES)))
def test_an_open_window_is_never_in_a_mode_the_wire_refuses(typed: Typed, name: str) -> None:
    size = "0.045in"
    answer = dialled(typed | {"wire": name, "dia": size})
    assume(answer.open)
    job, mode = answer.job, answer.plan.transfer
    assert (
        in_words(transfer_refused(wire_of(name, size), gas_of(job.gas.name), job.position, mode))
        == ""
    )
    assert job.position in POSITIONS.values()


def test_metal_cored_in_2f_runs_inside_all_windows_as_shops_run_it() -> None:
    """1/4 in tee fillet, one pass, 290 in/min at 23.6 V, 90/10: common practice."""
    answer = dialled(
        {"plate": "1/4in", "leg": "1/4in", "position": "2F", "wire": "E70C-6M", "dia": "0.045in",
         "gas": "90/10", "wfs": "290in/min", "volts": "23.6V"}
    )  # fmt: skip
    assert answer.open
    assert answer.plan.passes == 1
    assert all(quantity.inside for quantity in answer.settings.all())
    assert answer.outcome is not None
    assert answer.outcome.transfer == "spray"
    assert [note for note in answer.notes if note.level in ("stop", "out")] == []
