"""Hardness beside the bead: between bainite and martensite, within its range."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.heating.haz_hardness import (
    bainite_hardness,
    hardness_refused,
    haz_hardness,
    martensite_hardness,
)
from beadwright.heating.steels import STEELS, Composition
from tests.told import in_words


@given(st.floats(1, 90), st.sampled_from(sorted(STEELS)))
def test_hardness_lies_between_bainite_and_martensite_and_falls_with_time(
    seconds: float, name: str
) -> None:
    steel = STEELS[name].typical
    found = haz_hardness(steel, seconds)
    assert bainite_hardness(steel) <= found <= martensite_hardness(steel)
    assert haz_hardness(steel, seconds * 1.1) <= found


@pytest.mark.parametrize(
    ("steel", "seconds", "named"),
    [
        (Composition(0.30, 1.0), 5, "C 0.3 % is outside 0.03 to 0.25 %"),
        (Composition(0.15, 0.3), 5, "Mn 0.3 %"),
        (Composition(0.15, 1.0, b=0.002), 5, "B 0.002 %"),
        (Composition(0.15, 1.0), 0.9, "0.9 s of cooling is outside 1 to 100 s"),
        (Composition(0.15, 1.0), 101, "101 s"),
    ],
)
def test_hardness_outside_its_range_is_refused_by_name(
    steel: Composition, seconds: float, named: str
) -> None:
    assert named in in_words(hardness_refused(steel, seconds))
    with pytest.raises(OutOfRangeError):
        haz_hardness(steel, seconds)


@pytest.mark.parametrize(
    "element",
    [("c", 0.25), ("si", 0.60), ("mn", 2.00), ("cr", 1.00), ("mo", 0.60), ("ni", 1.70),
     ("cu", 0.60), ("v", 0.15), ("b", 0.0005)],
)  # fmt: skip
def test_the_most_of_each_element_still_has_a_hardness(element: tuple[str, float]) -> None:
    name, most = element
    plain = {"c": 0.1, "mn": 1.0}
    assert haz_hardness(Composition(**{**plain, name: most}), 10.0) > 0
    over = Composition(**{**plain, name: most * 1.02})
    assert "is outside" in in_words(hardness_refused(over, 10.0))
    with pytest.raises(OutOfRangeError, match=r"heating\.element-outside"):
        haz_hardness(over, 10.0)
