"""Licenses of all that ships: the list without signal, a long text with it."""

from tests.browser.host import Host
from tests.browser.phone import Phone


def test_the_list_is_kept_and_a_long_text_comes_with_signal(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    phone.open("licences/mpl-2.0.txt")
    assert "Mozilla Public License Version 2.0" in phone.page.inner_text("body")
    host.kill()
    phone.open("licences.txt")
    assert "Emscripten" in phone.page.inner_text("body")
    assert "licences/mpl-2.0.txt" in phone.page.inner_text("body")
    phone.open("licences/python.txt")
    assert "Try again with signal" in phone.page.inner_text("body")
