"""The mode on the other side of a near choice: where it is offered, and with what."""

import pytest

from beadwright.api import answer_json
from beadwright.job.job_query import read_query
from beadwright.setting.dial_in import dial_in
from beadwright.setting.other_mode import OtherMode, other_mode
from beadwright.setting.plan import make_plan

JOB = "wire=ER70S-6&dia=0.045in&position=2F"


def other(query: str) -> OtherMode | None:
    job = read_query(f"{JOB}&{query}").job
    return other_mode(job, make_plan(job))


@pytest.mark.parametrize(
    ("query", "mode"),
    [
        # Plate to 1/4 in is run either way.
        ("gas=90/10&plate=1/4in", "short"),
        ("gas=90/10&plate=4.4mm", "spray"),
        # Thicker only where the gas stands about the limit of spray, 18 to 26 % CO2.
        ("gas=90/10&plate=3/8in", None),
        ("gas=80/20&plate=3/8in", "short"),
        ("gas=82/18&plate=3/8in", "short"),
        ("gas=83/17&plate=3/8in", None),
        ("gas=74/26&plate=3/8in", "short"),
        ("gas=73/27&plate=3/8in", None),
        ("gas=90/10&plate=6.6mm", None),
        # No spray at all in CO2; nothing where the mode or a setting is the welder's own.
        ("gas=CO2&plate=3/16in", None),
        ("gas=90/10&plate=1/4in&transfer=spray", None),
        ("gas=90/10&plate=1/4in&volts=26V", None),
        ("wire=E71T-1C&gas=CO2&plate=1/4in", None),
    ],
)
def test_where_the_other_mode_is_offered(query: str, mode: str | None) -> None:
    found = other(query)
    assert (found and found.transfer) == mode


def test_what_is_offered_is_what_asking_for_it_gives() -> None:
    found = other("gas=90/10&plate=1/4in")
    assert found is not None
    asked = dial_in(read_query(f"{JOB}&gas=90/10&plate=1/4in&transfer=short").job)
    assert found.feed_m_s == asked.settings.wire_feed.value
    assert found.volts == asked.settings.volts.value
    assert asked.point is not None
    assert found.current_a == asked.point.current_a


def test_the_page_tells_the_other_mode_with_units() -> None:
    found = answer_json("dial-in", f"{JOB}&gas=90/10&plate=1/4in")
    asked = answer_json("dial-in", f"{JOB}&gas=90/10&plate=1/4in&transfer=short")["answer"]
    assert found["answer"]["transfer"] == "spray"
    assert found["other_mode"]["transfer"] == "short"
    for key in ("wire_feed", "volts", "current"):
        told = found["other_mode"][key]
        assert told["unit"] == asked[key]["unit"]
        assert told["value"] == pytest.approx(asked[key]["value"], rel=1e-6)
