"""The file of all a phone keeps: taken whole after a look, or refused whole with the reason."""

from __future__ import annotations

import json
from collections import Counter
from random import Random
from typing import Any
from urllib.parse import urlencode

import pytest
from jsonschema import Draft202012Validator

from beadwright.coupons.coupon_records import records_text
from beadwright.coupons.kept_file import LONGEST_LIST, KeptFileError, read_kept_file
from beadwright.weld_list import weld_lines
from beadwright_site.phone import call
from tests.site.kept_files import READ, broken_file, sound_file
from tests.site.published_schema import SCHEMA

NOTHING: dict[str, Any] = {"shop": {}, "jobs": [], "coupons": []}


def look(file: Any, now: dict[str, Any] = NOTHING) -> dict[str, Any]:
    text = file if isinstance(file, str) else json.dumps(file)
    found: dict[str, Any] = json.loads(call("look", json.dumps({"text": text, **now})))
    return found


def test_a_file_is_shown_as_what_it_would_change() -> None:
    file = sound_file()
    found = look(file, {**NOTHING, "shop": {"labour": "38/h", "welder": "Ann"}})
    assert found["ok"]
    assert found["shop"] == {"labour": "41/h", "wire_price@ER70S-6 0.045in": "2/lb"}
    assert found["jobs"] == file["jobs"]
    assert found["coupons"] == file["coupons"]
    assert found["count"] == 2 + 1 + 3
    told = [(line["before"], line["after"]) for line in found["lines"]]
    assert told == [
        ("38/h", "41/h"),
        ("not kept", "2/lb"),
        ("not kept", "Dial in: Bracket MB-3"),
        ("not kept", "3 kept"),
    ]


def test_a_file_taken_once_changes_nothing_the_second_time() -> None:
    file = sound_file()
    assert look(file, file)["count"] == 0
    more = sound_file(5)
    found = look(more, file)
    assert [coupon["key"] for coupon in found["coupons"]] == ["k3", "k4"]
    more["jobs"][0]["name"] = "Bracket, new name"
    changed = look(more, more | {"jobs": file["jobs"]})
    assert (changed["count"], changed["lines"][0]["before"]) == (1, "kept otherwise")


LIST = "name;qty;plate;length\nGusset 1;2;3/8in;6in\r\nGusset 2\t2"


def test_a_kept_weld_list_goes_out_and_comes_in_whole() -> None:
    file = sound_file()
    file["shop"]["lines"] = LIST
    Draft202012Validator(SCHEMA).validate(file)
    assert read_kept_file(json.dumps(file)).shop["lines"] == LIST
    found = look(file, {**NOTHING, "shop": {"lines": "a,tee,3/8in,,6in"}})
    assert found["shop"]["lines"] == LIST
    assert ("a,tee,3/8in,,6in", "3 lines") in [
        (line["before"], line["after"]) for line in found["lines"]
    ]


