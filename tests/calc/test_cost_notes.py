"""What the Cost page warns of beside its sums, and which comparison is left to chance."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors, UnknownEntryError
from beadwright.job.page_query import page_fields, read_page
from beadwright.money.cost_notes import HALF_INVENTED
from beadwright.money.cost_page import CostAnswer, drawn_on, start_chance
from beadwright.money.cost_query import CostQuery
from tests.told import told

JOB = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&leg=5/16in"


def notes(query: str) -> list[tuple[str, str, str, str]]:
    """Return level, field, source and words of each note but those on invented figures."""
    return [
        (note["level"], note["field"], note["source"], note["text"])
        for note in answer_json("cost", query)["notes"]
        if note["source"] != "invented"
    ]


def test_what_stops_a_way_is_said_with_its_name_beside_its_field() -> None:
    """AISC 360 Table J2.4: over 1/4 in to 1/2 in a fillet of 3/16 in at the least."""
    under = "Leg 1/8 in is under the code minimum of 3/16 in for this plate"
    solid, cored = notes(JOB.replace("5/16in", "1/8in"))
    assert solid[:3] == ("stop", "leg", "aisc-j2.4")
    assert solid[3].startswith(f"ER70S-6 0.045in, 90/10: {under}")
    assert cored[:3] == ("stop", "b_leg", "aisc-j2.4")
    assert cored[3].startswith(f"E70C-6M 0.045in, 90/10: {under}")


def test_a_sound_job_with_prices_of_its_own_has_no_notes() -> None:
    assert notes(JOB) == []


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ("labour=0&overhead=0", ["labour"]),
        ("labour=0", []),
        ("overhead=0", []),
        ("parts=0", ["parts"]),
        ("parts=1", []),
        ("b_wire=ER70S-3", ["b_wire_price"]),
        ("c_wire=ER70S-3&c_wire_price=2/lb", []),
        ("c_wire=ER70S-3", ["c_wire_price"]),
    ],
)
def test_a_figure_that_makes_the_sums_mean_less_is_said_beside_its_field(
    query: str, said: list[str]
) -> None:
    assert [field for _, field, _, _ in notes(f"{JOB}&{query}")] == said


def ways() -> CostAnswer:
    """Return three ways compared, the seed and the draws written."""
    return answer("cost", f"{JOB}&c_wire_price=5/lb&seed=3&draws=300")


@pytest.mark.parametrize("way", [1, 2])
def test_the_draws_are_those_of_the_way_asked_for(way: int) -> None:
    found = ways()
    run, comparison = start_chance(found, way), found.comparisons[way - 1]
    assert comparison.case is not found.comparisons[2 - way].case
    assert run.run(300) == comparison.chance


def test_more_draws_change_all_that_comes_from_draws_and_nothing_else() -> None:
    found = ways()
    before = found.comparisons[0]
    state = start_chance(found, 1, 1000).run(700)
    assert (state.done, state.draws) == (700, 1000)
    after = drawn_on(before, state, "$")
    assert after.chance is state
    assert after.sums.worst == state.low  # in twelve months
    assert after.curve[-1].now[0] == pytest.approx(after.curve[-1].parts * state.now[0])
    assert (after.sums.first, after.swings, after.case) == (
        before.sums.first, before.swings, before.case,
    )  # fmt: skip
    assert after.verdict.reason == before.verdict.reason


@pytest.mark.parametrize("way", [-1, 0, 3])
def test_a_way_that_is_not_there_has_no_draws(way: int) -> None:
    with pytest.raises(UnknownEntryError, match=f"no way {way}; there are 1 to 2"):
        start_chance(ways(), way)


@pytest.mark.parametrize(
    ("key", "more"),
    [
        ("b_leg", ", way B; blank: as the first way"),
        ("d_wire_price", ", way D; blank: as the first way"),
        ("c_wfs", ", way C; blank: worked out"),
    ],
)
def test_help_on_a_later_way_names_it_and_says_what_blank_means(key: str, more: str) -> None:
    fields = page_fields(CostQuery)
    assert fields[key].help == fields[key[2:]].help + more


def test_what_a_way_costs_once_is_not_as_in_the_first_way() -> None:
    assert page_fields(CostQuery)["c_rolls"].help.endswith(", way C")


def test_a_blank_figure_of_a_later_way_is_that_of_the_first_or_its_own() -> None:
    fields = page_fields(CostQuery)
    assert fields["c_wire_price"].blank == "as A"
    assert fields["c_leg"].blank == "as A"
    assert fields["c_laid"].blank == "worked out"
    assert fields["c_rolls"].blank == "0"


@pytest.mark.parametrize(
    ("key", "least", "most"),
    [
        ("batch", 1, 100_000_000),
        ("months", 1, 240),
        ("welders", 1, 10_000),
        ("shifts", 1, 21),
        ("weeks", 1, 53),
        ("seed", 0, 999_999_999),
        ("draws", 100, 10_000),
    ],
)
def test_a_count_is_taken_to_its_ends_and_no_farther(key: str, least: int, most: int) -> None:
    """Three shifts on seven days; 53 weeks begin in a year at most; twenty years of months."""
    for count in (least, most):
        assert getattr(read_page(CostQuery, f"{key}={count}", None), key) == count
    for count in (least - 1, most + 1):
        with pytest.raises(FieldErrors) as refused:
            read_page(CostQuery, f"{key}={count}", None)
        assert set(refused.value.messages) == {key}


def test_the_sign_before_money_is_four_letters_at_most() -> None:
    assert read_page(CostQuery, "currency=SFr.", None).currency == "SFr."
    with pytest.raises(FieldErrors) as refused:
        read_page(CostQuery, "currency=Euros", None)
    assert set(refused.value.messages) == {"currency"}


@pytest.mark.parametrize(
    ("query", "fields"),
    [
        ("", []),
        ("&wire_price=4/lb", ["b_wire_price"]),
        ("&b_wire_price=4/lb", ["wire_price"]),
        ("&wire_price=4/lb&b_wire_price=5/lb&spatter=2min", ["b_spatter"]),
        ("&wire_price=4/lb&b_wire=E71T-1C&b_gas=CO2", []),  # the first wire's stands in: told so
        ("&wire_price=4/lb&b_spool_price=90&b_spool=33lb&b_spatter=1min&spatter=1min", []),
    ],
)
def test_an_own_figure_against_an_invented_one_is_told(query: str, fields: list[str]) -> None:
    found = answer("cost", JOB + query)
    half = [note for note in found.notes if note.phrase.key == HALF_INVENTED]
    assert [note.field for note in half] == fields
    for note in half:
        at = int(note.field.startswith("b_"))
        assert told(note).startswith(f"{found.ways[at].way.name}: ")
        assert "is made up and is compared with your own" in told(note)


@pytest.mark.parametrize(
    ("query", "ways"),
    [
        ("", []),  # the demonstration has minutes for both its wires
        ("&c_wire=E80C-Ni1", ["c_spatter"]),
        ("&c_wire=E80C-Ni1&c_spatter=1min", []),
        ("&c_wire=E80C-Ni1&spatter=0min", []),
        ("&c_dia=0.035in", []),
        ("&b_wire=E71T-1C&b_gas=CO2", ["b_spatter"]),
    ],
)
def test_the_first_wire_s_spatter_standing_in_is_told(query: str, ways: list[str]) -> None:
    notes = [n for n in answer("cost", JOB + query).notes if "No spatter time typed" in told(n)]
    assert [note.field for note in notes] == ways
    assert all("the first wire's 4.0 min is used" in told(note) for note in notes)
