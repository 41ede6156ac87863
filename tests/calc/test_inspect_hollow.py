"""A hollow that leaves no metal in a fillet is a wrong reading, said beside its field."""

import pytest

from beadwright.errors import FieldErrors
from beadwright.inspection.inspect_page import inspect_answer

LEGS = "plate=3/8in&leg=1/4in&leg_found=1/4in&leg2_found=1/4in"


@pytest.mark.parametrize("typed", ["concavity=0.133in", "throat_found=0.044in"])
def test_a_hollow_of_three_quarters_of_the_throat_is_refused(typed: str) -> None:
    """A parabola takes two thirds of face and depth, the triangle is half of face and throat.

    So nothing is left at a depth of three quarters: of 0.177 in, the throat of a 1/4 in leg.
    """
    with pytest.raises(FieldErrors, match=r"0\.177 in") as refused:
        inspect_answer(f"{LEGS}&{typed}")
    assert list(refused.value.messages) == [typed.partition("=")[0]]


@pytest.mark.parametrize("typed", ["concavity=0.08in", "throat_found=0.1in"])
def test_a_hollow_that_leaves_metal_is_judged(typed: str) -> None:
    assert inspect_answer(f"{LEGS}&{typed}").checks
