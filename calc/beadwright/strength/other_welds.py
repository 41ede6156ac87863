"""Welds that are no fillets, judged by their own rules: grooves, plugs, slots."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from beadwright.phrases import say
from beadwright.results import Note, severest_first
from beadwright.strength.groove_weld import GrooveSizes, groove_links, groove_notes, groove_sizes
from beadwright.strength.plug_weld import PlugSizes, plug_links, plug_notes, plug_sizes
from beadwright.strength.root_notes import root_notes
from beadwright.strength.strength_cautions import cautions
from beadwright.strength.strength_check import Link, Spread, spread
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


@dataclass(frozen=True, slots=True)
class OtherWeld:
    """A groove, plug or slot as judged.

    Attributes:
        spread: How the load spreads along it.
        sizes: What of its size matters.
        links: What can give way, the weakest first.
        notes: Notes, the most severe first.
    """

    spread: Spread
    sizes: GrooveSizes | PlugSizes
    links: tuple[Link, ...]
    notes: tuple[Note, ...]


def other_weld(task: StrengthTask) -> OtherWeld:
    """Return a groove, plug or slot as judged.

    Args:
        task: What is asked; its joint has no fillet that carries [-].

    Raises:
        FieldErrors: If it cannot take this load, or nothing of it counts.
    """
    if task.job.is_round:
        plug, found = plug_sizes(task), spread(task)
        return _judged(task, found, plug, plug_links(task, plug), plug_notes(task, plug))
    found = spread(task)
    groove = groove_sizes(task)
    links = groove_links(task, found, groove)
    said = (*groove_notes(task, groove), *root_notes(task, found))
    return _judged(task, found, groove, links, said)


def _judged(
    task: StrengthTask,
    found: Spread,
    sizes: GrooveSizes | PlugSizes,
    links: Iterable[Link],
    notes: Iterable[Note],
) -> OtherWeld:
    ordered = tuple(sorted(links, key=lambda link: -link.use))
    said = (*_overloaded(ordered), *notes, *cautions(task))
    return OtherWeld(found, sizes, ordered, severest_first(said))


def _overloaded(links: tuple[Link, ...]) -> Iterator[Note]:
    for link in links:
        if link.use > 1 + REL_TOL:
            over = say("strength.overloaded", link=link.phrase, use=link.use)
            plate = link.key.partition("-")[0]
            yield Note(
                "stop", over, link.source, plate if plate in ("plate", "plate2") else "joint"
            )
