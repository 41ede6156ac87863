"""The method as data: what an equation is made of, and each one the app uses so far.

Numbers in it are read from the core where it holds them, so this page cannot say one thing and
the core do another.
"""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from beadwright_site.mathml import Part, equation, line, over, power, root, row, sub


@dataclass(frozen=True, slots=True)
class Symbol:
    """A sign of an equation: the sign, what it is, its unit."""

    sign: Part
    meaning: str
    unit: str


@dataclass(frozen=True, slots=True)
class Equation:
    """One equation.

    Attributes:
        key: Id on the page.
        title: What it gives.
        formulas: The equation, in one form or several.
        symbols: Its signs.
        valid: Where it holds.
        band: How far it may be off.
        sources: Source ids.
        words: What to know of it.
    """

    key: str
    title: str
    formulas: tuple[Markup, ...]
    symbols: tuple[Symbol, ...]
    valid: str
    band: str
    sources: tuple[str, ...]
    words: str = ""


A_C = sub("A", "c")
E_SHORT, E_OPEN = sub("U", "short"), sub("U", "open")
I_MOST, I_LEAST = sub("I", "most"), sub("I", "least")
Q_MOST = sub("E", "most")

_RHO_A = Symbol(line("ρ A"), "mass of wire per length", "kg/m")
_CURRENT = Symbol("I", "mean current, wire positive", "A")
_VOLTS = Symbol("U", "volts at the arc", "V")
_FEED = Symbol("v", "wire feed", "m/s")
_TRAVEL = Symbol("w", "travel", "m/s")
_SECTION = Symbol("S", "section of the bead", "m²")
_LAID = Symbol("D", "laid metal", "kg/s")
_CO2 = Symbol("c", "carbon dioxide in the gas", "%")
_DENSITY = Symbol("ρ", "density of steel, 7850", "kg/m³")

BURN_OFF = Equation(
    "burn-off",
    "Burn-off: wire feed and current",
    (
        equation(
            line("ρ A · v · H = I · φ +"), over(row(power("I", "2"), "·", line("r · L")), A_C)
        ),
    ),
    (
        _RHO_A,
        _FEED,
        Symbol("H", "enthalpy of the molten drop, 1.3", "MJ/kg"),
        _CURRENT,
        Symbol("φ", "heating voltage at the tip, fitted", "V"),
        Symbol("r", "mean resistivity of the hot wire, fitted", "Ω·m"),
        Symbol("L", "electrode extension: tip to work less arc length", "m"),
        Symbol(A_C, "section that carries the current: all of a solid wire, a cored one's sheath",
               "m²"),
    ),
    "Direct current, wire positive, within the currents of the points fitted.",
    "By wire, below: about nine points in ten stand inside it.",
    ("power-balance", "machinery-31-t5", "feeder-table-4-3", "power-source-rule",
     "power-source-conditions", "technician-points", "trade-schedule", "procedure-guide",
     "e70c-sheet"),
    "What the wire takes up to melt equals what the arc gives its tip and what the current heats "
    "on the way.",
)  # fmt: skip

EXTENSION = Equation(
    "extension",
    "Extension: tip to work less arc length",
    (
        equation(line("L = T − a")),
        equation("a", "=", "4", Markup("<mtext> mm</mtext>"), "+", "0.25",
                 Markup("<mtext> mm/V</mtext>"), line("· ( U − 26"),
                 Markup("<mtext> V</mtext>"), ")"),
    ),
    (
        Symbol("L", "electrode extension", "m"),
        Symbol("T", "contact tip to work", "m"),
        Symbol("a", "arc length, held between 1 and 8 mm", "m"),
        _VOLTS,
    ),
    "4 mm in an open arc and 2 mm in short circuit are what the burn-off was fitted with.",
    "The line between the two is ours.",
    ("power-balance",),
)  # fmt: skip

LAID = Equation(
    "laid",
    "Laid metal",
    (equation(line("D = η · ρ A · v")),),
    (
        _LAID,
        Symbol("η", "deposition efficiency: laid metal over wire used", "–"),
        _RHO_A,
        _FEED,
    ),
    "Any feed.",
    "By wire and transfer, below.",
    ("lecture-efficiency", "mig-handbook-deposition", "e70c-sheet"),
)

BEAD = Equation(
    "bead",
    "Bead and travel",
    (equation("S", "=", over("D", line("ρ · w"))), equation("w", "=", over("D", line("ρ · S")))),
    (_SECTION, _LAID, _DENSITY, _TRAVEL),
    "Always: what is laid is somewhere.",
    "That of the laid metal.",
    ("mass-balance",),
    "Travel follows from the section the joint needs, never from a table.",
)

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
        Symbol("z", "leg", "m"),
        Symbol("b", "width of the face", "m"),
        Symbol("h", "crown of the face, taken as a parabola; blank: so much that the section is "
               "1.2 times the flat one, within the code's limit", "m"),
        Symbol("a", "throat of the leg asked for", "m"),
    ),
    "Equal legs at 90°.",
    "Exact for the shape drawn; a real bead is not so regular.",
    ("fillet-weights", "fillet-reinforced", "aws-d1.1-convexity"),
    "A gap over 1/16 in adds itself to the leg, up to 3/16 in.",
)  # fmt: skip

SQUARE = Equation(
    "square",
    "Square butt: section",
    (equation("S", "=", line("g · t +"), over("2", "3"), line("· b · h")),),
    (
        _SECTION,
        Symbol("g", "gap", "m"),
        Symbol("t", "thickness of the thinner plate", "m"),
        Symbol("b", "width of the face: gap and a toe of t, 3 mm at the most, each side", "m"),
        Symbol("h", "crown", "m"),
    ),
    "Welded from one side, up to about 5/32 in.",
    "Exact for the shape drawn.",
    ("mass-balance", "iso-9692-1", "practice"),
)

HEAT = Equation(
    "heat",
    "Heat input, two conventions",
    (
        equation("E", "=", over(line("U · I"), "w")),
        equation("Q", "=", "k", "·", over(line("U · I"), "w")),
    ),
    (
        Symbol("E", "heat input as AWS and ASME count it, no efficiency: shown with US units",
               "J/m"),
        Symbol("Q", "heat input as EN counts it: shown with metric units", "J/m"),
        Symbol("k", "thermal efficiency of MIG/MAG, 0.8", "–"),
        _VOLTS,
        _CURRENT,
        _TRAVEL,
    ),
    "Mean volts and current. Pulse wants the machine's own power reading.",
    "That of the current.",
    ("asme-qw-409", "en-1011-1"),
    "The two differ by a fifth: never compare one with a limit written in the other.",
)  # fmt: skip
