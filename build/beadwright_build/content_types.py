"""Content types by file ending: one table for freezing, serving and the release list.

Machines disagree on these, and a browser refuses WebAssembly or a module of the wrong type.
"""

import mimetypes
from pathlib import PurePath

TYPES = {
    ".css": "text/css",
    ".html": "text/html",
    ".js": "text/javascript",
    ".json": "application/json",
    ".mjs": "text/javascript",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
    ".zip": "application/zip",
}
"""Every kind of file the site may hold."""

_COMPRESSED_ALREADY = {".png", ".woff2"}


def content_type(path: str | PurePath) -> str:
    """Return the type to serve a file as, without a character set.

    >>> content_type("runtime/pyodide.asm.wasm")
    'application/wasm'
    """
    return TYPES.get(PurePath(path).suffix, "application/octet-stream")


def is_compressible(path: str | PurePath) -> bool:
    """Return whether a file gets compressed copies beside it.

    >>> is_compressible("static/fonts/a.woff2"), is_compressible("index.html")
    (False, True)
    """
    suffix = PurePath(path).suffix
    return suffix in TYPES and suffix not in _COMPRESSED_ALREADY


def teach_mimetypes() -> None:
    """Give the standard library's table our types, so that Flask answers with them."""
    for suffix, kind in TYPES.items():
        mimetypes.add_type(kind, suffix)
