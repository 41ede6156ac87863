"""The release list is what phones trust: complete, and every hash right."""

import gzip
import hashlib
import json
import re
import shutil
from pathlib import Path
from typing import Any

import brotli
import pytest

import beadwright
from beadwright.pages import PAGES
from beadwright_build.errors import BuildError
from beadwright_build.release import path_of, read_release, write_release

CONTENT_TYPES = {  # IANA media types registry
    "runtime/pyodide.asm.wasm": "application/wasm",
    "runtime/pyodide.mjs": "text/javascript",
    "runtime/stdlib.zip": "application/zip",
    "manifest.webmanifest": "application/manifest+json",
    "": "text/html",
}


OF_TABLES = {"static/css/sheets.css", "static/js/page/wall_sheet.js"}
"""What only the tables use; it comes with them."""
METHOD = "method/"
"""A long page to read: it comes after the first visit, as the tables do."""


@pytest.fixture(scope="session")
def listed(built_site: Path) -> dict[str, Any]:
    return read_release(built_site)


@pytest.fixture
def small_site(built_site: Path, tmp_path: Path) -> Path:
    """A site of two files; the build before it fetched what makes its service worker."""
    del built_site
    site = tmp_path / "site"
    (site / "runtime").mkdir(parents=True)
    (site / "index.html").write_text("<!doctype html><title>one</title>" + "bead " * 100)
    (site / "runtime" / "app.zip").write_bytes(b"bytes of an archive" * 20)
    return site


def test_every_file_is_listed_once_but_the_worker_and_the_copies(
    built_site: Path, listed: dict[str, Any]
) -> None:
    there = {
        path.relative_to(built_site).as_posix()
        for path in built_site.rglob("*")
        if path.is_file() and path.suffix not in {".gz", ".br"}
    }
    names = [path_of(file["url"]) for file in listed["files"]]
    assert len(names) == len(set(names))
    schemas = {name for name in there if name.startswith("schema/")}
    assert len(schemas) == 2 * len(PAGES)  # for programs: no phone keeps them
    texts = {name for name in there if name.startswith("licences/")}
    assert len(texts) == 3  # fetched when opened
    assert set(names) == there - {"sw.js"} - schemas - texts


def test_every_hash_and_size_is_that_of_the_file(built_site: Path, listed: dict[str, Any]) -> None:
    for file in listed["files"]:
        data = (built_site / path_of(file["url"])).read_bytes()
        assert file["sha256"] == hashlib.sha256(data).hexdigest(), file["url"]
        assert file["bytes"] == len(data)


def test_every_compressed_copy_is_the_file_itself(built_site: Path, listed: dict[str, Any]) -> None:
    copies = 0
    for file in listed["files"]:
        path = built_site / path_of(file["url"])
        packed = path.with_name(f"{path.name}.gz")
        assert file["gz_bytes"] == (packed.stat().st_size if packed.is_file() else None)
        if packed.is_file():
            assert gzip.decompress(packed.read_bytes()) == path.read_bytes()
            copies += 1
        packed = path.with_name(f"{path.name}.br")
        if packed.is_file():
            assert brotli.decompress(packed.read_bytes()) == path.read_bytes()
    assert copies > 10


def test_groups_types_version_and_id(listed: dict[str, Any]) -> None:
    files = {file["url"]: file for file in listed["files"]}
    for url, file in files.items():
        later = url.startswith(("runtime/", "sheets/", METHOD)) or url in OF_TABLES
        assert file["group"] == ("runtime" if later else "shell")
    for url, kind in CONTENT_TYPES.items():
        assert files[url]["type"] == kind
    assert listed["version"] == beadwright.__version__
    assert len(listed["id"]) == 12
    assert int(listed["id"], 16) >= 0


def test_the_phone_gets_everything_it_boots_from(listed: dict[str, Any]) -> None:
    later = {file["url"] for file in listed["files"] if file["group"] == "runtime"}
    to_read = OF_TABLES | {url for url in later if url.startswith(("sheets/", METHOD))}
    assert {"sheets/us-er70s-6-0.045in-90-10.html", f"{METHOD}index.html"} < to_read
    assert later - to_read == {
        f"runtime/{name}"
        for name in (
            "pyodide.mjs",
            "pyodide.asm.js",
            "pyodide.asm.wasm",
            "stdlib.zip",
            "libs.zip",
            "app.zip",
            "manifest.json",
        )
    }


def test_a_changed_file_makes_another_release(small_site: Path, tmp_path: Path) -> None:
    first = write_release(small_site, tmp_path / "cache")
    again = write_release(small_site, tmp_path / "cache")
    (small_site / "index.html").write_text("<!doctype html><title>two</title>" + "weld " * 100)
    second = write_release(small_site, tmp_path / "cache")
    assert first == again
    assert first.id != second.id
    assert read_release(small_site)["id"] == second.id
    copy = gzip.decompress((small_site / "index.html.gz").read_bytes())
    assert copy == (small_site / "index.html").read_bytes()
    unchanged = {file.url: file.sha256 for file in first.files}["runtime/app.zip"]
    assert {file.url: file.sha256 for file in second.files}["runtime/app.zip"] == unchanged


def test_the_worker_is_one_script_with_the_list_in_its_first_line(
    small_site: Path, tmp_path: Path
) -> None:
    release = write_release(small_site, tmp_path / "cache")
    worker = (small_site / "sw.js").read_text()
    assert f'"id": "{release.id}"' in worker
    first, scripts = worker.split("\n", 1)
    assert "/*RELEASE*/" in first
    assert "/*RELEASE*/" not in scripts
    assert not re.search(r"\b(import|export)\b", scripts)
    for event in ("install", "activate", "message", "fetch"):
        assert f'addEventListener("{event}"' in scripts
    assert json.loads(json.dumps(read_release(small_site)))["files"][0]["url"] == ""


def test_a_copy_that_would_be_larger_is_not_kept(small_site: Path, tmp_path: Path) -> None:
    (small_site / "a.txt").write_text("x")
    release = write_release(small_site, tmp_path / "cache")
    assert {file.url: file.gz_bytes for file in release.files}["a.txt"] is None
    assert not (small_site / "a.txt.br").exists()


def test_a_folder_without_a_release_is_refused(tmp_path: Path) -> None:
    with pytest.raises(BuildError, match="no release"):
        read_release(tmp_path)


def test_a_release_can_be_made_on_a_copy_of_the_real_site(built_site: Path, tmp_path: Path) -> None:
    copy = tmp_path / "copy"
    shutil.copytree(built_site, copy)
    before = read_release(copy)["id"]
    page = copy / "index.html"
    page.write_text(page.read_text() + "<!-- -->")
    assert write_release(copy).id != before
