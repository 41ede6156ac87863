"""What the Strength page shows of a groove, a plug or a slot."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.strength.groove_weld import GrooveSizes
from beadwright.strength.plug_weld import PlugSizes
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright_site.parts.cited_notes import named_source
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written


def named(found: StrengthAnswer, sizes: GrooveSizes | PlugSizes) -> str:
    """Return what is judged, by its size."""
    system, plugs = found.units, found.task.plugs
    if isinstance(sizes, GrooveSizes):
        throat = written(sizes.throat, "leg", system)
        return "Welded through" if sizes.through else f"{throat} throat"
    many = f"{plugs} × " if plugs > 1 else ""
    hole = written(sizes.hole, "leg", system)
    if sizes.slot is None:
        return f"{many}{hole} plug{'s' if many else ''}"
    long = written(sizes.slot, "leg", system)
    return f"{many}{hole} by {long} slot{'s' if many else ''}"


def other_facts(found: StrengthAnswer, sizes: GrooveSizes | PlugSizes) -> Iterator[Fact]:
    """Yield the numbers beside the verdict, besides what every weld has."""
    if isinstance(sizes, GrooveSizes):
        yield Fact(written(sizes.throat, "length", found.units), "throat")
        return
    yield Fact(written(sizes.area, "area", found.units), "filled where the plates meet")


def other_sizes(found: StrengthAnswer, sizes: GrooveSizes | PlugSizes) -> Iterator[Fact]:
    """Yield the sizes the code asks for."""
    system = found.units
    if isinstance(sizes, GrooveSizes):
        if sizes.least is None:
            yield Fact("as much as the weld", "the plate holds")
        else:
            yield Fact(written(sizes.throat, "leg", system), "throat that counts")
            by = named_source("en-1993-1-8-butt" if found.task.european else "aisc-j2.3")
            yield Fact(written(sizes.least, "leg", system), "minimum throat", by)
        return
    by = named_source("en-1993-1-8-plug" if found.task.european else "aisc-j2.3b")
    yield Fact(written(sizes.least_hole, "leg", system), "minimum hole", by)
    if sizes.most_hole is not None:
        yield Fact(written(sizes.most_hole, "leg", system), "maximum hole", by)
    yield Fact(written(sizes.fill, "leg", system), "filled deep")
    yield Fact(written(sizes.least_fill, "leg", system), "minimum fill", by)
    if not found.task.european:
        beside, behind = sizes.spacing
        apart = named_source("aisc-j2.3b-apart")
        yield Fact(written(beside, "length", system), "minimum center to center", apart)
        if sizes.slot is not None:
            yield Fact(written(behind, "length", system), "and end to end", apart)


def amount_of(found: StrengthAnswer) -> str:
    """Return how much weld there is: its length, or how many plugs."""
    task, system = found.task, found.units
    if task.job.is_round:
        kind = task.job.joint + ("s" if task.plugs > 1 else "")
        return f"{task.plugs} {kind}"
    whole = units.convert(task.properties.length_m * task.sides, "length", system)
    return f"{whole:.4g} {units.symbol('length', system)} of weld"
