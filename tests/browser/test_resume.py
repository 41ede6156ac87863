"""A signal that drops while the app is being stored: what came is kept, the rest follows."""

from playwright.sync_api import expect

from tests.browser.conftest import MakeHost, MakePhone
from tests.browser.host import Fault, Host

WASM = "runtime/pyodide.asm.wasm"


def runtime_files(host: Host) -> list[str]:
    return [
        path.relative_to(host.site).as_posix()
        for path in sorted((host.site / "runtime").iterdir())
        if path.suffix not in {".gz", ".br"}
    ]


def test_a_cut_line_costs_only_the_file_it_cut(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={WASM: Fault(keep=500_000, cut=True)})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("no signal")
    expect(phone.part("notice")).to_contain_text("What came is kept")
    host.faults.clear()
    phone.tap("retry")
    phone.expect_ready()
    counts = {name: host.asked(name) for name in runtime_files(host)}
    assert counts.pop(WASM) >= 2
    assert set(counts.values()) == {1}, counts


def test_storing_goes_on_at_the_next_opening(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={"runtime/stdlib.zip": Fault(keep=100_000, cut=True)})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("no signal")
    phone.page.goto("about:blank")
    host.faults.clear()
    host.requests.clear()
    phone.open()
    phone.expect_ready()
    assert {name: host.asked(name) for name in runtime_files(host)} == {
        name: int(name == "runtime/stdlib.zip") for name in runtime_files(host)
    }


def test_pages_are_stored_whole_or_not_at_all(make_host: MakeHost, make_phone: MakePhone) -> None:
    lost = "static/icons/icon-512.png"
    host = make_host(faults={lost: Fault(keep=1_000, cut=True)})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("no offline: no signal")
    assert phone.page.evaluate("navigator.serviceWorker.controller") is None
    phone.expect_running()  # from the network: the numbers do not wait for the storing
    host.faults.clear()
    host.requests.clear()
    phone.tap("retry")
    phone.expect_ready()
    assert host.requests[lost] == 1
    assert host.requests["static/icons/apple-touch-180.png"] == 0  # kept from the first try


def test_a_silent_line_is_given_up(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={"runtime/libs.zip": Fault(keep=10, stall=True)})
    phone = make_phone(host.url)
    phone.open()
    phone.expect_word("weak signal")
    host.faults.clear()
    phone.tap("retry")
    phone.expect_ready()
