"""The plates of a lap: each case by its clause, by hand, and a thousand against the clause."""

from math import cos, radians, sin, tan
from random import Random

import pytest

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength import tension_members
from beadwright.strength.lap_members import lap_members, pull_of, width_of
from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import in_words, told

KIP = read("1kip", "force")
BAR = "joint=lap&plate=3/8in&plate2=1/4in&group=lines&group_height=6in&group_width=4in"


def held(query: str) -> dict[str, float]:
    """What each link that is strained as a whole holds [kip]."""
    return {k.key: k.holds / KIP for k in ask(query).links if k.measure == "force"}


def test_a_bar_that_yields_before_its_welds_does_not_hold() -> None:
    found = ask(f"{BAR}&py=30kip")
    # D2(a): a 4 x 1/4 in bar of A36 holds 36 x 1 / 1.67 = 21.56 kip; its welds would hold 33.4.
    assert not found.holds
    assert found.links[0].key == "plate2-gross"
    assert found.links[0].holds / KIP == pytest.approx(36 / 1.67)
    assert found.weld.use < 1
    # A longer weld eases the lag of the same bar, and does not keep it from yielding.
    said = {note.source: told(note) for note in found.notes if note.level == "stop"}
    assert "More weld does not help: use wider or thicker" in said["aisc-d2"]
    assert "a longer weld, wider or thicker" in said["aisc-d3.1"]
    assert ask(f"{BAR}&py=21.5kip").holds
    assert not ask(f"{BAR}&py=21.6kip").holds
    assert in_words(found.links[0].phrase) == "second plate, pulled: yielding over 4 in"
    # A plate that yields all over is no point of the weld to ring.
    assert found.ringed is found.weld


def test_both_plates_by_each_limit() -> None:
    holds = held(f"{BAR}&py=10kip")
    lag = 108 / 124  # 3 x 6² / (3 x 6² + 4²)
    assert holds == {
        "plate2-gross": pytest.approx(36 / 1.67),
        "plate2-net": pytest.approx(58 * lag * (1 - 0.125 / 6) / 2),
        "plate-gross": pytest.approx(36 * 1.5 / 1.67),
        "plate-net": pytest.approx(58 * 1.5 * lag * (1 - 0.1875 / 6) / 2),
        "plate-block": pytest.approx((0.6 * 36 * 2 * 6 * 0.375 + 58 * 4 * 0.375) / 2),
    }
    factored = held(f"{BAR}&py=10kip&design_code=lrfd")
    assert factored["plate2-gross"] == pytest.approx(0.9 * 36)
    assert factored["plate2-net"] == pytest.approx(0.75 * 58 * lag * (1 - 0.125 / 6))


def test_a_wide_lower_plate_counts_as_far_as_the_pull_spreads() -> None:
    holds = held(f"{BAR}&py=10kip&plate_width=24in")
    wide = 4 + 2 * 6 * tan(radians(30))
    assert holds["plate-gross"] == pytest.approx(36 * 0.375 * wide / 1.67)
    assert "plate-net" not in holds  # a block tears out of it instead
    assert "plate-block" in holds
    assert held(f"{BAR}&py=10kip&plate_width=5in")["plate-gross"] == pytest.approx(
        36 * 0.375 * 5 / 1.67
    )


def test_a_bar_wider_than_its_welds_lags_by_its_own_width() -> None:
    holds = held(f"{BAR}&py=10kip&plate2_width=6in")
    assert holds["plate2-gross"] == pytest.approx(36 * 1.5 / 1.67)
    assert holds["plate2-net"] == pytest.approx(58 * 1.5 * 108 / 144 * (1 - 0.125 / 6) / 2)
    assert holds["plate2-block"] == pytest.approx((0.6 * 36 * 2 * 6 * 0.25 + 58 * 4 * 0.25) / 2)


