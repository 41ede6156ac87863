"""A sentence for each break-even, also for those that have no number."""

from __future__ import annotations

from beadwright.money.break_even import BreakEven, Case
from beadwright.money.cost import hourly
from beadwright.phrases import Amount, Parameter, Phrase, say

FAR_MONTHS = 240
"""Past twenty years what is paid once is called lost [months]."""

TEN_TIMES = 10
"""A gain in laid metal that no wire has [-]."""

PAYS_NO_FASTER, MUST_LAY = "money.pays-no-faster", "money.must-lay"
"""Ids of the two sentences that say what the other way must lay."""


def break_even_sentences(case: Case, found: BreakEven, sign: str) -> dict[str, Phrase]:
    """Return a sentence for each break-even, also for those that have no number.

    Args:
        case: The comparison [-].
        found: Its break-evens [-].
        sign: Currency sign [-].
    """
    if case.alike:
        return dict.fromkeys(("parts_a_year", "months", "price", "laid"), say("money.same-ways"))
    return {
        "parts_a_year": _parts_sentence(case, found),
        "months": _months_sentence(case, found),
        "price": _price_sentence(case, found, sign),
        "laid": _laid_sentence(case, found),
    }


def _parts_sentence(case: Case, found: BreakEven) -> Phrase:
    name = case.other.name
    if found.crossing == "always":
        return say("money.never-dearer", way=name)
    if found.crossing == "never" or found.parts_a_year is None:
        return say("money.no-number-pays", way=name)
    if found.crossing == "below":
        return say("money.cheaper-below", way=name, parts=found.parts_a_year)
    if case.once > 0:
        return say("money.pays-back-from", count=case.months, parts=found.parts_a_year)
    return say("money.pays-from", parts=found.parts_a_year)


def _months_sentence(case: Case, found: BreakEven) -> Phrase:
    if case.parts == 0:
        return say("money.nothing-comes-back")
    if found.months is None:
        return say("money.never-comes-back")
    if found.months == 0:
        return say("money.nothing-paid-once")
    if found.months > FAR_MONTHS:
        return say("money.over-twenty-years")
    return say("money.back-after", months=found.months, parts=found.parts_to_pay or 0.0)


def _price_sentence(case: Case, found: BreakEven, sign: str) -> Phrase:
    if found.price is None:
        return say("money.dearer-at-any-price", way=case.other.name)
    may_cost: dict[str, Parameter] = {
        "way": case.other.name,
        "sign": sign,
        "price": Amount(found.price, "price_per_mass"),
        "now": Amount(case.other.wire_kg, "price_per_mass"),
    }
    if case.now.wire_kg > 0:
        against = _over(found.price / case.now.wire_kg - 1)
        return say("money.may-cost-against-first", **may_cost, against=against)
    return say("money.may-cost", **may_cost)


def _laid_sentence(case: Case, found: BreakEven) -> Phrase:
    if not any(hourly(case.other, case.rates)):
        return say("money.faster-saves-nothing")
    if found.laid is None or found.gain is None:
        return say("money.no-deposition-carries")
    laid = Amount(found.laid, "deposition")
    if found.gain <= 0 and case.other.laid_kg_s >= found.laid:
        return say(PAYS_NO_FASTER, laid=laid)
    if found.gain > TEN_TIMES:
        return say("money.ten-times-as-fast")
    here = case.other.laid_kg_s / case.now.laid_kg_s - 1
    return say(MUST_LAY, laid=laid, gain=_over(found.gain), here=_over(here))


def _over(share: float) -> Phrase:
    return say("money.over" if share >= 0 else "money.under", share=abs(share))
