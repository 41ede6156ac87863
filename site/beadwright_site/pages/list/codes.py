"""Codes that open a list on another phone: one, or several where it is too long for one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import batched
from zlib import crc32

from beadwright.weld_list.list_parts import MOST_PARTS, ListParts
from beadwright.weld_list.weld_lines import WeldLine, WeldLines, read_lines
from beadwright_site.parts.shared_link import shared_query, short_query

LONGEST = 480
"""Characters of a query that a printed code can hold, with the app's own address before it."""


def code_queries(
    read: WeldLines, typed: Mapping[str, str], kept: Mapping[str, str]
) -> tuple[str, ...]:
    """Return the query of each code, in the order to read them; none for a list too long for codes.

    What is private stays at home. Each part of a list can be read alone.

    Args:
        read: The list taken apart.
        typed: Entries as typed.
        kept: What the phone keeps.
    """
    if not read.lines:
        return ()
    whole = short_query(shared_query("list", {**typed, "part": ""}, kept))
    if len(whole) <= LONGEST:
        return (whole,)
    mark = f"{crc32(''.join(line.typed for line in read.lines).encode()):08x}"[:6]
    least = max(2, len(whole) // LONGEST)  # a part packs no better than the whole
    for count in range(least, MOST_PARTS + 1):
        found = tuple(_parts(read, typed, kept, count, mark))
        if found and max(map(len, found)) <= LONGEST:
            return found
    return ()


def _parts(
    read: WeldLines, typed: Mapping[str, str], kept: Mapping[str, str], count: int, mark: str
) -> Iterator[str]:
    size = -(-len(read.lines) // count)
    groups = tuple(batched(read.lines, size, strict=False))
    for number, lines in enumerate(groups, 1):
        text = "\n".join(filter(None, (read.header, *(line.typed for line in lines))))
        if not _reads_alike(text, lines):
            return
        part = ListParts((number,), len(groups), mark)
        entries = {**typed, "lines": text, "part": str(part)}
        yield short_query(shared_query("list", entries, kept))


def _reads_alike(text: str, lines: Sequence[WeldLine]) -> bool:
    """True if a part read alone says of each weld what the whole list says."""
    alone = read_lines(text).lines
    return [(each.name, each.entries) for each in alone] == [
        (each.name, each.entries) for each in lines
    ]
