"""The aims as buttons: what each gives up and gains against the balanced start."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from beadwright import units
from beadwright.setting.aim_results import AimResult, aim_results
from beadwright.setting.aims import AIMS
from beadwright.setting.dial_in import DialIn
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.links import query_of


@dataclass(frozen=True, slots=True)
class AimButton:
    """One aim.

    Attributes:
        name: What it is called.
        words: What it gives and costs: time, heat.
        query: The query that asks for it.
        current: True if the settings shown are its own.
    """

    name: str
    words: tuple[str, str]
    query: str
    current: bool


def aim_buttons(found: DialIn, typed: Mapping[str, str]) -> tuple[AimButton, ...]:
    """Return the aims; empty where the window is shut or nothing is left to aim with.

    Args:
        found: The answer.
        typed: Its query as typed.
    """
    hand = found.job.by_hand
    fixed_feed = hand.wire_feed_m_s is not None or hand.travel_m_s is not None
    if fixed_feed and (hand.volts is not None or found.plan.transfer == "pulse"):
        return ()
    results = aim_results(found.plan)
    return tuple(
        AimButton(
            worded(AIMS[result.aim], found.job.units),
            _words(result, results[0], found.job.units),
            query_of({**typed, "aim": "" if result.aim == "balanced" else result.aim}),
            result.aim == found.job.aim,
        )
        for result in results
    )


def _words(result: AimResult, balanced: AimResult, system: System) -> tuple[str, str]:
    if result is balanced:
        heat = units.show(result.heat_j_m, "heat_input", system)
        unit = units.symbol("heat_input", system)
        return f"{_time(result.weld_s)} a weld", f"heat {heat} {unit}"
    return _time_against(result, balanced), _heat_against(result, balanced)


def _time(seconds: float) -> str:
    return f"{seconds:.0f} s" if seconds < 120 else f"{seconds / 60:.1f} min"


def _time_against(result: AimResult, balanced: AimResult) -> str:
    more = result.weld_s - balanced.weld_s
    if abs(more) < 0.5:
        return "same time"
    return f"{_time(more)} more a weld" if more > 0 else f"saves {_time(-more)} a weld"


def _heat_against(result: AimResult, balanced: AimResult) -> str:
    more = 100 * (result.heat_j_m / balanced.heat_j_m - 1)
    if abs(more) < 0.5:
        return "same heat"
    return f"{abs(more):.0f}% {'more' if more > 0 else 'less'} heat"
