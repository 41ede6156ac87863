"""A plain web host that can go wrong in every way a real one, or the air between, does."""

import contextlib
import socket
import threading
import time
from collections import Counter
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import unquote, urlsplit

from beadwright_build.content_types import content_type

SIGN_IN = b"<!doctype html><title>Guest network</title><h1>Sign in to go on</h1>"


@dataclass(frozen=True)
class Fault:
    """What is wrong with one file.

    Args:
        keep: Bytes of it that are left, or None for all.
        cut: Whether the line drops after them, against an honest length; else the file just ends.
        stall: Whether the line stays open after them, silent.
        flip: Whether its middle byte is wrong.
        html: Whether a sign-in page comes in its place.
        status: HTTP status.
        kind: Content type, or None for the right one.
    """

    keep: int | None = None
    cut: bool = False
    stall: bool = False
    flip: bool = False
    html: bool = False
    status: int = 200
    kind: str | None = None


@dataclass
class Host:
    """Serves a folder from a thread, on one port for life.

    Args:
        site: The folder; may be replaced while running, as a new release is.
        prefix: Path the site appears under, with a slash at both ends.
        cache_control: Sent with every file.
        portal: Whether a sign-in page answers everything.
        faults: By path below the prefix; a file's fault holds for its packed copy too.
    """

    site: Path
    prefix: str = "/"
    cache_control: str = "no-cache"
    portal: bool = False
    faults: dict[str, Fault] = field(default_factory=dict[str, Fault])
    requests: Counter[str] = field(default_factory=Counter[str])
    _port: int = 0
    _http: "_Http | None" = None

    @property
    def url(self) -> str:
        """Address of the root page."""
        return f"http://localhost:{self._port}{self.prefix}"

    def start(self) -> None:
        """Answer, on the same port as before if there was one."""
        self._http = _Http(self, self._port)
        self._port = int(self._http.server_address[1])
        threading.Thread(target=self._http.serve_forever, args=(0.02,), daemon=True).start()

    def kill(self) -> None:
        """Drop every connection and refuse new ones."""
        http, self._http = self._http, None
        if http is not None:
            http.shutdown()
            http.server_close()
            http.drop_connections()

    def asked(self, path: str) -> int:
        """Return how often a file was asked for, as it is or packed."""
        return self.requests[path] + self.requests[f"{path}.gz"]


class _Http(ThreadingHTTPServer):
    daemon_threads = True

    def __init__(self, host: Host, port: int) -> None:
        self.host = host
        self._open: set[socket.socket] = set()
        super().__init__(("127.0.0.1", port), _Handler)

    def process_request(
        self, request: socket.socket | tuple[bytes, socket.socket], client_address: object
    ) -> None:
        if isinstance(request, socket.socket):
            self._open.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: socket.socket | tuple[bytes, socket.socket]) -> None:
        if isinstance(request, socket.socket):
            self._open.discard(request)
        super().shutdown_request(request)

    def handle_error(self, request: object, client_address: object) -> None:
        """Say nothing: dropped lines are what this host is for."""

    def drop_connections(self) -> None:
        for line in list(self._open):
            with contextlib.suppress(OSError):
                line.shutdown(socket.SHUT_RDWR)


class _Handler(BaseHTTPRequestHandler):
    protocol_version = "HTTP/1.1"

    def log_message(self, format: str, *args: object) -> None:
        """Say nothing."""

    def _host(self) -> Host:
        assert isinstance(self.server, _Http)
        return self.server.host

    def do_GET(self) -> None:
        host = self._host()
        path = unquote(urlsplit(self.path).path)
        if not path.startswith(host.prefix):
            self._send(404, "text/plain", b"not here\n")
            return
        name = path.removeprefix(host.prefix)
        host.requests[name] += 1
        if host.portal:
            self._send(200, "text/html", SIGN_IN)
            return
        fault = host.faults.get(name.removesuffix(".gz"), Fault())
        file = host.site / name
        if file.is_dir():
            file = file / "index.html"
        if fault.html:
            self._send(fault.status, "text/html", SIGN_IN)
        elif not file.is_file() or fault.status != 200:
            self._send(404 if fault.status == 200 else fault.status, "text/html", b"<p>none</p>")
        else:
            kind = fault.kind or content_type(file.name.removesuffix(".gz"))
            packed = file.suffix == ".gz"
            self._send(200, "application/gzip" if packed else kind, file.read_bytes(), fault)

    def _send(self, status: int, kind: str, data: bytes, fault: Fault | None = None) -> None:
        fault = fault or Fault()
        if fault.flip:
            middle = len(data) // 2
            data = data[:middle] + bytes([data[middle] ^ 0xFF]) + data[middle + 1 :]
        part = data[: fault.keep]
        self.send_response(status)
        self.send_header("Content-Type", kind)
        self.send_header("Cache-Control", self._host().cache_control)
        whole = fault.cut or fault.stall
        self.send_header("Content-Length", str(len(data) if whole else len(part)))
        self.end_headers()
        self.wfile.write(part)
        while fault.stall and self._host().faults:
            time.sleep(0.05)  # until the test mends it
        if whole:
            self.close_connection = True
