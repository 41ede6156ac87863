"""The method of distortion as data: every published form the Heat page goes by."""

from __future__ import annotations

from beadwright.heating.angular import LIFT, SHEET_M
from beadwright.heating.camber import BLODGETT
from beadwright.heating.distortion import MOST_WELD_OF_PART, STITCHED
from beadwright.heating.published_forms import ALONE, TOGETHER
from beadwright.heating.shrinkage import GUYOT, LAP_M, TEE_M
from beadwright.process.materials import CARBON_STEEL
from beadwright_site.method.equations import Equation, Section, Symbol, number, plain
from beadwright_site.method.mathml import equation, line, over, power, row, sub

A_W, A_P = sub("A", "w"), sub("A", "p")

_SECTION = Symbol(A_W, "section of weld metal", "m²")
_PART = Symbol(A_P, "section of the part", "m²")
_PLATE = Symbol("t", "thickness of the plate", "m")
_LEG = Symbol("z", "leg", "m")
_LENGTH = Symbol("L", "length of the weld", "m")
_FORCE = Symbol("F", "force the weld shrinks with", "N")
_HEAT = Symbol("Q", "net heat input of the hottest pass, EN × 0.8", "J/m")
_FREE = "Plain carbon steel, part free to move."

ACROSS = Equation(
    "across",
    "Shrinkage across the weld",
    (
        equation("S", "=", "0.2", over(A_W, "t"), "+", line("0.05 · d")),
        equation("S", "=", "0.1", over(A_W, "t")),
        equation("S", "=", "C", "·", over("z", "t"), "·", over("n", "2")),
    ),
    (
        Symbol("S", "shrinkage: the first two of a butt, the last of fillets", "m"),
        _SECTION,
        _PLATE,
        Symbol("d", "root opening", "m"),
        Symbol("C", f"{TEE_M * 1000:g} mm on a tee, {LAP_M * 1000:g} mm on a lap", "m"),
        _LEG,
        Symbol("n", "fillets, 1 or 2; the form is for 2, one is taken as half", "–"),
    ),
    f"{_FREE} Shop allowances, 0.8 mm a fillet up to 3/4 of the plate and 1.5 to 3 mm a 60° V, "
    "widen the range.",
    "The forms differ by a factor of two and more: the range is from the lowest to the highest.",
    ("spraragen-ettinger", "blodgett-across", "aws-handbook-distortion", "shrinkage-allowance"),
    "An intermittent weld shrinks, bows and turns its part by the share of the length that is "
    f"welded; the one offered is {STITCHED:.0%} welded.",
    ("shrinkage.across_butt_by_section", "shrinkage.across_butt_by_width",
     "shrinkage.across_fillets", "shrinkage.fillet_allowance_holds", "shrinkage.TEE_M",
     "shrinkage.LAP_M", "shrinkage.FILLET_ACROSS_M", "shrinkage.V_ACROSS_M",
     "published_forms.spread", "distortion.STITCHED", "distortion.distortion_of",
     "distortion.distortions", "distortion.other_ways"),
)  # fmt: skip

ALONG = Equation(
    "along",
    "Shrinkage along the weld",
    (
        equation("F", "=", number(CARBON_STEEL.tendon_n_per_j_m), "·", "Q"),
        equation("S", "=", over(line("F · L"), row("E", A_P))),
        equation("S", "=", number(GUYOT), over(A_W, A_P), "L"),
        equation("S", "=", over(line("0.12 · I · L"), line("100000 · t"))),
    ),
    (
        Symbol("S", "shrinkage; the last of a butt, lengths in inches", "m"),
        _FORCE,
        _HEAT,
        Symbol("E", f"Young's modulus, {CARBON_STEEL.modulus_pa / 1e9:g} GPa", "Pa"),
        _SECTION,
        _PART,
        _LENGTH,
        _PLATE,
        Symbol("I", "current", "A"),
    ),
    f"{_FREE} The third where the part has {1 / MOST_WELD_OF_PART:g} times the weld's section. "
    "Shop allowances, 0.8 mm in 3 m of fillet and 3 mm of butt, widen the range.",
    f"From the lowest form to the highest, never under a factor {TOGETHER:g} either way.",
    ("tendon", "guyot", "king", "shrinkage-allowance"),
    "Of passes laid on one another the hottest counts, not their sum; both sides of a groove count "
    "as laid on one another, fillets on both sides twice. A groove in a tee goes by the first and "
    "third alone, a plug or slot by none.",
    ("shrinkage.tendon_force", "shrinkage.along_by_force", "shrinkage.along_by_section",
     "shrinkage.along_butt_by_current", "shrinkage.along_by_allowance",
     "materials.CARBON_STEEL", "shrinkage.GUYOT", "shrinkage.KING_M_PER_A",
     "shrinkage.FILLET_ALONG", "shrinkage.BUTT_ALONG", "distortion.MOST_WELD_OF_PART",
     "published_forms.TOGETHER"),
)  # fmt: skip

