"""The query string: what is taken, what is refused and in which words."""

import json
from typing import Final

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright import units
from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.job.job_entries import DEFAULTS
from beadwright.job.job_query import read_query
from beadwright.pages import PAGES
from beadwright.process.wires import INCH_SIZES_M, METRIC_NAMES
from beadwright.reading.queries import MOST_KEYS
from tests.calc.jobs import Typed, jobs_by_hand, query

EXAMPLE_QUERY = PAGES["dial-in"].example

PAGE: Final = "dial-in"


def refused(text: str) -> dict[str, list[str]]:
    with pytest.raises(FieldErrors) as caught:
        read_query(text)
    return caught.value.messages


def test_an_empty_query_is_the_default_job() -> None:
    found = read_query("")
    spelled = read_query(query({key: value for key, value in DEFAULTS.items() if value}))
    assert found.job == spelled.job
    assert found.typed == {}


def test_units_are_named_whatever_their_case() -> None:
    assert [units.system_named(text) for text in ("si", " SI ", "us", "", "metric")] == [
        "si", "si", "us", "us", "us",
    ]  # fmt: skip


def test_a_question_mark_before_it_is_dropped() -> None:
    assert read_query("?" + EXAMPLE_QUERY).job == read_query(EXAMPLE_QUERY).job


@pytest.mark.parametrize("key", DEFAULTS)
def test_a_blank_value_is_the_default(key: str) -> None:
    assert read_query(f"{key}=").job == read_query("").job
    assert read_query(f"{key}=%20%20").job == read_query("").job


def test_the_last_of_a_repeated_key_holds() -> None:
    assert read_query("plate=1in&plate=1/4in").job.plate_m == pytest.approx(0.00635)


def test_too_many_keys_are_refused() -> None:
    many = "&".join(f"k{n}=1" for n in range(MOST_KEYS + 1))
    assert refused(many) == {"query": ["This address has more than 300 entries."]}
    assert read_query("&".join(f"k{n}=1" for n in range(MOST_KEYS))).typed == {}


LENGTH_RANGE = "outside 30ga to 4in: sheet of 30 gauge to plate of 4 in"


