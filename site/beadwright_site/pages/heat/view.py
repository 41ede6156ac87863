"""What the Heat page shows of its answer, in numbers already written."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from beadwright.heating.cooling import COOL_C, HOT_C
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat_needed import Code
from beadwright.heating.preheat_table import COLD_K
from beadwright.sources import SOURCES
from beadwright.temperatures import degree_sign, degrees, from_celsius, show_temperature
from beadwright.units import System
from beadwright.words.wording import reason, worded
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written, written_quantity, written_room

CODE_NAMES: Mapping[Code, str] = {
    "d1.1": "AWS D1.1 table", "en-b": "EN 1011-2 method B", "en-a": "EN 1011-2 method A",
}  # fmt: skip
"""What each way to a preheat is called."""


def headline_of(found: HeatAnswer) -> str:
    """Return how hot to start, in a line."""
    needed, system = found.needed, found.units
    if needed.kelvin is None:
        return "No preheat can be given"
    asked = show_temperature(needed.kelvin, system)
    too_cold = found.by_hand and found.start_k < needed.kelvin - 0.5
    melt_k = found.certificate_asks_k
    if melt_k is not None and not too_cold:
        return f"{asked} by AWS D1.1, {show_temperature(melt_k, system)} by method B"
    if needed.even_cold:
        if too_cold:
            return f"Too cold: warm it to {asked}"
        rule = needed.code == "d1.1" or needed.kelvin > COLD_K
        return (
            f"No preheat at {asked} or warmer" if rule and needed.code != "en-a" else "No preheat"
        )
    return f"Too cold: preheat to {asked}" if too_cold else f"Preheat to {asked}"


def tone_of(found: HeatAnswer) -> str:
    """Return the class of the headline: switch if all is well, too-close, or fails."""
    levels = {note.level for note in found.notes}
    if found.needed.kelvin is None or "stop" in levels:
        return "fails"
    if "out" in levels or found.certificate_asks_k is not None:
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
        yield Fact(show_temperature(found.start_k, system), "plate temperature, by hand")
    else:
        yield Fact(_or_none(least, system), f"minimum, {CODE_NAMES[found.needed.code]}")
    yield Fact(show_temperature(found.interpass_k, system), "interpass maximum, EN")
    yield Fact(
        written_quantity(found.heat, system),
        "heat input, AWS and ASME",
        written_room(found.heat, system),
    )
    yield Fact(written_quantity(found.heat_en, system), "heat input, EN × 0.8",
               written_room(found.heat_en, system))  # fmt: skip
    if cooled is None:
        yield Fact("–", "no heat input, no cooling time")
    else:
        hot, cool = (f"{degrees(from_celsius(c), system):.0f}" for c in (HOT_C, COOL_C))
        yield Fact(seconds(cooled.seconds), f"from {hot} to {cool} {degree_sign(system)}",
                   f"{_rounded(cooled.low)}–{seconds(cooled.high)}")  # fmt: skip
    hard = found.hardness
    if hard.value is None or hard.low is None or hard.high is None:
        yield Fact("–", f"peak HAZ hardness: {reason(found.hardness_refused, found.units)}")
    else:
        yield Fact(f"≈ {hard.value:.0f} HV", "peak HAZ hardness",
                   f"{hard.low:.0f}–{hard.high:.0f}")  # fmt: skip


@dataclass(frozen=True, slots=True)
class MethodRow:
    """One way to a preheat.

    Attributes:
        name: What it is called.
        temperature: What it asks, as shown.
        how: What it counts, or why it gives none.
        source: Source id.
        cited: Document, edition, and how it was come by.
        rules: Why it is the one that counts; empty if it is not.
    """

    name: str
    temperature: str
    how: str
    source: str
    cited: str
    rules: str


def method_rows(found: HeatAnswer) -> Iterator[MethodRow]:
    """Yield every way to a preheat, the one that rules first, and method B's for the worst melt."""
    rows = {"d1.1": _table_row(found), "en-b": _method_b_row(found), "en-a": _method_a_row(found)}
    yield rows.pop(found.needed.code)
    yield from rows.values()
    worst, system = found.needed.worst_b, found.units
    if worst is not None and worst.kelvin is not None and not found.sheet:
        yield _row("Method B, worst the grade allows", _or_none(worst.kelvin, system),
                   "if the certificate shows that analysis", "en-1011-2-b")  # fmt: skip


