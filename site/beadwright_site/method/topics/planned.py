"""The method of what a hand sets, as data: usual currents, travel, legs; the score of the plan."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.job.usual_leg import UPHILL_OVER_PLATE, USUAL_LEG_IN
from beadwright.process.plate_currents import BUTT_LINE_A, FILLET_LINE_A, SHORT_COMFORT_A
from beadwright.process.position_currents import HELD_A, SHORT_HELD
from beadwright.process.positions import COMFORTABLE_TRAVEL_M_S, TRAVEL_RANGE_M_S
from beadwright.setting.aims import EDGE, TAKEN_BY_TRAVEL
from beadwright.setting.plan import LEAST_ROOM, NEARLY, SHORT_BELOW_M, SHORT_TO_M
from beadwright.setting.procedure_rows import TABLES
from beadwright.setting.procedure_score import NEAR_AMPS, NEAR_VOLTS, Score, scores
from beadwright.setting.set_volts import (
    FLUX_OUT_OF_POSITION_V,
    SHORT_BUTT_V,
    SHORT_FILLET_V,
)
from beadwright.setting.usual_current import BACKED_BUTT, OPEN_SHARE
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import equation, fenced, function, sub

I_PLATE, I_HELD = sub("I", "plate"), sub("I", "held")
W_SLOW, W_FAST = sub("w", "slow"), sub("w", "fast")


def _in_min(value: float) -> str:
    return units.show(value, "travel", "us")


def _mm(length_m: float) -> str:
    return units.show(length_m, "length", "si")


def _percent(share: float) -> str:
    return f"{100 * share:.0f}%"


def start() -> Equation:
    """Return how a balanced start is found."""
    return Equation(
        "balanced",
        "Where a balanced start stands",
        (
            equation("I", "=", function("min", fenced(I_PLATE, ",", I_HELD))),
            equation(W_SLOW, "≤", "w", "≤", W_FAST),
        ),
        (
            Symbol("I", "current set", "A"),
            Symbol(I_PLATE, "what printed tables run on plate of this thickness", "A"),
            Symbol(I_HELD, "what a hand holds in the position", "A"),
            Symbol("w", "travel that fills the joint at that current", "m/s"),
            Symbol(W_SLOW, "slow end of a comfortable travel", "m/s"),
            Symbol(W_FAST, "fast end", "m/s"),
        ),
        "On auto: no feed and no travel speed set by hand.",
        "The score below: how often it stands where a printed row does.",
        ("power-source-conditions", "position-currents", "practice"),
        "Where the travel is not comfortable, the hand moves on a little and the current gives "
        f"way: the travel takes the power {TAKEN_BY_TRAVEL:g} of what lies beyond. Metal-cored "
        "wire is given the current solid wire of its size would be, and travels as much faster as "
        f"it lays more. {_percent(EDGE)} of the window is kept free at either end. A track runs "
        f"{OPEN_SHARE['track']:g} and a robot {OPEN_SHARE['robot']:g} times a hand's current in "
        f"an open arc; a butt on a backing {BACKED_BUTT:g} times one without. Short-circuit volts "
        f"in argon mixtures are set {SHORT_FILLET_V:+g} V on fillets and {SHORT_BUTT_V:+g} V on "
        "butts from the middle of their line; flux-cored wire "
        f"{FLUX_OUT_OF_POSITION_V['vertical-up']:+g} V uphill and "
        f"{FLUX_OUT_OF_POSITION_V['overhead']:+g} V overhead. A bead is never planned smaller "
        "than the arc has to lay at the fastest travel, with "
        f"{_percent(LEAST_ROOM - 1)} room.",
        ("usual_current.usual_current", "usual_current.runs_as_butt",
         "usual_current.OPEN_SHARE", "usual_current.BACKED_BUTT",
         "aims.balanced_current", "aims.solid_twin", "aims.TAKEN_BY_TRAVEL", "aims.EDGE",
         "set_volts.set_volts_shift", "set_volts.SHORT_BUTT_V", "set_volts.SHORT_FILLET_V",
         "set_volts.FLUX_OUT_OF_POSITION_V", "plan.least_bead", "plan.LEAST_ROOM",
         "like_for_like.like_for_like", "like_for_like.other_wire"),
    )  # fmt: skip


def plate_table() -> Table:
    """Return the lines of current by plate."""
    butts = dict(BUTT_LINE_A)
    fillets = dict(FILLET_LINE_A)
    rows = tuple(
        (
            f"{mm:g}",
            f"{fillets[mm]:.0f}" if mm in fillets else "",
            f"{butts[mm]:.0f}" if mm in butts else "",
        )
        for mm in sorted({*fillets, *butts})
    )
    sizes = ", ".join(f"{size} {amps:.0f} A" for size, amps in SHORT_COMFORT_A.items())
    return Table(
        "plate-currents",
        "Current by plate, 0.045 in wire",
        ("plate, mm", "fillet, A", "butt, A"),
        rows,
        ("power-source-conditions", "practice"),
        "Straight between the points. Short circuit levels off at what its size carries: "
        f"{sizes}. A thinner wire runs the open arc in the share of its usual top, a thicker one "
        f"takes part of what its top allows. Plate under {_mm(SHORT_BELOW_M)} mm is "
        f"short-circuited; spray is planned from {_percent(NEARLY)} of its least current; in gas "
        f"that does not spray, argon mixtures short to {_mm(SHORT_TO_M)} mm and run globular over "
        "it.",
        ("plate_currents.FILLET_LINE_A", "plate_currents.BUTT_LINE_A",
         "plate_currents.SHORT_SHARE", "plate_currents.SHORT_COMFORT_A",
         "plate_currents.THICKER_TAKES", "plate_currents.plate_current",
         "plate_currents.short_plate_current", "plate_currents.open_plate_current",
         "plate_currents.LINE_TOP_A", "plan.NEARLY", "plan.SHORT_TO_M", "other_mode.other_mode",
         "other_mode.NEAR_SPRAY_CO2"),
    )  # fmt: skip


def position_table() -> Table:
    """Return what is held out of position."""
    rows = tuple(
        (kind, where, size, f"{usual:.0f}", f"{most:.0f}")
        for (kind, where), sizes in HELD_A.items()
        if kind != "metal-cored"
        for size, (usual, most) in sizes.items()
    )
    short = "; ".join(
        f"{where} {usual:g}, at most {most:g}"
        for where, (usual, most) in SHORT_HELD.items()
        if usual != 1
    )
    return Table(
        "position-currents",
        "Current held out of position, open arc and pulse",
        ("wire", "position", "size", "set, A", "most, A"),
        rows,
        ("position-currents", "overhead-sample", "technician-points", "practice"),
        f"Short circuit out of position over flat: {short}. Metal-cored wire is pulsed a little "
        "hotter than solid.",
        ("position_currents.HELD_A", "position_currents.SHORT_HELD",
         "position_currents.held_current"),
    )  # fmt: skip


def travel_table() -> Table:
    """Return the comfortable travel and the range held."""
    rows = tuple(
        (
            mover,
            where,
            f"{_in_min(COMFORTABLE_TRAVEL_M_S[mover, where][0])} to "
            f"{_in_min(COMFORTABLE_TRAVEL_M_S[mover, where][1])}",
            f"{_in_min(low)} to {_in_min(high)}",
        )
        for (mover, where), (low, high) in TRAVEL_RANGE_M_S.items()
    )
    return Table(
        "comfortable-travel",
        "Travel, in/min",
        ("moved by", "position", "comfortable", "held"),
        rows,
        ("power-source-conditions", "overhead-sample", "practice"),
        "",
        ("positions.COMFORTABLE_TRAVEL_M_S",),
    )


def leg_table() -> Table:
    """Return the leg laid where none is asked for."""
    rows = tuple((f"{plate:g}", f"{leg:g}") for plate, leg in USUAL_LEG_IN)
    return Table(
        "usual-leg",
        "Leg where none is asked for, in",
        ("plate", "leg"),
        rows,
        ("power-source-conditions", "practice"),
        "Straight between. Uphill it is no less than what the usual current lays at a comfortable "
        f"travel, to {UPHILL_OVER_PLATE:g} times the plate. The code's minimum stands beside it.",
        ("usual_leg.USUAL_LEG_IN", "usual_leg.UPHILL_OVER_PLATE", "usual_leg.usual_leg",
         "usual_leg.leg_of_plate", "job_joint.ROUNDED_CORNER", "job_joint.told_leg"),
    )  # fmt: skip


def _score_row(group: str, score: Score) -> tuple[str, ...]:
    volts = "" if score.volts_off is None else f"{score.volts_off:+.1f}"
    return (group, str(score.rows), _percent(score.inside), _percent(score.near),
            f"{score.amps_off:+.0%}", volts)  # fmt: skip


def score_table() -> Table:
    """Return how Dial in stands against whole published rows."""
    left = sorted({table.name for table in TABLES if table.left_out})
    return Table(
        "plan-score",
        "Dial in against whole published rows",
        ("group", "rows", "inside the window", "at the set point", "amps off", "volts off"),
        tuple(_score_row(group, score) for group, score in scores().items()),
        tuple(dict.fromkeys(_sources())),
        f"At the set point: within {_percent(NEAR_AMPS)} of the printed amps and {NEAR_VOLTS:g} V "
        "of the printed volts, counted from the nearer end of a range. Off: the median, with its "
        f"sign. Tables that took no part in making any constant: {', '.join(left)}.",
        (
            "procedure_rows.TABLES",
            "procedure_score.scores",
            "procedure_score.held_rows",
            "procedure_score.NEAR_AMPS",
            "procedure_score.NEAR_VOLTS",
            "procedure_score.SHEET_TO_MM",
        ),
    )


def _sources() -> Iterator[str]:
    for table in TABLES:
        yield table.source


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    tables = (plate_table(), position_table(), travel_table(), leg_table(), score_table())
    return (Section(start(), tables),)
