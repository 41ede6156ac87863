"""Method: each equation with its symbols, range, source and band; every source."""

from __future__ import annotations

from beadwright_site.rendering import render


def method_page() -> str:
    """Return the page."""
    return render("method/page.html", "method")
