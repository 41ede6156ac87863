"""The method of Inspect as data: gauges, the metal a size wants, what puts causes in order."""

from __future__ import annotations

from beadwright.inspection.signs import DRAFT, LEAST_MOVE, UNSEEN, WORST
from beadwright.inspection.size_change import LEAST_BEAD
from beadwright_site.method.equations import Equation, Section, Symbol
from beadwright_site.method.mathml import equation, function, line, over, power, row, sub
from beadwright_site.method.tables.acceptance import aws_table, iso_table, weights_table

Z, Z_W = sub("z", "found"), sub("z", "wanted")

GAUGES = Equation(
    "gauges",
    "A fillet from its gauge readings",
    (
        equation("a", "=", sub("a", "0"), "−", "h"),
        equation("z", "=", over("ω", function("sin", "ψ"))),
    ),
    (
        Symbol(sub("a", "0"), "theoretical throat, from both legs and the angle; see Fillet", "m"),
        Symbol("a", "throat that counts", "m"),
        Symbol("h", "hollow of the face; a crown adds nothing", "m"),
        Symbol("z", "leg along the plate", "m"),
        Symbol("ψ", "angle between the plates", "°"),
        Symbol("ω", "toe to the vertical plate, square across, as a leg gauge reads it", "m"),
    ),
    "Fillets of 60° to 135°, legs of any two sizes.",
    "As good as the gauge, about 1/64 in.",
    ("geometry", "skewed-tees"),
    "",
    ("measured_fillet.leg_from_gauge", "measured_fillet.crown_of_throat"),
)  # fmt: skip

SIZE = Equation(
    "size-change",
    "The change of setting that gives the size",
    (
        equation("m", "=", power(row("(", over(Z_W, Z), ")"), "2")),
        equation(sub("v", "next"), "=", over("v", "m")),
        equation(sub("w", "next"), "=", "w", "·", "m"),
    ),
    (
        Symbol("m", "metal wanted over metal laid; the leg or throat that lacks most", "–"),
        Symbol(Z, "leg or throat measured", "m"),
        Symbol(Z_W, "leg or throat asked for, root opening allowed for", "m"),
        Symbol(row("v", ",", sub("v", "next")), "travel, and the one to run next", "m/s"),
        Symbol(row("w", ",", sub("w", "next")), "wire feed, and the one to set at that "
               "travel; volts keep their distance from the mode's line", "m/s"),
    ),
    "A bead that keeps its form. Each change stays inside the room of its setting.",
    "A hand's own scatter; run a coupon.",
    ("mass-balance", "geometry"),
    "Where the travel was not timed, the metal measured says what it was: v as planned × metal by "
    "our sums ÷ metal measured. Where it was, the same share says how this hand lays metal. Of a "
    "groove the cap alone is changed, by what its face has over or under; of an underfilled one no "
    f"less than {LEAST_BEAD:.0%} of a bead is counted. More passes or another mode only where no "
    "change holds.",
    ("size_change.metal_wanted", "size_change.readings_after", "size_change.size_change",
     "size_change.laid_settings",
     "size_change.is_overwelded", "size_change.LEAST_BEAD"),
)  # fmt: skip

LIMITS = Equation(
    "acceptance",
    "What a weld is accepted by",
    (equation("h", "≤", line("c + k · x")), equation("h", "≤", "m")),
    (
        Symbol("h", "what was measured", "mm"),
        Symbol(row("c", ",", "k", ",", "m"), "of ISO 5817, in the table", "mm, –, mm"),
        Symbol("x", "plate t, throat a, or width of face b", "mm"),
    ),
    "What is seen and gauged. AWS D1.1 has its own numbers, in the first table.",
    "The standard's own numbers; how each was come by stands beside it.",
    ("aws-d1.1-8.1", "iso-5817-surface", "iso-5817-form", "iso-5817-throat", "iso-5817-memory"),
    "The copies read are older than the editions named in part: buy the standard, it rules.",
    ("aws_checks.aws_checks", "aws_checks.length_check", "aws_checks.crater_room",
     "iso_checks.iso_checks", "iso_limits.iso_limit", "iso_limits.iso_by_plate",
     "iso_limits.iso_undercut", "repair.repairs_of"),
)  # fmt: skip

ORDER = Equation(
    "cause-order",
    "Which cause comes first",
    (equation("s", "=", "g", "·", "n"),),
    (
        Symbol("s", "place in the list: the largest first; none at zero", "–"),
        Symbol("g", "how readily the cause makes the trouble", "–"),
        Symbol("n", "how near the bad end of its window the setting stands: 0 at the good end, 1 "
               f"at the bad, outside to {WORST:g}", "–"),
    ),
    f"What no number of the job shows counts as {UNSEEN:g}, the middle of a window.",
    "An order to look in, no proof.",
    ("practice", "mig-handbook-defects", "mig-trouble-article", "mig-gas-article"),
    f"A draft that is felt counts {DRAFT['draft']:g}, over 5 mph {DRAFT['windy']:g}. Thick plate "
    "counts by inches to one, CO2 by its share, thin wire 0.1 at 1/16 in to 1 at 0.023 in, a root "
    "opening "
    "by half the plate. A value to go to is told from a move of "
    f"{LEAST_MOVE:.0%} of the window: the plan's own, else the middle.",
    ("trouble.causes_of", "signs.nearness", "signs.UNSEEN", "signs.WORST", "signs.LEAST_MOVE",
     "signs.DRAFT", "signs.HEAVY_PLATE_M", "signs.THIN_WIRE", "trouble.MOST_SHOWN"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (
        Section(GAUGES),
        Section(LIMITS, (aws_table(), iso_table())),
        Section(SIZE),
        Section(ORDER, (weights_table(),)),
    )
