"""The form of a job: every entry of the query, what a blank means, what was wrong."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from beadwright import units
from beadwright.aims import AIMS
from beadwright.dial_in import DialIn
from beadwright.fillets import minimum_leg, usual_convexity
from beadwright.gas_flow import NOZZLES
from beadwright.gases import GASES
from beadwright.positions import POSITIONS
from beadwright.preparations import SQUARE_REINFORCEMENT_M
from beadwright.schemas import DEFAULTS
from beadwright.transfer import NAMES
from beadwright.units import System
from beadwright.wires import METRIC_NAMES, WIRE_TYPES
from beadwright_site.pages.job_card import JOINT_NAMES, length
from beadwright_site.pages.typed import MEASURED, unit_text

LENGTHS = frozenset({"length", "leg", "tip_to_work"})


@dataclass(frozen=True, slots=True)
class Option:
    """One choice: the value sent, the word, a word under it."""

    value: str
    word: str
    under: str
    chosen: bool


@dataclass(frozen=True, slots=True)
class Field:
    """One entry.

    Attributes:
        key: Query key.
        label: What it is.
        value: As typed.
        blank: What a blank means.
        unit: Unit a bare number takes.
        fractions: True if shop fractions help in typing it.
        options: Choices; empty for a text entry.
        errors: What was wrong.
    """

    key: str
    label: str
    value: str
    blank: str
    unit: str
    fractions: bool
    options: tuple[Option, ...]
    errors: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Group:
    """Entries that belong together."""

    title: str
    fields: tuple[Field, ...]


GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("Joint", ("joint", "plate", "plate2", "leg", "gap", "reinforcement", "position")),
    ("Wire and gas", ("wire", "dia", "gas", "nozzle", "transfer")),
    ("By hand: blank means ours", ("wfs", "volts", "travel", "ctwd")),
    ("Torch, machine, job", ("travel_by", "machine_amps", "machine_volts", "weld_length", "welds")),
    ("Set it for", ("aim",)),
    ("Written procedure: volts × amps ÷ travel", ("heat_min", "heat_max")),
    ("Show in", ("units",)),
)
"""The form's order. Every key of ``schemas.DEFAULTS`` is in it once."""

LABELS: Mapping[str, str] = {
    "units": "Units",
    "joint": "Kind",
    "plate": "Plate lying down",
    "plate2": "Other plate",
    "leg": "Leg",
    "gap": "Gap",
    "reinforcement": "Crown",
    "position": "Position",
    "wire": "Wire",
    "dia": "Wire size",
    "gas": "Gas",
    "nozzle": "Gas nozzle",
    "transfer": "Transfer",
    "travel_by": "Torch moved by",
    "aim": "Aim",
    "heat_min": "Heat at least",
    "heat_max": "Heat at most",
    "wfs": "Wire feed",
    "volts": "Volts at the arc",
    "ctwd": "Tip to work",
    "travel": "Travel",
    "weld_length": "Length of one weld",
    "welds": "Welds in the job",
    "machine_amps": "Machine's most amps",
    "machine_volts": "Machine's most volts",
}


def _choices(key: str, system: System, fillet: bool) -> Sequence[tuple[str, str, str]]:
    """Value, word and a word under it, for each choice of an entry; empty for a text entry."""
    if key == "units":
        return (("us", "US", "in, lb, ft³/h"), ("si", "Metric", "mm, kg, L/min"))
    if key == "joint":
        return [(name, word, "") for name, word in JOINT_NAMES.items()]
    if key == "position":
        return [
            (place.name(fillet), place.name(fillet),
             f"{place.lie} {place.iso_fillet if fillet else place.iso_groove}")
            for place in POSITIONS.values()
        ]  # fmt: skip
    if key == "wire":
        return [(wire.name, wire.name, wire.kind) for wire in WIRE_TYPES.values()]
    if key == "dia":
        metric = system == "si"
        return [
            (
                inch,
                mm if metric else inch.removesuffix("in"),
                inch.removesuffix("in") if metric else mm,
            )
            for inch, mm in METRIC_NAMES.items()
        ]
    if key == "gas":
        return [(gas.name, gas.name, gas.iso_group) for gas in GASES.values()]
    if key == "nozzle":
        return [("", "Ours", "by current"), *((n, n.removesuffix("in"), "") for n in NOZZLES)]
    if key == "transfer":
        modes = [("auto", "Ours", "as wire, gas and plate ask")]
        return [*modes, *((m, NAMES[m], "") for m in ("short", "spray", "pulse"))]
    if key == "aim":
        return [(aim, word, "") for aim, word in AIMS.items()]
    if key == "travel_by":
        return (("hand", "Hand", ""), ("track", "Track", ""), ("robot", "Robot", ""))
    return ()


