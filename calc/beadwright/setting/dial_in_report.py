"""The Dial-in page's answer as a report."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from beadwright import units
from beadwright.process.gas_effects import effects_of
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright.process.wire_ranges import usual_positions
from beadwright.reports import ESTIMATE_DIGITS, Shown, Tree, rounded, same
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.setting.dial_in_page import DialInAnswer
from beadwright.setting.like_for_like import Alike, like_for_like
from beadwright.setting.other_mode import OtherMode
from beadwright.setting.outcome import Outcome
from beadwright.setting.ways_out import WayOut
from beadwright.setting.window_map import WindowMap
from beadwright.units import System

_FOLLOWS = ("current", "heat", "heat_en", "laid", "bead", "leg", "throat", "gas_flow", "metal",
            "wire_mass", "arc_time")  # fmt: skip
"""Quantities of an outcome, in their order."""


def dial_in_report(answer: DialInAnswer) -> Tree:
    """Return the Dial-in page's answer, by part.

    Args:
        answer: The answer [-].
    """
    outcome = answer.dialled.outcome
    return {
        "answer": {
            **_settings(answer.dialled),
            **({} if outcome is None else _outcome(outcome)),
        },
        "window_map": _map(answer.window_map, answer.units),
        "ways_out": ways_out_report(answer.ways_out),
        "other_mode": _other_mode(answer.other_mode),
        "like_for_like": map(_alike, like_for_like(answer.dialled)),
    }


def _other_mode(other: OtherMode | None) -> Tree | None:
    if other is None:
        return None
    return {
        "transfer": other.transfer,
        "wire_feed": Shown(other.feed_m_s, "wire_feed"),
        "volts": Shown(other.volts, "volts"),
        "current": Shown(other.current_a, "current"),
    }


def _alike(alike: Alike) -> Tree:
    return {
        "held": alike.basis,
        "wire": alike.wire.type.name,
        "wire_feed": Shown(alike.feed_m_s, "wire_feed"),
        "current": Shown(alike.current_a, "current"),
        "volts": Shown(alike.volts, "volts"),
        "travel": Shown(alike.travel_m_s, "travel"),
        "laid": Shown(alike.laid_kg_s, "deposition"),
        "heat": Shown(alike.heat_j_m, "heat_input"),
        "inside": alike.holds,
    }


def ways_out_report(ways: Iterable[WayOut]) -> Iterator[Tree]:
    """Yield what would open a window.

    Args:
        ways: The ways out [-].
    """
    return ({"text": way.phrase, "changes": way.changes} for way in ways)


def _settings(dialled: DialIn) -> Tree:
    job, plan, outcome, torch = dialled.job, dialled.plan, dialled.outcome, dialled.torch
    made, gas = job.wire.type, job.gas
    return {
        "open": dialled.open,
        "transfer": outcome and outcome.transfer,
        "planned_transfer": plan.transfer,
        "planned_because": plan.reason,
        "passes": plan.passes,
        "position": job.position_name,
        "polarity": made.polarity,
        "drive_roll": made.drive_roll,
        "wire": {
            "class": made.name,
            "spec": made.spec,
            "iso": made.iso,
            "a5_36": made.alias,
            "kind": made.kind,
            "dia": job.wire.size,
            "fill_share": made.fill_share,
            "runs_in": usual_positions(job.wire, gas, plan.transfer),
        },
        "gas": gas.name,
        "iso_gas_group": gas.iso_group,
        "gas_effects": [
            {"what": each.what, "way": each.way, "text": each.phrase, "source": each.source}
            for each in effects_of(gas)
        ],
        "nozzle": outcome and outcome.flow.nozzle.name,
        **same(dialled.settings, "wire_feed", "volts", "tip_to_work", "travel"),
        "torch": {
            "way": torch.way,
            "travel_angle": _angles(torch.travel_angle),
            "work_angle": _angles(torch.work_angle),
            "aim": torch.aim,
        },
    }


def _outcome(outcome: Outcome) -> Tree:
    estimates = same(outcome, "penetration", "dilution")
    return {
        **same(outcome, *_FOLLOWS),
        **{key: _estimate(each) for key, each in estimates.items()},
    }


def _estimate(found: Quantity) -> Tree:
    return {"**": found, "because": found.low_by or "", "note": NEVER_SIZE_BY_IT}


def _angles(three: tuple[float, float, float]) -> Tree:
    low, value, high = three
    return {"value": value, "low": low, "high": high, "unit": "°"}


def _map(drawn: WindowMap, system: System) -> Tree:
    """The feed and volts plane; its points are given in the unit shown."""

    def feed(value: float) -> float | None:
        return rounded(units.convert(value, "wire_feed", system), ESTIMATE_DIGITS)

    def line(points: Iterable[tuple[float, float]]) -> list[tuple[float | None, float]]:
        return [(feed(speed), round(volts, 3)) for speed, volts in points]

    return {
        "feeds": [feed(value) for value in drawn.feeds],
        "volts": drawn.volts,
        "unit": (units.symbol("wire_feed", system), "V"),
        "regions": [{"transfer": r.transfer, "outline": line(r.outline)} for r in drawn.regions],
        "soft_edges": [{"edge": e.key, "outline": line(e.outline)} for e in drawn.soft],
        "no_spray_because": drawn.refused or "",
        "window": line(drawn.window),
        "point": drawn.point and line([drawn.point])[0],
    }
