"""The method of the joints as data: sections, throats and what the codes ask of a fillet."""

from __future__ import annotations

from beadwright import units
from beadwright.job.joint_conflicts import MOST_FILLET_GAP_M
from beadwright.job.preparations import (
    SQUARE_BACKED_TO_M,
    SQUARE_GOUGED_GAP_M,
    SQUARE_MOST_GAP_M,
    SQUARE_ONE_SIDE_TO_M,
    SQUARE_REINFORCEMENT_M,
)
from beadwright.joint.fillet_joints import SKEW_LEAST_DEG, SKEW_MOST_DEG
from beadwright.joint.fillets import (
    MINIMUM_LEG_M,
    MINIMUM_LEG_METRIC_M,
    REINFORCED_OVER_FLAT,
)
from beadwright.joint.groove_joints import GROOVE_TOE_M
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import (
    equation,
    fenced,
    function,
    line,
    over,
    power,
    root,
    row,
    sub,
)

Z_1, Z_2, Z_G = sub("z", "1"), sub("z", "2"), sub("z", "g")
_HALF = over("ψ", "2")

_SECTION = Symbol("S", "section of the bead", "m²")
_FACE = Symbol("b", "width of the face", "m")
_CROWN = Symbol("h", "crown of the face, taken as a parabola", "m")

FILLET = Equation(
    "fillet",
    "Fillet: section, crown, throat",
    (
        equation("S", "=", over(power("z", "2"), "2"), "+", over("2", "3"), line("· b · h")),
        equation("b", "=", "z", root("2")),
        equation("a", "=", over("z", root("2"))),
    ),
    (
        _SECTION,
        Symbol("z", "leg; a laid section is counted as the leg that has this section", "m"),
        _FACE,
        Symbol("h", "crown of the face, taken as a parabola; blank: so much that the section is "
               f"{REINFORCED_OVER_FLAT:g} times the flat one, within the code's limit", "m"),
        Symbol("a", "throat of the leg asked for", "m"),
    ),
    "Equal legs at 90°.",
    "Exact for the shape drawn; a real bead is not so regular.",
    ("fillet-weights", "fillet-reinforced", "aws-d1.1-convexity"),
    "A root opening over 1/16 in is added to the leg, up to "
    f"{units.show(MOST_FILLET_GAP_M, 'leg', 'us')} in; over that no fillet is welded.",
    ("fillets.throat", "fillets.flat_section", "fillets.face_section",
     "fillets.usual_crown", "fillets.largest_convexity", "fillets.gapped_leg",
     "fillets.leg_of_section", "fillets.REINFORCED_OVER_FLAT", "joints.rounded_face",
     "joint_conflicts.MOST_FILLET_GAP_M"),
)  # fmt: skip

SKEWED = Equation(
    "skewed",
    "Fillet of unequal legs, or not at 90°",
    (
        equation("b", "=", root(row(power(Z_1, "2"), "+", power(Z_2, "2"), "−", "2", "·", Z_1, "·",
                                    Z_2, "·", function("cos", "ψ")))),
        equation("a", "=", over(row(Z_1, "·", Z_2, "·", function("sin", "ψ")), "b")),
        equation("S", "=", over("1", "2"), "·", Z_1, "·", Z_2, "·", function("sin", "ψ"), "+",
                 over("2", "3"), line("· b · h")),
        equation("z", "=", over("a", function("cos", fenced(_HALF))), ",", Z_G, "=", "z", "·",
                 function("sin", "ψ")),
    ),
    (
        _FACE,
        Symbol(Z_1, "leg on the bottom plate", "m"),
        Symbol(Z_2, "leg on the other", "m"),
        Symbol("ψ", "angle between the plates on the weld's side", "°"),
        Symbol("a", "throat; never more than the shorter leg", "m"),
        _SECTION,
        _CROWN,
        Symbol("z", "equal legs that give the throat of a square tee", "m"),
        Symbol(Z_G, "what a leg gauge reads of them", "m"),
    ),
    f"{SKEW_LEAST_DEG:g} to {SKEW_MOST_DEG:g}°. Sharper, the root is not reached.",
    "Exact for the shape drawn.",
    ("mass-balance",),
    "",
    ("fillet_joints.fillet_face", "fillet_joints.fillet_throat", "fillet_joints.skew_leg",
     "fillet_joints.gauge_leg", "fillet_joints.fillet_joint", "fillet_joints.SKEW_LEAST_DEG",
     "fillet_joints.SKEW_MOST_DEG"),
)  # fmt: skip

