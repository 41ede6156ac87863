"""A part's minutes off the arc: by the minutes of each thing done, or by an operating factor."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from beadwright.errors import FieldErrors
from beadwright.money.asked_way import AskedWay
from beadwright.money.way import Way, off_arc
from beadwright.money.way_entries import WayEntries

_MINUTES = ("load", "fit_up", "reposition", "clean", "spatter", "other")
"""Keys of minutes for a part."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OffArc:
    """A part's time off the arc; the fields of ``way.Way`` [s].

    Attributes:
        by_factor: True if an operating factor holds all of it but the clean-up, which it holds too
            and which stands apart.
    """

    by_factor: bool = False
    load_s: float = 0.0
    fit_up_s: float = 0.0
    reposition_s: float = 0.0
    clean_s: float = 0.0
    spatter_s: float = 0.0
    other_s: float = 0.0
    spool_change_s: float = 0.0
    swap_s: float = 0.0
    stopped: float = 0.0
    tipped: float = 0.0
    stations: int = 1


def time_off_arc(
    asked: AskedWay, arc_s: float, counts: Mapping[str, int], first: Way | None
) -> OffArc:
    """Return a part's time off the arc.

    An operating factor holds all of it, the clean-up too, which stands apart within it. A later
    way without a factor of its own has the first way's minutes, changed by what its own differ.

    Source: definition of the factor: arc time over all time.

    Args:
        asked: The way [-].
        arc_s: Arc time of a part [s].
        counts: How many times a part ``reposition`` and ``clean`` are taken; the rest once [-].
        first: The first way, for a later one [-].

    Raises:
        FieldErrors: If a factor leaves less time than the clean-up written takes, or one of two
            keys that belong together is missing.
    """
    if asked.own.factor is not None:
        return _by_factor(asked, off_arc(arc_s, asked.own.factor))
    if first is not None and asked.base.factor is not None:
        return _as_the_first(asked, counts, first)
    taken = asked.taken
    return OffArc(
        load_s=_minutes(taken, "load"),
        fit_up_s=_minutes(taken, "fit_up"),
        reposition_s=counts["reposition"] * _minutes(taken, "reposition"),
        clean_s=counts["clean"] * _minutes(taken, "clean"),
        spatter_s=_minutes(taken, "spatter"),
        other_s=_minutes(taken, "other"),
        spool_change_s=_minutes(taken, "spool_change"),
        swap_s=_minutes(taken, "swap") / asked.shop.batch,
        stopped=_stopped(asked),
        tipped=_minutes(taken, "tip_change") / (taken.tip_life or 1.0),
        stations=taken.stations or 1,
    )


def _minutes(entries: WayEntries, key: str) -> float:
    found: float | None = getattr(entries, key)
    return found or 0.0


def _by_factor(asked: AskedWay, total: float) -> OffArc:
    clean_up = asked.taken.spatter or 0.0
    if clean_up > total:
        if "spatter" in asked.given:
            text = (
                f"This leaves {total / 60:.1f} min of a part off the arc, and the spatter alone "
                f"takes {clean_up / 60:.1f} min: write a lower factor or fewer minutes."
            )
            raise FieldErrors({f"{asked.prefix}factor": [text]})
        clean_up = total
    return OffArc(by_factor=True, spatter_s=clean_up, other_s=total - clean_up)


def _as_the_first(asked: AskedWay, counts: Mapping[str, int], first: Way) -> OffArc:
    own, base = asked.own, asked.base
    written = base.spatter or 0.0
    held = first.spatter_s / written if written else 1.0
    apart = {
        key: held * counts.get(key, 1) * (_minutes(own, key) - _minutes(base, key))
        for key in _MINUTES
        if getattr(own, key) is not None
    }
    spatter = first.spatter_s + apart.pop("spatter", 0.0)
    return OffArc(
        by_factor=True,
        spatter_s=spatter,
        other_s=max(0.0, first.other_s + sum(apart.values())),
    )


def _stopped(asked: AskedWay) -> float:
    """Stops to clean the nozzle for each second of arc; both of their keys, or none."""
    stop, every = asked.taken.clean_stop, asked.taken.clean_every
    if not stop:
        return 0.0
    if every is None:
        text = "A stop counts by the arc time between two: write it, as 20min."
        raise FieldErrors({f"{asked.prefix}clean_every": [text]})
    return stop / every
