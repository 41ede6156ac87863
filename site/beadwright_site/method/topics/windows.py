"""The method of the windows as data: what limits leave, where each binds, what a set point aims."""

from __future__ import annotations

from beadwright import units
from beadwright.process.transfer import TRANSITION_BAND
from beadwright.setting.aims import CLOSE, COLUMNS, ROUNDS, TIE
from beadwright.setting.feed_limits import FEEDER_M_S
from beadwright.setting.heat_limits import STEP_ROOM
from beadwright.setting.machine_limits import (
    ARC_SHARE,
    SOURCE_EFFICIENCY,
    SOURCE_POWER_FACTOR,
)
from beadwright.setting.plan import SHORT_BELOW_M
from beadwright.setting.size_limits import MOST_BUTT_CROWN_M, OVERWELD_M
from beadwright.setting.window_map import EDGE_BAND_V
from beadwright_site.method.equations import Equation, Section, Symbol, Table, number
from beadwright_site.method.mathml import equation, fenced, function, line, over, sub

X_LOW, X_HIGH = sub("x", "low"), sub("x", "high")
A_I, B_I = sub("a", "i"), sub("b", "i")
I_LOW, I_HIGH = sub("I", "low"), sub("I", "high")
U_LOW, U_HIGH = sub("U", "low"), sub("U", "high")
E_MOST, E_LEAST = sub("E", "most"), sub("E", "least")
S_MOST, S_LEAST = sub("s", "most"), sub("s", "least")

_FEED = Symbol("v", "wire feed", "m/s")
_VOLTS = Symbol("U", "volts at the arc", "V")
_CURRENT = Symbol("I", "current that feed draws, the arc's length taken off stickout", "A")
_TRAVEL = Symbol("w", "travel", "m/s")


def _percent(share: float) -> str:
    return f"{100 * share:.0f}%"


WINDOW = Equation(
    "window",
    "What all limits leave",
    (
        equation(X_LOW, "=", function("max", fenced(A_I)), ",",
                 X_HIGH, "=", function("min", fenced(B_I))),
        equation(X_LOW, "≤", "x", "≤", X_HIGH),
    ),
    (
        Symbol("x", "feed, volts, travel or stickout, the other three unchanged", "SI"),
        Symbol(X_LOW, "low end of its window", "SI"),
        Symbol(X_HIGH, "high end", "SI"),
        Symbol(A_I, "what limit i leaves below", "SI"),
        Symbol(B_I, "what it leaves above", "SI"),
        Symbol("i", "each limit of the tables below", "–"),
    ),
    "Every setting. Low over high: two limits conflict; both are named, no set point is given.",
    "That of the limit that sets the end; it is named beside each end.",
    ("practice",),
    "The feed's window is worked with volts on the mode's own line and travel filling the joint. "
    "Move one setting and the other three windows move with it. The pass count is the fewest that "
    "leaves a window.",
    ("limits.tightest_window", "settings.settings_of", "plan.make_plan", "dial_in.dial_in"),
)  # fmt: skip


def feeds() -> Equation:
    """Return how limits on current, travel and heat come to the wire feed."""
    return Equation(
        "window-feed",
        "Limits on current, travel and heat, brought to the feed",
        (
            equation(I_LOW, "≤", "I", fenced(line("v , U")), "≤", I_HIGH),
            equation("w", "=", over(line("η · g · v"), "s")),
            equation(E_LEAST, "≤", over(line("U · I"), "w"), "≤", number(STEP_ROOM), "·", E_MOST),
        ),
        (
            _FEED,
            _VOLTS,
            _CURRENT,
            _TRAVEL,
            Symbol(I_LOW, "highest current of the limits below", "A"),
            Symbol(I_HIGH, "lowest current of the limits above", "A"),
            Symbol("η", "deposition efficiency", "–"),
            Symbol("g", "section of metal in the wire", "m²"),
            Symbol("s", "section of one bead", "m²"),
            Symbol(E_LEAST, "lowest heat input your procedure allows", "J/m"),
            Symbol(E_MOST, "most heat the plate stands or your procedure asks", "J/m"),
        ),
        f"Feeds a usual feeder holds, {units.show(FEEDER_M_S[0], 'wire_feed', 'us')} to "
        f"{units.written(FEEDER_M_S[1], 'wire_feed')}.",
        "That of feed against current: it is the current's band that counts.",
        ("power-balance", "mass-balance", "practice"),
        f"The heat is kept {_percent(1 - STEP_ROOM)} inside its limit, for the steps volts and "
        "feed are set in. Volts and travel set by hand narrow this room as long as any is "
        "left; if none is, the room stays as it is and the setting is named as outside.",
        ("feed_limits.feed_room", "feed_limits.FEEDER_M_S", "heat_limits.STEP_ROOM",
         "heat_limits.heat_limits", "heat_limits.heat_ceiling_j_m",
         "current_limits.current_limits", "root.crossing"),
    )  # fmt: skip


