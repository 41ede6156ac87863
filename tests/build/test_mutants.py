"""The mutation tool itself: which changes it makes, and that it tells noticed from unnoticed."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

from tests.mutation.__main__ import ACCEPTED, accepted, module_path
from tests.mutation.forks import forked
from tests.mutation.mutants import mutants, unchanged
from tests.mutation.run_mutants import Baseline

ROOT = Path(__file__).resolve().parents[2]


def changes(source: str) -> list[str]:
    return [mutant.text for mutant in mutants(source)]


def value_of(tree: ast.Module, name: str = "x") -> object:
    space: dict[str, object] = {}
    exec(compile(tree, "mutant", "exec"), space)
    return space[name]


@pytest.mark.parametrize(
    ("source", "made"),
    [
        ("x = 2.0", ["2.0 → 2.1"]),
        ("x = 20", ["20 → 21"]),
        ("x = 0", ["0 → 1"]),
        ("x = -a", []),
        ("x = a + b", ["a + b → a - b"]),
        ("x = a - b", ["a - b → a + b"]),
        ("x = a * b", ["a * b → a / b"]),
        ("x = a / b", ["a / b → a * b"]),
        ("x = a ** b", ["a ** b → a * b"]),
        ("x += a", ["x += a → x -= a"]),
        ("x = a < b", ["a < b → a <= b", "a < b → a > b"]),
        ("x = a <= b", ["a <= b → a < b", "a <= b → a >= b"]),
        ("x = a > b", ["a > b → a >= b", "a > b → a < b"]),
        ("x = a >= b", ["a >= b → a > b", "a >= b → a <= b"]),
        ("x = a == b", ["a == b → a != b"]),
        ("x = a < b < c", ["a < b < c → a <= b < c", "a < b < c → a > b < c",
                           "a < b < c → a < b <= c", "a < b < c → a < b > c"]),
        ("x = min(a, b)", ["min(a, b) → max(a, b)"]),
        ("x = max(a, b)", ["max(a, b) → min(a, b)"]),
        ("x = a and b", ["a and b → a or b"]),
        ("x = not a", ["not a → not not a"]),
        ("x = a[1]", ["a[1] → a[2]"]),
        ("x = round(a, 3)", ["round(a, 3) → round(a, 4)"]),
        ("x = f(a, b)", ["f(a, b) → f(b, a)"]),
        ("x = f(a.leg, b.leg, 'c')", ["f(a.leg, b.leg, 'c') → f(b.leg, a.leg, 'c')"]),
        ("x = (a, b)", ["(a, b) → (b, a)"]),
        ("x = a if c else b", ["a if c else b → b if c else a"]),
        ("def f(a: int, b: int):\n    return g(a, b)", ["g(a, b) → g(b, a)"]),
        ("def f(a: int, b: str):\n    return g(a, b)", []),
        ("def f(a):\n    g(a)", ["g(a) → left out"]),
        ("def f(a):\n    a = g(a)", ["a = g(a) → left out"]),
        ("def f(a):\n    b = g(a)", []),
        ("def f(a):\n    a.b = g(a)", ["a.b = g(a) → left out"]),
        ("def f(a):\n    if a:\n        return b", ["if a: return b → left out"]),
        ("def f(a):\n    if a:\n        raise B", ["raise B → left out"]),
        ("def f(a):\n    yield a", ["yield a → left out"]),
        # Not worth a run: what is the same in either order, and a statement nothing runs without.
        ("x = hypot(a, b)", []),
        ("x = f(a, a)", []),
        ("g(a)", []),
        ("def f(a):\n    return a", []),
        # Not worth a run: texts, docstrings, annotations, types, the words of a refusal.
        ("x = 'a' + b", []),
        ('"""Two is 2."""', []),
        ("x: Literal[1, 3]", []),
        ("X = Literal[1, 3]", []),
        ("raise ValueError(f'{a + 1}')", []),
        ("x = True", []),
    ],
)  # fmt: skip
def test_the_changes_made(source: str, made: list[str]) -> None:
    assert changes(source) == made


def test_each_mutant_differs_from_the_source_and_from_the_others() -> None:
    source = "def f(a, b):\n    return a * 2 + b * 2 if a < 1 else max(a, b) ** 2\nx = f(3, 5)\n"
    found = list(mutants(source))
    texts = {ast.unparse(mutant.tree) for mutant in found}
    assert len(texts) == len(found) > 10
    assert ast.unparse(ast.parse(source)) not in texts
    assert {mutant.scope for mutant in found} == {"f", ""}


def test_a_change_made_twice_in_a_scope_is_numbered() -> None:
    assert changes("x = f(2.0), f(2.0)") == ["f(2.0) → f(2.1)", "f(2.0) → f(2.1) #2"]


def test_mutants_run_as_written() -> None:
    found = {mutant.text: value_of(mutant.tree) for mutant in mutants("x = 3.0 ** 2.0")}
    assert found == {
        "3.0 ** 2.0 → 3.0 * 2.0": 6.0,
        "3.0 ** 2.0 → 3.1500000000000004 ** 2.0": pytest.approx(3.15**2),
        "3.0 ** 2.0 → 3.0 ** 2.1": pytest.approx(3**2.1),
    }
    assert value_of(unchanged("x = 3").tree) == 3


def test_work_that_never_ends_is_stopped(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)  # what the work says is written where it runs

    def loop() -> object:
        while True:
            pass

    assert forked(loop, 0.2) is None
    assert forked(lambda: "done", 10) == "done"
    assert forked(lambda: "done", None) == "done"


def test_a_mutant_s_time_is_scaled_from_the_tests_it_runs() -> None:
    baseline = Baseline(seconds={"slow": 30.0, "quick": 0.5}, rows_s=2.0)
    assert baseline.limit_s(["quick"]) == 20 + 10 * (2.0 + 0.5)
    assert baseline.limit_s(["quick", "slow"]) == 20 + 10 * (2.0 + 0.5 + 30.0)


def test_what_is_left_out_is_no_more_in_the_mutant() -> None:
    source = (
        "def f(a):\n    a.append(2)\n    if len(a) > 3:\n        raise ValueError\n    return a\n"
    )
    out = [m for m in mutants(source) if m.text.endswith("left out")]
    assert [value(m.tree, [1]) for m in out if "append" in m.text] == [[1]]
    [kept] = [m for m in out if m.text.startswith("raise")]
    assert value(kept.tree, [1, 1, 1]) == [1, 1, 1, 2]


def value(tree: ast.Module, given: list[int]) -> object:
    """What the function f of a mutant returns."""
    function = value_of(tree, "f")
    assert callable(function)
    return function(given)


def run(folder: Path, tests: str) -> subprocess.CompletedProcess[str]:
    """Run the tool on a module of one formula, held by the tests given."""
    for name in ("calc/beadwright", "site", "build", "tests/mutation", "tests/calc"):
        (folder / name).mkdir(parents=True)
    for path in (ROOT / "tests/mutation").glob("*.py"):
        (folder / "tests/mutation" / path.name).write_text(path.read_text(encoding="utf-8"))
    (folder / "tests/mutation/accepted.csv").write_text("module,scope,change,reason\n")
    (folder / "calc/beadwright/__init__.py").write_text("")
    (folder / "calc/beadwright/tiny.py").write_text(
        "def area(a, b):\n    return a * b if a < b else b * a\n"
    )
    (folder / "pyproject.toml").write_text('[tool.pytest]\npythonpath = ["."]\n')
    (folder / "tests/calc/test_reference.py").write_text(
        "LEAST_SHARE = {}\nROWS = []\n\n\ndef is_held(row):\n    return True\n\n\n"
        "def of_file(name):\n    return []\n"
    )
    (folder / "tests/calc/test_tiny.py").write_text(f"from beadwright.tiny import area\n{tests}")
    return subprocess.run(
        [sys.executable, "-m", "tests.mutation", "tiny"],
        cwd=folder, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip


def test_a_hole_in_the_tests_is_reported(tmp_path: Path) -> None:
    found = run(tmp_path, "def test_area():\n    assert area(2, 3) == 6\n")
    assert found.returncode == 1, found.stderr
    said = found.stdout
    # The other branch is never run; that of equal sides neither, and gives the same anyhow.
    assert "tiny.py:2 area: b * a → b / a  [SURVIVED" in said
    assert "a * b → a / b" not in said


def test_tests_that_hold_everything_pass_but_for_what_changes_no_answer(tmp_path: Path) -> None:
    tests = "def test_area():\n    assert (area(2, 3), area(3, 2)) == (6, 6)\n"
    found = run(tmp_path, tests)
    left = [line for line in found.stdout.splitlines() if "SURVIVED" in line]
    assert [line.split("  [")[0] for line in left] == [
        "tiny.py:2 area: a < b → a <= b",
        "tiny.py:2 area: a < b → a > b",
    ]
    assert found.returncode == 1
    listed = tmp_path / "tests/mutation/accepted.csv"
    with listed.open("a") as file:
        for change in ("a < b → a <= b", "a < b → a > b"):
            file.write(f"tiny,area,{change},both branches give the same\n")
    again = subprocess.run(
        [sys.executable, "-m", "tests.mutation", "tiny"],
        cwd=tmp_path, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip
    assert again.returncode == 0, again.stdout + again.stderr
    assert "2 accepted" in again.stdout


def test_every_accepted_survivor_has_its_reason_and_its_module() -> None:
    assert ACCEPTED.is_file()
    changes: dict[str, set[tuple[str, str]]] = {}
    gone: list[tuple[str, str, str]] = []
    for (module, scope, change), reason in accepted().items():
        assert reason.strip()
        if module not in changes:  # every mutant of a module is made once
            text = module_path(module, ROOT).read_text(encoding="utf-8")
            changes[module] = {(m.scope, m.text) for m in mutants(text)}
        if (scope, change) not in changes[module]:
            gone.append((module, scope, change))
    assert gone == []
