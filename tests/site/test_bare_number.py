"""A number without a unit, told from all else by the page's script as by the core."""

import json
import subprocess
from pathlib import Path

import pytest

import beadwright_site
from beadwright_build.npm import program

CASES = json.loads(Path(__file__).parents[1].joinpath("bare_numbers.json").read_text())
SCRIPT = Path(beadwright_site.__file__).parent / "static/js/controls/bare_number.js"
ASK = """
const [module, texts] = JSON.parse(process.argv[1]);
const { isBareNumber } = await import(module);
console.log(JSON.stringify(texts.map(isBareNumber)));
"""


def told_by_the_script(texts: list[str]) -> list[bool]:
    asked = [
        str(program("node")),
        "--input-type=module",
        "-e",
        ASK,
        json.dumps([SCRIPT.as_uri(), texts]),
    ]
    done = subprocess.run(asked, capture_output=True, text=True, check=True)
    told: list[bool] = json.loads(done.stdout)
    return told


@pytest.mark.parametrize(("kind", "bare"), [("bare", True), ("not_bare", False)])
def test_the_script_tells_a_bare_number_as_the_core_does(kind: str, bare: bool) -> None:
    told = dict(zip(CASES[kind], told_by_the_script(CASES[kind]), strict=True))
    assert len(told) > 20
    assert told == dict.fromkeys(told, bare)
