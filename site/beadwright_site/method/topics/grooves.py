"""The method of grooves cut part way, beveled tees, plugs and slots as data; the details."""

from __future__ import annotations

from beadwright import units
from beadwright.job.joint_conflicts import MOST_BEVEL_DEG
from beadwright.job.preparations import DETAILS, MELTED_FACE_M
from beadwright.joint.back_gouge import GOUGE_ANGLE_DEG, GOUGE_RADIUS_M, PAST_FACE_M
from beadwright.joint.groove_rules import MINIMUM_THROAT_M, STRUCTURAL_FROM_M
from beadwright_site.forms.joint_form import JOINT_NAMES
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

_LEAST, _MOST = sub("d", "least"), sub("d", "most")
_CASES = {"open": "through", "backed": "on a backing", "part": "part way"}

PART_WAY = Equation(
    "part-way",
    "Groove cut part way: effective throat",
    (equation("E", "=", "p", "−", "c"),),
    (
        Symbol("E", "effective throat; both sides add", "m"),
        Symbol("p", "depth of the groove; in a tee the shortest way from the root to the face of "
               "the fillet on it", "m"),
        Symbol("c", "what a narrow groove loses: nothing from 60°; at 45° nothing flat and "
               "horizontal, 1/8 in vertical and overhead; under 45° 1/8 in anywhere", "m"),
    ),
    "Gas metal arc; not short circuit.",
    "The code's; cut and etch a coupon to see how deep the arc reaches.",
    ("aisc-j2.1", "aisc-pjp-details"),
    "The fillet on a beveled tee: a quarter of the upright, no more than 3/8 in.",
    ("groove_rules.lost_depth", "groove_rules.LOST_M", "groove_rules.fillet_on_groove",
     "tee_grooves.distance_to_face", "tee_grooves.tee_groove_joint", "job_joint.effective_depth",
     "job_joint.OUT_OF_POSITION"),
)  # fmt: skip

HOLES = Equation(
    "holes",
    "Plug and slot: metal and hole",
    (
        equation("S", "=", over(line("d · f"), "2")),
        equation("l", "=", over(line("π · d"), "2"), "+", "2", "·", fenced("s", "−", "d")),
        equation("V", "=", line("S · l"), "=",
                 fenced(over(row("π", "·", power("d", "2")), "4"), "+", "d", "·",
                        fenced("s", "−", "d")), "·", "f"),
        equation(_LEAST, "=", "t", "+", "g"),
        equation(_MOST, "=", _LEAST, "+", "e"),
    ),
    (
        Symbol("S", "section laid along one turn", "m²"),
        Symbol("l", "way of the gun once around, at half the radius", "m"),
        Symbol("V", "weld metal of one plug or slot", "m³"),
        Symbol("d", "diameter of the hole, width of the slot", "m"),
        Symbol("s", "length of the slot; d for a plug", "m"),
        Symbol("f", "depth of fill", "m"),
        Symbol(_LEAST, "least hole", "m"),
        Symbol(_MOST, "largest hole; where 2¼ times the fill is more, that", "m"),
        Symbol("t", "thickness of the plate with the hole", "m"),
        Symbol("g", "room the wire needs around it, 5/16 in", "m"),
        Symbol("e", "1/8 in", "m"),
        Symbol("π", "3.1416", "–"),
    ),
    "Filled flush, or to the depth given; the least hole is rounded up to an odd sixteenth.",
    "Exact for the shape drawn.",
    ("geometry", "aisc-j2.3b"),
    "Filled level up to 5/8 in; thicker, half the plate and at least 5/8 in. Slots no longer than "
    "ten times the fill. Centers four diameters apart.",
    ("plug_slot.turn_length", "plug_slot.plug_joint",
     "groove_rules.least_hole", "groove_rules.largest_hole", "groove_rules.least_fill",
     "groove_rules.longest_slot", "groove_rules.FULL_FILL_M", "job_joint.hole_m",
     "job_joint.slot_m", "job_joint.fill_m", "job_joint.hole_limits", "job_joint.weld_way"),
)  # fmt: skip


_OUT, _CIRCLE = sub("x", "h"), sub("u", "h")

