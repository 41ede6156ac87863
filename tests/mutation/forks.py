"""A process of its own for a piece of work, and modules laid in the way of their import."""

from __future__ import annotations

import ast
import importlib.abc
import importlib.util
import json
import os
import signal
import sys
import traceback
from collections.abc import Callable, Mapping, Sequence
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import CodeType, ModuleType


class _Laid(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Lays compiled modules in the way of the import of the same name."""

    def __init__(self, codes: Mapping[str, tuple[CodeType, str]]) -> None:
        self.codes = codes

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        if fullname not in self.codes:
            return None
        return importlib.util.spec_from_file_location(
            fullname, self.codes[fullname][1], loader=self
        )

    def exec_module(self, module: ModuleType) -> None:
        exec(self.codes[module.__name__][0], vars(module))


def lay(modules: Mapping[str, tuple[ast.Module, Path]]) -> dict[str, CodeType]:
    """Compile modules and lay them in the way of their import; return their code by name."""
    codes = {
        name: (compile(tree, str(path), "exec", dont_inherit=True), str(path))
        for name, (tree, path) in modules.items()
    }
    sys.meta_path.insert(0, _Laid(codes))
    return {name: code for name, (code, _) in codes.items()}


def forked(work: Callable[[], object], limit_s: float | None) -> object:
    """Return what work returns in a forked process, or None if it takes too long or dies.

    Args:
        work: Returns something JSON can hold.
        limit_s: Longest it may take, or None for as long as it takes [s].
    """
    read, write = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(read)
        # Should the parent be gone, nobody else would stop it.
        signal.signal(signal.SIGALRM, signal.SIG_DFL)
        signal.setitimer(signal.ITIMER_REAL, 0 if limit_s is None else limit_s + 1)
        try:
            quiet = os.open("mutation-said.txt", os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
            os.dup2(quiet, 1)
            os.dup2(quiet, 2)
            with os.fdopen(write, "w") as out:
                json.dump(work(), out)
        except BaseException:
            traceback.print_exc()
        finally:
            sys.stdout.flush()
            sys.stderr.flush()
            os._exit(0)
    os.close(write)

    def stop(_signal: int, _frame: object) -> None:
        os.kill(child, signal.SIGKILL)

    signal.signal(signal.SIGALRM, stop)
    signal.setitimer(signal.ITIMER_REAL, limit_s or 0)
    with os.fdopen(read) as answer:
        text = answer.read()
    signal.setitimer(signal.ITIMER_REAL, 0)
    os.waitpid(child, 0)
    return json.loads(text) if text else None
