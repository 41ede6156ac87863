"""English of room ``machine``: power source and circuit."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "machine.duty-rule": (
            "The rule for duty cycle errs by up to a tenth; the plate rules. Plates are tested at "
            "40 °C (104 °F)."
        ),
        "machine.electrician": (
            "Wiring, breakers and earthing belong to a licensed electrician and the local code."
        ),
        "machine.demo-stands-in": ("The demonstration shop's machine stands in for: {keys:, }."),
        "machine.demo-stands-in-marked": "The demonstration shop stands in for: {names}.",
    }
)
"""Texts by id."""
