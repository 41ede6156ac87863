"""From a query to the numbers of each way: dialled in, or as the shop measured it.

What is not written for a later way comes from the first, with two exceptions. Settings by hand and
measurements pass only to a way that welds the same (same wire, size, gas, transfer, mover, position
and size of weld), because a measured feed says nothing about another wire. If the first way has an
operating factor, a later one takes the minutes without an arc, not the factor, changed by any
minutes of its own: a faster wire does not make fit-up faster.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.job.job_query import read_job
from beadwright.money.cost_query import ONCE_WORDS, PREFIXES, WAY_JOB_KEYS
from beadwright.money.way import Rates, Way, off_arc
from beadwright.reading.page_query import PageQuery
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.outcome import Outcome
from beadwright.words.wording import worded

_HAND = ("wfs", "volts", "ctwd", "travel")
_SAME = tuple(key for key in WAY_JOB_KEYS if key not in _HAND)
_OFF_ARC = {key: f"{key}_s" for key in ("fit_up", "reposition", "clean", "spatter", "other")}


@dataclass(frozen=True, slots=True)
class PlannedWay:
    """A way with what it was worked out from.

    Attributes:
        prefix: What its keys begin with.
        way: Its numbers.
        dialled: The dial-in it was worked out from.
        efficiency: Deposition efficiency: low, taken, high [-].
        measured: True if the arc time or the laid metal was measured.
        once: What is paid once, name by name [money].
        inherited_price: True if it uses the first way's wire price for another wire.
    """

    prefix: str
    way: Way
    dialled: DialIn
    efficiency: tuple[float, float, float]
    measured: bool
    once: tuple[tuple[str, float], ...]
    inherited_price: bool


def rates_of(values: Mapping[str, Any]) -> Rates:
    """Return what the shop pays, from a query's values.

    Args:
        values: A query's values by key [SI].
    """
    return Rates(
        values.get("labour", 0.0),
        values.get("overhead", 0.0),
        values.get("energy_price", 0.0),
        values["machine_efficiency"],
        values["idle"],
    )


def planned_ways(query: PageQuery) -> tuple[PlannedWay, ...]:
    """Return the ways of a query: two, or as many as have keys of their own.

    Args:
        query: The Cost page's query [-].

    Raises:
        FieldErrors: If a way's job cannot be read, or no setting holds and none was typed.
    """
    first = _planned(query, "", None)
    others = [p for p in PREFIXES[1:] if p == "b_" or any(k.startswith(p) for k in query.own)]
    return (first, *(_planned(query, prefix, first) for prefix in others))


class _Asked:
    """Value of a key for a way: its own, or the first way's."""

    def __init__(self, query: PageQuery, prefix: str) -> None:
        self.query, self.prefix = query, prefix
        self.same = all(self.text(key) == query.filled.get(key) for key in _SAME)

    def text(self, key: str) -> str | None:
        filled = self.query.filled
        return filled.get(self.prefix + key) or filled.get(key)

    def own(self, key: str) -> Any:
        """Value written for the way itself, or None."""
        return self.query.values.get(self.prefix + key)

    def value(self, key: str) -> Any:
        """Value written for the way, or for the first way."""
        own = self.own(key)
        return self.query.values.get(key) if own is None else own

    def tested(self, key: str) -> Any:
        """What was set by hand or measured on this way, or on one that welds the same."""
        return self.value(key) if self.same else self.own(key)

    def job_text(self) -> dict[str, str]:
        """The job's keys as this way has them."""
        filled = dict(self.query.filled)
        for key in WAY_JOB_KEYS:
            own = filled.get(self.prefix + key)
            if own:
                filled[key] = own
            elif key in _HAND and not self.same:
                filled.pop(key, None)
        return filled


def _planned(query: PageQuery, prefix: str, first: PlannedWay | None) -> PlannedWay:
    asked = _Asked(query, prefix)
    try:
        job = read_job(asked.job_text()).job
    except FieldErrors as error:
        raise FieldErrors(
            {prefix + k if k in WAY_JOB_KEYS else k: v for k, v in error.messages.items()}
        ) from error
    dialled = dial_in(job)
    outcome = dialled.outcome
    if outcome is None:
        stops = (n.phrase for n in dialled.notes if n.level == "stop")
        fight = next((worded(phrase, job.units) for phrase in stops), "")
        text = f"No setting holds every limit. {fight} Write the feed you run."
        raise FieldErrors({f"{prefix}wfs": [text]})
    efficiency = _efficiency(asked, dialled)
    metal, melted = _melted(asked, dialled, outcome, efficiency[1])
    once = tuple((key, float(asked.own(key) or 0.0)) for key in ONCE_WORDS) if prefix else ()
    way = _way(asked, dialled, outcome, metal, melted, efficiency[1], once, first)
    measured = any(asked.tested(key) is not None for key in ("arc_min", "laid"))
    lent = bool(prefix) and not asked.same and asked.own("wire_price") is None
    return PlannedWay(prefix, way, dialled, efficiency, measured, once, lent)


