"""Skewed tees welded on both sides: each side's throat by its own angle, the lesser counts."""

from math import cos, pi, sqrt
from random import Random

import pytest

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.process.wires import wire_of
from beadwright.strength.skew_sides import root_loss, skew_sides, throat_of_laid
from beadwright.strength.strength_check import both_sides, weld_throat
from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import told

KIP_IN = read("1kip/in", "force_per_length")
TEE = "group=line&group_height=6in&py=3kip&plate=1in&plate2=1in"
INCH = 0.0254


def said(query: str) -> str:
    return " ".join(told(note) for note in ask(query).notes)


def test_the_same_leg_has_42_percent_less_throat_on_the_wide_side() -> None:
    # Laid b on both: b cos 30° = 0.866 b and b cos 60° = 0.5 b.
    near, far = skew_sides(ask(f"{TEE}&skew=60deg&leg=1/4in").task.job, 0.25 * INCH, None)
    assert (near.angle_deg, far.angle_deg) == (60, 120)
    assert near.laid_m == far.laid_m == pytest.approx(0.25 / sqrt(2) / cos(pi / 6) * INCH)
    assert far.throat_m / near.throat_m == pytest.approx(0.5 / 0.866, rel=1e-3)
    found = ask(f"{TEE}&skew=60deg&leg=1/4in")
    # The wide side rules both: 2 x 0.6 x 70 / 2 x 0.10206 in.
    assert found.weld.holds / KIP_IN == pytest.approx(2 * 21 * 0.102062, rel=1e-4)
    assert found.legs.throat == pytest.approx(0.102062 * INCH, rel=1e-4)
    assert "120° side is assumed laid 0.204 in" in said(f"{TEE}&skew=60deg&leg=1/4in")


def test_the_other_side_s_own_leg_counts() -> None:
    query = f"{TEE}&skew=60deg&leg=1/4in&far_leg=1/4in"
    assert ask(query).weld.holds / KIP_IN == pytest.approx(2 * 21 * 0.25 / sqrt(2))
    # 0.17678/cos 60° = 0.354 in along the plates on the wide side.
    assert "0.204 in along the plates on the 60° side, 0.354 in on the 120° side" in said(query)
    assert "assumed laid" not in said(query)
    assert ask(query).legs.to_weld_far == pytest.approx(0.25 / sqrt(2) / 0.5 * INCH)
    # Over a gap of 1/8 in D1.1 adds it to the square tee's leg: (1/4 + 1/8)/√2/cos 60°.
    gapped = ask(f"{query}&gap=1/8in").legs.to_weld_far
    assert gapped == pytest.approx(0.375 / sqrt(2) / 0.5 * INCH)
    assert "assumed laid" not in said(f"{TEE}&skew=60deg&leg=1/4in&far_leg=1/8in")
    small = ask(f"{TEE}&skew=60deg&leg=1/4in&far_leg=1/8in")
    assert small.weld.holds / KIP_IN == pytest.approx(2 * 21 * 0.125 / sqrt(2))


def test_worked_out_both_sides_keep_one_throat() -> None:
    found = ask(f"{TEE}&skew=60deg".replace("py=3kip", "py=30kip"))
    assert found.legs.throat == pytest.approx(found.legs.judged / sqrt(2))
    assert "assumed laid" not in said(f"{TEE}&skew=60deg")


def test_a_square_tee_or_one_side_has_no_sides_that_differ() -> None:
    assert both_sides(ask(TEE).task, 0.01) is None
    assert ask(TEE).legs.to_weld_far is None
    one = ask(f"{TEE}&skew=60deg&weld_sides=1&leg=1/4in")
    assert both_sides(one.task, 0.01) is None
    assert one.weld.holds / KIP_IN == pytest.approx(21 * 0.25 / sqrt(2))
    unequal = ask(f"{TEE}&leg=1/4in&far_leg=1/8in")  # square, with two legs
    assert weld_throat(unequal.task, 0.25 * INCH) == pytest.approx(0.125 / sqrt(2) * INCH)


def test_a_sharp_side_never_counts_more_than_the_first() -> None:
    near, far = skew_sides(ask(f"{TEE}&skew=120deg&leg=1/4in").task.job, 0.25 * INCH, None)
    assert far.angle_deg == 60
    assert far.throat_m == near.throat_m
    assert far.laid_m == near.laid_m
    assert "assumed laid" not in said(f"{TEE}&skew=120deg&leg=1/4in")


