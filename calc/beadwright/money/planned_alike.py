"""A later way planned as the first is run: what is held equal, and whether it could be."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from beadwright.errors import FieldErrors
from beadwright.money.asked_way import AskedWay
from beadwright.money.compared_entries import Compared
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.burnoff import constants_of
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.run_alike import FirstRun, HeldEqual, run_alike, usual_alike


@dataclass(frozen=True, slots=True)
class PlannedAlike:
    """How a later way is planned beside the first.

    Attributes:
        compared: What is held equal, or that its own run was measured.
        dialled: Its dial-in.
        band: How far what it lays may be off because its feed is worked out from the amps of
            another wire: the bands of both [-].
        phrase: The same in words, to stand behind the two names.
    """

    compared: Compared
    dialled: DialIn
    band: float
    phrase: Phrase


def planned_alike(asked: AskedWay, first: FirstRun, compared: Compared | None) -> PlannedAlike:
    """Return how a later way is planned. What is typed of its own run stands before all else.

    Args:
        asked: What the way says [-].
        first: How the first way is run [-].
        compared: What the shop wants held equal, or None for what such ways are compared at [-].

    Raises:
        FieldErrors: If it is to be compared as measured and nothing of it was.
    """
    job, hand = asked.job, asked.job.by_hand
    weighed = asked.tested.laid is not None or asked.tested.arc_min is not None
    if weighed or hand.wire_feed_m_s is not None or hand.travel_m_s is not None:
        key = "money.as-measured" if weighed else "money.as-typed"
        return PlannedAlike("measured", dial_in(job), band=0.0, phrase=say(key))
    if compared == "measured":
        text = (
            "Compared as measured, and nothing of this way is: write its laid metal, arc time, "
            "feed or travel, or choose how else to compare."
        )
        raise FieldErrors({f"{asked.prefix}laid": [text]})
    run = run_alike(job, first, compared or usual_alike(job, first.dialled.job))
    point, wire = run.dialled.point, first.dialled.job.wire
    bands = (constants_of(of.wire).band for of in (job, first.dialled.job))
    differs = (wire.type, wire.size) != (job.wire.type, job.wire.size)
    return PlannedAlike(
        run.alike,
        run.dialled,
        band=hypot(*bands) if run.alike == "equal-amps" and differs else 0.0,
        phrase=_phrase(run.alike, first, None if run.reached or point is None else point.current_a),
    )


def _phrase(alike: HeldEqual, first: FirstRun, instead_a: float | None) -> Phrase:
    if alike == "as-run":
        return say("money.each-as-run")
    if alike == "equal-amps":
        current = Amount(first.current_a, "current")
        if instead_a is None:
            return say("money.at-equal-amps", current=current)
        return say("money.not-at-those-amps", current=current, own=Amount(instead_a, "current"))
    travel = Amount(first.travel_m_s, "travel")
    if instead_a is None:
        return say("money.at-equal-travel", travel=travel)
    return say("money.not-at-that-travel", travel=travel)