@pytest.mark.parametrize(
    ("text", "field", "message"),
    [
        ("plate=0in", "plate", f"0in is {LENGTH_RANGE}"),
        ("plate=-1/4in", "plate", f"-1/4in is {LENGTH_RANGE}"),
        ("plate=5in", "plate", f"5in is {LENGTH_RANGE}"),
        ("plate=999999999in", "plate", f"999999999in is {LENGTH_RANGE}"),
        ("plate=0.1mm", "plate", f"0.1mm is {LENGTH_RANGE}"),
        ("units=si&plate=200", "plate",
         "200 is outside 0.3 mm to 101.6 mm: sheet of 30 gauge to plate of 4 in"),
        ("plate=nan", "plate", "“nan” is not a quantity; write it like 3/8in"),
        ("units=si&plate=inf", "plate", "“inf” is not a quantity; write it like 9.5mm"),
        ("plate=1e999in", "plate", "“1e999in”: unit not known here; use cm, ft, in, m, mm"),
        ("plate=1/0in", "plate", "“1/0” has a zero below the line"),
        ("plate=10gauges", "plate", "“10gauges”: unit not known here; use cm, ft, in, m, mm"),
        ("plate=6ga", "plate", "6 ga is not in the steel sheet table; it has 3, 7, 8, 9, 10, 11, "
         "12, 13, 14, 15, 16, 18, 20, 22, 24, 26, 28, 30"),
        ("leg=3in", "leg",
         "3in is outside 1/16in to 2in: a smaller one cannot be measured; use a groove for a "
         "larger one"),
        ("gap=1/4in", "gap",
         "1/4 in is outside 0 in to 3/16 in: AWS D1.1 7.21.1 lets no fillet be welded over more"),
        ("gap=-1mm", "gap",
         "-1mm is outside 0in to 1/2in: no detail opens a root wider"),
        ("reinforcement=1in", "reinforcement",
         "1in is outside 0in to 3/16in: no code accepts a higher crown"),
        ("wfs=2000in/min", "wfs",
         "2000in/min is outside 30in/min to 1000in/min: no feeder holds less or gives more"),
        ("wfs=290V", "wfs", "“290V”: unit not known here; use cm/min, in/min, m/min, mm/s"),
        ("volts=5", "volts", "5 is outside 10V to 50V: no wire arc burns outside that"),
        ("ctwd=3in", "ctwd",
         "3in is outside 1/8in to 2in: closer melts the tip, farther lets the arc wander"),
        ("travel=0", "travel",
         "0 is outside 1in/min to 200in/min: no hand or machine moves a gun at that speed"),
        ("weld_length=0", "weld_length",
         "0 is outside 1/4in to 1000ft: one weld, not the whole job"),
        ("machine_amps=5", "machine_amps",
         "5 is outside 30A to 1000A: smallest to largest wire power source"),
        ("machine_volts=100", "machine_volts",
         "100 is outside 12V to 60V: smallest to largest wire power source"),
        ("welds=0", "welds", "0 is outside 1 to 1000000"),
        ("welds=1000001", "welds", "1000001 is outside 1 to 1000000"),
        ("welds=8.5", "welds", "“8.5” is not a count; use a whole number 1 to 1000000"),
        ("welds=-8", "welds", "“-8” is not a count; use a whole number 1 to 1000000"),
        ("welds=٨", "welds", "“٨” is not a count; use a whole number 1 to 1000000"),
        ("joint=knot", "joint", "“knot” is not one of tee, lap, corner, square, "
         "v, double-v, bevel, double-bevel, tee-bevel, tee-double-bevel, plug, slot"),
        ("units=metric", "units", "“metric” is not one of us, si"),
        ("transfer=dip", "transfer", "“dip” is not one of auto, short, spray, pulse"),
        ("travel_by=foot", "travel_by", "“foot” is not one of hand, track, robot"),
        ("wire=E7018", "wire", "“E7018” is not one of ER70S-6, ER70S-3, ER70S-2, ER80S-D2, "
         "E70C-6M, E80C-Ni1, E71T-1C, E71T-1M"),
        ("wire=<script>alert(1)</script>", "wire",
         "“<script>alert(1)</script>” is not one of ER70S-6, ER70S-3, ER70S-2, ER80S-D2, "
         "E70C-6M, E80C-Ni1, E71T-1C, E71T-1M"),
        ("gas=90/11", "gas", "“90/11” adds to 101; the shares must add to 100"),
        ("gas=mud", "gas", "“mud” is no gas; write argon first, CO2 second and a symbol after any "
         "other: 90/10, 98/2 O2, 90/8/2 O2"),
        ("position=5G", "position", "“5G” is no position; use 1F 2F 3F-up 3F-down 4F, "
         "1G 2G 3G-up 3G-down 4G or PA to PG"),
        ("dia=0.041in", "dia", "“0.041in” is no size in the table; it has 0.023in (0.6mm), "
         "0.030in (0.8mm), 0.035in (0.9mm), 0.040in (1.0mm), 0.045in (1.2mm), 0.052in (1.4mm), "
         "1/16in (1.6mm)"),
        ("wire=E70C-6M&dia=0.030in", "dia",
         "E70C-6M is made in 0.035in, 0.040in, 0.045in, 0.052in, 1/16in, not 0.030in"),
        ("joint=corner&plate=1/8in&leg=1/4in", "leg",
         "An outside corner holds no leg over its thinner plate, 1/8 in."),
        ("joint=square&gap=0&reinforcement=0", "gap",
         "A square butt with no gap and no reinforcement has nothing to fill; give one."),
    ],
)  # fmt: skip
def test_what_is_refused_names_what_is_allowed(text: str, field: str, message: str) -> None:
    messages = refused(text)
    assert messages[field] == [message]
    assert answer_json(PAGE, text) == {"errors": messages}


def test_every_wrong_field_is_said_at_once() -> None:
    messages = refused("plate=0&leg=9in&gas=mud&welds=x")
    assert set(messages) == {"plate", "leg", "gas", "welds"}


def test_what_stands_on_the_end_of_a_range_is_taken() -> None:
    assert read_query("plate=30ga").job.plate_m == pytest.approx(0.0003048)
    assert read_query("plate=101.6mm").job.plate_m == pytest.approx(0.1016)
    assert read_query("leg=2in&plate=4in").job.leg_m == pytest.approx(0.0508)


@pytest.mark.parametrize(
    ("typed", "key", "si"),
    [
        ("plate=3/8", "plate_m", 0.009525),
        ("units=si&plate=9.5", "plate_m", 0.0095),
        ("units=SI&plate=9,5", "plate_m", 0.0095),
        ("plate=9.5mm", "plate_m", 0.0095),
        ("plate=10ga", "plate_m", 0.0034163),
        ("plate=1-1/4in", "plate_m", 0.03175),
        ("plate=1+1/4in", "plate_m", 0.03175),
        ("plate=1%C2%BCin", "plate_m", 0.03175),
        ("plate=3/8%22", "plate_m", 0.009525),
        ("leg=5/16in", "leg_m", 0.0079375),
        ("weld_length=2ft", "weld_length_m", 0.6096),
        ("machine_amps=250", "machine_amps_a", 250.0),
    ],
)
def test_what_is_typed_reaches_the_job_in_si(typed: str, key: str, si: float) -> None:
    assert getattr(read_query(typed).job, key) == pytest.approx(si, rel=1e-12)