def test_welds_across_and_welds_along_and_across_lag_by_their_own_cases() -> None:
    across = held("joint=lap&plate=3/8in&plate2=1/4in&group=flats&group_width=4in"
                  "&group_height=6in&py=5kip")  # fmt: skip
    assert across["plate2-net"] == pytest.approx(58 / 2)  # case 3: U = 1
    assert "plate-block" not in across
    wide = held("joint=lap&plate=3/8in&plate2=1/4in&group=flats&group_width=4in"
                "&group_height=6in&py=5kip&plate2_width=6in")  # fmt: skip
    assert wide["plate2-net"] == pytest.approx(58 / 2)  # the part that is welded
    assert wide["plate2-gross"] == pytest.approx(36 * 1.5 / 1.67)
    lower = held("joint=lap&plate=3/8in&plate2=1/4in&group=flats&group_width=4in"
                 "&group_height=6in&py=5kip&plate_width=24in")  # fmt: skip
    # Across it a weld starts nowhere along the pull: no spread from the ends of 4 in.
    assert lower["plate-gross"] == pytest.approx(36 * 1.5 / 1.67)
    both = held("joint=lap&plate=3/8in&plate2=1/4in&group=c&group_width=6in&group_height=4in"
                "&px=5kip")  # fmt: skip
    assert both["plate2-net"] == pytest.approx(58 * (1 - 0.125 / 6) / 2)  # case 2
    assert both["plate-block"] == pytest.approx((0.6 * 36 * 2 * 6 * 0.375 + 58 * 1.5) / 2)


def test_welds_on_both_sides_pull_without_eccentricity() -> None:
    assert held(f"{BAR}&py=10kip&weld_sides=2")["plate2-net"] == pytest.approx(58 * 108 / 124 / 2)


def test_each_plate_has_its_own_steel() -> None:
    holds = held(f"{BAR}&py=10kip&steel=A572-50&steel2=A36")
    assert holds["plate-gross"] == pytest.approx(50 * 1.5 / 1.67)
    assert holds["plate2-gross"] == pytest.approx(36 / 1.67)
    european = (
        "units=si&joint=lap&plate=10mm&plate2=6mm&group=lines&group_height=120mm&leg=5mm"
        "&group_width=100mm&py=50kN&design_code=en"
    )
    found = ask(f"{european}&steel=S355J2&steel2=S235JR")
    holds = {k.key: k.holds / 1000 for k in found.links if k.measure == "force"}
    # EN 1993-1-1, 6.2.3: 100 x 10 x 355 and 100 x 6 x 235.
    assert holds == {"plate-gross": pytest.approx(355), "plate2-gross": pytest.approx(141)}
    # EN 1993-1-8, 4.5.3.2(6): the weld goes by the weaker part, whichever plate that is.
    for other in ("steel=S235JR&steel2=S355J2", "steel=S235JR"):
        assert ask(f"{european}&{other}").weld.holds == pytest.approx(found.weld.holds)
    assert ask(f"{european}&steel=S355J2").weld.holds > found.weld.holds


def test_what_of_a_lap_is_not_checked_is_said() -> None:
    def said(query: str) -> str:
        return " ".join(told(note) for note in ask(query).notes)

    line = "joint=lap&plate=1/2in&plate2=1/2in&group=line&group_height=6in&py=10kip"
    assert "not checked for pull. Type both" in said(line)
    assert "one line" in said(line)
    typed = f"{line}&plate_width=4in&plate2_width=4in"
    assert held(typed)["plate2-gross"] == pytest.approx(36 * 2 / 1.67)
    assert "plate2-net" not in held(typed)
    assert "not checked for pull. Type both" not in said(typed)
    assert "as the welds reach, 4 in" in said(f"{BAR}&py=5kip")
    for load in ("py=5kip&px=1kip", "py=5kip&load_x=9in", "pz=2kip", "line_load=1kip/in"):
        assert "beside the weld only" in said(f"{BAR}&{load}")
        assert not held(f"{BAR}&{load}")
    assert "beside the weld only" in said("joint=lap&group=circle&group_height=4in&py=5kip")
    short = (
        "units=si&joint=lap&plate=10mm&plate2=10mm&group=lines&group_height=80mm"
        "&group_width=100mm&py=50kN&design_code=en"
    )
    assert "BS 5950-1" in said(short)
    assert "BS 5950-1" not in said(short.replace("height=80mm", "height=100mm"))
    assert "Lap the plates 1-1/4 in" in said(f"{BAR}&py=5kip")
    assert "Lap the plates" not in said(short)


