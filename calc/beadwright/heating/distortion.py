"""What a weld does to the shape of its part: for the job, and for other ways to weld it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from beadwright.heating.angular import SHEET_M, edge_lift, passes_factor
from beadwright.heating.camber import bow_of_short_weld, camber_by_force, camber_by_section
from beadwright.heating.laid_weld import LaidWeld, repassed, resized
from beadwright.heating.published_forms import Form, spread
from beadwright.heating.shrinkage import (
    FILLET_ACROSS_M,
    V_ACROSS_M,
    across_butt_by_section,
    across_butt_by_width,
    across_fillets,
    along_butt_by_current,
    along_by_allowance,
    along_by_force,
    along_by_section,
    fillet_allowance_holds,
    tendon_force,
)
from beadwright.heating.welded_part import WeldedPart
from beadwright.phrases import say
from beadwright.results import Quantity

MOST_WELD_OF_PART = 1 / 20
"""Weld section over part section above which Guyot's form does not hold [-]."""


_HANDBOOK = say("heating.aws-handbook")
_ALLOWANCE = say("heating.shop-allowance")
_SPRARAGEN = say("heating.spraragen-ettinger")
_BLODGETT = say("heating.blodgett")
_TENDON = say("heating.tendon-force")
_GUYOT = say("heating.guyot")
_KING = say("heating.king")
"""Whose form each is."""

NO_FORM = say("heating.no-form")
"""Why a number is not given."""


@dataclass(frozen=True, slots=True)
class Distortion:
    """What one way of welding does to the part.

    Attributes:
        key: ``yours``, ``smaller``, ``fewer``, ``both`` or ``stitched``.
        name: The way, in words.
        laid: The weld.
        across: Shrinkage across the weld.
        along: Shrinkage along it.
        camber: Bow up or down over the part's length.
        sweep: Bow sideways.
        lift: How far the edges of the plate come up.
    """

    key: str
    name: str
    laid: LaidWeld
    across: Quantity
    along: Quantity
    camber: Quantity
    sweep: Quantity
    lift: Quantity

    def named(self) -> dict[str, Quantity]:
        """The five by name, in the order of the table."""
        return {
            "across": self.across,
            "along": self.along,
            "camber": self.camber,
            "sweep": self.sweep,
            "lift": self.lift,
        }

    def all(self) -> tuple[Quantity, ...]:
        """The five, in the order of the table."""
        return tuple(self.named().values())


_NAMES = ("Shrinkage across", "Shrinkage along", "Camber", "Sweep", "Edge lifted")


def _scaled(forms: list[Form], share: float) -> list[Form]:
    return [replace(form, value=form.value * share) for form in forms]


def _across(laid: LaidWeld) -> Quantity:
    name, forms = "Shrinkage across", list[Form]()
    if not laid.fillet and not laid.butt:
        return spread(name, "small_length", (), NO_FORM)
    if laid.fillet:
        lap = laid.joint == "lap"
        forms.append(
            Form(
                _HANDBOOK,
                across_fillets(laid.leg_m, laid.plate_m, laid.sides, lap),
                "aws-handbook-distortion",
            )
        )
        if fillet_allowance_holds(laid.leg_m, laid.plate_m):
            allowed = FILLET_ACROSS_M * laid.sides
            forms.append(Form(_ALLOWANCE, allowed, "shrinkage-allowance"))
    else:
        section = laid.section_m2 * laid.sides
        wide = across_butt_by_section(section, laid.plate_m, laid.gap_m)
        narrow = across_butt_by_width(section, laid.plate_m)
        forms.append(Form(_SPRARAGEN, wide, "spraragen-ettinger"))
        forms.append(Form(_BLODGETT, narrow, "blodgett-across"))
        if laid.joint == "v":
            forms += [Form(_ALLOWANCE, most, "shrinkage-allowance") for most in V_ACROSS_M]
    return spread(name, "small_length", _scaled(forms, laid.share))


def _force(laid: LaidWeld) -> float | None:
    """The force a weld shrinks with; fillets on both sides pull apart from each other.

    The sides of a groove heat the same steel, as passes on one another do: they count once.
    """
    if laid.heat_j_m is None:
        return None
    return tendon_force(laid.heat_j_m, laid.material) * (laid.sides if laid.fillet else 1)


def _along(laid: LaidWeld, part: WeldedPart) -> Quantity:
    section, length = laid.section_m2 * laid.sides, laid.length_m
    forms: list[Form] = []
    force = _force(laid)
    if force is not None:
        value = along_by_force(force, part.area_m2, length, laid.material)
        forms.append(Form(_TENDON, value, "tendon"))
    if section <= MOST_WELD_OF_PART * part.area_m2:
        value = along_by_section(section, part.area_m2, length)
        forms.append(Form(_GUYOT, value, "guyot"))
    if laid.butt and laid.current_a is not None:
        value = along_butt_by_current(laid.current_a, laid.plate_m, length)
        forms.append(Form(_KING, value, "king"))
    if laid.fillet or laid.butt:
        value = along_by_allowance(length, laid.fillet)
        forms.append(Form(_ALLOWANCE, value, "shrinkage-allowance"))
    none = None if forms else NO_FORM
    return spread("Shrinkage along", "small_length", _scaled(forms, laid.share), none)


