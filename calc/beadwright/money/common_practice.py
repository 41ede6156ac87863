"""How far this job's answer stands from what the trade says of metal-cored wire, and why."""

from __future__ import annotations

from beadwright.money.compared_entries import Compared
from beadwright.money.cost_ways import PlannedWay
from beadwright.phrases import Amount, Parameter, Phrase, say

PRICE_MORE = (0.30, 0.40)
"""What metal-cored wire costs more a pound than solid [-]. Common practice, no source."""

LAID_MORE = 0.30
"""What it lays more an hour in like work [-]. Common practice, no source."""

NEAR = 0.05
"""Laid metal this near to what the trade says counts as the same [-]."""

PRINTED_AT_EQUAL_AMPS = (0.13, 0.24)
"""What printed feeds and amps of both wires in 0.045 in give at one current [-].

Source: the printed points of ``burnoff_points``, solid against metal-cored, 250 to 340 A.
"""

_WHY: dict[Compared, str] = {
    "equal-travel": "money.practice-at-one-travel",
    "as-run": "money.practice-as-run",
    "measured": "money.practice-as-measured",
}


def beside_practice(now: PlannedWay, other: PlannedWay) -> tuple[Phrase, ...]:
    """Return what the trade says, what this job has, and why they differ; nothing for other pairs.

    Args:
        now: The way the shop welds now [-].
        other: The way it wonders about [-].
    """
    kinds = {way.dialled.job.wire.kind: way for way in (now, other)}
    if set(kinds) != {"solid", "metal-cored"} or other.alike is None:
        return ()
    solid, cored = kinds["solid"].way, kinds["metal-cored"].way
    laid = cored.laid_kg_s / solid.laid_kg_s - 1
    low, high = PRICE_MORE
    said = say("money.practice-says", low=low, high=high, laid=LAID_MORE)
    here: dict[str, Parameter] = {
        "laid": _more(laid),
        "cored": Amount(cored.spatter_s, "time"),
        "solid": Amount(solid.spatter_s, "time"),
    }
    if solid.wire_kg > 0:
        price = _more(cored.wire_kg / solid.wire_kg - 1)
        had = say("money.practice-here", price=price, **here)
    else:
        had = say("money.practice-here-unpriced", **here)
    return said, had, _why(laid, other.alike.compared)


def _why(laid: float, compared: Compared) -> Phrase:
    if abs(laid - LAID_MORE) <= NEAR:
        return say("money.practice-holds")
    if compared == "equal-amps":
        low, high = PRINTED_AT_EQUAL_AMPS
        return say("money.practice-at-one-current", low=low, high=high)
    return say(_WHY[compared])


def _more(share: float) -> Phrase:
    return say("money.more" if share >= 0 else "money.less", share=abs(share))
