"""What makes a weld go wrong: each cause, how to check it, the sign of this job that shows it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.phrases import Phrase, say

_UNDERCUT = "mig-handbook-defects"
_ARTICLE = "mig-trouble-article"
_GAS = "mig-gas-article"


@dataclass(frozen=True, slots=True)
class Cause:
    """A cause.

    Attributes:
        phrase: What it is.
        check: The check to make.
        sign: Its sign, see ``signs.Signs.of``; empty: no number here shows it.
        source: Source id.
    """

    phrase: Phrase
    check: Phrase
    sign: str = ""
    source: str = "practice"


CAUSES: Mapping[str, Cause] = MappingProxyType(
    {
        "travel-fast": Cause(say("inspection.travel-fast"), say("inspection.time-a-bead"),
                             "travel+", _UNDERCUT),
        "travel-slow": Cause(say("inspection.travel-slow"), say("inspection.time-a-bead"),
                             "travel-", _ARTICLE),
        "volts-high": Cause(say("inspection.volts-high"), say("inspection.read-volts"),
                            "volts+", _UNDERCUT),
        "volts-low": Cause(say("inspection.volts-low"), say("inspection.read-volts"),
                           "volts-", _ARTICLE),
        "feed-high": Cause(say("inspection.feed-high"), say("inspection.time-the-wire"),
                           "feed+", _UNDERCUT),
        "feed-low": Cause(say("inspection.feed-low"), say("inspection.time-the-wire"),
                          "feed-", _ARTICLE),
        "tip-far": Cause(say("inspection.tip-far"), say("inspection.measure-tip"), "tip+", _GAS),
        "tip-close": Cause(say("inspection.tip-close"), say("inspection.measure-tip"), "tip-"),
        "gas-low": Cause(say("inspection.gas-low"), say("inspection.flow-at-nozzle"),
                         "gas-", _GAS),
        "gas-high": Cause(say("inspection.gas-high"), say("inspection.flow-at-nozzle"), "gas+"),
        "wind": Cause(say("inspection.wind"), say("inspection.look-at-smoke"), "wind",
                      "aws-d1.1-wind"),
        "gap": Cause(say("inspection.gap-wide"), say("inspection.measure-gap"), "gap"),
        "heat": Cause(say("inspection.heat-high"), say("inspection.cool-between"), "heat"),
        "between-modes": Cause(say("inspection.between-modes"), say("inspection.listen"),
                               "between-modes"),
        "cold-short": Cause(say("inspection.cold-short"), say("inspection.cut-a-coupon"),
                            "cold-short"),
        "downhill": Cause(say("inspection.downhill"), say("inspection.cut-a-coupon"), "downhill"),
        "large-leg": Cause(say("inspection.large-leg"), say("inspection.split-passes"),
                           "large-leg"),
        "no-pause": Cause(say("inspection.no-pause"), say("inspection.hold-at-toes"), "woven"),
        "thick-plate": Cause(say("inspection.thick-plate"), say("inspection.feel-plate"), "thick"),
        "co2-rich": Cause(say("inspection.co2-rich"), say("inspection.read-cylinder"), "co2"),
        "lean-wire": Cause(say("inspection.lean-wire"), say("inspection.grind-scale"),
                           "lean-wire"),
        "crater": Cause(say("inspection.crater-open"), say("inspection.fill-crater"), "crater"),
        "thin-wire": Cause(say("inspection.thin-wire"), say("inspection.straight-gun"),
                           "thin-wire"),
        "rolls-crush": Cause(say("inspection.rolls-crush"), say("inspection.look-at-rolls"),
                             "cored"),
        "dirt": Cause(say("inspection.dirt"), say("inspection.grind-bright"), source=_GAS),
        "nozzle": Cause(say("inspection.nozzle"), say("inspection.look-in-nozzle"), source=_GAS),
        "hose": Cause(say("inspection.hose"), say("inspection.soap-hose"), source=_GAS),
        "angle": Cause(say("inspection.angle"), say("inspection.look-at-angle")),
        "clamp": Cause(say("inspection.clamp"), say("inspection.feel-clamp")),
        "worn-tip": Cause(say("inspection.worn-tip"), say("inspection.change-tip")),
        "rolls-slip": Cause(say("inspection.rolls-slip"), say("inspection.stop-wire-by-hand")),
        "rolls-tight": Cause(say("inspection.rolls-tight"), say("inspection.ease-rolls")),
        "liner": Cause(say("inspection.liner"), say("inspection.pull-wire")),
        "burnback-time": Cause(say("inspection.burnback-time"), say("inspection.turn-burnback")),
    }
)  # fmt: skip
"""Causes by key; what has no other source is common practice."""