VOLTS = Equation(
    "window-volts",
    "Room for volts at a feed",
    (
        equation(U_LOW, fenced("I"), "≤", "U", "≤", U_HIGH, fenced("I")),
        equation("I", "=", "I", fenced(line("v , U"))),
    ),
    (
        _VOLTS,
        _CURRENT,
        _FEED,
        Symbol(U_LOW, "low volts of the mode at a current", "V"),
        Symbol(U_HIGH, "high volts, no higher than the next mode begins", "V"),
    ),
    "Plain volts. In pulse the machine sets its own.",
    "That of the mode's edges: about 1 V.",
    ("machinery-31-t5", "power-source-conditions", "e70c-sheet"),
    "More volts, longer arc, shorter extension: the same feed draws a little more. So the ends are "
    "where the line of the mode meets that current, and limits on current and heat bind volts too.",
    ("volts_limits.volts_room", "volts_limits.edge_point", "volts_limits.mode_volts"),
)  # fmt: skip

TIP = Equation(
    "window-tip",
    "Room for stickout (tip to work) at a feed and volts",
    (equation(I_LOW, "≤", "I", fenced(line("L − ℓ")), "≤", I_HIGH),),
    (
        Symbol("I", "current the feed draws at an extension", "A"),
        Symbol(I_LOW, "lowest current of the mode, plate and heat", "A"),
        Symbol(I_HIGH, "highest", "A"),
        Symbol("L", "stickout (tip to work)", "m"),
        Symbol("ℓ", "arc length on these volts", "m"),
    ),
    "Within the usual range of wire and mode.",
    "That of the current.",
    ("power-balance", "practice"),
    "Farther out the same feed draws less; closer in, more, and the volts may no longer do.",
    ("tip_limits.tip_room",),
)  # fmt: skip


def sizes() -> Equation:
    """Return the room for travel at a feed: what is still the joint asked for."""
    more = units.show(OVERWELD_M, "leg", "us")
    crown = units.show(MOST_BUTT_CROWN_M, "leg", "us")
    return Equation(
        "window-travel",
        "Room for travel at a feed",
        (equation(over(line("η · g · v"), S_MOST), "≤", "w", "≤",
                  over(line("η · g · v"), S_LEAST)),),
        (
            _TRAVEL,
            _FEED,
            Symbol("η", "deposition efficiency", "–"),
            Symbol("g", "section of metal in the wire", "m²"),
            Symbol(S_MOST, f"largest bead that is still the joint: {more} in over the leg, or a "
                   f"crown heaped to {crown} in", "m²"),
            Symbol(S_LEAST, "smallest: the leg with a flat face, or half the crown", "m²"),
        ),
        "Within what hand, track or robot holds, and the heat limits at that feed and those volts.",
        "That of the deposition rate.",
        ("mass-balance", "practice", "aws-d1.1-5.1"),
        "",
        ("size_limits.section_room", "size_limits.bead_room", "size_limits.OVERWELD_M",
         "size_limits.MOST_BUTT_CROWN_M", "travel_limits.travel_room"),
    )  # fmt: skip


