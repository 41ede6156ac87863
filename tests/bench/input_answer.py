"""How long from a finger's move on a band to the answer standing in the page.

    .venv/bin/python tests/bench/input_answer.py [--moves N] [--slow-down X]

The built site in headless Chromium at a phone's size. Each move is a key on the wire feed's band,
the same path a dragging finger takes; the time ends when the facts below have changed. Printed
twice: as this machine is, and with the page and its worker slowed down.
"""

import argparse
import json
import os
import statistics

from playwright.sync_api import CDPSession, Page, ViewportSize, sync_playwright

from beadwright_build.serve import SiteServer
from beadwright_build.steps import build_site

PHONE: ViewportSize = {"width": 390, "height": 844}
AIMS_MS = {1.0: 16.0, 6.0: 100.0}
MOVE = """
async (moves) => {
  const facts = document.getElementById("facts");
  const times = [];
  for (let move = 0; move < moves; move += 1) {
    const band = document.querySelector("#set-wfs [role=slider]");
    const key = move % 40 < 20 ? "ArrowRight" : "ArrowLeft";
    const changed = new Promise((resolve, reject) => {
      const watch = new MutationObserver(() => { watch.disconnect(); resolve(performance.now()); });
      const all = { subtree: true, childList: true, characterData: true, attributes: true };
      watch.observe(facts, all);
      setTimeout(() => reject(new Error(`no answer to move ${move}`)), 10000);
    });
    const started = performance.now();
    band.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
    times.push((await changed) - started);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
  return times;
}
"""
READY = """
() => new Promise((resolve, reject) => {
  const band = () => document.querySelector("#set-wfs [role=slider]");
  const before = location.search;
  const tick = setInterval(() => {
    if (location.search !== before) { clearInterval(tick); resolve(true); }
  }, 20);
  band().dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowRight", bubbles: true }));
  setTimeout(() => reject(new Error("the engine did not start")), 60000);
})
"""


def slow_down(session: CDPSession, rate: float, workers: list[str]) -> bool:
    """Slow the page down; return whether its workers took the same order."""
    session.send("Emulation.setCPUThrottlingRate", {"rate": rate})
    taken: list[bool] = []

    def hear(event: dict[str, str]) -> None:
        taken.append("error" not in json.loads(event["message"]))

    session.on("Target.receivedMessageFromTarget", hear)
    for number, worker in enumerate(workers, 1):
        order = {
            "id": number,
            "method": "Emulation.setCPUThrottlingRate",
            "params": {"rate": rate},
        }
        session.send(
            "Target.sendMessageToTarget", {"sessionId": worker, "message": json.dumps(order)}
        )
    return bool(workers) and len(taken) == len(workers) and all(taken)


def watch_workers(page: Page) -> tuple[CDPSession, list[str]]:
    """Open a DevTools session on the page, and collect one for each worker it starts."""
    session = page.context.new_cdp_session(page)
    workers: list[str] = []

    def meet(event: dict[str, str]) -> None:
        workers.append(event["sessionId"])

    session.on("Target.attachedToTarget", meet)
    session.send(
        "Target.setAutoAttach",
        {"autoAttach": True, "waitForDebuggerOnStart": False, "flatten": False},
    )
    return session, workers


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="From a move on a band to the answer.")
    parser.add_argument("--moves", type=int, default=120)
    parser.add_argument("--slow-down", type=float, default=6.0)
    asked = parser.parse_args()
    with sync_playwright() as playwright, SiteServer(build_site()) as server:
        browser = playwright.chromium.launch(
            executable_path=os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium"),
            args=["--no-sandbox"],
        )
        page = browser.new_page(viewport=PHONE)
        session, workers = watch_workers(page)
        page.goto(server.url)
        page.evaluate(READY)
        for rate in (1.0, asked.slow_down):
            slowed = slow_down(session, rate, workers)
            times = sorted(page.evaluate(MOVE, asked.moves))
            p95 = times[int(len(times) * 0.95)]
            aim = f"aim {AIMS_MS[rate]:.0f} or less" if rate in AIMS_MS else ""
            worker = "" if rate == 1 or slowed else ", page only: the worker cannot be slowed"
            print(
                f"{rate:g}x slower: median {statistics.median(times):6.1f} ms, "
                f"95 in 100 within {p95:6.1f} ms, worst {times[-1]:.1f}   ({aim}{worker})"
            )
        browser.close()


if __name__ == "__main__":
    main()
