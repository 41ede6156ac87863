"""Jobs for the property tests: query strings over everything a welder may ask."""

from __future__ import annotations

from urllib.parse import urlencode

from hypothesis import strategies as st

from beadwright.job.job_query import read_query
from beadwright.passes.pass_beads import PassPlan
from beadwright.passes.passes_page import passes_answer
from beadwright.process.gases import GASES
from beadwright.process.wires import WIRE_TYPES
from beadwright.setting.dial_in import DialIn, dial_in

Typed = dict[str, str]

PLATES = (
    "24ga", "18ga", "16ga", "12ga", "10ga", "1/8in", "3/16in", "6mm", "1/4in", "5/16in", "3/8in",
    "12mm", "1/2in", "3/4in", "1in", "4in",
)  # fmt: skip
LEGS = ("1/8in", "3/16in", "5mm", "1/4in", "5/16in", "8mm", "3/8in", "1/2in", "3/4in", "1in")
POSITIONS = ("1F", "2F", "3F-up", "3F-down", "4F", "PA", "PB", "PF")
GAPS = ("0in", "1/32in", "1/16in", "3/32in", "1/8in", "3/16in")


def one_of(*choices: str) -> st.SearchStrategy[str]:
    return st.sampled_from(choices)


@st.composite
def wires(draw: st.DrawFn) -> Typed:
    name = draw(st.sampled_from(list(WIRE_TYPES)))
    return {"wire": name, "dia": draw(st.sampled_from(WIRE_TYPES[name].sizes))}


@st.composite
def jobs(draw: st.DrawFn, *, joints: tuple[str, ...] = ("tee", "lap", "corner", "square")) -> Typed:
    """A job with nothing set by hand and no limit of the machine."""
    typed = {
        "units": draw(one_of("us", "si")),
        "joint": draw(one_of(*joints)),
        "plate": draw(one_of(*PLATES)),
        "position": draw(one_of(*POSITIONS)),
        "gas": draw(one_of(*GASES)),
        "transfer": draw(one_of("auto", "auto", "short", "spray", "pulse")),
        "travel_by": draw(one_of("hand", "track", "robot")),
    } | draw(wires())
    extras = {
        "plate2": one_of(*PLATES),
        "gap": one_of(*GAPS),
        "reinforcement": one_of("1/32in", "1/16in", "1/8in"),
    }
    if typed["joint"] != "corner":  # a corner's leg is held by its plate
        extras["leg"] = one_of(*LEGS)
    for key, choice in extras.items():
        if draw(st.booleans()):
            typed[key] = draw(choice)
    return typed


BY_HAND = {
    "wfs": ("30in/min", "120in/min", "290in/min", "7.4m/min", "500in/min", "1000in/min"),
    "volts": ("10V", "16V", "18.5V", "23.6V", "29V", "50V"),
    "ctwd": ("1/8in", "3/8in", "15mm", "3/4in", "1in", "2in"),
    "travel": ("1in/min", "6in/min", "300mm/min", "18in/min", "60in/min", "200in/min"),
    "machine_amps": ("30A", "90A", "140A", "200A", "350A", "1000A"),
    "machine_volts": ("12V", "18V", "22V", "26V", "34V", "60V"),
}


@st.composite
def jobs_by_hand(draw: st.DrawFn) -> Typed:
    """A job with settings fixed and a machine with limits, in any mixture."""
    typed = draw(jobs())
    for key, values in BY_HAND.items():
        if draw(st.booleans()):
            typed[key] = draw(one_of(*values))
    return typed


def query(typed: Typed) -> str:
    return urlencode(typed)


def dialled(typed: Typed) -> DialIn:
    """The dial-in of a job as typed."""
    return dial_in(read_query(query(typed)).job)


def planned(query: str) -> PassPlan:
    return passes_answer(query).found