def aims() -> Equation:
    """Return what a set point is chosen for."""
    return Equation(
        "aims",
        "Fastest, coolest, easiest to run",
        (
            equation("v", "=", sub("v", "high")),
            equation("v", "=", sub("v", "low")),
            equation(function("max min", fenced(over(line("x − a"), line("b − a")), ",",
                                                over(line("b − x"), line("b − a"))))),
        ),
        (
            _FEED,
            Symbol(sub("v", "high"), "high end of its window: fastest", "m/s"),
            Symbol(sub("v", "low"), "low end, on the mode's lowest volts: coolest", "m/s"),
            Symbol("x", "each of feed, volts, travel and stickout (tip to work): easiest", "SI"),
            Symbol("a", "low end of its window; of stickout, the width is its usual range's",
                   "SI"),
            Symbol("b", "high end", "SI"),
        ),
        "An open window. What you set by hand stands, and the aim works with what is left.",
        f"Easiest within {_percent(CLOSE)} of a window's width of the spot farthest from every "
        "edge.",
        ("practice",),
        f"The feed is sought over {COLUMNS + 1} even spots, then {ROUNDS} rounds of golden section "
        "about the best, on the volts of the mode. Coolest is the arc with the lowest heat input: "
        "the lowest volts the mode holds, and the least feed that may stand on them; heat in a "
        "length of weld hardly moves with the feed. Between spots as easy, the one farther on the "
        "whole "
        f"counts {_percent(TIE)} more. Then feed and volts go to a step a hand can set, inside the "
        "window. Balanced is told below. The time told beside an aim is length × passes ÷ travel, "
        "the heat volts × amps ÷ travel.",
        ("aims.aimed_feed", "aims.coolest_feed", "aims.aimed_point", "aims.ease",
         "aims.balanced_feed", "aims.COLUMNS", "aims.ROUNDS", "aims.TIE", "aims.CLOSE",
         "set_point.set_feed",
         "set_point.set_point", "set_point.stepped", "aim_results.aim_results"),
    )  # fmt: skip


def soft_edges() -> Equation:
    """Return the bands about the edges between modes."""
    return Equation(
        "soft-edges",
        "Soft edges between modes",
        (
            equation("U", "=", sub("U", "edge"), "±", f"{EDGE_BAND_V:g}"),
            equation("I", "=", sub("I", "spray"), "·", fenced("1", "±", number(TRANSITION_BAND))),
        ),
        (
            Symbol("U", "volts at which one mode gives way to the next", "V"),
            Symbol(sub("U", "edge"), "the edge as drawn", "V"),
            Symbol("I", "current at which spray starts", "A"),
            Symbol(sub("I", "spray"), "least spray current as counted", "A"),
        ),
        "The plane of feed and volts on Dial in: hatched.",
        "The hatching is the band.",
        ("power-source-conditions", "mig-handbook-1-2"),
        "Inside it wire, gas and machine decide: listen to the arc. The window itself is cut at "
        "the edge as counted.",
        ("window_map.window_map", "window_map.EDGE_BAND_V", "transfer.TRANSITION_BAND"),
    )  # fmt: skip


def limits_table() -> Table:
    """Return which limits there are, on what, and where each is told of."""
    short = units.show(SHORT_BELOW_M, "length", "si")
    rows = (
        ("current", "mode: where it starts, the wire's usual top", "Currents by wire size, A"),
        ("current", "plate: lies on it, burns through", "Burning through, and lying on the plate"),
        ("current", "machine: its amps, the amps its volts carry", "yours"),
        ("current", "machine: its duty cycle, its breaker", "Duty cycle at another current; yours"),
        ("heat", "plate: burns through", "Burning through, and lying on the plate"),
        ("heat", "your procedure: least, most", "yours"),
        ("feed", "feeder", "common practice"),
        ("travel", "hand, track or robot by position", "Travel held steadily"),
        ("travel", "size of the weld: short, overwelded", "Room for travel at a feed"),
        ("volts", "mode: too short an arc, too long", "Volts: short circuit, globular, spray"),
        ("stickout (tip to work)", "wire and mode", "common practice"),
        ("passes", "largest bead by position", "What a bead and a layer may be, in"),
    )
    return Table(
        "window-limits",
        "Which limits there are",
        ("on", "what sets it", "where to read of it, or its source"),
        rows,
        ("practice",),
        f"Plate under {short} mm is planned in short circuit; where an open arc leaves no room on "
        "plate to 3/16 in and transfer is auto, short circuit is tried. The duty cycle counts "
        f"the arc on {ARC_SHARE['hand']:.0%} of the time by hand and {ARC_SHARE['robot']:.0%} on a "
        f"track or robot; the breaker counts a machine of {SOURCE_EFFICIENCY:.0%} efficiency and "
        f"{SOURCE_POWER_FACTOR:.0%} power factor.",
        (
            "plan.SHORT_BELOW_M",
            "plan.planned_transfer",
            "machine_limits.machine_limits",
            "machine_limits.ARC_SHARE",
            "machine_limits.SOURCE_EFFICIENCY",
            "machine_limits.SOURCE_POWER_FACTOR",
            "ways_out.DOWNHILL_TO_M",
            "remarks.UNSURE_CO2",
            "remarks.falls_through",
        ),
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic, in order."""
    return (
        Section(WINDOW, (limits_table(),)),
        Section(feeds()),
        Section(VOLTS),
        Section(sizes()),
        Section(TIP),
        Section(aims()),
        Section(soft_edges()),
    )
