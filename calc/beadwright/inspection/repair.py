"""How a weld that is out is usually repaired, and whose word it needs first."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.inspection.inspected import Check
from beadwright.phrases import Phrase, say


@dataclass(frozen=True, slots=True)
class Repair:
    """A way of repair.

    Attributes:
        key: Its id: crack, remove, add, cut-out, ask.
        phrase: What is done.
        source: Source id.
    """

    key: str
    phrase: Phrase
    source: str


_CRACK = Repair("crack", say("inspection.repair-crack"), "aws-d1.1-7.25")
_REMOVE = Repair("remove", say("inspection.repair-remove"), "aws-d1.1-7.25")
_ADD = Repair("add", say("inspection.repair-add"), "aws-d1.1-7.25")
_CUT_OUT = Repair("cut-out", say("inspection.repair-cut-out"), "aws-d1.1-7.25")
_LENGTHEN = Repair("lengthen", say("inspection.repair-lengthen"), "practice")
_ASK = Repair("ask", say("inspection.repair-ask"), "practice")

REPAIRS: Mapping[str, Repair] = MappingProxyType(
    {
        "crack": _CRACK,
        "fusion": _CUT_OUT,
        "pores": _CUT_OUT,
        "pores-foot": _CUT_OUT,
        "pore-count": _CUT_OUT,
        "overlap": _REMOVE,
        "convexity": _REMOVE,
        "reinforcement": _REMOVE,
        "leg": _ADD,
        "leg2": _ADD,
        "throat": _ADD,
        "undercut": _ADD,
        "underfill": _ADD,
        "crater": _ADD,
        "length": _LENGTHEN,
        "throat-over": _ASK,
        "asymmetry": _ASK,
        "gap": _ASK,
    }
)
"""The way of repair by what is out. Source: AWS D1.1:2020 7.25.1 (2015: 5.25.1, second-hand)."""


def repairs_of(out: Iterable[Check]) -> tuple[Repair, ...]:
    """Return the ways of repair a weld needs, each once, a crack's first.

    Args:
        out: The checks that are out [-].
    """
    found = dict.fromkeys(REPAIRS[check.key] for check in out)
    return tuple(sorted(found, key=lambda repair: repair.key != "crack"))
