"""The page for an address that leads nowhere."""

from __future__ import annotations

from beadwright_site.rendering import render


def missing_page() -> str:
    """Return the page; it needs no other file, since it may stand in for any depth."""
    return render("missing/page.html", "missing")
