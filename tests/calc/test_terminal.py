"""The terminal: JSON out, status 2 where the query is wrong, help that names every key."""

import json
import subprocess
import sys

import pytest

from beadwright import __version__
from beadwright.__main__ import main
from beadwright.api import answer_json
from beadwright.job.job_entries import DEFAULTS
from beadwright.pages import PAGES

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


def test_help_lists_pages_and_every_key(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--help"])
    assert ended.value.code == 0
    shown = capsys.readouterr().out
    for page in PAGES:
        assert page in shown
    words = shown.split()
    for key in DEFAULTS:
        assert key in words
    assert EXAMPLE_QUERY in shown


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
