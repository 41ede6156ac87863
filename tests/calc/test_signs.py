"""Each sign of a job by a hand sum: how near its bad end a thing stands, and where to go."""

from __future__ import annotations

from dataclasses import replace

import pytest

from beadwright.api import answer
from beadwright.inspection.signs import (
    DRAFT,
    HEAVY_PLATE_M,
    LEAST_MOVE,
    THIN_WIRE,
    UNSEEN,
    WORST,
    Sign,
    Signs,
    Wind,
)
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.process.gases import gas_of
from beadwright.process.transfer import transition_current
from beadwright.process.wires import wire_of

IN, FT3_H = 0.0254, 0.3048**3 / 3600


def signs(query: str, *, flow: float | None = None, wind: Wind | None = None, passes: int = 1,
          readings: WeldReadings | None = None) -> Signs:  # fmt: skip
    used = answer("dial-in", query).dialled
    hand = ("wfs", "volts", "travel", "ctwd")
    bare = "&".join(part for part in query.split("&") if part.partition("=")[0] not in hand)
    free = answer("dial-in", bare).dialled
    seen = readings or WeldReadings(read_by="along")
    return Signs(used, free, seen, flow, wind, passes)


FILLET = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=90/10"


def test_a_wide_gap_is_held_against_half_the_thinner_plate() -> None:
    sheet = "plate=1/8in&plate2=1/4in&leg=1/8in&dia=0.035in&gas=75/25"
    found = signs(sheet, readings=WeldReadings(gap_found=1 / 32 * IN, read_by="along"))
    assert found.of("gap").near == pytest.approx(0.5)  # 1/32 of 1/16
    wide = signs(sheet, readings=WeldReadings(gap_found=1 / 8 * IN, read_by="along"))
    assert wide.of("gap").near == WORST == 1.5


def test_heat_is_held_against_the_most_the_plate_bears() -> None:
    found = signs(f"{FILLET}&heat_max=60kJ/in")
    outcome = found.used.outcome
    assert outcome is not None
    assert outcome.heat.value is not None
    assert found.of("heat").near == pytest.approx(outcome.heat.value / (60_000 / IN))
    thick = signs("plate=2in&leg=5/16in")
    if thick.used.plan.run.heats.high == float("inf"):
        assert thick.of("heat") == Sign(0.0)
    hot = signs(f"{FILLET}&heat_max=10kJ/in&wfs=500&travel=6")
    assert hot.of("heat").near == WORST


def test_current_a_little_under_spray_stands_between_modes() -> None:
    """Two less the current over the transition: 1 right at it, 0 at twice it."""
    wire, gas = wire_of("ER70S-6", "0.045in"), gas_of("90/10")
    for feed in ("290", "425", "520"):
        found = signs(f"{FILLET}&wfs={feed}")
        point, outcome = found.used.point, found.used.outcome
        assert point is not None
        assert outcome is not None
        if outcome.transfer == "globular":
            continue
        by_hand = 2 - point.current_a / transition_current(wire, gas)
        assert found.of("between-modes").near == pytest.approx(min(max(by_hand, 0.0), 1.0))
    assert 0 < signs(f"{FILLET}&wfs=425").of("between-modes").near < 0.9
    assert signs("plate=14ga&dia=0.030in&gas=75/25").of("between-modes") == Sign(0.0)
    assert signs("plate=3/8in&gas=CO2").of("between-modes") == Sign(1.0)
    shut = signs(f"{FILLET}&transfer=spray&machine_amps=60A")
    assert shut.used.outcome is None
    assert not shut.of("between-modes").seen


def test_short_circuit_on_plate_too_thick_is_cold() -> None:
    """On 3/16 in, where it may lap cold, a half; on one and a half times that all of it."""
    short = "leg=3/16in&transfer=short&dia=0.035in&gas=75/25"
    assert signs(f"plate=3/16in&{short}").of("cold-short").near == pytest.approx(0.5)
    assert signs(f"plate=9/32in&{short}").of("cold-short").near == pytest.approx(1.0)
    assert signs(f"plate=1/16in&{short}").of("cold-short").near == 0.0
    assert signs(f"plate=1in&{short}").of("cold-short").near == WORST
    assert signs(FILLET).of("cold-short").near == 0.0  # it sprays


