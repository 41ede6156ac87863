"""How work is counted, billed and timed for its cost: equations of the topic of costs."""

from __future__ import annotations

from beadwright.money.cycle import MORE_LAID
from beadwright_site.method.equations import Equation, Symbol
from beadwright_site.method.mathml import equation, fenced, function, line, over, row, sub

T_TORCH, T_HANDS = sub("t", "gun"), sub("t", "hands")

VOLUME = Equation(
    "volume",
    "Parts a year, however counted",
    (
        equation("N", "=", line("12 · m"), "=", line("y · w")),
        equation("N", "=", over(line("12 · h"), row(line("( 1 + r ) ·"), "a"))),
        equation("N", "=", over(line("12 · k"), row(line("( 1 + r ) · M"))), ",", "N", "=",
                 over(line("12 · b"), "B")),
    ),
    (
        Symbol("N", "parts a year", "1/year"),
        Symbol("m", "parts a month", "–"),
        Symbol("w", "parts a week", "–"),
        Symbol("y", "weeks worked a year", "–"),
        Symbol("h", "arc time a month", "s"),
        Symbol("a", "arc time of a part, the first way", "s"),
        Symbol("r", "rework, as a share of parts", "–"),
        Symbol("k", "weld metal laid a month", "kg"),
        Symbol("M", "weld metal in a part", "kg"),
        Symbol("b", "wire bought a month", "kg"),
        Symbol("B", "wire bought for a part, rework and waste with it", "kg"),
    ),
    "One count holds: the one chosen, else the one written.",
    "That of the count; hours and pounds also that of the arc time and the metal worked out.",
    ("practice",),
    "",
    ("volume_entries.parts_a_year", "volume_entries.parts_of_one", "volume_entries.counted_by"),
)  # fmt: skip

TIMES = Equation(
    "part-time",
    "Time of a part",
    (
        equation(T_TORCH, "=", line("a · ( 1 + c + d ) + p")),
        equation(sub("t", "1"), "=", T_TORCH, "+", T_HANDS),
        equation(sub("t", "2"), "=", function("max", fenced(T_TORCH, ",", T_HANDS))),
        equation("o", "=", line("a · ("), over("1", "f"), line("− 1 )")),
    ),
    (
        Symbol(sub("t", "1"), "time of a part welded once, one station", "s"),
        Symbol(sub("t", "2"), "the same with two stations: the longer of gun and hands", "s"),
        Symbol(T_TORCH, "time the gun is taken up", "s"),
        Symbol("a", "arc time", "s"),
        Symbol("c", "stops to clean the nozzle, for each second of arc", "–"),
        Symbol("d", "tip changes, for each second of arc", "–"),
        Symbol("p", "next weld, cleaning passes, other, shares of a spool change and a batch's "
               "swap", "s"),
        Symbol(T_HANDS, "loading, fit-up and spatter", "s"),
        Symbol("o", "non-arc time by the operating factor, spatter in it", "s"),
        Symbol("f", "operating factor", "–"),
    ),
    "A later way without an operating factor of its own has the minutes of the first, changed by "
    "what its own minutes differ: a faster wire does not make fit-up faster, and spatter saved "
    "stays saved.",
    "That of the minutes written. What rules the time is told by laying "
    f"{MORE_LAID - 1:.0%} more.",
    ("operating-factor", "practice"),
    "",
    ("time_off.time_off_arc", "way.off_arc", "cycle.more_parts", "cycle.what_rules",
     "cycle.MORE_LAID", "cost.hourly"),
)  # fmt: skip

COUNTS = (VOLUME, TIMES)
"""Equations of how work is counted and timed."""
