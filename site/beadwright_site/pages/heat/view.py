"""What the Heat page shows of its answer, in numbers already written."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.heating.heat_answer import HeatAnswer
from beadwright.temperatures import show_temperature
from beadwright.units import System
from beadwright.words.wording import reason, worded
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written, written_quantity, written_room


def headline_of(found: HeatAnswer) -> str:
    """Return how hot to start, in a line."""
    needed = found.needed
    if needed.kelvin is None:
        return "No preheat can be given"
    if needed.even_cold:
        if found.by_hand and found.start_k < needed.kelvin - 0.5:
            return f"Too cold: warm it to {show_temperature(needed.kelvin, found.units)}"
        return "No preheat"
    asked = f"reheat to {show_temperature(needed.kelvin, found.units)}"
    too_cold = found.by_hand and found.start_k < needed.kelvin - 0.5
    return f"Too cold: p{asked}" if too_cold else f"P{asked}"


def tone_of(found: HeatAnswer) -> str:
    """Return the class of the headline: switch if all is well, too-close, or fails."""
    levels = {note.level for note in found.notes}
    if found.needed.kelvin is None or "stop" in levels:
        return "fails"
    if "out" in levels:
        return "too-close"
    return "switch" if found.needed.even_cold else ""


def seconds(value: float) -> str:
    """Return a cooling time as the shop reads it."""
    return f"{_rounded(value)} s"


def _rounded(value: float) -> str:
    return f"{value:.1f}" if value < 20 else f"{value:.0f}"


def start_facts(found: HeatAnswer) -> Iterator[Fact]:
    """Yield the temperatures, the heat, how fast it cools and how hard it gets."""
    system, cooled = found.units, found.cooling
    least = found.needed.kelvin
    if found.by_hand:
        yield Fact(show_temperature(found.start_k, system), "welded at, by hand")
    else:
        yield Fact("–" if least is None else show_temperature(least, system), "at the least")
    yield Fact(show_temperature(found.interpass_k, system), "between passes at most")
    yield Fact(
        written_quantity(found.heat, system),
        "heat in, AWS and ASME",
        written_room(found.heat, system),
    )
    yield Fact(written_quantity(found.heat_en, system), "heat in, EN × 0.8",
               written_room(found.heat_en, system))  # fmt: skip
    if cooled is None:
        yield Fact("–", "no heat, no cooling time")
    else:
        yield Fact(seconds(cooled.seconds), "from 800 to 500 °C",
                   f"{_rounded(cooled.low)}–{seconds(cooled.high)}")  # fmt: skip
    hard = found.hardness
    if hard.value is None or hard.low is None or hard.high is None:
        yield Fact("–", f"hardness: {reason(found.hardness_refused, found.units)}")
    else:
        yield Fact(f"≈ {hard.value:.0f} HV", "hardest beside the bead",
                   f"{hard.low:.0f}–{hard.high:.0f}")  # fmt: skip


def method_rows(found: HeatAnswer) -> Iterator[tuple[str, str, str, str, bool]]:
    """Yield name, temperature, how it counts, source id and whether it rules, by method."""
    system, needed = found.units, found.needed
    thick = written(found.thickness_m, "length", system)
    summed = written(found.combined_m, "length", system)
    row = needed.row
    if row is None or needed.table_k is None:
        yield "Prequalified table", "–", "does not list this steel", "aws-d1.1-5.8", False
    else:
        yield ("Prequalified table", show_temperature(needed.table_k, system),
               f"category {row.category}, thickest part {thick}", "aws-d1.1-5.8",
               needed.by == "table")  # fmt: skip
    found_b = needed.method_b
    counted = f"CET, thickest part {thick}, {found.hydrogen:g} ml/100 g, heat"
    if found_b is None or found_b.kelvin is None:
        why = "no analysis" if found_b is None else worded(found_b.refused[0][1], system)
        yield "EN method B", "–", why, "en-1011-2-b", False
    else:
        yield ("EN method B", _or_none(found_b.kelvin, system), counted, "en-1011-2-b",
               needed.by == "method-b")  # fmt: skip
    worst = needed.worst_b
    if worst is not None and worst.kelvin is not None:
        yield ("Method B, worst melt allowed", _or_none(worst.kelvin, system),
               "if the certificate reads so", "en-1011-2-b", False)  # fmt: skip
    yield "All parts together", summed, "method A counts it; these two do not", "en-1011-2-a", False


def _or_none(kelvin: float, system: System) -> str:
    return "none" if kelvin <= 293.15 else show_temperature(kelvin, system)


def cooling_facts(found: HeatAnswer) -> Iterator[Fact]:
    """Yield both formulas, where they meet, and the joint's shape factors."""
    cooled, system = found.cooling, found.units
    if cooled is None:
        return
    yield Fact(seconds(cooled.thick_s), "as thick plate")
    yield Fact(seconds(cooled.thin_s), "as thin plate")
    yield Fact(written(cooled.transition_m, "length", system), "thickness where they meet")


def carbon_rows(found: HeatAnswer) -> Iterator[tuple[str, str, str, str, str]]:
    """Yield name, value, worst, why there is none and source id of each carbon equivalent."""
    for each in found.equivalents:
        value, worst = ("–" if v is None else f"{v:.2f}" for v in (each.value, each.worst))
        refused = "; ".join(worded(why, found.units) for why in each.refused)
        yield each.name, value, worst, refused, each.source
