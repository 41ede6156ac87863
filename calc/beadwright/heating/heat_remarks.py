"""What the welder is told beside the Heat page's numbers."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.heating.carbon_equivalent import FORMULAS
from beadwright.heating.haz_hardness import MOST_HV
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat import SHOP_K
from beadwright.heating.preheat_needed import Code
from beadwright.heating.preheat_table import COLD_K, COLD_TO_K
from beadwright.heating.steels import Steel
from beadwright.layers.bead_limits import shorted_root
from beadwright.phrases import Amount, Phrase, say
from beadwright.results import Note, severest_first

HIGH_CE = 0.45
"""CE(IIW) from which a steel counts as one that hardens [% by mass]. Common practice."""

_SOURCES: dict[Code, str] = {
    "d1.1": "aws-d1.1-5.8", "en-b": "en-1011-2-b", "en-a": "en-1011-2-c1",
}  # fmt: skip


def heat_remarks(found: HeatAnswer) -> tuple[Note, ...]:
    """Return the notes on an answer, the most severe first.

    Args:
        found: The answer, its notes not yet in it [-].
    """
    notes = [
        *_steel(found),
        *_code(found),
        *_melt(found),
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
        return
    if steel.off_grade is not None:
        told = say("heating.off-grade", why=steel.off_grade)
        yield Note("stop", told, _limit_source(steel.grade, steel.off_grade.key), "steel")
    elif steel.melt == "certificate" and steel.grade.category is not None:
        told = say("heating.certificate-fits", steel=steel.grade.as_listed)
        yield Note("note", told, steel.grade.limit_source, "steel")
    elif steel.grade.category is None:
        yield Note("note", say("heating.not-in-table", steel=steel.name), "aws-d1.1-5.8", "steel")
    if steel.too_thick and steel.limits is not None:
        most = Amount(steel.limits.through(found.units), "length")
        told = say("heating.grade-too-thick", steel=steel.name, most=most)
        yield Note("caution", told, steel.grade.limit_source, "steel")


def _limit_source(steel: Steel, key: str) -> str:
    return steel.cap_source if key == "heating.off-grade-ce" else steel.limit_source


def _code(found: HeatAnswer) -> Iterator[Note]:
    """What the ruling code leaves open, and where another way asks for more."""
    needed, steel = found.needed, found.steel
    source = _SOURCES[needed.code]
    if needed.refused is not None and steel.composition is not None:
        yield Note("stop", _none_by(needed.code, needed.refused), source, "preheat_code")
    plan = found.dialled.plan
    if plan.transfer == "short":
        yield Note("caution", say("heating.short-not-prequalified"), "aws-d1.1-short", "transfer")
    elif shorted_root(found.dialled.job, plan.shape, plan.transfer):
        told = say("heating.short-root-not-prequalified", gap=Amount(plan.shape.gap_m, "length"))
        yield Note("caution", told, "aws-d1.1-short", "transfer")
    if needed.kelvin is None:
        return
    least, by_b = max(needed.kelvin, SHOP_K), needed.method_b
    if needed.code == "d1.1":
        if by_b is not None and by_b.kelvin is not None and by_b.kelvin > least + 0.5:
            told = say(
                "heating.method-b-asks-more", asks=_at(by_b.kelvin), least=_at(needed.kelvin)
            )
            yield Note("caution", told, "en-1011-2-b", "preheat_code")
    elif needed.table_k is not None and needed.table_k > least + 0.5:
        told = say("heating.table-asks-more", asks=_at(needed.table_k))
        yield Note("caution", told, "aws-d1.1-5.8", "preheat_code")


def _none_by(code: Code, why: Phrase) -> Phrase:
    if code == "d1.1":
        return say("heating.none-by-table", why=why)
    if code == "en-b":
        return say("heating.none-by-method-b", why=why)
    return say("heating.none-by-method-a", why=why)


def _melt(found: HeatAnswer) -> Iterator[Note]:
    # Method B counts sheet as 10 mm: what it then asks of the worst melt is no news of sheet.
    steel, worst = found.steel, None if found.sheet else found.needed.worst_b
    if worst is not None and worst.kelvin is not None and found.needed.kelvin is not None:
        if worst.kelvin > max(found.needed.kelvin, SHOP_K) + 0.5:
            told = say("heating.usual-melt", steel=steel.name, asks=_at(worst.kelvin))
            yield Note("caution", told, "en-1011-2-b", "melt")
    elif worst is not None and worst.refused:
        told = say("heating.usual-melt-refused", steel=steel.name, why=worst.refused[0][1])
        yield Note("caution", told, "en-1011-2-b", "melt")
    ce = next((e.value for e in found.equivalents if e.method == "ce"), None)
    if ce is None or steel.composition is None:
        return
    if ce >= HIGH_CE - 1e-9:
        yield Note("caution", say("heating.hardens", ce=ce), "practice", "steel")
    most = FORMULAS["ce"].ranges["c"][1]
    if steel.composition.c > most:
        told = say("heating.ce-past-carbon", ce=ce, share=steel.composition.c, most=most)
        yield Note("caution", told, "en-1011-2-a", "c")


def _temperature(found: HeatAnswer) -> Iterator[Note]:
    needed, most = found.needed, _at(found.interpass_k)
    if found.by_hand:
        start = _at(found.start_k)
        if needed.kelvin is not None and found.start_k < needed.kelvin - 0.5:
            told = say("heating.too-cold", start=start, asked=_at(needed.kelvin))
            yield Note("out", told, _SOURCES[needed.code], "preheat")
        if found.start_k > found.interpass_k + 0.5:
            told = say("heating.too-hot", start=start, most=most)
            yield Note("out", told, "en-1011-2-interpass", "preheat")
    elif needed.kelvin is not None and needed.kelvin > found.interpass_k + 0.5:
        told = say("heating.preheat-over-interpass", most=most)
        yield Note("stop", told, "en-1011-2-interpass", "preheat")
    if (found.by_hand and found.start_k < COLD_K - 0.5) or needed.even_cold:
        yield _cold(found)
    if needed.kelvin is not None and not needed.even_cold:
        if needed.code == "d1.1":
            yield Note("note", say("heating.heat-through"), "aws-d1.1-5.7", "preheat")
        else:
            yield Note("note", say("heating.heat-through-en"), "en-13916", "preheat")
        yield Note("caution", say("heating.torch-eats-air"), "practice")


def _cold(found: HeatAnswer) -> Note:
    """What a cold joint is warmed to; a row over freezing is a rule of its own."""
    cold, warm = _at(COLD_K), _at(COLD_TO_K[found.units])
    needed = found.needed
    # Method A only says that none is needed, of a joint at shop temperature.
    asks = needed.kelvin is not None and needed.code != "en-a"
    if asks and needed.kelvin is not None and needed.even_cold and needed.kelvin > COLD_K + 0.5:
        told = say("heating.cool-plate", least=_at(needed.kelvin), cold=cold, warm=warm)
        return Note("caution", told, _SOURCES[needed.code], "preheat")
    source = "aws-d1.1-5.8-a" if needed.code == "d1.1" else "practice"
    return Note("note", say("heating.cold-plate", cold=cold, warm=warm), source, "preheat")


def _at(kelvin: float) -> Amount:
    return Amount(kelvin, "temperature")


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
    if found.sheet:
        row = found.needed.row is not None and found.needed.code == "d1.1"
        told = say("heating.sheet-row-read" if row else "heating.sheet")
        yield Note("caution", told, "aws-d1.3-scope", "plate")


def _rules(found: HeatAnswer) -> Iterator[Note]:
    yield Note("caution", say("heating.procedure-rules"), "practice")
    yield Note("caution", say("heating.strip-coating"), "practice")
