"""Adapters between print or hand arithmetic and the windows: limits, rooms, modes, set points.

Factors are typed here. Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from collections.abc import Callable
from math import inf

from beadwright.job.job import Aim, Job
from beadwright.job.job_query import read_query
from beadwright.layers import bead_limits
from beadwright.phrases import Phrase
from beadwright.process import published_range
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.results import Quantity
from beadwright.root import crossing
from beadwright.setting.aim_results import aim_results
from beadwright.setting.aims import aimed_feed
from beadwright.setting.current_limits import current_limits
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.feed_limits import feed_room
from beadwright.setting.heat_limits import heat_ceiling_j_m, heat_limits
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.plan import Plan, make_plan, planned_transfer
from beadwright.setting.set_point import stepped
from beadwright.setting.size_limits import bead_room, section_room
from beadwright.setting.tip_limits import tip_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.volts_limits import mode_volts, volts_room
from beadwright.setting.ways_out import ways_out
from beadwright.setting.window_map import window_map
from beadwright.words.wording import worded

INCH = 0.0254
Two = tuple[float, float]


def _job(query: str) -> Job:
    return read_query(query).job


def _plan(query: str) -> Plan:
    return make_plan(_job(query))


def _answer(query: str) -> DialIn:
    return dial_in(_job(query))


def _ends(window: Window, unit: float) -> Two:
    return window.low / unit, window.high / unit


# Current


def current_limit_a(query: str, mode: Transfer, key: str) -> float | str:
    """The end a limit sets, or that there is no such limit."""
    found = [limit for limit in current_limits(_job(query), mode) if limit.key == key]
    if not found:
        return "none"
    return found[0].high if found[0].high < inf else found[0].low


def plate_room_a(plate_mm: float) -> Two:
    """What the plate alone leaves of the current."""
    job = _job(f"plate={plate_mm}mm")
    of_plate = [
        one for one in current_limits(job, "spray") if one.key in ("burn-through", "fusion")
    ]
    return _ends(tightest_window(of_plate), 1.0)


def published_current_a(kind: Kind, size: str) -> Two:
    found = published_range.published_currents(kind, size)
    assert found is not None
    return found


# Heat


def heat_ceiling_kj_mm(plate: str) -> float | str:
    most = heat_ceiling_j_m(_job(f"plate={plate}"))
    return "none" if most == inf else most / 1e6


def heat_limit_kj_in(query: str, key: str) -> float | str:
    found = [limit for limit in heat_limits(_job(query)) if limit.key == key]
    if not found:
        return "none"
    return (found[0].high if found[0].high < inf else found[0].low) * INCH / 1000


def heat_on_travel_end_kj_in(query: str, end: str) -> float:
    """Volts × amps × 60 ÷ travel, at the end of the travel's window, from what is shown."""
    answer = _answer(query)
    assert answer.outcome is not None
    volts, amps = answer.settings.volts.value, answer.outcome.current.value
    travel: float | None = getattr(answer.settings.travel, end)
    assert volts is not None
    assert amps is not None
    assert travel is not None
    return volts * amps * 60 / (travel / INCH * 60) / 1000


# Size


def largest_in2(query: str) -> float:
    plan = _plan(query)
    return section_room(plan.run.job, plan.shape)[0] / INCH**2


def smallest_in2(query: str) -> float:
    plan = _plan(query)
    return section_room(plan.run.job, plan.shape)[1] / INCH**2


def bead_of_in2(query: str, passes: int) -> Two:
    plan = _plan(query)
    most, least = bead_room(plan.run.job, plan.shape, passes)
    return least / INCH**2, most / INCH**2


def planned_bead_in2(position: str) -> float:
    return bead_limits.largest_bead_m2(_job(f"position={position}")) / INCH**2


def plan_bead_in2(query: str) -> float:
    return _plan(query).bead_m2 / INCH**2


def root_is_shorted(query: str) -> str:
    plan = _plan(query)
    shorted = bead_limits.shorted_root(plan.run.job, plan.shape, plan.transfer)
    return "yes" if shorted else "no"


# Windows of the four settings


def feed_in_min(query: str) -> Two:
    plan = _plan(query)
    room = feed_room(plan.run, bead_room(plan.run.job, plan.shape, plan.passes))
    assert room.window == plan.feeds
    return _ends(plan.feeds, INCH / 60)


