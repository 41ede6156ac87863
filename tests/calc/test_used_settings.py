"""How far the settings used may turn: travel, feed, both, or neither and why."""

from __future__ import annotations

from dataclasses import replace

import pytest

from beadwright.api import answer
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.inspected import inspected
from beadwright.inspection.size_change import SizeChange, laid_settings
from beadwright.inspection.used_settings import UsedSettings, used_settings
from beadwright.job.job import ByHand
from beadwright.setting.dial_in import dial_in
from tests.told import in_words

IPM = 0.0254 / 60
BOTH = (
    "plate=3/16in&leg=5/16in&position=3F-up&leg_found=0.201in&leg2_found=0.201in"
    "&machine_amps=300A&travel=9",
    "plate=1/2in&leg=1/8in&position=1F&leg_found=0.078in&leg2_found=0.078in&wire=E70C-6M&wfs=560",
    "plate=1/4in&leg=1/4in&position=2F&leg_found=0.345in&leg2_found=0.345in&heat_max=30kJ/in"
    "&travel=23",
    "plate=1/4in&leg=3/8in&position=1F&leg_found=0.548in&leg2_found=0.548in&machine_amps=300A"
    "&wfs=280",
)
SINGLE = (
    "plate=3/16in&leg=1/4in&position=4F&leg_found=0.162in&leg2_found=0.162in&heat_max=30kJ/in",
    "plate=3/8in&leg=3/8in&position=2F&leg_found=0.533in&leg2_found=0.533in&wfs=480",
    "plate=1/4in&leg=1/4in&leg_found=0.233in&leg2_found=0.233in&wfs=370&volts=27.7&travel=14.5",
    "plate=3/16in&leg=3/16in&position=3F-up&leg_found=0.161in&leg2_found=0.161in&wire=E70C-6M",
    "plate=3/8in&leg=5/16in&position=3F-down&leg_found=0.461in&leg2_found=0.461in"
    "&machine_amps=220A&wfs=340&travel=18",
    "units=si&plate=8mm&leg=6mm&leg_found=5.4&leg2_found=5.4&wfs=9m/min&travel=400",
)


def inspect(query: str) -> InspectAnswer:
    return answer("inspect", query)


def change_of(found: InspectAnswer) -> SizeChange:
    assert found.change is not None
    return found.change


def settings_of(query: str) -> UsedSettings:
    found = inspect(query)
    free = dial_in(replace(found.weld.job, by_hand=ByHand()))
    passes = found.query.passes or free.plan.passes
    planned = used_settings(found.weld, found.used, passes)
    assert planned is not None
    return laid_settings(planned)


@pytest.mark.parametrize("query", [*BOTH, *SINGLE])
def test_each_change_lays_the_metal_asked_and_no_more_than_a_step_beyond(query: str) -> None:
    """Metal goes with feed over travel: nothing else of the hand or the wire changes."""
    change = change_of(inspect(query))
    steps = (0.005 / 60, 0.05 / 60) if query.startswith("units=si") else (0.1 * IPM, 5 * IPM)
    for way in change.changes:
        more = way.feed_m_s / way.travel_m_s / (change.feed_m_s / change.travel_m_s)
        assert more >= change.metal * (1 - 1e-9)
        slack = (1 + steps[1] / way.feed_m_s) * (1 + steps[0] / way.travel_m_s)
        assert more <= change.metal * slack
        assert {"travel": way.feed_m_s == change.feed_m_s,
                "wire_feed": way.travel_m_s == change.travel_m_s,
                "both": way.feed_m_s != change.feed_m_s and way.travel_m_s != change.travel_m_s,
                }[way.turned]  # fmt: skip
    held = settings_of(query)
    for way in change.changes:
        if way.turned == "travel":
            assert held.travels().low <= way.travel_m_s <= held.travels().high
        else:
            room = held.feeds(way.travel_m_s)
            assert room.kept
            assert room.window.low <= way.feed_m_s <= room.window.high


