"""The Cost page: the core's numbers, sums that add up, sentences where a number would be none."""

import re
from decimal import Decimal

import pytest
from flask.testing import FlaskClient
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site.pages.cost.page import PAGE
from beadwright_site.pages.cost.shares import rounded
from beadwright_site.pages.cost.view import pieces_table, sums_table, times_table
from tests.site.page import by_id, elements, inside, words
from tests.told import in_words

EXAMPLE = PAGES["cost"].example

QUERIES = (
    EXAMPLE,
    "units=si&plate=10mm&leg=8mm&b_gas=85/15",
    "leg=5/16in&labour=0&overhead=0",
    "leg=5/16in&parts=0",
    "leg=5/16in&b_wire=ER70S-6",
    "leg=5/16in&c_wire=ER70S-3&c_gas=75/25&d_travel_by=robot",
    "leg=5/16in&factor=40%&arc_min=4min&b_arc_min=3min",
    "leg=5/16in&draws=300&seed=3",
    "leg=5/16in&parts=40&welders=1&shift=1h&shifts=1&weeks=1",
)


def number(text: str) -> Decimal:
    """Read a number as shown."""
    return Decimal(re.sub(r"[^\d.-]", "", text))


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_numbers_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/cost/?{query}").text
    found = answer("cost", query)
    cards = words(by_id(page, "ways"))
    for cost in found.costs:
        assert f"${cost.part:,.2f} a part · {cost.time_s / 60:.1f} min" in cards
    main = words(by_id(page, "verdict"))
    verdicts = [each.verdict for each in found.comparisons]
    assert all(in_words(v.headline) in main and in_words(v.reason) in main for v in verdicts)
    assert all(in_words(held.phrase) in words(by_id(page, "hours")) for held in found.capacities)


def test_the_bare_page_is_the_example_and_says_what_is_invented(client: FlaskClient) -> None:
    bare, asked = (client.get(f"/cost/{q}").text for q in ("", f"?{EXAMPLE}"))
    for part in ("verdict", "ways", "even", "hangs", "pieces", "hours"):
        assert words(by_id(bare, part)) == words(by_id(asked, part))
    assert words(by_id(bare, "state")).startswith("Example: bracket MB-3.")
    assert re.search(r"\d+ figures invented", words(by_id(bare, "state")))
    assert "8 welds a part. 480 parts a year." in words(by_id(bare, "verdict"))


def test_a_price_of_ones_own_is_no_longer_called_invented(client: FlaskClient) -> None:
    def tagged(page: str) -> int:
        return sum("invented" in e.attrs.get("class", "").split() for e in elements(page))

    bare = client.get("/cost/").text
    own = client.get("/cost/?leg=5/16in&labour=30&wire_price=2").text
    assert tagged(bare) == int(re.findall(r"(\d+) figures invented", bare)[0]) > 2
    assert tagged(own) == tagged(bare) - 2


@pytest.mark.parametrize("query", QUERIES)
def test_what_is_shown_adds_up(query: str) -> None:
    found = answer("cost", query)
    for table in (pieces_table(found), times_table(found)):
        for way in range(1, len(found.ways) + 1):
            assert sum(number(row[way]) for row in table.rows) == number(table.total[way])
    year = sums_table(found).total
    for way, cost in enumerate(found.costs, start=1):
        shown = number(year[way])
        assert abs(float(shown) - cost.year(found.parts)) <= 0.5


def sum_rows(client: FlaskClient, query: str) -> dict[str, Decimal]:
    """Return the sums under the verdict, line by line, as a reader has them."""
    section = by_id(client.get(f"/cost/?{query}").text, "verdict")
    [sums] = [e for e in inside(section) if "sums" in e.attrs.get("class", "").split()]
    return {
        words(line.children[0]): number(words(line.children[1]).replace("−", "-"))
        for line in sums.children
    }


