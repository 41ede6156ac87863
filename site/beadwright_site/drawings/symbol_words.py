"""A weld symbol in words, for who cannot see it."""

from __future__ import annotations

from beadwright import units
from beadwright.job.weld_symbol import WeldSymbol
from beadwright.units import System
from beadwright_site.drawings.symbol_texts import number_text

NAMES = {
    "fillet": "fillet",
    "square": "square groove",
    "v": "V groove",
    "bevel": "bevel groove",
    "plug": "plug",
    "slot": "slot",
    "back": "back weld",
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
        words = [f"{NAMES[mark.sign]}, {mark.side} side"]
        for name, value in (
            ({"plug": "hole", "slot": "width", "fillet": "leg"}.get(mark.sign, "depth"),
             mark.size_m),
            ("length" if mark.sign == "slot" else "second leg", mark.size2_m),
            ("throat", mark.throat_m if mark.sign != "fillet" else None),
            ("root opening", mark.gap_m or None),
            ("filled", mark.fill_m),
            ("length", mark.length_m),
            ("center to center", mark.pitch_m),
        ):  # fmt: skip
            if value is not None:
                words.append(f"{name} {number_text(value, system)} {unit}")
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
