"""What the Shop page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from beadwright.machine.shop_page import STANDS_IN, ShopAnswer, demo_keys
from beadwright.machine.supply_checks import GENERATOR_START
from beadwright.phrases import say
from beadwright.results import Note
from beadwright.words.wording import worded
from beadwright_site.forms.labels import names_of
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written

HELD_WORDS = {"holds": "Holds", "close": "Close", "fails": "Fails"}


def headline_of(found: ShopAnswer) -> str:
    """Return whether the shop can run the job, in a line."""
    named = {
        held: ", ".join(
            worded(check.name, found.units).lower()
            for check in found.circuit.checks
            if check.held == held
        )
        for held in ("fails", "close")
    }
    if named["fails"]:
        return f"This job is too much: {named['fails']}"
    if named["close"]:
        return f"It runs, but close: {named['close']}"
    return "Machine and circuit can run this job"


def tone_of(found: ShopAnswer) -> str:
    """Return the class of the headline: switch if all holds, too-close, or fails."""
    held = {check.held for check in found.circuit.checks}
    return "fails" if "fails" in held else "too-close" if "close" in held else "switch"


def shop_notes(found: ShopAnswer) -> Iterator[Note]:
    """Yield the notes past the checks, which stand on their own; entries named as in the form."""
    checked = {check.phrase for check in found.circuit.checks}
    for note in found.notes:
        if note.key == STANDS_IN:
            names = names_of(demo_keys(found.query))
            yield replace(note, phrase=say("machine.demo-stands-in-marked", names=names))
        elif note.phrase not in checked:
            yield note


def circuit_facts(found: ShopAnswer) -> Iterator[Fact]:
    """Yield what the job asks of machine and circuit."""
    circuit, system = found.circuit, found.units
    yield Fact(f"≈ {written(circuit.load.current_a, 'current', system)}", "current")
    yield Fact(f"{circuit.duty:.0%}", "duty cycle there")
    yield Fact(written(circuit.all_day_a, "current", system), "without a break")
    yield Fact(written(circuit.machine_v, "volts", system), "at the machine")
    drawn, at_rating = circuit.drawn, circuit.rated
    rated = f"at its rated {written(circuit.machine.rated_a, 'current', system)}"
    if circuit.machine.generator_va is None:
        yield Fact(written(drawn.primary_a, "current", system), "from the wall, this job")
        yield Fact(written(at_rating.primary_a, "current", system), f"from the wall {rated}")
        return
    yield Fact(written(drawn.primary_a, "current", system), "drawn by this job")
    yield Fact(_kva(drawn.apparent_va), "this job, steady")
    yield Fact(_kva(drawn.apparent_va * GENERATOR_START), "this job, at a start")
    yield Fact(written(at_rating.primary_a, "current", system), f"drawn {rated}")
    yield Fact(_kva(at_rating.apparent_va), rated)


def _kva(volt_amps: float) -> str:
    return f"{volt_amps / 1000:.1f} kVA"


def check_rows(found: ShopAnswer) -> Iterator[tuple[str, str, str, str, str, str, str]]:
    """Yield held, word, name, asked, limit, sentence and source id of each check."""
    for check in found.circuit.checks:
        if check.measure == "power":
            asked, limit = map(_kva, (check.asked, check.limit))
        else:
            asked = written(check.asked, check.measure, found.units)
            limit = written(check.limit, check.measure, found.units)
        name, told = (worded(phrase, found.units) for phrase in (check.name, check.phrase))
        yield check.held, HELD_WORDS[check.held], name, asked, limit, told, check.source
