"""ISO 5817 by the whole page: where each limit is from, thin plate, short imperfections."""

from __future__ import annotations

import pytest

from beadwright.api import answer
from beadwright.inspection.inspected import Check

THICK = "units=si&plate=10mm&leg=6mm"
THIN = "units=si&plate=2mm&leg=2mm&dia=0.030in&gas=75/25&weld_length=60mm"


def check(query: str, key: str) -> Check:
    [one] = [each for each in answer("inspect", query).checks if each.key == key]
    return one


def limit(query: str, key: str) -> float:
    return 1000 * check(query, key).limit


@pytest.mark.parametrize(
    ("query", "key", "source"),
    [
        (f"{THICK}&accept=iso-c", "undercut", "iso-5817-form"),
        (f"{THIN}&accept=iso-c", "undercut", "iso-5817-memory"),
        (f"{THICK}&accept=iso-c", "throat-over", "iso-5817-throat"),
        (f"{THICK}&accept=iso-d", "throat-over", "iso-5817-memory"),
        (f"{THICK}&accept=iso-c&short_length=20mm", "throat", "iso-5817-throat"),
        (f"{THIN}&accept=iso-c&short_length=10mm", "throat", "iso-5817-memory"),
        (f"{THIN}&accept=iso-c", "throat", "iso-5817-throat"),
        (f"{THICK}&accept=iso-c", "gap", "iso-5817-throat"),
        (f"{THIN}&accept=iso-c", "gap", "iso-5817-memory"),
        ("units=si&plate=3mm&leg=3mm&accept=iso-c", "gap", "iso-5817-memory"),
        (f"{THICK}&accept=iso-c", "overlap", "iso-5817-memory"),
        (f"{THICK}&accept=iso-c", "pores", "iso-5817-surface"),
        (f"{THICK}&accept=iso-c", "crater", "iso-5817-surface"),
        (f"{THICK}&accept=iso-c", "convexity", "iso-5817-form"),
        (f"{THICK}&accept=iso-c", "length", "practice"),
    ],
)
def test_each_limit_tells_where_it_is_from(query: str, key: str, source: str) -> None:
    assert check(query, key).source == source


def test_thin_plate_has_limits_of_its_own() -> None:
    """Throat 2 mm × 0.70711 = 1.414 mm, plate 2 mm; typed from the rules of plate to 3 mm."""
    c, d = f"{THIN}&accept=iso-c", f"{THIN}&accept=iso-d"
    assert limit(c, "pores") == 0.0
    assert limit(d, "pores") == pytest.approx(0.3 * 1.4142, rel=1e-3)
    assert limit(c, "crater") == 0.0
    assert limit(d, "crater") == pytest.approx(0.2 * 2)
    assert limit(c, "gap") == pytest.approx(0.3 + 0.1 * 1.4142, rel=1e-3)
    assert limit(f"{c}&short_length=10mm", "throat") == pytest.approx(1.4142 - 0.2, rel=1e-3)
    assert limit(f"{d}&short_length=10mm", "throat") == pytest.approx(
        1.4142 - 0.2 - 0.14142, rel=1e-3
    )
    # Of plate over 3 mm: a fifth of the throat of 4.243 mm, no more than 2 mm.
    assert limit(f"{THICK}&accept=iso-c", "pores") == pytest.approx(0.2 * 4.2426, rel=1e-3)


def test_a_short_imperfection_may_be_as_long_as_25_mm() -> None:
    query = f"{THICK}&accept=iso-c&throat_found=3.6&weld_length=200mm&short_length"
    assert check(f"{query}=0mm", "throat").state == "in"
    assert check(f"{query}=25mm", "throat").state == "in"
    assert check(f"{query}=25.5mm", "throat").state == "out"


def test_the_note_of_short_imperfections_stands_where_any_are_taken() -> None:
    assert check(f"{THICK}&accept=iso-c", "throat").note is not None
    assert check(f"{THICK}&accept=iso-b", "throat").note is None  # none is taken in B
    assert check(f"{THIN}&accept=iso-c", "undercut").note is not None
    assert check(f"{THIN}&accept=iso-b", "undercut").note is None


def test_a_weld_shorter_than_asked_is_out() -> None:
    query = f"{THICK}&accept=iso-d&weld_length=150mm&length_found"
    assert check(f"{query}=150mm", "length").state == "in"
    assert check(f"{query}=140mm", "length").state == "out"


def test_one_leg_alone_says_nothing_of_asymmetry() -> None:
    assert check(f"{THICK}&accept=iso-b&leg_found=6", "asymmetry").state == "unknown"


def test_plate_of_3_mm_is_thin() -> None:
    """Table 1: 0.5 to 3 mm, and over 3 mm."""
    thin = "units=si&plate=3mm&leg=3mm&accept"
    assert limit(f"{thin}=iso-c", "pores") == 0.0
    assert limit(f"{thin}=iso-b", "undercut") == 0.0
    assert check(f"{thin}=iso-c", "undercut").note is not None  # short ones only
    thick = "units=si&plate=3.1mm&leg=3mm&accept"
    assert limit(f"{thick}=iso-c", "pores") == pytest.approx(0.2 * 3 * 0.70711, rel=1e-3)
    assert limit(f"{thick}=iso-b", "undercut") == pytest.approx(0.05 * 3.1)
    assert check(f"{thick}=iso-c", "undercut").note is None
