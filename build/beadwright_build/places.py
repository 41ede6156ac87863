"""Where things are: the sources, and the folders the build writes to."""

from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
OUT = ROOT / ".out"
"""Everything generated lives below here, and nothing else does."""

CACHE = OUT / "cache"
"""Compressed copies by the hash of what they are copies of."""

NODE_MODULES = ROOT / "build" / "node_modules"
PYODIDE = NODE_MODULES / "pyodide"
INSIDE = "/beadwright"
"""Where folders of this machine appear inside Pyodide when it runs under Node."""


@dataclass(frozen=True, slots=True)
class Places:
    """The folders of one build.

    Args:
        work: Emptied at the start of every build; holds each step's result.
        site: The static folder: what a web host serves.
        cache: Compressed copies by content, kept between builds.
    """

    work: Path
    site: Path
    cache: Path

    @property
    def vendor(self) -> Path:
        """Front-end files that came as npm packages."""
        return self.work / "vendor"

    @property
    def templates(self) -> Path:
        """Source root of the package of compiled templates."""
        return self.work / "templates"

    @property
    def libraries(self) -> Path:
        """The Python libraries the phone needs, pure Python only."""
        return self.work / "libraries"

    @property
    def stdlib(self) -> Path:
        """The few modules of the standard library we change."""
        return self.work / "stdlib"

    @property
    def runtime(self) -> Path:
        """Pyodide and the three archives of compiled Python."""
        return self.work / "runtime"

    @property
    def frozen(self) -> Path:
        """The pages as Frozen-Flask wrote them."""
        return self.work / "frozen"


def places_for(name: str) -> Places:
    """Return the folders for building ``.out/<name>``."""
    return Places(work=OUT / "work" / name, site=OUT / name, cache=CACHE)
