"""A small static server for one site folder, for looking at it and for tests.

It does what a plain web host does and no more: right content types, directory pages, a 404 page,
``no-cache`` so that a browser asks again, and the compressed copies to those who accept them.
"""

from __future__ import annotations

import threading
from functools import partial
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from types import TracebackType
from typing import Any, Self
from urllib.parse import unquote, urlsplit

from beadwright_build.content_types import content_type

ENCODINGS = {"br": ".br", "gzip": ".gz"}
"""Content coding to the ending of the copy that has it, best first."""

_RAW_COPIES = {".gz": "application/gzip", ".br": "application/octet-stream"}


class SiteServer:
    """Serves a folder in a thread; a context manager.

    Args:
        site: The folder.
        host: Address to listen on; loopback unless told otherwise.
        port: Port, or 0 for any free one.
        prefix: Path the site appears under, with a slash at both ends.
    """

    def __init__(
        self, site: Path, host: str = "127.0.0.1", port: int = 0, prefix: str = "/"
    ) -> None:
        self.requests: list[str] = []
        """Path of every request so far, in order."""
        handler = partial(_Handler, site.resolve(), prefix, self.requests)
        self._http = ThreadingHTTPServer((host, port), handler)
        self._http.daemon_threads = True
        self._thread = threading.Thread(
            target=self._http.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True
        )
        shown = "localhost" if host in {"127.0.0.1", "::1", "localhost"} else host
        self.url = f"http://{shown}:{self._http.server_address[1]}{prefix}"
        """Address of the root page. By name: browsers grant ``localhost`` what needs https."""

    def start(self) -> None:
        """Begin to answer."""
        self._thread.start()

    def stop(self) -> None:
        """Stop answering and free the port."""
        self._http.shutdown()
        self._thread.join()
        self._http.server_close()

    def wait(self) -> None:
        """Block until stopped."""
        self._thread.join()

    def __enter__(self) -> Self:
        self.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.stop()


class _Handler(BaseHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    server_version = "beadwright"
    sys_version = ""

    def __init__(
        self, site: Path, prefix: str, requests: list[str], *rest: Any, **more: Any
    ) -> None:
        self._site = site
        self._prefix = prefix
        self._requests = requests
        super().__init__(*rest, **more)

    def do_GET(self) -> None:
        self._answer(with_body=True)

    def do_HEAD(self) -> None:
        self._answer(with_body=False)

    def log_message(self, format: str, *args: object) -> None:
        """Say nothing: the terminal shows the address, not every request."""

    def _answer(self, *, with_body: bool) -> None:
        self._requests.append(self.path)
        path = unquote(urlsplit(self.path).path)
        file = self._find(path)
        if file is not None and file.is_dir():
            if not path.endswith("/"):
                self._redirect(f"{path}/")
                return
            file = file / "index.html"
        if file is not None and file.is_file():
            self._send(HTTPStatus.OK, file, with_body=with_body)
        else:
            self._send(HTTPStatus.NOT_FOUND, self._site / "404.html", with_body=with_body)

    def _find(self, path: str) -> Path | None:
        if not path.startswith(self._prefix) or "\0" in path:
            return None
        file = (self._site / path.removeprefix(self._prefix).lstrip("/")).resolve()
        return file if file.is_relative_to(self._site) else None

    def _redirect(self, path: str) -> None:
        query = urlsplit(self.path).query
        self.send_response(HTTPStatus.MOVED_PERMANENTLY)
        self.send_header("Location", f"{path}?{query}" if query else path)
        self.send_header("Content-Length", "0")
        self.end_headers()

    def _send(self, status: HTTPStatus, file: Path, *, with_body: bool) -> None:
        coding, copy = self._choose_copy(file)
        data = copy.read_bytes() if copy.is_file() else b"not found\n"
        kind = _RAW_COPIES.get(file.suffix) or content_type(file)
        self.send_response(status)
        self.send_header("Content-Type", f"{kind}; charset=utf-8" if _is_text(kind) else kind)
        self.send_header("Content-Length", str(len(data)))
        self.send_header("Cache-Control", "no-cache")
        self.send_header("X-Content-Type-Options", "nosniff")
        self.send_header("Vary", "Accept-Encoding")
        if coding:
            self.send_header("Content-Encoding", coding)
        self.end_headers()
        if with_body:
            self.wfile.write(data)

    def _choose_copy(self, file: Path) -> tuple[str, Path]:
        accepted = _accepted_codings(self.headers.get("Accept-Encoding", ""))
        for coding, suffix in ENCODINGS.items():
            copy = file.with_name(file.name + suffix)
            if coding in accepted and file.suffix not in _RAW_COPIES and copy.is_file():
                return coding, copy
        return "", file


def _is_text(kind: str) -> bool:
    return kind.startswith("text/") or kind.endswith(("json", "svg+xml"))


def _accepted_codings(header: str) -> set[str]:
    """Return the codings an Accept-Encoding header names and does not forbid.

    >>> sorted(_accepted_codings("gzip, br;q=1.0, zstd;q=0"))
    ['br', 'gzip']
    """
    accepted: set[str] = set()
    for part in header.split(","):
        coding, _, weight = part.strip().partition(";")
        if weight.strip().replace(" ", "") not in {"q=0", "q=0.0", "q=0.00", "q=0.000"}:
            accepted.add(coding.strip().lower())
    return accepted
