"""What the settings make, in the words and the order they are asked for at the machine."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import units
from beadwright.joint.joints import TEE_GROOVES
from beadwright.process.positions import POSITIONS
from beadwright.process.tip_to_work import tip_position
from beadwright.process.transfer import NAMES
from beadwright.process.wire_ranges import usual_positions
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.setting.outcome import Outcome
from beadwright.sources import SOURCES
from beadwright.sources.source import Source
from beadwright.units import System
from beadwright.words.wording import reason, worded
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written_quantity, written_room


@dataclass(frozen=True, slots=True)
class Origin:
    """How one number was got."""

    key: str
    name: str
    shown: str
    sources: tuple[Source, ...]


def _heat(outcome: Outcome, system: System) -> Fact:
    """Heat by the convention its readers use, and the label says which."""
    if system == "si":
        heat, name = outcome.heat_en, "heat input, EN × 0.8"
    else:
        heat, name = outcome.heat, "heat input, AWS"
    return Fact(written_quantity(heat, system), name, written_room(heat, system), key="heat")


def main_facts(found: DialIn) -> tuple[Fact, ...]:
    """Return the six facts of the grid; empty if there is no set point."""
    outcome, system, plan = found.outcome, found.job.units, found.plan
    if outcome is None:
        return ()
    current = f"≈ {written_quantity(outcome.current, system)}"
    return (
        Fact(str(plan.passes), "pass" if plan.passes == 1 else "passes", key="passes"),
        Fact(NAMES[outcome.transfer], "transfer", key="transfer"),
        Fact(current, "current", written_room(outcome.current, system), key="current"),
        _heat(outcome, system),
        Fact(written_quantity(outcome.laid, system), "deposition rate",
             written_room(outcome.laid, system), key="laid"),
        Fact(written_quantity(outcome.gas_flow, system), "gas flow",
             written_room(outcome.gas_flow, system), key="gas_flow"),
    )  # fmt: skip


def mode_and_amps(found: DialIn) -> str:
    """Return the transfer mode and the current in a line; empty if there is no set point."""
    outcome = found.outcome
    if outcome is None:
        return ""
    return f"{NAMES[outcome.transfer]}, ≈ {written_quantity(outcome.current, found.job.units)}"


def _angle(three: tuple[float, float, float]) -> str:
    low, value, high = three
    return f"{value:.0f}° ({low:.0f}–{high:.0f})"


def _capital(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}"


def torch_facts(found: DialIn) -> tuple[Fact, ...]:
    """Return how to set up wire and torch."""
    torch, wire = found.torch, found.job.wire
    along = _capital(f"{torch.way} {_angle(torch.travel_angle)}")
    return (
        Fact(along, "gun along the weld"),
        Fact(_angle(torch.work_angle), "gun from the bottom plate"
             if found.job.is_fillet or found.job.joint in TEE_GROOVES else "gun to the plate"),
        Fact(_capital(worded(torch.aim, found.job.units)), "aim"),
        Fact(wire.type.polarity, "polarity, wire positive"),
        Fact(_capital(tip_position(found.plan.transfer)), "contact tip"),
        Fact(_capital(wire.type.drive_roll), "drive roll"),
        *_nozzle(found),
        *_wire(found),
    )  # fmt: skip


def _wire(found: DialIn) -> Iterator[Fact]:
    job = found.job
    yield Fact(job.wire.type.iso, "this wire in ISO's words")
    runs = usual_positions(job.wire, job.gas, found.plan.transfer)
    if runs:
        every = len(runs) == len(POSITIONS)
        mode = _lower(NAMES[found.plan.transfer])
        yield Fact("Every position" if every else _capital(", ".join(runs)),
                   f"it runs {mode} in")  # fmt: skip


def _nozzle(found: DialIn) -> Iterator[Fact]:
    outcome = found.outcome
    if outcome is not None:
        nozzle = outcome.flow.nozzle
        bore = Quantity("Gas nozzle", "leg", nozzle.bore_m)
        yield Fact(written_quantity(bore, found.job.units), "gas nozzle bore")


def laid_facts(found: DialIn) -> tuple[Fact, ...]:
    """Return what is laid, and what the job takes; empty if there is no set point."""
    outcome, system = found.outcome, found.job.units
    if outcome is None:
        return ()
    facts = [
        Fact(written_quantity(outcome.leg, system), "leg laid"),
        Fact(
            written_quantity(outcome.throat, system),
            "throat of the leg asked" if found.job.is_fillet else "effective throat",
        ),
        Fact(written_quantity(outcome.bead, system), "bead section"),
        Fact(written_quantity(outcome.metal, system), "weld metal"),
        Fact(written_quantity(outcome.wire_mass, system), "wire, whole job"),
        Fact(written_quantity(outcome.arc_time, system), "arc time, whole job"),
    ]
    return tuple(fact for fact in facts if fact.value != "–")


def melted_facts(found: DialIn) -> tuple[Fact, ...]:
    """Return penetration and dilution, or why there is no estimate; empty without a set point."""
    outcome, system = found.outcome, found.job.units
    if outcome is None:
        return ()
    depth, share = outcome.penetration, outcome.dilution
    if depth.value is None:
        return (Fact("–", _lower(depth.name), reason(depth.low_by, system)),)
    room = f"{written_room(depth, system)} {units.symbol(depth.measure, system)}"
    if depth.low_by is not None:
        room = f"{room}; {worded(depth.low_by, system)}"
    facts = [Fact(f"≈ {written_quantity(depth, system)}", _lower(depth.name), room)]
    if share.value is not None and share.low is not None and share.high is not None:
        room = f"{share.low:.0%}–{share.high:.0%}"
        facts.append(Fact(f"≈ {share.value:.0%}", "base metal in the bead", room))
    return tuple(facts)


def _lower(text: str) -> str:
    return f"{text[0].lower()}{text[1:]}"


def _origin(key: str, quantity: Quantity, system: System) -> Origin:
    sources = tuple(SOURCES[s] for s in dict.fromkeys(quantity.sources) if s in SOURCES)
    return Origin(key, quantity.name, written_quantity(quantity, system), sources)


def origins(found: DialIn) -> Iterator[Origin]:
    """Yield how each number was got, in the order shown."""
    system = found.job.units
    for quantity in found.settings.all():
        yield _origin(quantity.measure, quantity, system)
    transfer = found.plan.transfer
    yield Origin("passes", "Passes", str(found.plan.passes),
                 (SOURCES["aisc-one-pass"], SOURCES["aws-d1.1-5.1"]))  # fmt: skip
    yield Origin("transfer", "Transfer", f"{NAMES[transfer]}: {worded(found.plan.reason, system)}",
                 (SOURCES["mig-handbook-1-2"], SOURCES["supplier-transition"]))  # fmt: skip
    outcome = found.outcome
    if outcome is not None:
        heat = outcome.heat_en if system == "si" else outcome.heat
        for key, quantity in (
            ("current", outcome.current),
            ("heat", heat),
            ("laid", outcome.laid),
            ("gas_flow", outcome.gas_flow),
            ("leg", outcome.leg),
            ("throat", outcome.throat),
            ("bead", outcome.bead),
            ("metal", outcome.metal),
            ("wire_mass", outcome.wire_mass),
            ("arc_time", outcome.arc_time),
            ("penetration", outcome.penetration),
            ("dilution", outcome.dilution),
        ):
            if quantity.value is not None:
                yield _origin(key, quantity, system)
    torch = found.torch
    yield Origin("torch", "Gun, tip and roll", torch.way, (SOURCES[torch.source],))