def _efficiency(asked: _Asked, dialled: DialIn) -> tuple[float, float, float]:
    measured = asked.tested("efficiency")
    return dialled.plan.efficiency if measured is None else (measured, measured, measured)


def _melted(
    asked: _Asked, dialled: DialIn, outcome: Outcome, efficiency: float
) -> tuple[float, float]:
    """Weld metal in a part [kg] and wire melted while the arc burns [kg/s].

    Feed and travel as dialled in, unless arc time or laid metal were measured. With both measured
    the metal is what they lay, over or under the drawing's.
    """
    job, point = dialled.job, dialled.point
    assert point is not None  # an outcome comes from a point
    drawn = (outcome.metal.value or 0.0) * job.weld_length_m * job.welds
    arc, laid = asked.tested("arc_min"), asked.tested("laid")
    if arc is not None and laid is not None:
        return arc * laid, laid / efficiency
    if laid is not None:
        return drawn, laid / efficiency
    if arc is not None:
        return drawn, drawn / arc / efficiency
    melted = job.wire.linear_mass_kg_m * point.feed_m_s
    return melted * efficiency * (outcome.arc_time.value or 0.0), melted


def _way(
    asked: _Asked,
    dialled: DialIn,
    outcome: Outcome,
    metal_kg: float,
    melted_kg_s: float,
    efficiency: float,
    once: tuple[tuple[str, float], ...],
    first: PlannedWay | None,
) -> Way:
    values, job, point = asked.query.values, dialled.job, dialled.point
    assert point is not None  # an outcome comes from a point
    passes = job.welds * dialled.plan.passes
    off = _off_arc(asked, metal_kg / melted_kg_s / efficiency, job.welds, passes, first)
    return Way(
        name=_name(asked, dialled, first),
        metal_kg=metal_kg,
        length_m=job.weld_length_m * job.welds,
        melted_kg_s=melted_kg_s,
        efficiency=efficiency,
        waste=asked.value("waste"),
        wire_kg=asked.value("wire_price") or 0.0,
        gas_m3=_gas_price(asked),
        gas_flow_m3_s=asked.value("gas_flow") or outcome.gas_flow.value or 0.0,
        gas_extra_s=values.get("gas_extra", 0.0),
        starts=passes,
        arc_w=point.volts * point.current_a,
        tips_s=_tips(asked),
        spool_kg=asked.value("spool"),
        rework=asked.value("rework") or 0.0,
        grind_s=values.get("grind", 0.0),
        yearly=asked.own("yearly") or 0.0,
        once=sum(amount for _, amount in once),
        **off,
    )


def _off_arc(
    asked: _Asked, arc_s: float, welds: int, passes: int, first: PlannedWay | None
) -> dict[str, float]:
    """Time off the arc by field [s]; by factor where one is given, spool changes and all."""
    none = dict.fromkeys((*_OFF_ARC.values(), "spool_change_s"), 0.0)
    if asked.own("factor") is not None:
        return none | {"other_s": off_arc(arc_s, asked.own("factor"))}
    times = {"reposition": welds, "clean": passes}
    if first is not None and asked.query.values.get("factor") is not None:
        typed = (key for key in _OFF_ARC if asked.prefix + key in asked.query.own)
        apart = sum(times.get(key, 1) * (asked.own(key) - _of_first(asked, key)) for key in typed)
        return none | {"other_s": max(0.0, first.way.other_s + apart)}
    found = {
        field: times.get(key, 1) * float(asked.value(key) or 0.0) for key, field in _OFF_ARC.items()
    }
    return found | {"spool_change_s": float(asked.value("spool_change") or 0.0)}


def _of_first(asked: _Asked, key: str) -> float:
    return float(asked.query.values.get(key) or 0.0)


def _name(asked: _Asked, dialled: DialIn, first: PlannedWay | None) -> str:
    """The name given, or wire and gas; told apart from the first way's where they are the same."""
    given = asked.own("name")
    if given:
        return str(given)
    wire, gas = dialled.job.wire, dialled.job.gas
    name = f"{wire.type.name} {wire.size}, {gas.name}"
    if first is None or first.way.name != name:
        return name
    return f"{name}, way {asked.prefix[0].upper()}"


def _gas_price(asked: _Asked) -> float:
    """Price by the cylinder where it and its content are given, else by volume [money/m³]."""
    price, content = asked.value("cylinder_price"), asked.value("cylinder_gas")
    by_volume = asked.own("gas_price") is not None and asked.own("cylinder_price") is None
    if price is not None and content is not None and not (asked.prefix and by_volume):
        return float(price / content)
    return float(asked.value("gas_price") or 0.0)


def _tips(asked: _Asked) -> float:
    """Tips and nozzles by arc time [money/s]."""
    values = asked.query.values
    tips = (asked.value("tip_price") or 0.0) / asked.value("tip_life")
    return float(tips + values.get("nozzle_price", 0.0) / values["nozzle_life"])


def first_way(query: PageQuery) -> PlannedWay:
    """Return the first way of a query alone.

    Args:
        query: The query of a page that asks for one way [-].

    Raises:
        FieldErrors: As ``planned_ways``.
    """
    return _planned(query, "", None)
