"""A weld list as text: one weld a line, as typed, pasted from a spreadsheet or read from a file.

The columns are those of ``COLUMNS`` unless the first line names its own. A cell ``gap=1/16in``
says any other entry of a weld. Nothing typed is lost: what cannot be read stays as it was typed.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from io import StringIO
from types import MappingProxyType

from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.typed_number import quoted

NAME = "name"
"""The column of a weld's own name; every other column is a key of a job."""

COLUMNS = (NAME, "joint", "plate", "leg", "weld_length", "welds", "position", "wire", "gas")
"""Columns of a line where no header names others."""

LONGEST_LIST = 100_000
"""Characters a list may have [-]."""

MOST_LINES = 1000
"""Lines a list may have; the rest is kept and not counted [-]."""

_WELD = frozenset(JOB_FIELDS) - {"units", "own"}

_CALLED: Mapping[str, str] = MappingProxyType({
    **{key: key for key in (NAME, *_WELD)},
    **{key.replace("_", " "): key for key in _WELD},
    "weld": NAME, "mark": NAME, "no": NAME, "no.": NAME, "weld no": NAME, "id": NAME,
    "kind": "joint", "type": "joint", "thickness": "plate", "t": "plate", "size": "leg",
    "fillet": "leg", "leg size": "leg", "length": "weld_length", "count": "welds",
    "qty": "welds", "quantity": "welds", "pcs": "welds", "pos": "position",
    "pos.": "position", "other plate": "plate2", "diameter": "dia", "wire size": "dia",
})  # fmt: skip
"""What a column is called, in small letters, and its key."""

_SAID = ("joint", "plate", "weld_length", "welds", "position", "wire", "dia", "gas")
"""Keys a line says though they are the defaults, so that it means the same later."""

_MOST_JOINED = 5
"""Lines a quoted cell may run over [-]."""


@dataclass(frozen=True, slots=True)
class WeldLine:
    """One line of a list.

    Attributes:
        number: Its place in the list, 1 for the first [-].
        typed: The line as typed.
        name: The weld's name, or empty.
        entries: What it says, by key of a job.
        wrong: Why it cannot be read; empty where it can.
        cells: Its cells; None where it cannot be taken apart.
        missing: The key that is blank and must not be; empty for none.
    """

    number: int
    typed: str
    name: str
    entries: Mapping[str, str]
    wrong: str = ""
    cells: tuple[str, ...] | None = ()
    missing: str = ""


@dataclass(frozen=True, slots=True)
class WeldLines:
    """A list taken apart.

    Attributes:
        header: The line that names the columns, as typed; empty where none does.
        passed_over: Columns of the header that are no entry of a weld.
        lines: The lines, in their order.
        columns: The key of each column, empty for one passed over.
        parts: What parts the cells.
    """

    header: str
    passed_over: tuple[str, ...]
    lines: tuple[WeldLine, ...]
    columns: tuple[str, ...] = COLUMNS
    parts: str = ","


def read_lines(text: str) -> WeldLines:
    """Return a list taken apart.

    Args:
        text: One weld a line; cells parted by commas, semicolons or tabs [-].
    """
    parts = _delimiter(text)
    rows = [each for each in _rows(text, parts) if each[0].strip(f" \t\r\n{parts}")]
    header, passed_over = "", tuple[str, ...]()
    columns: tuple[str, ...] = COLUMNS
    if rows and rows[0][1] and _is_header(rows[0][1]):
        header, cells = rows.pop(0)
        columns = tuple(key_of(cell) for cell in cells or ())
        named = zip(cells or (), columns, strict=True)
        passed_over = tuple(cell for cell, key in named if cell and not key and cell[0] != "(")
    found = [_line(i, typed, cells, columns) for i, (typed, cells) in enumerate(rows, 1)]
    return WeldLines(header, passed_over, tuple(found), columns, parts)


def _delimiter(text: str) -> str:
    """What parts the cells: a spreadsheet's tab, else the semicolon where it stands oftener."""
    if "\t" in text:
        return "\t"
    return ";" if text.count(";") > text.count(",") else ","


