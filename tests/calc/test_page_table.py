"""The table of pages: from a row to the page's modules, its keys, its answer, its help."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any, cast
from unittest.mock import patch

import pytest
from marshmallow import Schema

from beadwright.__main__ import main
from beadwright.api import answer, answer_csv, answer_json
from beadwright.errors import FieldErrors
from beadwright.job import page_query
from beadwright.pages import PAGES, Page, class_name, module_name
from beadwright.reading.queries import split_query

PARTS = {"dial-in": {"answer", "window_map", "ways_out", "other_mode", "like_for_like"}}
"""Parts of a page's JSON besides page, query and notes, where there is more than the answer."""

each_page = pytest.mark.parametrize("page", PAGES.values(), ids=PAGES)


def test_a_name_as_python_spells_it() -> None:
    assert (module_name("dial-in"), class_name("dial-in")) == ("dial_in", "DialIn")
    assert (module_name("heat"), class_name("heat")) == ("heat", "Heat")


def test_a_row_is_found_by_its_name() -> None:
    assert all(page.name == name for name, page in PAGES.items())
    assert len({page.title for page in PAGES.values()}) == len(PAGES)


@each_page
def test_the_example_is_answered_by_the_page(page: Page) -> None:
    found = answer_json(page.name, page.example)
    assert found["page"] == page.name == answer(page.name, page.example).page
    parts = found.keys() - {"page", "query", "notes"}
    assert parts == PARTS.get(page.name, {"answer"})


@each_page
def test_a_table_is_had_where_there_is_one(page: Page) -> None:
    if page.has_table:
        assert "\r\n" in answer_csv(page.name, page.example)
        return
    with pytest.raises(FieldErrors, match="has no table"):
        answer_csv(page.name, page.example)


@each_page
def test_every_key_is_called_and_explained(page: Page) -> None:
    nameless = [key for key, f in page.fields.items() if not f.label or not f.help]
    assert nameless == []
    assert list(page.defaults) == list(page.fields)


def test_defaults_of_a_query_are_those_of_its_page() -> None:
    assert page_query.page_defaults(page_query.PageQuery) == PAGES["dial-in"].defaults


@each_page
def test_the_defaults_are_the_blank_query(page: Page) -> None:
    # To ask for draws is to have them drawn with the answer.
    written = {key: text for key, text in page.defaults.items() if text and key != "draws"}
    spelled = "&".join(f"{key}={text}" for key, text in written.items())
    blank, asked = (answer_json(page.name, query)["answer"] for query in ("", spelled))
    assert asked == blank


@each_page
def test_help_of_a_page_names_each_of_its_keys(
    page: Page, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as ended:
        main([page.name, "--help"])
    assert ended.value.code == 0
    shown = capsys.readouterr().out
    told = {*shown.split()}
    if page.name in ("cost", "list"):  # keys of later ways are told by the rule that makes them
        assert "with b_, c_ or d_ before it" in " ".join(shown.split())
        told |= {f"{way}_{key.removeprefix('b_')}" for key in told for way in "bcd"}
    assert set(page.fields) <= told
    assert f"beadwright {page.name} '{page.example}'" in shown


def test_the_examples_are_one_job() -> None:
    """Bracket MB-3: 5/16 in tee fillets on 3/8 in plate, 2F, 0.045 in ER70S-6 on 90/10."""
    jobs = {name: page.answer(page.example).query.job for name, page in PAGES.items()}
    job = jobs["cost"]
    # Shop asks the power source as well, Inspect the settings that were run.
    others = {
        name: replace(other, source=job.source, by_hand=job.by_hand) for name, other in jobs.items()
    }
    assert [name for name, other in others.items() if other != job] == []
    assert (job.joint, job.position_name, job.gas.name, job.welds) == ("tee", "2F", "90/10", 8)
    sizes = (job.plate_m, job.leg_m, job.weld_length_m)
    assert sizes == pytest.approx((0.009525, 0.0079375, 0.1524))
    assert (job.wire.type.name, job.wire.size) == ("ER70S-6", "0.045in")


def _counted(work: Callable[[], object]) -> tuple[int, int]:
    """How often a query is taken apart and a schema read while something is worked out."""
    split: list[str] = []
    loaded: list[object] = []
    load = cast("Callable[..., object]", Schema.load)  # marshmallow leaves open what it returns

    def take_apart(text: str) -> dict[str, str]:
        split.append(text)
        return split_query(text)

    def read(self: Schema, data: Any, **given: Any) -> object:
        loaded.append(data)
        result: object = load(self, data, **given)
        return result

    with patch.object(page_query, "split_query", take_apart), patch.object(Schema, "load", read):
        work()
    return len(split), len(loaded)


@each_page
def test_a_query_is_read_once(page: Page) -> None:
    several = f"{page.example}&c_wire=ER70S-3&d_gas=75/25" if page.name == "cost" else page.example
    if page.name == "list":  # each line is a query of its own; once answered it is not read again
        answer_json(page.name, several)
    assert _counted(lambda: answer_json(page.name, several)) == (1, 1)
