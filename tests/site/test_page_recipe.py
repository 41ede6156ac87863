"""The recipe for a page in DEVELOPERS.md, walked in a copy: its row, its room, its folder."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from tests.site.page import by_id, elements, words
from tests.toy_copy import ToyCopy

PAGE = "made-up"

CORE: Mapping[str, str] = {
    "__init__.py": '"""A made-up room."""\n',
    "made_up_query.py": '''
"""The made-up page's keys."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.job.page_query import PageQuery
from beadwright.reading.entries import required
from beadwright.reading.fields import WholeNumber


@dataclass(frozen=True, slots=True, kw_only=True)
class MadeUpQuery(PageQuery):
    """The made-up page's query."""

    copies: int = required(WholeNumber(1, 99, label="Copies", help="of it", default="2"))
''',
    "made_up_page.py": '''
"""The made-up page's answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.job.page_query import PageAnswered, read_page
from beadwright.made_up.made_up_query import MadeUpQuery


@dataclass(frozen=True, slots=True)
class MadeUpAnswer(PageAnswered):
    """The made-up page's answer."""

    query: MadeUpQuery
    welds: int


def made_up_answer(query: str, kept: Mapping[str, Any] | None = None) -> MadeUpAnswer:
    """Return the made-up page's answer to a query string."""
    read = read_page(MadeUpQuery, query, kept)
    return MadeUpAnswer("made-up", read, read.copies * read.job.welds, notes=())
''',
    "made_up_report.py": '''
"""The made-up page's answer as plain data."""

from __future__ import annotations

from typing import Any

from beadwright.made_up.made_up_page import MadeUpAnswer


def made_up_report(found: MadeUpAnswer) -> dict[str, Any]:
    """Return the answer as plain data, by part."""
    return {"answer": {"welds": found.welds}}
''',
}
"""The page's half in the core: a room."""

SITE: Mapping[str, str] = {
    "__init__.py": '"""A made-up page."""\n',
    "page.py": '''
"""The made-up page."""

from __future__ import annotations

from typing import Final

from beadwright.made_up.made_up_page import MadeUpAnswer
from beadwright.pages import PAGES
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.page_form import PageForm
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView


def _form(filling: Filling, found: MadeUpAnswer | None) -> PageForm:
    form = Form(filling, PAGES["made-up"].fields)
    return PageForm((entry_group("all", "All", [form.entry("copies")]),))


def _view(answered: Answered[MadeUpAnswer]) -> PageView:
    welds = answered.found.welds
    return PageView(f"{welds} welds", answered.whose, {"sum": lambda: {"welds": welds}})


PAGE: Final = AnswerPage(
    name="made-up",
    parts=("units-switch", "state", "sum", "job-form", "notes"),
    form=_form,
    view=_view,
    topics=(),
)
''',
    "page.css": ".made-up { font-weight: 600; }\n",
    "templates/sum.html": '<p id="sum" class="made-up">{{ welds }} welds</p>\n',
    "templates/page.html": """
{% extends "parts/answer.html" %}
{% block left %}
      {{ parts["sum"] }}
      {{ parts["job-form"] }}
{% endblock %}
{% block right %}
      {{ parts["notes"] }}
{% endblock %}
""",
}
"""The page's half in the site: a folder."""

ROW = 'Page("made-up", "made_up", "Made up", "welds=3", "Example: three welds"),'
"""Its row."""


@pytest.fixture(scope="module")
def toy(tmp_path_factory: pytest.TempPathFactory) -> ToyCopy:
    """The sources with one page more."""
    copy = ToyCopy(tmp_path_factory.mktemp("toy"))
    copy.write("calc/beadwright/made_up", CORE)
    copy.write("site/beadwright_site/pages/made_up", SITE)
    copy.add("calc/beadwright/pages.py", {'Page("supplies",': f"            {ROW}\n"})
    return copy


def _json(toy: ToyCopy, *command: str) -> Any:
    ran = toy.run(*command)
    assert ran.returncode == 0, ran.stderr
    return json.loads(ran.stdout)


@pytest.fixture(scope="module")
def seen(toy: ToyCopy) -> Any:
    return _json(toy, str(Path(__file__).with_name("page_seen.py")), PAGE, "copies=5&welds=3")


def test_it_answers_at_its_address_with_its_own_styles(seen: Any) -> None:
    assert words(by_id(seen["route"], "sum")) == "15 welds"
    linked = [e.attrs.get("href") for e in elements(seen["route"]) if e.tag == "link"]
    assert "../static/css/made-up.css" in linked
    assert seen["style"] == SITE["page.css"]


def test_it_is_in_the_bar_of_every_page_with_the_keys_links_carry_to_it(seen: Any) -> None:
    [link] = [e for e in elements(seen["bar"]) if e.attrs.get("href") == "made-up/"]
    assert words(link) == "Made up"
    assert {"copies", "welds", "plate"} <= set(seen["keys"])
    assert link.attrs["data-keys"].split() == seen["keys"]


def test_the_phone_draws_it_and_gives_its_json(seen: Any) -> None:
    assert seen["phone"]["ok"]
    assert "15 welds" in seen["phone"]["html"]["sum"]
    assert seen["phone"]["query"] == "welds=3&copies=5"
    assert seen["json"]["answer"] == {"welds": 15}


def test_what_it_cannot_take_stands_beside_its_entry(seen: Any) -> None:
    assert not seen["refused"]["ok"]
    assert list(seen["refused"]["errors"]) == ["copies"]
    assert words(by_id(seen["refused"]["html"]["job-form"], "wrong-copies"))
    assert "One entry cannot be taken" in seen["refused"]["html"]["state"]


def test_it_is_frozen_and_kept_for_no_signal(seen: Any) -> None:
    assert seen["offline"] == ["made-up/index.html", "static/css/made-up.css"]


def test_the_terminal_answers_it(toy: ToyCopy) -> None:
    told = _json(toy, "-m", "beadwright", PAGE, "copies=4&welds=2")
    assert told["page"] == PAGE
    assert told["answer"] == {"welds": 8}
