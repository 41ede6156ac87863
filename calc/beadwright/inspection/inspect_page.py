"""The Inspect page's answer: in or out and by how much, what mends it, repair, trouble."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal, cast

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.inspection.aws_checks import aws_checks
from beadwright.inspection.inspect_query import Accept, InspectQuery
from beadwright.inspection.inspected import Check, Inspected, inspected
from beadwright.inspection.iso_checks import iso_checks
from beadwright.inspection.iso_limits import Level
from beadwright.inspection.repair import Repair, repairs_of
from beadwright.inspection.signs import Signs
from beadwright.inspection.size_change import (
    SizeChange,
    is_overwelded,
    laid_settings,
    readings_after,
    size_change,
)
from beadwright.inspection.trouble import SYMPTOM_OF, Ranked, Symptom, causes_of
from beadwright.inspection.used_settings import used_settings
from beadwright.job.job import ByHand, Job
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.phrases import Amount, say
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn, dial_in

SIZE_KEYS = frozenset({
    "leg", "leg2", "throat", "throat-over", "convexity", "reinforcement", "underfill",
})  # fmt: skip
"""What more or less metal may mend."""

SUMS_OFF = 0.25
"""Share by which the metal measured may differ from our sums before a setting or a reading is
doubted [-]. Common practice."""

Verdict = Literal["in", "out", "unknown"]


@dataclass(frozen=True, slots=True)
class InspectAnswer(PageAnswered):
    """The Inspect page's answer.

    Attributes:
        page: ``inspect``.
        query: The query as read.
        weld: The weld with what was asked for.
        used: The settings it was welded with: typed, else planned.
        checks: Every limit, out first.
        change: How its size is mended where it is out or overwelded; None where there is nothing to
            mend or no measured size.
        still_out: What a change of metal does not mend.
        repairs: Ways of repair.
        troubles: Causes by trouble, what is seen or heard first.
        notes: Notes, the most severe first.
    """

    query: InspectQuery
    weld: Inspected
    used: DialIn
    checks: tuple[Check, ...]
    change: SizeChange | None
    still_out: tuple[Check, ...]
    repairs: tuple[Repair, ...]
    troubles: tuple[tuple[Symptom, tuple[Ranked, ...]], ...]

    @property
    def out(self) -> tuple[Check, ...]:
        """The checks that are out, the gravest first."""
        return tuple(check for check in self.checks if check.state == "out")

    @property
    def verdict(self) -> Verdict:
        """Out if any limit is; in if all that were measured hold; unknown if none was."""
        if self.out:
            return "out"
        return "in" if any(check.state == "in" for check in self.checks) else "unknown"


def inspect_answer(query: str, kept: Mapping[str, Any] | None = None) -> InspectAnswer:
    """Return the Inspect page's answer to a query string.

    Args:
        query: Keys of ``inspect_query.InspectQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(InspectQuery, query, kept)
    _refuse(read)
    weld = inspected(read.job, read.readings)
    _refuse_hollow(weld)
    free = dial_in(replace(weld.job, by_hand=ByHand()))
    used = _used(weld.job, free)
    passes = read.passes or free.plan.passes
    planned = used_settings(weld, used, passes)
    laid = None if planned is None else laid_settings(planned)
    checks = _ordered(weld, read)
    out = [check for check in checks if check.state == "out"]
    size_out = [check for check in out if check.key in SIZE_KEYS]
    size = None if laid is None else size_change(laid, free)
    still = _still_out(weld, read, size)
    left = {check.key for check in still}
    mends = any(check.key not in left for check in size_out)
    mends = mends or (not size_out and is_overwelded(weld))
    change = size if mends else None
    travel = None if laid is None else laid.travel
    signs = Signs(used, free, read.readings, read.flow, read.wind, passes, travel)
    return InspectAnswer(
        page="inspect",
        query=read,
        weld=weld,
        used=used,
        checks=checks,
        change=change,
        still_out=still,
        repairs=repairs_of(out),
        troubles=_troubles(read, signs, out, still),
        notes=tuple(_notes(read, weld, change, out)),
    )


def _refuse(read: InspectQuery) -> None:
    """Refuse readings that contradict each other."""
    seen, wrong = read.readings, dict[str, list[str]]()
    if seen.convexity and seen.concavity:
        wrong["concavity"] = ["A face is crowned or hollow, not both: leave one blank."]
    if seen.undercut_length is not None and seen.undercut is None:
        wrong["undercut_length"] = ["Give the undercut's depth too: a length alone is not judged."]
    largest, inch, foot = seen.pore, seen.pores_inch, seen.pores_foot
    if inch is not None and foot is not None and foot < inch * (1 - 1e-9):
        wrong["pores_foot"] = [
            "The worst 12 in hold the worst inch: this is no less than that. Add "
            "them up again, or leave one blank."
        ]
    if largest and inch is not None and inch < largest * (1 - 1e-9):
        wrong["pores_inch"] = [
            "The worst inch holds the largest pore: this is no less than that. "
            "Add them up again, or leave one blank."
        ]
    length = seen.length_found or read.job.weld_length_m
    if seen.short_length is not None and seen.short_length > length * (1 + 1e-9):
        wrong["short_length"] = [
            "This is longer than the weld: write its part of the weld, or correct "
            "the weld's length."
        ]
    if wrong:
        raise FieldErrors(wrong)


