"""Dial in with a job worked out: opening it, and what can be read off it."""

from urllib.parse import parse_qs, urlsplit

from playwright.sync_api import Page, expect

from tests.browser.host import Host
from tests.browser.phone import visit

JOB = "plate=3/8in&leg=5/16in"
START_MS = 60_000


def open_job(page: Page, host: Host, query: str) -> None:
    """Open Dial in with a job, as by a link, and wait until it is worked out."""
    visit(page, f"{host.url}?{query}")
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)


def asked(page: Page) -> dict[str, str]:
    """Return what the address asks."""
    return {key: values[0] for key, values in parse_qs(urlsplit(page.url).query).items()}


def number(page: Page, key: str) -> str:
    """Return the number of a setting as shown."""
    return page.locator(f"#set-{key} [data-type]").inner_text()
