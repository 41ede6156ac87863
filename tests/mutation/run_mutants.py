"""Runs the tests of the core against mutants of its modules, each in a forked process.

The parent imports what tests need but never beadwright; each child lays the mutated module in the
way of its import, so a mutant costs a fork and the tests that reach the function it is in: rows of
``reference/*.csv`` first, then tests, the quickest first, up to the first that fails.
"""

from __future__ import annotations

import ast
import importlib
import sys
import time
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from types import CodeType, ModuleType
from typing import Any, Literal

import pytest

from tests.mutation.forks import forked, lay
from tests.mutation.mutants import Mutant

Fate = Literal["killed", "survived", "timeout"]

LIMIT_TIMES, LIMIT_LEAST_S = 10, 20
"""A mutant's tests may take so many times what they took with nothing changed, and no less than
so long [s]; a loop that never ends counts as noticed."""

SKIPPED = (
    "test_reference.py",
    "test_visited.py",
    "test_rows_of_tables.py",
    "test_terminal.py",
    "test_mutants.py",
)
"""Rows are run here without pytest; the others look at the tests or start other processes."""

_TOOL = 4


@dataclass
class Baseline:
    """What the unchanged core's tests reach.

    Attributes:
        rows: Of each reference row, the functions it enters, as ``module:qualname``.
        tests: Of each test, the same, the quickest test first.
        failing: Tests and rows that fail with nothing changed; left aside.
        libraries: Modules of other people the tests import.
        at_import: Functions entered as modules are imported: what they make is a table.
    """

    rows: dict[int, list[str]] = field(default_factory=dict[int, list[str]])
    tests: dict[str, list[str]] = field(default_factory=dict[str, list[str]])
    failing: list[str] = field(default_factory=list[str])
    libraries: list[str] = field(default_factory=list[str])
    at_import: list[str] = field(default_factory=list[str])
    seconds: dict[str, float] = field(default_factory=dict[str, float])
    rows_s: float = 0.0

    def limit_s(self, tests: Sequence[str]) -> float:
        """Return the longest a mutant may take with the rows and these tests [s]."""
        plain = self.rows_s + sum(self.seconds[name] for name in tests)
        return LIMIT_LEAST_S + LIMIT_TIMES * plain


class _Reached:
    """Which functions of the watched modules are entered."""

    def __init__(self, codes: Mapping[str, CodeType]) -> None:
        self.names: dict[CodeType, str] = {}
        for module, code in codes.items():
            self._watch(module, code)
        self.seen: set[str] = set()
        sys.monitoring.use_tool_id(_TOOL, "mutation")
        sys.monitoring.register_callback(_TOOL, sys.monitoring.events.PY_START, self._enter)
        for code in self.names:
            sys.monitoring.set_local_events(_TOOL, code, sys.monitoring.events.PY_START)

    def _watch(self, module: str, code: CodeType) -> None:
        self.names[code] = f"{module}:{code.co_qualname.replace('.<locals>', '')}"
        for inner in code.co_consts:
            if isinstance(inner, CodeType):
                self._watch(module, inner)

    def _enter(self, code: CodeType, _offset: int) -> object:
        self.seen.add(self.names[code])
        return sys.monitoring.DISABLE

    def start(self) -> None:
        self.seen.clear()
        sys.monitoring.restart_events()


def _reference() -> ModuleType:
    return importlib.import_module("tests.calc.test_reference")


def _row_fails(reference: ModuleType, row: dict[str, str]) -> bool:
    try:
        return not reference.is_held(row)
    except Exception:
        return True


class _Watch:
    """Pytest plugin of the baseline: what each test reaches, and which fail."""

    def __init__(self, reached: _Reached, baseline: Baseline) -> None:
        self.reached, self.baseline = reached, baseline
        self.seconds: dict[str, float] = {}

    def pytest_runtest_setup(self, item: pytest.Item) -> None:
        self.reached.start()

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed:
            self.baseline.failing.append(report.nodeid)
        if report.when == "call":
            self.seconds[report.nodeid] = report.duration
            self.baseline.tests[report.nodeid] = sorted(self.reached.seen)


class _Only:
    """Pytest plugin of a mutant: the tests wanted, in the order wanted."""

    def __init__(self, wanted: Sequence[str]) -> None:
        self.places = {name: place for place, name in enumerate(wanted)}

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = sorted(
            (item for item in items if item.nodeid in self.places),
            key=lambda item: self.places[item.nodeid],
        )


_QUIET = ("-q", "-p", "no:cacheprovider", "-o", "addopts=", "--import-mode=importlib",
          "-W", "ignore::pytest.PytestAssertRewriteWarning")  # fmt: skip


