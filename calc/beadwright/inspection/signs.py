"""What a job's own numbers say for or against a cause: how near its bad end each setting stands."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from math import inf
from types import MappingProxyType
from typing import Literal

from beadwright import units
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.layers.bead_limits import COLD_LAP_M
from beadwright.measures import INCH_M
from beadwright.process.transfer import spray_refused, transition_current
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn

Wind = Literal["still", "draft", "windy"]
"""Air at the weld: still; a draft that is felt; over 5 mph (8 km/h), where AWS D1.1 stops."""

UNSEEN = 0.5
"""How near its bad end a thing counts that no number here shows [-]: as the middle of a window.
Common practice."""

WORST = 1.5
"""How near a setting far outside its window counts [-]. Common practice."""

LEAST_MOVE = 0.05
"""Least move worth telling, as a share of a window [-]. Common practice."""

DRAFT: Mapping[Wind, float] = MappingProxyType({"still": 0.0, "draft": 0.9, "windy": WORST})
"""How near its bad end moving air stands [-]. Common practice; over 5 mph AWS D1.1 stops
(second-hand)."""

HEAVY_PLATE_M = 1.0 * INCH_M
"""Plate that takes the heat as fast as any [m]. Common practice."""

THIN_WIRE = MappingProxyType(
    {"0.023in": 1.0, "0.030in": 0.8, "0.035in": 0.6, "0.040in": 0.4, "0.045in": 0.3,
     "0.052in": 0.2, "1/16in": 0.1}
)  # fmt: skip
"""How readily a wire buckles in the feeder, by size [-]. Common practice."""


@dataclass(frozen=True, slots=True)
class Sign:
    """How near its bad end something stands.

    Attributes:
        near: 0 at the good end of its room, 1 at the bad end, more outside; ``UNSEEN`` if no number
            here shows it.
        seen: True if a number of this job shows it.
        setting: The setting or flow it is about, or None.
        target: Where to go with it, or None [SI].
    """

    near: float
    seen: bool = True
    setting: Quantity | None = None
    target: float | None = None


_NOT_SEEN = Sign(UNSEEN, seen=False)


def nearness(value: float, low: float, high: float, *, bad_high: bool) -> float:
    """Return how near the bad end of a window a value stands, 0 to ``WORST`` [-].

    Source: ``WORST``; a straight line from the good end to the bad one.

    Args:
        value: The setting [SI].
        low: Low end of its window [SI].
        high: High end, above the low one [SI].
        bad_high: True if the high end is the bad one [-].
    """
    share = (value - low) / (high - low)
    return min(max(share if bad_high else 1 - share, 0.0), WORST)


@dataclass(frozen=True)
class Signs:
    """The signs of a job.

    Attributes:
        used: The settings used: typed, else planned.
        free: The settings planned where none is typed.
        readings: What was measured.
        flow_m3_s: Gas flow set, or None where it was not told [m³/s].
        wind: Air at the weld, or None where it was not told.
        passes: Passes it was laid in [-].
        travel: Travel the weld was laid at, with its room; None: the one set.
    """

    used: DialIn
    free: DialIn
    readings: WeldReadings
    flow_m3_s: float | None
    wind: Wind | None
    passes: int
    travel: Quantity | None = None

    def of(self, key: str) -> Sign:
        """Return a sign by its key.

        Args:
            key: A setting with + or -, its bad end; or another sign; empty: nothing shows it [-].
        """
        if key[:-1] in _SETTINGS:
            settings, plan = self.used.settings, self.free.settings
            name = _SETTINGS[key[:-1]]
            held: Quantity = getattr(settings, name)
            if name == "travel" and self.travel is not None:
                held = self.travel
            return _of_setting(held, getattr(plan, name), key[-1] == "+", self.used.job.units)
        if key in ("gas-", "gas+"):
            return self._gas(bad_high=key == "gas+")
        return _OTHERS[key](self) if key else _NOT_SEEN

    def _gas(self, *, bad_high: bool) -> Sign:
        outcome = self.used.outcome or self.free.outcome
        if outcome is None:
            return _NOT_SEEN
        room = outcome.gas_flow
        low, high, usual = room.low, room.high, room.value
        assert low is not None  # a flow has its room
        assert high is not None
        if self.flow_m3_s is None:
            return Sign(UNSEEN, seen=False, setting=None, target=usual)
        flow = Quantity("Gas flow", "gas_flow", self.flow_m3_s, low, high, "window")
        assert usual is not None
        cures = usual < self.flow_m3_s if bad_high else usual > self.flow_m3_s
        near = nearness(self.flow_m3_s, low, high, bad_high=bad_high)
        return Sign(near, setting=flow, target=usual if cures else None)

    @cached_property
    def gap_m(self) -> float:
        """Gap as measured, else as planned [m]."""
        found = self.readings.gap_found
        return found if found is not None else self.used.plan.shape.gap_m


_SETTINGS: Mapping[str, str] = MappingProxyType(
    {"feed": "wire_feed", "volts": "volts", "travel": "travel", "tip": "tip_to_work"}
)


def _air(signs: Signs) -> Sign:
    return _NOT_SEEN if signs.wind is None else Sign(DRAFT[signs.wind])


def _wide_gap(signs: Signs) -> Sign:
    """A gap against half the plate: wider, the arc falls through."""
    return Sign(min(signs.gap_m / (signs.used.job.thinner_m / 2), WORST))


def _heat(signs: Signs) -> Sign:
    """Heat against the most the plate bears."""
    outcome, most = signs.used.outcome, signs.used.plan.run.heats.high
    if outcome is None or outcome.heat.value is None or most == inf:
        return Sign(0.0)
    return Sign(min(outcome.heat.value / most, WORST))


def _between_modes(signs: Signs) -> Sign:
    """Current a little under spray where spray is meant, or globular."""
    job, outcome, point = signs.used.job, signs.used.outcome, signs.used.point
    if outcome is None or point is None:
        return _NOT_SEEN
    if outcome.transfer == "globular":
        return Sign(1.0)
    if signs.used.plan.transfer != "spray" or spray_refused(job.wire, job.gas):
        return Sign(0.0)
    return Sign(min(max(2 - point.current_a / transition_current(job.wire, job.gas), 0.0), 1.0))


def _cold_short(signs: Signs) -> Sign:
    """Short circuit on plate too thick for it."""
    short = signs.used.plan.transfer == "short"
    over = signs.used.job.thinner_m / COLD_LAP_M - 0.5
    return Sign(min(max(over, 0.0), WORST) if short else 0.0)


def _large_leg(signs: Signs) -> Sign:
    """Leg of one bead against the practical one-pass leg of the position."""
    job = signs.used.job
    if not job.is_fillet:
        return Sign(0.0)
    leg = signs.used.plan.shape.leg_m / signs.passes**0.5
    return Sign(min(leg / job.position.practical_leg_m, WORST) if leg > 0 else 0.0)


def _crater(signs: Signs) -> Sign:
    found = signs.readings.crater
    return _NOT_SEEN if found is None else Sign(1.0 if found > 0 else 0.0)


def _where(signs: Signs, *orientations: str) -> Sign:
    return Sign(1.0 if signs.used.job.position.orientation in orientations else 0.0)


def _thick(signs: Signs) -> Sign:
    return Sign(min(signs.used.job.thinner_m / HEAVY_PLATE_M, 1.0))


_OTHERS: Mapping[str, Callable[[Signs], Sign]] = MappingProxyType(
    {
        "wind": _air,
        "gap": _wide_gap,
        "heat": _heat,
        "between-modes": _between_modes,
        "cold-short": _cold_short,
        "large-leg": _large_leg,
        "crater": _crater,
        "downhill": lambda signs: _where(signs, "vertical-down"),
        "woven": lambda signs: _where(signs, "vertical-up", "overhead"),
        "thick": _thick,
        "co2": lambda signs: Sign(signs.used.job.gas.co2),
        "thin-wire": lambda signs: Sign(THIN_WIRE[signs.used.job.wire.size]),
        "cored": lambda signs: Sign(1.0 if signs.used.job.wire.traits.cored else 0.0),
        "lean-wire": lambda signs: Sign(1.0 if signs.used.job.wire.type.name == "ER70S-3" else 0.0),
    }
)
"""Signs that are no setting, by key."""


def _of_setting(used: Quantity, plan: Quantity, bad_high: bool, system: units.System) -> Sign:
    """How near its bad end a setting stands, and where to go: the plan's, else mid-window."""
    value, low, high = used.value, used.low, used.high
    if value is None or low is None or high is None or high <= low:
        return _NOT_SEEN
    near = nearness(value, low, high, bad_high=bad_high)
    targets = [
        units.settable(each, used.measure, system)
        for each in (plan.value, (low + high) / 2)
        if each is not None and low <= each <= high
    ]
    cures = [
        each
        for each in targets
        if (value - each if bad_high else each - value) > LEAST_MOVE * (high - low)
    ]
    return Sign(near, setting=used, target=cures[0] if cures else None)
