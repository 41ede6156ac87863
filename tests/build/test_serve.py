"""The static server does what a plain web host does."""

import http.client
import urllib.error
import urllib.request
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest

from beadwright_build.serve import SiteServer

PAGE = "<!doctype html><title>Dial in</title>"


@pytest.fixture
def site(tmp_path: Path) -> Path:
    folder = tmp_path / "site"
    (folder / "method").mkdir(parents=True)
    for name, content in {
        "index.html": PAGE,
        "index.html.gz": "gz copy",
        "index.html.br": "br copy",
        "404.html": "nothing here",
        "method/index.html": "method",
        "sw.js": "worker",
        "a.mjs": "module",
        "a.wasm": "wasm",
        "a.webmanifest": "{}",
        "a.woff2": "font",
    }.items():
        (folder / name).write_text(content)
    (tmp_path / "secret.txt").write_text("not served")
    return folder


@pytest.fixture
def server(site: Path) -> Iterator[SiteServer]:
    with SiteServer(site) as running:
        yield running


def ask(
    server: SiteServer, path: str, accept: str = "", method: str = "GET"
) -> tuple[int, dict[str, str], bytes]:
    """Send one request exactly as given and return status, headers and body."""
    connection = http.client.HTTPConnection("127.0.0.1", urlsplit(server.url).port)
    try:
        connection.request(method, path, headers={"Accept-Encoding": accept})
        answer = connection.getresponse()
        return answer.status, dict(answer.getheaders()), answer.read()
    finally:
        connection.close()


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("/", "text/html; charset=utf-8"),
        ("/sw.js", "text/javascript; charset=utf-8"),
        ("/a.mjs", "text/javascript; charset=utf-8"),
        ("/a.wasm", "application/wasm"),
        ("/a.webmanifest", "application/manifest+json; charset=utf-8"),
        ("/a.woff2", "font/woff2"),
    ],
)
def test_content_types(server: SiteServer, path: str, kind: str) -> None:
    status, headers, _ = ask(server, path)
    assert status == 200
    assert headers["Content-Type"] == kind
    assert headers["Cache-Control"] == "no-cache"
    assert headers["X-Content-Type-Options"] == "nosniff"


@pytest.mark.parametrize(
    ("accept", "coding", "body"),
    [
        ("", None, PAGE.encode()),
        ("identity", None, PAGE.encode()),
        ("gzip", "gzip", b"gz copy"),
        ("gzip, deflate, br", "br", b"br copy"),
        ("gzip, br;q=0", "gzip", b"gz copy"),
    ],
)
def test_copies_go_to_those_who_accept_them(
    server: SiteServer, accept: str, coding: str | None, body: bytes
) -> None:
    _, headers, sent = ask(server, "/", accept)
    assert headers.get("Content-Encoding") == coding
    assert sent == body
    assert headers["Content-Length"] == str(len(body))
    assert headers["Vary"] == "Accept-Encoding"


def test_a_copy_asked_for_by_name_is_sent_as_it_is(server: SiteServer) -> None:
    status, headers, sent = ask(server, "/index.html.gz", "gzip, br")
    assert (status, sent) == (200, b"gz copy")
    assert "Content-Encoding" not in headers
    assert headers["Content-Type"] == "application/gzip"


def test_folders_are_pages_with_a_slash_at_the_end(server: SiteServer) -> None:
    assert ask(server, "/method/")[2] == b"method"
    status, headers, _ = ask(server, "/method?units=si")
    assert (status, headers["Location"]) == (301, "/method/?units=si")


def test_what_is_not_there_gets_the_404_page(server: SiteServer) -> None:
    status, headers, body = ask(server, "/nowhere")
    assert (status, body) == (404, b"nothing here")
    assert headers["Content-Type"].startswith("text/html")


@pytest.mark.parametrize(
    "path",
    ["/../secret.txt", "/%2e%2e/secret.txt", "//../secret.txt", "/a/%00", "/..%2fsecret.txt"],
)
def test_nothing_outside_the_folder_is_served(server: SiteServer, path: str) -> None:
    status, _, body = ask(server, path)
    assert status == 404
    assert b"not served" not in body


def test_head_sends_no_body(server: SiteServer) -> None:
    status, headers, body = ask(server, "/", method="HEAD")
    assert (status, body) == (200, b"")
    assert headers["Content-Length"] == str(len(PAGE))


def test_under_a_path_of_its_own(site: Path) -> None:
    with SiteServer(site, prefix="/shop/bay-2/") as server:
        assert server.url.endswith("/shop/bay-2/")
        assert ask(server, "/shop/bay-2/")[0] == 200
        assert ask(server, "/")[0] == 404


def test_requests_are_kept_in_order(server: SiteServer) -> None:
    ask(server, "/")
    ask(server, "/a.wasm")
    assert server.requests == ["/", "/a.wasm"]


def test_it_listens_on_loopback_and_is_gone_when_stopped(site: Path) -> None:
    with SiteServer(site) as server:
        url = server.url.replace("localhost", "127.0.0.1")
        with urllib.request.urlopen(url) as answer:
            assert answer.status == 200
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(url)