def test_a_plate_narrower_than_its_welds_is_refused_beside_its_width() -> None:
    with pytest.raises(FieldErrors) as caught:
        ask(f"{BAR}&py=5kip&plate2_width=3in")
    assert "the welds reach 4 in" in caught.value.messages["plate2_width"][0]
    assert ask(f"{BAR}&py=5kip&plate2_width=4in").links


def test_no_plate_of_another_joint_is_taken_for_a_lap_s() -> None:
    task = ask("py=5kip&leg=1/4in").task
    assert pull_of(task) is None
    assert not list(lap_members(task))


def test_blank_the_width_is_as_far_as_the_welds_reach() -> None:
    task = ask(f"{BAR}&py=5kip").task
    pull = pull_of(task)
    assert pull is not None
    assert (pull.lines, pull.crossed) == (2, False)
    assert width_of(task, pull, lower=True) == pytest.approx(4 * 0.0254)
    assert width_of(task, pull, lower=False) == pytest.approx(4 * 0.0254)


@pytest.mark.parametrize("off", [-0.001, 0.05, 0.06])
def test_an_eccentricity_past_the_weld_has_no_shear_lag(off: float) -> None:
    with pytest.raises(OutOfRangeError, match="off_m"):
        tension_members.lag_of_mixed_welds(0.05, off)


def clause(case: dict[str, float], edition_lrfd: bool) -> dict[str, float]:
    """AISC 360-22 D2, D3.1 and J4.3 for two welds along a bar, straight from the clauses [kip]."""
    length, width, lower, upper = case["l"], case["w"], case["lower"], case["upper"]
    fy, fu = case["fy"], case["fu"]
    gross = 0.9 if edition_lrfd else 1 / 1.67
    torn = 0.75 if edition_lrfd else 1 / 2.0
    found: dict[str, float] = {}
    for key, t in (("plate", lower), ("plate2", upper)):
        area = width * t
        u = 3 * length * length / (3 * length * length + width * width) * (1 - t / 2 / length)
        found[f"{key}-gross"] = gross * fy * area
        found[f"{key}-net"] = torn * fu * area * u
    rupture = 0.6 * fu * 2 * length * lower + fu * width * lower
    yielding = 0.6 * fy * 2 * length * lower + fu * width * lower
    found["plate-block"] = torn * min(rupture, yielding)
    return found


def test_a_thousand_laps_agree_with_the_clauses() -> None:
    chance = Random(360)
    grades = {"A36": (36, 58), "A572-50": (50, 65), "A588": (50, 70)}
    for _ in range(1000):
        grade = chance.choice(sorted(grades))
        case = {
            "l": round(chance.uniform(2, 20), 3),
            "w": round(chance.uniform(1, 12), 3),
            "lower": chance.choice((3, 4, 6, 8, 12)) / 16,
            "upper": chance.choice((3, 4, 6, 8, 12)) / 16,
            "fy": grades[grade][0],
            "fu": grades[grade][1],
        }
        code = chance.choice(("asd", "lrfd"))
        holds = held(
            f"joint=lap&plate={case['lower']}in&plate2={case['upper']}in&group=lines"
            f"&group_height={case['l']}in&group_width={case['w']}in&py=3kip&steel={grade}"
            f"&design_code={code}&leg=1/8in"
        )
        assert holds == {
            key: pytest.approx(value, rel=1e-9)
            for key, value in clause(case, code == "lrfd").items()
        }


