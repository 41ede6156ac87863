"""Other plans of the same joint, and what each costs in time and heat."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from beadwright import units
from beadwright.passes.pass_choices import Choice
from beadwright.passes.passes_page import PassesAnswer
from beadwright.phrases import say
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.links import query_of
from beadwright_site.pages.passes.bead_words import arc_words


@dataclass(frozen=True, slots=True)
class OtherPlan:
    """A row.

    Attributes:
        name: What to ask for.
        query: The query that asks for it.
        count: Its passes, in words.
        time: Its arc time, or a dash.
        against: Time and heat against the plan shown, or why not.
        holds: True if it holds every limit.
        same: True if it is the plan shown.
    """

    name: str
    query: str
    count: str
    time: str
    against: str
    holds: bool
    same: bool


def other_plans(page: PassesAnswer, typed: Mapping[str, str]) -> Iterator[OtherPlan]:
    """Yield the plans, the one shown among them.

    Args:
        page: The answer.
        typed: What was typed, but for the bead looked at.
    """
    found = page.found
    hottest = found.hottest
    heat = hottest.laid.heat_j_m if hottest is not None and hottest.laid is not None else None
    now = (found.arc_time_s, heat) if found.open and heat is not None else None
    for choice in page.choices():
        passes = say("passes.count", count=choice.beads)
        yield OtherPlan(
            worded(choice.phrase, page.units),
            query_of({**typed, **choice.changes}),
            "" if passes == choice.phrase else worded(passes, page.units),
            "–" if choice.arc_time_s is None else arc_words(choice.arc_time_s),
            _against(choice, now, page.units),
            choice.open,
            choice.same,
        )


def _against(choice: Choice, now: tuple[float, float] | None, system: System) -> str:
    if choice.same:
        return "shown"
    if choice.arc_time_s is None or choice.heat_j_m is None:
        return "two limits conflict"
    over = "" if choice.open else "; beads larger than allowed"
    if now is None:
        return f"holds{over}" if choice.open else over.removeprefix("; ")
    time, heat = choice.arc_time_s - now[0], choice.heat_j_m - now[1]
    change = units.show(abs(heat), "heat_input", system)
    words = [f"{_sign(time)}{arc_words(abs(time))}"] if round(time) else ["same time"]
    if any(digit in change for digit in "123456789"):
        words.append(f"hottest {_sign(heat)}{change} {units.symbol('heat_input', system)}")
    else:
        words.append("same heat")
    return ", ".join(words) + over


def _sign(change: float) -> str:
    return "+" if change > 0 else "−"
