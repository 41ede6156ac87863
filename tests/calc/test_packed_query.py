"""A packed query means what it holds; damaged, it is refused with what to do."""

from __future__ import annotations

import base64
import random
import zlib
from urllib.parse import urlencode

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.reading.packed_query import LONGEST_UNPACKED, PackedQueryError, packed, unpacked
from beadwright.reading.queries import split_query

JOB = "plate=3/8in&leg=5/16in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"


def packed_by_hand(query: str) -> str:
    """The same by the library's own calls for addresses."""
    return base64.urlsafe_b64encode(zlib.compress(query.encode(), 9)).decode().rstrip("=")


def test_it_holds_any_query_and_only_letters_a_link_leaves_alone() -> None:
    draw = random.Random(20)
    for _ in range(300):
        keys = {f"k{at}": "".join(draw.choices("a1/.,%é\n =&+-_", k=draw.randrange(40)))
                for at in range(draw.randrange(1, 12))}  # fmt: skip
        query = urlencode(keys)
        text = packed(query)
        assert unpacked(text) == query
        assert urlencode({"z": text}) == f"z={text}"


def test_it_is_a_zlib_stream_in_base_64_for_addresses() -> None:
    assert unpacked(packed_by_hand(JOB)) == JOB
    assert packed(JOB) == packed_by_hand(JOB)


def test_a_list_packs_to_less_than_half() -> None:
    lines = "\n".join(f"Gusset {at},tee,3/8in,5/16in,{at}in,1,2F" for at in range(1, 60))
    query = urlencode({"lines": lines})
    assert 2 * len(packed(query)) < len(query)


@pytest.mark.parametrize("page", ["dial-in", "passes", "cost", "card"])
def test_every_page_answers_a_packed_job_as_the_plain_one(page: str) -> None:
    assert answer_json(page, f"z={packed(JOB)}") == answer_json(page, JOB)


def test_what_stands_beside_it_wins_and_a_blank_takes_nothing_back() -> None:
    found = split_query(f"z={packed(JOB)}&plate=1/2in&leg=")
    assert (found["plate"], found["leg"], found["wire"]) == ("1/2in", "5/16in", "ER70S-6")
    assert "z" not in found
    assert split_query("z=&plate=1/2in") == {"plate": "1/2in"}


def test_a_packed_query_in_a_packed_query_is_no_entry() -> None:
    with pytest.raises(FieldErrors) as refused:
        answer("dial-in", f"z={packed(f'z={packed(JOB)}')}")
    assert list(refused.value.messages) == ["z"]


def test_cut_at_any_letter_it_is_refused_by_its_key() -> None:
    text = packed(JOB)
    for length in range(1, len(text)):
        with pytest.raises(FieldErrors) as refused:
            split_query(f"z={text[:length]}")
        [message] = refused.value.messages["z"]
        assert "Scan the code again" in message


def test_any_letter_changed_is_refused() -> None:
    text = packed(JOB)
    for at, right in enumerate(text[:-1]):  # the last letter has bits that count for nothing
        for letter in {*"A_9"} - {right}:
            with pytest.raises(FieldErrors):
                split_query(f"z={text[:at]}{letter}{text[at + 1 :]}")


@pytest.mark.parametrize("text", ["é", "a b", "!", "====", "AAAA" * 9])
def test_what_is_no_packed_query_is_refused(text: str) -> None:
    with pytest.raises(PackedQueryError):
        unpacked(text)


def test_a_link_that_would_unpack_to_a_flood_is_refused() -> None:
    assert unpacked(packed("a" * LONGEST_UNPACKED)) == "a" * LONGEST_UNPACKED
    flood = packed("a" * 50_000_000)
    assert len(flood) < 100_000
    with pytest.raises(PackedQueryError):
        unpacked(flood)
