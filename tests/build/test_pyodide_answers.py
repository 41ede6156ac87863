"""The phone's Python gives this machine's answers: the shipped archives, under Node."""

import itertools
import json
from collections.abc import Iterator, Sequence
from pathlib import Path

import pytest

from beadwright.pages import PAGES
from beadwright_build.inside.exercise import GOOD, HOSTILE
from beadwright_build.pyodide_node import run
from tests.build import job_answers

SHIPPED = ["runtime/app.zip", "runtime/libs.zip"]

JOBS = [
    "&".join(parts)
    for parts in itertools.product(
        ("plate=10ga", "plate=1/4in", "plate=3/8in&leg=5/16in", "plate=25mm&units=si"),
        ("position=2F", "position=3F-up", "position=1G&joint=v"),
        ("wire=ER70S-6&dia=0.035in", "wire=ER70S-6&dia=1.2mm", "wire=E70C-6M&dia=0.045in"),
        ("gas=90/10", "gas=75/25", "gas=CO2"),
        ("travel_by=hand", "travel_by=robot"),
    )
]


type Json = dict[str, Json] | list[Json] | str | float | bool | None


def differences(one: Json, other: Json, where: str = "") -> Iterator[str]:
    """Yield each place where two JSON values are not exactly equal."""
    if isinstance(one, dict) and isinstance(other, dict) and one.keys() == other.keys():
        for key in one:
            yield from differences(one[key], other[key], f"{where}.{key}")
    elif isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        for index, (left, right) in enumerate(zip(one, other, strict=True)):
            yield from differences(left, right, f"{where}[{index}]")
    elif one != other or type(one) is not type(other):
        yield f"{where}: {one!r} here, {other!r} on the phone"


def test_jobs_of_every_page_are_answered_alike(built_site: Path) -> None:
    compare(built_site, [*JOBS[::7], *GOOD, *HOSTILE])


@pytest.mark.long(reason="two hundred jobs more, of the same kinds as every seventh of them")
def test_every_job_is_answered_alike(built_site: Path) -> None:
    compare(built_site, [*JOBS, *HOSTILE])


def compare(built_site: Path, queries: Sequence[str]) -> None:
    """Ask every page here and on the phone's Python; the answers must be the same."""
    asked = [(page, query) for page in PAGES for query in queries]
    here = json.loads(job_answers.main(json.dumps(asked)))
    phone = run(
        "job_answers",
        asked,
        mounts={"runtime": built_site / "runtime", "tests": Path(__file__).parent},
        path=[*SHIPPED, "tests"],
        runtime=built_site / "runtime",
    )
    answered = [answer for answer in here if "errors" not in answer]
    assert len(here) / 4 < len(answered) < len(here)
    found = [
        f"{page}?{query} {difference}"
        for (page, query), one, other in zip(asked, here, phone, strict=True)
        for difference in differences(one, other)
    ]
    assert found == []
