"""The steel asked for: a certificate against its grade, the worst melt the grade allows."""

import pytest

from beadwright.api import answer
from beadwright.heating.heat_answer import HeatAnswer
from tests.told import in_words, told

JOB = "plate=3/8in&leg=5/16in"


def heat(query: str) -> HeatAnswer:
    return answer("heat", query)


def said(found: HeatAnswer, level: str) -> str:
    return " ".join(told(note, found.units) for note in found.notes if note.level == level)


def test_a_certificate_past_its_grade_is_not_read_in_the_table() -> None:
    """A36 plate: C at most .25 % to 1-1/2 in, .26 to 2-1/2, .27 to 4, .29 over."""
    for plate, c, fits in (("3/8in", 0.25, True), ("3/8in", 0.26, False), ("2in", 0.26, True),
                           ("2in", 0.27, False), ("3in", 0.27, True),
                           ("3in", 0.28, False)):  # fmt: skip
        found = heat(f"plate={plate}&leg=1/2in&steel=A36&c={c}&mn=0.9")
        assert (found.needed.row is not None) == fits, plate
        assert ("certificate is not of A36" in said(found, "stop").replace("The", "the")) != fits
        assert found.needed.code == ("d1.1" if fits else "en-b")
    # EN 10025-2 Table 6, S355 to 30 mm: .45. CE .20 + 1.6/6 = .467; .18 + 1.6/6 = .447.
    over = heat("plate=25mm&leg=6mm&units=si&steel=S355J2&c=0.20&mn=1.6")
    assert "CE(IIW) 0.47, at this thickness at most 0.45" in said(over, "stop")
    assert said(heat("plate=25mm&leg=6mm&units=si&steel=S355J2&c=0.18&mn=1.6"), "stop") == ""
    assert said(heat("plate=35mm&leg=6mm&units=si&steel=S355J2&c=0.20&mn=1.6"), "stop") == ""


@pytest.mark.parametrize(("mn", "over"), [(1.644, False), (1.656, True)])
def test_a_cap_is_kept_to_the_two_places_it_is_printed_with(mn: float, over: bool) -> None:
    """CE .18 + 1.644/6 = .454, printed .45; .18 + 1.656/6 = .456, printed .46."""
    found = heat(f"plate=25mm&leg=6mm&units=si&steel=S355J2&c=0.18&mn={mn}")
    assert (found.steel.off_grade is not None) == over


def test_the_worst_melt_keeps_the_grade_s_own_cap() -> None:
    """S355J2 to 30 mm: C .20 and CE .45. Cu .55 takes .0367, Mn the .2133 left: 1.28 %.

    CET .20 + 1.28/10 + .55/20 = .3555.
    """
    worst = heat("plate=25mm&leg=6mm&units=si&steel=S355J2&melt=limit")
    melt = worst.steel.composition
    assert melt is not None
    assert (melt.c, melt.cu) == (0.20, 0.55)
    assert melt.mn == pytest.approx(1.28, abs=1e-9)
    assert [e.value for e in worst.equivalents][:2] == pytest.approx([0.45, 0.3555], abs=1e-9)


def test_ce_is_shown_over_a_quarter_percent_of_carbon_with_its_caution() -> None:
    """CE .30 + .9/6 = .45, past the .25 % of carbon it is for; CET .39; Pcm is for .22 at most."""
    found = heat(f"{JOB}&c=0.30&mn=0.9")
    assert [e.value for e in found.equivalents] == [pytest.approx(0.45), pytest.approx(0.39), None]
    assert "CE(IIW) 0.45 is for C to 0.25 %, this steel has 0.3 %" in said(found, "caution")
    assert "C 0.3 % is outside" in in_words(found.equivalents[0].refused[0])
    assert "is for C to" not in said(heat(f"{JOB}&c=0.25&mn=0.9"), "caution")
    # Past the range by another element too, no CE is given.
    assert heat(f"{JOB}&c=0.30&mn=0.9&si=0.79").equivalents[0].value == pytest.approx(0.45)
    assert heat(f"{JOB}&c=0.30&mn=1.75").equivalents[0].value is None


@pytest.mark.parametrize(
    ("query", "text"),
    [
        ("plate=1.25in&leg=1/4in&steel=A572-60", ""),
        ("plate=1.5in&leg=1/4in&steel=A572-60", "A572-60 is listed here to 1-1/4 in only"),
        ("plate=36mm&leg=6mm&steel=A572-60&units=si", "A572-60 is listed here to 32.0 mm only"),
        ("plate=4in&leg=1/2in&steel=A36", ""),
    ],
)
def test_a_grade_not_made_so_thick_is_told(query: str, text: str) -> None:
    told = said(heat(query), "caution")
    assert (text in told) if text else ("is listed here to" not in told)


def test_sheet_is_not_judged_by_what_is_for_plate() -> None:
    """Method B counts 16 ga as 10 mm, and the hardness was fitted to beads on plate."""
    sheet, plate = heat("plate=16ga&leg=1/16in"), heat("plate=1/8in&leg=1/8in")
    assert "At the limits of its standard" not in said(sheet, "caution")
    assert "At the limits of its standard" in said(plate, "caution")
    assert sheet.hardness.value is None
    assert in_words(sheet.hardness_refused) == "sheet, the formulas are for beads on plate"
    assert plate.hardness.value is not None
