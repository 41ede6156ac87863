"""The draws of the chance that switching pays, as columns."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.money.chance import ChanceState
from beadwright_site.drawings.axes import Scale, short_number
from beadwright_site.drawings.paper import Field, px

WIDTH, HEIGHT = 344, 112
FIELD = Field(4, 4, 340, 90)
"""The paper, and the field the columns stand in [px]."""

GAP, NARROWEST = 1.0, 2.0
"""Between two columns; no column is narrower [px]."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column of the draws."""

    x: float
    y: float
    width: float
    height: float
    pays: bool


@dataclass(frozen=True, slots=True)
class ChanceDrawing:
    """The draws of the chance.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        field: Where the columns stand.
        columns: The columns.
        zero: Where nothing is saved, or None if outside.
        least: Text at the left end.
        most: Text at the right end.
    """

    width: float
    height: float
    field: Field
    columns: tuple[Column, ...]
    zero: float | None
    least: str
    most: str


def draw_chance(state: ChanceState, sign: str) -> ChanceDrawing:
    """Return the picture of a run of draws.

    Args:
        state: Where the run stands.
        sign: Currency sign.
    """
    bars = state.bars
    least, most = bars[0][0], bars[-1][1]
    across = Scale(least, most, FIELD.left, FIELD.right)
    up = Scale(0.0, max(count for _, _, count in bars), FIELD.bottom, FIELD.top)

    def x(value: float) -> float:
        return across(value) if most > least else WIDTH / 2

    def column(left: float, right: float, count: int) -> Column:
        top = up(count)
        wide = max(x(right) - x(left) - GAP, NARROWEST)
        return Column(px(x(left)), px(top), px(wide), px(FIELD.bottom - top), left + right > 0)

    def text(value: float) -> str:
        return f"{'-' if value < 0 else ''}{sign}{short_number(abs(round(value)))}"

    return ChanceDrawing(
        WIDTH,
        HEIGHT,
        FIELD,
        tuple(column(*bar) for bar in bars),
        px(x(0.0)) if least <= 0 <= most else None,
        text(least),
        text(most),
    )
