"""Each limit at one place, worked by hand from the lines and tables it comes from."""

from math import inf

import pytest

from beadwright.job.job import Job
from beadwright.job.job_joint import joint_shape
from beadwright.job.job_query import read_query
from beadwright.phrases import Phrase
from beadwright.process.comparison import Comparison, Laid, more_laid
from beadwright.process.operating import Operating
from beadwright.process.transfer import Transfer
from beadwright.root import crossing
from beadwright.setting.current_limits import current_limits
from beadwright.setting.heat_limits import STEP_ROOM, heat_limits
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from beadwright.setting.size_limits import MOST_BUTT_CROWN_M, OVERWELD_M, bead_room, section_room
from beadwright.setting.travel_limits import travel_room
from tests.told import in_words

ANY = tightest_window([Limit("any", Phrase("any"), low=0.0)])


def job(query: str) -> Job:
    return read_query(query).job


def ends_of(limits: list[Limit]) -> dict[str, tuple[float, float]]:
    return {limit.key: (limit.low, limit.high) for limit in limits}


@pytest.mark.parametrize(
    ("query", "mode", "expected"),
    [
        # 225 + 15 × 2/7 A; the usual top; 0.6 × 187.5 A.
        ("gas=90/10", "spray", {"transition": (229.286, inf), "wire-top": (-inf, 380),
                                "fusion": (112.5, inf)}),
        ("gas=90/10", "short", {"short-low": (75, inf), "short-top": (-inf, 225),
                                "fusion": (112.5, inf)}),
        # 11.6 + 0.0645 I leaves 12.9 + 1.25 + 1.5 + 2.5 + 0.034 I at 6.55 / 0.0305 A.
        ("gas=CO2", "globular", {"globular-low": (214.754, inf), "wire-top": (-inf, 380),
                                 "fusion": (112.5, inf)}),
        # 75/25: the open arc stands clear of short circuit; short circuit's low end holds.
        ("gas=75/25", "globular", {"globular-low": (75, inf), "wire-top": (-inf, 380),
                                   "fusion": (112.5, inf)}),
        ("gas=90/10", "pulse", {"pulse-low": (75, inf), "wire-top": (-inf, 380),
                                "fusion": (112.5, inf)}),
        # 1/8 in: 25 + 1.7 × 125 A and 0.6 × 125 A.
        ("gas=90/10&plate=1/8in", "short", {"short-low": (75, inf), "short-top": (-inf, 225),
                                            "burn-through": (-inf, 237.5), "fusion": (75, inf)}),
        # Thin ends just under 6 mm: at 6 mm nothing burns through.
        ("gas=90/10&plate=6mm", "short", {"short-low": (75, inf), "short-top": (-inf, 225),
                                          "fusion": (112.5, inf)}),
        # The low end is 19.5 + 0.9 − 2.2 + 0.025 I: 26 V carry 7.8 / 0.025 A, 18 V none.
        ("gas=90/10&machine_volts=26V&machine_amps=300A", "spray",
         {"transition": (229.286, inf), "wire-top": (-inf, 380), "fusion": (112.5, inf),
          "machine": (-inf, 300), "machine-volts": (-inf, 312)}),
        ("gas=90/10&machine_volts=18V", "spray",
         {"transition": (229.286, inf), "wire-top": (-inf, 380), "fusion": (112.5, inf),
          "machine-volts": (-inf, 1)}),
        # Short circuit uphill to 0.85 and overhead to 0.90 of 225 A; downhill as flat.
        ("gas=90/10&position=3F-up", "short",
         {"short-low": (75, inf), "short-top": (-inf, 225), "position-top": (-inf, 191.25),
          "fusion": (112.5, inf)}),
        ("gas=90/10&position=4F", "short",
         {"short-low": (75, inf), "short-top": (-inf, 225), "position-top": (-inf, 202.5),
          "fusion": (112.5, inf)}),
        ("gas=90/10&position=3F-down", "short", {"short-low": (75, inf), "short-top": (-inf, 225),
                                                 "fusion": (112.5, inf)}),
        # Pulsed, 0.045 in: 185 A uphill, 195 A overhead and downhill.
        ("gas=90/10&position=3F-up", "pulse",
         {"pulse-low": (75, inf), "wire-top": (-inf, 380), "position-top": (-inf, 185),
          "fusion": (112.5, inf)}),
        ("gas=90/10&position=4F", "pulse",
         {"pulse-low": (75, inf), "wire-top": (-inf, 380), "position-top": (-inf, 195),
          "fusion": (112.5, inf)}),
        ("gas=90/10&machine_volts=26V", "pulse", {"pulse-low": (75, inf), "wire-top": (-inf, 380),
                                              "fusion": (112.5, inf)}),
    ],
)  # fmt: skip
def test_limits_on_the_current(
    query: str, mode: Transfer, expected: dict[str, tuple[float, float]]
) -> None:
    asked = job(f"wire=ER70S-6&dia=0.045in&{'' if 'plate' in query else 'plate=3/8in&'}{query}")
    found = ends_of(list(current_limits(asked, mode)))
    assert set(found) == set(expected)
    for key, ends in expected.items():
        assert found[key] == pytest.approx(ends, abs=1e-3), key