@pytest.mark.parametrize(
    ("wire", "position", "lost", "level"),
    [
        ("ER70S-6", "2F", 0.0, ""),
        ("E71T-1M", "2F", 0.0, ""),
        ("E71T-1M", "3F-up", 0.125, "note"),
        ("ER70S-6", "3F-up", None, "stop"),
        ("E70C-6M", "4F", None, "stop"),
    ],
)
def test_under_60_degrees_the_root_may_be_lost(
    wire: str, position: str, lost: float | None, level: str
) -> None:
    query = f"{TEE}&skew=130deg&leg=1/2in&far_leg=1/2in&wire={wire}&position={position}"
    found = ask(query)
    levels = {n.key: n.level for n in found.notes if n.source == "aws-d1.1-z-loss"}
    assert "".join(levels.values()) == level
    throat = 0.5 / sqrt(2) - (lost or 0.0)
    assert found.weld.holds / KIP_IN == pytest.approx(2 * 21 * throat)
    assert found.stopped is (lost is None)


def test_the_european_code_counts_from_60_to_120_degrees() -> None:
    # 4.3.2.1: both sides of 125° are out, 60° and 120° are in; one side alone by its own angle.
    query = f"{TEE}&design_code=en"
    assert ask(f"{query}&skew=125deg").stopped
    assert not ask(f"{query}&skew=60deg").stopped
    assert not ask(f"{query}&skew=120deg").stopped
    assert ask(f"{query}&skew=125deg&weld_sides=1").stopped
    assert not ask(f"{query}&skew=65deg&weld_sides=1").stopped
    assert not ask(query).stopped


@pytest.mark.parametrize(
    "query", ["joint=lap&py=1kip&group=c", "weld_sides=1&py=1kip", "joint=v&py=1kip"]
)
def test_a_leg_where_no_other_side_is_welded_is_refused(query: str) -> None:
    with pytest.raises(FieldErrors) as caught:
        ask(f"{query}&far_leg=1/4in")
    assert set(caught.value.messages) == {"far_leg"}


def test_out_of_range_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="angle_deg"):
        throat_of_laid(0.01, 180.0)
    with pytest.raises(OutOfRangeError, match="angle_deg"):
        root_loss(44.0, wire_of("ER70S-6", "0.045in"), out_of_position=False)


def test_a_thousand_tees_agree_with_the_triangle() -> None:
    """The throat is the height of the triangle of both legs, whatever its angle."""
    chance = Random(60120)
    job = ask(f"{TEE}&skew=60deg&leg=1/4in").task.job
    for _ in range(1000):
        angle, laid = chance.uniform(45, 135), chance.uniform(0.003, 0.03)
        tip = complex(cos(angle * pi / 180), (1 - cos(angle * pi / 180) ** 2) ** 0.5) * laid
        face = tip - laid
        height = abs(laid * tip.imag) / abs(face)  # twice the area over the face
        assert throat_of_laid(laid, angle) == pytest.approx(height, rel=1e-9)
    near, far = skew_sides(job, 0.01, 0.01)
    assert throat_of_laid(near.laid_m, 60) == pytest.approx(near.throat_m)
    assert throat_of_laid(far.laid_m, 120) == pytest.approx(far.throat_m)


def test_angles_at_the_ends_of_what_is_taken() -> None:
    """Throat b cos(ψ/2); D1.1 Table 4.2 begins at 45° here."""
    solid = wire_of("ER70S-6", "0.045in")
    assert throat_of_laid(1.0, 0.5) == pytest.approx(0.99999048)
    for laid, angle in ((0.0, 90.0), (-0.01, 90.0), (0.01, 0.0), (0.01, 180.0)):
        with pytest.raises(OutOfRangeError):
            throat_of_laid(laid, angle)
    for angle in (45.0, 46.0):
        assert root_loss(angle, solid, out_of_position=False) == 0.0
        assert root_loss(angle, solid, out_of_position=True) is None
    assert root_loss(60.0, solid, out_of_position=True) == 0.0


def test_no_pieces_are_offered_of_a_weld_that_is_stopped() -> None:
    """AWS D1.1:2020 Table 4.2, from memory: no figure for a 45° side vertical."""
    for position, offered in (("3F-up", False), ("2F", True)):
        found = ask(f"skew=135deg&pz=5kip&group_height=6in&leg=1/4in&far_leg=1/4in"
                    f"&position={position}")  # fmt: skip
        assert (found.segments is not None) is offered
        assert any("centers" in told(note) for note in found.notes) is offered


def test_no_clause_of_d1_1_stands_beside_a_sharp_side_of_the_european_code() -> None:
    query = "units=si&skew=135deg&pz=5kN&leg=6mm&far_leg=6mm&position=3F-up&design_code=en"
    assert not any(note.source.startswith("aws") for note in ask(query).notes)
