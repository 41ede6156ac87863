"""Method: each equation with its symbols, range, source and band; the points; every source."""

from __future__ import annotations

from beadwright.sources import SOURCES
from beadwright_site.changes import CHANGES
from beadwright_site.method.contents import TOPICS
from beadwright_site.method.mathml import inline
from beadwright_site.rendering import render


def method_page() -> str:
    """Return the page."""
    return render(
        "method/page.html",
        "method",
        topics=[(topic, topic.sections()) for topic in TOPICS],
        sources=SOURCES,
        changes=CHANGES,
        inline=inline,
    )
