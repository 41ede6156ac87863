"""The app in a folder of a host: every address finds its page, with and without signal."""

import pytest

from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.phone import Phone

FETCH_PAGE = """
(path) => fetch(path, { headers: { Accept: "text/html, application/xhtml+xml" } }).then(
  async (r) => [r.status, r.headers.get("content-type").split(";")[0], await r.text(), r.url])
"""


@pytest.fixture(params=["/", "/shop/beadwright/"])
def offline_phone(
    request: pytest.FixtureRequest, make_host: MakeHost, make_phone: MakePhone
) -> Phone:
    """A phone with the app stored, and the host gone."""
    host = make_host(prefix=request.param)
    phone = make_phone(host.url)
    phone.open()
    phone.expect_ready()
    assert all(url.startswith(host.url) for url in phone.requested)
    host.kill()
    return phone


def test_the_app_lives_in_any_folder(offline_phone: Phone) -> None:
    offline_phone.page.reload()
    offline_phone.expect_ready()
    offline_phone.open("method/index.html")
    offline_phone.expect_ready()
    assert offline_phone.ask("check", {})["ok"] is True


def test_a_page_has_one_entry_under_all_its_addresses(offline_phone: Phone) -> None:
    pages = [
        offline_phone.page.evaluate(FETCH_PAGE, offline_phone.url + path)
        for path in ("method/", "method/index.html", "method", "method/?plate=1/2in&leg=1/4in")
    ]
    assert {(status, kind) for status, kind, _, _ in pages} == {(200, "text/html")}
    assert len({text for _, _, text, _ in pages}) == 1
    # Without the slash its links would point beside the page: it sends to the address that has it.
    assert pages[2][3] == f"{offline_phone.url}method/"


def test_the_root_page_has_one_entry_too(offline_phone: Phone) -> None:
    pages = [
        offline_phone.page.evaluate(FETCH_PAGE, offline_phone.url + path)
        for path in ("", "index.html", "?plate=1/2in", "index.html?plate=1/2in")
    ]
    assert len({text for _, _, text, _ in pages}) == 1


def test_an_unknown_page_says_so_at_any_depth(offline_phone: Phone) -> None:
    response = offline_phone.page.goto(f"{offline_phone.url}no/such/page")
    assert response is not None
    assert response.status == 404
    # Its links lead home though it stands in for a page three folders down.
    offline_phone.page.get_by_role("link").first.click()
    offline_phone.expect_ready()
    assert offline_phone.page.url.removesuffix("index.html") == offline_phone.url


def test_a_missing_file_is_not_answered_with_a_page(offline_phone: Phone) -> None:
    failed = offline_phone.page.evaluate(
        "(url) => fetch(url).then(() => false, () => true)", f"{offline_phone.url}static/none.js"
    )
    assert failed