def _refuse_hollow(weld: Inspected) -> None:
    """Refuse a face hollow by so much that no metal would be left between the legs."""
    fillet, seen = weld.fillet, weld.readings
    if fillet is None or fillet.section_m2(weld.over_flat) > 0:
        return
    throat = units.written(fillet.flat_throat_m, "leg", weld.job.units)
    key = "throat_found" if seen.concavity is None else "concavity"
    raise FieldErrors(
        {key: [f"Under a flat face these legs have a throat of {throat}: a hollow of three "
               "quarters of it leaves no metal. Measure again."]}
    )  # fmt: skip


def limits_of(weld: Inspected, accept: Accept, *, across: bool) -> Iterator[Check]:
    """Yield every limit a weld is held to: those of ``aws_checks`` or of ``iso_checks``.

    Args:
        weld: The weld, measured or not [-].
        accept: What it is judged by [-].
        across: True if it lies across the pull, in a primary member [-].
    """
    if accept.startswith("iso-"):
        return iso_checks(weld, cast("Level", accept[-1].upper()))
    return aws_checks(weld, cyclic=accept == "d1.1-cyclic", across=across)


def _checks(weld: Inspected, read: InspectQuery) -> Iterator[Check]:
    return limits_of(weld, read.accept, across=read.across == "yes")


_GRAVE = {"out": 0, "in": 1, "unknown": 2}


def _ordered(weld: Inspected, read: InspectQuery) -> tuple[Check, ...]:
    """Every limit: out first, then what holds, then what was not measured."""
    return tuple(sorted(_checks(weld, read), key=lambda check: _GRAVE[check.state]))


def _still_out(weld: Inspected, read: InspectQuery, change: SizeChange | None) -> tuple[Check, ...]:
    """Limits of the size that the weld would still miss with the metal changed."""
    after = weld
    if change is not None:
        after = inspected(weld.job, readings_after(weld, change.metal))
    return tuple(
        check for check in _checks(after, read) if check.state == "out" and check.key in SIZE_KEYS
    )


def _used(job: Job, free: DialIn) -> DialIn:
    """The settings used: typed, else the plan's feed, with volts on the mode's line."""
    hand = job.by_hand
    if hand == ByHand():
        return free
    feed = hand.wire_feed_m_s or free.settings.wire_feed.value
    return dial_in(replace(job, by_hand=replace(hand, wire_feed_m_s=feed)))


def _troubles(
    read: InspectQuery, signs: Signs, out: list[Check], still: tuple[Check, ...]
) -> tuple[tuple[Symptom, tuple[Ranked, ...]], ...]:
    """The trouble seen or heard, then those behind what is out and no change of metal mends."""
    left = {check.key for check in still}
    found: list[Symptom] = []
    if read.trouble is not None:
        found.append(read.trouble)
    for check in (*out, *still):
        symptom = SYMPTOM_OF.get(check.key)
        behind = check.key not in SIZE_KEYS or check.key in left
        if symptom is not None and behind and symptom not in found:
            found.append(symptom)
    return tuple((symptom, causes_of(symptom, signs)) for symptom in found)


def _notes(
    read: InspectQuery, weld: Inspected, change: SizeChange | None, out: list[Check]
) -> Iterator[Note]:
    seen = read.readings
    if any(check.key == "crack" for check in out) or read.trouble == "crater-crack":
        yield Note("stop", say("inspection.never-over-a-crack"), "aws-d1.1-8.1", "cracks")
    if change is not None and abs(change.laid_over_sums - 1) > SUMS_OFF:
        off = change.laid_over_sums
        more = say("inspection.more-than-sums" if off > 1 else "inspection.less-than-sums")
        whole = weld.job.is_fillet or change.passes == 1
        key = "inspection.sums-differ" if whole else "inspection.sums-differ-last"
        yield Note("caution", say(key, share=off, more=more), "mass-balance")
    if change is not None and not change.timed:
        slow, fast = TRAVEL_RANGE_M_S[weld.job.travel_by, weld.job.position.orientation]
        if not slow <= change.travel_m_s <= fast:
            travel = Amount(change.travel_m_s, "travel")
            yield Note("caution", say("inspection.travel-unlikely", travel=travel), "mass-balance")
    if weld.fillet is not None and weld.fillet.one_leg:
        yield Note("note", say("inspection.one-leg"), field="leg2_found")
    if not weld.job.is_fillet and (seen.leg_found or seen.leg2_found or seen.throat_found):
        yield Note("note", say("inspection.no-leg-here"), field="leg_found")
    aws = read.accept.startswith("d1.1")
    if aws and read.own.isdisjoint({"across"}) and (read.accept == "d1.1-cyclic" or seen.pore):
        yield Note("note", say("inspection.counted-across"), "aws-d1.1-8.1", "across")
    if read.accept == "d1.1-cyclic":
        yield Note("note", say("inspection.stiffeners"), "aws-d1.1-8.1-frequency")
    if aws and weld.job.is_sheet:
        yield Note("caution", say("inspection.sheet-code"), "aws-d1.3-scope", "plate")
    yield Note("note", say("inspection.eye-only"), "practice")
    yield Note("note", say("inspection.wait-to-look"), "aws-d1.1-8.1" if aws else "practice")
