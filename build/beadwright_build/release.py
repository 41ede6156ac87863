"""The release list: every file the phone keeps, with its hash, inlined in the service worker.

The worker's bytes then differ whenever any file does, which is how a browser notices a new
release; and each file is checked against its hash before it is kept.
"""

import hashlib
import json
import re
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, Literal

import beadwright
import beadwright_site
from beadwright_build.compress import ENCODINGS, compress_file, compress_files
from beadwright_build.content_types import content_type
from beadwright_build.errors import BuildError
from beadwright_build.places import CACHE
from beadwright_build.scripts import bundle

WORKER_SOURCE = Path(beadwright_site.__file__).parent / "service_worker" / "service_worker.js"
WORKER = "sw.js"
RUNTIME = "runtime/"
TO_READ = ("sheets/", "static/css/sheets.css", "static/js/page/wall_sheet.js", "method/")
"""The tables with what only they use, and Method: with the runtime, since a first visit opens
without them."""
SCHEMAS = "schema/"
"""Folder of the JSON Schemas: for programs, so no phone keeps them."""
LICENCES = "licences/"
"""Folder of the long license texts: fetched when opened."""
NOT_KEPT = (SCHEMAS, LICENCES)
LIST = re.compile(r"/\*RELEASE\*/ (.*) /\*END\*/")

Group = Literal["shell", "runtime"]


@dataclass(frozen=True, slots=True)
class ReleaseFile:
    """One file of the release.

    Args:
        url: Relative to the site's root; "" is the root page.
        sha256: Of the uncompressed bytes, in hex.
        bytes: Uncompressed size.
        gz_bytes: Size of the ``.gz`` copy, or None if there is none.
        type: Content type.
        group: ``shell`` is installed whole; ``runtime``, with it what is only to read, follows,
            file by file.
    """

    url: str
    sha256: str
    bytes: int
    gz_bytes: int | None
    type: str
    group: Group


@dataclass(frozen=True, slots=True)
class Release:
    """A release: twelve hex digits that stand for the whole list, the version, the files."""

    id: str
    version: str
    files: tuple[ReleaseFile, ...]


def write_release(site: Path, cache: Path = CACHE) -> Release:
    """Compress, list and hash what is in a site folder, and write its service worker.

    Works on a folder already released too, after files in it have changed.

    Raises:
        BuildError: If a script of the service worker cannot be read.
    """
    (site / WORKER).unlink(missing_ok=True)
    files = list_files(site, cache)
    listed = json.dumps([asdict(file) for file in files], sort_keys=True)
    release = Release(
        id=hashlib.sha256(listed.encode()).hexdigest()[:12],
        version=beadwright.__version__,
        files=files,
    )
    (site / WORKER).write_text(_worker(release))
    for suffix in ENCODINGS:
        compress_file(site / WORKER, suffix, cache)
    return release


def list_files(site: Path, cache: Path = CACHE) -> tuple[ReleaseFile, ...]:
    """Compress what is in a site folder and list what a phone keeps of it."""
    compress_files(site, cache)
    paths = [path for path in sorted(site.rglob("*")) if path.is_file()]
    return tuple(_list(path, site) for path in paths if _is_listed(path, site))


def _is_listed(path: Path, site: Path) -> bool:
    named = path.relative_to(site).as_posix()
    return path.suffix not in ENCODINGS and not named.startswith(NOT_KEPT)


def read_release(site: Path) -> dict[str, Any]:
    """Return the list inlined in a built site's service worker, as the worker sees it.

    Raises:
        BuildError: If the folder holds no release.
    """
    worker = site / WORKER
    found = LIST.search(worker.read_text()) if worker.is_file() else None
    if found is None:
        raise BuildError(f"{site} holds no release of ours")
    listed: dict[str, Any] = json.loads(found[1])
    return listed


def path_of(url: str) -> str:
    """Return the file a release url stands for.

    >>> path_of(""), path_of("method/index.html")
    ('index.html', 'method/index.html')
    """
    return url or "index.html"


def _list(path: Path, site: Path) -> ReleaseFile:
    data = path.read_bytes()
    name = path.relative_to(site).as_posix()
    copy = path.with_name(f"{path.name}.gz")
    return ReleaseFile(
        url="" if name == "index.html" else name,
        sha256=hashlib.sha256(data).hexdigest(),
        bytes=len(data),
        gz_bytes=copy.stat().st_size if copy.is_file() else None,
        type=content_type(path),
        group="runtime" if name.startswith((RUNTIME, *TO_READ)) else "shell",
    )


def _worker(release: Release) -> str:
    listed = json.dumps(asdict(release), sort_keys=True)
    return f'"use strict"; self.RELEASE = /*RELEASE*/ {listed} /*END*/;\n{bundle(WORKER_SOURCE)}'
