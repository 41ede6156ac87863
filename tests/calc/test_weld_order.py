"""The order to weld in: no other order of a few welds has fewer changes or spreads heat more."""

from __future__ import annotations

from itertools import pairwise, permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright.weld_list.weld_order import Changes, Setup, changes, spread, weld_order

setups = st.builds(Setup, st.sampled_from("ab"), st.sampled_from(("2F", "3F", "1G")),
                   st.sampled_from((1, 2)))  # fmt: skip


def counted(order: list[Setup]) -> tuple[int, int, int]:
    """Changes counted one by one, apart from the code under test."""
    wires = turns = dials = 0
    for i in range(len(order) - 1):
        wires += order[i].wire != order[i + 1].wire
        turns += order[i].position != order[i + 1].position
        dials += order[i].dial != order[i + 1].dial
    return wires, turns, dials


@settings(max_examples=25, deadline=None)
@given(st.lists(setups, max_size=6))
def test_no_order_of_a_few_welds_has_fewer_changes(welds: list[Setup]) -> None:
    found = [welds[i] for i in weld_order(welds)]
    assert sorted(weld_order(welds)) == list(range(len(welds)))
    assert counted(found) == min(counted(list(each)) for each in permutations(welds))


def test_eight_different_set_ups_against_every_order() -> None:
    welds = [Setup(w, p, d) for w in "ab" for p in ("2F", "3F") for d in (1, 2)]
    mixed = [welds[i] for i in (0, 7, 2, 5, 1, 6, 3, 4)]
    found = [mixed[i] for i in weld_order(mixed)]
    assert counted(found) == min(counted(list(each)) for each in permutations(mixed))


@pytest.mark.parametrize("count", range(2, 9))
def test_two_in_a_row_are_as_far_apart_as_any_order_has_them(count: int) -> None:
    def nearest(order: tuple[int, ...]) -> int:
        return min(abs(a - b) for a, b in pairwise(order))

    found = spread(range(count))
    assert sorted(found) == list(range(count))
    assert nearest(found) == max(nearest(each) for each in permutations(range(count)))


def test_many_set_ups_keep_wire_and_position_together() -> None:
    welds = [Setup(i % 3, ("2F", "3F", "4F")[i % 2], i % 7) for i in range(200)]
    found = weld_order(welds)
    told = changes([welds[i] for i in found])
    assert sorted(found) == list(range(200))
    assert told.wires == 2
    assert told.turns <= 5
    assert told.rank < changes(welds).rank


def test_changes_of_an_order_by_hand() -> None:
    order = [Setup("a", "2F", 1), Setup("a", "2F", 2), Setup("b", "3F", 2), Setup("b", "3F", 2)]
    assert changes(order) == Changes(wires=1, turns=1, dials=1)
    assert changes(order).total == 3