@pytest.mark.parametrize(
    "query",
    [
        EXAMPLE,
        "leg=5/16in&parts=25000",
        "leg=5/16in&parts=7&b_rolls=12.34",
        "leg=5/16in&parts=777&b_yearly=250&months=18",
        "leg=5/16in&parts=100000000&welders=10000",
        "leg=5/16in&b_wire_price=20/lb&months=7&yearly=33",
        "leg=5/16in&spatter=1min&b_spatter=1min&parts=333",
    ],
)
def test_the_sums_under_the_verdict_add_up_on_paper(client: FlaskClient, query: str) -> None:
    rows = sum_rows(client, query)
    found = answer("cost", query).comparisons[0]
    saved = next(amount for name, amount in rows.items() if name.endswith("a part"))
    parts, gross = next(
        (number(name), amount) for name, amount in rows.items() if name.startswith("×")
    )
    places = Decimal(1) if "." not in str(gross) else Decimal("0.01")
    assert (saved * parts).quantize(places) == gross
    year = gross + rows.get("less yearly cost", Decimal(0))
    assert rows["Each year after"] == year
    months = int(found.case.months)
    period = rows.get(f"in {months} months", year)
    assert period == (year * months / 12).quantize(places)
    [first] = [
        amount
        for name, amount in rows.items()
        if name.startswith(("First-year savings", "Savings, first"))
    ]
    assert first == period + rows.get("less change-over cost", Decimal(0))
    # And they are the core's, but for what is rounded.
    near = max(1.0, 2e-4 * abs(found.sums.gross))
    assert float(first) == pytest.approx(found.sums.first, abs=near)
    assert float(rows["Worst case, 1 in 10"]) == pytest.approx(found.sums.worst, abs=0.51)


def test_bare_sums_are_the_difference_of_the_cards(client: FlaskClient) -> None:
    rows = sum_rows(client, EXAMPLE)
    one, other = (
        number(text) for text in re.findall(r"\$[\d.]+ a part", words(by_id(
            client.get(f"/cost/?{EXAMPLE}").text, "ways")))
    )  # fmt: skip
    assert abs(rows["Saved a part"] - (one - other)) < Decimal("0.006")


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ("leg=5/16in", "at equal amps: 326 A"),
        ("leg=5/16in&compared=equal-travel", "at equal travel speed: 11.2 in/min"),
        ("leg=5/16in&compared=as-run", "each as usually run"),
        ("leg=5/16in&b_laid=12lb/h", "as you measured it"),
    ],
)
def test_what_is_held_equal_stands_in_the_headline(
    client: FlaskClient, query: str, said: str
) -> None:
    page = client.get(f"/cost/?{query}").text
    assert f"against ER70S-6 0.045in, 90/10, {said}" in words(by_id(page, "verdict"))
    assert "Common practice, no source:" in words(by_id(page, "hangs"))
    offered = {e.attrs["value"] for e in elements(page) if e.attrs.get("name") == "compared"}
    assert offered == {"", "equal-amps", "equal-travel", "as-run", "measured"}


@pytest.mark.parametrize(
    ("query", "said", "on_cost"),
    [
        # 20.6 and 16.5 min a part: 8 h a day, 250 days are 5 800 and 7 300 parts.
        ("parts=6500", "Only E70C-6M 0.045in, 90/10 delivers 6,500 parts a year", True),
        ("parts=9000", "Neither way delivers 9,000 parts a year", True),
        ("parts=6500&spatter=0min&b_spatter=9min", "E70C-6M 0.045in, 90/10 cannot deliver", True),
        ("parts=4000", "Pays: over 99 chances in 100", False),
    ],
)
def test_whether_the_shop_can_deliver_stands_before_the_odds(
    client: FlaskClient, query: str, said: str, on_cost: bool
) -> None:
    text = words(by_id(client.get(f"/cost/?leg=5/16in&{query}").text, "verdict"))
    assert text.startswith(said)
    assert ("On cost alone, if" in text) == on_cost


@settings(max_examples=60)
@given(st.lists(st.floats(0, 1e6), min_size=1, max_size=9), st.integers(0, 3))
def test_rounded_pieces_add_up_and_stay_near(amounts: list[float], places: int) -> None:
    pieces, whole = rounded(amounts, places)
    assert round(sum(pieces) * 10**places) == round(whole * 10**places)
    assert all(abs(p - a) < 1.0001 / 10**places for p, a in zip(pieces, amounts, strict=True))


@pytest.mark.parametrize(
    ("query", "part", "said"),
    [
        ("labour=0&overhead=0", "even", "Your time is priced at zero"),
        ("labour=0&overhead=0", "notes", "Time is priced at zero"),
        ("parts=0", "verdict", "No parts, no saving"),
        ("parts=0", "even", "at zero parts a year"),
        ("b_wire_price=500/lb", "verdict", "Does not pay"),
        ("b_wire_price=500/lb", "even", "No number of parts pays"),
        ("wire_price=0&b_wire_price=0", "verdict", "a year"),
        ("parts=100000000", "hours", "Cannot deliver"),
    ],
)
def test_odd_figures_give_a_sentence(client: FlaskClient, query: str, part: str, said: str) -> None:
    page = client.get(f"/cost/?leg=5/16in&{query}").text
    assert said in words(by_id(page, part))
    text = " ".join(words(by_id(page, p)) for p in PAGE.parts if p != "job-form")
    assert not re.search(r"\b(nan|inf|infinity|none)\b", text, re.IGNORECASE)


