"""Scripts on their way to the phone: without comments, spare blanks, long names inside a script."""

import subprocess
from functools import cache
from pathlib import Path

from beadwright_build.errors import BuildError
from beadwright_build.npm import environment
from beadwright_build.places import NODE_MODULES

ESBUILD = NODE_MODULES / ".bin" / "esbuild"
FLAGS = (
    "--minify-whitespace",
    "--minify-identifiers",
    "--target=esnext",
    "--charset=utf8",
    "--log-level=warning",
)


def lighten(folder: Path) -> None:
    """Strip comments and spare blanks from every script of a folder, in place.

    A name that only its own script uses is made short. What is exported, members of objects and
    the order of things stay as written; a licence's comment stays.

    Raises:
        BuildError: If a script cannot be read; the tool's own words are in the message.
    """
    scripts = [str(path.relative_to(folder)) for path in sorted(folder.rglob("*.js"))]
    _esbuild(folder, *scripts, "--outdir=.", "--allow-overwrite", "--outbase=.")


@cache
def bundle(entry: Path) -> str:
    """Return a script and all the modules it imports as one script that is no module.

    Args:
        entry: The script that imports the others.

    Raises:
        BuildError: If a script cannot be read; the tool's own words are in the message.
    """
    return _esbuild(entry.parent, entry.name, "--bundle", "--format=iife")


def _esbuild(folder: Path, *arguments: str) -> str:
    done = subprocess.run(
        [ESBUILD, *arguments, *FLAGS],
        cwd=folder, env=environment(), stdin=subprocess.DEVNULL,
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    if done.returncode != 0:
        raise BuildError(f"esbuild cannot read a script\n{done.stdout}{done.stderr}".rstrip())
    return done.stdout
