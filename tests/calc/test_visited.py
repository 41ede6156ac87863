"""Nothing of the calculation goes unchecked: every public function of the core.

A public function counts as checked if a row of ``reference/*.csv`` or a page worked by hand runs
it, or if a test that imports its module uses it by name. That is the least: what the check is
worth, ``tests/mutation`` tells.
"""

import ast
import inspect
import sys
from collections.abc import Callable, Iterator
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from types import CodeType, FrameType, ModuleType
from typing import Any, NamedTuple

import beadwright
from tests.calc.reference_rows import read_rows, values_of
from tests.calc.test_worked_pages import WORKED

HERE = Path(__file__).parent
ROWS = read_rows()

LEFT_OUT = {
    "beadwright.__main__": "a command; test_terminal.py starts it in a process of its own",
}
"""Modules not looked at, and why."""

ENTERED_UNSEEN = {
    "beadwright.job.page_query.PageAnswered.units": "every page's answer has its own",
    "beadwright.reading.queries.messages_of": "run by every refusal; test_query.py",
}
"""Functions no row is seen to enter and no test names, and why that is no gap."""


class Public(NamedTuple):
    """A public function of the core, or a method or property of a public class."""

    module: str
    name: str
    code: CodeType


def modules() -> Iterator[ModuleType]:
    """Every module of the core, from the tree of files."""
    yield beadwright
    for found in walk_packages(beadwright.__path__, "beadwright."):
        if found.name not in LEFT_OUT:
            yield import_module(found.name)


def code_of(member: object) -> CodeType | None:
    """The code behind a function, a method, a property or a wrapped function."""
    function: Any = getattr(member, "fget", None) or member
    code = getattr(inspect.unwrap(function), "__code__", None)
    return code if isinstance(code, CodeType) else None


def public_functions() -> Iterator[Public]:
    for module in modules():
        for name, found in vars(module).items():
            if name.startswith("_") or getattr(found, "__module__", "") != module.__name__:
                continue
            if inspect.isclass(found):
                for inner, member in vars(found).items():
                    if not inner.startswith("_") and (code := code_of(member)):
                        yield Public(module.__name__, f"{name}.{inner}", code)
            elif code := code_of(found):
                yield Public(module.__name__, name, code)


def codes_run(work: Callable[[], object]) -> set[CodeType]:
    """Every code object entered while a function runs."""
    entered: set[CodeType] = set()

    def note(frame: FrameType, event: str, argument: Any) -> None:
        if event == "call":
            entered.add(frame.f_code)

    before = sys.getprofile()
    sys.setprofile(note)
    try:
        work()
    finally:
        sys.setprofile(before)
    return entered


@cache
def names_used() -> dict[str, tuple[set[str], set[str]]]:
    """By file of tests: what it imports of the core, and every name it takes from an object."""
    found: dict[str, tuple[set[str], set[str]]] = {}
    for path in HERE.parent.rglob("test_*.py"):
        imported, taken = found.setdefault(str(path), (set(), set()))
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module:
                imported |= {node.module, *(f"{node.module}.{one.name}" for one in node.names)}
            elif isinstance(node, ast.Attribute):
                taken.add(node.attr)
    return found


def is_named_in_a_test(public: Public) -> bool:
    """True if a test imports a function, or takes a member by name from what it imports.

    A page's answer and what it holds come by the door, ``beadwright.api``, or from tests' own file.
    """
    *owner, last = public.name.split(".")
    for imported, taken in names_used().values():
        if f"{public.module}.{public.name}" in imported:
            return True
        by_the_door = bool(owner) and any(
            name == "beadwright.api" or name.startswith("tests.calc.") for name in imported
        )
        if (public.module in imported or by_the_door) and last in taken:
            return True
    return False


def forget_answers() -> None:
    """Empty every cache of the core: an answer remembered is no function entered."""
    for module in modules():
        for found in vars(module).values():
            if hasattr(found, "cache_clear"):
                found.cache_clear()


def test_every_public_function_of_every_module_is_checked() -> None:
    forget_answers()
    entered = codes_run(lambda: (values_of(ROWS), [worked.wrong() for worked in WORKED]))
    unchecked = {
        f"{public.module}.{public.name}"
        for public in public_functions()
        if public.code not in entered and not is_named_in_a_test(public)
    }
    missing = sorted(unchecked - set(ENTERED_UNSEEN))
    assert not missing, "\n".join(missing)


def test_an_excuse_is_for_something_that_is_there() -> None:
    names = {f"{public.module}.{public.name}" for public in public_functions()}
    assert set(ENTERED_UNSEEN) <= names


def test_the_modules_looked_at_are_the_files_of_the_core() -> None:
    root = Path(beadwright.__path__[0])
    files = [path for path in root.rglob("*.py") if path.name != "__init__.py"]
    looked_at = [module for module in modules() if not hasattr(module, "__path__")]
    assert len(looked_at) + len(LEFT_OUT) == len(files) > 150


def test_what_no_test_names_is_found_out() -> None:
    code = code_of(is_named_in_a_test)
    assert code is not None
    assert not is_named_in_a_test(Public("beadwright.units", "no_such_function", code))
