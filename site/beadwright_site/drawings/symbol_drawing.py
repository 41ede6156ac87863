"""The weld symbol drawn to AWS A2.4 or to ISO 2553 (system A): lines and texts, and in words."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.job.weld_symbol import WeldSymbol
from beadwright.units import System
from beadwright_site.drawings.marks import Label, label
from beadwright_site.drawings.symbol_signs import SIGN, SIGN_AT, backing_path, sign_path
from beadwright_site.drawings.symbol_texts import TEXT, Standard, mark_texts, tail_texts
from beadwright_site.drawings.symbol_words import spoken

WIDTH, HEIGHT = 300.0, 132.0
LINE = 66.0
"""Height of the reference line on the paper [px]."""

LEFT, RIGHT = 62.0, 232.0
"""Where the reference line begins and ends [px]."""

DASHED_OFF = 5.0
"""The dashed line off the other [px]."""


@dataclass(frozen=True, slots=True)
class SymbolDrawing:
    """A weld symbol on paper.

    Attributes:
        standard: Which standard.
        width: Of the paper [px].
        height: Of the paper [px].
        path: Full lines as SVG path data.
        dashed: The dashed line, or empty.
        texts: What is written.
        spoken: The symbol in words.
    """

    standard: Standard
    width: float
    height: float
    path: str
    dashed: str
    texts: tuple[Label, ...]
    spoken: str


def standard_of(system: System) -> Standard:
    """Return the standard that goes with a system of units."""
    return "AWS A2.4" if system == "us" else "ISO 2553"


def draw_symbol(symbol: WeldSymbol, standard: Standard, system: System) -> SymbolDrawing:
    """Return a symbol drawn to one standard.

    Source: AWS A2.4: the arrow's side below the line. ISO 2553 system A: on the full line, here
    above it; what belongs to the other side on the dashed line.

    Args:
        symbol: The symbol.
        standard: Which standard.
        system: Whose units its sizes take.
    """
    iso = standard == "ISO 2553"
    both = any(mark.side == "other" and mark.sign != "back" for mark in symbol.marks)
    lines = [f"M{LEFT} {LINE}H{RIGHT}", _arrow(symbol.points_at_bevel)]
    texts: list[Label] = []
    reach = {"arrow": 0.0, "other": 0.0}
    for mark in symbol.marks:
        # Up is -1 on the paper.
        out = (-1.0 if iso else 1.0) * (1 if mark.side == "arrow" else -1)
        off = DASHED_OFF if iso and mark.sign == "back" else 0.0
        base = LINE + out * (off + reach[mark.side])
        lines.append(sign_path(mark, base, out))
        stacked = mark.sign == "bevel" and any(
            m.sign == "fillet" and m.side == mark.side for m in symbol.marks
        )
        texts += mark_texts(mark, base, out, standard, system, stacked=stacked)
        reach[mark.side] += SIGN
    if symbol.backing != "none":
        out = 1.0 if iso else -1.0
        off = DASHED_OFF if iso else 0.0
        lines.append(backing_path(LINE + out * off, out))
        letter = {"kept": "M", "removed": "MR" if iso else "R"}[symbol.backing]
        if iso or symbol.backing == "removed":
            texts.append(label(SIGN_AT, LINE + out * (off + 9) + 5, "middle", letter))
    tail = tail_texts(symbol, standard)
    if tail:
        lines.append(f"M{RIGHT} {LINE}l12 -12M{RIGHT} {LINE}l12 12")
        texts += [
            label(RIGHT + 16, LINE + 5 + (n - (len(tail) - 1) / 2) * TEXT, "start", word)
            for n, word in enumerate(tail)
        ]
    dashed = f"M{LEFT} {LINE + DASHED_OFF}H{RIGHT}" if iso and not both else ""
    return SymbolDrawing(
        standard, WIDTH, HEIGHT, "".join(lines), dashed, tuple(texts), spoken(symbol, system)
    )


def _arrow(broken: bool) -> str:
    tip, shaft = (14.0, 122.0), "L36 88L46 84" if broken else ""
    return f"M{tip[0]} {tip[1]}{shaft}L{LEFT} {LINE}M{tip[0]} {tip[1]}l3 -11l7 6z"
