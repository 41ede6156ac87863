"""Dial in, whatever the job: settings inside their room, mass and heat that add up."""

from itertools import pairwise
from math import sqrt

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from beadwright.process.deposition import deposition_efficiency, feed_for_travel, laid_rate
from beadwright.setting.current_limits import current_limits
from beadwright.setting.dial_in import DialIn
from beadwright.setting.size_limits import section_room
from beadwright.sources import SOURCES
from tests.calc.jobs import LEGS, Typed, dialled, jobs, jobs_by_hand
from tests.told import in_words, told

DENSITY = 7850.0
IN_MIN = 0.0254 / 60
EXAMPLE: Typed = {
    "plate": "3/8in",
    "leg": "5/16in",
    "position": "2F",
    "wire": "ER70S-6",
    "dia": "0.045in",
    "gas": "90/10",
}


def cool(answer: DialIn) -> bool:
    """Whether the set point keeps thin plate from falling through."""
    return answer.settings.travel.inside


def same_passes(answers: list[DialIn]) -> bool:
    return len({answer.plan.passes for answer in answers}) == 1


@settings(max_examples=150)
@given(jobs_by_hand())
def test_every_job_is_answered(typed: Typed) -> None:
    answer = dialled(typed)
    for quantity in answer.settings.all():
        assert quantity.value is None or quantity.value > 0
        assert all(source in SOURCES for source in quantity.sources)
    assert all(told(note) and note.source in {"", *SOURCES} for note in answer.notes)
    assert answer.torch.source in SOURCES


@settings(max_examples=150)
@given(jobs())
def test_an_open_job_stands_inside_every_window(typed: Typed) -> None:
    answer = dialled(typed)
    assume(answer.open)
    wanted = [q for q in answer.settings.all() if q.name != "Travel speed" or cool(answer)]
    for quantity in wanted:
        assert quantity.inside or quantity.value is None, quantity
    if answer.plan.transfer == "pulse":
        assert answer.settings.volts.value is None
    point, currents = answer.point, answer.plan.currents
    assert point is not None
    assert currents.low * (1 - 1e-3) <= point.current_a <= currents.high * (1 + 1e-3)


@settings(max_examples=100)
@given(jobs_by_hand())
def test_what_is_laid_is_what_is_fed(typed: Typed) -> None:
    answer = dialled(typed)
    assume(answer.outcome is not None)
    job, found = answer.job, answer.outcome
    assert found is not None
    travel, feed = answer.settings.travel.value, answer.settings.wire_feed.value
    assert travel is not None
    assert feed is not None
    efficiency = deposition_efficiency(job.wire, job.gas, answer.plan.transfer)[1]
    laid = job.wire.linear_mass_kg_m * feed * efficiency
    assert found.laid.value == pytest.approx(laid, rel=1e-9)
    assert found.bead.value == pytest.approx(laid / DENSITY / travel, rel=1e-9)
    metal = laid / travel * answer.plan.passes
    assert found.metal.value == pytest.approx(metal, rel=1e-9)
    length = job.weld_length_m * job.welds
    assert found.wire_mass.value == pytest.approx(metal * length / efficiency, rel=1e-9)
    assert found.arc_time.value == pytest.approx(length * answer.plan.passes / travel, rel=1e-9)


@settings(max_examples=100)
@given(jobs())
def test_unforced_passes_fill_the_joint(typed: Typed) -> None:
    answer = dialled(typed)
    assume(answer.outcome is not None)
    assert answer.outcome is not None
    bead, leg = answer.outcome.bead.value, answer.outcome.leg.value
    assert bead is not None
    plan, section = answer.plan, answer.plan.shape.section_m2
    laid = bead * plan.passes
    if laid > section * (1 + 1e-9):  # one bead, as small as the arc lays it at its fastest
        assert plan.passes == 1
        assert bead == pytest.approx(plan.run.section_m2, rel=1e-9)
        assert bead <= section_room(answer.job, plan.shape)[0] * (1 + 1e-9)
    else:
        assert laid == pytest.approx(section, rel=1e-9)
    if answer.job.is_fillet:
        assert leg == pytest.approx(plan.shape.leg_m * sqrt(laid / section), rel=1e-9)