@pytest.mark.parametrize("degrees", [0, 30, 90, 137])
def test_a_lap_holds_the_same_wherever_it_lies_and_however_it_is_turned(degrees: int) -> None:
    """The C of 6 by 4 in of the case above, moved and turned with its pull: case 2, block shear."""
    c, s = cos(radians(degrees)), sin(radians(degrees))
    spots = " ".join(
        f"{c * (x + 10) - s * (y + 7):.9f}in,{s * (x + 10) + c * (y + 7):.9f}in"
        for x, y in ((6, 0), (0, 0), (0, 4), (6, 4))
    )
    turned = held(f"joint=lap&plate=3/8in&plate2=1/4in&group=polyline:{spots}"
                  f"&px={5 * c:.9f}kip&py={5 * s:.9f}kip")  # fmt: skip
    assert turned["plate2-gross"] == pytest.approx(36 / 1.67, rel=1e-6)
    assert turned["plate2-net"] == pytest.approx(58 * (1 - 0.125 / 6) / 2, rel=1e-6)
    assert turned["plate-block"] == pytest.approx(
        (0.6 * 36 * 2 * 6 * 0.375 + 58 * 1.5) / 2, rel=1e-6
    )


def test_no_pieces_of_a_lap_whose_plates_count_its_length() -> None:
    """Table D3.1 and J4.3 take the length of a weld; of one in pieces they do not say which."""
    assert ask(f"{BAR}&py=3kip").segments is None
    across = "joint=lap&plate=3/8in&plate2=1/4in&group=flats&group_width=4in&group_height=6in"
    assert ask(f"{across}&py=3kip").segments is not None


def test_two_pieces_of_one_line_are_one_line_wherever_it_lies() -> None:
    """One line of 6 in, bent nowhere: no block between it and itself, no lag (no case for it)."""
    spots = "polyline:5in,0in 5in,3in 5in,6in"
    holds = held(f"joint=lap&plate=3/8in&plate2=1/4in&group={spots}&py=3kip&held=yes"
                 "&plate_width=4in&plate2_width=4in")  # fmt: skip
    assert set(holds) == {"plate-gross", "plate2-gross"}
    assert holds["plate2-gross"] == pytest.approx(36 / 1.67)


def test_a_plate_twice_as_thick_as_its_weld_is_long_has_no_shear_lag() -> None:
    """1 - x/l with x half of 2 in and l of 1 in leaves nothing: Table D3.1 is not for it."""
    short = "joint=lap&plate=2in&plate2=2in&group=lines&group_width=4in&py=3kip"
    holds = held(f"{short}&group_height=1in")
    assert set(holds) == {"plate-gross", "plate2-gross", "plate-block"}
    lag = 3 * 1.25**2 / (3 * 1.25**2 + 16) * (1 - 1 / 1.25)
    assert held(f"{short}&group_height=5/4in")["plate2-net"] == pytest.approx(58 * 8 * lag / 2)


def test_widths_are_left_alone_where_the_pull_is_none() -> None:
    for load in ("py=3kip&px=1kip", "pz=3kip"):
        assert not held(f"{BAR}&{load}&plate_width=2in&plate2_width=2in")


def test_each_remark_on_a_lap_stands_where_it_holds() -> None:
    def notes(query: str) -> dict[str, str]:
        return {note.key: note.field for note in ask(query).notes}

    assert "strength.lap-plates-unchecked" not in notes("joint=tee&pz=3kip")
    assert notes(f"{BAR}&py=3kip")["strength.lap-width-taken"] == "plate2_width"
    typed = notes(f"{BAR}&py=3kip&plate2_width=5in")
    assert typed["strength.lap-width-taken"] == "plate_width"
    # Two lines have a case of Table D3.1, and so has one line with a weld across.
    assert "strength.lag-one-line" not in notes(f"{BAR}&py=3kip")
    assert "strength.lag-one-line" not in notes(BAR.replace("lines", "l") + "&py=3kip")
    # BS 5950-1, 6.7.2.4, is for side welds alone.
    short = "units=si&joint=lap&plate=10mm&plate2=10mm&design_code=en&px=50kN&group_width=60mm"
    assert "strength.lag-en" in notes(f"{short}&group=flats&group_height=100mm")
    assert "strength.lag-en" not in notes(f"{short}&group=c&group_height=100mm")
