"""The kinds of wire, and what makes each different from the others."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.phrases import Phrase, say

Kind = Literal["solid", "metal-cored", "flux-cored"]


@dataclass(frozen=True, slots=True)
class KindTraits:
    """What makes a kind of wire different. Tables by size have the kind in their keys.

    Attributes:
        phrase: What it is called.
        cored: It has a core of powder: only the sheath carries the current, and the arc is broader.
        slag: It leaves slag, which holds the pool and is chipped off.
        shorts: It runs in short circuit too; if not, only in the fine drops of its class.
        wants_pulse: It needs pulse in a position without spray.
        wide_volts: It runs clean over a wider range of volts than other wire.
        given_current_of: The kind whose current it is given on the same plate, its own or another.
        over_flat: Section of a fillet as welded over the flat one, flat and horizontal.
        held_share: Current held out of position over the table of its shape of pool.
        representative: The classification whose mass and section are taken for the kind.
        mass_source: Source id of its mass and burn-off where they are not in print.
        start_source: Source id of the least current of its open arc.
        top_source: Source id of the usual top current of its open arc.
        volts_sources: Source ids of its volts.
        efficiency_source: Source id of its deposition efficiency.
    """

    phrase: Phrase
    cored: bool
    slag: bool
    shorts: bool
    wants_pulse: bool
    wide_volts: bool
    given_current_of: Kind
    over_flat: float
    held_share: float
    representative: str
    mass_source: str
    start_source: str
    top_source: str
    volts_sources: tuple[str, ...]
    efficiency_source: str


KINDS: Mapping[Kind, KindTraits] = MappingProxyType(
    {
        "solid": KindTraits(
            phrase=say("process.solid"),
            cored=False,
            slag=False,
            shorts=True,
            wants_pulse=False,
            wide_volts=False,
            given_current_of="solid",
            over_flat=1.2,
            held_share=1.0,
            representative="ER70S-6",
            mass_source="power-balance",
            start_source="mig-handbook-1-2",
            top_source="equipment-sheet",
            volts_sources=("machinery-31-t5", "power-source-conditions"),
            efficiency_source="lecture-efficiency",
        ),
        "metal-cored": KindTraits(
            phrase=say("process.metal-cored"),
            cored=True,
            slag=False,
            shorts=True,
            wants_pulse=True,
            wide_volts=True,
            given_current_of="solid",
            over_flat=1.1,
            held_share=1.06,
            representative="E70C-6M",
            mass_source="e70c-sheet",
            start_source="e70c-sheet",
            top_source="e70c-sheet",
            volts_sources=("machinery-31-t5", "e70c-sheet"),
            efficiency_source="e70c-sheet",
        ),
        "flux-cored": KindTraits(
            phrase=say("process.flux-cored"),
            cored=True,
            slag=True,
            shorts=False,
            wants_pulse=False,
            wide_volts=False,
            given_current_of="flux-cored",
            over_flat=1.2,
            held_share=1.0,
            representative="E71T-1C",
            mass_source="fcaw-deposition",
            start_source="fcaw-deposition",
            top_source="fcaw-deposition",
            volts_sources=("fcaw-ranges",),
            efficiency_source="lecture-efficiency",
        ),
    }
)
"""Traits by kind.

Source: AWS A5.18 and A5.20 for what a kind is (from memory); metal-cored wire out of position needs
pulse, and it is given the current solid wire would be: common practice. Fillets as welded are 1.2 ×
the flat triangle (weld-metal weight tables, reinforced fillets, found); metal-cored wire wets
flatter, about 1.1: common practice. Out of position metal-cored wire is pulsed at 130-180 A where
solid wire is at 120-165 A (from memory).
"""
