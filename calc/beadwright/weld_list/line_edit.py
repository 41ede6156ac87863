"""One entry of one line of a list set anew; every other line stays as it was typed."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from io import StringIO
from itertools import zip_longest

from beadwright.errors import FieldErrors
from beadwright.weld_list.weld_lines import WeldLine, WeldLines, key_of, read_lines


def edited_list(text: str, number: int, key: str, value: str) -> str:
    """Return a list with one entry of one line set anew.

    Args:
        text: The list, see ``weld_lines.read_lines`` [-].
        number: The line's place, 1 for the first [-].
        key: A key of a job, or ``name`` [-].
        value: What it says from now on; blank to leave it out [-].

    Raises:
        FieldErrors: If there is no such line, it cannot be taken apart, or with this entry the
            cells of the list could not be told apart any more.
    """
    read = read_lines(text)
    line = next((each for each in read.lines if each.number == number), None)
    if line is None:
        raise FieldErrors({key: [f"The list has no line {number}."]})
    if line.cells is None:
        raise FieldErrors({key: [f"{line.wrong} Mend the line itself first."]})
    cells = _with_entry(line, read.columns, key, " ".join(value.split()))
    typed = [_written(cells, read.parts) if each is line else each.typed for each in read.lines]
    new = "\n".join([*([read.header] if read.header else []), *typed])
    if not _same_others(read, read_lines(new), number):
        raise FieldErrors({
            key: ["Write this without commas and semicolons: here they part the entries."]
        })  # fmt: skip
    return new


def _with_entry(line: WeldLine, columns: Sequence[str], key: str, value: str) -> list[str]:
    """The cells of a line, the entry in its column or, without one, as ``key=value``."""
    if key == "wire" and value and " " not in value and _size_in_wire(line):
        value = f"{value} {line.entries['dia']}"  # the size stands in the same cell
    cells = [
        "" if _key_in(cell) == key or (column == key and not _key_in(cell)) else cell
        for cell, column in zip_longest(line.cells or (), columns, fillvalue="")
    ]
    place = columns.index(key) if key in columns else None
    if value and place is not None and not cells[place] and not _key_in(value):
        cells[place] = value
        return _trimmed(cells)
    return [*_trimmed(cells), *([f"{key}={value}"] if value else [])] or [""]


def _size_in_wire(line: WeldLine) -> bool:
    """True if the wire's cell says its size too."""
    return f"{line.entries.get('wire', '')} {line.entries.get('dia', '')}" in (line.cells or ())


def _trimmed(cells: Sequence[str]) -> list[str]:
    """Cells without the blank ones at the end."""
    kept = max((place for place, cell in enumerate(cells, 1) if cell), default=0)
    return list(cells[:kept])


def _key_in(cell: str) -> str:
    """The key a cell names itself, as in ``gap=1/16in``; empty for none."""
    before, sign, _ = cell.partition("=")
    return key_of(before.strip()) if sign else ""


def _written(cells: Sequence[str], parts: str) -> str:
    file = StringIO()
    csv.writer(file, delimiter=parts, lineterminator="").writerow(cells)
    return file.getvalue()


def _same_others(before: WeldLines, after: WeldLines, number: int) -> bool:
    """True if every line but one still says what it said."""
    if len(before.lines) != len(after.lines) or before.parts != after.parts:
        return False
    pairs = zip(before.lines, after.lines, strict=True)
    return all(
        (one.name, one.entries) == (two.name, two.entries)
        for one, two in pairs
        if one.number != number
    )
