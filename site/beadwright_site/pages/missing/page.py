"""The page for an address that leads nowhere.

It needs no other file, since it may stand in for any depth of path.
"""

from __future__ import annotations

from typing import Final

from beadwright_site.parts.still_page import StillPage

PAGE: Final = StillPage("missing", dict)
"""The page."""
