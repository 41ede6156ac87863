"""Laps loaded along their welds, a thousand drawn, by EN 1993-1-8 written out in plain sums.

Nothing of the core is used on the other side. The seed is kept.
"""

from math import sqrt
from random import Random

import pytest

from beadwright.errors import FieldErrors
from beadwright.strength.leg_sizes import LegSizes
from tests.calc.strength_asked import ask

STEELS = {"S235JR": (360, 0.80), "S275JR": (410, 0.85), "S355J2": (470, 0.90)}
"""fu to 40 mm of plate and βw: EN 10025-2 Table 7, EN 1993-1-8 Table 4.1."""

TRIED = pytest.mark.parametrize(
    "cases",
    [100, pytest.param(1000, marks=pytest.mark.long(reason="a whole answer each"))],
)


def holds_n(length_mm: float, leg_mm: float, steel: str, lines: int) -> float | None:
    """What the weld holds along itself [N], or None where it may carry nothing.

    4.5.1(1): two throats off; (2): 30 mm and 6 a left. 4.5.3.3: fu/(√3 βw 1.25). 4.11(3): over
    150 a times 1.2 - 0.2 L/(150 a).
    """
    a = leg_mm / sqrt(2)
    left = length_mm - 2 * a
    lap = min(1.0, 1.2 - length_mm / (750 * a))
    if left < max(30.0, 6 * a) or lap <= 0:
        return None
    fu, correlation = STEELS[steel]
    return lines * left * a * lap * fu / sqrt(3) / correlation / 1.25


@TRIED
def test_laps_loaded_along_by_the_simplified_method(cases: int) -> None:
    rng = Random(19931)
    long = refused = none = 0
    for _ in range(cases):
        steel, leg = rng.choice(sorted(STEELS)), rng.randint(3, 12)
        length = round(10 ** rng.uniform(1.6, 3.9), 1)
        group, lines = rng.choice((("line", 1), ("lines", 2)))
        load = round(10 ** rng.uniform(0.5, 3.5), 2)
        query = (
            f"units=si&design_code=en&joint=lap&plate=20mm&plate2=20mm&steel={steel}&leg={leg}mm"
            f"&group={group}&group_height={length}mm&group_width=150mm&py={load}kN"
        )
        by_hand = holds_n(length, leg, steel, lines)
        if by_hand is None:
            refused += 1
            with pytest.raises(FieldErrors):
                ask(query)
            continue
        found = ask(query)
        assert isinstance(found.sizes, LegSizes)
        assert found.weld.use == pytest.approx(1000 * load / by_hand, rel=1e-9), query
        tried = {mm: holds_n(length, mm, steel, lines) for mm in range(3, 51)}
        held = [mm for mm, most in tried.items() if most is not None and most >= 1000 * load]
        if not held:
            none += 1
            assert found.sizes.needed is None, query
        else:
            assert found.sizes.needed == pytest.approx(held[0] / 1000), query
        a = leg / sqrt(2)
        long += length > 150 * a
        keys = {note.key for note in found.notes}
        assert ("strength.long-lap" in keys) == (length > 150 * a)
        assert ("strength.lap-too-long" in keys) == (length > 450 * a)
    # The draw reaches long laps, welds that may carry nothing, and loads no fillet holds.
    assert min(long, refused, none) >= cases // 50
