"""The joint card: the picture to scale and the job in a few words."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright import units
from beadwright.job.job_joint import hole_m, told_leg
from beadwright.job.weld_symbol import weld_symbol
from beadwright.joint.joints import BUTTS, Dimension
from beadwright.setting.dial_in import DialIn
from beadwright_site.drawings.joint_drawing import JointDrawing, draw_joint
from beadwright_site.drawings.symbol_drawing import SymbolDrawing, draw_symbol, standard_of
from beadwright_site.drawings.symbol_texts import Standard
from beadwright_site.forms.joint_form import JOINT_NAMES
from beadwright_site.written import written


@dataclass(frozen=True, slots=True)
class JobCard:
    """The card.

    Attributes:
        drawing: The joint to scale.
        spoken: The picture in words.
        rows: Name and value of what the job is.
        joint: Joint, plate and size in a line.
        line: The job in one line.
    """

    drawing: JointDrawing
    spoken: str
    rows: tuple[tuple[str, str], ...]
    joint: str
    line: str


def _plates(found: DialIn) -> str:
    job = found.job
    if abs(job.plate_m - job.plate2_m) < 1e-9:
        return written(job.plate_m, "leg", job.units)
    joiner = " to " if job.joint in BUTTS else " under "
    first = units.show(job.plate_m, "leg", job.units)
    return f"{first}{joiner}{written(job.plate2_m, 'leg', job.units)}"


def _weld(found: DialIn) -> tuple[str, str, str]:
    """What the weld's size is called, the size, and both in a sentence."""
    job, shape = found.job, found.plan.shape
    if job.is_fillet:
        wanted = told_leg(job, found.plan.wanted_leg_m)
        leg = written(wanted, "leg", job.units)
        if job.edges.leg2_m is not None:
            leg = f"{units.show(wanted, 'leg', job.units)} × " + written(
                job.edges.leg2_m, "leg", job.units
            )
        return "Leg", leg, f"leg {leg}"
    if job.is_round:
        hole = written(hole_m(job), "leg", job.units)
        return "Hole", hole, f"hole {hole}"
    if not shape.complete:
        throat = f"throat {written(shape.throat_m, 'leg', job.units)}"
        return "Size", throat, throat
    gap = written(shape.gap_m, "leg", job.units) if shape.gap_m else "none"
    return "Root opening", gap, f"root opening {gap}"


def _joint_name(found: DialIn) -> str:
    edges, name = found.job.edges, JOINT_NAMES[found.job.joint]
    if found.job.joint == "corner" and edges.corner != "open":
        return "Half-open corner" if edges.corner == "half" else "Closed corner"
    skew = found.job.skew_deg
    return f"{name} {skew:g}°" if skew != 90 else name


def wire_name(found: DialIn) -> str:
    """Return the wire as called in the shop: classification and size."""
    wire = found.job.wire
    size = wire.size.removesuffix("in") if found.job.units == "us" else wire.metric_size
    return f"{wire.type.name} {size.replace('mm', ' mm')}"


def _joint_line(found: DialIn) -> str:
    return f"{_joint_name(found)}, {found.job.position_name}"


def weld_line(found: DialIn) -> str:
    """Return joint, plate and size in a line, without drawing them.

    Args:
        found: The answer.
    """
    _, _, said = _weld(found)
    return f"{_joint_line(found)}, plate {_plates(found)}, {said}"


def job_card(found: DialIn) -> JobCard:
    """Return the card of an answer.

    Args:
        found: The answer.
    """
    job = found.job

    def write(dimension: Dimension) -> str:
        leg = dimension.name == "leg"
        shown = told_leg(job, dimension.value_m) if leg else dimension.value_m
        return units.show(shown, "leg", job.units)

    drawing = draw_joint(found.plan.shape, write)
    joint = _joint_line(found)
    weld, size, said = _weld(found)
    rows = (
        ("Joint", joint),
        ("Plate", _plates(found)),
        (weld, size),
        ("Wire", wire_name(found)),
        ("Gas", f"{job.gas.name} · {job.gas.iso_group}"),
    )
    spoken = f"{joint}, to scale. Plate {_plates(found)}, {said}."
    made_with = f"{wire_name(found)}, {job.gas.name}"
    whole = weld_line(found)
    return JobCard(drawing, spoken, rows, whole, f"{whole}, {made_with}")


def weld_symbols(found: DialIn, *, both: bool = False) -> tuple[SymbolDrawing, ...]:
    """Return the weld symbol to the standard of the job's units, and to the other if both.

    Args:
        found: The answer.
        both: True for both standards.
    """
    system = found.job.units
    symbol = weld_symbol(found.job, found.plan.shape)
    own = standard_of(system)
    other: Standard = "ISO 2553" if own == "AWS A2.4" else "AWS A2.4"
    wanted = (own, other) if both else (own,)
    return tuple(draw_symbol(symbol, standard, system) for standard in wanted)