def _chosen(found: DialIn) -> dict[str, str]:
    """What an understood job chose, whichever way it was written."""
    job = found.job
    return {
        "units": job.units,
        "joint": job.joint,
        "position": job.position_name,
        "wire": job.wire.type.name,
        "dia": job.wire.size,
        "gas": job.gas.name,
        "transfer": job.transfer,
        "travel_by": job.travel_by,
        "aim": job.aim,
    }


def _blanks(found: DialIn) -> dict[str, str]:
    """What a blank entry means for this job."""
    job = found.job
    words = {"plate2": "the same", "heat_min": "no limit", "heat_max": "no limit"}
    for key, most in (("machine_amps", job.machine_amps_a), ("machine_volts", job.machine_volts_v)):
        words[key] = "no limit" if most is None else f"your shop's: {most:g}"
    if job.is_fillet:
        least = length(minimum_leg(job.thinner_m), job.units)
        words |= {"leg": f"code's least, {least}", "gap": "tight"}
        crown = usual_convexity(found.plan.shape.leg_m)
    else:
        gaps = [d.value_m for d in found.plan.shape.dimensions if d.name == "gap"]
        words |= {"leg": "fillets only", "gap": length(gaps[0], job.units) if gaps else "none"}
        crown = SQUARE_REINFORCEMENT_M
    words["reinforcement"] = f"the usual, {units.show(crown, 'leg', job.units)}"
    for key, quantity in zip(("wfs", "volts", "travel", "ctwd"), found.settings.all(), strict=True):
        if quantity.value is not None and not quantity.by_hand:
            words[key] = f"ours: {units.show(quantity.value, quantity.measure, job.units)}"
    return words


def _options(key: str, wanted: str, system: System, fillet: bool) -> tuple[Option, ...]:
    choices = _choices(key, system, fillet)
    options = [
        Option(value, word, under, value.lower() == wanted.lower())
        for value, word, under in choices
    ]
    if choices and not any(option.chosen for option in options):
        # What cannot be taken stays in the form until it is changed.
        options.append(Option(wanted, units.short(wanted), "not known", True))
    return tuple(options)


def job_form(
    typed: Mapping[str, str],
    system: System,
    found: DialIn | None = None,
    errors: Mapping[str, Sequence[str]] | None = None,
) -> tuple[Group, ...]:
    """Return the form filled with what was typed.

    Args:
        typed: Entries as typed.
        system: Units of bare numbers.
        found: The answer, or None if the entries could not be taken.
        errors: Messages by entry.
    """
    wrong = errors or {}
    chosen = _chosen(found) if found is not None else {}
    blanks = _blanks(found) if found is not None else {}
    fillet = typed.get("joint", DEFAULTS["joint"]).strip().lower() != "square"

    def field(key: str) -> Field:
        value = chosen.get(key) or typed.get(key) or DEFAULTS[key]
        measure = MEASURED.get(key, "")
        return Field(
            key,
            LABELS[key],
            value,
            blanks.get(key, ""),
            unit_text(measure, system) if measure else "",
            measure in LENGTHS,
            _options(key, value, system, fillet),
            tuple(wrong.get(key, ())),
        )

    return tuple(Group(title, tuple(map(field, keys))) for title, keys in GROUPS)
