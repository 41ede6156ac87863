"""The Strength page's keys: the job's, the shape of the weld, what it carries, by which code."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from marshmallow import Schema, ValidationError, fields

from beadwright import units
from beadwright.errors import OutOfRangeError
from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.reading.fields import Choice, Entry, Measured
from beadwright.strength.steel_strength import STRENGTHS, strength_of
from beadwright.strength.weld_group import MOST_POINTS, SHAPES, WeldGroup, polyline_group

GROUPS = ("line", "lines", "flats", "rectangle", "circle", "c", "l", "t")
"""Shapes of weld by name; besides them ``polyline:0,0 4,0 4,6``."""

CODES = ("asd", "lrfd", "en", "en-directional")
"""AISC 360 on service loads, AISC 360 on factored loads, EN 1993-1-8 simplified, directional."""

LOADS = ("px", "py", "pz", "mx", "my", "mz", "line_load")
"""Keys that load the weld."""

STRENGTH_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "group": "shape of the weld: " + " ".join(GROUPS) + ", or polyline:0,0 4,0 4,6",
        "group_width": "of the weld, left to right",
        "group_height": "of the weld, bottom to top; a circle's diameter; blank: weld_length",
        "weld_sides": "1, or 2: both sides of the plate; blank: 2 for a line in a tee, else 1",
        "part_length": "length of the part along the weld; blank: not checked",
        "px": "force to the right",
        "py": "force up",
        "pz": "force pulling square off the joint",
        "load_x": "where the force acts, right of the weld's lower left; blank: at its centroid",
        "load_y": "where it acts, above the weld's lower left; blank: at its centroid",
        "load_z": "how far out from the joint it acts",
        "mx": "bending about the level axis",
        "my": "bending about the upright axis",
        "mz": "turning in the plane of the joint, counter-clockwise",
        "line_load": "force per length of weld, instead of forces and moments",
        "design_code": "asd, lrfd, en or en-directional",
        "analysis": "elastic, or ic for the instantaneous centre",
        "cross_increase": "yes counts the added strength across the weld (AISC 360 J2.4)",
        "filler_strength": "tensile strength of the filler; blank: by the wire's class",
        "steel": "grade; blank: A36, or S235JR with EN 1993",
        "segment": "length of an intermittent segment; blank: the shortest allowed",
    }
)
"""What each key besides the job's means."""

_STRENGTH_DEFAULTS = {
    "group": "line", "group_width": "4in", "group_height": "", "weld_sides": "", "part_length": "",
    "px": "", "py": "", "pz": "", "load_x": "", "load_y": "", "load_z": "",
    "mx": "", "my": "", "mz": "", "line_load": "",
    "design_code": "asd", "analysis": "elastic", "cross_increase": "no",
    "filler_strength": "", "steel": "", "segment": "",
}  # fmt: skip

DEFAULTS: Mapping[str, str] = MappingProxyType({**JOB_DEFAULTS, **_STRENGTH_DEFAULTS})
"""What a blank or missing key of the page means."""

KEY_WORDS: Mapping[str, str] = MappingProxyType({**JOB_WORDS, **STRENGTH_WORDS})
"""What each key means, for the terminal and the form."""

DEMO_LOAD: Mapping[str, str] = MappingProxyType({"py": "-10kip", "load_z": "3in"})
"""What stands in while nothing loads the weld: invented for the demonstration shop's bracket."""

DEMO_LOAD_IN_PLANE: Mapping[str, str] = MappingProxyType({"py": "-10kip", "load_x": "3in"})
"""The same where only a load in the plane can be taken."""

_POLYLINE = "polyline:"
_LONGEST = 400


class Outline(fields.Field[Any]):
    """A shape of weld by name, or one's own polyline, read in the page's units."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> str | WeldGroup:
        text = " ".join(str(value).split()).lower()
        if text in GROUPS:
            return text
        if not text.startswith(_POLYLINE):
            raise ValidationError(
                f"{units.quoted(text)} is no shape; use {', '.join(GROUPS)}, or "
                "polyline:0,0 4,0 4,6"
            )
        if len(text) > _LONGEST:
            raise ValidationError(f"The polyline is too long; give up to {MOST_POINTS} points")
        si = Measured.context_units(data) == "si"
        points = tuple(_point(pair, si=si) for pair in text.removeprefix(_POLYLINE).split())
        try:
            return polyline_group(points)
        except OutOfRangeError as error:
            raise ValidationError(
                f"A polyline takes 2 to {MOST_POINTS} points, no point twice in a row"
            ) from error


def _point(pair: str, *, si: bool) -> tuple[float, float]:
    parts = pair.split(",")
    try:
        if len(parts) != 2:
            raise ValueError
        x, y = (units.read(part, "length", "si" if si else "us") for part in parts)
    except ValueError as error:
        raise ValidationError(
            f"{units.quoted(pair)} is no point; write x,y such as 4,0 or 100mm,50mm"
        ) from error
    if max(abs(x), abs(y)) > 30.0:
        raise ValidationError(f"{units.quoted(pair)} is farther off than 100 ft (30 m)")
    return x, y


def _force(why: str = "over that no fillet on a phone is the answer") -> Measured:
    return Measured("force", "-10000kip", "10000kip", why)


def _moment() -> Measured:
    return Measured("moment", "-1000000kip-in", "1000000kip-in", "over that ask an engineer")


def _reach() -> Measured:
    return Measured("length", "-100ft", "100ft", "the load is not that far off")


StrengthSchema = Schema.from_dict(
    {
        "group": Outline(),
        "group_width": Measured("length", "1/4in", "100ft", "shorter is no weld"),
        "group_height": Measured("length", "1/4in", "100ft", "shorter is no weld"),
        "weld_sides": Choice(("1", "2")),
        "part_length": Measured("length", "1/4in", "1000ft", "the part the weld lies on"),
        "px": _force(),
        "py": _force(),
        "pz": _force(),
        "load_x": _reach(),
        "load_y": _reach(),
        "load_z": _reach(),
        "mx": _moment(),
        "my": _moment(),
        "mz": _moment(),
        "line_load": Measured(
            "force_per_length", "0.001kip/in", "100kip/in", "no fillet holds more"
        ),
        "design_code": Choice(CODES),
        "analysis": Choice(("elastic", "ic")),
        "cross_increase": Choice(("no", "yes")),
        "filler_strength": Measured("stress", "60ksi", "120ksi", "classes of steel filler"),
        "steel": Entry(strength_of, tuple(STRENGTHS)),
        "segment": Measured("length", "1-1/2in", "12in", "AISC 360 J2.2b asks 1-1/2 in or more"),
    },
    name="StrengthSchema",
)
"""The page's keys besides the job's."""

assert set(SHAPES) | {"circle"} == set(GROUPS)
