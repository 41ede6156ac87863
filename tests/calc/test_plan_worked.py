"""Which mode is planned and why, at the edges of each rule; steps of a hand inside a room."""

from dataclasses import replace

import pytest

from beadwright.limits import Limit, Window
from beadwright.plan import make_plan, planned_transfer
from beadwright.schemas import read_query
from beadwright.set_point import set_feed, set_point, stepped

IN_MIN = 0.0254 / 60


@pytest.mark.parametrize(
    ("query", "mode", "why"),
    [
        # Sprays from 229 A; 3/8 in stands it.
        ("dia=0.045in&gas=90/10&plate=3/8in", "spray", "wire, gas and position carry it"),
        # 1/8 in burns through at 237.5 A: 0.045 in sprays under it, 0.052 in (252 A) does not.
        ("dia=0.045in&gas=90/10&plate=1/8in&position=1F", "spray", "carry it"),
        ("dia=0.052in&gas=90/10&plate=1/8in&position=1F", "short", "burn through in spray"),
        # Under 3.1 mm short circuit is planned.
        ("dia=0.035in&gas=90/10&plate=3mm", "short", "under 1/8 in"),
        ("dia=0.035in&gas=90/10&plate=3.1mm", "spray", "carry it"),
        # At 6 mm nothing burns through.
        ("dia=1/16in&gas=90/10&plate=6mm", "spray", "carry it"),
        # CO2 does not spray: globular over 3/16 in, flat and horizontal; else short circuit.
        ("dia=0.045in&gas=CO2&plate=3/8in", "globular", "too thick for short circuit"),
        ("dia=0.045in&gas=CO2&plate=3/16in", "short", "CO2 does not spray"),
        ("dia=0.045in&gas=CO2&plate=4.9mm", "globular", "too thick"),
        ("dia=0.045in&gas=CO2&plate=3/8in&position=3F-up", "short", "CO2 does not spray"),
        ("dia=0.045in&gas=75/25&plate=3/8in", "short", "does not spray above about 20% CO2"),
        # Out of position spray runs out; metal-cored wire pulses there over 3/16 in.
        ("dia=0.045in&gas=90/10&plate=3/8in&position=4F", "short", "runs out of the joint"),
        ("wire=E70C-6M&dia=0.045in&gas=90/10&plate=3/8in&position=3F-up", "pulse", "wants pulse"),
        ("wire=E70C-6M&dia=0.045in&gas=90/10&plate=3/16in&position=3F-up", "short", "runs out"),
        ("wire=E70C-6M&dia=0.045in&gas=90/10&plate=3/8in", "spray", "carry it"),
        ("wire=E71T-1C&dia=0.045in&gas=CO2&plate=3/8in", "spray", "the one mode of this wire"),
        # A square butt with an open gap is shorted to 3/16 in.
        ("dia=0.035in&gas=90/10&plate=3/16in&joint=square&gap=1/16in&position=1G", "short",
         "falls through an open gap"),
        ("dia=0.035in&gas=90/10&plate=3/16in&joint=square&gap=0in&position=1G", "spray",
         "carry it"),
    ],
)  # fmt: skip
def test_the_mode_planned(query: str, mode: str, why: str) -> None:
    job = read_query(query if "wire" in query else f"wire=ER70S-6&{query}").job
    planned, reason, refused = planned_transfer(job)
    assert (planned, refused) == (mode, "")
    assert why in reason


@pytest.mark.parametrize(
    ("query", "mode", "why"),
    [
        ("wire=ER70S-6&gas=CO2&transfer=spray", "spray", "CO2 does not spray"),
        ("wire=ER70S-6&gas=90/10&transfer=spray&position=4F", "spray", "runs out"),
        ("wire=E70C-6M&gas=CO2", "short", "made for argon"),
        ("wire=E71T-1C&gas=CO2&transfer=short", "spray", "fine drops only"),
    ],
)
def test_the_mode_asked_for_may_be_refused(query: str, mode: str, why: str) -> None:
    job = read_query(f"dia=0.045in&plate=3/8in&{query}").job
    planned, _, refused = planned_transfer(job)
    assert planned == mode
    assert why in refused


def room(low: float, high: float) -> Window:
    limit = Limit("any", "any")
    return Window(low, high, limit, limit)


@pytest.mark.parametrize(
    ("volts", "low", "high", "set_"),
    [
        (25.04, 24.0, 26.0, 25.0),
        (25.06, 24.0, 26.0, 25.1),
        # The nearest tenth is out: the one on the other side.
        (25.04, 25.01, 26.0, 25.1),
        (24.96, 24.0, 24.99, 24.9),
        # An end is inside.
        (25.04, 25.0, 25.09, 25.0),
        (24.96, 24.91, 25.0, 25.0),
        # No tenth is in: as it is.
        (25.04, 25.01, 25.09, 25.04),
    ],
)
def test_volts_on_a_tenth(volts: float, low: float, high: float, set_: float) -> None:
    assert stepped(volts, "volts", "us", room(low, high)) == set_


@pytest.mark.parametrize(
    ("feed", "low", "high", "set_"),
    [(402, 380, 420, 400), (402, 401, 420, 405), (403, 380, 404, 400), (403, 402, 404, 403)],
)
def test_feed_on_five(feed: float, low: float, high: float, set_: float) -> None:
    found = stepped(feed * IN_MIN, "wire_feed", "us", room(low * IN_MIN, high * IN_MIN))
    assert found / IN_MIN == pytest.approx(set_)


BASE = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&leg=1/4in&position=2F"


def test_the_set_point_stands_on_a_hand_s_steps() -> None:
    plan = make_plan(read_query(BASE).job)
    feed = set_feed(plan)
    assert feed is not None
    assert feed / IN_MIN / 5 == pytest.approx(round(feed / IN_MIN / 5))
    point = set_point(plan, feed)
    assert point.volts * 10 == pytest.approx(round(point.volts * 10))
    # On the line, 20.4 + 0.025 I, to half a tenth; never the line's own odd figure.
    assert point.volts == pytest.approx(20.4 + 0.025 * point.current_a, abs=0.06)


def test_volts_by_hand_stand_and_pulse_has_its_own() -> None:
    held = make_plan(read_query(f"{BASE}&volts=27.37V").job)
    assert set_point(held, 400 * IN_MIN).volts == pytest.approx(27.37)
    pulsed = make_plan(read_query(f"{BASE}&transfer=pulse").job)
    point = set_point(pulsed, 400 * IN_MIN)
    assert point.volts == pytest.approx(20.4 + 0.025 * point.current_a, rel=1e-9)


def test_a_feed_no_volts_suit_stands_on_a_tenth_within_the_machine() -> None:
    """At 750 in/min the machine's 24 V stub: no room, and the machine's volts are the most."""
    plan = make_plan(read_query(f"{BASE}&machine_volts=24V").job)
    assert set_point(plan, 750 * IN_MIN).volts == pytest.approx(24.0)
    free = replace(plan.run, job=read_query(BASE).job)
    line = free.point(750 * IN_MIN).volts
    assert line > 24.0


def test_fewest_passes() -> None:
    """2F takes 5/16 in in one pass; 1/2 in is 2.56 times that, and needs three at least."""
    one = make_plan(read_query(BASE.replace("leg=1/4in", "leg=5/16in")).job)
    more = make_plan(read_query(BASE.replace("leg=1/4in", "leg=1/2in")).job)
    assert (one.passes, one.open) == (1, True)
    assert more.passes >= 3
    assert more.bead_m2 == pytest.approx(more.shape.section_m2 / more.passes)
