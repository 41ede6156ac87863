"""Aims by hand: where a balanced start stands, what ease counts, what the ends ask."""

import pytest

from beadwright.job.job_query import read_query
from beadwright.phrases import Phrase
from beadwright.process.tip_to_work import tip_to_work
from beadwright.setting.aims import TIE, aimed_feed, aimed_point, balanced_feed, ease
from beadwright.setting.limits import Limit, Window
from beadwright.setting.plan import Plan, make_plan
from beadwright.setting.size_limits import bead_room
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.volts_limits import volts_room

IN_MIN = 0.0254 / 60
BASE = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&position=2F"


def plan_of(query: str) -> Plan:
    return make_plan(read_query(query).job)


def feed_at(plan: Plan, travel_in_min: float) -> float:
    """The feed that fills the bead at a travel, 97 % of it laid."""
    laid = travel_in_min * IN_MIN * plan.bead_m2 * 7850
    return laid / (plan.run.job.wire.linear_mass_kg_m * 0.97)


@pytest.mark.parametrize(
    ("query", "travel"), [("", 12.0), ("&travel_by=track", 16.0), ("&travel_by=robot", 24.0)]
)
@pytest.mark.parametrize("leg", ["5/32in", "3/16in", "1/4in", "7mm", "5/16in"])
def test_a_balanced_start(query: str, travel: float, leg: str) -> None:
    """The travel that is comfortable, held between a fifth and three fifths up the window."""
    plan = plan_of(f"{BASE}&leg={leg}{query}")
    low, high = plan.feeds.low, plan.feeds.high
    wanted = feed_at(plan, travel)
    expected = sorted((low + 0.2 * (high - low), wanted, low + 0.6 * (high - low)))[1]
    assert balanced_feed(plan) == pytest.approx(expected)


def test_one_balanced_start_is_the_comfortable_travel_itself() -> None:
    """7 mm: 24.5e-6 m², 1.2 times that as welded, at 12 in/min: some 355 in/min."""
    plan = plan_of(f"{BASE}&leg=7mm")
    assert balanced_feed(plan) == pytest.approx(feed_at(plan, 12.0))
    assert balanced_feed(plan) / IN_MIN == pytest.approx(355, rel=0.05)


@pytest.mark.parametrize(
    ("plate", "amps"), [("2mm", 78.74), ("2.5mm", 98.43), ("3mm", 118.11), ("3/8in", 187.5)]
)
def test_a_balanced_start_in_short_circuit(plate: str, amps: float) -> None:
    """1 A for each 0.001 in, up to 3/16 in; held as above."""
    plan = plan_of(
        f"wire=ER70S-6&dia=0.035in&gas=75/25&plate={plate}&leg=1/8in&position=2F&transfer=short"
    )
    feeds, run = plan.feeds, plan.run
    ends = [run.point(feeds.low + share * (feeds.high - feeds.low)).current_a
            for share in (0.2, 0.6)]  # fmt: skip
    expected = sorted((ends[0], amps, ends[1]))[1]
    assert run.point(balanced_feed(plan)).current_a == pytest.approx(expected, rel=1e-4)


def test_least_time_is_the_most_feed() -> None:
    plan = plan_of(f"{BASE}&leg=5/16in")
    assert aimed_feed(plan, "least-time") == plan.feeds.high


@pytest.mark.parametrize("aim", ["balanced", "least-time", "least-heat", "easiest"])
def test_at_a_travel_set_by_hand_the_joint_says_the_feed(aim: str) -> None:
    plan = plan_of(f"{BASE}&leg=5/16in&travel=10in/min&aim={aim}")
    assert aimed_feed(plan, plan.run.job.aim) == pytest.approx(feed_at(plan, 10.0))


def test_what_volts_the_aims_take() -> None:
    plan = plan_of(f"{BASE}&leg=5/16in")
    feed = 400 * IN_MIN
    line = plan.run.point(feed)
    room = volts_room(plan.run, line)
    assert aimed_point(plan, feed, "balanced").volts == pytest.approx(line.volts)
    assert aimed_point(plan, feed, "least-time").volts == pytest.approx(line.volts)
    assert aimed_point(plan, feed, "least-heat").volts == pytest.approx(room.low)
    assert room.low < aimed_point(plan, feed, "easiest").volts < room.high
    pulsed = plan_of(f"{BASE}&leg=5/16in&transfer=pulse")
    for aim in ("least-heat", "easiest"):
        here = pulsed.run.point(feed)
        assert aimed_point(pulsed, feed, aim).volts == here.volts


def share(low: float, high: float, value: float, width: float) -> float:
    return min(value - low, high - value) / width


@pytest.mark.parametrize("part", [0.1, 0.3, 0.5, 0.9])
@pytest.mark.parametrize("query", ["", "&transfer=pulse", "&gas=CO2"])
def test_ease_is_the_nearest_end_and_a_hundredth_of_the_whole(query: str, part: float) -> None:
    """Each end as a share of its window; the tip's by its usual range."""
    plan = plan_of(f"{BASE}&leg=5/16in{query}".replace("gas=90/10&", "") if "gas" in query
                   else f"{BASE}&leg=5/16in{query}")  # fmt: skip
    run = plan.run
    feed = plan.feeds.low + part * (plan.feeds.high - plan.feeds.low)
    point = run.point(feed)
    travel = run.filling(feed)
    travels: Window = travel_room(run, point, bead_room(run.job, plan.shape, plan.passes))
    tips = tip_room(run, point, travel)
    least, _, most = tip_to_work(run.job.wire, run.transfer)
    counted = [
        min(part, 1 - part),
        share(travels.low, travels.high, travel, travels.high - travels.low),
        share(tips.low, tips.high, run.tip_to_work_m, most - least),
    ]
    volts = None if run.transfer == "pulse" else volts_room(run, point)
    if volts is not None:
        counted.append(share(volts.low, volts.high, point.volts, volts.high - volts.low))
    expected = min(counted) + 0.01 * sum(counted) / len(counted)
    assert ease(plan, point, volts) == pytest.approx(expected)
    assert pytest.approx(0.01) == TIE


