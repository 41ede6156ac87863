"""Compressed copies beside each file, for hosts and service workers that use them.

Zopfli and Brotli are slow at their best, so results are kept by content. Both come as packages
with their own code, not the machine's zlib: the same file gives the same bytes everywhere.
"""

import hashlib
import os
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import cast

import brotli
from zopfli import gzip as zopfli_gzip

from beadwright_build.content_types import is_compressible

Squeeze = Callable[[bytes], bytes]


def _gzip(data: bytes) -> bytes:
    return cast(bytes, zopfli_gzip.compress(data, numiterations=5))


def _brotli(data: bytes) -> bytes:
    return cast(bytes, brotli.compress(data, quality=11))


ENCODINGS: dict[str, Squeeze] = {".gz": _gzip, ".br": _brotli}
"""Ending of the copy to the function that makes it."""


def compress_files(site: Path, cache: Path) -> None:
    """Write ``.gz`` and ``.br`` beside each file that gets smaller by it; drop stale copies."""
    files = [path for path in sorted(site.rglob("*")) if path.is_file()]
    for copy in files:
        if copy.suffix in ENCODINGS:
            copy.unlink()
    sources = [path for path in files if is_compressible(path)]
    # Largest first: the one that takes half a minute must not start last.
    sources.sort(key=lambda path: path.stat().st_size, reverse=True)
    with ThreadPoolExecutor(max_workers=os.cpu_count()) as pool:
        for made in [
            pool.submit(compress_file, path, suffix, cache)
            for path in sources
            for suffix in ENCODINGS
        ]:
            made.result()


def compress_file(path: Path, suffix: str, cache: Path) -> None:
    """Write one compressed copy of one file, unless it would not be smaller."""
    data = path.read_bytes()
    kept = cache / f"{hashlib.sha256(data).hexdigest()}{suffix}"
    if kept.is_file():
        squeezed = kept.read_bytes()
    else:
        squeezed = ENCODINGS[suffix](data)
        cache.mkdir(parents=True, exist_ok=True)
        half = kept.with_suffix(f"{suffix}.{os.getpid()}")
        half.write_bytes(squeezed)
        half.replace(kept)  # whole or not at all: a stopped build must not leave a cut copy
    if len(squeezed) < len(data):
        path.with_name(path.name + suffix).write_bytes(squeezed)
