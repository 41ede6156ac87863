"""Every window, from its ends: inside them nothing is out, beyond them the limit named binds."""

from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from tests.calc.jobs import Typed, dialled, jobs
from tests.told import in_words, told

KEYS = {"wire_feed": "wfs", "volts": "volts", "travel": "travel", "tip_to_work": "ctwd"}
KEEPING = {
    "wire_feed": ("tip_to_work",),
    "volts": ("wire_feed", "travel", "tip_to_work"),
    "travel": ("wire_feed", "volts", "tip_to_work"),
    "tip_to_work": ("wire_feed", "volts", "travel"),
}
"""What stands while one setting moves through its window; at a feed, volts and travel follow."""

AIMS = ("balanced", "least-time", "least-heat", "easiest")


@dataclass(frozen=True)
class End:
    """One end of one window, with a spot a step inside and one a step beyond."""

    quantity: Quantity
    inside: float
    beyond: float
    reason: str


def step_of(quantity: Quantity, answer: DialIn) -> float:
    system = answer.job.units
    factor = units.MEASURES[quantity.measure].unit(system).factor
    return float(units.STEPS[quantity.measure, system] * factor)


def ends(answer: DialIn) -> Iterator[End]:
    for quantity in answer.settings.all():
        low, high = quantity.low, quantity.high
        if quantity.value is None or low is None or high is None:
            continue
        step = step_of(quantity, answer)
        if high - low < 2 * step:
            continue
        yield End(quantity, low + step, low - step, in_words(quantity.low_by))
        yield End(quantity, high - step, high + step, in_words(quantity.high_by))


def by_hand(answer: DialIn, end: End, value: float, *, others: bool) -> Typed:
    """The job with one setting moved; the others standing, or free."""
    system = answer.job.units
    typed = {KEYS[end.quantity.measure]: units.write(value, end.quantity.measure, system)}
    if others:
        for measure in KEEPING[end.quantity.measure]:
            standing: Quantity = getattr(answer.settings, measure)
            if standing.value is not None:
                typed[KEYS[measure]] = units.write(standing.value, measure, system)
    return typed


def outs(answer: DialIn) -> list[str]:
    return [told(note) for note in answer.notes if note.level in ("stop", "out")]


@settings(max_examples=50, suppress_health_check=[HealthCheck.filter_too_much])
@given(jobs(), st.sampled_from(AIMS))
def test_an_end_set_by_hand_is_not_out(typed: Typed, aim: str) -> None:
    typed = typed | {"aim": aim}
    answer = dialled(typed)
    assume(answer.open)
    before = set(outs(answer))  # of the job itself: a crown or a leg asked wrong
    for end in ends(answer):
        # Least heat stands on the one feed that bears this travel: there the feed stands too.
        tight = aim == "least-heat" and end.quantity.measure == "travel"
        for others in (True,) if tight else (False, True):
            hand = by_hand(answer, end, end.inside, others=others)
            held = dialled(typed | hand)
            assert set(outs(held)) <= before, (hand, end)


def cause(end: End) -> str:
    """What binds, without which way: the same limit may be said of the feed or of the tip."""
    if "stubs" in end.reason and " A " not in end.reason:
        return "stubs"
    if "gives way" in end.reason:  # the arc is too long, or it sprays
        return "Volts at the arc"
    for lead in ("puts in ", "farther out, ", "closer in, ", "lower, ", "higher, "):
        if lead in end.reason:
            return end.reason.split(lead, 1)[1]
    return end.reason


def assert_binds(answer: DialIn, held: DialIn, end: End) -> None:
    if (held.plan.passes, held.plan.transfer) != (answer.plan.passes, answer.plan.transfer):
        return  # other beads or another mode hold it: the joint is planned anew
    assert any(cause(end) in text for text in outs(held)), (end, outs(held))


@settings(max_examples=50, suppress_health_check=[HealthCheck.filter_too_much])
@given(jobs(), st.sampled_from(AIMS))
def test_just_beyond_an_end_the_limit_named_binds(typed: Typed, aim: str) -> None:
    typed = typed | {"aim": aim}
    answer = dialled(typed)
    assume(answer.open)
    for end in ends(answer):
        hand = by_hand(answer, end, end.beyond, others=True)
        with suppress(FieldErrors):  # no arc burns there: refused before it is out
            assert_binds(answer, dialled(typed | hand), end)
