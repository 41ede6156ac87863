"""Distortion as plain data for JSON."""

from __future__ import annotations

from typing import Any

from beadwright.heating.distortion_query import PartDistortion
from beadwright.reports import note_report, quantity_report
from beadwright.units import System
from beadwright.words.wording import reason


def distortion_report(found: PartDistortion, system: System) -> dict[str, Any]:
    """Return each way to weld the job with what it does to the part, in shown units.

    Args:
        found: The answer [-].
        system: Whose units [-].
    """
    return {
        "ways": [
            {
                "key": way.key,
                "name": way.name,
                **{
                    name: {
                        **quantity_report(quantity, system),
                        "low_by": reason(quantity.low_by, system),
                        "high_by": reason(quantity.high_by, system),
                    }
                    for name, quantity in way.named().items()
                },
            }
            for way in found.ways
        ],
        "notes": [note_report(note, system) for note in found.notes],
    }
