"""English of room ``coupons``: test welds and what they teach."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "coupons.melting": "burn-off",
        "coupons.efficiency": "deposition efficiency",
        "coupons.crown": "crown of a fillet",
        "coupons.travel": "hand's travel",
        "coupons.meter": "machine's volt meter",
        "coupons.read-amps": "read the amps the machine shows",
        "coupons.weigh": "weigh the coupon before and after, and time the arc",
        "coupons.gauge-face": "gauge both legs, the face width and the convexity",
        "coupons.time-it": "time the arc over a marked length",
        "coupons.meter-arc": "put a volt meter from the gun to the work, and read both meters",
        "coupons.next-same": "Weld it at these settings, wire feed {feed}, and {measure}.",
        "coupons.next-moved": (
            "Set the wire feed to {feed}, volts to match, and {measure}: there it tells most."
        ),
        "coupons.thin-lap": "Thin lap, 14 gauge",
        "coupons.eighth-tee": "Tee, 1/8 in plate",
        "coupons.quarter-tee": "Tee, 1/4 in plate, one pass",
        "coupons.quarter-lap": "Lap, 1/4 in plate, three light beads",
        "coupons.half-v": "V groove, 1/2 in plate, on steel backing",
        "coupons.kept-job": "{name}",
        "coupons.not-welded": "This wire and gas do not weld it: leave it out, or change one.",
        "coupons.no-window": "No setting holds all limits here: see Passes.",
        "coupons.not-a-procedure": (
            "A coupon proves one hand, one machine, one joint. It is no procedure qualification."
        ),
        "coupons.no-settings": "These settings hold no window: see Dial in before you weld it.",
        "coupons.odd": (
            "The coupon of {mark} does not fit the others in {what}. It is set aside: check its "
            "entries, or tap to count it if you trust it."
        ),
        "coupons.no-welder": "Name the welder, so that each hand is learned apart.",
    }
)
"""Texts by id."""
