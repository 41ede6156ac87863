"""The weld symbol drawn to AWS A2.4 or to ISO 2553 (system A): lines and texts, and in words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from beadwright import units
from beadwright.job.weld_symbol import Mark, WeldSymbol
from beadwright.units import System

Standard = Literal["AWS A2.4", "ISO 2553"]

WIDTH, HEIGHT = 300.0, 132.0
LINE = 66.0
"""Height of the reference line on the paper [px]."""

LEFT, SIGN_AT, RIGHT = 62.0, 150.0, 232.0
"""Where the reference line begins, the signs stand, and the line ends [px]."""

SIGN, DASHED_OFF, CHARACTER, TEXT = 18.0, 5.0, 7.2, 15.0
"""Size of a sign, the dashed line off the other, width of a character, height of text [px]."""


@dataclass(frozen=True, slots=True)
class Text:
    """A text on the paper: where, how it is anchored, what."""

    x: float
    y: float
    anchor: str
    text: str


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
    texts: tuple[Text, ...]
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
    both = any(mark.side == "other" for mark in symbol.marks)
    lines = [f"M{LEFT} {LINE}H{RIGHT}", _arrow(symbol.points_at_bevel)]
    texts: list[Text] = []
    reach = {"arrow": 0.0, "other": 0.0}
    for mark in symbol.marks:
        # Up is -1 on the paper.
        out = (-1.0 if iso else 1.0) * (1 if mark.side == "arrow" else -1)
        base = LINE + out * reach[mark.side]
        lines.append(_sign(mark, base, out))
        stacked = mark.sign == "bevel" and any(
            m.sign == "fillet" and m.side == mark.side for m in symbol.marks
        )
        texts += _texts(mark, base, out, standard, system, stacked=stacked)
        reach[mark.side] += SIGN
    if symbol.backing != "none":
        out = 1.0 if iso else -1.0
        off = DASHED_OFF if iso else 0.0
        lines.append(_box(LINE + out * off, out))
        letter = {"kept": "M", "removed": "MR" if iso else "R"}[symbol.backing]
        if iso or symbol.backing == "removed":
            texts.append(Text(SIGN_AT, LINE + out * (off + 9) + 5, "middle", letter))
    tail = _tail(symbol, standard)
    if tail:
        lines.append(f"M{RIGHT} {LINE}l12 -12M{RIGHT} {LINE}l12 12")
        texts += [
            Text(RIGHT + 16, LINE + 5 + (n - (len(tail) - 1) / 2) * TEXT, "start", word)
            for n, word in enumerate(tail)
        ]
    dashed = f"M{LEFT} {LINE + DASHED_OFF}H{RIGHT}" if iso and not both else ""
    return SymbolDrawing(
        standard, WIDTH, HEIGHT, "".join(lines), dashed, tuple(texts), spoken(symbol, system)
    )


def _arrow(broken: bool) -> str:
    tip, shaft = (14.0, 122.0), "L36 88L46 84" if broken else ""
    return f"M{tip[0]} {tip[1]}{shaft}L{LEFT} {LINE}M{tip[0]} {tip[1]}l3 -11l7 6z"


def _box(base: float, out: float) -> str:
    return f"M{SIGN_AT - 15} {base}v{out * 18}h30v{-out * 18}"


def _sign(mark: Mark, base: float, out: float) -> str:
    x, tall = SIGN_AT, out * SIGN
    drawn = {
        "fillet": f"M{x - 9} {base}v{tall}L{x + 9} {base}",
        "square": f"M{x - 4} {base}v{tall}M{x + 4} {base}v{tall}",
        "v": f"M{x - 11} {base + tall}L{x} {base}L{x + 11} {base + tall}",
        "bevel": f"M{x - 4} {base}v{tall}M{x - 4} {base}L{x + 11} {base + tall}",
        "plug": f"M{x - 15} {base}v{tall}h30v{-tall}",
        "slot": f"M{x - 15} {base}v{tall}h30v{-tall}",
    }[mark.sign]
    if not mark.contour:
        return drawn
    if mark.sign == "fillet":
        # Over the slope of the fillet's sign.
        if mark.contour == "flush":
            return drawn + f"M{x - 4} {base + tall}L{x + 13} {base + out * 3}"
        return drawn + f"M{x - 3} {base + tall}Q{x + 13} {base + out * 16} {x + 13} {base}"
    level = base + tall + out * 4
    if mark.contour == "flush":
        return drawn + f"M{x - 11} {level}h22"
    return drawn + f"M{x - 11} {level}q11 {out * 7} 22 0"


def _number(value: float, system: System) -> str:
    text = units.show(value, "leg", system)
    return text.removesuffix(".0")


def _size(mark: Mark, standard: Standard, system: System) -> str:
    """What stands left of the sign."""
    if mark.size_m is None:
        return ""
    size = _number(mark.size_m, system)
    iso = standard == "ISO 2553"
    if mark.sign == "fillet":
        if mark.size2_m is not None:
            legs = f"{size}×{_number(mark.size2_m, system)}"
            return f"z{legs}" if iso else legs
        return f"z{size}" if iso else size
    if mark.sign in ("plug", "slot"):
        if mark.sign == "plug":
            return f"d{size}" if iso else f"Ø{size}"
        return f"c{size}" if iso else size
    if mark.throat_m is None:
        return size if not iso else f"h{size}"
    throat = _number(mark.throat_m, system)
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
            return f"{mark.count}({_number(pitch - length, system)})"
        return _number(pitch, system)
    if length is None:
        return ""
    if pitch is None:
        return _number(length, system)
    if iso:
        return f"{mark.count}×{_number(length, system)}({_number(pitch - length, system)})"
    return f"{_number(length, system)}-{_number(pitch, system)}"


def _texts(
    mark: Mark, base: float, out: float, standard: Standard, system: System, *, stacked: bool
) -> Iterator[Text]:
    middle = base + out * SIGN / 2 + 5
    size, run = _size(mark, standard, system), _run(mark, standard, system)
    if size:
        yield Text(SIGN_AT - 20, middle, "end", size)
    if run:
        yield Text(SIGN_AT + 20, middle, "start", run)
    if mark.fill_m is not None:
        yield Text(SIGN_AT, middle, "middle", _number(mark.fill_m, system))
    far = base + out * (SIGN + (8 if mark.contour else 0))
    outside: list[str] = []
    if mark.gap_m:
        outside.append(_number(mark.gap_m, system))
    if mark.angle_deg is not None:
        outside.append(f"{mark.angle_deg:g}°")
    if not outside:
        return
    if stacked:
        # A fillet stands over the groove: its angle and gap go beside it.
        yield Text(SIGN_AT + 20, middle, "start", " ".join(outside))
        return
    for n, text in enumerate(outside):
        level = far + out * (n * TEXT + (TEXT - 1 if out > 0 else 4))
        yield Text(SIGN_AT, level, "middle", text)


def _tail(symbol: WeldSymbol, standard: Standard) -> list[str]:
    found: list[str] = []
    groove = any(m.sign in ("square", "v", "bevel") for m in symbol.marks)
    if groove and symbol.complete and standard == "AWS A2.4":
        found.append("CJP")
    if symbol.gouged:
        found.append("gouge")
    return found


_WORDS = {
    "fillet": "fillet",
    "square": "square groove",
    "v": "V groove",
    "bevel": "bevel groove",
    "plug": "plug",
    "slot": "slot",
}


def spoken(symbol: WeldSymbol, system: System) -> str:
    """Return the symbol in words.

    Args:
        symbol: The symbol.
        system: Whose units its sizes take.
    """
    unit = units.symbol("leg", system)
    said: list[str] = []
    for mark in symbol.marks:
        words = [f"{_WORDS[mark.sign]}, {mark.side} side"]
        for name, value in (
            ({"plug": "hole", "slot": "width", "fillet": "leg"}.get(mark.sign, "depth"),
             mark.size_m),
            ("length" if mark.sign == "slot" else "other leg", mark.size2_m),
            ("throat", mark.throat_m if mark.sign != "fillet" else None),
            ("root opening", mark.gap_m or None),
            ("filled", mark.fill_m),
            ("length", mark.length_m),
            ("centre to centre", mark.pitch_m),
        ):  # fmt: skip
            if value is not None:
                words.append(f"{name} {_number(value, system)} {unit}")
        if mark.angle_deg is not None:
            words.append(f"angle {mark.angle_deg:g}°")
        if mark.contour:
            words.append(f"{mark.contour} face")
        said.append(", ".join(words))
    if symbol.complete and any(m.sign in ("square", "v", "bevel") for m in symbol.marks):
        said.append("welded through")
    if symbol.gouged:
        said.append("root gouged from the other side")
    if symbol.backing != "none":
        said.append(f"backing {symbol.backing}")
    text = "; ".join(said)
    return f"{text[0].upper()}{text[1:]}."
