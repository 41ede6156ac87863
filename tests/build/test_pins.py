"""Nothing is fetched but by the hash of its bytes: pip's packages, npm's, the phone's Python."""

import base64
import json
import re
import shutil
import subprocess
import tarfile
import threading
from collections.abc import Iterator
from functools import partial
from hashlib import sha256, sha512
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from importlib import metadata
from pathlib import Path
from zipfile import ZipFile

import pytest

from beadwright_build.npm import environment, program
from beadwright_build.places import ROOT

BUILD = ROOT / "build"
GROUPS = ("build", "dev")
PIN = re.compile(
    r"^([a-z0-9-]+)==(\S+)((?: ; [^\\\n]+)?(?: \\\n    --hash=sha256:[0-9a-f]{64})+)\n", re.M
)


def pinned(group: str) -> dict[str, tuple[str, str]]:
    """Return version and hashes by package; the file holds nothing else."""
    text = (BUILD / f"packages-{group}.txt").read_text()
    assert PIN.sub("", text) == ""
    return {name: (version, hashes) for name, version, hashes in PIN.findall(text)}


def test_every_installed_package_is_pinned_at_its_version() -> None:
    pins = pinned("dev")
    installed = {
        re.sub(r"[-_.]+", "-", found.name).lower(): found.version
        for found in metadata.distributions()
    }
    for without in ("pip", "beadwright"):  # pip comes with Python
        installed.pop(without, None)
    assert len(installed) > 50
    assert installed == {name: pins.get(name, ("not pinned",))[0] for name in installed}


def test_the_build_has_the_same_packages_as_the_checks() -> None:
    build, dev = pinned("build"), pinned("dev")
    assert len(build) > 10
    assert build.items() <= dev.items()


def test_npm_packages_are_locked_by_hash_and_by_no_address() -> None:
    lock = json.loads((BUILD / "package-lock.json").read_text())
    packages = {name: about for name, about in lock["packages"].items() if name}
    assert {"node_modules/pyodide", "node_modules/@hotwired/turbo"} <= packages.keys()
    for about in packages.values():
        assert about["integrity"].startswith("sha512-")
        assert "resolved" not in about
    for name in ("package.json", ".npmrc", "environment.sh", "pin"):
        assert "http" not in (BUILD / name).read_text()


def toy_wheel(folder: Path) -> Path:
    """Write a package of one module."""
    wheel = folder / "toy-1.0-py3-none-any.whl"
    about = "Metadata-Version: 2.1\nName: toy\nVersion: 1.0\n"
    kind = "Wheel-Version: 1.0\nGenerator: by hand\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
    with ZipFile(wheel, "w") as archive:
        archive.writestr("toy.py", "")
        archive.writestr("toy-1.0.dist-info/METADATA", about)
        archive.writestr("toy-1.0.dist-info/WHEEL", kind)
        archive.writestr("toy-1.0.dist-info/RECORD", "")
    return wheel


@pytest.mark.parametrize("sound", [True, False])
def test_a_wheel_of_other_bytes_is_not_installed(tmp_path: Path, sound: bool) -> None:
    project = tmp_path / "project"
    (project / "build").mkdir(parents=True)
    shutil.copy(BUILD / "environment.sh", project / "build")
    shutil.copy(ROOT / "pyproject.toml", project)
    wheel = toy_wheel(tmp_path)
    hash_ = sha256(wheel.read_bytes()).hexdigest() if sound else "0" * 64
    (project / "build" / "packages-build.txt").write_text(f"toy==1.0 --hash=sha256:{hash_}\n")
    done = subprocess.run(
        ["sh", "-c", ". build/environment.sh; install build"],
        cwd=project,
        env=environment() | {"PIP_NO_INDEX": "1", "PIP_FIND_LINKS": str(tmp_path)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1  # with the right bytes our own package still lacks its tools
    assert ("DO NOT MATCH THE HASHES" in done.stderr) is not sound
    assert bool(list(project.glob(".venv/lib/*/site-packages/toy.py"))) is sound


@pytest.fixture
def npm_host(tmp_path: Path) -> Iterator[str]:
    """A host of one npm package."""
    folder = tmp_path / "host"
    folder.mkdir()
    source = tmp_path / "package"
    source.mkdir()
    (source / "package.json").write_text('{"name": "toy", "version": "1.0.0"}')
    with tarfile.open(folder / "toy.tgz", "w:gz") as archive:
        archive.add(source, "package")

    class Quiet(SimpleHTTPRequestHandler):
        def log_message(self, format: str, *args: object) -> None:
            """Say nothing."""

    with ThreadingHTTPServer(("127.0.0.1", 0), partial(Quiet, directory=folder)) as server:
        url = f"http://127.0.0.1:{server.server_address[1]}/"
        dist = {"name": "toy", "version": "1.0.0", "dist": {"tarball": f"{url}toy.tgz"}}
        about = {"name": "toy", "dist-tags": {"latest": "1.0.0"}, "versions": {"1.0.0": dist}}
        (folder / "toy").write_text(json.dumps(about))
        threading.Thread(target=server.serve_forever, args=(0.02,), daemon=True).start()
        yield url
        server.shutdown()


@pytest.mark.parametrize("sound", [True, False])
def test_npm_ci_refuses_a_package_of_other_bytes(
    tmp_path: Path, npm_host: str, sound: bool
) -> None:
    project = tmp_path / "project"
    project.mkdir()
    shutil.copy(BUILD / ".npmrc", project)
    wants = {"name": "parts", "dependencies": {"toy": "1.0.0"}}
    (project / "package.json").write_text(json.dumps(wants))
    packed = (tmp_path / "host" / "toy.tgz").read_bytes() if sound else b"other bytes"
    digest = base64.b64encode(sha512(packed).digest()).decode()
    toy = {"version": "1.0.0", "integrity": f"sha512-{digest}"}
    packages = {"": wants, "node_modules/toy": toy}
    lock = {"name": "parts", "lockfileVersion": 3, "packages": packages}
    (project / "package-lock.json").write_text(json.dumps(lock))
    done = subprocess.run(
        [program("npm"), "ci", f"--registry={npm_host}", f"--cache={tmp_path / 'cache'}"],
        cwd=project,
        env=environment(),
        capture_output=True,
        text=True,
        check=False,
    )
    assert ("EINTEGRITY" in done.stderr) is not sound, done.stderr
    assert (project / "node_modules" / "toy" / "package.json").is_file() is sound
