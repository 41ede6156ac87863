"""Every id the core says has its words, and every text is said, with the parameters it names."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from string import Formatter

import pytest

import beadwright
from beadwright.api import answer
from beadwright.measures import MEASURES, System
from beadwright.phrases import Amount, Money, Parameter, Phrase
from beadwright.words.text import Plural, Rounded, Text
from beadwright.words.wording import catalogue, worded

CORE = Path(beadwright.__file__).parent
SITE = CORE.parents[1] / "site" / "beadwright_site"
ROOMS = sorted(path.stem.removesuffix("_words") for path in CORE.glob("words/english/*_words.py"))
TEXTS: dict[str, Text] = {key: text for room in ROOMS for key, text in catalogue(room).items()}

EDGE = {"reports", "cost_ways", "heat_page"}
"""Modules of the core that write a phrase out: for JSON, and beside a field that is refused."""


def modules() -> Iterator[Path]:
    for path in sorted(CORE.rglob("*.py")):
        if "words" not in path.relative_to(CORE).parts:
            yield path


def ids_in(path: Path) -> Iterator[str]:
    """Texts of a module that look like an id: a room, a point, words joined by hyphens."""
    shape = re.compile(rf"({'|'.join(ROOMS)})\.[a-z0-9]+(-[a-z0-9]+)*")
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        text = node.value if isinstance(node, ast.Constant) else None
        if isinstance(text, str) and shape.fullmatch(text):
            yield text


def said_in(path: Path) -> Iterator[tuple[str, frozenset[str]]]:
    """Id and parameter names of each ``say`` of a module whose parameters are all written there."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if not isinstance(node, ast.Call) or getattr(node.func, "id", "") != "say":
            continue
        names = {keyword.arg for keyword in node.keywords}
        if None in names:
            continue
        keys = [n.value for n in ast.walk(node.args[0]) if isinstance(n, ast.Constant)]
        for key in keys:
            if isinstance(key, str) and "." in key:
                yield key, frozenset(name for name in names if name is not None)


def forms(text: Text) -> tuple[str, ...]:
    """Every form of a text."""
    match text:
        case Plural():
            return text.one, text.other
        case Rounded():
            return text.us, text.si
        case _:
            return (text,)


def named(text: Text) -> frozenset[str]:
    """The parameters a text names; a plural goes by ``count`` too."""
    names = {
        name
        for form in forms(text)
        for _, name, _, _ in Formatter().parse(form)
        if name is not None
    }
    return frozenset(names | ({"count"} if isinstance(text, Plural) else set()))


def test_every_id_of_the_core_has_words_and_none_is_left_unsaid() -> None:
    used = {key for path in modules() for key in ids_in(path)}
    marked = {key for path in SITE.rglob("*.py") for key in ids_in(path)}
    assert len(used) > 300
    assert used - TEXTS.keys() == set()
    assert TEXTS.keys() - used - marked == set()


def test_what_is_said_names_what_its_text_asks() -> None:
    said = [each for path in (*modules(), *SITE.rglob("*.py")) for each in said_in(path)]
    assert len(said) > 250
    wrong = {key: (names, named(TEXTS[key])) for key, names in said if names != named(TEXTS[key])}
    assert wrong == {}


def test_an_id_begins_with_its_room() -> None:
    for room in ROOMS:
        assert {key.partition(".")[0] for key in catalogue(room)} == {room}
    for path in modules():
        room = path.relative_to(CORE).parts[0]
        assert {key.partition(".")[0] for key in ids_in(path)} <= {room}, path.name


def test_the_core_says_ids_and_its_edge_writes_them_out() -> None:
    writers = {
        path.stem for path in modules() if "beadwright.words" in path.read_text(encoding="utf-8")
    }
    assert writers == EDGE


@pytest.mark.parametrize("key", TEXTS)
def test_a_text_is_whole(key: str) -> None:
    for form in forms(TEXTS[key]):
        assert form == form.strip()
        assert "  " not in form
        assert form.count("{") == form.count("}")


JOBS = (
    ("dial-in", ""),
    ("dial-in", "units=si&joint=tee&plate=12mm&plate2=25mm&wire=E70C-6M&travel_by=robot"),
    ("dial-in", "plate=1/2in&joint=v&position=1G&transfer=spray&gas=CO2"),
    ("dial-in", "skew=120deg&leg=1/4in&leg2=3/8in&gas=65/8/0.5 O2/26.5 He"),
    ("dial-in", "joint=slot&plate2=1in&pitch=1in&hole=1/4in"),
    ("dial-in", "wfs=300in/min&volts=24&travel=12in/min&machine_amps=150&heat_max=20kJ/in"),
    ("dial-in", "joint=lap&plate=16ga&position=3F-down&transfer=short&gas=75/25&dia=0.035in"),
    ("passes", "plate=1in&joint=double-v&position=2G&passes=14"),
    ("passes", "plate=1/2in&leg=1/4in&passes=9&transfer=spray&position=4F"),
    ("heat", "plate=1in&leg=1/2in&steel=A572-60&preheat=300C"),
    ("heat", "leg=5/16in&steel=unknown"),
    ("strength", "leg=1/8in&py=-20kip&load_x=8in"),
    ("cost", "leg=5/16in&parts=0&b_wire=E70C-6M"),
    ("supplies", "leg=5/16in&gauge=40psi&water=43L&spool=1000lb&parts=2"),
    ("shop", "leg=5/16in&breaker=20&generator=4kW&duty=20%&arc_share=60%25"),
)


LOADED = """
import sys
from beadwright.api import answer_json
answer_json("dial-in", "")
print(*sorted(name.rpartition(".")[2] for name in sys.modules if name.endswith("_words")))
"""


def test_a_page_loads_the_words_of_its_own_rooms_only() -> None:
    asked = subprocess.run(
        [sys.executable, "-c", LOADED],
        env=os.environ | {"PYTHONPATH": str(CORE.parent)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert asked.stdout.split() == ["job_words", "process_words", "setting_words"]


def held(value: Parameter) -> Iterator[Parameter]:
    """A parameter and all it holds."""
    yield value
    inner = (
        tuple(each for _, each in value.parameters)
        if isinstance(value, Phrase)
        else value
        if isinstance(value, tuple)
        else ()
    )
    for each in inner:
        yield from held(each)


ENGLISH = re.compile(r"\b[a-z]{3,} [a-z]{2,}\b")
"""Two words of a sentence in a row; names such as ER70S-6, 90/10 or way B have none."""


@pytest.mark.parametrize(("page", "query"), JOBS)
def test_a_note_holds_no_language(page: str, query: str) -> None:
    notes = answer(page, query).notes
    assert notes
    for note in notes:
        for value in held(note.phrase):
            match value:
                case Phrase():
                    assert value.key in TEXTS
                    assert {name for name, _ in value.parameters} == named(TEXTS[value.key])
                case Amount():
                    assert value.measure in {*MEASURES, "temperature"}
                case str():
                    assert not ENGLISH.search(value), (note.key, value)
                case _:
                    assert isinstance(value, int | float | tuple | Money)


@pytest.mark.parametrize("system", ["us", "si"])
@pytest.mark.parametrize(("page", "query"), JOBS)
def test_every_note_can_be_written_in_either_system(page: str, query: str, system: System) -> None:
    for note in answer(page, query).notes:
        text = worded(note.phrase, system)
        assert text
        assert not re.search(r"[{}]|Phrase\(|Amount\(", text)