def test_a_leg_is_held_against_the_largest_of_one_bead() -> None:
    """Four beads of a leg have each a leg half as large: metal goes with its square."""
    one, four = signs(FILLET), signs(FILLET, passes=4)
    most = one.used.job.position.practical_leg_m
    assert one.of("large-leg").near == pytest.approx(5 / 16 * IN / most)
    assert four.of("large-leg").near == pytest.approx(5 / 32 * IN / most)
    assert signs("joint=v&plate=1/2in").of("large-leg") == Sign(0.0)
    assert signs("plate=1in&leg=1in").of("large-leg").near == WORST


@pytest.mark.parametrize(
    ("query", "key", "near"),
    [
        ("plate=3/16in&position=3F-down&gas=75/25", "downhill", 1.0),
        (FILLET, "downhill", 0.0),
        ("plate=3/8in&position=3F-up&gas=75/25", "woven", 1.0),
        ("plate=3/8in&position=4F&gas=75/25", "woven", 1.0),
        (FILLET, "woven", 0.0),
        ("plate=1/4in&leg=1/4in", "thick", 0.25),
        ("plate=2in&leg=5/16in", "thick", 1.0),
        ("plate=1/4in&gas=75/25&dia=0.035in", "co2", 0.25),
        ("plate=3/8in&wire=E70C-6M", "cored", 1.0),
        (FILLET, "cored", 0.0),
        ("plate=3/8in&wire=ER70S-3", "lean-wire", 1.0),
        (FILLET, "lean-wire", 0.0),
    ],
)
def test_what_the_job_is_shows_as_it_is(query: str, key: str, near: float) -> None:
    sign = signs(query).of(key)
    assert sign.near == pytest.approx(near)
    assert sign.seen
    assert pytest.approx(IN) == HEAVY_PLATE_M


def test_thinner_wire_buckles_sooner() -> None:
    """Steps of what is common practice: only their order is meant."""
    near = [*THIN_WIRE.values()]
    assert near == sorted(near, reverse=True)
    assert len(set(near)) == len(near)
    assert (max(near), min(near)) == (1.0, 0.1)
    assert signs(FILLET).of("thin-wire").near == THIN_WIRE["0.045in"]


def test_what_was_seen_of_the_crater_and_felt_of_the_air() -> None:
    assert not signs(FILLET).of("crater").seen
    for depth, near in ((0.0, 0.0), (0.001, 1.0)):
        seen = WeldReadings(crater=depth, read_by="along")
        assert signs(FILLET, readings=seen).of("crater") == Sign(near)
    winds: tuple[tuple[Wind | None, float], ...] = (
        ("still", 0.0),
        ("windy", WORST),
        (None, UNSEEN),
    )
    for wind, near in winds:
        assert signs(FILLET, wind=wind).of("wind").near == near
    draft = signs(FILLET, wind="draft").of("wind").near
    assert UNSEEN < draft < 1  # told, yet less than what stops the work


def test_gas_is_held_against_its_room_and_goes_to_the_usual_flow() -> None:
    room = signs(FILLET).used.outcome
    assert room is not None
    low, high, usual = room.gas_flow.low, room.gas_flow.high, room.gas_flow.value
    assert low is not None
    assert high is not None
    assert usual is not None
    little, much = low * 0.95, high * 1.02
    for flow in (little, usual, much):
        found = signs(FILLET, flow=flow)
        share = (flow - low) / (high - low)
        more, less = found.of("gas+"), found.of("gas-")
        assert more.near == pytest.approx(min(max(share, 0.0), WORST))
        assert less.near == pytest.approx(min(max(1 - share, 0.0), WORST))
        assert more.target == (usual if flow > usual else None)
        assert less.target == (usual if flow < usual else None)
        for sign in (more, less):
            assert sign.setting is not None
            assert (sign.setting.value, sign.setting.low, sign.setting.high) == (flow, low, high)
    untold = signs(FILLET).of("gas-")
    assert (untold.near, untold.seen, untold.target) == (UNSEEN, False, usual)
    planned = signs(f"{FILLET}&transfer=spray&machine_amps=60A")
    assert planned.of("gas-").near == UNSEEN  # no setting, so no room of the flow


