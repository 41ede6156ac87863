"""Method: each equation with its symbols, range, source and band; the points; every source."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from beadwright.pages import PAGES
from beadwright.sources import SOURCES
from beadwright_site.changes import CHANGES
from beadwright_site.method.contents import TOPICS
from beadwright_site.method.mathml import inline
from beadwright_site.parts.still_page import StillPage


def _view() -> Mapping[str, Any]:
    return {
        "topics": [(topic, topic.sections()) for topic in TOPICS],
        "sources": SOURCES,
        "changes": CHANGES,
        "answered": PAGES.values(),
        "inline": inline,
    }


PAGE: Final = StillPage("method", _view)
"""The page."""
