"""Coupons out of a file: what they taught, in the terminal; and all of them as a table."""

from __future__ import annotations

import csv
import dataclasses
import io
import json
from pathlib import Path

import pytest

from beadwright.__main__ import main
from beadwright.api import answer, answer_csv
from beadwright.coupons.coupon_records import CouponRecord, read_rows, records_text
from beadwright.coupons.coupon_table import coupon_table
from beadwright.coupons.coupons_report import coupons_csv, learned_tree
from beadwright.coupons.kept_file import KeptFile, read_kept_file
from beadwright.coupons.kept_jobs import KeptJob
from beadwright.coupons.learned_report import learned_report
from beadwright.coupons.new_record import new_record
from beadwright.process.own_numbers import own_book

JOB = "plate=1/4in&leg=1/4in&position=2F&wfs=350in/min&volts=27V"


def coupon(number: int, welder: str = "Ann", seconds: float = 45, amps: int = 330) -> CouponRecord:
    query = f"{JOB}&marked=8in&arc_time={seconds}s&meter_amps={amps}A&welder={welder}&machine=one"
    return new_record(query, None, f"k{welder}{number}", f"2026-11-{number + 1:02d}")


SHOP = [
    *(coupon(n, seconds=44 + n % 3, amps=328 + n % 5) for n in range(9)),
    coupon(9, seconds=12),  # nearly four times the pace of the others
    *(coupon(n, "Bob", seconds=30 + n) for n in range(2)),
]


def written(records: list[CouponRecord], path: Path) -> str:
    plain = [record.plain() for record in records]
    path.write_text(json.dumps({"kind": "beadwright", "version": 1, "coupons": plain}))
    return str(path)


def test_a_file_tells_what_its_coupons_taught(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["learn", written(SHOP, tmp_path / "kept.json")]) == 0
    told = json.loads(capsys.readouterr().out)["learned"]
    assert told == learned_report(SHOP)
    ann, bob = told
    assert [(way["welder"], way["machine"], way["gas"]) for way in told] == [
        ("Ann", "one", "90/10"),
        ("Bob", "one", "90/10"),
    ]
    # The hand's travel is learned apart, the machine's burn-off together.
    assert (ann["learned"]["travel"]["coupons"], bob["learned"]["travel"]["coupons"]) == (9, 2)
    assert ann["learned"]["melting"]["coupons"] == bob["learned"]["melting"]["coupons"] == 12
    assert ann["learned"]["travel"]["odd"] == ["kAnn9"]
    for number in ann["learned"].values():
        assert 0 < number["half_band"] <= number["half_band_before"]
    assert own_book(ann["own"])[0].wire == "ER70S-6"
    page = answer("coupons", ann["job"], {"coupons": records_text(SHOP)})
    assert page.own is not None
    assert ann["own"] == page.own.text == learned_tree(page)["own"]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("{", "cut, damaged"),
        ('{"kind": "beadwright", "version": 9}', "version “9”"),
        (b"\xff\xfe\x00".decode("latin1"), "cut, damaged"),
    ],
)
def test_a_bad_file_ends_with_status_2_and_the_reason(
    text: str, why: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "kept.json"
    path.write_text(text)
    assert main(["learn", str(path)]) == 2
    told = capsys.readouterr()
    assert why in told.err
    assert told.out == ""


def test_a_file_that_is_not_there_or_no_text_ends_with_status_2(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "picture").write_bytes(b"\xff\xd8\xff\xe0")
    for name in ("missing.json", "picture"):
        assert main(["learn", str(tmp_path / name)]) == 2
        assert name in capsys.readouterr().err


def test_learn_without_a_file_says_how(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["learn"])
    assert ended.value.code == 2
    assert "learn" in capsys.readouterr().err
    with pytest.raises(SystemExit):
        main(["--help"])
    assert "learn FILE" in capsys.readouterr().out


def test_coupons_are_a_table_in_both_units() -> None:
    text = answer_csv("coupons", JOB, {"coupons": records_text(SHOP)})
    assert text == coupon_table(SHOP)
    page = answer("coupons", JOB, {"coupons": records_text(SHOP)})
    assert text == coupons_csv(page)
    rows = list(csv.DictReader(io.StringIO(text)))
    assert len(rows) == len(SHOP)
    first = rows[0]
    assert (first["welder"], first["size"], first["kept"]) == ("Ann", "0.045in", "2026-11-01")
    # 8 in in 44 s: 10.909 in/min, 277.09 mm/min.
    assert float(first["travel, in/min"]) == pytest.approx(8 * 60 / 44, rel=1e-4)
    assert float(first["travel, mm/min"]) == pytest.approx(8 * 60 / 44 * 25.4, rel=1e-4)
    assert float(first["wire feed, in/min"]) == pytest.approx(350, rel=1e-4)
    assert float(first["wire feed, m/min"]) == pytest.approx(350 * 0.0254, rel=1e-4)
    assert first["laid, lb/h"] == ""  # not weighed
    assert first["entries"] == SHOP[0].query


def test_no_coupons_are_a_table_with_headings_only() -> None:
    [heading] = answer_csv("coupons", JOB).splitlines()
    assert heading.startswith("kept,welder,machine,wire,size,gas,")


def test_what_a_record_and_a_job_are_kept_under() -> None:
    assert read_rows([record.plain() for record in SHOP]) == tuple(SHOP)
    job = KeptJob("heat", "leg=1/4in", "Bracket", "2026-11-28")
    assert job.key == "heat?leg=1/4in"
    assert read_kept_file('{"kind": "beadwright", "version": 1}') == KeptFile({}, (), ())


@pytest.mark.parametrize("sign", ["=", "+", "-", "@", "\t", "\r", "\0"])  # OWASP ASVS 5.0, 1.2.10
def test_no_text_of_the_table_is_run_as_a_formula_by_a_spreadsheet(sign: str) -> None:
    text = f'{sign}HYPERLINK("http://localhost";"Ann")'
    record = dataclasses.replace(coupon(1, amps=200), welder=text, machine=text, query=text)
    [row] = csv.DictReader(io.StringIO(coupon_table([record]), newline=""))
    assert [row[name] for name in ("welder", "machine", "entries")] == [f"'{text}"] * 3
    assert row["wire"] == "ER70S-6"
    # A number keeps its sign: it is no formula.
    facts = dataclasses.replace(record.facts, meter_v=-1.5)
    [row] = csv.DictReader(io.StringIO(coupon_table([dataclasses.replace(record, facts=facts)])))
    assert row["meter over arc, V"] == "-1.5"