@settings(max_examples=100)
@given(jobs_by_hand())
def test_heat_is_volts_times_amps_over_travel(typed: Typed) -> None:
    answer = dialled(typed)
    assume(answer.outcome is not None)
    found, point, travel = answer.outcome, answer.point, answer.settings.travel.value
    assert found is not None
    assert point is not None
    assert travel is not None
    heat = point.volts * point.current_a / travel
    assert found.heat.value == pytest.approx(heat, rel=1e-9)
    assert found.heat_en.value == pytest.approx(0.8 * heat, rel=1e-9)
    assert found.current.value == point.current_a
    low, high = found.current.low, found.current.high
    assert low is not None
    assert high is not None
    assert low < point.current_a < high


@settings(max_examples=60)
@given(jobs(joints=("tee", "lap")))
def test_a_larger_leg_is_traveled_slower_at_the_same_feed(typed: Typed) -> None:
    answers = [dialled(typed | {"leg": leg, "wfs": "290in/min"}) for leg in ("3/16in", "1/4in")]
    assume(same_passes(answers))
    travels = [answer.settings.travel.value or 0 for answer in answers]
    assert travels[1] < travels[0]


@settings(max_examples=60)
@given(jobs())
def test_more_feed_is_traveled_faster(typed: Typed) -> None:
    answers = [dialled(typed | {"wfs": f"{feed}in/min"}) for feed in (200, 250, 300)]
    assume(same_passes(answers) and len({a.plan.transfer for a in answers}) == 1)
    travels = [answer.settings.travel.value or 0 for answer in answers]
    assert travels[0] < travels[1] < travels[2]
    assert travels[1] / travels[0] == pytest.approx(1.25, rel=1e-9)


@settings(max_examples=40)
@given(jobs(joints=("tee",)))
def test_a_larger_leg_never_takes_fewer_passes(typed: Typed) -> None:
    legs = ["1/8in", "3/16in", "1/4in", "5/16in", "3/8in", "1/2in", "5/8in", "3/4in"]
    answers = [dialled(typed | {"leg": leg}) for leg in legs]
    holding = [a for a in answers if a.open and cool(a)]
    for mode in {a.plan.transfer for a in holding}:
        passes = [a.plan.passes for a in holding if a.plan.transfer == mode]
        assert passes == sorted(passes)


@settings(max_examples=80)
@given(jobs(), st.sampled_from([60, 90, 120, 160, 220, 300]))
def test_a_machine_is_never_asked_for_more_than_it_gives(typed: Typed, amps: int) -> None:
    answer = dialled(typed | {"machine_amps": f"{amps}A"})
    assert answer.plan.currents.high <= amps
    if answer.open:
        assert answer.point is not None
        assert answer.point.current_a <= amps * (1 + 1e-3)  # volts settle on a tenth


@pytest.mark.parametrize(
    ("key", "typed", "si"),
    [
        ("wire_feed", "wfs=300in/min", 300 * IN_MIN),
        ("volts", "volts=26.5V", 26.5),
        ("tip_to_work", "ctwd=5/8in", 0.015875),
        ("travel", "travel=12in/min", 12 * IN_MIN),
    ],
)
def test_each_of_the_four_can_be_set_by_hand(key: str, typed: str, si: float) -> None:
    name, _, value = typed.partition("=")
    free, fixed = dialled(EXAMPLE), dialled(EXAMPLE | {name: value})
    for quantity in fixed.settings.all():
        mine = quantity is getattr(fixed.settings, key)
        assert quantity.by_hand == mine
        assert quantity.value is not None
        assert quantity.low is not None
        assert quantity.high is not None
        if mine:
            assert quantity.value == pytest.approx(si, rel=1e-12)
    assert getattr(free.settings, key).value != pytest.approx(si, rel=1e-6)


def test_feed_and_travel_by_hand_leave_the_leg_to_follow() -> None:
    answer = dialled(EXAMPLE | {"wfs": "300in/min", "travel": "7in/min"})
    job = answer.job
    laid = laid_rate(job.wire, 300 * IN_MIN, answer.plan.efficiency[1])
    assert answer.outcome is not None
    assert answer.outcome.bead.value == pytest.approx(laid / DENSITY / (7 * IN_MIN))
    leg, asked = answer.outcome.leg.value, answer.plan.shape.leg_m
    assert leg is not None
    assert leg > asked


def test_travel_by_hand_sets_the_feed_that_fills_the_joint() -> None:
    answer = dialled(EXAMPLE | {"travel": "12in/min"})
    plan = answer.plan
    feed = feed_for_travel(answer.job.wire, 12 * IN_MIN, plan.bead_m2, plan.efficiency[1])
    assert answer.settings.wire_feed.value == pytest.approx(feed, rel=1e-12)


