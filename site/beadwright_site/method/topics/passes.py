"""The method of the pass plan as data: layers, beads, their place, the torch, their settings."""

from __future__ import annotations

from beadwright import units
from beadwright.joint.joints import JOINTS
from beadwright.layers.bead_limits import (
    BRIDGE_M,
    BRIDGED_GAP_M,
    COLD_LAP_M,
    LAYER_M,
    ROOT_M,
    SIZE_SLACK,
    SPLIT_M,
    STRINGER_M,
)
from beadwright.layers.layers import CAP_UNDER_FLUSH_M, FLAT_ROOT_M
from beadwright.measures import INCH_M
from beadwright.passes.pass_layout import LEAN
from beadwright.passes.pass_process import BRIDGING_TRAVEL_M_S
from beadwright.passes.pass_torch import TILT_DEG
from beadwright.process.filter_shade import least_shade
from beadwright.process.positions import POSITIONS
from beadwright.setting.size_limits import MOST_BUTT_CROWN_M
from beadwright.setting.torch import torch
from beadwright_site.forms.joint_form import JOINT_NAMES
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import equation, fenced, function, line, over, power, sub

S_MOST, B_MOST, H_MOST = sub("S", "max"), sub("b", "max"), sub("h", "max")

_LAYER = Symbol("S", "section of the layer between the levels u and y", "m²")
_WIDE = Symbol("b", "width of the layer where it is widest", "m")
_X = Symbol("x", "along the face, from its middle", "m")
_Y = Symbol("y", "square to the face, from the root out", "m")


def _inches(value_m: float) -> str:
    return units.show(value_m, "leg", "us")


LAYERS = Equation(
    "pass-layers",
    "Layers and beads",
    (
        equation("n", "=", function("max", fenced("⌈", over("S", S_MOST), "⌉", ",", "⌈",
                                                  over("b", B_MOST), "⌉"))),
        equation("N", fenced("y"), "=", function("min", fenced(line("N ( u ) + n")))),
        equation(line("0 < y − u"), "≤", H_MOST),
    ),
    (
        Symbol("n", "beads in a layer", "–"),
        Symbol("N", "fewest beads up to a level", "–"),
        _LAYER,
        _WIDE,
        _Y,
        Symbol("u", "level the last layer starts at: the one that makes N least", "m"),
        Symbol(S_MOST, "largest bead: of the position's practical one-pass fillet, and no more "
               "than the run lays within its travel and heat", "m²"),
        Symbol(B_MOST, "widest bead before a layer is split", "m"),
        Symbol(H_MOST, "thickest root, then thickest layer", "m"),
    ),
    "Every joint; levels in 32 steps, at full beads and at thickest layers.",
    "The fewest on those levels. Of plans with equally many beads, the one whose beads lie best "
    "and are most alike.",
    ("shortest-way", "geometry", "aws-d1.1-5.1", "aisc-one-pass", "practice"),
    f"⌈ ⌉: rounded up. The cap of a groove starts {CAP_UNDER_FLUSH_M * 1000:g} mm under flush or "
    "deeper. The root is one bead wherever it can be; wider than "
    f"{units.show(FLAT_ROOT_M, 'leg', 'us')} in at its floor, on a backing, it may be beads "
    "side by side. A count asked for takes the limits all wider or tighter until it fits; what is "
    f"then over a limit is said. A size up to {SIZE_SLACK - 1:.0%} over counts as the size: metric "
    "sizes are rounded.",
    ("layers.fewest_layers", "layer_counts.layers_of_count", "layers.holds",
     "layers.CAP_UNDER_FLUSH_M", "layers.SHAPELY", "pass_limits.widest",
     "bead_limits.largest_bead_m2", "bead_limits.position_limits", "bead_limits.fewest_beads",
     "bead_limits.SIZE_SLACK", "layers.FLAT_ROOT_M", "pass_plan.pass_plan"),
)  # fmt: skip