def feed_bound_by(query: str, end: str) -> str:
    window = _plan(query).feeds
    limit: Limit = getattr(window, f"{end}_limit")
    return limit.key


def volts(query: str, feed_in_min: float) -> Two:
    plan = _plan(query)
    return _ends(volts_room(plan.run, plan.run.point(feed_in_min * INCH / 60)), 1.0)


def volts_of_mode(query: str, current_a: float) -> Two:
    return mode_volts(_plan(query).run, current_a)


def travel_in_min(query: str, feed_in_min: float) -> Two:
    plan = _plan(query)
    point = plan.run.point(feed_in_min * INCH / 60)
    rooms = bead_room(plan.run.job, plan.shape, plan.passes)
    return _ends(travel_room(plan.run, point, rooms), INCH / 60)


def travel_end_in_min(query: str, feed_in_min: float, end: str) -> float:
    return travel_in_min(query, feed_in_min)[("low", "high").index(end)]


def tip_end_in(query: str, feed_in_min: float, volts_at: float, end: str) -> float:
    plan = _plan(query)
    point = plan.run.point(feed_in_min * INCH / 60, volts_at)
    room = tip_room(plan.run, point, plan.run.travel(point.feed_m_s))
    return _ends(room, INCH)[("low", "high").index(end)]


def inside(query: str) -> str:
    """Which of the four settings stand outside their windows."""
    settings: tuple[Quantity, ...] = _answer(query).settings.all()
    return ", ".join(one.name for one in settings if one.value is None or not one.inside) or "all"


# The run


def laid_lb_h(query: str, feed_in_min: float) -> float:
    return _plan(query).run.laid(feed_in_min * INCH / 60) / 0.45359237 * 3600


def filling_in_min(query: str, feed_in_min: float) -> float:
    run = _plan(query).run
    assert run.filling(feed_in_min * INCH / 60) == run.travel(feed_in_min * INCH / 60)
    return run.filling(feed_in_min * INCH / 60) / INCH * 60


def heat_kj_in(query: str, feed_in_min: float, volts_at: float, travel: float) -> float:
    """Heat over the current of the point, so that volts and travel alone are left [kJ/in per A]."""
    run = _plan(query).run
    point = run.point(feed_in_min * INCH / 60, volts_at)
    return run.heat(point, travel * INCH / 60) / point.current_a * INCH / 1000


_LINES: dict[str, Callable[[float], float]] = {
    "square": lambda x: x * x,
    "cube": lambda x: x * x * x,
    "fourth": lambda x: x * x * x * x,
    "reciprocal": lambda x: 1 / x,
    "saturating": lambda x: x / (1 + x),
}
"""Without functions of a mathematics library, whose last digits differ by machine."""


def crosses_at(line: str, low: float, high: float, level: float) -> float:
    return crossing(_LINES[line], low, high, level)


# The plan


def mode(query: str) -> str:
    transfer, _, refused = planned_transfer(_job(query))
    return "refused" if refused else transfer


def passes(query: str) -> int:
    plan = _plan(query)
    assert plan.open
    return plan.passes


def opens(query: str) -> str:
    """Whether any setting holds every limit; if not, that a way out is looked for."""
    answer = _answer(query)
    drawn = window_map(answer)
    assert answer.open or not drawn.window
    if not answer.open:
        ways_out(answer.job)
    return "yes" if answer.open else "no"


def fight_beside(query: str) -> str:
    """The field a fight of heat limits is said beside."""
    [note] = [
        n
        for n in _answer(query).notes
        if worded(n.phrase, "us").startswith("Two limits conflict: a bead")
    ]
    return note.field


# The set point


def stepped_in(value: float, measure: str, low: float, high: float) -> float:
    unit = INCH / 60 if measure in ("wire_feed", "travel") else 1.0
    window = tightest_window([Limit("room", Phrase(""), low * unit, high * unit)])
    return stepped(value * unit, measure, "us", window) / unit


def set_at(query: str, what: str) -> float:
    found: Quantity = getattr(_answer(query).settings, what)
    assert found.value is not None
    return found.value if what == "volts" else found.value / (INCH / 60)


def aimed_share(query: str, aim: Aim) -> float:
    """How far up the feed's window an aim stands."""
    plan = _plan(query)
    assert len(aim_results(plan)) == 4
    return (aimed_feed(plan, aim) - plan.feeds.low) / (plan.feeds.high - plan.feeds.low)
