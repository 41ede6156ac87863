"""The topics of the Method page, in the order of the work: the one place that lists them.

A page's row names the topics it rests on by their keys, so that the phone need not load this.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from beadwright_site.method.equations import Section
from beadwright_site.method.topics import (
    arc,
    circuit,
    cost_alike,
    costs,
    coupons,
    distortion,
    gas,
    grooves,
    inspect,
    joints,
    listed,
    loaded,
    melted,
    metal,
    passes,
    planned,
    plates,
    preheat,
    strength,
    supplies,
    windows,
    wires,
)


@dataclass(frozen=True, slots=True)
class Topic:
    """A chapter of the page: its id, its title, and what gives its sections."""

    key: str
    title: str
    sections: Callable[[], tuple[Section, ...]]


TOPICS = (
    Topic("arc", "The arc", arc.sections),
    Topic("metal", "Metal laid", metal.sections),
    Topic("wires", "The wires", wires.sections),
    Topic("gas", "Gas", gas.sections),
    Topic("joints", "Joints", joints.sections),
    Topic("grooves", "Grooves cut part way, plugs and slots", grooves.sections),
    Topic("windows", "The windows and the set point", windows.sections),
    Topic("planned", "What a hand sets", planned.sections),
    Topic("passes", "The pass plan", passes.sections),
    Topic("plates", "Heat in the plates", plates.sections),
    Topic("preheat", "Preheat, cooling, hardness", preheat.sections),
    Topic("distortion", "Distortion", distortion.sections),
    Topic("strength", "Strength of the weld", strength.sections),
    Topic("loaded", "Plates, grooves and plugs under load", loaded.sections),
    Topic("melted", "What it melts", melted.sections),
    Topic("inspect", "Inspect", inspect.sections),
    Topic("costs", "Cost", costs.sections),
    Topic("cost_alike", "Wires in like work", cost_alike.sections),
    Topic("supplies", "Wire and gas to hand", supplies.sections),
    Topic("listed", "Welds of one part together", listed.sections),
    Topic("coupons", "What coupons teach", coupons.sections),
    Topic("circuit", "Machine and circuit", circuit.sections),
)
"""A new topic is a module in ``method.topics`` and a line here; its key is the module's name."""


def sections() -> tuple[Section, ...]:
    """Return every section of every topic, in order."""
    return tuple(section for topic in TOPICS for section in topic.sections())