PLACE = Equation(
    "pass-place",
    "Where each bead lies",
    (
        equation(line("y′"), "=", "y", "+", over(line("4 · h"), power("b", "2")), "·",
                 power("x", "2")),
        equation(line("x′"), "=", "x", "−", f"{LEAN:g}", "·", line("( y′ − u )")),
        equation("s", "=", over("S", "n")),
    ),
    (
        _X,
        _Y,
        Symbol(line("y′"), "the same with the rounded face laid flat", "m"),
        Symbol(line("x′"), "the same with the cut between neighbors stood upright", "m"),
        Symbol("h", "crown of the face", "m"),
        Symbol("b", "width of the face", "m"),
        Symbol("u", "level the layer starts at", "m"),
        Symbol("s", "section of one bead", "m²"),
        Symbol("S", "section of its layer", "m²"),
        Symbol("n", "beads in it", "–"),
    ),
    "Every joint. Beads around a hole are cut straight, from the wall inwards.",
    "Exact: a shear keeps areas, so beads add up to the joint.",
    ("geometry", "practice"),
    "Horizontal, each layer starts at the lower plate, so that every bead leaves the next a shelf. "
    "How far a bead laps over its neighbor is the picture's; no setting depends on it.",
    ("frame.frame_of", "frame.dense", "pass_layout.slots_of", "pass_layout.LEAN",
     "sweep.sweep", "sweep.band"),
)  # fmt: skip

TORCH = Equation(
    "pass-torch",
    "How the gun stands to each bead",
    (equation("α", "=", sub("α", "0"), "−", f"{TILT_DEG:g}°", "·", "t"),),
    (
        Symbol("α", "which way the gun points away from the joint", "°"),
        Symbol(sub("α", "0"), "square to the face of the weld", "°"),
        Symbol("t", "where the bead lies in its layer: −1 at the first toe, 1 at the second", "–"),
    ),
    "Layers of two beads and more; a bead alone is laid square to the face.",
    f"A habit of the trade, 10° to 20°; here {TILT_DEG:g}° at the edge.",
    ("practice", "osha-1910.133"),
    "The wire points into the corner the bead is laid in.",
    ("pass_torch.torch_of", "pass_torch.TILT_DEG"),
)

SETTINGS = Equation(
    "pass-settings",
    "Travel and heat of each bead",
    (
        equation("w", "=", over(line("η · ρ A · v"), line("ρ · s"))),
        equation("Q", "=", over(line("U · I"), "w")),
    ),
    (
        Symbol("w", "travel of the bead", "m/s"),
        Symbol("η", "deposition efficiency", "–"),
        Symbol(line("ρ A"), "mass of wire per length", "kg/m"),
        Symbol("v", "wire feed: one for all beads of a part where one suits the smallest and the "
               "largest", "m/s"),
        Symbol("ρ", "density of steel", "kg/m³"),
        Symbol("s", "section of the bead", "m²"),
        Symbol("Q", "heat input, no efficiency", "J/m"),
        Symbol("U", "volts at the arc", "V"),
        Symbol("I", "current the feed draws", "A"),
    ),
    "Within the travel of hand, track or robot, and the heat the plate and your procedure allow; a "
    "bead outside is named.",
    "That of the deposition rate and current.",
    ("mass-balance", "asme-qw-409"),
    "Root, fill and cap may each run on settings of their own. An open root under spray is run in "
    "short circuit; no layer in short circuit is planned thicker than "
    f"{COLD_LAP_M / INCH_M * 16:g}/16 in. "
    f"Over a root opening wider than {_inches(BRIDGED_GAP_M)} in the root bridges: at least "
    f"{_inches(BRIDGE_M)} in thick, on the current of plate that thick, and by hand no faster than "
    f"{BRIDGING_TRAVEL_M_S['hand'] / INCH_M * 60:g} in/min. It is one bead from edge to edge; "
    "where the plate leaves no depth for a layer over it, no other is laid. Flux-cored wire "
    "bridges nothing: it wants a backing. Spray asked for there is refused too. After gouging no "
    "root is open: the second side runs as the fill, but in short circuit it is pulsed or refused. "
    "A layer is cut so that no bead is lighter than the least current lays at the fastest travel, "
    "a tenth to spare; where every cut leaves one lighter, it is laid at that least as far as the "
    f"crown of its side stays within {_inches(MOST_BUTT_CROWN_M)} in. Dial in counts even beads: "
    "it says so where the one bead of a root, or of a side, has no settings.",
    ("pass_settings.laid_beads", "pass_process.process_of", "bead_limits.shorted_root",
     "bead_limits.fusing", "bead_limits.bridges", "bead_limits.one_layer_deep",
     "bead_limits.BRIDGED_GAP_M",
     "bead_limits.BRIDGE_M", "bead_limits.of_side", "bead_limits.root_wants_backing",
     "pass_limits.run_limits", "pass_limits.second_limits", "pass_limits.fused_limits",
     "bead_limits.open_arc_falls", "bead_limits.side_layers", "bead_limits.is_one_pass_fillet",
     "bead_sections.laid_sections", "pass_limits.lightest_m2", "size_limits.side_most_m2",
     "side_remarks.side_remarks",
     "pass_process.BRIDGING_TRAVEL_M_S"),
)  # fmt: skip


