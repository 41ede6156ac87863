"""Seams by intermittent fillets, a thousand drawn for each code, by the clauses in plain sums.

Nothing of the core is used on the other side. The seeds are kept.
"""

from math import ceil, floor, sqrt
from random import Random

import pytest

from tests.calc.strength_asked import ask

TRIED = pytest.mark.parametrize(
    "cases",
    [100, pytest.param(1000, marks=pytest.mark.long(reason="a whole answer each"))],
)


def by_steps(length: float, step: float, *, up: bool) -> float:
    """To the next mark on a rule, up or down."""
    return step * (ceil(length / step - 1e-9) if up else floor(length / step + 1e-9))


def seam(
    links: list[tuple[float, float, float]], least: float, widest_gap: float, step: float
) -> tuple[float, float] | None:
    """Segment and pitch of a seam, or None where it is welded all along or does not hold.

    The segments carry all that the seam is asked: what it holds, times what counts of a segment.

    Args:
        links: Of each link what it is asked and holds per length, and what of a segment's length
            does not count.
        least: Shortest segment.
        widest_gap: Widest gap between segments; below zero: widest pitch.
        step: Marks of the rule.
    """
    if any(asked > holds for asked, holds, _ in links):
        return None
    segment = by_steps(least, step, up=True)
    widest = segment + widest_gap if widest_gap > 0 else -widest_gap
    pitch = min(widest, *((segment - lost) * holds / asked for asked, holds, lost in links))
    pitch = by_steps(pitch, step, up=False)
    return (segment, pitch) if pitch > segment else None


def by_aisc(q: float, leg: float, t1: float, t2: float, sides: int, code: str) -> (
    tuple[float, float] | None
):  # fmt: skip
    """A36 and E70 in kip and inches.

    AISC 360-22 J2.4: 0.60 FEXX × 0.707 w, φ 0.75, Ω 2.00; J4.2: 0.60 Fy t, φ 1.00, Ω 1.50, and
    0.60 Fu t, φ 0.75, Ω 2.00; J2.2b(e): segments of four legs and 1-1/2 in; AWS D1.1:2020,
    4.12.2.1: 24 t and 12 in.
    """
    tears = 0.75 if code == "lrfd" else 1 / 2.00
    yields = 1.00 if code == "lrfd" else 1 / 1.50
    links = [(q, sides * 0.60 * 70 * leg / sqrt(2) * tears, 0.0)]
    for asked, thick in ((q / sides, t1), (q, t2)):
        links.append((asked, 0.60 * 36 * thick * yields, 0.0))
        links.append((asked, 0.60 * 58 * thick * tears, 0.0))
    return seam(links, max(4 * leg, 1.5), -min(24 * min(t1, t2), 12), 0.5)


def by_en(q: float, leg: float, t1: float, t2: float, sides: int) -> tuple[float, float] | None:
    """S235 in kN and millimeters.

    EN 1993-1-8:2005, 4.5.3.3: fu/(√3 βw 1.25) a, fu 360, βw 0.80; 4.5.1: two throats off each
    segment, 30 mm and 6 a left; 4.3.2.2: gaps to 12 t and 200 mm. EN 1993-1-1, 6.2.6: fy/√3 t, fy
    235 to 16 mm, 225 to 40 mm (EN 10025-2 Table 7).
    """
    a = leg / sqrt(2)
    links = [(q, sides * a * 0.360 / sqrt(3) / 0.80 / 1.25, 2 * a)]
    for asked, thick in ((q / sides, t1), (q, t2)):
        fy = 0.235 if thick <= 16 else 0.225
        links.append((asked, fy / sqrt(3) * thick, 0.0))
    return seam(links, max(30.0, 6 * a) + 2 * a, min(12 * min(t1, t2), 200.0), 10.0)


@TRIED
def test_seams_by_aisc(cases: int) -> None:
    rng, met = Random(2236), {True: 0, False: 0}
    for _ in range(cases):
        leg, t1, t2 = (rng.randint(low, high) / 16 for low, high in ((3, 8), (4, 16), (4, 16)))
        q, sides = round(10 ** rng.uniform(-1.3, 1.2), 3), rng.choice((1, 2))
        code = rng.choice(("asd", "lrfd"))
        found = ask(
            f"line_load={q}kip/in&leg={leg}in&plate={t1}in&plate2={t2}in&weld_sides={sides}"
            f"&design_code={code}&held=yes&weld_length=40in"
        ).segments
        # Table J2.4: what is under the least leg is stopped, and no part of it offered.
        least = next(size for size, to in ((3, 8), (4, 12), (5, 99)) if min(t1, t2) * 16 <= to)
        plain = by_aisc(q, leg, t1, t2, sides, code) if leg * 16 >= least else None
        met[plain is not None] += 1
        shown = found and (found.segment_m / 0.0254, found.pitch_m / 0.0254)
        assert shown == (plain if plain is None else pytest.approx(plain))
    assert min(met.values()) > cases // 10


@TRIED
def test_seams_by_en(cases: int) -> None:
    rng, met = Random(4322), {True: 0, False: 0}
    for _ in range(cases):
        leg, t1, t2 = rng.randint(4, 12), rng.randint(5, 30), rng.randint(5, 30)
        q, sides = round(10 ** rng.uniform(-2, 0.4), 4), rng.choice((1, 2))
        found = ask(
            f"units=si&design_code=en&line_load={q}kN/mm&leg={leg}mm&plate={t1}mm&plate2={t2}mm"
            f"&weld_sides={sides}&held=yes&weld_length=1000mm"
        ).segments
        # 4.5.2(2): a throat under 3 mm is stopped.
        plain = by_en(q, leg, t1, t2, sides) if leg / 2**0.5 >= 3 else None
        met[plain is not None] += 1
        shown = found and (found.segment_m * 1000, found.pitch_m * 1000)
        assert shown == (plain if plain is None else pytest.approx(plain))
    assert min(met.values()) > cases // 10
