"""What the card shows, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from beadwright import units
from beadwright.card.card_page import CardAnswer
from beadwright.inspection.inspected import Check
from beadwright.joint.joints import TEE_GROOVES, Dimension
from beadwright.passes.pass_beads import ROLE_NAMES, Bead
from beadwright.process.transfer import NAMES
from beadwright.results import Quantity
from beadwright.temperatures import show_temperature
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.drawings.passes_drawing import PassDrawing, draw_passes
from beadwright_site.pages.card.form import ACCEPTS
from beadwright_site.parts.cited_notes import CitedNote, cited_notes
from beadwright_site.parts.job_card import wire_name
from beadwright_site.written import written, written_quantity, written_room

MOST_CAUTIONS = 3
"""Cautions printed; of more their number is said."""


MOST_CHARACTERS, CHARACTERS_A_ROW = 800, 90
"""Small print a card takes at its usual size, and how much of it a row of beads takes the room
of."""


@dataclass(frozen=True, slots=True)
class Setting:
    """One setting, large, with the room it has."""

    name: str
    value: str
    unit: str
    room: str


@dataclass(frozen=True, slots=True)
class PartRow:
    """The beads that do one thing, as a row."""

    beads: str
    what: str
    feed: str
    volts: str
    travel: str
    work: str


def settings_of(found: CardAnswer) -> tuple[Setting, ...]:
    """Return the four settings with their windows; none if no setting holds the job."""
    system = found.units
    if not found.found.open:
        return ()
    return tuple(
        Setting(
            each.name,
            units.show(each.value, each.measure, system) if each.value is not None else "–",
            units.symbol(each.measure, system) if each.value is not None else "by the pulse",
            written_room(each, system),
        )
        for each in found.dialled.settings.all()
    )


def part_rows(found: CardAnswer) -> Iterator[PartRow]:
    """Yield a row for each part of the weld, in welding order."""
    for beads in found.parts:
        yield _row(beads, found.units)


def _row(beads: Sequence[Bead], system: System) -> PartRow:
    first, last = beads[0].number, beads[-1].number
    laid = [bead.laid for bead in beads if bead.laid is not None]
    side = f", side {beads[0].side}" if beads[0].side > 1 else ""
    what = ROLE_NAMES[beads[0].role].removeprefix("The ").capitalize() + side
    volts = [each.point.volts for each in laid if each.transfer != "pulse"]
    return PartRow(
        str(first) if first == last else f"{first}–{last}",
        what,
        _ends([each.point.feed_m_s for each in laid], "wire_feed", system),
        _ends(volts, "volts", system),
        _ends([each.travel_m_s for each in laid], "travel", system),
        f"{_ends([bead.work_deg for bead in beads], 'angle', system)}°",
    )


def _ends(values: Sequence[float], measure: str, system: System) -> str:
    if not values:
        return "–"
    low, high = (units.show(value, measure, system) for value in (min(values), max(values)))
    return low if low == high else f"{low}–{high}"


def facts_of(found: CardAnswer) -> Iterator[tuple[str, str]]:
    """Yield name and value of what is set up, held and heated."""
    dialled, system, heat = found.dialled, found.units, found.heat
    job, torch, outcome = dialled.job, dialled.torch, dialled.outcome
    kind = job.wire.type
    yield "Wire", f"{wire_name(dialled)}, {kind.polarity}, {kind.drive_roll.lower()} roll"
    flow = ""
    if outcome is not None:
        gas = outcome.gas_flow
        flow = f", {_with_room(gas, system)}"
    yield "Gas", f"{job.gas.name}{flow}"
    yield from _running(found)
    low, usual, high = torch.travel_angle
    yield "Gun", f"{torch.way} {usual:.0f}° ({low:.0f}–{high:.0f})"
    low, usual, high = torch.work_angle
    off = "bottom plate" if job.is_fillet or job.joint in TEE_GROOVES else "plate"
    yield f"From the {off}", f"{usual:.0f}° ({low:.0f}–{high:.0f})"
    yield "Aim", worded(torch.aim, system)
    if len(found.found.beads) > 1:
        yield "Stickout (tip to work)", _with_room(dialled.settings.tip_to_work, system)
    grade = heat.steel.grade
    yield "Steel", grade.name if grade is not None else "as certified"
    needed = heat.needed.kelvin
    warm = f"{show_temperature(needed, system)} at least" if needed is not None else "see Heat"
    yield "Preheat", warm
    yield "Interpass", f"{show_temperature(heat.interpass_k, system)} at most"
    length = written(job.weld_length_m, "length", system)
    yield "Welds", f"{job.welds} × {length}" if not job.is_round else str(job.welds)


def _running(found: CardAnswer) -> Iterator[tuple[str, str]]:
    """Yield mode, current and heat: of the one pass, or of all beads from least to most."""
    laid = [bead.laid for bead in found.found.beads if bead.laid is not None]
    system, outcome = found.units, found.dialled.outcome
    if not laid or outcome is None:
        return
    modes = dict.fromkeys(NAMES[each.transfer] for each in laid)
    yield "Transfer", ", then ".join(modes)
    amps = f"≈ {_ends([each.point.current_a for each in laid], 'current', system)} A"
    if len(laid) == 1:
        amps = f"{amps} ({written_room(outcome.current, system)})"
    yield "Current", amps
    si = system == "si"
    heat = max(each.heat_en_j_m if si else each.heat_j_m for each in laid)
    most = "at most " if len(laid) > 1 else ""
    yield (
        "Heat input",
        f"{most}{written(heat, 'heat_input', system)}{' EN × 0.8' if si else ' AWS'}",
    )


def _with_room(quantity: Quantity, system: System) -> str:
    room = written_room(quantity, system)
    return f"{written_quantity(quantity, system)}{f' ({room})' if room else ''}"


def picture_of(found: CardAnswer) -> PassDrawing:
    """Return the joint with every bead."""

    def write(dimension: Dimension) -> str:
        return units.show(dimension.value_m, "leg", found.units)

    return draw_passes(found.found, len(found.found.beads), write)


def limit_lines(found: CardAnswer) -> Iterator[str]:
    """Yield each limit in a few words; what is not accepted at all in one line."""
    none: list[str] = []
    for check in found.limits:
        name = worded(check.phrase, found.units)
        if check.way == "none":
            none.append(name)
        elif check.limit != float("inf"):
            yield _limit(name, check, found.units)
    if none:
        yield f"none of: {', '.join(none)}"


def _limit(name: str, check: Check, system: System) -> str:
    measure = "length" if check.measure == "small_length" and system == "us" else check.measure
    word = "at least" if check.way == "least" else "at most"
    return f"{name} {word} {written(check.limit, measure, system)}"


def cautions_of(found: CardAnswer) -> tuple[tuple[CitedNote, ...], int]:
    """Return the cautions printed, the most severe first, and how many more there are."""
    told = cited_notes(found.notes, found.units)
    return told[:MOST_CAUTIONS], max(0, len(told) - MOST_CAUTIONS)


def judged_by(found: CardAnswer) -> str:
    """Return what the weld is judged by, in words."""
    [(name, under)] = [(name, under) for key, name, under in ACCEPTS if key == found.query.accept]
    return f"{name}, {under}"


def is_tight(found: CardAnswer) -> bool:
    """Return whether a card has so much to say that its type is set smaller."""
    said = sum(map(len, limit_lines(found))) + len(found.query.says.card_note or "")
    said += sum(len(note.text) for note in cautions_of(found)[0])
    rows = len(found.parts) if len(found.found.beads) > 1 else 0
    return said + CHARACTERS_A_ROW * rows > MOST_CHARACTERS


def proof_line(found: CardAnswer) -> str:
    """Return what proves the card, in a line; empty if nothing does."""
    says = found.query.says
    if not says.proved_mark:
        return ""
    by = f", welded by {says.proved_by}" if says.proved_by else ""
    on = f", {says.proved_on}" if says.proved_on else ""
    return f"{says.proved_mark}{by}{on}"
