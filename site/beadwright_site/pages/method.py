"""Method: each equation with its symbols, range, source and band; the points; every source."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from beadwright.sources import SOURCES
from beadwright_site import (
    method_arc,
    method_circuit,
    method_costs,
    method_distortion,
    method_gas,
    method_grooves,
    method_heat,
    method_joints,
    method_melted,
    method_metal,
    method_passes,
    method_plates,
    method_strength,
    method_supplies,
    method_windows,
    method_wires,
)
from beadwright_site.changes import CHANGES
from beadwright_site.mathml import inline
from beadwright_site.method import Section
from beadwright_site.rendering import render


@dataclass(frozen=True, slots=True)
class Topic:
    """A chapter of the page: its id, its title, and what gives its sections."""

    key: str
    title: str
    sections: Callable[[], tuple[Section, ...]]


TOPICS = (
    Topic("arc", "The arc", method_arc.sections),
    Topic("metal", "Metal laid", method_metal.sections),
    Topic("wires", "The wires", method_wires.sections),
    Topic("gas", "Gas", method_gas.sections),
    Topic("joints", "Joints", method_joints.sections),
    Topic("grooves", "Grooves cut part way, plugs and slots", method_grooves.sections),
    Topic("windows", "The windows and the set point", method_windows.sections),
    Topic("passes", "The pass plan", method_passes.sections),
    Topic("plates", "Heat in the plates", method_plates.sections),
    Topic("preheat", "Preheat, cooling, hardness", method_heat.sections),
    Topic("distortion", "How a weld pulls its part", method_distortion.sections),
    Topic("strength", "Strength of the weld", method_strength.sections),
    Topic("melted", "What it melts", method_melted.sections),
    Topic("costs", "Cost", method_costs.sections),
    Topic("supplies", "Wire and gas to hand", method_supplies.sections),
    Topic("circuit", "Machine and circuit", method_circuit.sections),
)
"""In the order of the work. A new topic is a module ``method_<topic>`` and a line here."""


def sections() -> tuple[Section, ...]:
    """Return every section of every topic, in order."""
    return tuple(section for topic in TOPICS for section in topic.sections())


def method_page() -> str:
    """Return the page."""
    return render(
        "method/page.html",
        "method",
        topics=[(topic, topic.sections()) for topic in TOPICS],
        sources=SOURCES,
        changes=CHANGES,
        inline=inline,
    )
