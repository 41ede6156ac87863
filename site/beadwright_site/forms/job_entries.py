"""The entries of a job: every key of its query, what a blank means, what was wrong."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from beadwright import units
from beadwright.errors import UnknownEntryError
from beadwright.job.job_entries import FIELDS
from beadwright.joint.joint_entries import JOINT_KEYS, entries_of
from beadwright.joint.joints import FILLETS, JOINTS, JointKind
from beadwright.process.gas_flow import NOZZLES
from beadwright.process.positions import POSITIONS, position_of
from beadwright.process.transfer import NAMES
from beadwright.setting.aims import AIMS
from beadwright.setting.dial_in import DialIn
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.forms.entries import Choices, Entry, Option, options_of
from beadwright_site.forms.filling import LENGTHS, Filling
from beadwright_site.forms.gas_options import gas_options
from beadwright_site.forms.joint_form import JOINT_NAMES, joint_blanks, name_on
from beadwright_site.forms.wire_options import size_options, wire_choices

JOINT = (
    "joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "gap", "angle", "root_face",
    "depth", "depth2", "backing", "back", "gouge_depth", "hole", "slot_length",
)  # fmt: skip
"""Entries of the joint itself, for pages that ask a job among other things."""


def _choices(key: str, system: System, fillet: bool) -> Choices:
    """Value, word and a word under it, for each choice of an entry; empty for a text entry."""
    if key == "units":
        return (("us", "US", "in, lb, ft³/h"), ("si", "Metric", "mm, kg, L/min"))
    if key == "joint":
        return [(name, word, "") for name, word in JOINT_NAMES.items()]
    if key == "corner":
        return (("open", "Open", "edge to edge"), ("half", "Half open", "half covered"),
                ("closed", "Closed", "edge covered"))  # fmt: skip
    if key == "backing":
        return [(name, name.capitalize(), "") for name in ("none", "steel", "copper", "ceramic")]
    if key == "back":
        return (("", "Usual", "gouged if beveled both sides"), ("open", "Open", "left as it is"),
                ("gouge", "Gouged", "to sound metal"))  # fmt: skip
    if key == "position":
        return [
            (place.name(fillet), place.name(fillet),
             f"{place.orientation} {place.iso_fillet if fillet else place.iso_groove}")
            for place in POSITIONS.values()
        ]  # fmt: skip
    if key == "wire":
        return wire_choices()
    if key == "nozzle":
        return [("", "Auto", "by current"), *((n, n.removesuffix("in"), "") for n in NOZZLES)]
    if key == "transfer":
        modes = [("auto", "Auto", "as wire, gas and plate ask")]
        return [*modes, *((m, NAMES[m], "") for m in ("short", "spray", "pulse"))]
    if key == "aim":
        return [(aim, worded(name, "us"), "") for aim, name in AIMS.items()]
    if key == "travel_by":
        return (("hand", "Hand", ""), ("track", "Track", ""), ("robot", "Robot", ""))
    return ()


def _chosen(found: DialIn) -> dict[str, str]:
    """What an understood job chose, whichever way it was written."""
    job = found.job
    return {
        "units": job.units,
        "joint": job.joint,
        "corner": job.edges.corner,
        "backing": job.edges.backing,
        "back": job.edges.back or "",
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
    words |= joint_blanks(job, found.plan.shape)
    for key, quantity in zip(("wfs", "volts", "travel", "ctwd"), found.settings.all(), strict=True):
        if quantity.value is not None and not quantity.by_hand:
            words[key] = f"auto: {units.show(quantity.value, quantity.measure, job.units)}"
    return words


def _named_for(position: str, fillet: bool) -> str:
    """A position by the letter of this joint, fillet or groove; as typed if it is none."""
    try:
        return position_of(position).name(fillet)
    except UnknownEntryError:
        return position


_KINDS: Mapping[str, JointKind] = {kind: kind for kind in JOINTS}


def _joint_of(typed: Mapping[str, str]) -> tuple[JointKind, bool, frozenset[str]]:
    """The joint typed (a tee if none is known), whether its positions are a fillet's, its keys."""
    wanted = typed.get("joint", "").strip().lower()
    joint = _KINDS.get(wanted, JOINTS[0])
    corner = typed.get("corner", "").strip().lower()
    closed = joint == "corner" and corner == "closed"
    return joint, joint in FILLETS and not closed, entries_of(joint, corner)


def job_entries(
    filling: Filling, found: DialIn | None = None, keys: Iterable[str] = FIELDS
) -> dict[str, Entry]:
    """Return entries of a job by key.

    Args:
        filling: What they are filled with.
        found: The answer, or None if the entries could not be taken.
        keys: Those wanted.
    """
    typed, system = {**filling.held, **filling.typed}, filling.system
    chosen = _chosen(found) if found is not None else {}
    blanks = _blanks(found) if found is not None else {}
    joint, fillet, asked = _joint_of(typed)

    def entry(key: str) -> Entry:
        value = chosen.get(key) or typed.get(key) or FIELDS[key].default
        if key == "position":
            value = _named_for(value, fillet)
        options, other = options_of(_choices(key, system, fillet), value), None
        if key == "own":
            options = own_options(value)
        if key == "gas":
            options, other = gas_options(value)
        if key == "dia":
            options = size_options(chosen.get("wire") or typed.get("wire", ""), value, system)
        measure = FIELDS[key].measure
        errors = tuple(filling.errors.get(key, ()))
        return Entry(
            key=key,
            label=name_on(joint, key, FIELDS[key].label),
            value=value,
            blank=blanks.get(key, ""),
            unit=units.typed_unit(measure, system) if measure else "",
            fractions=measure in LENGTHS,
            options=options,
            errors=errors,
            other=other,
            hidden=key in JOINT_KEYS and key not in asked and not errors,
            lent=key == "leg" and filling.lent,
        )

    return {key: entry(key) for key in keys}


def own_options(value: str) -> tuple[Option, ...]:
    """Return the choices of the shop's own numbers: as kept or typed, or off.

    Args:
        value: What is kept or typed; empty for neither.
    """
    choices = [("", "As published", "")] if value in ("", "off") else [(value, "Use mine", "")]
    return options_of([*choices, ("off", "Off", "as published")][: 1 if not value else 2], value)


def asked_entries(entries: Mapping[str, Entry], keys: Iterable[str]) -> tuple[Entry, ...]:
    """Return those entries of a job that its joint asks, in the order of the keys."""
    return tuple(entries[key] for key in keys if not entries[key].hidden)
