"""The app in a folder of a host: every address finds its page, with and without signal."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.browser.conftest import SIZE
from tests.browser.host import Host
from tests.browser.phone import Phone, new_phone

FETCH_PAGE = """
(path) => fetch(path, { headers: { Accept: "text/html, application/xhtml+xml" } }).then(
  async (r) => [r.status, r.headers.get("content-type").split(";")[0], await r.text(), r.url])
"""


AT_ROOT = pytest.param("/", marks=pytest.mark.long(reason="the root is where every other test is"))


@pytest.fixture(scope="module", params=[AT_ROOT, "/shop/beadwright/"])
def offline_phone(
    request: pytest.FixtureRequest, shipped: Path, chromium: Browser
) -> Iterator[Phone]:
    """A phone with the app stored, and the host gone."""
    host = Host(shipped, prefix=request.param)
    host.start()
    context = chromium.new_context(viewport=SIZE, has_touch=True)
    phone = new_phone(context, host.url)
    phone.open()
    phone.expect_ready()
    assert all(url.startswith(host.url) for url in phone.requested)
    host.kill()
    yield phone
    context.close()


def test_the_app_lives_in_any_folder(offline_phone: Phone) -> None:
    offline_phone.page.reload()
    offline_phone.expect_ready()
    offline_phone.open("method/index.html")
    offline_phone.expect_ready()
    assert offline_phone.ask("check", {})["ok"] is True


def test_a_page_has_one_entry_under_all_its_addresses(offline_phone: Phone) -> None:
    def fetch(path: str) -> tuple[int, str, str, str]:
        status, kind, text, url = offline_phone.page.evaluate(FETCH_PAGE, offline_phone.url + path)
        return status, kind, text, url

    query = "?plate=1/2in&leg=1/4in"
    method = [fetch(f"method{end}") for end in ("/", "/index.html", "", f"/{query}")]
    root = [fetch(path) for path in ("", "index.html", query, f"index.html{query}")]
    for pages in (method, root):
        assert {(status, kind) for status, kind, _, _ in pages} == {(200, "text/html")}
        assert len({text for _, _, text, _ in pages}) == 1
    # Without the slash its links would point beside the page: it sends to the address that has it.
    assert method[2][3] == f"{offline_phone.url}method/"
    missing = f"{offline_phone.url}static/none.js"  # a file: no page may answer for it
    assert offline_phone.page.evaluate("(url) => fetch(url).then(() => '', String)", missing)


def test_an_unknown_page_says_so_at_any_depth(offline_phone: Phone) -> None:
    response = offline_phone.page.goto(f"{offline_phone.url}no/such/page")
    assert response is not None
    assert response.status == 404
    # Its links lead home though it stands in for a page three folders down.
    offline_phone.page.get_by_role("link").first.click()
    offline_phone.expect_ready()
    assert offline_phone.page.url.removesuffix("index.html") == offline_phone.url
