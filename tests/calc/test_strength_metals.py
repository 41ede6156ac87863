"""Steels of two plates and the filler between them: which of them counts, by hand."""

import pytest

from beadwright.errors import FieldErrors
from tests.calc.strength_asked import ask


def keys(query: str) -> set[str]:
    return {note.key for note in ask(query).notes}


def test_where_two_steels_meet_the_weaker_asks_the_filler() -> None:
    """EN 1993-1-8:2005, 4.2(2): 450 MPa is over the 360 of S235 and under the 470 of S355."""
    query = "units=si&py=20kN&design_code=en&filler_strength={}MPa&steel={}&steel2={}"
    for one, other in (("S355J2", "S235JR"), ("S235JR", "S355J2")):
        assert ask(query.format(450, one, other)).links
    with pytest.raises(FieldErrors, match=r"4\.2"):
        ask(query.format(450, "S355J2", "S355J2"))
    assert ask(query.format(470, "S355J2", "S355J2")).links  # as strong is enough


def test_the_plate_too_thick_for_its_grade_is_the_one_named() -> None:
    """A572-60 is made to 1-1/4 in (AISC Manual Table 2-5, from memory)."""
    for plate, other, named in (("2in", "1in", "plate"), ("1in", "2in", "plate2")):
        with pytest.raises(FieldErrors) as caught:
            ask(f"py=3kip&steel=A572-60&plate={plate}&plate2={other}")
        assert set(caught.value.messages) == {named, "steel"}


def test_filler_is_held_to_the_steel_it_matches_least() -> None:
    """AISC 360 Table J2.5, note: one level over matching, 70 ksi for A36, 80 for A572-60."""
    told = "strength.filler-over-matching"
    assert told in keys("py=3kip&steel=A36&steel2=A572-60&filler_strength=90ksi")
    assert told not in keys("py=3kip&steel=A572-60&filler_strength=90ksi")
    assert told in keys("py=3kip&steel=A36&filler_strength=82ksi")
    assert told not in keys("py=3kip&steel=A36&filler_strength=80ksi")


@pytest.mark.parametrize(
    ("code", "key"),
    [("asd", "service"), ("lrfd", "factored"), ("en&units=si", "design"),
     ("en-directional&units=si", "design")],
)  # fmt: skip
def test_which_loads_are_meant_is_said(code: str, key: str) -> None:
    assert f"strength.{key}-loads" in keys(f"py=3kN&design_code={code}")


def test_aisc_refuses_no_softer_filler_in_a_fillet() -> None:
    assert ask("py=3kip&steel=A572-60&filler_strength=70ksi").links  # the steel has 75 ksi
