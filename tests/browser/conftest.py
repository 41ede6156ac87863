"""Chromium, hosts and phones for the browser tests; `built_site` comes from the folder above."""

import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, ViewportSize, sync_playwright

from beadwright_build.release import write_release
from tests.browser.dialled import JOB, open_job
from tests.browser.host import Host
from tests.browser.phone import Phone, new_phone

ARGS = [
    "--no-sandbox",
    "--disable-quic",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]

MakeHost = Callable[..., Host]
MakePhone = Callable[..., Phone]
MakeRelease = Callable[[dict[str, Callable[[bytes], bytes]]], Path]


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """One browser for all tests; every test gets profiles of its own."""
    path = os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, args=ARGS)
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def shipped(built_site: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The built site, out of the way of a build that runs meanwhile."""
    return Path(shutil.copytree(built_site, tmp_path_factory.mktemp("shipped") / "site"))


@pytest.fixture
def make_host(shipped: Path) -> Iterator[MakeHost]:
    """Start hosts, of the built site unless told otherwise."""
    hosts: list[Host] = []

    def make(site: Path = shipped, **more: Any) -> Host:
        host = Host(site, **more)
        host.start()
        hosts.append(host)
        return host

    yield make
    for host in hosts:
        host.faults.clear()
        host.kill()


@pytest.fixture
def host(make_host: MakeHost) -> Host:
    """The built site on a sound host."""
    return make_host()


@pytest.fixture
def make_context(chromium: Browser) -> Iterator[Callable[..., BrowserContext]]:
    """Make browser profiles the size of a phone."""
    contexts: list[BrowserContext] = []

    def make(**more: Any) -> BrowserContext:
        size: ViewportSize = {"width": 390, "height": 844}
        context = chromium.new_context(viewport=size, has_touch=True, **more)
        contexts.append(context)
        return context

    yield make
    for context in contexts:
        context.close()


@pytest.fixture
def make_phone(make_context: Callable[..., BrowserContext]) -> MakePhone:
    """Make phones, each with a fresh profile."""

    def make(url: str, **more: Any) -> Phone:
        return new_phone(make_context(**more), url)

    return make


@pytest.fixture
def phone(host: Host, make_phone: MakePhone) -> Phone:
    """A phone that has the built site's address and has never seen it."""
    return make_phone(host.url)


@pytest.fixture
def make_release(shipped: Path, tmp_path: Path) -> MakeRelease:
    """Make a release of its own from the built site, some files changed."""
    made: list[Path] = []

    def make(changes: dict[str, Callable[[bytes], bytes]]) -> Path:
        site = tmp_path / f"release-{len(made)}"
        shutil.copytree(shipped, site)
        for name, change in changes.items():
            (site / name).write_bytes(change((site / name).read_bytes()))
        write_release(site)
        made.append(site)
        return site

    return make


@pytest.fixture(scope="module")
def steady_host(shipped: Path) -> Iterator[Host]:
    """The built site on a plain web host, one for a file."""
    served = Host(shipped)
    served.start()
    yield served
    served.kill()


@pytest.fixture(scope="module")
def steady_phone(chromium: Browser) -> Iterator[BrowserContext]:
    """One phone for a file: the engine's files are fetched once."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True)
    yield context
    context.close()


@pytest.fixture
def dialled(steady_phone: BrowserContext, steady_host: Host) -> Iterator[Page]:
    """Dial in with a job worked out; it fails the test if it logs an error."""
    found = steady_phone.new_page()
    faults: list[str] = []
    found.on("pageerror", lambda error: faults.append(str(error)))
    found.on("console", lambda said: faults.append(said.text) if said.type == "error" else None)
    open_job(found, steady_host, JOB)
    yield found
    found.close()
    assert faults == []
