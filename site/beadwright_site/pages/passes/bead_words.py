"""One bead in a foreman's words: what it is, how the torch stands, where the wire points."""

from __future__ import annotations

from beadwright.joint.joints import BUTTS, HOLES, TEE_GROOVES
from beadwright.passes.pass_beads import ROLE_NAMES, Bead, PassPlan
from beadwright_site.drawings.passes_drawing import turns_of

_UPRIGHT = {"tee": "upright", "lap": "upper plate's edge", "corner": "vertical plate"}


def arc_words(seconds: float) -> str:
    """Return an arc time as it is said: ``35 s``, ``3 min 19 s``, ``1 h 4 min``."""
    whole = round(seconds)
    if whole < 60:
        return f"{whole} s"
    minutes, rest = divmod(whole, 60)
    if minutes < 60:
        return f"{minutes} min {rest} s" if rest else f"{minutes} min"
    hours, minutes = divmod(round(seconds / 60), 60)
    return f"{hours} h {minutes} min" if minutes else f"{hours} h"


def bead_line(found: PassPlan, bead: Bead) -> str:
    """Return what a bead is and where it stands in the order."""
    layers = found.layers[bead.side - 1]
    if bead.role == "only" and len(found.layers) == 1:
        return ""  # the title says it
    what = ROLE_NAMES[bead.role]
    where = f", layer {bead.slot.layer} of {layers}" if layers > 1 else ""
    side = f", side {bead.side}" if len(found.layers) > 1 else ""
    return f"{what}{where}{side}"


def torch_words(found: PassPlan, bead: Bead) -> str:
    """Return how the torch stands across the joint."""
    job = found.job
    if job.joint in HOLES:
        return "Square to the plate"
    if job.is_fillet or job.joint in TEE_GROOVES:
        angle = f"{bead.work_deg:.0f}°"
        if job.position.orientation == "horizontal":
            return f"{angle} up from the bottom plate"
        if job.position.orientation == "overhead":
            return f"{angle} down from the plate overhead"
        return f"{angle} off the base plate"
    tilt = round(90 - bead.work_deg)
    if tilt < 2:
        return "Square to the plates"
    return f"{tilt}° off square, wire toward the {_toe(found, bead)} wall"


def aim_words(found: PassPlan, bead: Bead) -> str:
    """Return where the wire points."""
    slot, joint = bead.slot, found.job.joint
    below = [b for b in found.beads if b.side == bead.side and b.slot.layer == slot.layer - 1]
    if joint in HOLES:
        return f"Where bead {below[0].number} meets the wall" if below else "Wall's foot, all round"
    if slot.of == 1:
        return _middle(below)
    if 1 < slot.place < slot.of:
        return f"Toe of bead {bead.number - 1}"
    toe = _toe(found, bead)
    if not below:
        return f"{toe.capitalize()} side of the root"
    # The neighbor below, on the side this bead lies.
    near = max(below, key=lambda b: b.slot.across * (1 if slot.across > 0 else -1)).number
    if joint in BUTTS:
        return f"Where bead {near} meets the {toe} wall"
    if toe in ("lower", "upper"):
        return f"{toe.capitalize()} toe of bead {near}"
    return f"Toe of bead {near} on the {toe}"


def _middle(below: list[Bead]) -> str:
    if not below:
        return "Root"
    numbers = sorted(bead.number for bead in below)
    if len(numbers) == 1:
        return f"Middle of bead {numbers[0]}"
    if len(numbers) == 2:
        return f"Where beads {numbers[0]} and {numbers[1]} meet"
    return f"Middle of the layer below, beads {numbers[0]}–{numbers[-1]}"


def _toe(found: PassPlan, bead: Bead) -> str:
    """What the side is called a bead lies on."""
    job = found.job
    second = (bead.slot.across > 0) == (bead.side == 1)  # the second side's toes change places
    if job.joint in BUTTS:
        turns = turns_of(found)
        if turns == 1:
            return "upper" if second else "lower"
        return "left" if second == (turns == 0) else "right"
    if job.position.orientation == "horizontal":
        return "upper" if second else "lower"
    if job.position.orientation == "overhead":
        return "lower" if second else "upper"
    return _UPRIGHT.get(job.joint, "upright") if second else "base plate"


def before_words(found: PassPlan, bead: Bead) -> str:
    """Return what to do before a bead is laid."""
    if bead.number == 1:
        return "Before it: clean, tack, bring the plate up to preheat."
    last = found.beads[bead.number - 2]
    clean = f"Brush bead {last.number} bright"
    if found.job.wire.traits.slag:
        clean = f"Chip the slag off bead {last.number} and brush it bright"
    if last.side != bead.side:
        gouge = ", gouge the root to sound metal" if found.shape.gouged else ""
        return f"Before it: go to the other side{gouge}. {clean}."
    return f"Before it: {clean[0].lower()}{clean[1:]}; let it cool under your interpass limit."
