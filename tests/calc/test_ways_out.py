"""A shut window: what is offered opens it, for real."""

import pytest
from hypothesis import HealthCheck, assume, given, settings

from beadwright.api import answer
from beadwright.setting.ways_out import MOST_OFFERED
from tests.calc.jobs import Typed, jobs, query
from tests.told import in_words

SHUT: Typed = {"plate": "3/8in", "leg": "5/16in", "position": "3F-up", "transfer": "spray"}


@settings(max_examples=150, suppress_health_check=[HealthCheck.filter_too_much])
@given(jobs())
def test_each_way_offered_opens_the_window(typed: Typed) -> None:
    shut = answer("dial-in", query(typed))
    assume(not shut.dialled.open)
    assert len(shut.ways_out) <= MOST_OFFERED
    assert len({in_words(way.phrase) for way in shut.ways_out}) == len(shut.ways_out)
    for way in shut.ways_out:
        machine = {"machine_amps", "machine_volts", "rated_amps", "breaker"}
        assert len(way.changes) == 1 or way.changes.keys() <= machine
        changed = answer("dial-in", query(typed | dict(way.changes)))
        assert changed.dialled.open, way


@settings(max_examples=60)
@given(jobs())
def test_an_open_window_needs_no_way_out(typed: Typed) -> None:
    found = answer("dial-in", query(typed))
    if found.dialled.open:
        assert found.ways_out == ()


def test_spray_vertical_up_is_led_to_another_mode() -> None:
    found = answer("dial-in", query(SHUT))
    offered = {in_words(way.phrase): dict(way.changes) for way in found.ways_out}
    assert offered["Set transfer to auto"] == {"transfer": "auto"}
    assert offered["Run pulsed spray"] == {"transfer": "pulse"}


def test_a_gap_too_wide_for_thin_plate_is_led_to_close_it_or_back_it() -> None:
    wide: Typed = {"joint": "v", "plate": "1/8in", "gap": "1/8in", "position": "2G"}
    found = answer("dial-in", query(wide))
    assert not found.dialled.open
    offered = [(in_words(way.phrase), dict(way.changes)) for way in found.ways_out]
    assert offered[0] == ("Close the root opening to 1/16 in", {"gap": "1/16in"})
    assert offered[1] == ("Weld it on a steel backing", {"backing": "steel"})
    for _, changes in offered[:2]:
        assert answer("passes", query(wide | changes)).found.open


def test_too_small_a_machine_is_led_to_a_thinner_wire() -> None:
    found = answer("dial-in", query(SHUT | {"position": "2F", "machine_amps": "200A"}))
    assert not found.dialled.open
    assert any("Use 0.035in wire" in in_words(way.phrase) for way in found.ways_out)


def test_what_is_tied_by_hand_is_let_go() -> None:
    """Volts or tip-to-work fixed so that no feed is left: letting go is offered first."""
    tied = SHUT | {"position": "2F", "transfer": "auto", "ctwd": "2in", "machine_amps": "210A"}
    found = answer("dial-in", query(tied))
    if not found.dialled.open:
        for way in found.ways_out:
            assert answer("dial-in", query(tied | dict(way.changes))).dialled.open


@pytest.mark.parametrize(
    ("job", "way"),
    [
        ({"wire": "E71T-1C", "gas": "90/10"}, {"gas": "CO2"}),
        ({"wire": "E71T-1M", "gas": "90/10"}, {"gas": "75/25"}),
        ({"wire": "E71T-1C", "gas": "CO2", "position": "3F-down"}, {"position": "3F-up"}),
        ({"wire": "E71T-1C", "gas": "CO2", "transfer": "short"}, {"transfer": "auto"}),
    ],
)
def test_flux_cored_wire_is_led_to_its_gas_position_and_mode(
    job: dict[str, str], way: dict[str, str]
) -> None:
    found = answer("dial-in", query({"plate": "3/8in", "leg": "1/4in"} | job))
    assert not found.dialled.open
    assert way in [dict(offered.changes) for offered in found.ways_out]


def test_only_sizes_a_hand_would_take_are_offered() -> None:
    """On 3/8 in plate 0.035 in may stand in for 0.045 in; 0.030 and 0.023 in would never be."""
    found = answer("dial-in", "plate=3/8in&leg=5/16in&machine_amps=190A")
    offered = [in_words(way.phrase) for way in found.ways_out]
    assert "Use 0.035in wire" in offered
    assert not {"Use 0.030in wire", "Use 0.023in wire"} & set(offered)


def test_no_gas_is_offered_that_would_only_run_globular() -> None:
    """Solid wire in 75/25 on 3/8 in plate is globular: no way out of a spray job."""
    found = answer("dial-in", "plate=3/8in&leg=5/16in&machine_amps=190A")
    assert not any("gas" in in_words(way.phrase) for way in found.ways_out)