def _bow(
    name: str, laid: LaidWeld, offset_m: float, inertia_m4: float | None, part_m: float
) -> Quantity:
    if inertia_m4 is None:
        return spread(name, "small_length", (), say("heating.stiffness-not-written"))
    section = laid.section_m2 * laid.sides
    forms = [
        Form(
            _BLODGETT,
            camber_by_section(section, offset_m, part_m, inertia_m4),
            "blodgett-camber",
        )
    ]
    force = _force(laid)
    if force is not None:
        bow = camber_by_force(force, offset_m, part_m, inertia_m4, laid.material)
        forms.append(Form(_TENDON, bow, "tendon"))
    share = laid.share * bow_of_short_weld(min(laid.length_m, part_m), part_m)
    return spread(name, "small_length", _scaled(forms, share))


def _lift(laid: LaidWeld, part: WeldedPart) -> Quantity:
    name = "Edge lifted"
    if laid.joint != "tee":
        return spread(name, "small_length", (), NO_FORM)
    if laid.plate_m < SHEET_M * (1 - 1e-9):
        return spread(name, "small_length", (), say("heating.sheet-buckles"))
    lift = edge_lift(laid.leg_m, laid.plate_m, part.width_m, laid.sides)
    lift *= passes_factor(laid.passes)
    forms = [Form(_BLODGETT, lift, "blodgett-angular")]
    return spread(name, "small_length", _scaled(forms, laid.share))


def distortion_of(key: str, name: str, laid: LaidWeld, part: WeldedPart) -> Distortion:
    """Return what a weld does to its part.

    Source: the published forms of ``shrinkage``, ``camber`` and ``angular``; the band is the spread
    between them. Intermittent welds count in proportion to the length welded (AWS Welding
    Handbook, for shrinkage across; the others are taken the same way).

    Args:
        key: As of ``Distortion`` [-].
        name: The way in words [-].
        laid: The weld [SI].
        part: The part [SI].

    Raises:
        OutOfRangeError: If a length or section is not above zero.
    """
    if laid.hole:
        none = (spread(each, "small_length", (), NO_FORM) for each in _NAMES)
        return Distortion(key, name, laid, *none)
    # Equal welds on both sides do not bend the part.
    sideways = 0.0 if laid.sides == 2 else part.sweep_offset_m
    length = part.length_m
    return Distortion(
        key=key,
        name=name,
        laid=laid,
        across=_across(laid),
        along=_along(laid, part),
        camber=_bow("Camber", laid, part.camber_offset_m, part.camber_inertia_m4, length),
        sweep=_bow("Sweep", laid, sideways, part.sweep_inertia_m4, length),
        lift=_lift(laid, part),
    )


STITCHED = 0.5
"""Share of the length welded by the intermittent weld offered: as much weld as gap [-]."""


def other_ways(laid: LaidWeld, least_leg_m: float) -> Iterator[tuple[str, str, LaidWeld]]:
    """Yield key, name and weld of other ways to lay it, each for less of one distortion.

    Args:
        laid: The weld asked for [SI].
        least_leg_m: The code's least leg; zero for a groove [m].
    """
    if laid.hole:
        return
    if laid.fillet and laid.leg_m > least_leg_m * 1.01:
        yield "smaller", "Smallest code leg", resized(laid, least_leg_m)
    if laid.passes > 1:
        yield "fewer", "One pass fewer", repassed(laid, laid.passes - 1)
    if laid.fillet and laid.sides == 1:
        # Half the leg on each side carries the same load; the code's least leg may ask for more.
        half = resized(repassed(laid, 1), max(laid.leg_m / 2, min(least_leg_m, laid.leg_m)))
        yield "both", "Both sides, turn about", replace(half, sides=2)
    elif not laid.fillet and laid.sides == 1:
        half_section = laid.section_m2 / 2
        passes = max(1, round(laid.passes / 2))
        heat = None if laid.heat_j_m is None else laid.heat_j_m * laid.passes / 2 / passes
        yield (
            "both",
            "Half from each side",
            replace(laid, section_m2=half_section, sides=2, passes=passes, heat_j_m=heat),
        )
    if laid.fillet and laid.share == 1:
        yield "stitched", "Stitched, half the length", replace(laid, share=STITCHED)


def distortions(laid: LaidWeld, part: WeldedPart, least_leg_m: float) -> tuple[Distortion, ...]:
    """Return what the weld asked for does to its part, and what other ways do.

    Args:
        laid: The weld asked for [SI].
        part: The part [SI].
        least_leg_m: The code's least leg; zero for a groove [m].

    Raises:
        OutOfRangeError: If a length or section is not above zero.
    """
    yours = distortion_of("yours", "As you weld it", laid, part)
    others = (distortion_of(*way, part) for way in other_ways(laid, least_leg_m))
    return (yours, *others)
