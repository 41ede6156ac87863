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
from tests.browser.doors import Doors
from tests.browser.host import Host
from tests.browser.phone import Phone, RunningPhone, forget, new_phone, visit

ARGS = [
    "--no-sandbox",
    "--disable-quic",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]

SIZE: ViewportSize = {"width": 390, "height": 844}

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


@pytest.fixture(scope="session")
def all_doors() -> Doors:
    """The ear at every tab of every test."""
    return Doors()


@pytest.fixture(autouse=True)
def doors(all_doors: Doors) -> Iterator[Doors]:
    """Fail a test in which a page broke its policy or asked another origin."""
    all_doors.broken.clear()
    yield all_doors
    assert all_doors.broken == []


@pytest.fixture
def make_context(chromium: Browser, all_doors: Doors) -> Iterator[Callable[..., BrowserContext]]:
    """Make browser profiles the size of a phone."""
    contexts: list[BrowserContext] = []

    def make(**more: Any) -> BrowserContext:
        context = chromium.new_context(viewport=SIZE, has_touch=True, **more)
        all_doors.watch(context)
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


@pytest.fixture(scope="session")
def steady_host(shipped: Path) -> Iterator[Host]:
    """The built site on a plain web host that nothing happens to; one for all tests."""
    served = Host(shipped)
    served.start()
    yield served
    served.kill()


@pytest.fixture(scope="session")
def steady_context(
    chromium: Browser, steady_host: Host, all_doors: Doors
) -> Iterator[BrowserContext]:
    """A phone that has the app stored, for tests that neither take its signal nor change that."""
    context = chromium.new_context(viewport=SIZE, has_touch=True)
    all_doors.watch(context)
    first = new_phone(context, steady_host.url)
    first.open()
    first.expect_ready()
    first.page.close()
    yield context
    context.close()


@pytest.fixture
def tab(steady_context: BrowserContext, steady_host: Host) -> Iterator[Phone]:
    """A new tab on the phone that has the app stored; nothing is kept on it, nothing open yet."""
    for page in steady_context.pages:  # a job open in the tab of ``running`` would be kept again
        if page.url.startswith(steady_host.url):
            visit(page, f"{steady_host.url}method/")
            forget(page)
    opened = new_phone(steady_context, steady_host.url)
    yield opened
    opened.open("method/")
    forget(opened.page)
    opened.page.close()


@pytest.fixture(scope="session")
def one_tab(steady_context: BrowserContext, steady_host: Host) -> RunningPhone:
    """The tab of ``running``."""
    opened = RunningPhone(steady_context.new_page(), steady_host.url)
    opened.page.goto(f"{steady_host.url}method/")
    opened.expect_ready()
    return opened


@pytest.fixture
def running(one_tab: RunningPhone) -> Iterator[RunningPhone]:
    """The phone that has the app stored, its engine running, in one tab for all tests.

    For what a page does once it runs. What is kept of a test's own typing is cleared after it; a
    test that keeps something for good, or must begin with a load, takes ``tab``.
    """
    one_tab.page.set_viewport_size(SIZE)
    one_tab.complaints.clear()
    yield one_tab
    if not one_tab.page.url.startswith(one_tab.url):
        one_tab.page.goto(f"{one_tab.url}method/")
    forget(one_tab.page)


@pytest.fixture
def dialled(running: RunningPhone, steady_host: Host) -> Iterator[Page]:
    """Dial in with a job worked out; it fails the test if it logs an error."""
    open_job(running.page, steady_host, JOB)
    yield running.page
    assert running.complaints == []
