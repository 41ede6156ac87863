"""What the Strength page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.words.wording import worded
from beadwright_site.pages.strength.other_view import (
    amount_of,
    named,
    other_facts,
    other_sizes,
)
from beadwright_site.parts.cited_notes import named_source
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written

ROUND = ("rectangle", "circle")

UNCHECKED = frozenset({
    "strength.lap-plates-unchecked", "strength.lap-width-unknown",
    "strength.plug-plates-unchecked",
})  # fmt: skip
"""Notes that say a plate was not checked for pull: the verdict says so too."""


def verdict_of(found: StrengthAnswer) -> tuple[str, str]:
    """Return the verdict and the reason, in a foreman's words.

    Where every link holds and something else stops the weld, that comes first.
    """
    sizes, weak, system = found.sizes, found.links[0], found.units
    if weak.use <= 1 and found.stopped:
        stop = next(note for note in found.notes if note.level == "stop")
        return "Not as it is", worded(stop.phrase, system)
    if not isinstance(sizes, LegSizes):
        what = named(found, sizes)
        if weak.use <= 1:
            return f"{what}: holds; {weak.use:.0%} used", _reason(found)
        if found.weld.use > 1:
            return f"{what}: does not hold", _reason(found)
        return f"The {worded(weak.part, system)} does not hold", _reason(found)
    legs = sizes
    leg = written(legs.judged, "leg", system)
    where = " all around" if found.task.group.name in ROUND else ""
    weld = found.weld
    if legs.needed is None:
        if found.task.longer_holds_less(legs.throat):
            return (
                "No fillet holds this",
                "Use more lines of weld, or a groove: a longer weld holds less.",
            )
        return "No fillet holds this", "Use a longer weld, spread the welds, or use a groove."
    if not legs.given:
        if weak.use > 1:
            return f"The {worded(weak.part, system)} does not hold", _reason(found)
        return f"Weld {leg}{where}", f"{weak.use:.0%} used. {_reason(found)}"
    if weak.use <= 1:
        return f"{leg}{where} holds; {weak.use:.0%} used", _reason(found)
    if weld.use > 1:
        needed = written(legs.needed, "leg", system)
        return f"{leg}{where} does not hold", f"{weld.use:.0%} of what it holds. Weld {needed}."
    return f"The {worded(weak.part, system)} does not hold", _reason(found)


def _reason(found: StrengthAnswer) -> str:
    weak = found.links[0]
    reason = f"Weakest link checked: {worded(weak.phrase, found.units)}, {weak.use:.0%}."
    if any(note.key in UNCHECKED for note in found.notes):
        reason = f"{reason} Not every plate is checked for pull."
    return reason


def line_of(found: StrengthAnswer) -> str:
    """Return the job in a line: steel, plates, length of weld, filler, code."""
    task, system = found.task, found.units
    job = task.job
    plates = written(job.plate_m, "leg", system)
    if abs(job.plate2_m - job.plate_m) > 1e-9:
        plates = f"{units.show(job.plate2_m, 'leg', system)} on {plates}"
    filler = written(task.filler_pa, "stress", system)
    code = {"asd": "AISC, service loads", "lrfd": "AISC, factored loads", "en": "EN 1993",
            "en-directional": "EN 1993, directional"}[task.code]  # fmt: skip
    filler_part = "" if task.european else f", {filler} filler"
    steels = " and ".join(dict.fromkeys((task.steel2.grade, task.steel.grade)))
    return f"{steels}, {plates}, {amount_of(found)}{filler_part}. {code}."


def main_facts(found: StrengthAnswer) -> Iterator[Fact]:
    """Yield the numbers beside the verdict."""
    sizes, system, weld = found.sizes, found.units, found.weld
    if isinstance(sizes, LegSizes):
        needed = "none" if sizes.needed is None else written(sizes.needed, "leg", system)
        yield Fact(needed, "leg needed for strength")
    at_point = weld.measure == "force_per_length"
    yield Fact(written(weld.asked, weld.measure, system),
               "at the worst point" if at_point else "asked")  # fmt: skip
    yield Fact(written(weld.holds, weld.measure, system),
               "the weld holds there" if at_point else "the weld holds")  # fmt: skip
    yield Fact(f"{weld.use:.0%}", "of the weld used")
    yield Fact(_times(found), "the load it holds")
    if isinstance(sizes, LegSizes):
        yield Fact(written(sizes.throat, "length", system), "throat")
    else:
        yield from other_facts(found, sizes)


def _times(found: StrengthAnswer) -> str:
    times = found.load_times
    return f"{times:.2f} ×" if times < 100 else "over 100 ×"


def size_facts(found: StrengthAnswer) -> Iterator[Fact]:
    """Yield the sizes the code asks for."""
    system = found.units
    if not isinstance(found.sizes, LegSizes):
        yield from other_sizes(found, found.sizes)
        return
    legs, european = found.sizes, found.task.european
    by = named_source("en-1993-1-8" if european else "aisc-j2.4")
    yield Fact(written(legs.least, "leg", system), "minimum leg", by)
    most = "–" if legs.most is None else written(legs.most, "leg", system)
    if not european:
        yield Fact(most, "maximum along the edge" if legs.most is not None else "no edge welded",
                   named_source("aisc-j2.2b"))  # fmt: skip
    if legs.one_pass is not None:
        by = named_source(found.task.job.position.single_pass_source)
        yield Fact(written(legs.one_pass, "leg", system), "maximum in one pass", by)
    if legs.to_weld_far is None:
        yield Fact(
            written(legs.to_weld, "leg", system), "leg to weld, root opening and slant included"
        )
    else:
        angle = found.task.job.skew_deg
        yield Fact(written(legs.to_weld, "leg", system), f"leg to lay, {angle:g}° side")
        yield Fact(written(legs.to_weld_far, "leg", system), f"leg to lay, {180 - angle:g}° side")
    by = named_source("en-1993-1-8-ends" if european else "aisc-j2.2b")
    yield Fact(written(legs.shortest, "length", system), "shortest full-strength weld", by)
    seam = found.segments
    if seam is None:
        yield Fact("all along", "no intermittent weld here")
    else:
        pitch = f"{units.show(seam.segment_m, 'length', system)} at "
        by = named_source("en-1993-1-8-seam" if european else "aws-d1.1-spacing")
        yield Fact(pitch + written(seam.pitch_m, "length", system), "or intermittent, centers", by)


def link_rows(found: StrengthAnswer) -> Iterator[tuple[str, str, str, str, str, str, str]]:
    """Yield class, word, name, asked, holds, source and its name of each link, weakest first."""
    for link in found.links:
        tone = "fails" if link.use > 1 + 1e-9 else "holds"
        asked = written(link.asked, link.measure, found.units)
        holds = written(link.holds, link.measure, found.units)
        name = worded(link.phrase, found.units)
        name = name[0].upper() + name[1:]
        yield tone, f"{link.use:.0%}", name, asked, holds, link.source, named_source(link.source)


def spoken(found: StrengthAnswer) -> str:
    """Return the picture in words."""
    p, system = found.task.properties, found.units
    if found.task.job.is_round:
        return "The hole to scale, with its load."
    whole = units.convert(p.length_m, "length", system)
    length = f"{whole:.4g} {units.symbol('length', system)}"
    weakest = worded(found.ringed.phrase, system)
    return f"Weld to scale, {length} long, with its load. Ringed: {weakest}."
