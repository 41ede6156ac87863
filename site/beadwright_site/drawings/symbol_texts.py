"""The figures of a weld symbol, as AWS A2.4 or ISO 2553 (system A) writes them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from beadwright import units
from beadwright.job.weld_symbol import Mark, WeldSymbol
from beadwright.units import System
from beadwright_site.drawings.marks import Label, label
from beadwright_site.drawings.symbol_signs import SIGN, SIGN_AT

Standard = Literal["AWS A2.4", "ISO 2553"]

CHARACTER, TEXT = 7.2, 15.0
"""Width of a character, height of a line of text [px]."""


def number_text(value: float, system: System) -> str:
    """Return a size as a symbol carries it, without its unit.

    Args:
        value: The size [m].
        system: Whose units.
    """
    text = units.show(value, "leg", system)
    return text.removesuffix(".0")


def _size(mark: Mark, standard: Standard, system: System) -> str:
    """What stands left of the sign."""
    if mark.size_m is None:
        return ""
    size = number_text(mark.size_m, system)
    iso = standard == "ISO 2553"
    if mark.sign == "fillet":
        if mark.size2_m is not None:
            legs = f"{size}×{number_text(mark.size2_m, system)}"
            return f"z{legs}" if iso else legs
        return f"z{size}" if iso else size
    if mark.sign in ("plug", "slot"):
        if mark.sign == "plug":
            return f"d{size}" if iso else f"Ø{size}"
        return f"c{size}" if iso else size
    if mark.throat_m is None:
        return size if not iso else f"h{size}"
    throat = number_text(mark.throat_m, system)
    return f"s{throat}" if iso else f"{size}({throat})"


def _run(mark: Mark, standard: Standard, system: System) -> str:
    """What stands right of the sign: length, number and distance."""
    iso = standard == "ISO 2553"
    length = mark.size2_m if mark.sign == "slot" else mark.length_m
    pitch = mark.pitch_m
    if mark.sign == "plug":
        length = mark.size_m
        if pitch is None or length is None:
            return ""
        if iso:
            return f"{mark.count}({number_text(pitch - length, system)})"
        return number_text(pitch, system)
    if length is None:
        return ""
    if pitch is None:
        return number_text(length, system)
    if iso:
        return f"{mark.count}×{number_text(length, system)}({number_text(pitch - length, system)})"
    return f"{number_text(length, system)}-{number_text(pitch, system)}"


def mark_texts(
    mark: Mark, base: float, out: float, standard: Standard, system: System, *, stacked: bool
) -> Iterator[Label]:
    """Yield what is written around a sign: size left of it, run right of it, the rest outward.

    Args:
        mark: The mark.
        base: Where its sign stands [px].
        out: 1 if it reaches down the paper, -1 if up.
        standard: Which standard.
        system: Whose units.
        stacked: True if another sign stands outside this one.
    """
    middle = base + out * SIGN / 2 + 5
    size, run = _size(mark, standard, system), _run(mark, standard, system)
    if size:
        yield label(SIGN_AT - 20, middle, "end", size)
    if run:
        yield label(SIGN_AT + 20, middle, "start", run)
    if mark.fill_m is not None:
        yield label(SIGN_AT, middle, "middle", number_text(mark.fill_m, system))
    far = base + out * (SIGN + (8 if mark.contour else 0))
    outside: list[str] = []
    if mark.gap_m:
        outside.append(number_text(mark.gap_m, system))
    if mark.angle_deg is not None:
        outside.append(f"{mark.angle_deg:g}°")
    if not outside:
        return
    if stacked:
        # A fillet stands over the groove: its angle and gap go beside it.
        yield label(SIGN_AT + 20, middle, "start", " ".join(outside))
        return
    for n, text in enumerate(outside):
        level = far + out * (n * TEXT + (TEXT - 1 if out > 0 else 4))
        yield label(SIGN_AT, level, "middle", text)


def tail_texts(symbol: WeldSymbol, standard: Standard) -> list[str]:
    """Return what is written in the tail, a line each.

    Args:
        symbol: The symbol.
        standard: Which standard.
    """
    found: list[str] = []
    groove = any(m.sign in ("square", "v", "bevel") for m in symbol.marks)
    if groove and symbol.complete and standard == "AWS A2.4":
        found.append("CJP")
    if symbol.gouged:
        found.append("gouge")
    return found
