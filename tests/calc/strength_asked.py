"""The Strength page asked by a query, for its tests."""

from beadwright.api import answer
from beadwright.strength.strength_answer import StrengthAnswer


def ask(query: str) -> StrengthAnswer:
    return answer("strength", query)