def test_what_is_said_under_the_least_current() -> None:
    said = {
        kind: in_words(next(iter(current_limits(job(f"plate=3/8in&{wire}"), "spray"))).why)
        for kind, wire in (
            ("solid", "wire=ER70S-6&dia=0.045in&gas=90/10"),
            ("flux-cored", "wire=E71T-1C&dia=0.045in&gas=CO2"),
        )
    }
    assert said["solid"] == "below 229 A this wire drops out of spray"
    assert said["flux-cored"] == "below 150 A this wire's drops grow coarse"


def test_limits_on_the_heat() -> None:
    """0.25 kJ/mm for each mm of plate under 6 mm; a procedure's own; none of either: zero up."""
    none = tightest_window(heat_limits(job("plate=3/8in")))
    assert (none.low, none.high) == (0.0, inf)
    assert [limit.key for limit in heat_limits(job("plate=6mm"))] == ["heat"]
    thin = ends_of(list(heat_limits(job("plate=4mm&units=si&heat_max=0.9kJ/mm&heat_min=0.5kJ/mm"))))
    assert thin["plate-heat"] == pytest.approx((-inf, 1.0e6))
    uphill = ends_of(list(heat_limits(job("plate=4mm&position=3F-up"))))
    assert uphill["plate-heat"] == pytest.approx((-inf, 1.5e6))  # half as much again
    overhead = ends_of(list(heat_limits(job("plate=4mm&position=4F"))))
    assert overhead["plate-heat"] == pytest.approx((-inf, 1.0e6))
    assert thin["heat-max"] == pytest.approx((-inf, 0.9e6))
    assert thin["heat-min"] == pytest.approx((0.5e6, inf))
    assert pytest.approx(0.98) == STEP_ROOM


def test_size_of_a_fillet() -> None:
    """1/4 in leg: to 5/16 in, (5/4)² of it; short only of its crown."""
    asked = job("joint=tee&plate=3/8in&leg=1/4in")
    shape = joint_shape(asked)[0]
    assert shape.leg_m == pytest.approx(0.00635)
    most, least = section_room(asked, shape)
    assert most == pytest.approx(1.5625 * shape.section_m2)
    assert least == pytest.approx(shape.section_m2 - shape.crown_m2)
    assert 0 < shape.crown_m2 < shape.section_m2 / 2
    assert bead_room(asked, shape, 4) == pytest.approx((most / 4, least / 4))
    assert pytest.approx(0.0015875) == OVERWELD_M


def test_size_of_a_butt() -> None:
    """The crown to 1/8 in, or down to half of it. From a 1/16 in crown: as much again."""
    asked = job("joint=square&plate=1/8in&reinforcement=1/16in")
    shape = joint_shape(asked)[0]
    most, least = section_room(asked, shape)
    assert shape.crown_m2 > 0
    assert most == pytest.approx(shape.section_m2 + shape.crown_room_m2(0.003175))
    assert most > shape.section_m2
    assert least == pytest.approx(shape.section_m2 - 0.5 * shape.crown_m2)
    assert pytest.approx(0.003175) == MOST_BUTT_CROWN_M


def a_run(heats: Window = ANY, travel: str = "") -> Run:
    asked = job(f"wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in{travel}")
    return Run(asked, "spray", 0.019, 30e-6, 0.97, ANY, heats)