def measure(sources: Mapping[str, Path], folders: Sequence[str]) -> Baseline:
    """Run rows and tests with nothing changed and note what each reaches.

    Args:
        sources: Modules to be mutated, by full name.
        folders: Folders or files of tests.

    Raises:
        RuntimeError: If the tests cannot be run at all.
    """

    def work() -> object:
        trees = {
            name: (ast.parse(path.read_text(encoding="utf-8")), path)
            for name, path in sources.items()
        }
        reached, baseline = _Reached(lay(trees)), Baseline()
        for name in sources:
            importlib.import_module(name)
        at_import = sorted(reached.seen)
        reference = _reference()
        begun = time.monotonic()
        for place, row in enumerate(reference.ROWS):
            reached.start()
            if _row_fails(reference, row) and row["file"] not in reference.LEAST_SHARE:
                baseline.failing.append(f"{row['file']}-{row['row']}")
            else:
                baseline.rows[place] = sorted(reached.seen)
        rows_s = time.monotonic() - begun
        watch = _Watch(reached, baseline)
        ignored = [f"--deselect={folder}/{name}" for folder in folders for name in SKIPPED]
        pytest.main([*_QUIET, *ignored, *folders], plugins=[watch])
        ordered = sorted(baseline.tests, key=lambda name: watch.seconds[name])
        tests = {name: baseline.tests[name] for name in ordered if name not in baseline.failing}
        ours = ("beadwright", "tests", "test_", "__main__", "conftest")
        return {
            "rows": baseline.rows,
            "tests": tests,
            "failing": baseline.failing,
            "at_import": at_import,
            "seconds": watch.seconds,
            "rows_s": rows_s,
            "libraries": [name for name in sys.modules if not name.startswith(ours)],
        }

    found: Any = forked(work, None)
    if found is None or not found["tests"]:
        said = Path("mutation-said.txt").read_text(encoding="utf-8")
        raise RuntimeError(f"the tests do not run even with nothing changed: {said}")
    rows = {int(place): names for place, names in found["rows"].items()}
    return Baseline(
        rows, found["tests"], found["failing"], found["libraries"], found["at_import"],
        found["seconds"], found["rows_s"],
    )  # fmt: skip


def preload(libraries: Sequence[str]) -> None:
    """Import other people's modules here once, so that no child has to."""
    for name in libraries:
        try:
            importlib.import_module(name)
        except Exception:
            continue
    assert not any(name.split(".")[0] == "beadwright" for name in sys.modules)


def _reaches(names: Sequence[str], module: str, scope: str) -> bool:
    if not scope:
        return any(name.startswith(f"{module}:") for name in names)
    whole = f"{module}:{scope}"
    return any(name == whole or name.startswith(f"{whole}.") for name in names)


def fate_of(module: str, path: Path, mutant: Mutant, baseline: Baseline) -> tuple[Fate, float]:
    """Return what becomes of a mutant, and how long that took [s].

    Args:
        module: Full name of the module.
        path: Its file.
        mutant: The change.
        baseline: What the tests reach with nothing changed.
    """
    # A table may be read without a function of its module.
    bare = not mutant.scope or _reaches(baseline.at_import, module, mutant.scope)
    scope = "" if bare else mutant.scope
    rows = [n for n, seen in baseline.rows.items() if _reaches(seen, module, scope)]
    tests = [n for n, seen in baseline.tests.items() if _reaches(seen, module, scope)]
    if bare:
        short = module.rpartition(".")[2]
        readers = {
            str(file) for file in Path("tests").rglob("test_*.py") if short in file.read_text()
        }
        rows = list(baseline.rows)
        tests = [n for n in baseline.tests if n in tests or n.partition("::")[0] in readers]

    def work() -> object:
        lay({module: (mutant.tree, path)})
        reference = _reference()
        out: dict[str, list[bool]] = {}
        for place in rows:
            row = reference.ROWS[place]
            fails = _row_fails(reference, row)
            if fails and row["file"] not in reference.LEAST_SHARE:
                return "killed"
            out.setdefault(row["file"], []).append(fails)
        for file, least in reference.LEAST_SHARE.items():
            fails_of = out.get(file, [])
            whole = len(fails_of) == len(reference.of_file(file))
            if whole and 1 - sum(fails_of) / len(fails_of) < least:
                return "killed"
        if not tests:
            return "survived"
        files = sorted({name.partition("::")[0] for name in tests})
        code = pytest.main([*_QUIET, "-x", *files], plugins=[_Only(tests)])
        return "survived" if code in (0, 5) else "killed"

    limit_s = baseline.limit_s(tests) if mutant.line else None  # nothing changed: all its time
    begun = time.monotonic()
    answer = forked(work, limit_s)
    spent = time.monotonic() - begun
    if answer == "survived":
        return "survived", spent
    if answer is None and limit_s is not None and spent >= limit_s:
        return "timeout", spent
    return "killed", spent
