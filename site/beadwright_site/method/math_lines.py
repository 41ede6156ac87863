"""Breaks an equation too long for a phone into lines, where a hand would: before + − = and ·."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from xml.etree import ElementTree

from markupsafe import Markup

Element = ElementTree.Element

WIDEST_PX = 285.0
"""Room for an equation on the narrowest phone, 360 px wide, with its box's padding [px]."""

_SIGN_PX, _CAPITAL_PX, _WORD_PX = 10.5, 14.5, 9.2
_SPACED_PX, _DOT_PX, _BARE_PX = 26.5, 14.0, 8.5
_SMALL = 0.72
_INDENT_PX = 24.0
_BREAKS = ("+−±", "·")
"""Signs a line may begin with, the better ones first; an equals sign only after the first."""


def width_px(element: Element) -> float:
    """Return about how wide a piece of an equation is drawn [px]."""
    text = element.text or ""
    inside = [width_px(child) for child in element]
    if element.tag == "mo":
        return _BARE_PX if text in "()," else _DOT_PX if text in "·×" else _SPACED_PX
    if element.tag == "mtext":
        return _WORD_PX * len(text)
    if element.tag in ("mi", "mn"):
        return sum(_CAPITAL_PX if sign.isupper() else _SIGN_PX for sign in text)
    if element.tag in ("msub", "msup"):
        return inside[0] + _SMALL * inside[1]
    if element.tag == "mfrac":
        return max(inside) + 4
    return sum(inside) + (14 if element.tag == "msqrt" else 0)


def _flat(element: Element) -> Iterator[Element]:
    """The pieces of a row, rows inside it opened."""
    for child in element:
        if child.tag == "mrow":
            yield from _flat(child)
        else:
            yield child


def _chunks(pieces: Iterable[Element], signs: str) -> Iterator[list[Element]]:
    """Pieces that stay together: a new lot begins at a sign outside brackets, or after a comma."""
    chunk: list[Element] = []
    depth, equals, after_comma = 0, 0, False
    for piece in pieces:
        sign = piece.text if piece.tag == "mo" else ""
        depth += {"(": 1, ")": -1}.get(sign or "", 0)
        again = sign == "=" and equals > 0
        if chunk and depth == 0 and (after_comma or again or (sign and sign in signs)):
            yield chunk
            chunk = []
        after_comma = sign == "," and depth == 0
        equals = 0 if after_comma else equals + (sign == "=")
        chunk.append(piece)
    yield chunk


def _wide(chunk: Iterable[Element]) -> float:
    return sum(map(width_px, chunk))


def _lines(pieces: list[Element]) -> list[list[Element]]:
    chunks: list[list[Element]] = []
    for chunk in _chunks(pieces, _BREAKS[0]):
        if _wide(chunk) > WIDEST_PX - _INDENT_PX:
            chunks += _chunks(chunk, "".join(_BREAKS))
        else:
            chunks.append(chunk)
    lines: list[list[Element]] = []
    for chunk in chunks:
        room = WIDEST_PX - (_INDENT_PX if len(lines) > 1 else 0)
        if lines and _wide(lines[-1]) + _wide(chunk) <= room:
            lines[-1] += chunk
        else:
            lines.append(list(chunk))
    return lines


def _written(pieces: Iterable[Element]) -> str:
    return "".join(ElementTree.tostring(piece, encoding="unicode") for piece in pieces)


def in_lines(row: Markup) -> Markup:
    """Return a row as it is if it fits, else as a table of lines.

    Args:
        row: An ``mrow``.
    """
    tree = ElementTree.fromstring(row)
    if width_px(tree) <= WIDEST_PX:
        return row
    lines = _lines(list(_flat(tree)))
    if len(lines) == 1:
        return row
    indent = f'<mspace width="{_INDENT_PX:g}px"></mspace>'
    rows = "".join(
        f"<mtr><mtd>{indent if at else ''}<mrow>{_written(line)}</mrow></mtd></mtr>"
        for at, line in enumerate(lines)
    )
    return Markup(f'<mtable displaystyle="true">{rows}</mtable>')
