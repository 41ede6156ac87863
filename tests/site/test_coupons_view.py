"""What the Coupons page shows of its answer."""

from __future__ import annotations

from beadwright.coupons.coupons_page import coupons_answer
from beadwright_site.pages.coupons.view import pace_of, setting_rows

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10"


def test_each_setting_stands_behind_its_name() -> None:
    typed = "&wfs=380in/min&volts=27.1V&travel=14in/min&ctwd=11/16in"
    found = {name: before for name, before, _, _ in setting_rows(coupons_answer(JOB + typed))}
    assert found == {
        "Wire feed": "380 in/min",
        "Volts": "27.1 V",
        "Travel": "14.0 in/min",
        "Tip to work": "11/16 in",
    }


def test_the_beat_counts_in_the_units_shown() -> None:
    found = pace_of(coupons_answer(f"{JOB}&travel=15in/min&marked=4in"))
    assert (found.beads, found.length, found.names) == ("6.3500", "101.60", "1/4 in,1/2 in")
    assert pace_of(coupons_answer(f"{JOB}&units=si")).names == "5 mm,10 mm"
