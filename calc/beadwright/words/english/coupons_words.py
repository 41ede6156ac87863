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
        "coupons.travel": "hand's travel speed",
        "coupons.meter": "machine's volt meter",
        "coupons.read-amps": "read the amps on the machine",
        "coupons.weigh": "weigh the coupon before and after, and time the arc",
        "coupons.gauge-face": "gauge both legs, the face width and the convexity",
        "coupons.time-it": "time the arc over a marked length",
        "coupons.meter-arc": "put a volt meter between the gun and the work, and read both meters",
        "coupons.next-same": "Weld it at these settings, wire feed {feed}, and {measure}.",
        "coupons.next-moved": (
            "Set the wire feed to {feed} and volts to match, and {measure}: a coupon there tells "
            "the most."
        ),
        "coupons.thin-lap": "Thin lap, 14 gauge",
        "coupons.eighth-tee": "Tee, 1/8 in plate",
        "coupons.quarter-tee": "Tee, 1/4 in plate, one pass",
        "coupons.quarter-lap": "Lap, 1/4 in plate, three light beads",
        "coupons.half-v": "V groove, 1/2 in plate, on steel backing",
        "coupons.kept-job": "{name}",
        "coupons.not-welded": (
            "This wire and gas do not weld this joint: leave it out, or change one."
        ),
        "coupons.no-window": "No setting fits every limit here: see Passes.",
        "coupons.not-a-procedure": (
            "A coupon proves one hand, one machine, one joint. It does not qualify a procedure."
        ),
        "coupons.no-settings": (
            "These settings have no operating window: see Dial in before you weld."
        ),
        "coupons.odd": (
            "Coupon {mark} does not fit the others in {what}, so it is not counted: check its "
            "entries, or tap to count it if you trust it."
        ),
        "coupons.no-welder": "Name the welder, so that each hand is learned separately.",
    }
)
"""Texts by id."""
