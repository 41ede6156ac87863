"""A key no page knows is refused by name; a key of another page is passed over."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.known_keys import USUAL, known_keys, unknown_keys
from beadwright.pages import PAGES


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize(
    ("key", "nearest"),
    [("plat", "plate"), ("postion", "position"), ("Gas", "gas"), ("weldlength", "weld_length")],
)
def test_an_unknown_key_is_refused_with_the_nearest(page: str, key: str, nearest: str) -> None:
    text = f"“{key}” is no entry this app knows. The nearest is “{nearest}”."
    assert answer_json(page, f"plate=1/4in&{key}=1") == {"errors": {key: [text]}}


def test_the_nearest_is_looked_for_on_the_page_asked_first() -> None:
    assert "“machine_amps”" in unknown_keys("dial-in", "machine_amp=1")["machine_amp"][0]
    # No key of Dial in comes near: Cost has one.
    assert "“labour”" in unknown_keys("dial-in", "labor=1")["labor"][0]


def test_a_key_like_no_other_is_refused_without_a_hint() -> None:
    assert unknown_keys("shop", "zzzzzz=1") == {"zzzzzz": ["“zzzzzz” is no entry this app knows."]}
    assert unknown_keys("shop", "%3Cscript%3E=1").keys() == {"<script>"}


def test_a_value_without_a_key_is_refused() -> None:
    assert unknown_keys("dial-in", "3/8in").keys() == {"3/8in"}
    assert unknown_keys("dial-in", "=3/8in&&&") == {}


@pytest.mark.parametrize("page", PAGES)
def test_keys_of_other_pages_are_passed_over(page: str) -> None:
    for other in PAGES.values():
        assert unknown_keys(page, "&".join(f"{key}=x" for key in other.fields)) == {}
    kept = "&".join([*(f"{key}=x" for key in USUAL), "wire_price@ER70S-6%200.045in=2/lb"])
    assert unknown_keys(page, kept) == {}
    assert known_keys() >= set(PAGES[page].fields) | set(USUAL)


def test_what_mail_and_messengers_hang_on_a_link_is_passed_over() -> None:
    assert unknown_keys("dial-in", "plate=1/4in&utm_source=mail&fbclid=ab") == {}
    assert unknown_keys("dial-in", "utmost=1").keys() == {"utmost"}


def test_other_messages_come_with_it() -> None:
    with pytest.raises(FieldErrors) as caught:
        answer("dial-in", "plate=0in&plat=1")
    assert caught.value.messages.keys() == {"plat", "plate"}


def test_many_unknown_keys_are_named_in_part() -> None:
    found = unknown_keys("dial-in", "&".join(f"qq{n}=1" for n in range(12)))
    assert found.keys() == {*(f"qq{n}" for n in range(5)), "query"}
    assert found["query"] == ["7 more keys are not known."]
    assert all(len(key) <= 40 for key in unknown_keys("dial-in", f"{'k' * 5000}=1"))
