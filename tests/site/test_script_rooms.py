"""The rooms of the scripts: no import runs up, none in a circle, every module is reached."""

import graphlib
import os
import re
from pathlib import Path

import pytest

import beadwright_site

SITE = Path(beadwright_site.__file__).parent
SCRIPTS = SITE / "static" / "js"
WORKER = SITE / "service_worker"
FLOORS = ("sound", "offline", "engine", "kept", "controls", "page")
"""From the ground up: a room imports from its own floor and from those below."""

STARTS = {
    "main.js",  # every page
    "page/asked_job.js",  # every page of an answer, before it is drawn
    "controls/kept_file.js",  # Shop
    "page/wall_sheet.js",  # the wall sheet
    "engine/worker.js",  # started by engine/host.js
    "sound/microphone_tap.js",  # runs on the audio thread, added by sound/microphone.js
}


def imports(folder: Path) -> dict[str, set[str]]:
    """Return what each script of a folder imports of the same folder."""
    found: dict[str, set[str]] = {}
    for script in sorted(folder.rglob("*.js")):
        names = re.findall(r"""^import (?:.* from )?"(\.[^"]+)";""", script.read_text(), re.M)
        paths = [os.path.normpath(script.parent / name) for name in names]
        inside = {Path(path) for path in paths if Path(path).is_relative_to(folder)}
        key = script.relative_to(folder).as_posix()
        found[key] = {path.relative_to(folder).as_posix() for path in inside}
    return found


def reached(graph: dict[str, set[str]], starts: set[str]) -> set[str]:
    todo, seen = set(starts), set[str]()
    while todo:
        seen.add(script := todo.pop())
        todo |= graph[script] - seen
    return seen


def test_no_import_runs_up() -> None:
    graph = imports(SCRIPTS)
    assert len(graph) > 40
    assert {script.split("/")[0] for script in graph} == {*FLOORS, "main.js"}
    up = [
        f"{script} imports {other}"
        for script, others in graph.items()
        for other in others
        if script != "main.js"
        and FLOORS.index(other.split("/")[0]) > FLOORS.index(script.split("/")[0])
    ]
    assert up == []


@pytest.mark.parametrize(("folder", "starts"), [(SCRIPTS, STARTS), (WORKER, {"service_worker.js"})])
def test_every_script_is_reached_and_none_in_a_circle(folder: Path, starts: set[str]) -> None:
    graph = imports(folder)
    graphlib.TopologicalSorter(graph).prepare()  # raises CycleError
    assert set(graph) == reached(graph, starts)
