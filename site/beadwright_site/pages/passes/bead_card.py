"""The card of one bead: what to set, what it makes, how the torch stands."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import units
from beadwright.passes.pass_beads import Bead, Laid, PassPlan
from beadwright.phrases import say
from beadwright.process.transfer import NAMES
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.pages.passes.bead_words import (
    aim_words,
    arc_words,
    bead_line,
    before_words,
    torch_words,
)
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written


@dataclass(frozen=True, slots=True)
class BeadCard:
    """The card.

    Attributes:
        title: Which bead of how many.
        line: What it is and where it stands.
        settings: Number, unit and name of what to set; empty where nothing holds.
        stands: Torch and aim, in words.
        facts: What it makes.
        why: What stops it, or why this part runs on another mode; or empty.
        blocked: True if nothing holds.
        before: What to do before it.
    """

    title: str
    line: str
    settings: tuple[tuple[str, str, str], ...]
    stands: tuple[tuple[str, str], ...]
    facts: tuple[Fact, ...]
    why: str
    blocked: bool
    before: str


def bead_card(found: PassPlan, bead: Bead, system: System) -> BeadCard:
    """Return the card of a bead.

    Args:
        found: The plan.
        bead: One of its beads.
        system: Units to show.
    """
    count = len(found.beads)
    return BeadCard(
        f"Bead {bead.number} of {count}" if count > 1 else "The one pass",
        bead_line(found, bead),
        tuple(_settings(bead.laid, system)) if bead.laid is not None else (),
        (("Gun", torch_words(found, bead)), ("Aim", aim_words(found, bead))),
        tuple(_facts(found, bead, system)),
        _why(found, bead, system),
        bead.laid is None,
        before_words(found, bead),
    )


def _settings(laid: Laid, system: System) -> Iterator[tuple[str, str, str]]:
    pulse = laid.transfer == "pulse"
    for name, value, measure in (
        ("Wire feed", laid.point.feed_m_s, "wire_feed"),
        ("Volts at the arc", None if pulse else laid.point.volts, "volts"),
        ("Travel speed", laid.travel_m_s, "travel"),
        ("Stickout (tip to work)", laid.tip_to_work_m, "tip_to_work"),
    ):
        if value is None:
            yield "–", "", "Volts: set by the pulse program"
        else:
            yield units.show(value, measure, system), units.symbol(measure, system), name


def _facts(found: PassPlan, bead: Bead, system: System) -> Iterator[Fact]:
    slot, laid = bead.slot, bead.laid
    if laid is not None:
        yield Fact(f"≈ {written(laid.point.current_a, 'current', system)}", "current")
        yield Fact(written(laid.heat_j_m, "heat_input", system), "heat, AWS")
        yield Fact(written(laid.heat_en_j_m, "heat_input", system), "heat, EN × 0.8")
    if found.job.is_fillet:
        yield Fact(written(bead.leg_m, "leg", system), "leg of a fillet this size")
    else:
        yield Fact(written(slot.width_m, "leg", system), "wide on top")
    yield Fact(written(slot.thickness_m, "leg", system), "thick")
    if laid is not None:
        yield Fact(NAMES[laid.transfer], "transfer")
        yield Fact(written(laid.wire_m, "distance", system), "wire, one weld")
        yield Fact(written(laid.wire_kg, "mass", system), "wire, one weld")
        yield Fact(arc_words(laid.arc_time_s), "arc, one weld")


def _why(found: PassPlan, bead: Bead, system: System) -> str:
    if bead.blocked is not None:
        low, high = bead.blocked
        return worded(say("passes.fight", low=low.why, high=high.why), system)
    part = found.processes["root"]
    if bead.role == "root" and part.transfer != found.processes["fill"].transfer:
        return f"{NAMES[part.transfer]}: {worded(part.why, system)}."
    return ""