@pytest.mark.parametrize(
    "query", ["leg=5/16in&parts=0", "leg=5/16in&labour=0&overhead=0&energy_price=0&wire_price=0"]
)
def test_drawings_have_finite_places_only(client: FlaskClient, query: str) -> None:
    page = client.get(f"/cost/?{query}").text
    drawn = [
        e for e in elements(page) if e.tag in ("path", "polyline", "polygon", "circle", "rect")
    ]
    assert drawn
    for element in drawn:
        assert not re.search(r"nan|inf", " ".join(element.attrs.values()))


def test_ways_are_added_and_taken_out_by_links(client: FlaskClient) -> None:
    def links(page: str) -> dict[str, str]:
        return {words(e): e.attrs["href"] for e in elements(page)
                if e.tag == "a" and "way" in e.attrs.get("class", "").split()}  # fmt: skip

    page = client.get("/cost/?leg=5/16in").text
    three = client.get(f"/cost/{links(page)['Add way C']}").text
    assert len(PAGE.show(links(page)["Add way C"]).html["ways"].split("<article")) == 4
    two = client.get(f"/cost/{links(three)['Take out way C']}").text
    assert words(by_id(two, "ways")) == words(by_id(page, "ways"))


def test_the_draws_are_those_of_the_seed(client: FlaskClient) -> None:
    query = "leg=5/16in&draws=400&seed="
    one, same, other = (words(by_id(client.get(f"/cost/?{query}{s}").text, "chance"))
                        for s in (1, 1, 2))  # fmt: skip
    assert one == same
    assert one != other
    found = answer("cost", f"{query}1").comparisons[0].chance
    assert found is not None
    assert f"{found.pays:.0%} of 400 what-ifs" in one


def test_units_change_amounts_by_no_more_than_the_settings_round(client: FlaskClient) -> None:
    us, si = (client.get(f"/cost/?leg=5/16in&units={u}").text for u in ("us", "si"))
    pick = re.compile(r"\$[\d.,]+ a part")
    pairs = zip(*(pick.findall(words(by_id(page, "ways"))) for page in (us, si)), strict=True)
    for one, other in pairs:
        assert float(number(one)) == pytest.approx(float(number(other)), rel=0.005)
    assert "kg/h" in words(by_id(si, "ways"))
    assert "/m" in words(by_id(si, "ways"))


def test_one_part_a_year_is_counted_as_one(client: FlaskClient) -> None:
    text = words(by_id(client.get("/cost/?leg=5/16in&parts=1").text, "verdict"))
    assert "× 1 part a year" in text
    assert "8 welds a part. 1 part a year." in text


def test_one_month_is_counted_as_one(client: FlaskClient) -> None:
    page = client.get("/cost/?leg=5/16in&months=1").text
    assert "Savings, first 1 month −" in words(by_id(page, "verdict")).replace("month−", "month −")
    assert "Payback in a month from" in words(by_id(page, "even"))
    assert "1 months" not in words(by_id(page, "verdict")) + words(by_id(page, "even"))


def test_two_equal_ways_meet_nowhere(client: FlaskClient) -> None:
    even = words(by_id(client.get("/cost/?leg=5/16in&b_wire=ER70S-6").text, "even"))
    assert "Break-even– Both ways come to the same." in even
    assert "Most you could pay for this" not in even


def test_half_invented_prices_are_told_under_the_headline(client: FlaskClient) -> None:
    text = words(by_id(client.get("/cost/?leg=5/16in&wire_price=4/lb").text, "verdict"))
    assert "the price of its wire is made up and is compared with your own" in text
    plain = words(by_id(client.get("/cost/?leg=5/16in").text, "verdict"))
    assert "invented" not in plain


@pytest.mark.parametrize(
    ("query", "tone"),
    [("parts=6500", "for"), ("parts=6500&b_wire_price=9/lb", "open"), ("parts=9000", "against")],
)
def test_parts_had_for_more_money_are_no_plain_gain(
    client: FlaskClient, query: str, tone: str
) -> None:
    page = client.get(f"/cost/?leg=5/16in&{query}").text
    assert by_id(page, "verdict").attrs["class"] == f"verdict {tone}"
