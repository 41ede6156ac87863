"""The plane of feed and volts: drawn where the numbers are."""

import pytest
from hypothesis import assume, given, settings
from shapely import Point, Polygon

from beadwright.process.operating import at_feed
from beadwright.process.transfer import spray_refused
from beadwright.process.transfer_regions import transfer_at
from beadwright.setting.dial_in import DialIn
from beadwright.setting.window_map import WindowMap, window_map
from tests.calc.jobs import Typed, dialled, jobs, jobs_by_hand
from tests.told import in_words

SCALE = 100.0
"""Feed [m/s] is some hundredths, volts some tens: drawn alike so distances mean something."""


def outline(points: tuple[tuple[float, float], ...]) -> Polygon:
    return Polygon([(feed * SCALE, volts) for feed, volts in points])


def drawn(typed: Typed) -> tuple[DialIn, WindowMap]:
    answer = dialled(typed)
    return answer, window_map(answer)


@settings(max_examples=80)
@given(jobs_by_hand())
def test_everything_drawn_lies_on_the_axes(typed: Typed) -> None:
    answer, plane = drawn(typed)
    assume(answer.point is None or answer.point.feed_m_s >= 0.01)
    assert 0 < plane.feeds[0] < plane.feeds[1]
    assert plane.volts[0] < plane.volts[1]
    corners = [corner for region in plane.regions for corner in region.outline]
    for feed, volts in (*corners, *plane.window, *([plane.point] if plane.point else [])):
        assert plane.feeds[0] * (1 - 1e-9) <= feed <= plane.feeds[1] * (1 + 1e-9)
        assert plane.volts[0] <= volts <= plane.volts[1]


def test_a_crawling_feed_is_still_on_the_axis() -> None:
    _, plane = drawn({"plate": "24ga", "dia": "0.030in", "travel": "1in/min"})
    assert plane.point is not None
    assert plane.feeds[0] <= plane.point[0]


@settings(max_examples=80)
@given(jobs())
def test_the_set_point_stands_in_the_window(typed: Typed) -> None:
    answer, plane = drawn(typed)
    assume(answer.open and answer.plan.transfer != "pulse")
    assert plane.point is not None
    window = outline(plane.window)
    # Edges are chords of curves and volts settle on a tenth.
    assert window.buffer(0.15).contains(Point(plane.point[0] * SCALE, plane.point[1]))


@settings(max_examples=60)
@given(jobs())
def test_a_shut_window_is_not_drawn(typed: Typed) -> None:
    answer, plane = drawn(typed)
    assert (plane.window == ()) == (not answer.open or answer.plan.transfer == "pulse")


@settings(max_examples=60)
@given(jobs())
def test_spray_is_drawn_only_where_wire_and_gas_carry_it(typed: Typed) -> None:
    answer, plane = drawn(typed)
    names = [region.transfer for region in plane.regions]
    refused = spray_refused(answer.job.wire, answer.job.gas)
    assert names == ["short", "globular", *([] if refused else ["spray"])]


@pytest.mark.parametrize("share", [0.1, 0.35, 0.6, 0.85])
@pytest.mark.parametrize("gas", ["90/10", "80/20", "CO2"])
def test_a_region_is_the_mode_the_core_gives_there(share: float, gas: str) -> None:
    """The topmost region at a spot names the mode of that feed and those volts."""
    answer, plane = drawn({"plate": "3/8in", "leg": "5/16in", "gas": gas, "transfer": "auto"})
    low, high = plane.feeds
    feed = low + (high - low) * share
    regions = [(r.transfer, outline(r.outline)) for r in plane.regions]
    job = answer.job
    mode = answer.plan.transfer
    current = at_feed(job.wire, job.gas, mode, feed, answer.plan.tip_to_work_m).current_a
    checked = 0
    for tenths in range(120, 340, 7):
        volts = tenths / 10
        spot = Point(feed * SCALE, volts)
        on = [name for name, shape in regions if shape.contains(spot)]
        if not on or any(abs(shape.boundary.distance(spot)) < 0.3 for _, shape in regions):
            continue
        assert on[-1] == transfer_at(current, volts, job.wire, job.gas)
        checked += 1
    assert checked >= 5


@settings(max_examples=40)
@given(jobs())
def test_soft_edges_lie_on_the_axes_about_the_edges_of_the_modes(typed: Typed) -> None:
    answer, plane = drawn(typed)
    sprays = not spray_refused(answer.job.wire, answer.job.gas)
    keys = {edge.key for edge in plane.soft}
    assert sprays or "transition" not in keys
    for edge in plane.soft:
        for feed, volts in edge.outline:
            assert plane.feeds[0] * (1 - 1e-9) <= feed <= plane.feeds[1] * (1 + 1e-9)
            assert plane.volts[0] <= volts <= plane.volts[1]


def test_the_start_of_spray_is_soft_by_a_fifth_either_way() -> None:
    """The supplier's transition currents are good to 20 %: 228 A in 90/10 is 183 to 274 A."""
    answer, plane = drawn({"plate": "3/8in", "leg": "5/16in"})
    [band] = [edge for edge in plane.soft if edge.key == "transition"]
    feeds = [feed for feed, _ in band.outline]
    tip = answer.plan.tip_to_work_m
    job = answer.job
    ends = [at_feed(job.wire, job.gas, "spray", f, tip).current_a for f in (min(feeds), max(feeds))]
    middle = 225 + (240 - 225) * (0.10 - 0.08) / (0.15 - 0.08)
    assert ends[1] == pytest.approx(1.2 * middle, rel=1e-6)
    assert 0.8 * middle <= ends[0] * (1 + 1e-6) < middle  # the axis may cut its low end


def test_why_no_spray_is_said_with_the_plane() -> None:
    assert in_words(drawn({"gas": "75/25"})[1].refused).endswith("75/25 has more")
    assert in_words(drawn({"position": "4F"})[1].refused) == "spray runs out of the joint overhead"
    assert drawn({"gas": "90/10"})[1].refused is None
    assert drawn({"transfer": "pulse"})[1].pulsed
