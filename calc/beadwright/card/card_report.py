"""The Card page's answer as a report."""

from __future__ import annotations

import dataclasses

from beadwright.card.card_page import CardAnswer
from beadwright.card.card_proof import Proof
from beadwright.inspection.inspected import Check
from beadwright.passes.pass_beads import Bead
from beadwright.reports import Shown, Tree, same


def card_report(found: CardAnswer) -> Tree:
    """Return the Card page's answer, by part.

    Args:
        found: The answer [-].
    """
    dialled, heat = found.dialled, found.heat
    return {
        "answer": {
            "open": found.found.open,
            "paper": found.query.paper,
            "says": dataclasses.asdict(found.query.says),
            **same(dialled.settings, "wire_feed", "volts", "travel", "tip_to_work"),
            "gas_flow": dialled.outcome and dialled.outcome.gas_flow,
            "parts": [_part(beads) for beads in found.parts],
            "preheat": Shown(heat.needed.kelvin, "temperature"),
            "interpass_most": Shown(heat.interpass_k, "temperature"),
            "limits": [_limit(check) for check in found.limits],
            "proofs": [_proof(each) for each in found.proofs],
        }
    }


def _part(beads: tuple[Bead, ...]) -> Tree:
    first, laid = beads[0], [bead.laid for bead in beads if bead.laid is not None]
    return {
        "beads": [bead.number for bead in beads],
        "side": first.side,
        "role": first.role,
        "wire_feed": [Shown(each.point.feed_m_s, "wire_feed") for each in laid],
        "travel": [Shown(each.travel_m_s, "travel") for each in laid],
    }


def _limit(check: Check) -> Tree:
    bounded = check.measure and check.limit != float("inf")
    return {
        "key": check.key,
        "text": check.phrase,
        "limit": Shown(check.limit if bounded else None, check.measure or "length"),
        "limit_is": check.way,
        "source": check.source,
    }


def _proof(proof: Proof) -> Tree:
    return {
        "mark": proof.mark,
        **same(proof.record, "made", "welder"),
        "wire_feed": Shown(proof.feed_m_s, "wire_feed"),
        "volts": Shown(proof.volts, "volts"),
    }
