"""Files that are not what they should be are refused, the reason is told, and mending helps."""

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.host import Fault, Host
from tests.browser.phone import Phone

WASM = "runtime/pyodide.asm.wasm"
LIKE = pytest.mark.long(reason="one more fault of the kinds its neighbors try, by a first visit")
NO_STORE = "delete Navigator.prototype.serviceWorker"


@pytest.mark.parametrize(
    ("fault", "word"),
    [
        pytest.param(Fault(keep=1_000_000), "file cut short", marks=LIKE),
        pytest.param(Fault(keep=0), "file cut short", marks=LIKE),
        (Fault(html=True), "sign-in page"),
        (Fault(flip=True), "wrong file|file cut short"),
        pytest.param(Fault(status=404), "file missing", marks=LIKE),
        pytest.param(Fault(status=503), "server error", marks=LIKE),
    ],
    ids=["truncated", "empty", "a page instead", "wrong byte", "missing", "server error"],
)
def test_a_bad_wasm_file_is_refused_until_mended(
    make_host: MakeHost, make_phone: MakePhone, fault: Fault, word: str
) -> None:
    host = make_host(faults={WASM: fault})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word(f"^stopped: ({word})$")
    expect(phone.part("notice")).to_be_visible()
    expect(phone.part("small")).to_contain_text(WASM)
    host.faults.clear()
    phone.tap("retry")
    phone.expect_ready()
    expect(phone.part("notice")).to_be_hidden()


@pytest.mark.long(reason="a first visit; the type decides nothing since the bytes are hashed")
def test_a_wrong_content_type_does_no_harm(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={WASM: Fault(kind="application/octet-stream")})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_ready()


@pytest.mark.parametrize(
    ("fault", "word"),
    [
        pytest.param(Fault(keep=1_000_000), "file cut short", marks=LIKE),
        pytest.param(Fault(html=True), "sign-in page", marks=LIKE),
        pytest.param(Fault(status=404), "file missing", marks=LIKE),
        (Fault(keep=1_000_000, cut=True), "no signal"),
    ],
    ids=["truncated", "a page instead", "missing", "line cut"],
)
def test_where_nothing_can_be_stored_a_bad_file_is_refused_too(
    make_host: MakeHost, make_phone: MakePhone, fault: Fault, word: str
) -> None:
    host = make_host(faults={WASM: fault})
    phone = make_phone(host.url)
    phone.page.add_init_script(NO_STORE)
    phone.open()
    phone.expect_word(f"^stopped: {word}$")
    host.faults.clear()
    phone.tap("retry")
    phone.expect_running()
    phone.expect_word("^no offline: old browser$")


def test_a_sign_in_page_changes_nothing_stored(host: Host, phone: Phone) -> None:
    phone.open()
    phone.expect_ready()
    host.portal = True
    phone.page.reload()
    phone.expect_ready()
    phone.tap("look")
    expect(phone.part("update")).to_contain_text("Sign in to it")
    phone.expect_word("^works offline$")
    host.portal = False
    phone.tap("look")
    expect(phone.part("update")).to_have_text("This is the newest release.")
