"""The method of what the arc melts of the plates as data: penetration and dilution."""

from __future__ import annotations

from beadwright.process import penetration as depth
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright.process.penetration_points import BEADS
from beadwright_site.method.equations import Equation, Section, Symbol
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method.plots import penetration_plot

_ROOT = sub("p", "root")
_S_MELTED = sub("S", "m")

_HELD = sum(depth.BAND[0] <= depth.measured_over_formed(b) <= depth.BAND[1] for b in BEADS)
_AMPS, _VOLTS = depth.MEASURED_CURRENT_A, depth.MEASURED_VOLTS
_TRAVEL = tuple(1000 * end for end in depth.MEASURED_TRAVEL_M_S)
_FAR_AMPS, _FAR_VOLTS = depth.STRETCHED_CURRENT_A, depth.STRETCHED_VOLTS
_FAR_TRAVEL = tuple(1000 * end for end in depth.STRETCHED_TRAVEL_M_S)
_SHARES = depth.ROOT_SHARE


def _percent(band: tuple[float, float]) -> str:
    return f"−{1 - band[0]:.0%} to +{band[1] - 1:.0%}"


PENETRATION = Equation(
    "penetration",
    "Penetration",
    (
        equation("p", "=", "K", "·",
                 power(row("(", over(power("I", "4"), row("w", "·", power("U", "2"))), ")"),
                       over("1", "3"))),
        equation(_ROOT, "=", line("s · p")),
    ),
    (
        Symbol("p", "depth a bead melts into flat plate", "m"),
        Symbol("K", f"constant, {depth.DEPTH_CONSTANT * 1e6:.2f} · 10⁻⁶ in SI units: the geometric "
               f"mean of {len(BEADS)} measured beads; 0.0016 in inches and in/min", "–"),
        Symbol("I", "mean current", "A"),
        Symbol("w", f"travel; under {_TRAVEL[0]:g} mm/s the pool cushions the arc, and the depth "
               "falls with its cube root", "m/s"),
        Symbol("U", "volts at the arc", "V"),
        Symbol(_ROOT, "depth past the root of a fillet", "m"),
        Symbol("s", f"share of a bead's depth a fillet's root gets, {_SHARES[1]:g}; from "
               f"{_SHARES[0]:g} to {_SHARES[2]:g}", "–"),
    ),
    f"Open arc, solid wire, {_AMPS[0]:g} to {_AMPS[1]:g} A, {_VOLTS[0]:g} to {_VOLTS[1]:g} V, "
    f"{_TRAVEL[0]:g} to {_TRAVEL[1]:g} mm/s. To {_FAR_AMPS[0]:g} and {_FAR_AMPS[1]:g} A, "
    f"{_FAR_VOLTS[0]:g} and {_FAR_VOLTS[1]:g} V, {_FAR_TRAVEL[0]:g} and {_FAR_TRAVEL[1]:g} mm/s "
    "the band is widened and it is said; farther out, in short circuit, pulse and for cored wire "
    "no estimate is given.",
    f"{_percent(depth.BAND)}: {_HELD} of {len(BEADS)} beads stand inside. "
    f"{_percent(depth.STRETCHED_BAND)} outside what was measured. The root's share comes on top, "
    "as the root of the sum of squares.",
    ("jackson-form", "bead-runs", "travel-cushion", "aisc-saw-throat", "practice"),
    f"{NEVER_SIZE_BY_IT} Where the beads are printed, wire, gas and plate are not named; the "
    "handbooks' constants, 0.0012 for submerged arc and 0.0019 for CO2, stand inside the band. "
    f"CO2 is counted {depth.CO2_DEEPER:.0%} deeper than argon mixtures, by its share.",
    ("penetration.bead_penetration", "penetration.root_penetration", "penetration.band_of",
     "penetration.outside_measured", "penetration.refused", "penetration.measured_over_formed",
     "penetration.fit_constant", "penetration.DEPTH_CONSTANT", "penetration.BAND",
     "penetration.STRETCHED_BAND", "penetration.MEASURED_CURRENT_A",
     "penetration.MEASURED_VOLTS", "penetration.MEASURED_TRAVEL_M_S",
     "penetration.STRETCHED_CURRENT_A", "penetration.STRETCHED_VOLTS",
     "penetration.STRETCHED_TRAVEL_M_S", "penetration.ROOT_SHARE", "penetration.CUSHION",
     "penetration.CO2_DEEPER", "melted.melted"),
)  # fmt: skip

DILUTION = Equation(
    "dilution",
    "Dilution",
    (
        equation("d", "=", over(_S_MELTED, row(_S_MELTED, "+", "S"))),
        equation(_S_MELTED, "=", over(row("z", "·", _ROOT), root("2"))),
    ),
    (
        Symbol("d", "share of base metal in the bead", "–"),
        Symbol(_S_MELTED, "section melted out of both plates: straight fusion lines from each toe "
               "to the point the root reaches", "m²"),
        Symbol("S", "section laid from the wire", "m²"),
        Symbol("z", "leg of the bead", "m"),
        Symbol(_ROOT, "depth past the root", "m"),
    ),
    "Fillets. No estimate for a butt: root opening and edges decide.",
    "That of the depth past the root. Cladding handbooks give 10 to 40 % for gas metal arc.",
    ("dilution-sections", "dilution-range", "bead-runs"),
    "",
    ("dilution.dilution", "dilution.melted_by_fillet"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (Section(PENETRATION, (), (penetration_plot(),)), Section(DILUTION))
