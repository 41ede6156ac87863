"""The signs of a weld symbol, as SVG path data: one a mark, stacked away from the line."""

from __future__ import annotations

from beadwright.job.weld_symbol import Mark

SIGN_AT, SIGN = 150.0, 18.0
"""Where the signs stand on the paper, and their size [px]."""


def sign_path(mark: Mark, base: float, out: float) -> str:
    """Return a mark's sign with its contour.

    Args:
        mark: The mark.
        base: Where it stands [px].
        out: 1 if it reaches down the paper, -1 if up.
    """
    x, tall = SIGN_AT, out * SIGN
    drawn = {
        "fillet": f"M{x - 9} {base}v{tall}L{x + 9} {base}",
        "square": f"M{x - 4} {base}v{tall}M{x + 4} {base}v{tall}",
        "v": f"M{x - 11} {base + tall}L{x} {base}L{x + 11} {base + tall}",
        "bevel": f"M{x - 4} {base}v{tall}M{x - 4} {base}L{x + 11} {base + tall}",
        "plug": f"M{x - 15} {base}v{tall}h30v{-tall}",
        "slot": f"M{x - 15} {base}v{tall}h30v{-tall}",
        "back": f"M{x - 11} {base}a11 11 0 0 {0 if out > 0 else 1} 22 0",
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


def backing_path(base: float, out: float) -> str:
    """Return the box of a backing; base and out as for a sign."""
    return f"M{SIGN_AT - 15} {base}v{out * SIGN}h30v{-out * SIGN}"