def test_the_heat_binds_the_travel() -> None:
    """28 V × 250 A = 7000 W: 1 kJ/mm at 7 mm/s, 0.7 kJ/mm at 10 mm/s."""
    here = Operating(0.15, 28.0, 250.0, 0.0145)
    wide = (1e-3, 1e-7)
    heats = tightest_window(
        [
            Limit("heat-max", Phrase("over"), high=1.0e6),
            Limit("heat-min", Phrase("under"), low=0.7e6),
        ]
    )
    room = travel_room(a_run(heats), here, wide)
    assert (room.low, room.high) == pytest.approx((0.007, 0.010))
    assert (room.low_limit.key, room.high_limit.key) == ("heat", "heat-low")
    free = travel_room(a_run(), here, wide)
    assert {free.low_limit.key, free.high_limit.key} == {"mover"}


def test_the_heat_of_a_run() -> None:
    """28 V × 250 A over the travel given, set by hand, or the one that fills the section."""
    here = Operating(0.15, 28.0, 250.0, 0.0145)
    run = a_run()
    assert run.heat(here, 0.007) == pytest.approx(1.0e6)
    held = a_run(travel="&travel=10mm/s")
    assert held.travel(0.15) == pytest.approx(0.010)
    assert held.heat(here) == pytest.approx(0.7e6)
    filling = run.laid(0.15) / (7850 * 30e-6)
    assert run.travel(0.15) == pytest.approx(filling)
    assert run.heat(here) == pytest.approx(7000 / filling)


CUBES = [
    (-4.0, 5.0, 2.0), (-5.0, 4.0, -2.0), (-5.0, 5.0, 2.0), (-5.0, 5.0, -2.0), (1.0, 40.0, 3.0),
    (-40.0, -1.0, -3.0), (-4e-6, 5e-6, 2e-6), (-4e3, 5e3, 2e3),
]  # fmt: skip
"""Where to look from and to, and where the cube of it is to be found."""


@pytest.mark.parametrize("sign", [1, -1])
@pytest.mark.parametrize("unit", [1.0, 1e-6, 1e6])
@pytest.mark.parametrize(("low", "high", "place"), CUBES)
def test_a_curve_crosses_a_level(
    low: float, high: float, place: float, unit: float, sign: int
) -> None:
    """Cubes, rising and falling, of any size: each to a part in a million in a score of turns."""
    turns = 0

    def cube(at: float) -> float:
        nonlocal turns
        turns += 1
        return sign * unit * at**3

    found = crossing(cube, low, high, sign * unit * place**3)
    assert found == pytest.approx(place, rel=1e-6, abs=0.0)
    assert turns <= 20


@pytest.mark.parametrize("scale", [1e-3, -1e-3])
@pytest.mark.parametrize("bend", [0.3, 1.0, 4.0])
@pytest.mark.parametrize("ends", [(1.0, 9.0), (4.5, 30.0)])
def test_a_small_line_takes_as_few_turns(
    scale: float, bend: float, ends: tuple[float, float]
) -> None:
    """A feed is some tenths of a meter a second: the sign counts, not the size."""
    turns = 0

    def line(at: float) -> float:
        nonlocal turns
        turns += 1
        return scale * (at + bend * at**2)

    found = crossing(line, *ends, scale * (5 + bend * 25))
    assert found == pytest.approx(5.0, rel=1e-9)
    assert turns <= 12


def test_a_straight_line_takes_one_turn() -> None:
    asked = list[float]()

    def line(at: float) -> float:
        asked.append(at)
        return 2 * at + 1

    assert crossing(line, 0.0, 10.0, 8.0) == pytest.approx(3.5)
    assert asked == [0.0, 10.0, pytest.approx(3.5)]


def test_a_level_line_gives_an_end() -> None:
    assert crossing(lambda _: 3.0, 1.0, 2.0, 3.0) == 1.0


def test_a_comparison_in_words() -> None:
    laid = Laid(250.0, 0.15, 28.0, 1e-3, 7e6)
    found = Comparison("equal current", laid, laid, 1.60, 0.75, 1.80)
    assert in_words(more_laid(found)) == "60% more (by the band 25% less to 80% more)"
