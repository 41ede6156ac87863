"""The build, step by step."""

import fcntl
import shutil
import time
from collections.abc import Callable, Generator
from contextlib import contextmanager
from pathlib import Path

from beadwright_build import npm, stamp
from beadwright_build.compiled_templates import compile_templates
from beadwright_build.edits import edit_stdlib
from beadwright_build.freeze import freeze
from beadwright_build.libraries import copy_sources
from beadwright_build.licences import write_licences
from beadwright_build.places import OUT, Places, places_for
from beadwright_build.release import write_release
from beadwright_build.runtime import core_id, pack_runtime, prove_runtime
from beadwright_build.scripts import lighten
from beadwright_build.size_report import report
from beadwright_build.vendor import copy_front_end

Step = Callable[[Places], object]

STEPS: dict[str, Step] = {
    "npm packages": lambda _: npm.install(),
    "front-end files": lambda places: copy_front_end(places.vendor),
    "libraries": lambda places: copy_sources(places.libraries),
    "standard library": lambda places: edit_stdlib(places.stdlib),
    "templates": lambda places: compile_templates(places.templates),
    "runtime": pack_runtime,
    "runtime works": lambda places: prove_runtime(places.runtime),
    "pages": lambda places: freeze(places.vendor, places.frozen, core_id(places.runtime)),
    "assemble": lambda places: assemble(places),
    "release": lambda places: release(places),
}
"""What is done, in this order; each step reads what the ones before it left in ``places.work``."""


def build_site(name: str = "site", say: Callable[[str], None] = print) -> Path:
    """Bring ``.out/<name>`` up to date and return it; nothing is done if nothing changed.

    Raises:
        BuildError: If a step cannot do its work.
    """
    places = places_for(name)
    with _one_at_a_time():
        inputs = stamp.inputs_hash()
        if stamp.is_current(places.site, inputs):
            return places.site
        stamp.clear(places.site)
        shutil.rmtree(places.work, ignore_errors=True)
        places.work.mkdir(parents=True)
        for title, step in STEPS.items():
            started = time.monotonic()
            step(places)
            say(f"{title:<18}{time.monotonic() - started:6.1f} s")
        stamp.mark(places.site, inputs)
    return places.site


def assemble(places: Places) -> None:
    """Put pages, runtime and licences together as the site folder."""
    shutil.rmtree(places.site, ignore_errors=True)
    shutil.copytree(places.frozen, places.site)
    lighten(places.site / "static")
    shutil.copytree(places.runtime, places.site / "runtime")
    write_licences(places.site / "licences.txt")


def release(places: Places) -> None:
    """Compress, hash and list the site; keep the size report beside it."""
    written = write_release(places.site, places.cache)
    places.work.joinpath("sizes.txt").write_text(report(places.site, written) + "\n")


def size_report(name: str = "site") -> str:
    """Return the size report of the last build."""
    return places_for(name).work.joinpath("sizes.txt").read_text()


@contextmanager
def _one_at_a_time() -> Generator[None]:
    """Hold the build's lock: two at once would write the same folders."""
    OUT.mkdir(exist_ok=True)
    with (OUT / "build.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
