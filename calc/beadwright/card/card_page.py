"""The Card page's answer: a weld as planned, heated and judged, and the coupons that prove it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.card.card_proof import Proof, proofs_of
from beadwright.card.card_query import CardQuery
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.heat_page import heat_of
from beadwright.inspection.inspect_page import limits_of
from beadwright.inspection.inspected import Check, inspected
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.passes.pass_beads import Bead, PassPlan
from beadwright.passes.passes_page import passes_of
from beadwright.results import Note, severest_first
from beadwright.setting.dial_in import DialIn

LOUD = ("stop", "out", "caution")
"""Notes that are printed: what can hurt somebody or the weld."""


@dataclass(frozen=True, slots=True)
class CardAnswer(PageAnswered):
    """The Card page's answer.

    Attributes:
        page: ``card``.
        query: The query as read.
        dialled: The job with its settings and their windows.
        found: Every bead.
        heat: Preheat and heat.
        limits: What the finished weld is held to.
        proofs: Kept coupons that may prove it, the newest first.
        notes: Notes, the most severe first.
    """

    query: CardQuery
    dialled: DialIn
    found: PassPlan
    heat: HeatAnswer
    limits: tuple[Check, ...]
    proofs: tuple[Proof, ...]

    @property
    def parts(self) -> tuple[tuple[Bead, ...], ...]:
        """The beads in groups: those of one side that do one thing, in welding order."""
        groups: dict[tuple[int, str], list[Bead]] = {}
        for bead in self.found.beads:
            groups.setdefault((bead.side, bead.role), []).append(bead)
        return tuple(tuple(group) for group in groups.values())

    @property
    def proved(self) -> bool:
        """True if a coupon is named."""
        return bool(self.query.says.proved_mark)


def card_answer(text: str, kept: Mapping[str, Any] | None = None) -> CardAnswer:
    """Return the Card page's answer to a query string.

    Args:
        text: Keys of ``card_query.CardQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    query = read_page(CardQuery, text, kept)
    planned, heat = passes_of(query.of_passes), heat_of(query.of_heat)
    dialled = planned.dialled
    weld = inspected(query.job, WeldReadings(read_by="along"))
    return CardAnswer(
        page="card",
        query=query,
        dialled=dialled,
        found=planned.found,
        heat=heat,
        limits=tuple(limits_of(weld, query.accept, across=query.judged.across == "yes")),
        proofs=proofs_of(query.coupons or (), dialled, planned.found),
        notes=severest_first(_notes(planned.notes, heat.notes)),
    )


def _notes(*of_pages: tuple[Note, ...]) -> Iterator[Note]:
    """What warns, each thing once."""
    told = dict.fromkeys(note for notes in of_pages for note in notes if note.level in LOUD)
    yield from told
