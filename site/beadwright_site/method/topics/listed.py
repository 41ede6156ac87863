"""The method of the Weld list as data: the sum of its welds, the order, the quote."""

from __future__ import annotations

from beadwright.weld_list.quote import BATCHES
from beadwright.weld_list.weld_order import EXACT_SETUPS
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, row, sub, total

C_HANDS, C_WELD = sub("C", "part"), sub("C", "weld")
_PART = Symbol("C", "cost of a part; the same sum gives metal, wire, gas and times", "money")

SUM = Equation(
    "listed-sum",
    "What a list comes to",
    (equation("C", "=", C_HANDS, "+", total("i"), C_WELD),),
    (
        _PART,
        Symbol(C_HANDS, "what is done once a part: loading, fit-up, spatter, other", "money"),
        Symbol("i", "a line that can be read", "–"),
        Symbol(C_WELD, "cost of its welds as Cost gives it, without that", "money"),
    ),
    "Lines that can be read; wire and gas bought for the parts of a batch.",
    "Each weld's own, as on Cost.",
    ("mass-balance",),
    "",
    ("list_totals.way_totals", "list_totals.asked_packages"),
)

ORDER = Equation(
    "listed-order",
    "The order of the welds",
    (equation("s", "≥", over("m", "2")),),
    (
        Symbol("s", "lines between two welds in a row of one setting, rounded down", "–"),
        Symbol("m", "lines of that setting", "–"),
    ),
    "Wire and gas are changed least, then the part turned least, then the dial set least: of "
    f"all orders of up to {EXACT_SETUPS} set-ups, beyond that set-ups of one wire together, of "
    "those the ones of one position.",
    "Neighbors on the list are taken for neighbors on the part.",
    ("practice",),
    "",
    ("weld_order.weld_order", "weld_order.spread", "weld_order.changes", "weld_order.EXACT_SETUPS"),
)

QUOTE = Equation(
    "listed-quote",
    "The price of a part",
    (equation("P", "=", over(row("C", "+", over("S", "N")), line("1 − g"))),),
    (
        Symbol("P", "price of a part", "money"),
        _PART,
        Symbol("S", "cost of setting up for a batch", "money"),
        Symbol("N", f"parts in the batch: {BATCHES[0]}, {BATCHES[1]} or {BATCHES[2]}", "–"),
        Symbol("g", "margin: the share of the price left when the cost is paid", "–"),
    ),
    "Margin below all of the price.",
    "As good as the cost.",
    ("mass-balance",),
    "",
    ("quote.quoted_batch", "quote.BATCHES"),
)


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((SUM, ORDER, QUOTE))
