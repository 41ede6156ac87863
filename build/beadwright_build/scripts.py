"""Scripts on their way to the phone: without comments and spare blanks."""

import subprocess
from pathlib import Path

from beadwright_build.errors import BuildError
from beadwright_build.npm import environment
from beadwright_build.places import NODE_MODULES

ESBUILD = NODE_MODULES / ".bin" / "esbuild"


def lighten(folder: Path) -> None:
    """Strip comments and spare blanks from every script of a folder, in place.

    Names and the order of things stay as written; a licence's comment stays.

    Raises:
        BuildError: If a script cannot be read; the tool's own words are in the message.
    """
    scripts = [str(path.relative_to(folder)) for path in sorted(folder.rglob("*.js"))]
    flags = ["--minify-whitespace", "--target=esnext", "--charset=utf8", "--outdir=.",
             "--allow-overwrite", "--outbase=.", "--log-level=warning"]  # fmt: skip
    done = subprocess.run(
        [ESBUILD, *scripts, *flags],
        cwd=folder, env=environment(), stdin=subprocess.DEVNULL,
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    if done.returncode != 0:
        raise BuildError(f"esbuild cannot read a script\n{done.stdout}{done.stderr}".rstrip())
