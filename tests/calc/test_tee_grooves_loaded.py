"""Beveled tees cut part way, under load: the throat from the root to the face of the fillet."""

from math import hypot, sqrt

import pytest

from beadwright.units import read
from tests.calc.strength_asked import ask

KIP_IN = read("1kip/in", "force_per_length")


def test_a_tee_cut_part_way_counts_from_the_root_to_the_face_of_its_fillet() -> None:
    # Depth 3/8, fillet 1/4: from (-3/8, 0) to the line through (1/4, 0) and (0, 3/8), flat.
    query = "joint=tee-bevel&plate=5/16in&plate2=3/4in&depth=3/8in&leg=1/4in&held=yes"
    throat = 2.5 / hypot(4, 1 / 0.375)
    loaded = f"{query}&group_height=6in&pz=6kip&position=1F"
    assert ask(loaded).weld.holds / KIP_IN == pytest.approx(0.6 * 70 * throat / 1.88)
    # EN 1993-1-8: 10 mm deep, fillet 6 mm, 2 mm of the depth not sure; S235 fu 360, βw 0.8.
    query = "units=si&joint=tee-bevel&plate=8mm&plate2=20mm&depth=10mm&leg=6mm&held=yes"
    found = ask(f"{query}&group_height=100mm&pz=6kN&design_code=en&position=PA")
    a = (10 / 6 + 1) / hypot(1 / 6, 1 / 10) - 2
    assert found.weld.holds / 1000 == pytest.approx(a * 360 / sqrt(3) / 0.8 / 1.25)
