"""Trouble: from what is seen or heard to its causes, in the order of this job's own numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.inspection.causes import CAUSES, Cause
from beadwright.inspection.signs import Sign, Signs
from beadwright.phrases import Phrase, say

Symptom = Literal[
    "porosity", "spatter", "undercut", "cold-lap", "burn-through", "stubbing", "burn-back",
    "ropey", "crater-crack", "birds-nest",
]  # fmt: skip
"""What is seen or heard."""

MOST_SHOWN = 6
"""Causes shown at most: as many as a hand goes through before it calls somebody [-]."""

SYMPTOMS: Mapping[Symptom, Phrase] = MappingProxyType(
    {
        "porosity": say("inspection.porosity"),
        "spatter": say("inspection.spatter"),
        "undercut": say("inspection.undercut"),
        "cold-lap": say("inspection.cold-lap"),
        "burn-through": say("inspection.burn-through"),
        "stubbing": say("inspection.stubbing"),
        "burn-back": say("inspection.burn-back"),
        "ropey": say("inspection.ropey"),
        "crater-crack": say("inspection.crater-crack"),
        "birds-nest": say("inspection.birds-nest"),
    }
)
"""What each is called."""

WEIGHTS: Mapping[Symptom, Mapping[str, float]] = MappingProxyType(
    {
        "porosity": {
            "gas-low": 1.0, "wind": 1.0, "gas-high": 0.9, "dirt": 0.8, "tip-far": 0.8,
            "nozzle": 0.7, "hose": 0.6, "lean-wire": 0.6, "volts-high": 0.6, "angle": 0.5,
            "travel-fast": 0.4,
        },
        "spatter": {
            "between-modes": 1.0, "volts-low": 1.0, "volts-high": 0.8, "tip-far": 0.7,
            "feed-high": 0.6, "co2-rich": 0.6, "dirt": 0.6, "clamp": 0.6, "worn-tip": 0.5,
        },
        "undercut": {
            "travel-fast": 1.0, "volts-high": 1.0, "feed-high": 0.8, "angle": 0.8,
            "large-leg": 0.6, "no-pause": 0.7,
        },
        "cold-lap": {
            "feed-low": 1.0, "cold-short": 1.0, "travel-slow": 0.9, "volts-low": 0.8,
            "downhill": 0.9, "angle": 0.8, "tip-far": 0.6, "dirt": 0.5,
        },
        "burn-through": {
            "gap": 1.0, "feed-high": 1.0, "heat": 0.9, "travel-slow": 0.9, "volts-high": 0.5,
        },
        "stubbing": {
            "volts-low": 1.0, "feed-high": 0.9, "tip-far": 0.8, "clamp": 0.7, "worn-tip": 0.6,
        },
        "burn-back": {
            "tip-close": 1.0, "rolls-slip": 0.9, "volts-high": 0.8, "feed-low": 0.8,
            "burnback-time": 0.7, "worn-tip": 0.6, "liner": 0.6,
        },
        "ropey": {
            "volts-low": 1.0, "feed-low": 0.8, "travel-fast": 0.8, "tip-far": 0.7,
            "thick-plate": 0.6, "angle": 0.6, "co2-rich": 0.5,
        },
        "crater-crack": {
            "crater": 1.0, "feed-high": 0.8, "travel-fast": 0.7, "gap": 0.6,
            "thick-plate": 0.6, "volts-high": 0.5,
        },
        "birds-nest": {
            "rolls-tight": 0.9, "liner": 0.9, "rolls-crush": 0.8, "thin-wire": 0.8,
            "worn-tip": 0.8, "feed-high": 0.6, "tip-close": 0.6,
        },
    }
)  # fmt: skip
"""How readily each cause makes each trouble [-]. Common practice; a cause nothing here shows counts
as in the middle of its window, so the order is this job's."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause in its place.

    Attributes:
        key: The cause.
        cause: What it is, how to check it.
        sign: What this job's numbers say of it.
        score: Its weight × how near its bad end the sign stands [-].
    """

    key: str
    cause: Cause
    sign: Sign
    score: float


def causes_of(symptom: Symptom, signs: Signs) -> tuple[Ranked, ...]:
    """Return the causes of a trouble, the likeliest of this job first.

    Source: ``WEIGHTS``, ``signs.nearness``: weight × nearness; what this job rules out is left
    out.

    Args:
        symptom: What is seen or heard [-].
        signs: The signs of this job [-].
    """
    found: list[Ranked] = []
    for key, weight in WEIGHTS[symptom].items():
        sign = signs.of(CAUSES[key].sign)
        found.append(Ranked(key, CAUSES[key], sign, weight * sign.near))
    held = sorted(found, key=lambda each: -each.score)
    return tuple(each for each in held if each.score > 0)[:MOST_SHOWN]


SYMPTOM_OF: Mapping[str, Symptom] = MappingProxyType(
    {
        "undercut": "undercut",
        "overlap": "cold-lap",
        "fusion": "cold-lap",
        "pores": "porosity",
        "pores-foot": "porosity",
        "pore-count": "porosity",
        "convexity": "ropey",
        "reinforcement": "ropey",
        "crater": "crater-crack",
    }
)
"""The trouble behind what an inspection finds out of its limit."""
