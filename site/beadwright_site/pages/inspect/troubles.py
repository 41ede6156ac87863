"""Trouble as the Inspect page shows it: each cause, the number behind it, what to check."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import units
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.trouble import SYMPTOMS, Ranked
from beadwright.sources import SOURCES
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.written import written, written_room


@dataclass(frozen=True, slots=True)
class CauseLine:
    """A cause.

    Attributes:
        name: What it is.
        number: What this job says of it, or empty.
        check: The check to make.
        go: The value to go to, or empty.
        source: Source id.
        cited: How its source is named.
    """

    name: str
    number: str
    check: str
    go: str
    source: str
    cited: str


def trouble_lists(found: InspectAnswer) -> Iterator[tuple[str, tuple[CauseLine, ...]]]:
    """Yield each trouble's name and its causes, the likeliest of this job first."""
    for symptom, causes in found.troubles:
        lines = tuple(_line(each, found.units) for each in causes)
        name = worded(SYMPTOMS[symptom], found.units)
        yield name[0].upper() + name[1:], lines


def first_cause(found: InspectAnswer) -> str:
    """Return the likeliest cause of the trouble seen or heard, and where to go; empty without one.

    Args:
        found: The page's answer.
    """
    if found.query.trouble is None:
        return ""
    name, causes = next(trouble_lists(found))
    if not causes:
        return ""
    cause = causes[0]
    return (
        f"{name}: {cause.name[0].lower()}{cause.name[1:]} is most likely. {cause.go or cause.check}"
    )


def _line(ranked: Ranked, system: System) -> CauseLine:
    sign, cause = ranked.sign, ranked.cause
    number, go = "", ""
    if sign.setting is not None:
        now = written(sign.setting.value, sign.setting.measure, system)
        number = f"{now} now, window {written_room(sign.setting, system)}"
        go = _go(sign.target, sign.setting.measure, system)
        if sign.target is None and sign.near < 0.5:
            go = "On the safe side of its window."
    elif sign.target is not None:
        go = _go(sign.target, "gas_flow", system)
    source = SOURCES[cause.source]
    practice = source.how == "common practice"
    cited = source.told if practice else f"{source.document}, {source.told}"
    return CauseLine(
        worded(cause.phrase, system), number, worded(cause.check, system), go, cause.source, cited
    )


def _go(target: float | None, measure: str, system: System) -> str:
    if target is None:
        return ""
    return f"Go to {units.show(target, measure, system)} {units.symbol(measure, system)}."
