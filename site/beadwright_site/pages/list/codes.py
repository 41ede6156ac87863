"""Codes that open a list on another phone: one, or several where it is too long for one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import batched
from zlib import crc32

from beadwright.weld_list.list_parts import MOST_PARTS, ListParts
from beadwright.weld_list.weld_lines import WeldLines, read_lines
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
        parts = _parts(read, count, mark)
        entries = ({**typed, "lines": text, "part": str(part)} for part, text in parts)
        found = tuple(short_query(shared_query("list", each, kept)) for each in entries)
        if max(map(len, found)) <= LONGEST:
            return found if _reads_alike(read, parts) else ()
    return ()


def _parts(read: WeldLines, count: int, mark: str) -> tuple[tuple[ListParts, str], ...]:
    """A list cut in parts of as many lines each, all under the line that names the columns."""
    size = -(-len(read.lines) // count)
    groups = tuple(batched(read.lines, size, strict=False))
    return tuple(
        (
            ListParts((number,), len(groups), mark),
            "\n".join(filter(None, (read.header, *(line.typed for line in lines)))),
        )
        for number, lines in enumerate(groups, 1)
    )


def _reads_alike(read: WeldLines, parts: Sequence[tuple[ListParts, str]]) -> bool:
    """True if parts read alone say of each weld what the whole list says."""
    alone = [line for _, text in parts for line in read_lines(text).lines]
    return [(each.name, each.entries) for each in alone] == [
        (each.name, each.entries) for each in read.lines
    ]