@pytest.mark.parametrize("query", BOTH)
def test_where_neither_reaches_travel_goes_to_its_end_and_feed_does_the_rest(query: str) -> None:
    change, held = change_of(inspect(query)), settings_of(query)
    [way] = change.changes
    assert (way.turned, way.share) == ("both", 1.0)
    room, wanted = held.travels(), change.travel_m_s / change.metal
    assert not room.low <= wanted <= room.high
    end = room.low if wanted < room.low else room.high
    assert way.travel_m_s == end
    # Feed alone at the travel used would have to leave its own room.
    feeds = held.feeds(change.travel_m_s)
    alone = change.feed_m_s * change.metal
    assert not feeds.kept or not feeds.window.low <= alone <= feeds.window.high
    assert change.blocked == ()
    assert change.instead is None


@pytest.mark.parametrize(
    ("query", "first", "second"),
    [
        ("plate=1/2in&leg=1/4in&position=3F-down&leg_found=0.332in&leg2_found=0.332in"
         "&heat_max=30kJ/in&wfs=480", "travel-stops-high", "feed-stops-low"),
        ("plate=3/16in&leg=1/4in&position=3F-up&leg_found=0.197in&leg2_found=0.197in&wire=E70C-6M"
         "&wfs=390", "travel-stops-low", "feed-stops-high"),
        ("plate=1/8in&leg=1/4in&position=2F&leg_found=0.147in&leg2_found=0.147in&wfs=490&travel=5",
         "travel-stops-low", "feed-fights"),
    ],
)  # fmt: skip
def test_what_stops_a_change_is_named_on_its_own_side(query: str, first: str, second: str) -> None:
    found = inspect(query)
    change, held = change_of(found), settings_of(query)
    assert change.changes == ()
    assert [each.key for each in change.blocked] == [f"inspection.{first}", f"inspection.{second}"]
    more = change.metal > 1
    room = held.travels()
    limit = room.low_limit if more else room.high_limit
    assert in_words(limit.why) in in_words(change.blocked[0])
    feeds = held.feeds(change.travel_m_s)
    if second == "feed-fights":
        assert feeds.heat_fight is not None
        why = feeds.heat_fight.why
    else:
        why = (feeds.window.high_limit if more else feeds.window.low_limit).why
    assert in_words(why) in in_words(change.blocked[1])


def test_too_few_passes_are_told_though_a_slower_travel_would_hold_all_else() -> None:
    """A leg of 0.4 in horizontal is over the 3/8 in that the code takes in one pass."""
    query = "plate=3/4in&leg=0.4in&passes=1&leg_found=0.388in&leg2_found=0.388in&wfs=450"
    held = settings_of(query)
    assert held.least_passes() > held.passes == 1
    room = held.travels()
    assert room.low <= held.travel_m_s / 1.06 <= room.high
    assert [*held.changes(1.06)] == []
    [told] = held.blocked(1.06)
    assert told.key == "inspection.too-few-passes"


def test_a_share_is_of_the_room_of_what_is_turned() -> None:
    query = SINGLE[2]
    change, held = change_of(inspect(query)), settings_of(query)
    shares = {way.turned: way for way in change.changes}
    travel, feed = shares["travel"], shares["wire_feed"]
    room = held.travels()
    assert travel.share == pytest.approx(
        (change.travel_m_s - travel.travel_m_s) / (room.high - room.low)
    )
    wide = inspect(query).used.settings.wire_feed
    assert wide.low is not None
    assert wide.high is not None
    assert feed.share == pytest.approx((feed.feed_m_s - change.feed_m_s) / (wide.high - wide.low))
    assert change.changes[0].share <= change.changes[1].share


