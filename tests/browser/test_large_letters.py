"""A phone whose owner reads letters twice as large, and one 320 pixels wide: nothing sticks out."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from beadwright.pages import PAGES
from beadwright_site.page_table import SITE_PAGES
from tests.browser.host import Host

STICKS_OUT = """
() => {
  for (const fold of document.querySelectorAll("main details")) fold.open = true;
  return document.documentElement.scrollWidth - innerWidth;
}
"""
MORE = ("method/", "sheets/", "sheets/wall.html", "sheets/us-er70s-6-0.045in-90-10.html")


@pytest.mark.parametrize(("letters_px", "width"), [(16, 320), (32, 320), (32, 390)])
def test_no_page_is_wider_than_the_screen(
    chromium: Browser, steady_host: Host, tmp_path: Path, letters_px: int, width: int
) -> None:
    """WCAG 2.2, 1.4.4 and 1.4.10; the letters are set as a browser's owner sets them."""
    settings = tmp_path / "Default" / "Preferences"
    settings.parent.mkdir()
    settings.write_text(json.dumps({"webkit": {"webprefs": {"default_font_size": letters_px}}}))
    context = chromium.browser_type.launch_persistent_context(
        str(tmp_path),
        executable_path=os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium"),
        args=["--no-sandbox"],
        viewport={"width": width, "height": 844},
        service_workers="block",
    )
    try:
        page = context.pages[0]
        wider: dict[str, int] = {}
        for path in (*(SITE_PAGES[name].path for name in PAGES), *MORE):
            page.goto(steady_host.url + path, wait_until="load")
            page.wait_for_selector("footer, .settings-sheet")
            wider[path] = page.evaluate(STICKS_OUT)
        root = page.evaluate("getComputedStyle(document.documentElement).fontSize")
        assert root == f"{letters_px}px"
        assert {path: by for path, by in wider.items() if by > 0} == {}
    finally:
        context.close()
