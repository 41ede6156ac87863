"""Notes beside the numbers: what is out of its window, what the code says, what can hurt."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.job import Job
from beadwright.job.joint_remarks import joint_remarks
from beadwright.layers.bead_limits import COLD_LAP_M, root_wants_backing, shorted_root
from beadwright.measures import INCH_M
from beadwright.phrases import Amount, say
from beadwright.process.filter_shade import least_shade
from beadwright.process.gas_notes import gas_notes
from beadwright.process.published_range import published_notes
from beadwright.process.transfer import MODE_PHRASES, Transfer, gas_refused, transition_current
from beadwright.process.wire_remarks import wire_remarks
from beadwright.results import Note, severest_first
from beadwright.setting.aims import balanced_current
from beadwright.setting.heat_fight import heat_fight
from beadwright.setting.machine_limits import SOURCE_LIMITS
from beadwright.setting.outcome import SETTING_PHRASES, Outcome, Settings
from beadwright.setting.plan import Plan
from beadwright.setting.side_remarks import side_remarks
from beadwright.setting.size_limits import bead_room
from beadwright.setting.usual_range import usual_notes
from beadwright.setting.ways_out import DOWNHILL_TO_M
from beadwright.tolerance import REL_TOL, SAME_PLATE

UNSURE_CO2 = 0.18
"""CO2 from which the start of spray is not sure to a fifth [volume share].

Source: one measurement in 80/20 wants 330-350 A where a supplier's table has 255 A."""


_FIELD = {"wire_feed": "wfs", "volts": "volts", "tip_to_work": "ctwd", "travel": "travel"}
"""The field of each setting, by its measure."""


def remarks(job: Job, plan: Plan, settings: Settings, outcome: Outcome | None) -> tuple[Note, ...]:
    """Return the notes on an answer, the most severe first.

    Args:
        job: The job [-].
        plan: Its plan [-].
        settings: Its settings [-].
        outcome: What they make, or None without a set point [-].
    """
    notes = [
        *_shut(job, plan),
        *side_remarks(job, plan),
        *_machine(plan),
        *_outside(job, settings),
        *joint_remarks(job, plan.shape, plan.passes),
        *usual_notes(job, plan.transfer, settings),
        *_meter(job, settings),
        *_laid(job, plan, outcome),
        *_sheet(job),
        *_mode(job, plan, outcome),
        *_cautions(job, outcome),
        *published_notes(job.wire, outcome.current.value if outcome is not None else None),
    ]
    return severest_first(notes)


def _shut(job: Job, plan: Plan) -> Iterator[Note]:
    if plan.refused is not None:
        if gas_refused(job.wire, job.gas) == plan.refused:
            told = say("setting.wrong-gas", why=plan.refused)
        elif job.wire.traits.shorts:
            told = say("setting.no-spray-here", why=plan.refused)
        else:
            told = say("setting.not-this-wire", why=plan.refused)
        yield Note("stop", told, "mig-handbook-1-2", "transfer")
    elif plan.heat_fight is not None:
        yield heat_fight(job, plan.shape, plan.heat_fight)
    elif not plan.feeds.open:
        low, high = plan.feeds.low_limit, plan.feeds.high_limit
        told = say("setting.two-limits-fight", low=low.why, high=high.why)
        yield Note("stop", told, low.source, "wfs")


def _meter(job: Job, settings: Settings) -> Iterator[Note]:
    """What to set where the machine's meter is known to read otherwise than the arc."""
    own, volts = job.wire.own, settings.volts.value
    if own is None or own.volts_v is None or volts is None:
        return
    told = say(
        "setting.meter-reads",
        meter=Amount(volts + own.volts_v, "volts"),
        arc=Amount(volts, "volts"),
    )
    yield Note("note", told, "own-coupons", "volts")


def _machine(plan: Plan) -> Iterator[Note]:
    """Say so where the power source holds the plan under what a hand would set."""
    top = plan.run.currents.high_limit
    if not plan.open or top.key not in SOURCE_LIMITS:
        return
    usual = balanced_current(plan)
    if usual > top.high * (1 - REL_TOL):
        told = say("setting.machine-binds", why=top.why, usual=Amount(usual, "current"))
        yield Note("caution", told, top.source, "machine_amps")


def _outside(job: Job, settings: Settings) -> Iterator[Note]:
    for quantity in settings.all():
        if quantity.value is None or quantity.inside:
            continue
        below = quantity.low is not None and quantity.value < quantity.low
        edge = quantity.low if below else quantity.high
        assert edge is not None  # outside means one end is there and passed
        why = quantity.low_by if below else quantity.high_by
        assert why is not None  # whatever binds an end of a window says why
        told = say(
            "setting.below-window" if below else "setting.above-window",
            setting=SETTING_PHRASES[quantity.measure],
            value=Amount(quantity.value, quantity.measure),
            edge=Amount(edge, quantity.measure),
            why=why,
        )
        yield Note("out", told, field=_FIELD[quantity.measure])


