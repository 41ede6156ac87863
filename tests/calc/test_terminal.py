"""The terminal: JSON out, status 2 where the query is wrong, help that names every key."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from beadwright import __version__
from beadwright.__main__ import PIPE_CLOSED, main
from beadwright.api import answer_json
from beadwright.key_groups import key_groups
from beadwright.key_help import allowed_of, key_help, takes
from beadwright.pages import PAGES
from beadwright.reading.fields import Measured

EXAMPLE_QUERY = PAGES["dial-in"].example


def test_a_page_is_answered_in_json(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["dial-in", EXAMPLE_QUERY]) == 0
    printed = json.loads(capsys.readouterr().out)
    assert printed == answer_json("dial-in", EXAMPLE_QUERY)
    feed = printed["answer"]["wire_feed"]
    assert feed.keys() >= {"value", "low", "high", "unit"}
    assert feed["low"] <= feed["value"] <= feed["high"]
    assert all(note.keys() >= {"level", "text", "source"} for note in printed["notes"])


def test_a_wrong_query_ends_with_status_2(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["dial-in", "plate=0&gas=mud"]) == 2
    printed = json.loads(capsys.readouterr().out)
    assert printed.keys() == {"errors"}
    assert printed["errors"].keys() == {"plate", "gas"}


def test_no_query_is_the_default_job(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["dial-in"]) == 0
    assert json.loads(capsys.readouterr().out)["query"] == ""


def helped(capsys: pytest.CaptureFixture[str], *arguments: str) -> str:
    with pytest.raises(SystemExit) as ended:
        main([*arguments, "--help"])
    assert ended.value.code == 0
    return capsys.readouterr().out


def test_help_lists_the_pages(capsys: pytest.CaptureFixture[str]) -> None:
    shown = helped(capsys)
    for page in PAGES:
        assert page in shown
    assert EXAMPLE_QUERY in shown


@pytest.mark.parametrize("page", PAGES)
def test_help_on_a_page_lists_its_own_keys_in_groups(
    capsys: pytest.CaptureFixture[str], page: str
) -> None:
    shown = helped(capsys, page)
    lines = shown.splitlines()
    for key, field in PAGES[page].fields.items():
        told = [line for line in lines if line.startswith(f"  {key} ")]
        if (key[:2] in ("b_", "c_", "d_") and key[2:] in PAGES[page].fields) or key[:2] in (
            "c_",
            "d_",
        ):
            assert len(told) <= 1  # told of all later ways at once
        else:
            assert len(told) == 1, key
            assert field.help in told[0]
        if isinstance(field, Measured) and told:
            assert f"{field.low_text} to {field.high_text}" in shown
        if field.default and told:
            assert f"blank: {field.default}" in " ".join(shown.split())
    for group in key_groups(PAGES[page]):
        assert not group.keys or group.title in lines
    assert PAGES[page].example in shown


@pytest.mark.parametrize(
    ("page", "key", "allowed"),
    [
        ("dial-in", "plate", "30ga to 4in"),
        ("dial-in", "units", "us, si"),
        ("dial-in", "welds", "1 to 1000000"),
        ("supplies", "gas_temp", "-9F to 134F"),
        ("cost", "name", ""),
    ],
)
def test_what_a_field_takes(page: str, key: str, allowed: str) -> None:
    assert allowed_of(PAGES[page].fields[key]) == allowed
    assert allowed in key_help(PAGES[page])


def test_what_a_field_takes_is_its_range_its_unit_and_what_a_blank_means() -> None:
    entries = PAGES["dial-in"].fields
    assert list(takes(entries["plate"])) == [
        "30ga to 4in", "a bare number is in, with units=si mm", "blank: 3/8in",
    ]  # fmt: skip
    assert list(takes(entries["units"])) == ["us, si", "blank: us"]


def test_help_gives_unit_range_and_blank_of_a_key(capsys: pytest.CaptureFixture[str]) -> None:
    shown = " ".join(helped(capsys, "cost").split())
    assert (
        "weld_length length of one weld 1/4in to 1000ft; a bare number is in, with units=si mm; "
        "blank: 6in"
    ) in shown
    # What way B has of its own is told beside way A's: blank is not as A there.
    assert "62/spool with the wire on a spool, way B a bare number is /lb" in shown
    assert "blank: 2.80/lb" in shown
    assert "b_spatter spatter cleanup, for a part, way B 0min to 10000min" in shown
    assert "swing_rates" in shown
    assert "b_rolls" in shown
    assert "with b_, c_ or d_ before it" in shown
    assert "rated_amps" not in helped(capsys, "passes").split("keys of passes")[0]


@pytest.mark.parametrize("page", PAGES)
def test_every_example_of_the_help_is_answered(
    capsys: pytest.CaptureFixture[str], page: str
) -> None:
    shown = helped(capsys, page)
    queries = [line.split("'")[1] for line in shown.splitlines() if f" {page} '" in line]
    assert len(queries) == 2
    for query in queries:
        assert "errors" not in answer_json(page, query), query


def test_an_unknown_key_ends_with_status_2(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["shop", "braker=30A"]) == 2
    errors = json.loads(capsys.readouterr().out)["errors"]
    assert errors == {"braker": ["“braker” is no entry this app knows. The nearest is “breaker”."]}
    assert main(["cost", "braker=30A", "--csv"]) == 2
    assert main(["dial-in", "labour=41"]) == 0  # Cost asks that


def test_a_page_there_is_not_ends_with_status_2(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["weather"])
    assert ended.value.code == 2
    assert "dial-in" in capsys.readouterr().err


def test_version(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        main(["--version"])
    assert capsys.readouterr().out.strip() == __version__


def test_as_a_program_it_keeps_status_and_letters() -> None:
    ran = subprocess.run(
        [sys.executable, "-m", "beadwright", "dial-in", "plate=½parsec"],
        capture_output=True,
        check=False,
        env={"PYTHONIOENCODING": "utf-8", "PATH": ""},
    )
    assert ran.returncode == 2
    printed = json.loads(ran.stdout.decode("utf-8"))
    assert printed == {
        "errors": {"plate": ["“½parsec”: unit not known here; use cm, ft, in, m, mm"]}
    }
    assert ran.stderr == b""


@pytest.mark.parametrize(
    ("command", "status"),
    [
        (["cost"], PIPE_CLOSED),
        (["passes", "passes=3", "--csv"], PIPE_CLOSED),
        (["dial-in", "plate=0"], PIPE_CLOSED),
        (["--help"], 0),  # argparse passes over what it cannot print
    ],
)
def test_where_nobody_reads_on_it_ends_quietly(command: list[str], status: int) -> None:
    """As ``… | head`` does; 141 is 128 and SIGPIPE, as a shell gives for cat."""
    with subprocess.Popen(
        [sys.executable, "-m", "beadwright", *command],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    ) as ran:
        assert ran.stdout is not None
        assert ran.stderr is not None
        ran.stdout.close()
        assert ran.stderr.read() == b""
        assert ran.wait() == status


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_a_list_in_a_file_is_priced(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], encoding: str
) -> None:
    """As a spreadsheet saves it: with its mark or without, in whatever letters."""
    file = tmp_path / "welds.csv"
    file.write_text("Name;Joint;Plate;Length\r\nKnotenblech für Öse;lap;9,5mm;150mm\r\n", encoding)
    assert main(["list", str(file), "units=si&margin=25%25"]) == 0
    told = json.loads(capsys.readouterr().out)["answer"]
    assert (told["missing"], told["rows"][0]["name"]) == (0, "Knotenblech für Öse")
    one = told["quotes"][0]["batches"][0]
    assert one["price"] == pytest.approx(one["cost"] / 0.75)


def test_a_file_that_is_not_there_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["list", "no-such-welds.csv"]) == 2
    assert "no-such-welds.csv cannot be read" in capsys.readouterr().out
