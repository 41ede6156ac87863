"""An order to weld in: wire and gas changed least, then the part turned least, then the dial."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from itertools import pairwise

EXACT_SETUPS = 8
"""Different set-ups up to which every order of them is weighed [-]."""


@dataclass(frozen=True, slots=True)
class Setup:
    """How the machine and the part stand for a weld.

    Attributes:
        wire: Wire, its size and gas.
        position: Welding position.
        dial: Settings on the dial.
    """

    wire: Hashable
    position: str
    dial: Hashable


@dataclass(frozen=True, slots=True)
class Changes:
    """Changes between one weld and the next, over a whole order.

    Attributes:
        wires: Changes of wire or gas [-].
        turns: Turns of the part into another position [-].
        dials: Changes of the settings [-].
    """

    wires: int
    turns: int
    dials: int

    @property
    def total(self) -> int:
        """All of them [-]."""
        return self.wires + self.turns + self.dials

    @property
    def rank(self) -> tuple[int, int, int]:
        """What orders are compared by: the dearest change first [-]."""
        return self.wires, self.turns, self.dials


def changes(order: Sequence[Setup]) -> Changes:
    """Return the changes of an order.

    Args:
        order: The set-up of each weld, in the order welded [-].
    """
    pairs = tuple(pairwise(order))
    return Changes(
        wires=sum(a.wire != b.wire for a, b in pairs),
        turns=sum(a.position != b.position for a, b in pairs),
        dials=sum(a.dial != b.dial for a, b in pairs),
    )


def weld_order(setups: Sequence[Setup]) -> tuple[int, ...]:
    """Return the places of the welds in the order to weld them.

    Welds of one set-up stand together. The set-ups follow each other so that wire and gas are
    changed least, then the part turned least, then the dial: every order is weighed up to
    ``EXACT_SETUPS`` of them, beyond that the next is the one that changes least. Within a set-up
    two welds in a row lie as far apart on the list as can be, half of it, so that heat spreads;
    neighbors on the list are taken for neighbors on the part.

    Source: common practice; derived.

    Args:
        setups: The set-up of each weld, in the order listed [-].
    """
    held: dict[Setup, list[int]] = {}
    for place, setup in enumerate(setups):
        held.setdefault(setup, []).append(place)
    kinds = tuple(held)
    path = _exact if len(kinds) <= EXACT_SETUPS else _nearest
    return tuple(place for kind in path(kinds) for place in spread(held[kind]))


def spread[T](row: Sequence[T]) -> tuple[T, ...]:
    """Return a row reordered so that two in a row stand half of it apart or more.

    Source: derived: from the middle and the end, each a step down in turn.

    Args:
        row: The row [-].
    """
    half = len(row) // 2
    low, high = (row[: len(row) - half])[::-1], row[len(row) - half :][::-1]
    found = list[T]()
    for place, each in enumerate(low):
        found.append(each)
        found.extend(high[place : place + 1])
    return tuple(found)


def _step(one: Setup, other: Setup) -> tuple[int, int, int]:
    return changes((one, other)).rank


def _exact(kinds: Sequence[Setup]) -> tuple[Setup, ...]:
    """The best order of a few set-ups: the best way to each last one, over every set of them."""
    steps = [[_step(one, other) for other in kinds] for one in kinds]
    best: dict[tuple[int, int], tuple[tuple[int, int, int], tuple[int, ...]]] = {
        (1 << i, i): ((0, 0, 0), (i,)) for i in range(len(kinds))
    }
    for _ in range(len(kinds) - 1):
        longer: dict[tuple[int, int], tuple[tuple[int, int, int], tuple[int, ...]]] = {}
        for (done, last), (rank, path) in best.items():
            for i, (a, b, c) in enumerate(steps[last]):
                if done >> i & 1:
                    continue
                tried = (rank[0] + a, rank[1] + b, rank[2] + c), (*path, i)
                key = done | 1 << i, i
                if key not in longer or tried < longer[key]:
                    longer[key] = tried
        best = longer
    if not best:
        return ()
    _, path = min(best.values())
    return tuple(kinds[i] for i in path)


def _nearest(kinds: Sequence[Setup]) -> tuple[Setup, ...]:
    """An order of many set-ups: all of one wire, of those all of one position, as first met."""
    found = list[Setup]()
    for wire in dict.fromkeys(kind.wire for kind in kinds):
        left = [kind for kind in kinds if kind.wire == wire]
        while left:
            last = found[-1] if found else left[0]
            here = [kind for kind in left if kind.position == last.position]
            group = here or [kind for kind in left if kind.position == left[0].position]
            found.extend(sorted(group, key=lambda kind: kind.dial != last.dial))
            left = [kind for kind in left if kind not in group]
    return tuple(found)
