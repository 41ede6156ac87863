"""Preheat, carbon equivalents and cooling against other forms of the same rules, 1,000 cases each.

The other forms are written here from the standards' text, brought to another shape by algebra, and
use nothing of the core. Seeds are kept, so that a case that once failed comes again.
"""

from collections.abc import Iterator
from itertools import product
from math import exp, log
from random import Random

import pytest

from beadwright.errors import OutOfRangeError
from beadwright.heating.carbon_equivalent import Method, equivalent, worst_melt
from beadwright.heating.cooling import CORNER, TEE, cooling, thick_time, thin_time
from beadwright.heating.preheat import SHOP_K, method_b
from beadwright.heating.preheat_a import hydrogen_scale, preheat_a
from beadwright.heating.preheat_table import table_row
from beadwright.heating.steels import ELEMENTS, Category, Composition, Limits
from beadwright.measures import System
from tests.told import in_words

CASES = 1000

# Most of each element drawn [%]: the widest that any of the three carbon equivalents is for.
DRAWN = {"c": 0.32, "mn": 1.9, "si": 0.8, "cr": 1.5, "mo": 0.75, "v": 0.2, "ni": 2.5, "cu": 1.0,
         "b": 0.005, "nb": 0.06}  # fmt: skip


def draws(seed: int) -> Iterator[Random]:
    random = Random(seed)
    for _ in range(CASES):
        yield random


def drawn(random: Random) -> dict[str, float]:
    return {key: random.uniform(0, most) for key, most in DRAWN.items()}


def test_carbon_equivalents_over_one_denominator() -> None:
    for random in draws(1391):
        x = drawn(random)
        steel = Composition(**x)
        # C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15, all over 30.
        ce = (30 * x["c"] + 5 * x["mn"] + 6 * (x["cr"] + x["mo"] + x["v"])
              + 2 * (x["ni"] + x["cu"])) / 30  # fmt: skip
        # C + (Mn+Mo)/10 + (Cr+Cu)/20 + Ni/40, all over 40.
        cet = (40 * x["c"] + 4 * (x["mn"] + x["mo"]) + 2 * (x["cr"] + x["cu"]) + x["ni"]) / 40
        # C + Si/30 + (Mn+Cu+Cr)/20 + Ni/60 + Mo/15 + V/10 + 5B, all over 60.
        pcm = (60 * x["c"] + 2 * x["si"] + 3 * (x["mn"] + x["cu"] + x["cr"]) + x["ni"]
               + 4 * x["mo"] + 6 * x["v"] + 300 * x["b"]) / 60  # fmt: skip
        found = [equivalent(steel, method) for method in ("ce", "cet", "pcm")]
        assert found == pytest.approx([ce, cet, pcm], rel=1e-12)


def test_method_b_with_its_tanh_and_power_as_exponentials() -> None:
    for random in draws(1392):
        cet, d = random.uniform(0.2, 0.5), random.uniform(10, 90)
        hydrogen, q = random.uniform(1, 20), random.uniform(0.5, 4)
        celsius = (
            cet * (697 + 53 * q) - 328 - 32 * q
            + 160 * (1 - 2 / (exp(2 * d / 35) + 1)) + 62 * exp(0.35 * log(hydrogen))
        )  # fmt: skip
        found = method_b(cet, d / 1e3, hydrogen, q * 1e6)
        assert found - 273.15 == pytest.approx(celsius, abs=1e-9)


def other_thick_s(q: float, t0: float) -> float:
    """1/a − 1/b as (b − a)/(a·b), with b − a = 300."""
    return (6700 - 5 * t0) * q * 300 / ((500 - t0) * (800 - t0))


def other_thin_s(q: float, d: float, t0: float) -> float:
    """1/a² − 1/b² as (b − a)(b + a)/(a·b)², with b + a = 1300 − 2 T0."""
    spread = 300 * (1300 - 2 * t0) / ((500 - t0) * (800 - t0)) ** 2
    return (4300 - 4.3 * t0) * 1e5 * (q / d) ** 2 * spread


