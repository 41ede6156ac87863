"""The site asks nothing of any other host, and works under any path of its own."""

import re
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urlsplit

import pytest

LINKS = {"href", "src", "action", "poster", "data", "formaction", "xlink:href"}
NAMES_ONLY = ("http://www.w3.org/", "https://json-schema.org/draft/")
"""Names of XML vocabularies and of schemas look like addresses and are never fetched."""

NOT_FETCHED = {
    # In texts of others: where a license is, what a function follows. None is ever requested.
    "licences.txt": r".*",
    "static/vendor/turbo.es2017-esm.js": (
        r"https://(turbo\.hotwired\.dev|github\.com|developer\.mozilla\.org)/.*"
    ),
    # Where Pyodide would look if it were not told its own folder; the worker tells it.
    "runtime/pyodide.mjs": r"https://cdn\.jsdelivr\.net/pyodide/.*",
    "runtime/pyodide.asm.js": r".*",
}


class Links(HTMLParser):
    """Collects what a page links to."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        for name, value in attrs:
            if name in LINKS and value:
                self.found.append(value)
            if name == "srcset" and value:
                self.found += [part.split()[0] for part in value.split(",")]


def pages(site: Path) -> Iterator[tuple[Path, list[str]]]:
    for page in sorted(site.rglob("*.html")):
        links = Links()
        links.feed(page.read_text())
        yield page, links.found


def test_links_of_pages_are_relative_and_lead_somewhere(built_site: Path) -> None:
    seen = 0
    for page, links in pages(built_site):
        for link in links:
            parts = urlsplit(link)
            where = f"{page.relative_to(built_site)}: {link}"
            if parts.scheme in {"data", "mailto"} or not parts.path:
                continue
            assert not parts.scheme, where
            assert not parts.netloc, where
            assert not parts.path.startswith("/"), where
            target = (page.parent / unquote(parts.path)).resolve()
            assert target.is_relative_to(built_site), where
            assert target.is_file() or (target / "index.html").is_file(), where
            seen += 1
    assert seen > 10


def text_files(site: Path) -> Iterator[Path]:
    for path in sorted(site.rglob("*")):
        if path.suffix in {".html", ".js", ".mjs", ".css", ".svg", ".json", ".webmanifest", ".txt"}:
            yield path


def test_no_file_names_another_host(built_site: Path) -> None:
    address = re.compile(r"(?:https?|wss?):\\?/\\?/[^\s\"'`<>)\\]*")
    strange: list[str] = []
    for path in text_files(built_site):
        name = path.relative_to(built_site).as_posix()
        if name.startswith("licences/"):
            continue  # texts of others
        allowed = re.compile(NOT_FETCHED.get(name, r"(?!)"))
        for found in address.findall(path.read_text()):
            if not found.startswith(NAMES_ONLY) and not allowed.fullmatch(found):
                strange.append(f"{name}: {found}")
    assert strange == []


@pytest.mark.parametrize("pattern", [r"""url\(\s*['"]?/""", r"@import\s+['\"]?(?:url\()?/"])
def test_styles_refer_to_files_relatively(built_site: Path, pattern: str) -> None:
    sheets = sorted(built_site.rglob("*.css"))
    assert sheets
    for sheet in sheets:
        assert not re.search(pattern, sheet.read_text()), sheet


def test_files_named_in_styles_exist(built_site: Path) -> None:
    for sheet in built_site.rglob("*.css"):
        for name in re.findall(r"""url\(\s*['"]?([^'")]+)""", sheet.read_text()):
            if not name.startswith(("data:", "#")):
                assert (sheet.parent / name).resolve().is_file(), f"{sheet.name}: {name}"


def test_modules_import_files_that_exist(built_site: Path) -> None:
    imports = 0
    for script in (built_site / "static" / "js").rglob("*.js"):
        for name in re.findall(
            r"""\b(?:from|import)\s*\(?\s*["']([^"']+)["']""", script.read_text()
        ):
            assert name.startswith("."), f"{script.name}: {name}"
            assert (script.parent / name).resolve().is_file(), f"{script.name}: {name}"
            imports += 1
    assert imports > 0


def test_hidden_files_are_not_shipped(built_site: Path) -> None:
    assert not list(built_site.rglob(".*"))
