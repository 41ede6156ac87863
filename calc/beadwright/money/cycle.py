"""What rules the time of a part: the torch, the hands that load it, or how much the arc burns."""

from __future__ import annotations

from beadwright.money.break_even import at_laid
from beadwright.money.way import Way
from beadwright.phrases import Amount, Phrase, say

MORE_LAID = 1.10
"""What laying more is told by: a tenth more an hour [-]."""


def more_parts(way: Way) -> float:
    """Return how many more parts an hour a way makes when it lays a tenth more [-].

    Source: time of a part at ``MORE_LAID``, ``way.Way.time_s``.

    Args:
        way: The way [-].
    """
    return way.time_s / at_laid(way, MORE_LAID * way.laid_kg_s).time_s - 1


def what_rules(way: Way) -> Phrase:
    """Return what rules the time of a part, in a sentence.

    Args:
        way: The way [-].
    """
    hands, torch = Amount(way.hands_s, "time"), Amount(way.torch_s, "time")
    if way.waits_s > 0:
        return say("money.loading-rules", hands=hands, torch=torch)
    more = more_parts(way)
    if way.stations > 1:
        return say("money.torch-rules", hands=hands, torch=torch, more=more)
    return say("money.arc-rules", share=way.factor, more=more)
