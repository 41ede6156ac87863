"""What one coupon says in numbers, each beside what print gives for the same weld."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import radians, sin

from beadwright.coupons.coupon_entries import CouponEntries
from beadwright.job.job import Job
from beadwright.joint.fillet_joints import fillet_face, fillet_throat
from beadwright.joint.fillets import REINFORCED_OVER_FLAT, face_section
from beadwright.process.burnoff import constants_of
from beadwright.process.deposition import deposition_efficiency
from beadwright.process.operating import extension
from beadwright.setting.dial_in import DialIn, dial_in


@dataclass(frozen=True, slots=True)
class CouponFacts:
    """What one coupon says; None for what was not measured.

    Attributes:
        melting: What melted over what the published burn-off gives at that current [-].
        anode_share: Part of the published heat that comes from the arc, the rest from the
            extension [-].
        current_a: The amps it was seen at [A].
        efficiency: Deposition efficiency over the published typical one [-].
        crown: Section of the fillet as welded over what the tables give [-].
        travel: Travel timed over the one planned [-].
        meter_v: The machine's meter over the volts measured at the arc [V].
        travel_m_s: Travel timed [m/s].
        laid_kg_s: Weld metal laid a second, by weight [kg/s].
        feed_m_s: Wire feed, timed or else as set [m/s].
        clean_s: Minutes of clean-up of the coupon [s].
    """

    melting: float | None = None
    anode_share: float | None = None
    current_a: float | None = None
    efficiency: float | None = None
    crown: float | None = None
    travel: float | None = None
    meter_v: float | None = None
    travel_m_s: float | None = None
    laid_kg_s: float | None = None
    feed_m_s: float | None = None
    clean_s: float | None = None


def as_published(job: Job) -> Job:
    """Return a job without the shop's own numbers.

    Args:
        job: The job [-].
    """
    return replace(job, wire=replace(job.wire, own=None))


def coupon_facts(job: Job, seen: CouponEntries, passes: int | None = None) -> CouponFacts:
    """Return what a coupon says against print.

    Source: each published model is asked for the same weld: ``burnoff``, ``deposition``,
    ``fillets``, ``setting.dial_in``.

    Args:
        job: The job welded; what is set by hand is what was set on the machine [-].
        seen: What the machine showed and what was measured [-].
        passes: Beads it was laid in; None: as planned [-].
    """
    plain = as_published(job)
    planned = dial_in(plain, passes)
    feed = _feed(planned, seen)
    volts = _arc_volts(planned, seen)
    travel = _travel(seen)
    melting, share = _melting(planned, seen, feed, volts)
    laid = _laid(seen)
    own_pace = dial_in(replace(plain, by_hand=replace(plain.by_hand, travel_m_s=None)), passes)
    asked = job.by_hand.travel_m_s or own_pace.settings.travel.value
    return CouponFacts(
        melting=melting,
        anode_share=share,
        current_a=seen.meter_amps,
        efficiency=_efficiency(planned, seen, feed, laid),
        crown=_crown(planned, seen, feed, laid, travel),
        travel=travel / asked if travel and asked else None,
        meter_v=_meter(seen),
        travel_m_s=travel,
        laid_kg_s=laid,
        feed_m_s=feed,
        clean_s=seen.clean_time,
    )


def _feed(planned: DialIn, seen: CouponEntries) -> float | None:
    """Wire feed: the length of a timed burst, else as set or planned."""
    if seen.burst_length is not None and seen.burst_time is not None:
        return seen.burst_length / seen.burst_time
    return planned.settings.wire_feed.value


def _arc_volts(planned: DialIn, seen: CouponEntries) -> float | None:
    return seen.arc_volts if seen.arc_volts is not None else planned.settings.volts.value


def _travel(seen: CouponEntries) -> float | None:
    if seen.marked is None or seen.arc_time is None:
        return None
    return seen.marked / seen.arc_time


def _meter(seen: CouponEntries) -> float | None:
    if seen.meter_volts is None or seen.arc_volts is None:
        return None
    return seen.meter_volts - seen.arc_volts


def _melting(
    planned: DialIn, seen: CouponEntries, feed: float | None, volts: float | None
) -> tuple[float | None, float | None]:
    """What melted over the published balance at the current seen, and the arc's part of it."""
    wire, tip = planned.job.wire, planned.settings.tip_to_work.value
    if seen.meter_amps is None or feed is None or volts is None or tip is None:
        return None, None
    fit, current = constants_of(wire), seen.meter_amps
    anode = current * fit.phi_v
    stick = extension(tip, volts)
    heat = anode + current**2 * fit.r_ohm_m * stick / wire.conducting_area_m2
    melted = feed * wire.linear_mass_kg_m * wire.material.drop_enthalpy_j_kg
    return melted / heat, anode / heat


def _laid(seen: CouponEntries) -> float | None:
    """Weld metal a second, from the coupon weighed before and after."""
    if seen.weight_before is None or seen.weight_after is None or seen.arc_time is None:
        return None
    return (seen.weight_after - seen.weight_before) / seen.arc_time


def _efficiency(
    planned: DialIn, seen: CouponEntries, feed: float | None, laid: float | None
) -> float | None:
    if laid is None or feed is None:
        return None
    job = planned.job
    typical = deposition_efficiency(job.wire, job.gas, planned.plan.transfer)[1]
    return laid / (feed * job.wire.linear_mass_kg_m) / typical


def _crown(
    planned: DialIn,
    seen: CouponEntries,
    feed: float | None,
    laid: float | None,
    travel: float | None,
) -> float | None:
    """Section as welded over the flat one, over what the tables give for this wire.

    By the throat, or by the convexity and the face; without them by what was laid and the legs.
    """
    job = planned.job
    if not job.is_fillet or seen.leg_seen is None or planned.plan.passes > 1:
        return None
    leg, leg2 = seen.leg_seen, seen.leg2_seen or seen.leg_seen
    flat = leg * leg2 * sin(radians(job.skew_deg)) / 2
    if seen.throat_seen is not None:
        over = seen.throat_seen - fillet_throat(leg, leg2, job.skew_deg)
        section = flat + face_section(fillet_face(leg, leg2, job.skew_deg), over)
    elif seen.convexity is not None and seen.face is not None:
        section = flat + face_section(seen.face, seen.convexity)
    elif travel is not None and feed is not None:
        rate = laid
        if rate is None:
            share = deposition_efficiency(job.wire, job.gas, planned.plan.transfer)[1]
            rate = feed * job.wire.linear_mass_kg_m * share
        section = rate / (job.wire.material.density_kg_m3 * travel)
    else:
        return None
    usual = job.wire.traits.over_flat if job.position.sprays else REINFORCED_OVER_FLAT
    return section / flat / usual