def test_the_longest_list_and_its_job_can_be_taken_and_no_longer_one() -> None:
    longest = "W1,tee,3/8in,,6in\n" * (LONGEST_LIST // 18)
    assert LONGEST_LIST == weld_lines.LONGEST_LIST
    job = {"page": "list", "query": urlencode({"lines": longest}), "name": "MB-3", "made": "now"}
    file = {**sound_file(0), "shop": {"lines": longest}, "jobs": [job]}
    assert look(file)["ok"]
    for broken in (longest + "x" * 18, "bell \a", "a\x00"):
        assert not look({**file, "shop": {"lines": broken}})["ok"]


def test_a_file_cannot_bring_facts_of_its_own() -> None:
    file = sound_file(1)
    true = dict(file["coupons"][0])
    file["coupons"][0] |= {"facts": {"melting": 3.0}, "wire": "E71T-1C", "welder": "Bob"}
    assert look(file)["coupons"] == [true]


def test_a_coupon_says_on_another_phone_what_it_said_on_its_own() -> None:
    """What the shop gave, its machine and welder, went into the coupon."""
    [coupon] = sound_file(1)["coupons"]
    [again] = read_kept_file(json.dumps(sound_file(1))).coupons
    assert again.plain() == coupon
    assert (coupon["machine"], coupon["welder"]) == ("one", "Ann")


def test_a_file_of_the_first_releases_is_read() -> None:
    found = look({"kind": "beadwright shop", "version": 1, "kept": {"labour": "41/h"}})
    assert (found["ok"], found["shop"], found["count"]) == (True, {"labour": "41/h"}, 1)


def changed(**changes: Any) -> dict[str, Any]:
    return {**sound_file(), **changes}


def coupon_changed(**changes: Any) -> dict[str, Any]:
    file = sound_file()
    file["coupons"][1] |= changes
    return file


@pytest.mark.parametrize(
    ("file", "why"),
    [
        ("", "cut, damaged"),
        (json.dumps(sound_file())[:-40], "cut, damaged"),
        ("[" * 100_000, "cut, damaged"),
        ("[1]", "no record"),
        ('{"kind": "beadwright", "version": NaN}', "NaN, which is no number"),
        (changed(kind="recipes"), "no file of what the app keeps"),
        (changed(kind=["beadwright"]), "no file of what the app keeps"),
        (changed(version=2), "version “2”, this app reads 1: update the app"),
        (changed(version=True), "version “True”"),
        (changed(secrets=1), "holds “secrets”"),
        (changed(shop=[]), "What the shop keeps is no record"),
        (changed(shop={"labour": "lots"}), "Labor"),
        (changed(shop={"nonsense": "1"}), "keeps no such entry"),
        (changed(shop={f"x{n}": "1" for n in range(301)}), "more than 300"),
        (changed(jobs=3), "The jobs are no list"),
        (changed(jobs=[{"page": "dial-in"}]), "Job 1 must have"),
        (changed(jobs=sound_file()["jobs"] * 2), "one job twice"),
        (changed(jobs=[{**sound_file()["jobs"][0], "page": "made-up"}]), "Job 1 is of a page"),
        (changed(jobs=[0] * 2001), "2,001 jobs are more"),
        (coupon_changed(version=7), "Coupon 2 has version “7”"),
        (coupon_changed(key="k0"), "Two coupons have one key"),
        (coupon_changed(query="plate=0"), "Coupon 2 cannot be read: plate"),
        (coupon_changed(query="plate=1/4in"), "Coupon 2 cannot be read: arc_time: Nothing to"),
        (coupon_changed(query="a" * 5000), "Coupon 2: query is no"),
        (coupon_changed(key="\ud800"), "Coupon 2: key is no plain text"),
        ('{"kind": "beadwright", "version": 1, "shop": {}' + " " * 5_000_000 + "}", "at most 5,0"),
    ],
)
def test_a_file_is_refused_whole_with_the_reason(file: Any, why: str) -> None:
    found = look(file)
    assert found.keys() == {"ok", "reason"}
    assert found["ok"] is False
    assert why in found["reason"]
    assert len(found["reason"]) < 500


def test_a_long_preview_is_counted() -> None:
    file = sound_file()
    job = file["jobs"][0]
    file["jobs"] = [{**job, "query": f"leg=1/4in&parts={n}"} for n in range(60)]
    found = look(file)
    assert len(found["jobs"]) == 60
    assert found["lines"][-1]["what"] == "and 24 more"  # 3 of the shop, 60, coupons; 40 are shown


def fuzz(count: int) -> Counter[bool]:
    """Every broken file is refused with a reason or merges to records that read back."""
    sound, draw = json.dumps(sound_file(2)), Random(14)
    ended: Counter[bool] = Counter()
    schema = Draft202012Validator(SCHEMA)
    for _ in range(count):
        found = look(broken_file(sound, draw))
        assert "error" not in found, found
        ended[found["ok"]] += 1
        if found["ok"]:
            whole = {"kind": "beadwright", "version": 1,
                     **{key: found[key] for key in NOTHING}}  # fmt: skip
            schema.validate(whole)
            assert look(whole, whole)["count"] == 0
            read_kept_file(json.dumps(whole))
        else:
            assert found["reason"]
    return ended


def test_broken_files_are_refused_or_merge_cleanly() -> None:
    ended = fuzz(500)
    assert min(ended[True], ended[False]) > 20


@pytest.mark.long(reason="ten thousand broken files take minutes")
def test_ten_thousand_broken_files_are_refused_or_merge_cleanly() -> None:
    assert sum(fuzz(10_000).values()) == 10_000


def test_the_published_schema_holds_for_sound_files_and_not_for_others() -> None:
    schema = Draft202012Validator(SCHEMA)
    Draft202012Validator.check_schema(SCHEMA)
    schema.validate(sound_file())
    for file in (changed(version=2), changed(jobs=[{}]), coupon_changed(facts=3), changed(more=1)):
        assert not schema.is_valid(file)
        with pytest.raises(KeptFileError):
            read_kept_file(json.dumps(file))


def test_what_a_phone_keeps_as_coupons_is_what_the_file_has() -> None:
    read = read_kept_file(json.dumps(sound_file()))
    assert json.loads(records_text(read.coupons)) == sound_file()["coupons"]
    assert all(READ.partition("&")[0] in coupon.query for coupon in read.coupons)
