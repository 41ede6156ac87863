"""What a cell of a sheet must say, worked out from the core's answer to the link behind it."""

from __future__ import annotations

from dataclasses import dataclass
from urllib.parse import unquote_plus, urlsplit

from beadwright import units
from beadwright.api import answer
from beadwright.results import Note
from tests.site.page import Element, inside

MARKS = {"us": 0.0254 / 32, "si": 0.0005}
"""A leg is told in 1/32 in, as a rule has it, or in half millimeters."""

MODES = {"short": "short", "globular": "glob.", "spray": "spray", "pulse": "pulse"}

REFUSED = {"setting.downhill-laps-cold": "laps cold", "setting.not-this-wire": "not downhill"}
"""What a cell says of the first stop it knows; of any other, and without one, no window."""


@dataclass(frozen=True)
class CellWords:
    """The words of a cell: the refusal alone, or the rest."""

    refused: str = ""
    first: str = ""
    leg: str = ""
    travel: str = ""
    tip: str = ""
    amps: str = ""
    passes: str = ""


def query_of(cell: Element) -> str:
    """Return the query of the link of a cell."""
    link = next(each.attrs["href"] for each in inside(cell) if each.tag == "a")
    return unquote_plus(urlsplit(link).query)


def cell_words(query: str) -> CellWords:
    """Return what a cell must say that leads to this query of Dial in."""
    found = answer("dial-in", query).dialled
    stops = [note for note in found.notes if note.level == "stop"]
    if not found.open or stops:
        return CellWords(refused=_refused(stops))
    system, settings, outcome = found.job.units, found.settings, found.outcome
    assert outcome is not None

    def show(value: float | None, measure: str) -> str:
        assert value is not None, query
        return units.show(value, measure, system)

    feed = show(settings.wire_feed.value, "wire_feed")
    pulse = outcome.transfer == "pulse"  # the machine makes its own volts
    assert (settings.volts.value is None) is pulse
    volts = "pulse" if pulse else f"{show(settings.volts.value, 'volts')} V"
    leg = round(found.plan.wanted_leg_m / MARKS[system]) * MARKS[system]
    star = "*" if any(note.key == "setting.short-may-not-fuse" for note in found.notes) else ""
    return CellWords(
        first=f"{feed} · {volts}",
        leg=show(leg, "leg"),
        travel=show(settings.travel.value, "travel"),
        tip=show(settings.tip_to_work.value, settings.tip_to_work.measure),
        amps=show(outcome.current.value, "current"),
        passes=f"{found.plan.passes}× {MODES[outcome.transfer]}{star}",
    )


def _refused(stops: list[Note]) -> str:
    return next((REFUSED[note.key] for note in stops if note.key in REFUSED), "no window")