GOUGE = Equation(
    "back-gouge",
    "Back gouge: how deep, how wide",
    (
        equation("d", "=", "f", "+", function("min", fenced("e", ",", over("p", "2")))),
        equation(_CIRCLE, "=", root(row("2", "·", "r", "·", "h", "−", power("h", "2")))),
        equation(_OUT, "=", function("max", fenced(
            _CIRCLE, ",", over("g", "2"), "+", fenced("h", "−", "d"), "·", function("tan", "α"),
        ))),
    ),
    (
        Symbol("d", "depth of the gouge, from the back of the root", "m"),
        Symbol("f", "root face; of square edges half the plate", "m"),
        Symbol("e", "how far past it the metal is taken to be sound, "
                    f"{units.show(PAST_FACE_M, 'leg', 'us')} in", "m"),
        Symbol("p", "depth of the groove on the side welded first; between square edges its metal "
                    "is taken to reach the middle of the plate", "m"),
        Symbol(_CIRCLE, "half width of the gouge at a height, to where the walls begin", "m"),
        Symbol("r", f"radius of its bottom, {units.show(GOUGE_RADIUS_M, 'leg', 'us')} in", "m"),
        Symbol("h", "height above its bottom", "m"),
        Symbol(_OUT, "half width of what is welded again", "m"),
        Symbol("g", "root opening", "m"),
        Symbol("α", "bevel angle of the groove on the second side; none on a flat back", "°"),
    ),
    "Butts and tees with a V or bevel, square butts. Deeper than the root face, no deeper than the "
    "first side's metal.",
    "No code gives its depth: 1/16 to 1/8 in past the root face is common, and the eye decides. "
    "Type the depth you gouge.",
    ("back-gouge",),
    f"Above the round bottom the walls stand {GOUGE_ANGLE_DEG:g}° apart. A square edge beside a "
    "beveled one is left as it is. What is cut out of the first side's metal is laid twice and "
    "counted twice; the time of gouging is not counted. Short circuit is not laid in it.",
    ("back_gouge.sound_depth", "back_gouge.back_wall", "back_gouge.widest_wall",
     "back_gouge.GOUGE_RADIUS_M", "back_gouge.GOUGE_ANGLE_DEG", "back_gouge.PAST_FACE_M",
     "pass_process.apart"),
)  # fmt: skip


def _inches(value: float) -> str:
    return f"{units.show(value, 'leg', 'us')} in"


def throats_table() -> Table:
    """Return the least effective throat by thickness."""
    bounds = [limit for limit, _ in MINIMUM_THROAT_M]
    rows = tuple(
        (
            f"over {_inches(bounds[at - 1])}"
            if bounds[at] == float("inf")
            else f"to {_inches(bounds[at])}",
            _inches(least),
        )
        for at, (_, least) in enumerate(MINIMUM_THROAT_M)
    )
    return Table(
        "throats",
        "Least effective throat by the thinner plate",
        ("thinner plate", "least throat"),
        rows,
        ("aisc-j2.3",),
        "",
        ("groove_rules.MINIMUM_THROAT_M", "groove_rules.minimum_throat"),
    )


def details_table() -> Table:
    """Return the prequalified details a blank entry is filled from."""
    return Table(
        "details",
        "Preparations taken where the entry is blank",
        ("joint", "detail", "angle, root opening, root face"),
        tuple(
            (
                f"{JOINT_NAMES[joint]}, {_CASES[case]}",
                detail.name,
                f"{detail.angle_deg:g}°, {_inches(detail.gap_m)}, {_inches(detail.root_face_m)}",
            )
            for (joint, case), detail in DETAILS.items()
        ),
        ("aws-d1.1-details", "aws-d1.1-bevels", "aws-d1.1-through", "aisc-pjp-details"),
        f"Angles may be 10° wider; a bevel is no flatter than {MOST_BEVEL_DEG:g}°. Cut into the "
        "upright plate of a tee, else into the thinner. A "
        f"depth given is cut part way, unless it leaves a root face to {_inches(MELTED_FACE_M)}: "
        "that is melted or gouged through. The details with an open root are gouged from the back; "
        f"from one side, in plate from {STRUCTURAL_FROM_M['si'] * 1e3:g} mm (1/8 in), complete "
        "joint penetration counts only after that, from a backing, or by a qualified procedure.",
        (
            "groove_rules.STRUCTURAL_FROM_M",
            "groove_remarks.preparation_remarks",
            "preparations.DETAILS",
            "preparations.detail_of",
            "preparations.groove_of",
            "preparations.MELTED_FACE_M",
            "joint_conflicts.MOST_BEVEL_DEG",
            "preparations.case_of",
            "preparations.prepared_m",
            "preparations.left_square_m",
        ),
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (Section(PART_WAY, (throats_table(), details_table())), Section(GOUGE), Section(HOLES))
