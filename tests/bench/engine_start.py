"""How long until the engine can answer: ours against Pyodide as shipped, in one run.

    .venv/bin/python tests/bench/engine_start.py [--rounds N]

Three ways, interleaved, in one headless Chromium, each in a fresh module worker: ours (the built
site's runtime, with everything the app imports); Pyodide as npm ships it, the same imports from
sources; Pyodide as npm ships it with nothing imported. Medians, and ours over each of the others.
"""

import argparse
import json
import os
import shutil
import statistics
import tempfile
import zipfile
from collections.abc import Iterator
from importlib import metadata
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, sync_playwright

from beadwright_build.compiled_templates import PACKAGE as TEMPLATES
from beadwright_build.libraries import LIBRARIES
from beadwright_build.places import PYODIDE, ROOT, places_for
from beadwright_build.serve import SiteServer
from beadwright_build.steps import build_site

IMPORTS = ["beadwright_site.phone", "beadwright_site.pages.dial_in.page"]
AIMS = {"as shipped, same imports": 0.35, "bare": 0.45}
START = """
(task) => new Promise((resolve) => {
  const worker = new Worker("engine_worker.js", { type: "module" });
  worker.onmessage = ({ data }) => { worker.terminate(); resolve(data); };
  worker.onerror = (event) => resolve({ error: event.message });
  worker.postMessage(task);
})
"""


def lay_out(folder: Path) -> None:
    """Put both runtimes, the same packages as sources, and the worker in one folder to serve."""
    shutil.copytree(build_site() / "runtime", folder / "ours")
    shutil.copytree(PYODIDE, folder / "shipped")
    with zipfile.ZipFile(folder / "sources.zip", "w", zipfile.ZIP_DEFLATED) as archive:
        for file, name in sources():
            archive.write(file, name)
    shutil.copy(Path(__file__).with_name("engine_worker.js"), folder)
    (folder / "index.html").write_text("<!doctype html><title>bench</title>")


def sources() -> Iterator[tuple[Path, str]]:
    """Yield each source file and its name: the libraries as published, ours, the templates."""
    for library in LIBRARIES:
        for path in metadata.files(library) or ():
            if path.parts[0] == library and path.suffix == ".py":
                yield Path(str(path.locate())), str(path)
    roots = {"beadwright": "calc", "beadwright_site": "site"}
    folders = [(ROOT / root, package) for package, root in roots.items()]
    for root, package in [*folders, (places_for("site").templates, TEMPLATES)]:
        for file in (root / package).rglob("*"):
            if file.is_file() and file.suffix != ".pyc":
                yield file, file.relative_to(root).as_posix()


def ways(url: str) -> dict[str, dict[str, Any]]:
    """Return what the worker is told for each way."""
    info = json.loads((PYODIDE / "pyodide-lock.json").read_text())["info"]
    shipped = {
        "index": f"{url}shipped/",
        "stdlib": f"{url}shipped/python_stdlib.zip",
        "info": info,
    }
    return {
        "ours": {
            "index": f"{url}ours/",
            "stdlib": f"{url}ours/stdlib.zip",
            "archives": [f"{url}ours/app.zip", f"{url}ours/libs.zip"],
            "imports": IMPORTS,
            "info": info,
        },
        "as shipped, same imports": {
            **shipped,
            "archives": [f"{url}sources.zip"],
            "imports": IMPORTS,
        },
        "bare": {**shipped, "archives": [], "imports": []},
    }


def measure(page: Page, url: str, rounds: int) -> dict[str, list[float]]:
    """Return the times to ready [ms] of each way; the first round warms up and is left out."""
    times: dict[str, list[float]] = {}
    for turn in range(rounds + 1):
        for way, task in ways(url).items():
            answer = page.evaluate(START, task)
            if "error" in answer:
                raise RuntimeError(f"{way}: {answer['error']}")
            if turn > 0:
                times.setdefault(way, []).append(answer["ready"])
    return times


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Engine start against Pyodide as shipped.")
    parser.add_argument("--rounds", type=int, default=7)
    rounds = parser.parse_args().rounds
    with tempfile.TemporaryDirectory() as name, sync_playwright() as playwright:
        folder = Path(name)
        lay_out(folder)
        browser = playwright.chromium.launch(
            executable_path=os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium"),
            args=["--no-sandbox"],
        )
        with SiteServer(folder) as server:
            page = browser.new_page()
            page.goto(server.url)
            times = measure(page, server.url, rounds)
        browser.close()
    ours = times["ours"]
    for way, took in times.items():
        print(f"{way:<26}{statistics.median(took):8.0f} ms   ({min(took):.0f} to {max(took):.0f})")
    for way, aim in AIMS.items():
        medians = statistics.median(ours) / statistics.median(times[way])
        best = min(ours) / min(times[way])
        print(f"ours / {way:<26}{medians:6.2f}   (best rounds {best:.2f}; aim {aim} or less)")


if __name__ == "__main__":
    main()
