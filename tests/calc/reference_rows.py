"""Runs the checks of ``reference/*.csv``: a printed value against what the core answers.

Plain standard library and beadwright, no pytest, so the same rows run here and inside Pyodide:

- Here: ``from tests.calc.reference_rows import read_rows, run_rows, values_of``.
- Inside Pyodide, whose trimmed library has no ``csv``: write ``json.dumps(read_rows())`` to a file
  on the host, mount that folder and this one, put this one on ``sys.path`` and call
  ``reference_rows.main`` with the file's path inside as JSON. It answers with the JSON of
  ``values_of``; compare that with the host's own, exactly.

Columns of a file: ``function`` (dotted, inside beadwright, or an adapter of ``checks`` or of
another file here whose name ends so), ``inputs`` (JSON object, in the source's units where the
adapter converts), ``expected`` (as printed; ``28..30`` is a range), ``tolerance`` (absolute, or a
share such as ``12%``; blank: the text must be the same), ``document``, ``place``, ``how``.
"""

from __future__ import annotations

import importlib
import importlib.util
import json
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from types import ModuleType
from typing import Any, cast

FOLDER = Path(__file__).parent / "reference"
Row = dict[str, str]


def read_rows(folder: Path = FOLDER) -> list[Row]:
    """Return every row of every file of a folder, with its file's name and line number."""
    import csv  # not among what the phone carries

    rows: list[Row] = []
    for path in sorted(folder.glob("*.csv")):
        with path.open(encoding="utf-8", newline="") as file:
            for number, row in enumerate(csv.DictReader(file), start=2):
                rows.append({**row, "file": path.stem, "row": str(number)})
    return rows


def _adapters(stem: str) -> ModuleType:
    """The adapters beside this file, however this file was loaded."""
    for name in (f"tests.calc.{stem}", stem):
        if name in sys.modules:
            return sys.modules[name]
    spec = importlib.util.spec_from_file_location(stem, Path(__file__).with_name(f"{stem}.py"))
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[stem] = module
    spec.loader.exec_module(module)
    return module


ROOMS = (
    "", "reading.", "process.", "joint.", "job.", "layers.", "setting.", "passes.", "heating.",
    "strength.", "inspection.", "money.", "supply.", "machine.", "power.", "coupons.",
    "weld_list.", "sheets.",
)  # fmt: skip
"""Where a module of the core may stand; no two have one name."""


def module_named(name: str) -> ModuleType:
    """Return a module of the core by its own name, whatever room it stands in.

    Raises:
        ModuleNotFoundError: If there is none.
    """
    for room in ROOMS:
        spec = importlib.util.find_spec(f"beadwright.{room}{name}")
        if spec is not None and spec.submodule_search_locations is None:  # a room is no module
            return importlib.import_module(f"beadwright.{room}{name}")
    raise ModuleNotFoundError(f"no module {name} in the core")


def function_of(name: str) -> Callable[..., Any]:
    """Return the function a row names.

    Raises:
        AttributeError: If there is none.
    """
    module, _, attribute = name.rpartition(".")
    ours = module.endswith("checks")
    home = _adapters(module) if ours else module_named(module)
    return cast("Callable[..., Any]", getattr(home, attribute))


def value_of(row: Row) -> Any:
    """Return what the core answers to a row: a number, a text or a [low, high] window."""
    value = function_of(row["function"])(**json.loads(row["inputs"]))
    return list(cast("Sequence[float]", value)) if isinstance(value, tuple) else value


def number(text: str) -> float:
    """Return a printed number: ``0.375``, ``3/8``, ``1-1/4``."""
    whole, _, fraction = text.rpartition("-") if "/" in text else ("", "", "")
    if not fraction:
        return float(text)
    top, below = fraction.split("/")
    return float(whole or 0) + float(top) / float(below)


def holds(value: Any, expected: str, tolerance: str) -> bool:
    """Return whether a value stands within tolerance of what is printed.

    A window must hold the whole printed value or range; a number must stand in a printed range.

    Args:
        value: A number, a text or [low, high].
        expected: As printed.
        tolerance: Absolute, a share with ``%``, or blank for text.
    """
    if isinstance(value, str):
        return value == expected and tolerance == ""
    printed_low, _, printed_high = expected.partition("..")
    low = number(printed_low)
    high = number(printed_high) if printed_high else low
    if tolerance.endswith("%"):
        below, above = (abs(end) * float(tolerance[:-1]) / 100 for end in (low, high))
    else:
        below = above = float(tolerance)
    rounding = 1e-12 * max(abs(low), abs(high), 1.0)
    below, above = below + rounding, above + rounding
    if isinstance(value, list):
        window_low, window_high = cast("list[float]", value)
        return window_low - below <= low and high <= window_high + above
    return low - below <= float(value) <= high + above


def run_rows(folder: Path = FOLDER) -> list[dict[str, Any]]:
    """Return file, row, ok and value of every row of a folder."""
    return [
        {
            "file": row["file"],
            "row": int(row["row"]),
            "value": (value := value_of(row)),
            "ok": holds(value, row["expected"], row["tolerance"]),
        }
        for row in read_rows(folder)
    ]


def values_of(rows: Sequence[Row]) -> list[Any]:
    """Return the value of each row, in order."""
    return [value_of(row) for row in rows]


def main(text: str) -> str:
    """Return the JSON of ``values_of``.

    Args:
        text: The JSON of ``read_rows``, or of the path of a file that holds it.
    """
    given: list[Row] | str = json.loads(text)
    rows: list[Row] = (
        json.loads(Path(given).read_text(encoding="utf-8")) if isinstance(given, str) else given
    )
    return json.dumps(values_of(rows))
