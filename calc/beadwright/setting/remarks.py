"""What the welder is told beside the numbers: what is out, what the code says, what can hurt."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.job.job import Job
from beadwright.job.joint_remarks import joint_remarks
from beadwright.layers.bead_limits import COLD_LAP_M
from beadwright.process.filter_shade import least_shade
from beadwright.process.gas_notes import gas_notes
from beadwright.process.published_range import published_notes
from beadwright.process.transfer import NAMES, gas_refused
from beadwright.process.wire_remarks import wire_remarks
from beadwright.results import Note
from beadwright.setting.heat_fight import heat_fight
from beadwright.setting.outcome import Outcome, Settings
from beadwright.setting.plan import Plan
from beadwright.setting.size_limits import bead_room
from beadwright.setting.usual_range import usual_notes
from beadwright.tolerance import REL_TOL

_IN = 0.0254
_ORDER = {"stop": 0, "out": 1, "caution": 2, "note": 3}

_FIELD = {"Wire feed": "wfs", "Volts at the arc": "volts", "Tip to work": "ctwd",
          "Travel": "travel"}  # fmt: skip


def _length(value: float, job: Job) -> str:
    return f"{units.show(value, 'leg', job.units)} {units.symbol('leg', job.units)}"


def remarks(job: Job, plan: Plan, settings: Settings, outcome: Outcome | None) -> tuple[Note, ...]:
    """Return the notes on an answer, loudest first.

    Args:
        job: The job [-].
        plan: Its plan [-].
        settings: Its settings [-].
        outcome: What they make, or None without a set point [-].
    """
    notes = [
        *_shut(job, plan),
        *_outside(job, settings),
        *joint_remarks(job, plan.shape, plan.passes),
        *usual_notes(job, plan.transfer, settings),
        *_laid(job, plan, outcome),
        *_mode(job, plan, outcome),
        *_cautions(job, outcome),
        *published_notes(job.wire, outcome.current.value if outcome is not None else None),
    ]
    return tuple(sorted(notes, key=lambda note: _ORDER[note.level]))


def _shut(job: Job, plan: Plan) -> Iterator[Note]:
    if plan.refused:
        what = "No spray here" if job.wire.traits.shorts else "Not this wire"
        if gas_refused(job.wire, job.gas) == plan.refused:
            what = "Wrong gas"
        yield Note("stop", f"{what}: {plan.refused}.", "mig-handbook-1-2", "transfer")
    elif plan.heat_fight is not None:
        yield heat_fight(job, plan.heat_fight)
    elif not plan.feeds.open:
        low, high = plan.feeds.low_limit, plan.feeds.high_limit
        yield Note("stop", f"Two limits fight: {low.text}; but {high.text}.", low.source, "wfs")


def _outside(job: Job, settings: Settings) -> Iterator[Note]:
    for quantity in settings.all():
        if quantity.value is None or quantity.inside:
            continue
        below = quantity.low is not None and quantity.value < quantity.low
        edge = quantity.low if below else quantity.high
        assert edge is not None  # outside means one end is there and passed
        unit = units.symbol(quantity.measure, job.units)
        side = "below" if below else "above"
        why = quantity.low_by if below else quantity.high_by
        yield Note(
            "out",
            f"{quantity.name} {units.show(quantity.value, quantity.measure, job.units)} is {side} "
            f"{units.show(edge, quantity.measure, job.units)} {unit}: {why}.",
            field=_FIELD[quantity.name],
        )


def _laid(job: Job, plan: Plan, outcome: Outcome | None) -> Iterator[Note]:
    if outcome is None or outcome.leg.value is None:
        return
    laid, wanted = outcome.leg.value, plan.shape.leg_m
    if abs(laid - wanted) > 1 / 32 * _IN:
        word = "over" if laid > wanted else "under"
        yield Note(
            "note" if _still_the_joint(job, plan, outcome) else "out",
            f"This feed and travel lay {_length(laid, job)} leg, {word} the "
            f"{_length(wanted, job)} asked.",
            "mass-balance",
            "travel",
        )


def _still_the_joint(job: Job, plan: Plan, outcome: Outcome) -> bool:
    most, least = bead_room(job, plan.shape, plan.passes)
    bead = outcome.bead.value
    return bead is not None and least * (1 - REL_TOL) <= bead <= most * (1 + REL_TOL)


def _mode(job: Job, plan: Plan, outcome: Outcome | None) -> Iterator[Note]:
    if outcome is not None and outcome.transfer != plan.transfer:
        yield Note(
            "out",
            f"At this set point the arc runs {NAMES[outcome.transfer].lower()}; "
            f"the windows are for {NAMES[plan.transfer].lower()}.",
            "machinery-31-t5",
            "volts",
        )
    if plan.transfer == "short":
        yield Note(
            "caution",
            "Short circuit has no prequalified procedure in AWS D1.1: "
            "structural work needs a qualified one.",
            "aws-d1.1-short",
            "transfer",
        )
        if job.thinner_m > COLD_LAP_M + REL_TOL:
            yield Note(
                "caution",
                "Over 3/16 in, short circuit can lie on the plate without "
                "fusing. Prove it: cut and etch a coupon.",
                "practice",
                "transfer",
            )
    if plan.transfer == "globular":
        yield Note(
            "caution",
            "Globular: expect spatter and deep, rough beads. Flat and horizontal only.",
            "practice",
            "transfer",
        )
    if plan.transfer == "pulse":
        yield Note(
            "note",
            "Pulse: the current is a mean, and the machine sets its own volts. "
            "Heat is worked with the open-arc volts: trust a power reading first.",
            "practice",
            "volts",
        )
    yield Note(
        "note",
        "Volts are at the arc. A meter on the machine reads cable and clamp drop on top, often "
        "1 to 3 V.",
        "practice",
        "volts",
    )
    amps = outcome.current.value if outcome is not None else None
    yield from wire_remarks(job.wire, job.gas, job.position, plan.transfer, amps)
    if abs(job.plate_m - job.plate2_m) > 0.25 * job.plate_m:
        yield Note("note", "Unequal plates: lean the arc to the thicker one.", "practice", "plate2")


def _cautions(job: Job, outcome: Outcome | None) -> Iterator[Note]:
    yield Note(
        "caution",
        "Starting points. Prove them on a coupon; your written procedure, local "
        "code and licensed people rule.",
        "practice",
    )
    amps = outcome.current.value if outcome is not None else None
    shade = least_shade(amps if amps is not None else 200.0)
    yield Note(
        "caution",
        f"Filter shade {shade} at the least, darker is usual. Cover skin. Keep "
        "your head out of the plume and pull the fume away; strip zinc and paint first.",
        "osha-1910.133",
    )
    yield from gas_notes(job.gas, outcome.flow if outcome is not None else None)
