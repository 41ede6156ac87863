"""The Coupons page's answer as a report."""

from __future__ import annotations

from beadwright.coupons.coupon_table import coupon_table
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.coupons.learned_numbers import LearnedNumber
from beadwright.reports import Shown, Tree, figures, same
from beadwright.setting.dial_in import DialIn


def coupons_report(answer: CouponsAnswer) -> Tree:
    """Return the Coupons page's answer, by part.

    Args:
        answer: The answer [-].
    """
    facts = answer.facts
    return {
        "answer": {
            "coupon": {
                **figures(
                    melting=facts.melting,
                    efficiency=facts.efficiency,
                    crown=facts.crown,
                    pace=facts.travel,
                ),
                "travel": Shown(facts.travel_m_s, "travel"),
                "laid": Shown(facts.laid_kg_s, "deposition"),
                "wire_feed": Shown(facts.feed_m_s, "wire_feed"),
                "meter": Shown(facts.meter_v, "volts"),
            },
            "coupons": len(answer.records),
            "elsewhere": answer.elsewhere,
            **learned_tree(answer),
            "settings": {
                "published": _settings(answer.published),
                "own": _settings(answer.dialled),
            },
            "next": answer.coming
            and {
                "for": answer.coming.number,
                "wire_feed": Shown(answer.coming.feed_m_s, "wire_feed"),
                "text": answer.coming.phrase,
                **figures(takes_away=answer.coming.takes_away),
            },
        },
    }


def learned_tree(answer: CouponsAnswer) -> Tree:
    """Return what was learned, number by number, and the text other pages take it as.

    Args:
        answer: The answer [-].
    """
    return {
        "learned": {number.key: _number(number) for number in answer.numbers},
        "own": answer.own.text if answer.own is not None else None,
    }


def coupons_csv(answer: CouponsAnswer) -> str:
    """Return every kept coupon as CSV, those of other wires and gases too.

    Args:
        answer: The answer [-].
    """
    return coupon_table(answer.query.coupons or ())


def _number(number: LearnedNumber) -> Tree:
    return {
        "coupons": number.count,
        **figures(
            over_print=number.share if number.count else None,
            half_band=number.half_band,
            half_band_before=number.half_before,
            decided=number.decided,
        ),
        "odd": [key for key, _ in number.found.odd],
    }


def _settings(dialled: DialIn) -> Tree:
    return same(dialled.settings, "wire_feed", "volts", "tip_to_work", "travel")
