"""How many beads a plan has at most."""

from __future__ import annotations

from math import inf

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.passes.pass_beads import Asked

MOST_BEADS = 400
"""Most beads of a plan, asked for or the fewest that hold [-]: half as many again as the largest
groove takes in any position. More lie on one another only where what is set by hand lays next to
nothing; to work out tens of thousands would keep a phone busy for minutes."""


def require_few(job: Job, asked: Asked, beads: int) -> None:
    """Refuse a plan of more beads than a joint is welded with, beside what makes them so light.

    Args:
        job: The job [-].
        asked: What is asked of the plan [-].
        beads: Beads it would have [-].

    Raises:
        FieldErrors: If they are more than ``MOST_BEADS``.
    """
    if beads <= MOST_BEADS:
        return
    feeds = {
        "root_wfs": asked.root.wire_feed_m_s,
        "cap_wfs": asked.cap.wire_feed_m_s,
        "wfs": job.by_hand.wire_feed_m_s,
        "dia": inf,
    }
    _, slowest = min((feed, key) for key, feed in feeds.items() if feed is not None)
    raise FieldErrors({slowest: [f"This takes {beads:,} beads, so light is each: a plan has "
                                 f"{MOST_BEADS} at most. Lay more metal with each bead: feed "
                                 "more wire, travel slower, or take a thicker wire."]})  # fmt: skip