SQUARE = Equation(
    "square",
    "Square butt: section",
    (equation("S", "=", line("g · t +"), over("2", "3"), line("· b · h")),),
    (
        _SECTION,
        Symbol("g", "root opening", "m"),
        Symbol("t", "thickness of the thinner plate", "m"),
        Symbol("b", "width of the face: root opening, and a toe of t to 3 mm each side", "m"),
        _CROWN,
    ),
    "Welded from one side with no backing, up to about "
    f"{SQUARE_ONE_SIDE_TO_M * 1000:g} mm (5/32 in); over "
    f"{units.show(SQUARE_BACKED_TO_M, 'leg', 'us')} in no prequalified detail for gas metal arc "
    "welds it through. A closed corner is the same, turned on its side.",
    "Exact for the shape drawn.",
    ("mass-balance", "iso-9692-1", "aisc-square-details", "practice"),
    "Root opening left blank: from 1/16 in of plate on, half the thickness, to "
    f"{units.show(SQUARE_MOST_GAP_M, 'leg', 'us')} in; on a backing as wide as the plate is thick, "
    f"to {units.show(SQUARE_BACKED_TO_M, 'leg', 'us')} in; gouged from the back, where it is "
    f"welded from both sides, {units.show(SQUARE_GOUGED_GAP_M, 'leg', 'us')} in. Crown left blank: "
    f"{units.show(SQUARE_REINFORCEMENT_M, 'leg', 'us')} in, in a groove too.",
    ("groove_joints.square_face_width",
     "closed_corner.closed_corner_joint", "preparations.SQUARE_ONE_SIDE_TO_M",
     "preparations.square_gap", "preparations.SQUARE_GOUGED_GAP_M",
     "preparations.SQUARE_GAP_FROM_M", "preparations.SQUARE_MOST_GAP_M",
     "preparations.SQUARE_BACKED_TO_M", "preparations.SQUARE_REINFORCEMENT_M"),
)  # fmt: skip

GROOVE = Equation(
    "groove",
    "Grooves: section",
    (
        equation(
            "S",
            "=",
            line("g · t +"),
            over("1", "2"),
            "·",
            power("p", "2"),
            "·",
            fenced(function("tan", "α"), "+", function("tan", "β")),
            "+",
            over("2", "3"),
            line("· b · h"),
        ),
        equation(
            "b",
            "=",
            "g",
            "+",
            "p",
            "·",
            fenced(function("tan", "α"), "+", function("tan", "β")),
            "+",
            "2",
            "·",
            "e",
        ),
    ),
    (
        _SECTION,
        Symbol("g", "root opening", "m"),
        Symbol("t", "how deep the metal goes on the side welded", "m"),
        Symbol("p", "depth of the preparation", "m"),
        Symbol("α", "bevel of one edge: half the groove angle of a V", "°"),
        Symbol("β", "bevel of the other; none in a bevel groove", "°"),
        Symbol("b", "width of the face", "m"),
        Symbol("e", f"how far the cap laps over each edge, {1000 * GROOVE_TOE_M:g} mm", "m"),
        _CROWN,
    ),
    "Each side of a double groove by itself.",
    "Exact for the shape drawn.",
    ("mass-balance", "practice"),
    "",
    ("groove_joints.groove_joint", "groove_joints.GROOVE_TOE_M", "joints.polygon_area"),
)


def legs_table() -> Table:
    """Return the code's least leg by thickness."""
    bounds = [limit for limit, _ in MINIMUM_LEG_M]

    def upto(at: int) -> str:
        if bounds[at] == float("inf"):
            return f"over {units.show(bounds[at - 1], 'leg', 'us')} in"
        return f"to {units.show(bounds[at], 'leg', 'us')} in"

    return Table(
        "legs",
        "Least leg by the thinner plate",
        ("thinner plate", "least leg"),
        tuple(
            (
                upto(at),
                f"{units.show(leg, 'leg', 'us')} in, {MINIMUM_LEG_METRIC_M[at][1] * 1000:g} mm",
            )
            for at, (_, leg) in enumerate(MINIMUM_LEG_M)
        ),
        ("aisc-j2.4", "aws-d1.1-7.7", "aisc-j2.2b"),
        "No more than the thinner plate itself. Strength takes the sizes in millimeters where the "
        "page is in millimeters, to 6, 13 and 19 mm. Along an edge 1/4 in (6 mm) thick or more: "
        "1/16 in (2 mm) less. "
        "Shortest fillet that counts in full: four legs; a piece of a broken one also 1-1/2 in. A "
        "lap covers five times the thinner plate and 1 in. Leg left blank: what the plate's usual "
        "mode lays well, and no more than a corner's edge holds: open, all of the second plate; "
        "half open, half of it.",
        (
            "fillets.MINIMUM_LEG_M",
            "fillets.MINIMUM_LEG_METRIC_M",
            "fillets.METRIC_SIZES_M",
            "fillets.printed_size",
            "fillets.minimum_leg",
            "fillets.largest_edge_leg",
            "fillets.least_length",
            "fillets.least_segment",
            "fillets.least_lap",
            "job_joint.wanted_leg",
            "job_joint.corner_room",
        ),
    )


def gauges_table() -> Table:
    """Return the thickness of steel sheet by gauge number."""
    return Table(
        "gauges",
        "Steel sheet by gauge",
        ("gauge", "in", "mm"),
        tuple(
            (f"{number}", inches, f"{25.4 * float(inches):.2f}")
            for number, inches in units.SHEET_GAUGE_IN.items()
        ),
        ("sheet-gauge",),
        "Uncoated; galvanized sheet is thicker.",
        ("units.SHEET_GAUGE_IN",),
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (
        Section(FILLET, (legs_table(), gauges_table())),
        Section(SKEWED),
        Section(SQUARE),
        Section(GROOVE),
    )
