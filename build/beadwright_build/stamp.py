"""Whether a built site is up to date: one hash over all that goes into it."""

import hashlib
from importlib import metadata
from pathlib import Path

from beadwright_build.libraries import LIBRARIES
from beadwright_build.places import ROOT

PACKAGES = ("calc/beadwright", "site/beadwright_site", "build/beadwright_build")
FILES = ("build/package-lock.json", "LICENSE")
TOOLS = ("brotli", "flask", "frozen-flask", "werkzeug", "zopfli", *LIBRARIES)


def inputs_hash() -> str:
    """Return the hash of our sources and of the versions of what the build runs on."""
    digest = hashlib.sha256()
    for file in sorted({ROOT / name for name in FILES}.union(*map(_sources, PACKAGES))):
        digest.update(f"{file.relative_to(ROOT)}\0".encode())
        digest.update(hashlib.sha256(file.read_bytes()).digest())
    for tool in TOOLS:
        digest.update(f"{tool} {metadata.version(tool)}\0".encode())
    return digest.hexdigest()


def is_current(site: Path, inputs: str) -> bool:
    """Return whether the site was built, whole, from these inputs."""
    stamp = _stamp(site)
    return site.is_dir() and stamp.is_file() and stamp.read_text() == inputs


def clear(site: Path) -> None:
    """Say that the site is being changed: until marked again it is not current."""
    _stamp(site).unlink(missing_ok=True)


def mark(site: Path, inputs: str) -> None:
    """Say that the site is built from these inputs."""
    _stamp(site).write_text(inputs)


def _stamp(site: Path) -> Path:
    return site.with_name(f"{site.name}.stamp")


def _sources(package: str) -> list[Path]:
    return [
        file
        for file in (ROOT / package).rglob("*")
        if file.is_file() and "__pycache__" not in file.parts
    ]
