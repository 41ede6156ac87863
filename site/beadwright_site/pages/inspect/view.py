"""What the Inspect page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import units
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.inspected import Check
from beadwright.inspection.size_change import SizeChange
from beadwright.inspection.used_settings import Change
from beadwright.sources import SOURCES
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.pages.inspect.form import ACCEPTS
from beadwright_site.written import written

WORDS = {"in": "IN", "out": "OUT", "unknown": "Not measured yet"}
TONES = {"in": "switch", "out": "fails", "unknown": "too-close"}
STATES = {"in": "In", "out": "Out", "unknown": "–"}
MOST_NAMED = 3
"""Limits named under the verdict."""


def sized(value: float, measure: str, system: System) -> str:
    """Return a length with its unit; small ones in inches as fractions where they are.

    Args:
        value: The length [m].
        measure: Its kind.
        system: Whose units.
    """
    fraction = measure == "small_length" and system == "us"
    return written(value, "length" if fraction else measure, system)


def judged_by(found: InspectAnswer) -> str:
    """Return the standard in a line."""
    [(_, name, under)] = [each for each in ACCEPTS if each[0] == found.query.accept]
    return f"{name.replace('D1.1', 'D1.1:2020').replace('5817', '5817:2014')}, {under}"


def reasons(found: InspectAnswer) -> str:
    """Return what is out and by how much, the gravest first; else what was not looked at."""
    said = [*_offs(found)]
    if said:
        more = len(said) - MOST_NAMED
        rest = f" And {more} more." if more > 0 else ""
        return " ".join(said[:MOST_NAMED]) + rest
    left = sum(check.state == "unknown" for check in found.checks)
    if found.verdict == "unknown":
        return "Type what you measured: each limit below says what may be."
    if left:
        return f"What was measured holds. {left} limits were not looked at."
    return "Every limit holds."


def _offs(found: InspectAnswer) -> Iterator[str]:
    """What is out; both legs in one, and no throat that lacks because they do."""
    out = {check.key: check for check in found.out}
    legs = [out[key] for key in ("leg", "leg2") if key in out]
    both = len(legs) == 2 and abs(legs[0].off - legs[1].off) < 1e-6
    for key, check in out.items():
        if (key == "throat" and legs) or (key == "leg2" and both):
            continue
        said = _off(check, found.units)
        yield f"Both legs {sized(check.off, check.measure, found.units)} short." \
            if key == "leg" and both else said  # fmt: skip


def _off(check: Check, system: System) -> str:
    name = worded(check.phrase, system)
    name = name[0].upper() + name[1:]
    if not check.measure:
        return f"{name}: none is accepted."
    if check.found is None or check.way == "none":
        return f"{name} {sized(check.found or 0.0, check.measure, system)}: none is accepted."
    way = "short" if check.way == "least" else "over"
    return f"{name} {sized(check.off, check.measure, system)} {way}."


@dataclass(frozen=True, slots=True)
class Mend:
    """How the size is mended, in lines.

    Attributes:
        lead: What the weld says of the settings used.
        ways: What to do, the smallest change first.
        else_: Why nothing of it mends it, and what to do instead.
    """

    lead: str
    ways: tuple[str, ...]
    else_: tuple[str, ...]


def mend_of(found: InspectAnswer) -> Mend | None:
    """Return how the size is mended, or None where there is nothing to mend."""
    change = found.change
    if change is None:
        return None
    system = found.units
    travel = written(change.travel_m_s, "travel", system)
    feed = written(change.feed_m_s, "wire_feed", system)
    lead = (
        f"Welded at {feed} and {travel}."
        if change.timed
        else f"At {feed} this much metal means it was laid at about {travel}."
    )
    if not found.out:
        lead = f"{1 / change.metal - 1:.0%} more metal than asked for. {lead}"
    ways = [_way(each, change, system) for each in change.changes]
    if change.lies_wrong is not None:
        ways.insert(0, worded(change.lies_wrong, system))
    said = [way if at == 0 else f"Or {way[0].lower()}{way[1:]}" for at, way in enumerate(ways)]
    blocked = [worded(each, system) for each in change.blocked]
    if change.changes and found.still_out:
        names = ", ".join(worded(check.phrase, system) for check in found.still_out)
        blocked = [f"More metal alone leaves out: {names}."]
    elif ways:
        blocked = []
    else:
        blocked = ["No change inside the window brings it in.", *blocked, _instead(change, system)]
    return Mend(lead, tuple(said), tuple(each for each in blocked if each))


def _way(way: Change, change: SizeChange, system: System) -> str:
    old, new = (units.show(v, "travel", system) for v in (change.travel_m_s, way.travel_m_s))
    travel = f"Travel from {old} to {new} {units.symbol('travel', system)}"
    up = way.feed_m_s - change.feed_m_s
    volts = "" if way.volts is None else f", {written(way.volts, 'volts', system)}"
    feed = (
        f"eed {'up' if up > 0 else 'down'} {units.show(abs(up), 'wire_feed', system)} to "
        f"{written(way.feed_m_s, 'wire_feed', system)}"
    )
    if way.turned == "travel":
        return f"{travel}."
    return f"F{feed} at that travel{volts}." if way.turned == "wire_feed" else \
        f"{travel} and f{feed}{volts}."  # fmt: skip


def _instead(change: SizeChange, system: System) -> str:
    plan = change.instead
    if plan is None:
        return "The plan for this job is shut too: see Dial in."
    count = "one pass" if plan.passes == 1 else f"{plan.passes} passes"
    feed = written(plan.feed_m_s, "wire_feed", system)
    travel = written(plan.travel_m_s, "travel", system)
    return f"Plan it anew: {count}, {feed}, {travel} each. See Passes."


def limit_rows(found: InspectAnswer) -> Iterator[tuple[str, str, str, str, str, str, str]]:
    """Yield tone, word, name, what was found, the limit, its clause and source of each limit."""
    system = found.units
    for check in found.checks:
        source = SOURCES[check.source]
        tone = {"in": "holds", "out": "fails", "unknown": "open"}[check.state]
        name = worded(check.phrase, system)
        note = "" if check.note is None else f" {worded(check.note, system)}"
        clause = f"{source.document}{', ' if source.place else ''}{source.place}: {source.told}"
        if source.key == "practice":
            clause = "by the drawing"
        yield (
            tone, STATES[check.state], name[0].upper() + name[1:], _found(check, system),
            _limit(check, system) + note, clause, check.source,
        )  # fmt: skip


def _found(check: Check, system: System) -> str:
    if check.found is None:
        return {"in": "None seen. ", "out": "Seen. ", "unknown": ""}[check.state]
    return f"{sized(check.found, check.measure, system)} found. "


def _limit(check: Check, system: System) -> str:
    if check.limit == float("inf"):
        return "No limit."
    if check.way == "none":
        return "None accepted."
    word = "At least" if check.way == "least" else "At most"
    return f"{word} {sized(check.limit, check.measure, system)}."


def spoken(found: InspectAnswer) -> str:
    """Return the picture in words."""
    weld, system = found.weld, found.units
    wanted = " and ".join(
        written(leg, "length", system) for leg in (weld.shape.leg_m, weld.shape.leg2_m)
    )
    if weld.fillet is None:
        return f"The fillet asked for, to scale, legs {wanted}."
    legs = (weld.fillet.leg_m, weld.fillet.leg2_m)
    measured = " and ".join(written(leg, "length", system) for leg in legs)
    return f"The weld measured, legs {measured}, over the one asked for, legs {wanted}, to scale."
