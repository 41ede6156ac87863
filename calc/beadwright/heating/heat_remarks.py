"""What the welder is told beside the Heat page's numbers."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.heating.haz_hardness import MOST_HV
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat_table import COLD_K, COLD_TO_K, THINNEST_M
from beadwright.phrases import Amount, say
from beadwright.results import Note, severest_first
from beadwright.temperatures import from_celsius

HIGH_CE = 0.45
"""CE(IIW) from which a steel counts as one that hardens [% by mass]. Common practice."""


def heat_remarks(found: HeatAnswer) -> tuple[Note, ...]:
    """Return the notes on an answer, the most severe first.

    Args:
        found: The answer, its notes not yet in it [-].
    """
    notes = [
        *_steel(found),
        *_temperature(found),
        *_hard(found),
        *_counted(found),
        *_rules(found),
    ]
    return severest_first(notes)


def _steel(found: HeatAnswer) -> Iterator[Note]:
    steel = found.steel
    if steel.composition is None:
        yield Note("stop", say("heating.steel-unknown"), "practice", "steel")
        return
    if steel.grade is None:
        yield Note("note", say("heating.no-grade"), "aws-d1.1-5.8", "steel")
    elif steel.grade.category is None:
        yield Note("note", say("heating.not-in-table", steel=steel.name), "aws-d1.1-5.8", "steel")
    worst = found.needed.worst_b
    if worst is not None and worst.kelvin is not None and found.needed.kelvin is not None:
        if worst.kelvin > max(found.needed.kelvin, from_celsius(20)) + 0.5:
            told = say("heating.usual-melt", steel=steel.name, asks=_at(worst.kelvin))
            yield Note("caution", told, "en-1011-2-b", "melt")
    elif worst is not None and worst.refused:
        told = say("heating.usual-melt-refused", steel=steel.name, why=worst.refused[0][1])
        yield Note("caution", told, "en-1011-2-b", "melt")
    ce = next((e.value for e in found.equivalents if e.method == "ce"), None)
    if ce is not None and ce >= HIGH_CE - 1e-9:
        yield Note("caution", say("heating.hardens", ce=ce), "practice", "steel")


def _temperature(found: HeatAnswer) -> Iterator[Note]:
    needed, most = found.needed, _at(found.interpass_k)
    if found.by_hand:
        start = _at(found.start_k)
        if needed.kelvin is not None and found.start_k < needed.kelvin - 0.5:
            asked = _at(needed.kelvin)
            told = say("heating.too-cold", start=start, asked=asked)
            yield Note("out", told, _source(needed.by), "preheat")
        if found.start_k > found.interpass_k + 0.5:
            told = say("heating.too-hot", start=start, most=most)
            yield Note("out", told, "en-1011-2-interpass", "preheat")
    elif needed.kelvin is not None and needed.kelvin > found.interpass_k + 0.5:
        told = say("heating.preheat-over-interpass", most=most)
        yield Note("stop", told, "en-1011-2-interpass", "preheat")
    if (found.by_hand and found.start_k < COLD_K - 0.5) or needed.even_cold:
        told = say("heating.cold-plate", cold=_at(COLD_K), warm=_at(COLD_TO_K))
        yield Note("note", told, "aws-d1.1-5.8", "preheat")
    if needed.kelvin is not None and not needed.even_cold:
        yield Note("note", say("heating.heat-through"), "aws-d1.1-5.7", "preheat")
        yield Note("caution", say("heating.torch-eats-air"), "practice")


def _at(kelvin: float) -> Amount:
    return Amount(kelvin, "temperature")


def _source(by: str) -> str:
    return "aws-d1.1-5.8" if by == "table" else "en-1011-2-b"


def _hard(found: HeatAnswer) -> Iterator[Note]:
    value = found.hardness.value
    if value is not None and value > MOST_HV:
        told = say("heating.too-hard", hardness=value, most=MOST_HV)
        yield Note("caution", told, "iso-15614-1", "preheat")
    if found.heat.value is None:
        yield Note("out", say("heating.no-heat"), "en-1011-2-b", "heat")


def _counted(found: HeatAnswer) -> Iterator[Note]:
    if found.needed.method_b is not None:
        for counted in found.needed.method_b.counted:
            yield Note("note", say("heating.method-b-counted", counted=counted), "en-1011-2-b")
    row = found.needed.row
    if row is not None and found.thickness_m < THINNEST_M - 1e-9:
        yield Note("note", say("heating.thinner-than-table"), "aws-d1.1-5.8", "plate")


def _rules(found: HeatAnswer) -> Iterator[Note]:
    yield Note("caution", say("heating.procedure-rules"), "practice")
    yield Note("caution", say("heating.strip-coating"), "practice")