def test_cooling_time_over_one_denominator() -> None:
    for random in draws(1393):
        q, d, t0 = random.uniform(0.2, 5), random.uniform(1, 100), random.uniform(-40, 400)
        kelvin = t0 + 273.15
        assert thick_time(q * 1e6, kelvin) == pytest.approx(other_thick_s(q, t0), rel=1e-9)
        thin = thin_time(q * 1e6, d / 1e3, kelvin)
        assert thin == pytest.approx(other_thin_s(q, d, t0), rel=1e-9)


def test_the_longer_cooling_time_rules_with_its_shape_factor() -> None:
    # EN 1011-2 Table D.1: tee F2 0.45 to 0.67, corner 0.67 to 0.9, the middle taken; F3 0.67.
    for random in draws(1394):
        factors, f2 = random.choice(((TEE, 0.56), (CORNER, 0.785)))
        q, t0 = random.uniform(0.3, 3), random.uniform(0, 250)
        one, two = random.uniform(3, 50), random.uniform(3, 50)
        heat = q * 1e6
        found = cooling((heat, heat, heat), (one / 1e3, two / 1e3), t0 + 273.15, factors)
        times = {"thick": 0.67 * other_thick_s(q, t0),
                 "thin": f2 * other_thin_s(q, (one + two) / 2, t0)}  # fmt: skip
        assert found.seconds == pytest.approx(max(times.values()), rel=1e-9)
        assert found.seconds == pytest.approx(times[found.regime], rel=1e-9)


def test_the_prequalified_row_against_a_plain_reading() -> None:
    """AWS D1.1/D1.1M Table 5.8, each edition's own steps and temperatures."""
    printed: dict[tuple[Category, System], tuple[int, ...]] = {
        ("B", "us"): (32, 50, 150, 225), ("B", "si"): (0, 10, 65, 110),
        ("C", "us"): (50, 150, 225, 300), ("C", "si"): (10, 65, 110, 150),
    }  # fmt: skip
    ends = {"us": (0.75, 1.5, 2.5), "si": (20, 38, 65)}
    unit = {"us": 0.0254, "si": 0.001}
    for random in draws(1395):
        category, system = random.choice(tuple(printed))
        thickness = random.uniform(0.1, 1.2 * ends[system][-1])
        row = sum(thickness > end for end in ends[system])
        found = table_row(category, thickness * unit[system], system)
        degrees = found.celsius if system == "si" else found.fahrenheit
        assert degrees == printed[category, system][row]


# EN 1011-2 Table C.1 as its rows print it: hydrogen over this; CE .49 at 1 and 2 kJ/mm, then .43.
TABLE_C1 = (
    (15, 25, 50, 40, 80), (10, 30, 55, 50, 90), (5, 35, 65, 60, 100), (3, 50, 100, 100, 100),
    (0, 60, 100, 100, 100),
)  # fmt: skip


def test_method_a_against_a_plain_reading_of_its_table() -> None:
    settled = 0
    for random in draws(1396):
        ce, hydrogen = random.uniform(0.3, 0.55), random.uniform(0.5, 20)
        q, combined = random.uniform(0.3, 4), random.uniform(5, 120)
        # 0.15 % C, 0.25 % Cr: the rest Mn, 0 to 1.7 %.
        mn = 6 * (ce - 0.15 - 0.25 / 5)
        row = next(row for row in TABLE_C1 if hydrogen > row[0])
        most = None
        if mn <= 1.7 and q >= 1 and ce <= 0.49:
            most = row[(1 if ce > 0.43 else 3) + (q >= 2)]
        found = preheat_a(Composition(0.15, mn, cr=0.25), combined / 1e3, hydrogen, q * 1e6)
        none = most is not None and combined <= most
        settled += none
        assert found.kelvin == (SHOP_K if none else None)
        assert (found.refused is None) == none
        assert found.most_m == (None if most is None else pytest.approx(most / 1e3))
        assert found.ce == pytest.approx(ce, abs=1e-12)
        assert found.scale == "ABCDE"[TABLE_C1.index(row)]
    assert 100 < settled < CASES - 100