def test_untimed_travel_is_mended_first() -> None:
    """The feed is then the plan's own: the travel is what went astray."""
    query = (
        "plate=3/16in&leg=1/4in&position=3F-down&leg_found=0.241in&leg2_found=0.241in&wire=E70C-6M"
    )
    change = change_of(inspect(query))
    assert not change.timed
    assert [way.turned for way in change.changes] == ["travel", "wire_feed"]


def test_several_beads_share_the_joint() -> None:
    """Untimed, each of two beads fills half of it: twice the travel of one at the same feed."""
    weld = inspected(answer("dial-in", "plate=3/8in&leg=5/16in").dialled.job,
                     inspect("plate=3/8in&leg=5/16in").weld.readings)  # fmt: skip
    dialled = answer("dial-in", "plate=3/8in&leg=5/16in").dialled
    one, two = (used_settings(weld, dialled, passes) for passes in (1, 2))
    assert one is not None
    assert two is not None
    assert two.travel_m_s == pytest.approx(2 * one.travel_m_s)
    assert two.bead_m2 * 2 == pytest.approx(one.bead_m2) == pytest.approx(weld.shape.section_m2)


def test_the_machine_s_own_volts_are_none_in_pulse() -> None:
    query = ("plate=1/4in&leg=1/4in&transfer=pulse&leg_found=0.22in&leg2_found=0.22in&wfs=330in/min"
             "&travel=14")  # fmt: skip
    change = change_of(inspect(query))
    assert change.volts is None
    assert change.changes
    assert all(way.volts is None for way in change.changes)
    assert settings_of(query).own_volts is None


def test_between_the_last_step_and_the_end_of_the_room_what_is_wanted_is_told() -> None:
    """A step further would leave the room: no dial stands there, but travel and feed may."""
    held = settings_of(SINGLE[2])
    slow = held.travels().low * (1 + 1e-6)
    [travel] = [way for way in held.changes(held.travel_m_s / slow) if way.turned == "travel"]
    assert travel.travel_m_s == pytest.approx(slow)
    much = held.feeds(held.travel_m_s).window.high * (1 - 1e-6)
    [feed] = [way for way in held.changes(much / held.point.feed_m_s) if way.turned == "wire_feed"]
    assert feed.feed_m_s == pytest.approx(much)


def test_a_feed_whose_heat_fights_is_no_change_though_its_window_is_open() -> None:
    held = settings_of("plate=1/8in&leg=1/4in&position=2F&leg_found=0.147in&leg2_found=0.147in"
                       "&wfs=490&travel=5")  # fmt: skip
    found = held.feeds(held.travel_m_s)
    assert not found.kept
    middle = (found.window.low + found.window.high) / 2
    ways = held.changes(middle / held.point.feed_m_s)
    assert "wire_feed" not in {way.turned for way in ways}


def test_a_little_more_metal_is_blocked_on_the_side_of_more() -> None:
    held = settings_of("plate=3/16in&leg=1/4in&position=3F-up&leg_found=0.197in&leg2_found=0.197in"
                       "&wire=E70C-6M&wfs=390")  # fmt: skip
    more, less = held.blocked(1.02), held.blocked(0.98)
    assert [each.key for each in more] == [
        "inspection.travel-stops-low", "inspection.feed-stops-high",
    ]  # fmt: skip
    assert [each.key for each in less] == [
        "inspection.travel-stops-high", "inspection.feed-stops-low",
    ]  # fmt: skip


@pytest.mark.parametrize(("wanted", "set_to"), [(400, 400), (400.05, 405), (399.99, 400)])
def test_a_feed_goes_to_the_next_step_of_the_dial(wanted: float, set_to: float) -> None:
    """Steps of 5 in/min: a hundredth of a step over one is the next, less would lay too little."""
    held = settings_of(SINGLE[2])
    ways = held.changes(wanted * IPM / held.point.feed_m_s)
    [feed] = [way for way in ways if way.turned == "wire_feed"]
    assert feed.feed_m_s / IPM == pytest.approx(set_to, rel=1e-9)