def _rows(text: str, parts: str) -> Iterator[tuple[str, list[str] | None]]:
    """Yield each line as typed with its cells, or None where a quote is opened and not closed."""
    lines, at = text.splitlines(), 0
    while at < len(lines):
        taken = next(
            (n for n in range(1, _MOST_JOINED + 1) if _cells("\n".join(lines[at : at + n]), parts)),
            1,
        )
        typed = "\n".join(lines[at : at + taken])
        yield typed, _cells(typed, parts)
        at += taken


def _cells(typed: str, parts: str) -> list[str] | None:
    try:
        rows = list(csv.reader(StringIO(typed, newline=""), delimiter=parts, strict=True))
    except csv.Error as error:
        if "unexpected end" in str(error):
            return None
        rows = list(csv.reader([typed], delimiter=parts))
    return [" ".join(cell.split()) for cell in (rows[0] if rows else [""])]


def key_of(name: str) -> str:
    """Return the key a column's name stands for; empty for a name that is none.

    Args:
        name: As the head of a column says it [-].
    """
    return _CALLED.get(name.lower(), "")


def _is_header(cells: Sequence[str]) -> bool:
    """True for a line whose cells are names of columns, the weld's plate or length among them."""
    keys = [key_of(cell) for cell in cells]
    return len([key for key in keys if key]) > 1 and bool({"plate", "weld_length"} & {*keys})


def _line(number: int, typed: str, cells: Sequence[str] | None, columns: Sequence[str]) -> WeldLine:
    if cells is None:
        return WeldLine(number, typed, "", {}, "A quote is opened and not closed.", None)
    found: dict[str, str] = {}
    wrong = ""
    for place, cell in enumerate(cells):
        key, text = columns[place] if place < len(columns) else "", cell
        before, sign, after = cell.partition("=")
        if sign and key_of(before.strip()):
            key, text = key_of(before.strip()), after.strip()
        elif place >= len(columns) and cell:
            wrong = wrong or f"{quoted(cell)} stands in no column; write it as gap=1/16in."
        if key and text:
            found[key] = text
    name = found.pop(NAME, "")
    missing = "" if wrong else _missing(found)
    wrong = wrong or _BLANK.get(missing, "")
    return WeldLine(number, typed, name, _with_size(found), wrong, tuple(cells), missing)


_BLANK: Mapping[str, str] = MappingProxyType({
    "plate": "The plate is blank: write its thickness, as 3/8in or 10ga.",
    "weld_length": "The length is blank: write the length of one weld, as 6in.",
})  # fmt: skip
"""What to write where a line leaves out what it must say."""


def _missing(found: Mapping[str, str]) -> str:
    """The key a line must say and does not; empty for none."""
    if "plate" not in found:
        return "plate"
    hole = found.get("joint", "").lower() in ("plug", "slot")
    return "" if "weld_length" in found or hole else "weld_length"


def _with_size(found: Mapping[str, str]) -> dict[str, str]:
    """A wire may be written with its size: ``ER70S-6 0.045in``."""
    wire, _, size = found.get("wire", "").partition(" ")
    taken = {**found, "wire": wire, "dia": found.get("dia", size)} if size else {**found}
    return {"welds": "1", **taken}


def written_lines(rows: Sequence[Sequence[str]]) -> str:
    """Return rows of cells as the text of a list, cells quoted where that is needed.

    Args:
        rows: Cells of each line, in the order of ``COLUMNS`` or under a header [-].
    """
    file = StringIO()
    csv.writer(file, lineterminator="\n").writerows(rows)
    return file.getvalue()


def line_cells(line: WeldLine) -> list[str]:
    """Return a line's cells in the order of ``COLUMNS``, what has no column as ``key=value``.

    Args:
        line: A line that could be read [-].
    """
    said = {NAME: line.name, **line.entries}
    rest = (f"{key}={text}" for key, text in said.items() if key not in COLUMNS)
    return [*(said.get(key, "") for key in COLUMNS), *rest]


def job_line(name: str, typed: Mapping[str, str]) -> str:
    """Return a job as a line of a list: what was typed, and the defaults a line must say.

    Args:
        name: What to call the weld [-].
        typed: Keys of a query as typed [-].
    """
    said = {key: text for key, text in typed.items() if key in _WELD and text}
    stands = {key: said.get(key) or JOB_FIELDS[key].default for key in _SAID}
    return written_lines([line_cells(WeldLine(0, "", name, {**said, **stands}))]).rstrip("\n")
