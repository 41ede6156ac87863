"""The packer leaves docstrings and tables of lines out and keeps everything else."""

import ast
import sys
import traceback
from types import ModuleType
from typing import Any
from unittest.mock import patch

import pytest

from beadwright_build.inside.pack import leave_out_docstrings, without_lines

SOURCE = '''"""A module."""
from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Bead:
    """A dataclass."""

    leg: float = 6.0
    """An attribute."""

    def text(self) -> str:
        """A method."""
        return f"{self.leg} mm"


class Empty:
    """A class of a docstring alone."""


async def later() -> None:
    """A coroutine of a docstring alone."""


WORDS = "kept"
'''


def imported(tree: ast.Module) -> Any:
    made = ModuleType("packed")
    with patch.dict(sys.modules, packed=made):
        exec(compile(tree, "packed", "exec", dont_inherit=True), made.__dict__)
    return made


def test_docstrings_go_and_all_else_stays() -> None:
    tree = ast.parse(SOURCE)
    leave_out_docstrings(tree)
    made = imported(tree)
    assert made.__doc__ is None
    assert made.Empty.__doc__ is None
    assert made.later.__doc__ is None
    assert made.Bead.text.__doc__ is None
    assert made.WORDS == "kept"
    assert made.Bead(3.0).text() == "3.0 mm"


def test_a_dataclass_keeps_a_mark_so_that_it_writes_none_of_its_own() -> None:
    tree = ast.parse(SOURCE)
    leave_out_docstrings(tree)
    assert imported(tree).Bead.__doc__ == "."


def test_code_without_lines_works_and_an_error_names_the_function() -> None:
    source = "def f(x):\n    y = x * 2\n\n\n    return 1 / (y - x - x + x)\n"
    code = compile(source, "packed", "exec", dont_inherit=True)
    names: dict[str, Any] = {}
    exec(without_lines(code), names)
    assert names["f"](4) == 0.25
    with pytest.raises(ZeroDivisionError, match="division by zero") as caught:
        names["f"](0)
    assert 'File "packed", line 1, in f' in "".join(traceback.format_exception(caught.value))
    inner = without_lines(code).co_consts[0]
    lines = {line for _, _, line in inner.co_lines()}
    assert lines == {inner.co_firstlineno}
    assert len(inner.co_linetable) < len(code.co_consts[0].co_linetable)
