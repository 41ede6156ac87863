"""How long a plan of a hundred beads takes to be shown once the engine has answered.

    .venv/bin/python tests/bench/passes_shown.py [--site DIR] [--slower N]

In headless Chromium, its processor slowed N times to stand for a phone: the engine's answer for a
whole page and for a step to another bead, then the time from the answer to the frame that shows
the first screen. Medians; two frames are 33 ms.
"""

import argparse
import os
import statistics
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, sync_playwright

from beadwright_build.places import places_for
from beadwright_build.serve import SiteServer
from beadwright_site.pages.passes.page import LATER, PAGE, STEPPED

LONG = "plate=4in&joint=v&position=1G&travel_by=robot"
SHOW = """
async ([root, query, parts]) => {
  const { engine } = await import(`${root}static/js/engine/engine.js`);
  const { put } = await import(`${root}static/js/page/morph.js`);
  const asked = performance.now();
  const shown = await engine.call("page", { page: "passes", query, kept: {}, parts });
  const answered = performance.now();
  const ahead = document.querySelector("bead-answer").dataset.ahead.split(" ");
  put(Object.fromEntries(Object.entries(shown.html).filter(([id]) => ahead.includes(id))));
  document.body.getBoundingClientRect();
  const laid = performance.now();
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  return [answered - asked, laid - answered, performance.now() - answered];
}
"""


def measured(page: Page, root: str, rounds: int) -> dict[str, list[list[float]]]:
    """Return milliseconds of answer, laying out, and showing, by what was asked."""
    first = [part for part in PAGE.parts if part not in LATER]
    found: dict[str, list[list[float]]] = {"whole plan": [], "step": []}
    for number in range(1, rounds + 1):
        query = f"{LONG}&weld_length={number + 5}in"  # another plan each time
        found["whole plan"].append(page.evaluate(SHOW, [root, query, first]))
        at = f"{query}&at={number * 7 % 90 + 1}"
        found["step"].append(page.evaluate(SHOW, [root, at, list(STEPPED)]))
    return found


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Showing a plan of a hundred beads.")
    parser.add_argument("--site", type=Path, default=places_for("site").site)
    parser.add_argument("--slower", type=float, default=4.0)
    parser.add_argument("--rounds", type=int, default=9)
    asked = parser.parse_args()
    server = SiteServer(asked.site, "127.0.0.1", 0)
    server.start()
    path = os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, args=["--no-sandbox"])
        size: Any = {"width": 390, "height": 844}
        page = browser.new_context(viewport=size).new_page()
        page.goto(f"{server.url}passes/?{LONG}")
        page.wait_for_selector("bead-answer:not(.working):not(.waits-more)")
        page.wait_for_timeout(3000)
        session = page.context.new_cdp_session(page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": asked.slower})
        for what, times in measured(page, server.url, asked.rounds).items():
            answer, laid, shown = (statistics.median(column) for column in zip(*times, strict=True))
            print(f"{what:<12} answer {answer:6.0f} ms   laid out {laid:5.1f} ms   "
                  f"shown {shown:5.1f} ms after it")  # fmt: skip
        browser.close()
    server.stop()


if __name__ == "__main__":
    main()
