"""What the Passes page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from beadwright import units
from beadwright.joint.joints import Dimension
from beadwright.passes.bead_count import MOST_BEADS
from beadwright.passes.pass_beads import PassPlan
from beadwright.passes.passes_page import PassesAnswer
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.drawings.passes_drawing import draw_passes
from beadwright_site.links import query_of
from beadwright_site.pages.passes.bead_words import arc_words
from beadwright_site.written import written


def query_for(typed: Mapping[str, str], keys: Mapping[str, str]) -> str:
    """The query another page is asked with."""
    return query_of({key: text for key, text in typed.items() if key in keys})


def headline_of(found: PassPlan) -> str:
    """Return the plan in a line, or what stops it."""
    count = len(found.beads)
    if not found.open:
        stuck = [bead.number for bead in found.beads if bead.laid is None]
        if 0 < len(stuck) < count:
            return f"{count} passes stop at bead {stuck[0]}"
        return "One pass does not work here" if count == 1 else f"{count} passes do not work here"
    time = f"{arc_words(found.arc_time_s)} arc a weld"
    if count == 1:
        return f"1 pass, {time}"
    layers = sum(found.layers)
    stack = f" in {layers} layers" if layers > 1 else " in one layer"
    sides = " from both sides" if len(found.layers) > 1 else ""
    return f"{count} passes{stack}{sides}, {time}"


def tone_of(page: PassesAnswer) -> str:
    """Return the class of the headline: fails, too-close, or none."""
    levels = {note.level for note in page.notes}
    if not page.found.open or "stop" in levels:
        return "fails"
    return "too-close" if "out" in levels else ""


def sums_of(found: PassPlan, system: System) -> str:
    """Return what the whole weld takes, in a line; empty if it cannot be laid."""
    hottest = found.hottest
    if not found.open or hottest is None or hottest.laid is None:
        return ""
    wire = f"{written(found.wire_kg, 'mass', system)} of wire"
    heat = hottest.laid.heat_en_j_m if system == "si" else hottest.laid.heat_j_m
    kind = "EN" if system == "si" else "AWS"
    hot = f"{written(heat, 'heat_input', system)} {kind}"
    where = f", bead {hottest.number}" if len(found.beads) > 1 else ""
    most = "hottest " if len(found.beads) > 1 else ""
    return f"{wire} a weld; {most}{hot}{where}"


def ways_of(page: PassesAnswer, typed: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """Yield what would open a plan that does not hold: words and query, the nearest plan first."""
    near = page.nearest
    if near is not None:
        time = f", {arc_words(near.arc_time_s)} arc" if near.arc_time_s is not None else ""
        yield f"{worded(near.phrase, page.units)}{time}", query_of({**typed, **near.changes})
    for way in page.ways_out:
        yield worded(way.phrase, page.units), query_of({**typed, **way.changes})


def picture_of(page: PassesAnswer, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return what the picture and the buttons under it are made of.

    Args:
        page: The answer.
        typed: What was typed, but for the bead looked at.
    """
    found, at = page.found, page.at
    count = len(found.beads)

    def write(dimension: Dimension) -> str:
        return units.show(dimension.value_m, "leg", page.units)

    def step(number: int) -> str:
        return query_of({**typed, "at": str(number)})

    this = found.beads[at - 1]
    here = (this.side, this.slot.layer)
    firsts = [b.number for b in found.beads if b.slot.place == 1]
    before = [number for number in firsts if number < at]
    after = [b.number for b in found.beads if b.number > at and (b.side, b.slot.layer) != here]
    return {
        "drawing": draw_passes(found, at, write),
        "at": at,
        "count": count,
        "stem": query_of(typed),
        "spoken": f"{headline_of(found)}. Section to scale, gun at bead {at}",
        "back": step(at - 1) if at > 1 else "",
        "next": step(at + 1) if at < count else "",
        "again": step(1) if count > 1 else "",
        "layer_back": step(before[-1]) if before and count > 12 else "",
        "layer_next": step(after[0]) if after and count > 12 else "",
        "caption": caption_of(page),
    }


def caption_of(page: PassesAnswer) -> str:
    """Return how the picture is to be read where it is not plain."""
    found = page.found
    words: list[str] = []
    if found.job.position.orientation == "overhead":
        words.append("Drawn as it hangs: you weld from below.")
    elif page.found.job.position.orientation.startswith("vertical"):
        words.append("Cut across the weld.")
    if len(found.layers) > 1:
        first = next(bead.number for bead in found.beads if bead.side == 2)
        words.append(f"From bead {first} on: the other side.")
    if found.shape.round:
        words.append("Each bead runs round the wall and shows twice.")
    return " ".join(words)


def count_of(found: PassPlan, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return the buttons for more and fewer passes, and for weaving.

    Args:
        found: The plan.
        typed: What was typed, but for the bead looked at.
    """
    count, least = len(found.beads), len(found.layers)

    def ask(**changes: str) -> str:
        return query_of({**typed, **changes})

    return {
        "count": count,
        "fewer": ask(passes=str(count - 1)) if count > least else "",
        "more": ask(passes=str(count + 1)) if count < MOST_BEADS else "",
        "fewest": ask(passes="") if found.asked.count is not None else "",
        "weave": ask(bead="weave"),
        "stringer": ask(bead="stringer"),
        "stringers": found.asked.stringers,
        "whose": "as you asked" if found.asked.count is not None else "the fewest that hold",
    }
