"""The smallest change of setting that gives the next weld its size, by the laid-metal balance.

The section laid goes with feed over travel, a leg with its root. Where the travel was timed, the
weld measured says how much metal a run lays in this hand; where it was not, it says the travel.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.inspection.inspected import Inspected
from beadwright.inspection.used_settings import Change, UsedSettings
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.joint.fillets import face_section, leg_of_section
from beadwright.phrases import Phrase, say
from beadwright.process.transfer import Transfer
from beadwright.setting.dial_in import DialIn
from beadwright.setting.size_limits import OVERWELD_M

LEAST_BEAD = 0.2
"""Least share of a bead that an underfilled groove's last one counts as [-]. Common practice."""


@dataclass(frozen=True, slots=True)
class Instead:
    """Another plan for the joint, where no change of one setting mends it.

    Attributes:
        transfer: Mode.
        passes: Passes [-].
        feed_m_s: Wire feed [m/s].
        travel_m_s: Travel [m/s].
    """

    transfer: Transfer
    passes: int
    feed_m_s: float
    travel_m_s: float


@dataclass(frozen=True, slots=True)
class SizeChange:
    """How the size is mended.

    Attributes:
        metal: Metal wanted over metal laid [-].
        travel_m_s: Travel used: as timed, else the one that lays what was measured [m/s].
        timed: True if the travel was typed.
        feed_m_s: Wire feed used: typed, else planned [m/s].
        volts: Volts used, or None where the machine sets its own [V].
        passes: Passes it was laid in [-].
        leg_m: Leg these settings lay by our sums; None for a groove [m].
        laid_over_sums: Metal measured over metal by our sums at the travel used [-].
        lies_wrong: Why the metal does not make the size though there is enough, or None.
        changes: What mends it, the smallest change first.
        blocked: Why neither travel nor feed can be changed so far, where none mends it.
        instead: Another plan, where none mends it and there is one.
    """

    metal: float
    travel_m_s: float
    timed: bool
    feed_m_s: float
    volts: float | None
    passes: int
    leg_m: float | None
    laid_over_sums: float
    lies_wrong: Phrase | None
    changes: tuple[Change, ...]
    blocked: tuple[Phrase, ...]
    instead: Instead | None


def metal_wanted(weld: Inspected, bead_m2: float) -> float | None:
    """Return the metal that gives the size asked for over the metal laid; None: not measured [-].

    A fillet keeps its form: its section goes with the square of its legs, and the one that lacks
    most counts. What a groove's face has over or under is taken from, or added to, its last bead.

    Source: conservation of mass and geometry.

    Args:
        weld: The weld as measured [-].
        bead_m2: Section asked of one bead, above zero [m²].
    """
    if weld.job.is_fillet:
        return _fillet_metal(weld)
    seen, region = weld.readings, weld.shape.regions[0]
    if weld.job.is_round or (seen.convexity is None and seen.concavity is None):
        return None
    height = (seen.convexity or 0.0) - (seen.concavity or 0.0)
    extra = face_section(region.face_m, height - region.crown_m)
    return 1 / max(1 + extra / bead_m2, LEAST_BEAD)


def _fillet_metal(weld: Inspected) -> float | None:
    first, second = weld.legs_found
    pairs = ((first, weld.shape.leg_m), (second, weld.shape.leg2_m),
             (weld.throat_found_m, weld.throat_wanted_m))  # fmt: skip
    short = [float((wanted / found) ** 2) for found, wanted in pairs if found and found > 0]
    return max(short, default=None)


def readings_after(weld: Inspected, metal: float) -> WeldReadings:
    """Return what would be measured with so many times the metal, its form the same.

    Source: geometry: every length of a fillet goes with the root of its section.

    Args:
        weld: The weld as measured [-].
        metal: Metal over that of the weld, above zero [-].
    """
    seen = weld.readings
    if not weld.job.is_fillet:
        return replace(seen, convexity=weld.shape.regions[0].crown_m, concavity=None)
    by = metal**0.5

    def grown(length: float | None) -> float | None:
        return None if length is None else length * by

    return replace(
        seen,
        leg_found=grown(seen.leg_found),
        leg2_found=grown(seen.leg2_found),
        throat_found=grown(seen.throat_found),
        convexity=grown(seen.convexity),
        concavity=grown(seen.concavity),
        face=grown(seen.face),
    )


