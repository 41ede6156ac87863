"""The packer leaves docstrings out and keeps everything else."""

import ast
import sys
from types import ModuleType
from typing import Any
from unittest.mock import patch

from beadwright_build.inside.pack import leave_out_docstrings

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


def test_lines_stay_where_they_were() -> None:
    """A traceback names the same line with and without docstrings."""
    tree = ast.parse(SOURCE)
    leave_out_docstrings(tree)
    [text] = [node for node in ast.walk(tree) if isinstance(node, ast.Return)]
    assert SOURCE.splitlines()[text.lineno - 1].strip() == 'return f"{self.leg} mm"'
