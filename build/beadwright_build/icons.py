"""Draw the PNG icons from their SVG sources: ``python -m beadwright_build.icons``.

Run by hand after a change of the drawing; the PNGs are kept in the repository, since not every
machine that builds the site has a browser to draw with.
"""

import os
from pathlib import Path
from typing import cast

from playwright.sync_api import sync_playwright
from zopfli import png

import beadwright_site

ICONS = Path(beadwright_site.__file__).parent / "static" / "icons"

DRAWINGS = {
    "icon-192.png": ("icon.svg", 192),
    "icon-512.png": ("icon.svg", 512),
    "icon-maskable-512.png": ("icon-maskable.svg", 512),
    # Square to the edge: that phone rounds the corners itself and shows black where it is clear.
    "apple-touch-180.png": ("icon-maskable.svg", 180),
}
"""PNG to the drawing it comes from and its side in pixels."""


def main() -> None:
    """Draw every PNG anew."""
    browser_path = os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=browser_path, args=["--no-sandbox"])
        for name, (drawing, side) in DRAWINGS.items():
            page = browser.new_page(viewport={"width": side, "height": side})
            page.set_content(f"<style>body{{margin:0}}</style>{(ICONS / drawing).read_text()}")
            # Packed without loss, to about half: every phone stores them on its first visit.
            drawn = page.screenshot(omit_background=True)
            (ICONS / name).write_bytes(cast(bytes, png.optimize(drawn)))
            page.close()
        browser.close()


if __name__ == "__main__":
    main()