CAMBER = Equation(
    "camber",
    "How far the part bows",
    (
        equation("δ", "=", number(BLODGETT), over(row(A_W, "d", power("P", "2")), "J")),
        equation("δ", "=", over(row("F", "d", power("P", "2")), line("8 · E · J"))),
        equation("k", "=", over(line("L · ( 2 · P − L )"), power("P", "2"))),
    ),
    (
        Symbol("δ", "bow in the middle, welded from end to end", "m"),
        Symbol("k", "share of it where the weld is shorter, in the middle", "–"),
        _SECTION,
        Symbol("d", "weld to neutral axis", "m"),
        Symbol("P", "length of the part", "m"),
        _LENGTH,
        Symbol("J", "moment of inertia of the part against the bow: of each rectangle, width × "
               "height³ ÷ 12 and its section × the square of its distance", "m⁴"),
        _FORCE,
        Symbol("E", "Young's modulus", "Pa"),
    ),
    f"{_FREE} The part is a tee, corner, lap or plate of the widths written, or your own.",
    f"From the lower form to the higher, never under a factor {TOGETHER:g} either way.",
    ("blodgett-camber", "tendon"),
    "Sideways the same, with the part's other axis: the same weld on both sides does not bow it.",
    ("camber.camber_by_section", "camber.camber_by_force", "camber.bow_of_short_weld",
     "camber.BLODGETT", "welded_part.section", "welded_part.tee_part",
     "welded_part.tee_groove_part", "welded_part.corner_part", "welded_part.lap_part",
     "welded_part.butt_part"),
)  # fmt: skip

ANGULAR = Equation(
    "angular",
    "How far fillets lift the edges",
    (
        equation(
            "Δ", "=", number(LIFT), "·", "W", "·",
            over(power("z", "1.3"), power("t", "2")), "·", power("n", "0.35"), "·",
            over("m", "2"),
        ),
        equation("φ", "=", over(line("2 · Δ"), "W")),
    ),
    (
        Symbol("Δ", "lift of the edge, all lengths in inches", "in"),
        Symbol("W", "width of the plate, fillets at its middle", "in"),
        Symbol("z", "leg", "in"),
        Symbol("t", "thickness of the plate", "in"),
        Symbol("n", "equal passes on a side", "–"),
        Symbol("m", "fillets, 1 or 2; the form is for 2, one bends the plate along one line and "
               "is taken as half", "–"),
        Symbol("φ", "angle each half is turned", "rad"),
    ),
    f"{_FREE} Tees with fillets, plate of {SHEET_M * 1000:.1f} mm and more: the edges of sheet "
    "buckle in waves. No form for other joints.",
    f"One form alone: half to double, a factor {ALONE:g}.",
    ("blodgett-angular",),
    "The share of passes follows from the power of the leg: fewer, larger passes turn it less. "
    "Another leg is counted with its section by the square, and the heat of a pass by its section.",
    ("angular.edge_lift", "angular.passes_factor", "angular.tilt", "angular.LIFT",
     "angular.SHEET_M", "angular.LEG_POWER", "laid_weld.resized", "laid_weld.repassed",
     "published_forms.ALONE"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((ACROSS, ALONG, CAMBER, ANGULAR))
