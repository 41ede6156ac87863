"""Steels, their carbon equivalents, and what each method refuses by name."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.heating.carbon_equivalent import FORMULAS, Method, equivalent, outside
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS, Composition, Element, steel_of
from tests.told import in_words

SHARES = st.floats(0, 2)
GOOD = {"c": 0.15, "mn": 1.0}


def test_the_grades_by_name() -> None:
    assert list(STEELS) == [
        "A36", "A572-50", "A572-60", "A588", "A992", "A500-B", "A500-C", "S235JR", "S275JR",
        "S355J2",
    ]  # fmt: skip
    assert steel_of(" a572-50 ") is STEELS["A572-50"]
    assert steel_of("unknown") is None
    with pytest.raises(UnknownEntryError, match="S355J2, unknown"):
        steel_of("A514")


@pytest.mark.parametrize("name", STEELS)
def test_a_usual_melt_is_inside_its_limits_and_every_method(name: str) -> None:
    steel = STEELS[name]
    for step in steel.limits:
        for element in ELEMENTS:
            limit = step.most.share(element)
            if limit:
                assert steel.typical.share(element) <= limit
        if step.ce_cap is not None:
            assert equivalent(steel.typical, "ce") <= step.ce_cap
    assert not any(outside(steel.typical, method) for method in FORMULAS)


def test_a_composition_over_100_percent_or_below_zero_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="add up to 120 %"):
        Composition(c=60, mn=60)
    with pytest.raises(OutOfRangeError, match=r"Mo -0\.1 %"):
        Composition(c=0.1, mn=1.0, mo=-0.1)
    with pytest.raises(OutOfRangeError, match="C nan"):
        Composition(c=float("nan"), mn=1.0)
    assert Composition(c=50, mn=50).share("mn") == 50


EDGES = [(m, e, end) for m, f in FORMULAS.items() for e in f.ranges for end in (0, 1)]


@pytest.mark.parametrize(("method", "element", "end"), EDGES)
def test_a_range_holds_at_its_end_and_refuses_past_it_by_name(
    method: Method, element: Element, end: int
) -> None:
    span = FORMULAS[method].ranges[element]
    if span[end] == 0:
        return
    at = Composition(**(GOOD | {element: span[end]}))
    assert outside(at, method) == ()
    past = Composition(**(GOOD | {element: span[end] * (1.02 if end else 0.98)}))
    [(named, why)] = outside(past, method)
    text = in_words(why)
    assert named == element
    assert text.startswith(f"{SYMBOLS[element]} ")
    assert f"outside {span[0]:g} to {span[1]:g} %" in text


@given(st.lists(SHARES, min_size=10, max_size=10), st.sampled_from(ELEMENTS), st.floats(0.001, 1))
def test_more_of_an_element_never_counts_for_less(
    shares: list[float], element: Element, more: float
) -> None:
    percent = dict(zip(ELEMENTS, shares, strict=True))
    steel, richer = (
        Composition(**percent),
        Composition(**(percent | {element: percent[element] + more})),
    )
    for method, formula in FORMULAS.items():
        rise = equivalent(richer, method) - equivalent(steel, method)
        assert rise == pytest.approx(more * formula.weights.get(element, 0), abs=1e-9)


def test_elements_make_up_no_more_than_all_of_a_steel() -> None:
    assert Composition(50.0, 50.0).c == 50
    with pytest.raises(OutOfRangeError):
        Composition(50.0, 51.0)