def limits_table() -> Table:
    """Return what a bead and a layer may be, by position."""
    rows = tuple(
        (
            position.orientation,
            _inches(ROOT_M[position.orientation]),
            _inches(LAYER_M),
            _inches(SPLIT_M[position.orientation]),
            _inches(position.practical_leg_m),
        )
        for position in POSITIONS.values()
    )
    return Table(
        "pass-limits",
        "What a bead and a layer may be, in",
        ("position", "root, thick", "layer, thick", "bead, wide", "one-pass fillet planned"),
        rows,
        ("aws-d1.1-5.1", "aisc-one-pass", "practice"),
        f"Stringers: {_inches(STRINGER_M)} in wide at most, about eight wire diameters; "
        "horizontal, every bead after the root is one. "
        "Vertical down and the widths: not checked against the book, or common practice.",
        ("bead_limits.ROOT_M", "bead_limits.LAYER_M", "bead_limits.SPLIT_M",
         "bead_limits.STRINGER_M", "bead_limits.COLD_LAP_M"),
    )  # fmt: skip


def _angles(low_set_high: tuple[float, float, float]) -> tuple[str, ...]:
    return tuple(f"{angle:g}°" for angle in low_set_high)


def travel_angles_table() -> Table:
    """Return which way the torch leans along the travel, and how far."""
    cases = (
        ("spray or pulse, flat and horizontal", torch("tee", "flat", "spray")),
        ("flux-cored, flat and horizontal", torch("tee", "flat", "spray", "flux-cored")),
        ("short circuit or globular; any mode vertical up", torch("tee", "flat", "short")),
        ("vertical down, overhead", torch("tee", "overhead", "short")),
    )
    return Table(
        "travel-angles",
        "How the gun leans along the travel",
        ("mode and position", "", "least", "usual", "most"),
        tuple((case, held.way, *_angles(held.travel_angle)) for case, held in cases),
        tuple(dict.fromkeys(held.source for _, held in cases)),
        f"Filter shade in front of the eyes: at least {least_shade(59.0)} under 60 A, "
        f"{least_shade(60.0)} from there up; darker is usual.",
        ("torch.torch", "filter_shade.least_shade"),
    )


def work_angles_table() -> Table:
    """Return how the torch stands across the weld, from the bottom plate."""
    joints: dict[tuple[str, ...], list[str]] = {}
    for joint in JOINTS:
        held = _angles(torch(joint, "flat", "short").work_angle)
        joints.setdefault(held, []).append(JOINT_NAMES[joint])
    return Table(
        "work-angles",
        "How the gun stands across the weld",
        ("joint", "least", "usual", "most"),
        tuple((", ".join(names), *held) for held, names in joints.items()),
        (torch("tee", "flat", "short").source,),
        "From the bottom plate; each bead of several is then turned as above.",
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic, in order."""
    return (
        Section(LAYERS, (limits_table(),)),
        Section(PLACE),
        Section(TORCH, (travel_angles_table(), work_angles_table())),
        Section(SETTINGS),
    )