def _laid(job: Job, plan: Plan, outcome: Outcome | None) -> Iterator[Note]:
    if outcome is None or outcome.leg.value is None:
        return
    laid, wanted = outcome.leg.value, plan.shape.leg_m
    if abs(laid - wanted) > 1 / 32 * INCH_M:
        key = "setting.lays-over" if laid > wanted else "setting.lays-under"
        yield Note(
            "note" if _still_the_joint(job, plan, outcome) else "out",
            say(key, laid=Amount(laid, "leg"), wanted=Amount(wanted, "leg")),
            "mass-balance",
            "travel",
        )


def _still_the_joint(job: Job, plan: Plan, outcome: Outcome) -> bool:
    most, least = bead_room(job, plan.shape, plan.passes)
    bead = outcome.bead.value
    return bead is not None and least * (1 - REL_TOL) <= bead <= most * (1 + REL_TOL)


def _sheet(job: Job) -> Iterator[Note]:
    """Which code would rule where AWS D1.1 has not begun."""
    if job.is_sheet:
        yield Note("caution", say("setting.sheet-code"), "aws-d1.3-scope", "plate")


def _mode(job: Job, plan: Plan, outcome: Outcome | None) -> Iterator[Note]:
    if outcome is not None and outcome.transfer != plan.transfer:
        yield mode_note(outcome.transfer, plan.transfer)
    if plan.transfer == "short":
        key = "setting.short-on-sheet" if job.is_sheet else "setting.short-not-prequalified"
        yield Note("caution", say(key), "aws-d1.1-short", "transfer")
        if job.thinner_m > COLD_LAP_M + REL_TOL:
            yield Note(
                "caution",
                say("setting.short-may-not-fuse"),
                "practice",
                "transfer",
            )
        if (
            job.position.orientation == "vertical-down"
            and job.thinner_m > DOWNHILL_TO_M * SAME_PLATE
        ):
            yield Note("stop", say("setting.downhill-laps-cold"), "practice", "position")
    elif job.position.orientation == "horizontal" and not job.is_fillet and not job.is_round:
        told = say("setting.horizontal-groove-as-flat")
        yield Note("caution", told, "practice", "position")
    if plan.transfer == "short" and plan.shape.gouged:
        asked = job.transfer == "short"
        key = "setting.gouge-short-asked" if asked else "setting.gouge-not-shorted"
        yield Note("stop" if asked else "caution", say(key), "practice", "back")
    if root_wants_backing(job, plan.shape):
        told = say("setting.cored-root-wants-backing", kind=job.wire.traits.phrase)
        yield Note("stop", told, "practice", "backing")
    if plan.transfer in ("spray", "globular") and falls_through(job, plan):
        told = say("setting.short-root-not-prequalified")
        yield Note("caution", told, "aws-d1.1-short", "transfer")
        told = say("setting.root-falls-through", mode=MODE_PHRASES[plan.transfer])
        # Asked for, it is refused; where the choice is ours these settings are for the beads after.
        yield Note("stop" if job.transfer == "spray" else "caution", told, "practice", "gap")
    if plan.transfer == "spray" and not job.wire.traits.cored and job.gas.co2 >= UNSURE_CO2:
        least = Amount(transition_current(job.wire, job.gas), "current")
        told = say("setting.top-of-spray-gas", gas=job.gas.name, least=least)
        yield Note("caution", told, "spray-video", "gas")
    if plan.transfer == "globular":
        yield Note(
            "caution",
            say("setting.globular-spatters"),
            "practice",
            "transfer",
        )
    if plan.transfer == "pulse":
        yield Note(
            "note",
            say("setting.pulse-is-a-mean"),
            "practice",
            "volts",
        )
    yield Note(
        "note",
        say("setting.volts-at-the-arc"),
        "practice",
        "volts",
    )
    amps = outcome.current.value if outcome is not None else None
    yield from wire_remarks(job.wire, job.gas, job.position, plan.transfer, amps)
    if abs(job.plate_m - job.plate2_m) > 0.25 * job.plate_m:
        yield Note("note", say("setting.lean-to-thicker"), "practice", "plate2")


def mode_note(mode: Transfer, planned: Transfer) -> Note:
    """Return the note on a set point that runs in another mode than the one planned.

    Args:
        mode: The mode it runs in [-].
        planned: The mode its windows are for [-].
    """
    told = say("setting.other-mode", mode=MODE_PHRASES[mode], planned=MODE_PHRASES[planned])
    return Note("out", told, "machinery-31-t5", "volts")


def falls_through(job: Job, plan: Plan) -> bool:
    """Return whether an open arc would fall through the root of a job.

    Source: common practice; flux-cored wire holds its pool on a backing only and is told by its
    joint.

    Args:
        job: The job [-].
        plan: Its plan [-].
    """
    return shorted_root(job, plan.shape, plan.transfer)


def _cautions(job: Job, outcome: Outcome | None) -> Iterator[Note]:
    yield Note(
        "caution",
        say("setting.starting-points"),
        "practice",
    )
    amps = outcome.current.value if outcome is not None else None
    shade = least_shade(amps if amps is not None else 200.0)
    yield Note(
        "caution",
        say("setting.filter-shade", shade=shade),
        "osha-1910.133",
    )
    yield from gas_notes(job.gas, outcome.flow if outcome is not None else None)
