"""Switch, stay or too close: the answer in a word, its reason, and what would decide it.

Money here is written with the shop's own sign and no more digits than a decision needs.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from beadwright import units
from beadwright.money.break_even import BreakEven, Case
from beadwright.money.cost import Cost
from beadwright.money.swings import Swing
from beadwright.units import System

_BOUGHT = (
    ("wire", "wire"),
    ("gas", "gas"),
    ("power", "power"),
    ("tips", "tips and nozzles"),
    ("rework", "rework"),
)
"""Pieces named in a reason beside the two kinds of time."""

_HARDLY = 0.05
"""Share of the largest piece under which a piece is not named [-]."""

Word = Literal["switch", "stay", "too close"]


@dataclass(frozen=True, slots=True)
class Verdict:
    """The answer.

    Attributes:
        word: switch, stay or too close.
        headline: The word as a page shows it.
        reason: Why, one sentence.
        coupon: The coupon that would decide it, or empty if nothing is open.
        ask: What to ask or look up first, or empty.
    """

    word: Word
    headline: str
    reason: str
    coupon: str
    ask: str


def money(amount: float, sign: str) -> str:
    """Return an amount as the shop writes it: cents below a hundred, whole above [money].

    Args:
        amount: The amount [money].
        sign: Currency sign, may be empty [-].
    """
    places = 2 if abs(amount) < 100 else 0
    return f"{'-' if amount < 0 else ''}{sign}{abs(amount):,.{places}f}"


def verdict(
    case: Case,
    costs: tuple[Cost, Cost],
    band: tuple[float, float],
    swings: Sequence[Swing],
    sign: str,
) -> Verdict:
    """Return whether to switch.

    Switch if the whole band of the net saving is above zero, stay if it is below, else too close.

    Args:
        case: The comparison [-].
        costs: Cost now and the other way [-].
        band: Low and high of the net saving [money/year].
        swings: What it depends on, longest first [-].
        sign: Currency sign [-].
    """
    name = case.other.name
    if case.parts == 0:
        text = "No parts, no saving: at zero a year nothing pays back."
        return Verdict("stay", "Stay", text, "", "Write how many parts you weld in a year.")
    reason = _reason(case, costs, sign)
    low, high = band
    if low > 0:
        return Verdict("switch", f"Switch to {name}", reason, "", "")
    if high < 0 or (low == high == 0):
        return Verdict("stay", f"Stay with {case.now.name}", reason, "", "")
    coupon = next((s.lever.settle for s in swings if s.lever.bench and s.width > 0), "")
    first = swings[0].lever if swings else None
    ask = first.settle if first is not None and not first.bench else ""
    return Verdict("too close", "Too close to call", reason, coupon, ask)


def _reason(case: Case, costs: tuple[Cost, Cost], sign: str) -> str:
    """One sentence: the largest piece on each side, and what is left."""
    now, other = costs
    hour = case.rates.labor_s + case.rates.overhead_s
    gains = sorted(
        [
            (hour * (now.way.arc_s - other.way.arc_s), "time on the arc"),
            (hour * (now.way.off_s - other.way.off_s), "time off the arc"),
            *((now.piece(key) - other.piece(key), name) for key, name in _BOUGHT),
        ]
    )
    (lost, worst), (won, best) = gains[0], gains[-1]
    saving, net = case.part_saving, case.net_saving
    spread = " after what is paid once" if case.once > 0 else ""
    total = f"{money(abs(net), sign)} a year {'saved' if net >= 0 else 'lost'}{spread}"
    if round(saving, 2) == 0 and round(won, 2) == 0 and round(lost, 2) == 0:
        return f"Both cost the same on every part: {total}."
    if won < max(0.005, -lost * _HARDLY):
        text = f"{worst} costs {money(-lost, sign)} a part more"
        return f"Hardly anything gets cheaper and {text}: {total}."
    if -lost < max(0.005, won * _HARDLY):
        text = f"{best.capitalize()} saves {money(won, sign)} a part"
        return f"{text}, hardly anything costs more: {total}."
    return (
        f"{best.capitalize()} saves {money(won, sign)} a part, {worst} costs "
        f"{money(-lost, sign)} more: {total}."
    )


def break_even_sentences(case: Case, found: BreakEven, sign: str, system: System) -> dict[str, str]:
    """Return a sentence for each break-even, also for those that have no number.

    Args:
        case: The comparison [-].
        found: Its break-evens [-].
        sign: Currency sign [-].
        system: Whose units [-].
    """
    return {
        "parts_a_year": _parts_sentence(case, found),
        "months": _months_sentence(case, found),
        "price": _price_sentence(case, found, sign, system),
        "laid": _laid_sentence(case, found, system),
    }


def _parts_sentence(case: Case, found: BreakEven) -> str:
    name, months = case.other.name, f"{case.months:g} months"
    if found.crossing == "always":
        return f"{name} costs no more at any number of parts."
    if found.crossing == "never" or found.parts_a_year is None:
        return f"No number of parts pays for it: {name} costs no less on each part."
    parts = f"{found.parts_a_year:,.0f} parts a year"
    if found.crossing == "below":
        return f"{name} is the cheaper below {parts}."
    if case.once > 0:
        return f"Pays back in {months} from {parts}."
    return f"Pays from {parts}."


def _months_sentence(case: Case, found: BreakEven) -> str:
    if case.parts == 0:
        return "At no parts a year nothing comes back."
    if found.months is None:
        return "What is paid once never comes back at this volume."
    if found.months == 0:
        return "Nothing is paid once; it counts from the first part."
    if found.months > 240:
        return "What is paid once takes over twenty years to come back: call it never."
    pays = found.parts_to_pay or 0.0
    return f"What is paid once is back after {found.months:.1f} months, {pays:,.0f} parts."


def _price_sentence(case: Case, found: BreakEven, sign: str, system: System) -> str:
    if found.price is None:
        return f"Even with its wire for nothing, {case.other.name} costs more."
    unit = units.symbol("price_per_mass", system)
    shown = units.convert(found.price, "price_per_mass", system)
    text = f"{case.other.name} may cost up to {sign}{shown:,.2f}{unit}"
    if case.now.wire_kg > 0:
        text += f", {_over(found.price / case.now.wire_kg - 1)} the first wire"
    return f"{text}; {sign}{units.convert(case.other.wire_kg, 'price_per_mass', system):,.2f} now."


def _laid_sentence(case: Case, found: BreakEven, system: System) -> str:
    hour = case.rates.labor_s + case.rates.overhead_s
    if hour == 0:
        return "Your time is priced at nothing, so laying faster saves next to nothing."
    if found.laid is None or found.gain is None:
        return "No deposition carries this price: arc time alone cannot pay for the wire."
    shown = units.show(found.laid, "deposition", system)
    unit = units.symbol("deposition", system)
    if found.gain <= 0 and case.other.laid_kg_s >= found.laid:
        return f"Pays even if it lays no faster: {shown} {unit} is enough."
    if found.gain > 10:
        return "It would have to lay over ten times as fast: no wire does."
    here = case.other.laid_kg_s / case.now.laid_kg_s - 1
    return f"Must lay {shown} {unit}, {_over(found.gain)} now; worked out: {_over(here)}."


def _over(share: float) -> str:
    return f"{abs(share):.0%} {'over' if share >= 0 else 'under'}"
