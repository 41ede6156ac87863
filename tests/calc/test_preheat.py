"""Preheat: the table's steps, method B's ranges and what is counted in their place."""

from collections.abc import Callable
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.heating.preheat import method_b, preheat_b
from beadwright.heating.preheat_table import LEAST, THICKNESS_STEPS_M, table_row
from beadwright.heating.steels import Category, Composition
from beadwright.measures import System
from tests.told import in_words

SYSTEMS: tuple[System, ...] = ("us", "si")
CETS, DEPTHS = st.floats(0.20, 0.50), st.floats(10e-3, 90e-3)
HYDROGENS, HEATS = st.floats(1, 20), st.floats(0.5e6, 4e6)


@given(CETS, DEPTHS, HYDROGENS, HEATS)
def test_more_carbon_plate_or_hydrogen_never_asks_less(
    cet: float, depth: float, hydrogen: float, heat: float
) -> None:
    asked = method_b(cet, depth, hydrogen, heat)
    assert method_b(min(0.5, cet + 0.01), depth, hydrogen, heat) >= asked
    assert method_b(cet, min(90e-3, depth * 1.1), hydrogen, heat) >= asked
    assert method_b(cet, depth, min(20, hydrogen * 1.1), heat) >= asked
    assert method_b(cet, depth, hydrogen, min(4e6, heat * 1.1)) <= asked


@pytest.mark.parametrize(
    ("ask", "named"),
    [
        (lambda: method_b(0.19, 0.02, 5, 1e6), "CET 0.19 % is outside 0.2 to 0.5"),
        (lambda: method_b(0.51, 0.02, 5, 1e6), "CET 0.51"),
        (lambda: method_b(0.3, 0.009, 5, 1e6), "thickness 9 mm is outside 10 to 90"),
        (lambda: method_b(0.3, 0.1, 5, 1e6), "thickness 100 mm"),
        (lambda: method_b(0.3, 0.02, 0.9, 1e6), "hydrogen 0.9 ml/100 g is outside 1 to 20"),
        (lambda: method_b(0.3, 0.02, 21, 1e6), "hydrogen 21"),
        (lambda: method_b(0.3, 0.02, 5, 0.4e6), "heat input 0.4 kJ/mm is outside 0.5 to 4"),
        (lambda: method_b(0.3, 0.02, 5, 4.1e6), "heat input 4.1"),
        (lambda: method_b(float("nan"), 0.02, 5, 1e6), "CET nan"),
    ],
)
def test_outside_its_range_method_b_refuses_by_name(ask: Callable[[], float], named: str) -> None:
    with pytest.raises(OutOfRangeError, match=named):
        ask()


@pytest.mark.parametrize(
    ("steel", "depth", "heat", "said"),
    [
        (Composition(0.15, 1.2), 5e-3, 1e6, "thinner than 0.394 in, taken as 0.394 in"),
        (Composition(0.15, 1.2), 20e-3, 6e6, "heat over 101.6 kJ/in taken as 101.6 kJ/in"),
        (Composition(0.15, 1.2), 20e-3, 0.3e6, "heat under 12.7 kJ/in"),
        (Composition(0.10, 0.6), 20e-3, 1e6, "CET 0.160 taken as 0.2"),
        (Composition(0.22, 0.3), 20e-3, 1e6, "Mn taken as 0.5 %"),
        (Composition(0.02, 1.9), 20e-3, 1e6, "C taken as 0.05 %"),
    ],
)
def test_what_is_counted_otherwise_is_said(
    steel: Composition, depth: float, heat: float, said: str
) -> None:
    found = preheat_b(steel, depth, 5, heat)
    assert found.kelvin is not None
    assert any(said in in_words(counted) for counted in found.counted)
    assert preheat_b(Composition(0.16, 1.4), 20e-3, 5, 1e6).counted == ()


@given(st.floats(0.06, 0.3), st.floats(0.55, 1.8), st.floats(1e-3, 9e-3), st.floats(4.1e6, 9e6))
def test_a_stand_in_asks_no_less_than_the_thing_itself(
    c: float, mn: float, depth: float, heat: float
) -> None:
    steel = Composition(c, mn)
    for at in (preheat_b(steel, depth, 5, 1e6), preheat_b(steel, 20e-3, 5, heat)):
        assert at.kelvin is not None
    inside = preheat_b(steel, 10e-3, 5, 1e6).kelvin
    assert preheat_b(steel, depth, 5, 1e6).kelvin == inside
    assert preheat_b(steel, 20e-3, 5, heat).kelvin == preheat_b(steel, 20e-3, 5, 4e6).kelvin


def test_at_the_ends_of_its_range_nothing_is_counted_otherwise() -> None:
    for steel in (Composition(0.10, 1.0), Composition(0.31, 1.9)):  # CET 0.20 and 0.50
        for depth in (10e-3, 90e-3):
            for heat in (0.5e6, 4e6):
                found = preheat_b(steel, depth, 5, heat)
                assert (found.counted, found.refused) == ((), ())
                assert found.kelvin == method_b(found.cet, depth, 5, heat)
    assert preheat_b(Composition(0.05, 1.9), 20e-3, 5, 1e6).cet == pytest.approx(0.24, abs=1e-9)
    assert preheat_b(Composition(0.20, 0.5), 20e-3, 5, 1e6).cet == pytest.approx(0.25, abs=1e-9)


@pytest.mark.parametrize(("element", "percent"), [("si", 0.9), ("v", 0.2), ("nb", 0.07)])
def test_too_much_of_what_the_equivalent_leaves_out_is_refused_too(
    element: str, percent: float
) -> None:
    found = preheat_b(Composition(**{"c": 0.15, "mn": 1.2, element: percent}), 20e-3, 5, 1e6)
    assert [key for key, _ in found.refused] == [element]
    assert found.counted == ()


def test_a_steel_past_the_method_is_refused_by_element() -> None:
    found = preheat_b(Composition(0.35, 2.5, cr=2.0), 20e-3, 5, 1e6)
    assert found.kelvin is None
    assert [key for key, _ in found.refused] == ["c", "mn", "cr", "cet"]
    assert "CET 0.700 is over 0.5" in in_words(found.refused[-1][1])


@pytest.mark.parametrize("category", LEAST)
@pytest.mark.parametrize("system", SYSTEMS)
def test_each_row_of_the_table_ends_where_the_next_begins(
    category: Category, system: System
) -> None:
    steps = THICKNESS_STEPS_M[system]
    rows = [table_row(category, step, system) for step in (*steps[:3], 1.0)]
    for row, after in pairwise(rows):
        assert table_row(category, row.through_m + 1e-6, system) == after
        assert row.kelvin(system) < after.kelvin(system)
        assert after.over_m == row.through_m
    assert rows[0].over_m == 0
    for row in rows:  # the two columns are rounded, not converted
        assert row.kelvin("us") == pytest.approx(row.kelvin("si"), abs=3)
    with pytest.raises(OutOfRangeError):
        table_row(category, 0.0, system)
