"""Pack the Python the phone runs: Pyodide, and three archives of compiled modules.

``stdlib.zip`` holds what the app was seen to import of the standard library, ``libs.zip`` the same
of the libraries, ``app.zip`` our own. They change at different times, so that an update of the app
fetches only the last.
"""

import hashlib
import json
from collections.abc import Iterator
from pathlib import Path, PurePosixPath

from beadwright_build import pyodide_node, vendor
from beadwright_build.compiled_templates import PACKAGE as TEMPLATES
from beadwright_build.edits import DATACLASS_CODE, STDLIB_EDITS
from beadwright_build.errors import BuildError
from beadwright_build.places import INSIDE, PYODIDE, ROOT, Places

STDLIB = "/lib/python313.zip"
"""Where Pyodide puts its standard library."""

APP = {"beadwright": "calc", "beadwright_site": "site", TEMPLATES: "templates"}
"""Our packages, and the folder each is in."""

OPTIMIZE = {"stdlib.zip": 2, "libs.zip": 2, "app.zip": 1}
"""Level by archive. Without docstrings (2) an archive is a fifth smaller; but a dataclass with
none writes itself one at import, from its signature: a quarter of the core's import time. Ours has
its docstrings left out by the packer, which keeps a mark in a dataclass."""
ARCHIVES = tuple(OPTIMIZE)


def pack_runtime(places: Places) -> None:
    """Trace the app's imports under Pyodide, then write ``runtime/``."""
    places.runtime.mkdir(parents=True)
    vendor.copy_pyodide(places.runtime)
    lock = json.loads((PYODIDE / "pyodide-lock.json").read_text())
    manifest = {"info": lock["info"], "python": lock["info"]["python"]}
    _write_manifest(places.runtime, manifest)
    mounts = {
        "calc": ROOT / "calc",
        "site": ROOT / "site",
        "templates": places.templates,
        "libraries": places.libraries,
        "stdlib": places.stdlib,
        "runtime": places.runtime,
    }
    seen = pyodide_node.run(
        "beadwright_build.inside.exercise",
        core_modules(),
        mounts=mounts,
        path=["calc", "site", "templates", "libraries"],
    )
    pyodide_node.run(
        "beadwright_build.inside.pack", _plan(seen, places.templates), mounts=mounts, path=[]
    )
    _write_manifest(places.runtime, {**manifest, "core": core_id(places.runtime)})


def core_id(runtime: Path) -> str:
    """Return a short name of the packed core: pages and numbers of one release say the same."""
    return hashlib.sha256((runtime / "app.zip").read_bytes()).hexdigest()[:12]


def _write_manifest(runtime: Path, manifest: dict[str, object]) -> None:
    (runtime / "manifest.json").write_text(json.dumps(manifest, sort_keys=True) + "\n")


def prove_runtime(runtime: Path) -> None:
    """Use everything once more, now with nothing but what was packed.

    Raises:
        BuildError: If a module is missing or an answer differs from its known value.
    """
    seen = pyodide_node.run(
        "beadwright_build.inside.exercise",
        core_modules(),
        mounts={"runtime": runtime},
        path=["runtime/app.zip", "runtime/libs.zip"],
        runtime=runtime,
    )
    if seen["dataclass_sources"]:
        raise BuildError(f"not compiled ahead:\n{seen['dataclass_sources'][0]}")


DESK_ONLY = frozenset({
    "__main__", "burnoff_fit", "procedure_rows", "procedure_score",
})  # fmt: skip
"""Modules of the core for the terminal, for Method's tables, for benchmarks."""


def core_modules() -> list[str]:
    """Return the name of every module of the core that the phone may use."""
    files = (ROOT / "calc" / "beadwright").rglob("*.py")
    names = (file.relative_to(ROOT / "calc").with_suffix("") for file in files)
    dotted = (".".join(name.parts).removesuffix(".__init__") for name in names)
    return sorted(name for name in dotted if name.rpartition(".")[2] not in DESK_ONLY)


def _plan(seen: dict[str, list[str]], templates: Path) -> dict[str, object]:
    """Say what goes in each archive, in an order that keeps the earlier ones from changing."""
    files: dict[str, dict[str, str]] = {name: {} for name in ARCHIVES}
    library_root = f"{INSIDE}/libraries"
    app_roots = {f"{INSIDE}/{folder}" for folder in APP.values()}
    for path in [*seen["files"], *_beside(templates)]:
        for root in (STDLIB, library_root, *app_roots):
            if path.startswith(f"{root}/"):
                archive = {STDLIB: "stdlib.zip", library_root: "libs.zip"}.get(root, "app.zip")
                files[archive][path.removeprefix(f"{root}/")] = path
    for name in STDLIB_EDITS:
        files["stdlib.zip"][name] = f"{INSIDE}/stdlib/{name}"
    return {
        "stdlib": STDLIB,
        "archives": [
            {
                "to": f"{INSIDE}/runtime/{name}",
                "files": files[name],
                "optimize": OPTIMIZE[name],
                "docstrings": name != "app.zip",
                "codes": {DATACLASS_CODE: seen["dataclass_sources"]} if name == "app.zip" else {},
            }
            for name in ARCHIVES
        ],
    }


def _beside(templates: Path) -> Iterator[str]:
    """Yield what no import shows: data files of our packages, and every compiled template."""
    for package, folder in APP.items():
        root = templates if folder == "templates" else ROOT / folder
        for file in sorted((root / package).rglob("*")):
            name = PurePosixPath(file.relative_to(root).as_posix())
            if file.is_file() and _is_shipped(name):
                yield f"{INSIDE}/{folder}/{name}"


def _is_shipped(name: PurePosixPath) -> bool:
    package = name.parts[0]
    if package == TEMPLATES:
        return name.suffix == ".py"
    if package == "beadwright_site":
        return False  # the web server's side: what it serves, and what it renders from
    return name.suffix not in {".py", ".pyc", ".typed"} and not name.name.startswith(".")