def test_farther_out_by_hand_draws_less_current() -> None:
    currents = [
        answer.point.current_a
        for tip in ("1/2in", "5/8in", "3/4in", "1in")
        if (answer := dialled(EXAMPLE | {"wfs": "300in/min", "ctwd": tip})).point is not None
    ]
    assert len(currents) == 4
    assert all(one > other for one, other in pairwise(currents))


@settings(max_examples=100)
@given(jobs())
def test_limits_of_the_current_are_all_kept(typed: Typed) -> None:
    answer = dialled(typed)
    for limit in current_limits(answer.job, answer.plan.transfer):
        assert answer.plan.currents.low >= limit.low
        assert answer.plan.currents.high <= limit.high


@pytest.mark.parametrize("leg", LEGS)
def test_units_change_nothing_but_the_steps(leg: str) -> None:
    us, si = (dialled(EXAMPLE | {"leg": leg, "units": units}) for units in ("us", "si"))
    assert us.plan.passes == si.plan.passes
    assert us.plan.shape == si.plan.shape
    assert us.plan.feeds.low == pytest.approx(si.plan.feeds.low, rel=1e-12)
    one, other = us.settings.wire_feed.value, si.settings.wire_feed.value
    assert one == pytest.approx(other or 0, rel=0.03)


def section_at(answer: DialIn, travel: float) -> float:
    """Weld metal of all passes at a travel [m²], by conservation of mass."""
    feed = answer.settings.wire_feed.value or 0
    laid = answer.job.wire.linear_mass_kg_m * feed * answer.plan.efficiency[1]
    return laid / DENSITY / travel * answer.plan.passes


def test_travel_room_of_a_fillet_is_a_sixteenth_over_to_a_flat_face() -> None:
    travel = dialled(EXAMPLE).settings.travel
    answer = dialled(EXAMPLE)
    assert travel.low is not None
    assert travel.high is not None
    # 5/16 in leg, as welded 1.2 times ½·z², worked by hand: 3/8 in at most, flat at least.
    assert section_at(answer, travel.low) == pytest.approx(1.2 * 0.009525**2 / 2, rel=1e-3)
    assert section_at(answer, travel.high) == pytest.approx(0.0079375**2 / 2, rel=1e-3)


def test_travel_room_of_a_butt_is_an_eighth_of_crown_to_half_the_usual() -> None:
    answer = dialled(
        {"joint": "square", "plate": "1/8in", "gap": "1/16in", "gas": "75/25", "dia": "0.035in",
         "travel_by": "robot", "position": "1G"}
    )  # fmt: skip
    travel = answer.settings.travel
    assert travel.low is not None
    assert travel.high is not None
    face, gap = 0.0015875 + 2 * 0.003, 0.0015875 * 0.003175
    most = gap + 2 / 3 * face * 0.003175
    least = gap + 2 / 3 * face * 0.0015875 / 2
    assert section_at(answer, travel.high) == pytest.approx(least, rel=1e-6)
    assert section_at(answer, travel.low) <= most * (1 + 1e-6)
    if in_words(travel.low_by).startswith("slower heaps"):
        assert section_at(answer, travel.low) == pytest.approx(most, rel=1e-6)


@pytest.mark.parametrize("position", ["4F", "3F-down"])
def test_the_largest_leg_the_form_takes_is_answered_everywhere(position: str) -> None:
    dialled({"plate": "1in", "leg": "2in", "position": position})


@pytest.mark.parametrize("gas", ["90/10", "CO2"])
def test_open_volts_are_volts_the_machine_gives(gas: str) -> None:
    answer = dialled(EXAMPLE | {"gas": gas, "machine_volts": "18V"})
    volts = answer.settings.volts
    assert not answer.open or volts.inside


def test_open_is_cool_enough_for_thin_plate() -> None:
    answer = dialled({"plate": "10ga", "leg": "3/4in", "gas": "85/15", "transfer": "short"})
    assert not answer.open or cool(answer)


def test_globular_is_planned_where_the_arc_is_globular() -> None:
    answer = dialled(
        {"joint": "corner", "plate": "1/2in", "dia": "0.030in", "gas": "CO2", "travel_by": "track"}
    )
    assert answer.outcome is not None
    assert answer.outcome.transfer == answer.plan.transfer


def test_the_low_end_of_a_pulse_window_is_not_explained_by_the_top() -> None:
    answer = dialled({"plate": "16ga", "position": "3F-up", "transfer": "pulse", "dia": "0.035in"})
    assert "usual top" not in in_words(answer.settings.wire_feed.low_by)