def is_overwelded(weld: Inspected) -> bool:
    """Return whether every leg measured is over the one asked for by what counts as too much.

    Source: ``size_limits.OVERWELD_M``.

    Args:
        weld: The weld as measured [-].
    """
    first, second = weld.legs_found
    pairs = ((first, weld.shape.leg_m), (second, weld.shape.leg2_m))
    over = [found - wanted for found, wanted in pairs if found is not None]
    return bool(over) and min(over) >= OVERWELD_M * (1 - 1e-9)


def laid_settings(planned: UsedSettings) -> UsedSettings:
    """Return the settings used with what the weld measured says of them.

    Where the travel was timed, the metal says how much of our sums this hand lays; where it was
    not, it says the travel.

    Source: conservation of mass.

    Args:
        planned: The settings used, counted by our sums [-].
    """
    metal = metal_wanted(planned.weld, planned.weld.shape.section_m2 / planned.passes)
    if metal is None:
        return planned
    ratio = _laid_m2(planned.weld, metal) / (planned.bead_m2 * planned.passes)
    if planned.dialled.job.by_hand.travel_m_s is not None:
        return replace(planned, ratio=ratio)
    return replace(planned, travel_m_s=planned.travel_m_s / ratio)


def size_change(used: UsedSettings, free: DialIn) -> SizeChange | None:
    """Return how the size is mended; None without a measured size.

    Source: conservation of mass; the room of each setting is the core's own, with the metal this
    hand lays in place of ours.

    Args:
        used: The settings used, as ``laid_settings`` has them [-].
        free: The plan of the joint with nothing set by hand [-].
    """
    weld, job = used.weld, used.dialled.job
    metal = metal_wanted(weld, weld.shape.section_m2 / used.passes)
    if metal is None:
        return None
    timed = job.by_hand.travel_m_s is not None
    # Where the travel was not timed the feed is the plan's: the travel is what went astray.
    found = sorted(
        used.changes(metal),
        key=lambda change: (not timed and change.turned != "travel", change.share),
    )
    leg = leg_of_section(used.bead_m2 * used.passes, weld.over_flat) if job.is_fillet else None
    return SizeChange(
        metal=metal,
        travel_m_s=used.travel_m_s,
        timed=timed,
        feed_m_s=used.point.feed_m_s,
        volts=used.own_volts,
        passes=used.passes,
        leg_m=leg,
        laid_over_sums=used.ratio,
        lies_wrong=_lies_wrong(weld, metal),
        changes=tuple(found),
        blocked=() if found else used.blocked(metal),
        instead=None if found else _instead(free),
    )


def _laid_m2(weld: Inspected, metal: float) -> float:
    """Section of all beads as measured; without a leg, as the throat or the face says."""
    if weld.fillet is not None:
        return weld.fillet.section_m2(weld.over_flat)
    return weld.shape.section_m2 / metal


def _lies_wrong(weld: Inspected, metal: float) -> Phrase | None:
    """Metal enough for the joint, but in one leg or in the crown."""
    fillet, shape = weld.fillet, weld.shape
    if fillet is None or metal <= 1 or fillet.section_m2(weld.over_flat) < shape.section_m2:
        return None
    first, second = fillet.leg_m / shape.leg_m, fillet.leg2_m / shape.leg2_m
    if abs(first - second) * min(shape.leg_m, shape.leg2_m) < OVERWELD_M / 2:
        return say("inspection.metal-in-crown")
    low = say("inspection.leg") if first < second else say("inspection.leg2")
    return say("inspection.metal-in-one-leg", leg=low)


def _instead(free: DialIn) -> Instead | None:
    feed, travel = free.settings.wire_feed.value, free.settings.travel.value
    if not free.open or feed is None or travel is None:
        return None
    return Instead(free.plan.transfer, free.plan.passes, feed, travel)
