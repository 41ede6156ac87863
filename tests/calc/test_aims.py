"""Aims: no spot of a fine grid over the window does better than the one chosen."""

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from beadwright.job.job_query import read_query
from beadwright.process.operating import Operating
from beadwright.setting.aim_results import aim_results
from beadwright.setting.aims import AIMS, CLOSE, aimed_feed, aimed_point, balanced_feed, ease
from beadwright.setting.limits import Window
from beadwright.setting.plan import Plan, make_plan
from beadwright.setting.volts_limits import volts_room
from tests.calc.jobs import Typed, dialled, jobs, query
from tests.told import in_words, told

EXAMPLE = {"plate": "3/8in", "leg": "5/16in"}
COLUMNS, ROWS = 24, 9


def planned(typed: Typed) -> Plan:
    return make_plan(read_query(query(typed)).job)


def grid(plan: Plan) -> list[tuple[Operating, Window | None]]:
    """Spots over the window of feed and volts, each with the room for its volts."""
    run, spots = plan.run, list[tuple[Operating, Window | None]]()
    for column in range(COLUMNS + 1):
        feed = plan.feeds.place(column / COLUMNS)
        line = run.point(feed)
        if run.transfer == "pulse":
            spots.append((line, None))
            continue
        room = volts_room(run, line)
        for row in range(ROWS + 1) if room.open else ():
            spots.append((run.point(feed, room.place(row / ROWS)), room))
    return spots


many = settings(max_examples=30, suppress_health_check=[HealthCheck.filter_too_much])


@many
@given(jobs())
def test_no_spot_lays_more_than_least_time(typed: Typed) -> None:
    plan = planned(typed)
    assume(plan.open)
    feed = aimed_feed(plan, "least-time")
    assert max(point.feed_m_s for point, _ in grid(plan)) <= feed * 1.0001


@many
@given(jobs())
def test_no_spot_draws_less_than_least_heat(typed: Typed) -> None:
    """The coolest arc: no spot of the grid draws less power."""
    plan = planned(typed)
    assume(plan.open)
    chosen = aimed_point(plan, aimed_feed(plan, "least-heat"), "least-heat")
    assert plan.feeds.low <= chosen.feed_m_s <= plan.feeds.high
    power = chosen.current_a * chosen.volts
    assert power <= 1.005 * min(point.current_a * point.volts for point, _ in grid(plan))


@many
@given(jobs())
def test_no_feed_is_farther_from_every_edge_than_the_easiest(typed: Typed) -> None:
    """On the mode's own volts, which the easiest keeps."""
    plan = planned(typed)
    assume(plan.open)

    def ease_at(feed: float) -> float:
        point = plan.run.point(feed)
        room = None if plan.transfer == "pulse" else volts_room(plan.run, point)
        return ease(plan, point, room)

    feed = aimed_feed(plan, "easiest")
    assert aimed_point(plan, feed, "easiest").volts == plan.run.point(feed).volts
    farthest = max(ease_at(plan.feeds.place(column / COLUMNS)) for column in range(COLUMNS + 1))
    assert ease_at(feed) >= farthest - CLOSE


@many
@given(jobs(), st.sampled_from(list(AIMS)))
def test_every_aim_stands_inside_every_window(typed: Typed, aim: str) -> None:
    answer = dialled(typed | {"aim": aim})
    assume(answer.open)
    for quantity in answer.settings.all():
        assert quantity.value is None or quantity.inside, quantity


@many
@given(jobs())
def test_what_the_buttons_promise_is_what_the_aims_give(typed: Typed) -> None:
    plan = planned(typed)
    assume(plan.open)
    for result in aim_results(plan):
        answer = dialled(typed | {"aim": result.aim})
        assert answer.settings.wire_feed.value == result.feed_m_s
        assert answer.settings.volts.value == result.volts
        outcome = answer.outcome
        assert outcome is not None
        assert outcome.heat.value == pytest.approx(result.heat_j_m, rel=1e-12)
        whole = outcome.arc_time.value
        assert whole == pytest.approx(result.weld_s * answer.job.welds, rel=1e-12)


def test_least_time_is_quicker_and_least_heat_cooler_than_the_start() -> None:
    results = {result.aim: result for result in aim_results(planned(EXAMPLE))}
    assert results["least-time"].weld_s < results["balanced"].weld_s
    assert results["least-heat"].heat_j_m < results["balanced"].heat_j_m


def test_a_shut_plan_has_no_aims() -> None:
    assert aim_results(planned(EXAMPLE | {"position": "3F-up", "transfer": "spray"})) == ()


def test_aims_leave_what_is_set_by_hand() -> None:
    for aim in AIMS:
        answer = dialled(EXAMPLE | {"aim": aim, "wfs": "350in/min", "volts": "28V"})
        assert answer.settings.wire_feed.value == pytest.approx(350 * 0.0254 / 60)
        assert answer.settings.volts.value == 28.0


@many
@given(jobs())
def test_balanced_keeps_a_twentieth_of_the_window_free(typed: Typed) -> None:
    plan = planned(typed)
    assume(plan.open)
    assert plan.feeds.place(0.05) <= balanced_feed(plan) <= plan.feeds.place(0.95)


def test_a_written_procedure_binds_the_heat() -> None:
    free = dialled(EXAMPLE)
    assert free.outcome is not None
    assert free.outcome.heat.value is not None
    kilojoules_per_inch = free.outcome.heat.value * 0.0254 / 1000
    held = dialled(EXAMPLE | {"heat_max": f"{0.7 * kilojoules_per_inch:.2f}kJ/in"})
    assert held.open
    assert held.plan.passes > free.plan.passes  # lighter beads
    assert held.outcome is not None
    assert held.outcome.heat.value is not None
    assert held.outcome.heat.value <= 0.7 * free.outcome.heat.value * 1.001
    assert (
        "procedure" in in_words(held.settings.travel.low_by) or held.settings.travel.low is not None
    )
    cold = dialled(EXAMPLE | {"heat_min": f"{3 * kilojoules_per_inch:.2f}kJ/in"})
    assert not cold.open
    assert any("under your procedure's" in told(note) for note in cold.notes)