@pytest.mark.parametrize(
    ("typed", "key", "si"),
    [
        ("wfs=290ipm", "wire_feed_m_s", 0.12276666666666667),
        ("units=si&wfs=7.4", "wire_feed_m_s", 0.12333333333333334),
        ("volts=23.6", "volts", 23.6),
        ("ctwd=3/4in", "tip_to_work_m", 0.01905),
        ("units=si&travel=300", "travel_m_s", 0.005),
    ],
)
def test_settings_by_hand_reach_the_job_in_si(typed: str, key: str, si: float) -> None:
    assert getattr(read_query(typed).job.by_hand, key) == pytest.approx(si, rel=1e-12)


@pytest.mark.parametrize("size", INCH_SIZES_M)
def test_wire_sizes_however_they_are_typed(size: str) -> None:
    metric = METRIC_NAMES[size]
    bare = size.removesuffix("in")
    for text in (size, size.upper(), bare, bare.lstrip("0"), metric, metric.removesuffix("mm"),
                 f"{INCH_SIZES_M[size] / 0.0254:.4f}"):  # fmt: skip
        assert read_query(f"dia={text}").job.wire.size == size


@pytest.mark.parametrize("text", ["1.0mm", "1mm", "1%20mm", "1", ".040", "0.040in", "0.04"])
def test_one_millimeter_is_its_own_size(text: str) -> None:
    assert read_query(f"dia={text}").job.wire.size == "0.040in"
    assert read_query(f"units=si&dia={text}").job.wire.size == "0.040in"


def test_flux_cored_wire_is_not_made_in_it() -> None:
    """0.035, 0.045, 0.052, 1/16 in: filler metal lessons, all-position gas-shielded wires."""
    assert refused("wire=E71T-1C&gas=CO2&dia=1.0mm") == {
        "dia": ["E71T-1C is made in 0.035in, 0.045in, 0.052in, 1/16in, not 0.040in"]
    }


@pytest.mark.parametrize(
    ("typed", "name"),
    [("2f", "2F"), ("pb", "2F"), ("3F-UP", "3F-up"), ("PG", "3F-down"), ("4G", "4F"), ("PC", "2F")],
)
def test_positions_however_they_are_typed(typed: str, name: str) -> None:
    assert read_query(f"position={typed}").job.position_name == name


def test_a_bare_number_follows_the_units_asked_for_wherever_they_stand() -> None:
    assert read_query("plate=12&units=si").job.plate_m == pytest.approx(0.012)


def test_the_shops_own_defaults_give_way_to_the_query() -> None:
    own = {"gas": "75/25", "machine_amps": 250, "color": "red", "leg": None}
    assert read_query("", own).job.gas.name == "75/25"
    assert read_query("", own).job.machine_amps_a == 250
    assert read_query("gas=CO2", own).job.gas.name == "CO2"
    assert read_query("", own).own == {"gas", "machine_amps"}


def test_a_wrong_default_of_the_shop_is_said_beside_its_field() -> None:
    with pytest.raises(FieldErrors, match="gas: “mud” is no gas"):
        read_query("", {"gas": "mud"})


def test_a_page_there_is_not() -> None:
    [message] = answer_json("weather", "")["errors"]["page"]
    assert message == f"There is no page weather; there is {', '.join(PAGES)}."


@settings(max_examples=60)
@given(jobs_by_hand())
def test_the_canonical_query_is_the_same_job(typed: Typed) -> None:
    try:
        found = answer(PAGE, query(typed) + "&labour=41")
    except FieldErrors:
        return
    assert read_query(found.canonical).job == found.query.job
    assert answer(PAGE, found.canonical).canonical == found.canonical
    assert "color" not in found.canonical


@settings(max_examples=60)
@given(jobs_by_hand())
def test_an_answer_is_plain_json_without_nan(typed: Typed) -> None:
    report = answer_json(PAGE, query(typed))
    assert json.loads(json.dumps(report, allow_nan=False)) == report


@settings(max_examples=150)
@given(
    st.dictionaries(
        st.sampled_from(list(DEFAULTS)),
        st.text(max_size=30)
        | st.sampled_from(["nan", "1e999", "-1", "0", "9" * 400, "½", "\ud7ff", "%00", "1/0"]),
        max_size=6,
    )
)
def test_nothing_typed_breaks_it(typed: Typed) -> None:
    report = answer_json(PAGE, query(typed))
    for field, messages in report.get("errors", {}).items():
        assert field in {*DEFAULTS, "query"}
        assert messages
        assert all(len(message) < 300 for message in messages)
        if field not in {"position", "gas"}:  # see below
            assert all(message.isprintable() for message in messages)


@pytest.mark.parametrize("field", ["position", "gas"])
def test_messages_hold_no_control_characters(field: str) -> None:
    [message] = refused(f"{field}=%1b[31mx")[field]
    assert message.isprintable()


@settings(max_examples=100)
@given(st.text(max_size=80))
def test_no_query_string_breaks_it(text: str) -> None:
    json.dumps(answer_json(PAGE, text), allow_nan=False)
