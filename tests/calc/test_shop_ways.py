"""What makes machine and circuit hold the job is offered, and what is offered does it."""

from typing import Any
from urllib.parse import parse_qsl, urlencode

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.machine.shop_page import ShopAnswer
from tests.calc.ways import MB3
from tests.told import in_words, told


def shop(query: str) -> ShopAnswer:
    return answer("shop", f"{MB3}&{query}")


def changed(query: str, changes: Any) -> ShopAnswer:
    typed = {**dict(parse_qsl(f"{MB3}&{query}")), **changes}
    return answer("shop", urlencode({key: text for key, text in typed.items() if text}))


SHORT_OF = (
    "breaker=30A&arc_share=20%25",
    "breaker=40A",
    "plate=3/16in&leg=3/16in&generator=6kW&rated_amps=210A&duty=30%25&breaker=30A&cord=10 AWG",
    "breaker=70A&cord_length=300ft",
    "breaker=100A&cord=12 AWG",
    "rated_amps=250A&duty=30%25&arc_share=60%25&breaker=100A",
    "rated_amps=250A&duty=20%25&weld_length=20ft&breaker=100A",
    "generator=9kVA&units=si",
    "plate=10ga&leg=1/8in&breaker=15A&supply=120&rated_amps=140A&duty=20%25&volts=20",
)


@pytest.mark.parametrize("query", SHORT_OF)
def test_each_way_out_leads_to_a_job_that_holds(query: str) -> None:
    found = shop(query)
    assert any(check.held != "holds" for check in found.circuit.checks)
    assert found.ways_out, "nothing is offered"
    for way in found.ways_out:
        after = changed(query, way.changes)
        assert after.circuit.holds, in_words(way.phrase)
        assert after.dialled.open
        if "wfs" in way.changes:
            assert not [note for note in after.dialled.notes if note.level in ("out", "stop")]
        held = {check.key: check.held for check in after.circuit.checks}
        before = {check.key for check in found.circuit.checks if check.held != "holds"}
        assert [key for key in before if held.get(key) == "holds"], in_words(way.phrase)


def test_less_feed_a_thinner_wire_and_a_shorter_cord_are_among_them() -> None:
    kinds = {key for query in SHORT_OF for way in shop(query).ways_out for key in way.changes}
    assert kinds >= {"wfs", "dia", "cord_length", "cord", "breaker", "generator", "arc_share",
                     "weld_length"}  # fmt: skip


@pytest.mark.parametrize(("units", "step_m"), [("us", 0.0254 / 8), ("si", 0.005)])
@pytest.mark.parametrize("length", ["20ft", "17.3ft", "11ft"])
def test_pieces_can_be_marked_with_chalk_and_make_up_the_whole_weld(
    units: str, step_m: float, length: str
) -> None:
    query = f"rated_amps=250A&duty=20%25&weld_length={length}&breaker=100A&units={units}"
    [way] = [each for each in shop(query).ways_out if "weld_length" in each.changes]
    whole, cut = shop(query).dialled.job, changed(query, way.changes).dialled.job
    steps = cut.weld_length_m / step_m
    assert steps == pytest.approx(round(steps), abs=1e-6)
    pieces = cut.welds / whole.welds
    more = pieces * cut.weld_length_m - whole.weld_length_m
    assert -1e-9 <= more < pieces * step_m


def test_nothing_is_offered_where_all_holds() -> None:
    found = shop("breaker=100A")
    assert found.circuit.holds
    assert found.ways_out == ()


def test_a_breaker_by_hand_is_the_next_one_made() -> None:
    # 53 A drawn: 60 A is the next rating of a breaker.
    [way] = [w for w in shop("breaker=30A&arc_share=20%25").ways_out if "breaker" in w.changes]
    assert way.changes == {"breaker": "60A"}
    assert in_words(way.phrase) == "A 60 A circuit, by an electrician"


def test_volts_follow_the_current_written() -> None:
    whole, less = shop(""), shop("amps=150A")
    assert less.circuit.load.current_a == 150.0
    assert less.circuit.load.volts < whole.circuit.load.volts - 2
    assert less.dialled.point is not None
    assert less.dialled.point.current_a == pytest.approx(150.0, rel=0.03)
    by_hand = shop("amps=150A&volts=28V")
    assert by_hand.circuit.load.volts == 28.0
    assert shop("amps=150A&wfs=400in/min").dialled.settings.wire_feed.value == pytest.approx(
        400 * 0.0254 / 60
    )


def test_a_plate_that_draws_less_than_it_gives_is_refused() -> None:
    # 350 A × 31.5 V = 11 025 W; at 230 V no less than 48 A.
    with pytest.raises(FieldErrors, match="must draw 49 A or more"):
        shop("plate_amps=40A")
    assert shop("plate_amps=60A").circuit.rated.primary_a == pytest.approx(60.0)


def test_on_a_generator_start_and_steady_and_the_caution_are_told() -> None:
    found = shop("generator=9kVA")
    [check] = [each for each in found.circuit.checks if each.key == "generator"]
    assert check.held == "fails"
    assert "kVA while the arc burns" in in_words(check.phrase)
    assert "at each start" in in_words(check.phrase)
    [mind] = [note for note in found.notes if note.key == "machine.generator-mind"]
    assert mind.level == "caution"
    assert "outdoors" in told(mind)
    assert "running watts" in told(mind)
    assert not [note for note in shop("").notes if note.key == "machine.generator-mind"]
    watts = answer_json("shop", f"{MB3}&generator=9000W")["answer"]
    assert watts["checks"] == answer_json("shop", f"{MB3}&generator=9kVA")["answer"]["checks"]


def test_the_circuit_is_sized_by_the_plate_and_the_page_says_so() -> None:
    [note] = [n for n in shop("amps=150A").notes if n.key == "machine.plate-rules-circuit"]
    assert "at its rated 350 A it draws about 59 A" in told(note)
    assert "This job draws" in told(note)