SEARCHED = [
    f"{BASE}&leg=5/16in",
    f"{BASE}&leg=1/4in",
    f"{BASE}&leg=3/16in",
    f"{BASE}&leg=5/16in&volts=27V",
    f"{BASE}&leg=5/16in&transfer=pulse",
    f"{BASE}&leg=1/4in&travel_by=robot",
    f"{BASE}&leg=5/16in&heat_max=40kJ/in",
    "wire=ER70S-6&dia=0.035in&gas=75/25&plate=2mm&leg=1/8in&position=2F&transfer=short",
    "wire=ER70S-6&dia=0.035in&gas=75/25&plate=1/8in&leg=3/16in&position=3F-down&transfer=short",
    "wire=ER70S-6&dia=0.045in&gas=CO2&plate=3/8in&leg=5/16in&position=2F",
    "wire=E70C-6M&dia=1/16in&gas=90/10&plate=1/2in&leg=3/8in&position=1F",
    "wire=E71T-1C&dia=0.045in&gas=CO2&plate=3/8in&leg=1/4in&position=3F-up",
]


def heats_of(plan: Plan) -> list[tuple[float, float]]:
    """Two hundred and forty feeds over the window, each with the heat its coolest volts put in."""
    feeds = [plan.feeds.place(step / 240) for step in range(241)]
    return [(plan.run.heat(aimed_point(plan, feed, "least-heat")), feed) for feed in feeds]


@pytest.mark.parametrize("query", SEARCHED)
def test_least_heat_is_found_among_all_feeds(query: str) -> None:
    """To a thirtieth of the window, which costs a quarter of a hundredth of the heat at most."""
    plan = plan_of(query)
    assert plan.open
    coolest, best = min(heats_of(plan))
    chosen = aimed_feed(plan, "least-heat")
    assert plan.feeds.low <= chosen <= plan.feeds.high
    assert plan.run.heat(aimed_point(plan, chosen, "least-heat")) <= coolest * 1.0025
    if best in (plan.feeds.low, plan.feeds.high):
        assert chosen == pytest.approx(best)


def ease_of(plan: Plan, feed: float) -> float:
    point = aimed_point(plan, feed, "easiest")
    return ease(plan, point, None if plan.transfer == "pulse" else volts_room(plan.run, point))


@pytest.mark.parametrize("query", SEARCHED)
def test_the_easiest_is_found_among_all_feeds(query: str) -> None:
    """No feed of two hundred and forty is easier by two hundredths of a window."""
    plan = plan_of(query)
    best = max(ease_of(plan, plan.feeds.place(step / 240)) for step in range(241))
    assert ease_of(plan, aimed_feed(plan, "easiest")) >= best - 0.02


@pytest.mark.parametrize("query", [one for one in SEARCHED if "volts" not in one])
@pytest.mark.parametrize("part", [0.2, 0.5, 0.8])
def test_the_easiest_volts_of_a_feed(query: str, part: float) -> None:
    """None of a hundred is easier by two hundredths; volts of pulse are the machine's own."""
    plan = plan_of(query)
    if plan.transfer == "pulse":
        return
    run, feed = plan.run, plan.feeds.place(part)
    room = volts_room(run, run.point(feed))
    best = max(ease(plan, run.point(feed, room.place(n / 100)), room) for n in range(101))
    assert ease(plan, aimed_point(plan, feed, "easiest"), room) >= best - 0.02


def test_a_window_without_width_has_no_ease() -> None:
    """Nor has a shut one: nothing is left on either side."""
    plan = plan_of(f"{BASE}&leg=5/16in")
    point = plan.run.point(plan.feeds.place(0.5))
    free = ease(plan, point, None)
    assert free > 0.05
    limit = Limit("any", Phrase("any"))
    for low, high in ((28.0, 28.0), (29.0, 28.0)):
        assert ease(plan, point, Window(low, high, limit, limit)) < 0.01


MANY = [
    f"wire={wire}&dia={dia}&gas={gas}&plate={plate}&leg={leg}&position={position}"
    for wire, dia, gas in (
        ("ER70S-6", "0.035in", "75/25"),
        ("ER70S-6", "0.045in", "90/10"),
        ("ER70S-6", "0.045in", "CO2"),
        ("E70C-6M", "0.045in", "90/10"),
        ("E71T-1M", "1/16in", "75/25"),
    )
    for plate, leg in (("3mm", "1/8in"), ("1/4in", "1/4in"), ("1/2in", "3/8in"))
    for position in ("1F", "3F-up")
]


@pytest.mark.parametrize("query", MANY)
def test_the_easiest_of_many_jobs(query: str) -> None:
    """No feed of forty is easier by two hundredths of a window."""
    plan = plan_of(query)
    if plan.open:
        best = max(ease_of(plan, plan.feeds.place(step / 40)) for step in range(41))
        assert ease_of(plan, aimed_feed(plan, "easiest")) >= best - 0.02