def _row(name: str, temperature: str, how: str, source: str, rules: str = "") -> MethodRow:
    document = SOURCES[source]
    cited = f"{document.document}, {document.told}"
    return MethodRow(name, temperature, how, source, cited, rules)


def _why(found: HeatAnswer, code: Code) -> str:
    """Why a code rules; empty if it does not."""
    needed = found.needed
    if needed.code != code:
        return ""
    if code == "d1.1" and found.sheet and needed.row is not None:
        return "Used in place of AWS D1.3, which covers sheet"
    if needed.chosen:
        return "Used: you chose it"
    return "Used: it lists this steel" if code == "d1.1" else "Used: D1.1 has no row for it"


def _table_row(found: HeatAnswer) -> MethodRow:
    system, needed, rules = found.units, found.needed, _why(found, "d1.1")
    name, row = CODE_NAMES["d1.1"], needed.row
    if row is None or needed.table_k is None:
        if found.steel.off_grade is not None:
            why = "not used: the certificate does not fit the grade"
        elif found.steel.grade is None:
            why = "goes by the grade, which is not known"
        else:
            why = "does not list this steel"
        return _row(name, "–", why, "aws-d1.1-5.8", rules)
    how = f"category {row.category}, thickest part {written(found.thickness_m, 'length', system)}"
    return _row(name, show_temperature(needed.table_k, system), how, "aws-d1.1-5.8", rules)


def _method_b_row(found: HeatAnswer) -> MethodRow:
    system, found_b, rules = found.units, found.needed.method_b, _why(found, "en-b")
    name = CODE_NAMES["en-b"]
    if found_b is None or found_b.kelvin is None:
        why = "no analysis" if found_b is None else worded(found_b.refused[0][1], system)
        return _row(name, "–", why, "en-1011-2-b", rules)
    thick = written(found.thickness_m, "length", system)
    how = f"CET {found_b.cet:.2f}, thickest part {thick}, {found.hydrogen:g} ml/100 g, heat"
    return _row(name, _or_none(found_b.kelvin, system), how, "en-1011-2-b", rules)


def _method_a_row(found: HeatAnswer) -> MethodRow:
    system, found_a, rules = found.units, found.needed.method_a, _why(found, "en-a")
    name = CODE_NAMES["en-a"]
    if found_a is None or found_a.most_m is None or found_a.refused is not None:
        why = "no analysis" if found_a is None else reason(found_a.refused, system)
        return _row(name, "–", why, "en-1011-2-c1", rules)
    summed, most = (written(m, "length", system) for m in (found.combined_m, found_a.most_m))
    how = f"Table C.1, scale {found_a.scale}: {summed} combined, none up to {most}"
    return _row(name, "none", how, "en-1011-2-c1", rules)


def _or_none(kelvin: float | None, system: System) -> str:
    """A least temperature; one at or below freezing asks nothing."""
    if kelvin is None:
        return "–"
    return "none" if kelvin < COLD_K - 1e-6 else show_temperature(kelvin, system)


def cooling_facts(found: HeatAnswer) -> Iterator[Fact]:
    """Yield both formulas, where they meet, and the joint's shape factors."""
    cooled, system = found.cooling, found.units
    if cooled is None:
        return
    yield Fact(seconds(cooled.thick_s), "as thick plate")
    yield Fact(seconds(cooled.thin_s), "as thin plate")
    yield Fact(written(cooled.transition_m, "length", system), "thickness where they meet")


def carbon_rows(found: HeatAnswer) -> Iterator[tuple[str, str, str, str, str]]:
    """Yield name, value, worst, what it is not for and source id of each carbon equivalent."""
    for each in found.equivalents:
        value, worst = ("–" if v is None else f"{v:.2f}" for v in (each.value, each.worst))
        refused = "; ".join(worded(why, found.units) for why in each.refused)
        yield each.name, value, worst, refused, each.source
