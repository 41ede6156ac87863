"""Run Python inside Pyodide, under Node, on this machine.

The build compiles and traces there, so that what it writes fits the phone's Python exactly and
does not depend on the Python that runs the build; tests run the shipped files the same way.
"""

import json
import subprocess
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from beadwright_build import npm
from beadwright_build.errors import BuildError
from beadwright_build.places import INSIDE, PYODIDE, ROOT

TIME_LIMIT_S = 300


def run(
    module: str,
    argument: object,
    *,
    mounts: Mapping[str, Path],
    path: list[str],
    runtime: Path | None = None,
) -> Any:
    """Call ``main`` of a module inside Pyodide with JSON and return its JSON answer.

    Args:
        module: Dotted name; found on ``path`` or in ``build/``.
        argument: Anything JSON can say.
        mounts: Folder name inside (below ``INSIDE``) to folder of this machine.
        path: What goes on ``sys.path`` inside, relative to ``INSIDE``.
        runtime: A built ``runtime/`` folder to run on; Pyodide as shipped if None.

    Raises:
        BuildError: If Pyodide does not start, the function raises, or time runs out.
    """
    index = runtime or PYODIDE
    stdlib = "stdlib.zip" if runtime else "python_stdlib.zip"
    info = "manifest.json" if runtime else "pyodide-lock.json"
    with tempfile.TemporaryDirectory() as scratch:
        result = Path(scratch) / "result.json"
        task = {
            "index": str(index),
            "stdlib": str(index / stdlib),
            "info": str(index / info),
            "mounts": {
                f"{INSIDE}/{name}": str(folder)
                for name, folder in {"build": ROOT / "build", **mounts}.items()
            },
            "path": [f"{INSIDE}/{entry}" for entry in [*path, "build"]],
            "module": module,
            "argument": json.dumps(argument),
            "result": str(result),
        }
        # In a file: a command line has a limit that a list of jobs soon passes.
        told = Path(scratch) / "task.json"
        told.write_text(json.dumps(task))
        script = Path(__file__).with_suffix(".mjs")
        try:
            done = subprocess.run(
                [npm.program("node"), script, told],
                env=npm.environment(),
                stdin=subprocess.DEVNULL,
                capture_output=True,
                text=True,
                check=False,
                timeout=TIME_LIMIT_S,
            )
        except subprocess.TimeoutExpired as late:
            raise BuildError(f"{module} in Pyodide: no answer in {TIME_LIMIT_S} s") from late
        if done.returncode != 0 or not result.is_file():
            raise BuildError(f"{module} in Pyodide failed:\n{done.stdout}{done.stderr}".rstrip())
        return json.loads(result.read_text())