def test_a_setting_goes_to_the_plan_or_else_to_the_middle_of_its_room() -> None:
    found = signs(f"{FILLET}&wfs=425&travel=13&volts=28.6")
    travel, plan = found.used.settings.travel, found.free.settings.travel.value
    assert travel.low is not None
    assert travel.high is not None
    assert plan is not None
    fast = found.of("travel+")
    assert fast.target == pytest.approx(plan, abs=0.05 * IN / 60)
    assert fast.near == pytest.approx((13 * IN / 60 - travel.low) / (travel.high - travel.low))
    assert found.of("travel-").target is None  # a faster travel than it is runs the wrong way
    # The plan's own travel is out of the room: to the middle of it.
    away = replace(found.free.settings.travel, value=travel.high * 2)
    free = replace(found.free, settings=replace(found.free.settings, travel=away))
    middle = replace(found, free=free).of("travel+").target
    assert middle == pytest.approx((travel.low + travel.high) / 2, abs=0.05 * IN / 60)


def test_a_setting_without_a_room_shows_nothing() -> None:
    shut = signs(f"{FILLET}&transfer=spray&machine_amps=60A")
    assert shut.of("feed+") == Sign(UNSEEN, seen=False)
    found = signs(f"{FILLET}&travel=13")
    point = replace(found.used.settings.travel, low=0.005, high=0.005)
    assert replace(found, travel=point).of("travel+") == Sign(UNSEEN, seen=False)


def test_what_is_common_practice_is_as_told() -> None:
    """Our choices, told on Method: no source was found for any of them."""
    assert (UNSEEN, WORST, LEAST_MOVE) == (0.5, 1.5, 0.05)
    assert DRAFT == {"still": 0.0, "draft": 0.9, "windy": 1.5}
    assert THIN_WIRE == {
        "0.023in": 1.0, "0.030in": 0.8, "0.035in": 0.6, "0.040in": 0.4, "0.045in": 0.3,
        "0.052in": 0.2, "1/16in": 0.1,
    }  # fmt: skip


def test_the_gas_has_its_room_of_the_settings_used_or_else_of_the_plan() -> None:
    found = signs(FILLET, flow=33 * FT3_H)
    whole = found.of("gas-")
    assert whole.seen
    bare = replace(found.used, outcome=None)
    assert replace(found, used=bare).of("gas-") == whole
    assert replace(found, free=bare).of("gas-") == whole
    assert not replace(found, used=bare, free=bare).of("gas-").seen
    assert not replace(found, used=bare).of("between-modes").seen


def test_short_circuit_where_spray_is_at_hand_stands_between_no_modes() -> None:
    short = signs("plate=14ga&dia=0.030in&gas=90/10&transfer=short")
    assert short.used.plan.transfer == "short"
    assert short.of("between-modes") == Sign(0.0)


def test_a_fillet_on_a_groove_is_no_leg_of_one_bead() -> None:
    found = signs("joint=tee-bevel&plate=1/2in&leg=1/4in")
    assert found.of("large-leg") == Sign(0.0)


def test_the_value_to_go_to_is_on_a_step_and_may_be_an_end_of_the_room() -> None:
    found = signs(f"{FILLET}&wfs=425&travel=13")
    target = found.of("travel+").target
    assert target is not None
    tenths = target / (0.1 * IN / 60)
    assert tenths == pytest.approx(round(tenths), abs=1e-9)
    travel = found.used.settings.travel
    assert travel.low is not None
    assert travel.high is not None
    for value, end, key in (
        (travel.high, travel.low, "travel+"),
        (travel.low, travel.high, "travel-"),
    ):
        plan = replace(found.free.settings.travel, value=end)
        free = replace(found.free, settings=replace(found.free.settings, travel=plan))
        turned = replace(found, free=free, travel=replace(travel, value=value))
        assert turned.of(key).target == pytest.approx(end, abs=0.05 * IN / 60)
    # A plan slower than any travel here is no place to go: the middle of the room is.
    plan = replace(found.free.settings.travel, value=travel.low / 2)
    free = replace(found.free, settings=replace(found.free.settings, travel=plan))
    turned = replace(found, free=free, travel=replace(travel, value=travel.high))
    assert turned.of("travel+").target == pytest.approx(
        (travel.low + travel.high) / 2, abs=0.05 * IN / 60
    )
