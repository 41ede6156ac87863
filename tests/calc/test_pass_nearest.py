"""The plan nearest to one that does not hold: which it is, and how much is laid to find it."""

from dataclasses import dataclass, field

import pytest

from beadwright.card.card_page import card_answer
from beadwright.coupons.coupons_page import coupons_answer
from beadwright.errors import FieldErrors
from beadwright.joint.joints import region
from beadwright.layers.frame import frame_of
from beadwright.layers.layer_counts import Tried, layers_of_count
from beadwright.layers.layers import BeadLimits
from beadwright.passes.bead_count import MOST_BEADS
from beadwright.passes.pass_beads import PassPlan
from beadwright.passes.pass_choices import FARTHEST, MOST_TRIED, nearest
from beadwright.passes.pass_plan import Grounds
from beadwright.passes.passes_page import passes_answer
from tests.calc.jobs import planned


def _none() -> list[int | None]:
    return []


@dataclass(frozen=True)
class Counted(Grounds):
    """Grounds that keep what was asked of them."""

    counts: list[int | None] = field(default_factory=_none)

    def with_beads(self, count: int | None) -> PassPlan:
        self.counts.append(count)
        return super().with_beads(count)


def looked_for(query: str) -> list[int | None]:
    """The counts of beads laid to find the nearest plan, in order."""
    plan = planned(query)
    grounds = Counted(plan.job, plan.asked)
    nearest(plan, grounds)
    return grounds.counts


def test_far_too_many_beads_are_answered_with_the_fewest() -> None:
    """A 5/16 in fillet in 3/8 in plate is one pass; 400 beads in it are too light for any run."""
    answer = passes_answer("passes=400")
    assert not answer.found.open
    assert answer.nearest is not None
    assert answer.nearest.changes == {"passes": ""}
    assert answer.nearest.beads == 1
    assert answer.nearest.phrase.key == "passes.hold"
    there = passes_answer("passes=")
    assert there.found.open
    assert len(there.found.beads) == 1


@pytest.mark.parametrize("query", ["passes=400", "passes=399&joint=v&plate=3/4in"])
def test_hundreds_of_beads_are_not_laid_sixteen_times(query: str) -> None:
    counts = looked_for(query)
    assert counts[-1] is None
    tried = [count for count in counts if count is not None]
    assert sum(tried) < MOST_TRIED + 400
    assert len(tried) == 2


def test_thirty_beads_are_tried_eight_either_way_before_the_fewest() -> None:
    counts = looked_for("passes=30")
    wanted = [30 + way * step for step in range(1, FARTHEST + 1) for way in (1, -1)]
    assert counts == [*wanted, None]


def test_the_fewest_are_not_tried_twice() -> None:
    assert None not in looked_for("heat_max=1kJ/in&plate=1in&leg=3/4in")


def test_layers_kept_from_other_counts_are_those_worked_out_alone() -> None:
    mm = 1e-3
    left, right = (-6 * mm, 0.0), (6 * mm, 0.0)
    groove = region(
        "first", (left, (-6 * mm, -20 * mm), (6 * mm, -20 * mm), right), right, left,
        (0.0, -20 * mm), 0.0,
    )  # fmt: skip
    frame = frame_of(groove)
    limits = BeadLimits(20 * mm**2, 30 * mm**2, 4 * mm, 5 * mm, 12 * mm, 12 * mm)
    kept: Tried = {}
    for count in (1, 40, 7, 8, 9, 200, 41, 7):
        alone = layers_of_count(frame, limits, count, groove=True, around=False)
        again = layers_of_count(frame, limits, count, groove=True, around=False, tried=kept)
        assert again == alone
        assert sum(layer.beads for layer in again) == count
    assert kept


LIGHT = "joint=v&plate=4in&back=open&wfs=30in/min&wire=ER70S-6&dia=0.023in"
"""Next to no wire into four inches of plate: thousands of beads."""


@pytest.mark.parametrize(
    ("query", "field"),
    [
        (LIGHT, "wfs"),
        (f"{LIGHT.replace('=30', '=60')}&root_wfs=500in/min&cap_wfs=30in/min", "cap_wfs"),
        (f"{LIGHT.replace('=30', '=60')}&root_wfs=30in/min&cap_wfs=500in/min", "root_wfs"),
    ],
)
def test_more_beads_than_any_joint_takes_are_refused_beside_what_asks_for_them(
    query: str, field: str
) -> None:
    with pytest.raises(FieldErrors) as caught:
        passes_answer(query)
    assert list(caught.value.messages) == [field]
    assert "400 at most" in caught.value.messages[field][0]


def test_coupons_and_card_refuse_them_too() -> None:
    for answer in (coupons_answer, card_answer):
        with pytest.raises(FieldErrors) as caught:
            answer(LIGHT)
        assert list(caught.value.messages) == ["wfs"]


def test_the_thickest_groove_overhead_is_planned() -> None:
    beads = passes_answer("joint=v&plate=4in&position=4G&dia=0.023in").found.beads
    assert len(beads) < MOST_BEADS


def test_where_the_fewest_are_too_many_the_count_asked_for_stands_without_them() -> None:
    answer = passes_answer(f"{LIGHT}&passes=400")
    assert len(answer.found.beads) == 400
    assert answer.nearest is None
    assert all(choice.changes != {"passes": ""} for choice in answer.choices())