@pytest.mark.parametrize(("combined", "none"), [(0.100, True), (0.1001, False)])
def test_method_a_s_table_holds_at_its_end(combined: float, none: bool) -> None:
    """CE .10 + 1.2/6 = .30, H5, 1.0 kJ/mm: to 100 mm."""
    found = preheat_a(Composition(0.10, 1.2), combined, 5.0, 1e6)
    assert (found.kelvin is not None) == none
    lean = preheat_a(Composition(0.03, 1.2), combined, 5.0, 1e6)  # C under the range asks no more
    assert (lean.kelvin is not None) == none


def test_method_a_refuses_what_it_is_not_for() -> None:
    past = preheat_a(Composition(0.26, 1.2), 0.01, 5.0, 1e6)
    assert (past.kelvin, past.most_m, past.scale) == (None, None, "D")
    assert past.ce == pytest.approx(0.46)
    assert in_words(past.refused).startswith("C 0.26 % is outside 0.05 to 0.25 %")
    for combined, heat in ((0.0, 1e6), (0.01, 0.0)):
        with pytest.raises(OutOfRangeError):
            preheat_a(Composition(0.1, 1.2), combined, 5.0, heat)
    with pytest.raises(OutOfRangeError):
        hydrogen_scale(0.0)


CAP = {"c": 1.0, "mn": 1 / 6, "cr": 0.2, "mo": 0.2, "v": 0.2, "ni": 1 / 15, "cu": 1 / 15}
WEIGHTS: dict[Method, dict[str, float]] = {
    "ce": CAP,
    "cet": {"c": 1.0, "mn": 0.1, "mo": 0.1, "cr": 0.05, "cu": 0.05, "ni": 0.025},
    "pcm": {"c": 1.0, "si": 1 / 30, "mn": 0.05, "cu": 0.05, "cr": 0.05, "ni": 1 / 60,
            "mo": 1 / 15, "v": 0.1, "b": 5.0},
}  # fmt: skip


def most_by_corners(limits: dict[str, float], cap: float, weights: dict[str, float]) -> float:
    """The most of a linear sum under one linear cap, by trying every corner.

    At a corner every element is at zero or its limit, but at most one, which takes what is left.
    """
    free = sum(weights.get(key, 0.0) * limits[key] for key in limits if key not in CAP)
    keys = list(CAP)
    best = 0.0
    for corner in product((0.0, 1.0), repeat=len(keys)):
        at = {key: share * limits[key] for key, share in zip(keys, corner, strict=True)}
        used = sum(CAP[key] * share for key, share in at.items())
        if used > cap + 1e-12:
            continue
        total = sum(weights.get(key, 0.0) * share for key, share in at.items())
        best = max(best, total)
        for key in keys:
            if at[key] == 0:
                part = min(limits[key], (cap - used) / CAP[key])
                best = max(best, total + weights.get(key, 0.0) * part)
    return free + best


@pytest.mark.parametrize("method", WEIGHTS)
def test_the_worst_melt_under_a_cap_against_every_corner(method: Method) -> None:
    for random in draws(1397):
        shares = drawn(random)
        most = Composition(**shares)
        cap = random.uniform(0.2, 0.8)
        melt = worst_melt(Limits(1.0, 1.0, most, cap), method)
        assert equivalent(melt, "ce") <= cap + 1e-9
        assert all(melt.share(e) <= most.share(e) + 1e-12 for e in ELEMENTS)
        wanted = most_by_corners(shares, cap, WEIGHTS[method])
        assert equivalent(melt, method) == pytest.approx(wanted, abs=1e-9)
        assert worst_melt(Limits(1.0, 1.0, most), method) == most
