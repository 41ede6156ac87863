"""What the welder is told beside the Heat page's numbers."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.heating.haz_hardness import MOST_HV
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat_table import COLD_K, COLD_TO_K, THINNEST_M
from beadwright.heating.temperatures import from_celsius, show_temperature
from beadwright.results import Note

HIGH_CE = 0.45
"""CE(IIW) from which a steel is treated as one that hardens [% by mass]. Common practice."""

_ORDER = {"stop": 0, "out": 1, "caution": 2, "note": 3}


def heat_remarks(found: HeatAnswer) -> tuple[Note, ...]:
    """Return the notes on an answer, loudest first.

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
    return tuple(sorted(notes, key=lambda note: _ORDER[note.level]))


def _steel(found: HeatAnswer) -> Iterator[Note]:
    steel = found.steel
    if steel.composition is None:
        yield Note("stop", "Steel not known: do not guess a preheat. Find the certificate, have it "
                   "analysed, or weld a test piece and break it.", "practice", "steel")  # fmt: skip
        return
    if steel.grade is None:
        yield Note("note", "No grade given: only method B answers. Give the grade too and the "
                   "prequalified table is read as well.", "aws-d1.1-5.8", "steel")  # fmt: skip
    elif steel.grade.category is None:
        yield Note("note", f"{steel.name} is not in the prequalified table: only method B "
                   "answers.", "aws-d1.1-5.8", "steel")  # fmt: skip
    worst = found.needed.worst_b
    if worst is not None and worst.kelvin is not None and found.needed.kelvin is not None:
        if worst.kelvin > max(found.needed.kelvin, from_celsius(20)) + 0.5:
            shown = show_temperature(worst.kelvin, found.units)
            yield Note("caution", f"A usual melt of {steel.name} is counted. At the limits of its "
                       f"standard method B asks {shown}: go by the mill certificate.",
                       "en-1011-2-b", "melt")  # fmt: skip
    elif worst is not None and worst.refused:
        yield Note("caution", f"A usual melt of {steel.name} is counted. At the limits of its "
                   f"standard method B has no answer ({worst.refused[0][1]}): go by the mill "
                   "certificate.", "en-1011-2-b", "melt")  # fmt: skip
    ce = next((e.value for e in found.equivalents if e.method == "ce"), None)
    if ce is not None and ce >= HIGH_CE - 1e-9:
        yield Note("caution", f"CE {ce:.2f}: it hardens. Dry wire and plate, no short tacks, no "
                   "arc strikes beside the joint, cool slowly.", "practice", "steel")  # fmt: skip


def _temperature(found: HeatAnswer) -> Iterator[Note]:
    needed, system = found.needed, found.units
    if found.by_hand:
        start = show_temperature(found.start_k, system)
        if needed.kelvin is not None and found.start_k < needed.kelvin - 0.5:
            asked = show_temperature(needed.kelvin, system)
            yield Note("out", f"{start} is too cold: preheat to {asked}.",
                       _source(needed.by), "preheat")  # fmt: skip
        if found.start_k > found.interpass_k + 0.5:
            most = show_temperature(found.interpass_k, system)
            yield Note("out", f"{start} is too hot: wait until it is under {most}.",
                       "en-1011-2-interpass", "preheat")  # fmt: skip
    elif needed.kelvin is not None and needed.kelvin > found.interpass_k + 0.5:
        most = show_temperature(found.interpass_k, system)
        yield Note("stop", f"The preheat needed is over the highest interpass temperature, {most}: "
                   "a qualified procedure must settle this.",
                   "en-1011-2-interpass", "preheat")  # fmt: skip
    if (found.by_hand and found.start_k < COLD_K - 0.5) or needed.even_cold:
        cold, warm = show_temperature(COLD_K, system), show_temperature(COLD_TO_K, system)
        yield Note("note", f"Below {cold}: warm it to {warm} and hold it there. Wipe off the "
                   "damp.", "aws-d1.1-5.8", "preheat")  # fmt: skip
    if needed.kelvin is not None and not needed.even_cold:
        three = "75 mm" if system == "si" else "3 in"
        yield Note("note", f"Heat through, at least {three} each way from the weld or the plate's "
                   "thickness if more. Measure there, away from the flame; hold until the last "
                   "pass.", "aws-d1.1-5.7", "preheat")  # fmt: skip
        yield Note("caution", "A torch in a tank, pit or closed room eats the air: ventilate, "
                   "test, post a watch.", "practice")  # fmt: skip


def _source(by: str) -> str:
    return "aws-d1.1-5.8" if by == "table" else "en-1011-2-b"


def _hard(found: HeatAnswer) -> Iterator[Note]:
    value = found.hardness.value
    if value is not None and value > MOST_HV:
        yield Note("caution", f"About {value:.0f} HV beside the bead, over {MOST_HV:.0f}: preheat "
                   "more, or lay more heat, and test it.", "iso-15614-1", "preheat")  # fmt: skip
    if found.heat.value is None:
        yield Note("out", "No setting holds this job, so there is no heat to count: preheat by "
                   "method B is for the least heat it knows. Put Dial in right first, or write "
                   "the heat.", "en-1011-2-b", "heat")  # fmt: skip


def _counted(found: HeatAnswer) -> Iterator[Note]:
    if found.needed.method_b is not None:
        for text in found.needed.method_b.counted:
            yield Note("note", f"Method B: {text}.", "en-1011-2-b")
    row = found.needed.row
    if row is not None and found.thickness_m < THINNEST_M - 1e-9:
        yield Note("note", "The prequalified table begins at 1/8 in; its first row is read.",
                   "aws-d1.1-5.8", "plate")  # fmt: skip


def _rules(found: HeatAnswer) -> Iterator[Note]:
    yield Note("caution", "Structure, pressure, lifting gear: the written, qualified procedure "
               "rules, not this page, and who is licensed to sign it.", "practice")  # fmt: skip
    yield Note("caution", "Galvanised or painted: strip it well back from the weld on every face "
               "the heat reaches. Zinc fume poisons and zinc cracks the weld.",
               "practice")  # fmt: skip
