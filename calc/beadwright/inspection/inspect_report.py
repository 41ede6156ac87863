"""The Inspect page's answer as a report."""

from __future__ import annotations

from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.inspected import Check, Inspected
from beadwright.inspection.size_change import SizeChange
from beadwright.inspection.trouble import SYMPTOMS, Ranked
from beadwright.inspection.used_settings import Change
from beadwright.joint.fillet_joints import gauge_leg
from beadwright.reports import ESTIMATE_DIGITS, Shown, Tree, rounded, shown


def inspect_report(found: InspectAnswer) -> Tree:
    """Return the Inspect page's answer, by part.

    Args:
        found: The answer [-].
    """
    return {
        "answer": {
            "verdict": found.verdict,
            "accept": found.query.accept,
            "checks": [_check(check) for check in found.checks],
            "gauge": _gauge(found.weld),
            "change": found.change and _size(found.change),
            "still_out": [check.key for check in found.still_out],
            "repair": [{"key": each.key, "text": each.phrase, "source": each.source}
                       for each in found.repairs],
            "trouble": [
                {"key": symptom, "text": SYMPTOMS[symptom], "causes": [*map(_cause, causes)]}
                for symptom, causes in found.troubles
            ],
        }
    }  # fmt: skip


def _check(check: Check) -> Tree:
    measured = check.measure or "length"
    limit = None if check.limit == float("inf") or not check.measure else check.limit
    return {
        "key": check.key,
        "iso_6520": check.number,
        "text": check.phrase,
        "state": check.state,
        "found": Shown(check.found, measured),
        "limit": Shown(limit, measured),
        "limit_is": check.way,
        "off": Shown(check.off, measured),
        "note": check.note or "",
        "source": check.source,
    }


def _gauge(weld: Inspected) -> Tree | None:
    """What gauges read on the fillet wanted, and what follows from the readings."""
    job, shape, fillet = weld.job, weld.shape, weld.fillet
    if not job.is_fillet:
        return None
    wanted = shown("length", leg=shape.leg_m, leg2=shape.leg2_m, throat=weld.throat_wanted_m,
                   square_across=gauge_leg(shape.leg_m, job.skew_deg))  # fmt: skip
    if fillet is None:
        return {"wanted": wanted, "found": None}
    return {
        "wanted": wanted,
        "found": {
            **shown(
                "length",
                leg=fillet.leg_m,
                leg2=fillet.leg2_m,
                throat=fillet.flat_throat_m,
                throat_counted=weld.throat_found_m,
                face=fillet.face_m,
            ),
            "section": Shown(fillet.section_m2(weld.over_flat), "area"),
        },
    }


def _size(change: SizeChange) -> Tree:
    instead = change.instead
    return {
        "metal": rounded(change.metal, ESTIMATE_DIGITS),
        "travel": Shown(change.travel_m_s, "travel"),
        "wire_feed": Shown(change.feed_m_s, "wire_feed"),
        "volts": Shown(change.volts, "volts"),
        "travel_timed": change.timed,
        "passes": change.passes,
        "leg_by_sums": Shown(change.leg_m, "length"),
        "laid_over_sums": rounded(change.laid_over_sums, ESTIMATE_DIGITS),
        "lies_wrong": change.lies_wrong or "",
        "changes": [_change(each) for each in change.changes],
        "blocked": list(change.blocked),
        "instead": instead
        and {
            "transfer": instead.transfer,
            "passes": instead.passes,
            "wire_feed": Shown(instead.feed_m_s, "wire_feed"),
            "travel": Shown(instead.travel_m_s, "travel"),
        },
    }


def _change(change: Change) -> Tree:
    return {
        "turned": change.turned,
        "travel": Shown(change.travel_m_s, "travel"),
        "wire_feed": Shown(change.feed_m_s, "wire_feed"),
        "volts": Shown(change.volts, "volts"),
        "share_of_room": rounded(change.share, ESTIMATE_DIGITS),
    }


def _cause(ranked: Ranked) -> Tree:
    setting = ranked.sign.setting
    measure = setting.measure if setting is not None else "gas_flow"
    return {
        "key": ranked.key,
        "text": ranked.cause.phrase,
        "check": ranked.cause.check,
        "score": rounded(ranked.score, ESTIMATE_DIGITS),
        "shown_by_this_job": ranked.sign.seen,
        "setting": setting,
        "go_to": Shown(ranked.sign.target, measure),
        "source": ranked.cause.source,
    }
